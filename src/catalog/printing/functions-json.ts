import type { Entry, Param } from "../entry";
import { argumentText } from "./argument-text";
import { pickLists } from "./pick-lists";

/** Excel's metadata of the functions, for an add-in served from an address. */
export function functionsJson(catalog: readonly Entry[], address: string): string {
  const { lists, idOf } = pickLists(catalog);
  const whole = {
    allowErrorForDataTypeAny: true,
    allowCustomDataForDataTypeAny: true,
    enums: lists,
    functions: catalog.map((entry) => ({
      ...functionMetadata(entry, idOf),
      helpUrl: `${address}/reference/${entry.name}.html`,
    })),
  };
  return `${JSON.stringify(whole, null, 2)}\n`;
}

/**
 * One function: every argument and the answer are ranges of anything, which our own readers look at. An argument with a
 * list of words is text: Microsoft documents lists for text and numbers only, and a file that says something else might
 * be refused whole. Excel answers an error in such a cell itself, as #VALUE!.
 */
function functionMetadata({ name, summary, params }: Entry, idOf: (param: Param) => string | undefined) {
  return {
    description: summary,
    id: name,
    name,
    parameters: params.map((param) => ({
      description: argumentText(param),
      dimensionality: "matrix",
      name: param.name,
      ...(param.many === "repeated" ? { repeating: true } : param.optional && { optional: true }),
      ...typeOf(idOf(param)),
    })),
    result: { dimensionality: "matrix" },
  };
}

function typeOf(list: string | undefined) {
  return list === undefined ? { type: "any" } : { type: "string", customEnumId: list };
}
