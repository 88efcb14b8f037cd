export * from "./log-scale";
export * from "./cubic";
export * from "./other-measures";
export * from "./diameter";
export * from "./cull";
export * from "./net-scale";
export * from "./buck-plan";
