export * from "./source";
export * from "./working";
export * from "./version";
