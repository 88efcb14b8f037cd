import type { IFunctionInfo } from "@univerjs/engine-formula";
import type { Entry } from "../../../catalog/entry";
import { argumentText } from "../../../catalog/printing/argument-text";
import { signature } from "./signature";

/** Our functions have no place in the engine's own groups of functions. */
const OF_THE_USER = 15;

/** What a suggestion tells of a function. */
type Described = Pick<Entry, "name" | "summary" | "params" | "cautions">;

/** A function as the grid's list of suggestions and its help beside the cell show it. */
export function suggestion(entry: Described): IFunctionInfo {
  return {
    functionName: `BOLE.${entry.name}`,
    functionType: OF_THE_USER,
    description: [entry.summary, ...entry.cautions].join(" "),
    abstract: entry.summary,
    functionParameter: entry.params.map((param) => ({
      name: param.name,
      detail: argumentText(param),
      example: "",
      require: param.optional ? 0 : 1,
      repeat: 0,
    })),
  };
}

export function suggestionWithoutCatalog(name: string): IFunctionInfo {
  const entry = { name, summary: "", params: [], cautions: [] };
  return { ...suggestion(entry), abstract: signature(entry) };
}
