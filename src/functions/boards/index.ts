export * from "./board-feet";
export * from "./slab";
export * from "./nominal-size";
export * from "./tape";
export * from "./flattening";
export * from "./clear-grade";
