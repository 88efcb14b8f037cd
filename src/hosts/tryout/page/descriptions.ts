import type { IFunctionInfo } from "@univerjs/engine-formula";
import { signature, type Entry } from "./catalog";

/** Our functions have no place in the engine's own groups of functions. */
const OF_THE_USER = 15;

/** A function as the grid's list of suggestions and its help beside the cell show it. */
export function suggestion(entry: Entry): IFunctionInfo {
  return {
    functionName: `BOLE.${entry.name}`,
    functionType: OF_THE_USER,
    description: [entry.summary, ...entry.cautions].join(" "),
    abstract: entry.summary,
    functionParameter: entry.params.map(({ name, optional, text }) => ({
      name,
      detail: text,
      example: "",
      require: optional ? 0 : 1,
      repeat: 0,
    })),
  };
}

export function suggestionWithoutCatalog(name: string): IFunctionInfo {
  const entry = { name, summary: "", params: [], returns: "", examples: [], cautions: [], words: [], grade: "" };
  return { ...suggestion(entry), abstract: signature(entry) };
}
