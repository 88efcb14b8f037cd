export * from "./cuts";
export * from "./target-size";
export * from "./throat";
export * from "./cut-plan";
export * from "./blade-cost";
export * from "./beam-fit";
export * from "./residue";
export * from "./log-work";
