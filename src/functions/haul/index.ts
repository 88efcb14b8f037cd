export * from "./trailer";
export * from "./tiedowns";
export * from "./sling";
export * from "./tiedown-limit";
export * from "./trip-plan";
