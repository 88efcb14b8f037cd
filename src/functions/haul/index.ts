export * from "./trailer";
export * from "./tiedowns";
export * from "./sling";
