export * from "./moisture";
export * from "./air";
export * from "./drying-days";
export * from "./own-stack";
export * from "./stickers";
export * from "./kiln";
export * from "./meter-reading";
export * from "./end-coat";
