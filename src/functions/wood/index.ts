export * from "./species";
export * from "./weight";
export * from "./shrinkage";
