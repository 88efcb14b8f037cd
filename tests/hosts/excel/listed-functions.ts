import { readFileSync } from "node:fs";
import { join } from "node:path";

/** A function as functions.json lists it for Excel. */
interface Listed {
  id: string;
  name: string;
  description: string;
  helpUrl: string;
  parameters: {
    name: string;
    description: string;
    type: string;
    dimensionality: string;
    optional?: boolean;
    customEnumId?: string;
  }[];
  result: { dimensionality: string };
}

export function listedFunctions(folder: string): Listed[] {
  return (JSON.parse(readFileSync(join(folder, "functions.json"), "utf8")) as { functions: Listed[] }).functions;
}
