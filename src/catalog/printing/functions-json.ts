import type { Entry } from "../entry";
import { argumentText } from "./argument-text";

/** Excel's metadata of the functions, for an add-in served from an address. */
export function functionsJson(catalog: readonly Entry[], address: string): string {
  const whole = {
    allowErrorForDataTypeAny: true,
    allowCustomDataForDataTypeAny: true,
    functions: catalog.map((entry) => ({
      ...functionMetadata(entry),
      helpUrl: `${address}/reference/${entry.name}.html`,
    })),
  };
  return `${JSON.stringify(whole, null, 2)}\n`;
}

/** One function: every argument and the answer are ranges of anything, which our own readers look at. */
function functionMetadata({ name, summary, params }: Entry) {
  return {
    description: summary,
    id: name,
    name,
    parameters: params.map((param) => ({
      description: argumentText(param),
      dimensionality: "matrix",
      name: param.name,
      ...(param.optional && { optional: true }),
      type: "any",
    })),
    result: { dimensionality: "matrix" },
  };
}
