export * from "./source";
export * from "./version";
