import type { Configuration } from "webpack";

declare const configuration: Configuration;
export default configuration;
