/** The registry: every worksheet function, under its own name. */
export * from "./logs";
export * from "./boards";
export * from "./wood";
export * from "./sawing";
export * from "./drying";
export * from "./mill";
export * from "./haul";
export * from "./money";
export * from "./about";
