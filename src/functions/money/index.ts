export * from "./price";
export * from "./log-bid";
export * from "./sawing-bill";
export * from "./costs";
export * from "./partner-share";
