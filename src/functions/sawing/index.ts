export * from "./cuts";
export * from "./target-size";
export * from "./throat";
export * from "./cut-plan";
