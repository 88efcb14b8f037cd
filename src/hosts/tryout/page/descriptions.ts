import type { IFunctionInfo } from "@univerjs/engine-formula";
import type { Entry } from "../../../catalog/entry";
import { ADD_IN } from "../../../catalog/about/add-in";
import { argumentText } from "../../../catalog/printing/argument-text";
import { callsOf } from "../../../formula/calls";
import { typed } from "../../pane/typed";
import { signature } from "./signature";

/** Our functions have no place in the engine's own groups of functions. */
const OF_THE_USER = 15;

/** What a suggestion tells of a function. */
type Described = Pick<Entry, "name" | "summary" | "params" | "cautions" | "examples">;

/** A function as the grid's list of suggestions and its help beside the cell show it. */
export function suggestion(entry: Described): IFunctionInfo {
  const pieces = examplePieces(entry);
  return {
    functionName: `BOLE.${entry.name}`,
    functionType: OF_THE_USER,
    description: [entry.summary, ...entry.cautions].join(" "),
    abstract: entry.summary,
    functionParameter: entry.params.map((param, i) => ({
      name: param.name,
      detail: argumentText(param),
      example: pieces[i]!,
      require: param.optional ? 0 : 1,
      repeat: 0,
    })),
  };
}

/**
 * The grid prints an example of all arguments: those of the fullest example that answers, and one for each left out. An
 * argument that may be repeated stands last, and its example is all that is left.
 */
function examplePieces({ params, examples }: Described): string[] {
  const calls = examples
    .filter(({ result }) => !result.startsWith("#"))
    .flatMap(({ formula }) => callsOf(ADD_IN, formula));
  const fullest = calls.sort((a, b) => b.pieces.length - a.pieces.length)[0];
  return params.map(({ example = "", many }, i) => {
    const pieces = fullest?.pieces.slice(i, many === "repeated" ? undefined : i + 1) ?? [];
    return pieces.map((piece) => piece.trim()).join(", ") || typed(example).piece;
  });
}

export function suggestionWithoutCatalog(name: string): IFunctionInfo {
  const entry = { name, summary: "", params: [], cautions: [], examples: [] };
  return { ...suggestion(entry), abstract: signature(entry) };
}
