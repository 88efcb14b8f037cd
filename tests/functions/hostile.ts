import fc from "fast-check";
import type { Entry } from "../../src/catalog/entry";
import * as registry from "../../src/functions";
import { literalCall } from "./literal-call";

const functions = registry as unknown as Record<string, (...given: unknown[]) => unknown[][]>;

/** A cell as the most careless or most hostile sheet holds it. */
const anyCell = fc.oneof(
  fc.double({ noNaN: false }),
  fc.integer(),
  fc.double({ min: 0, max: 200, noNaN: true }),
  fc.constantFrom(0, -0, 1, 12, 46146, 1e300, -1e300, 5e-324, Number.MAX_VALUE, Infinity, NaN),
  fc.string(),
  fc.string({ unit: "grapheme" }),
  fc.constantFrom(
    ...["14 1/2", "8'6\"", "5/4", "8-6", "1,5", "12%", "2x6", "4, 6, 8", "20 C", "25 m/s", "٣٫٥"],
    ...["oak", "white oak", "Doyle", "up", "table", "mean", "=1+1", "<script>", "'; DROP TABLE", "__proto__"],
    ...["#N/A", "#VALUE!", "#SPILL!", "", "   ", "constructor"],
  ),
  fc.constantFrom(null, undefined, true, false, [], {}, { basicValue: 12 }, new Date(0)),
  fc.constant({ type: "Error", basicValue: "#N/A" }),
);

/** An argument: one cell, left out, a column, a row, a grid, or a ragged heap. */
const anyArgument = fc.oneof(
  { weight: 6, arbitrary: anyCell.map((cell) => [[cell]]) },
  { weight: 1, arbitrary: fc.constantFrom(null, undefined, [], [[]]) },
  {
    weight: 2,
    arbitrary: fc.array(
      anyCell.map((cell) => [cell]),
      { minLength: 1, maxLength: 4 },
    ),
  },
  { weight: 1, arbitrary: fc.array(fc.array(anyCell, { maxLength: 3 }), { maxLength: 3 }) },
);

/**
 * Calls of a function with anything in its cells. Most keep some sound arguments of an example among the junk, which
 * reaches deeper than junk alone.
 */
export function hostileCalls({ params, examples }: Entry): fc.Arbitrary<unknown[]> {
  const sound = fc.constantFrom(...examples.map(({ formula }) => literalCall(formula).given));
  const junk = fc.array(anyArgument, { minLength: params.length, maxLength: params.length });
  const mask = fc.array(fc.boolean(), { minLength: params.length, maxLength: params.length });
  return fc.tuple(sound, junk, mask).map(([good, bad, mask]) => bad.map((cells, i) => (mask[i] ? cells : good[i])));
}

/** What is wrong with the answer to a call, or undefined: it must be a grid of numbers, text, truth values and errors. */
export function faultOf({ name }: Entry, given: unknown[]): string | undefined {
  const cells = functions[name]!(...given).flat();
  const unsound = cells.find((cell) => !isSound(cell));
  return unsound === undefined ? undefined : `${JSON.stringify(given)} gives ${JSON.stringify(unsound)}`;
}

function isSound(cell: unknown): boolean {
  if (typeof cell === "number") return Number.isFinite(cell);
  if (typeof cell === "string" || typeof cell === "boolean") return true;
  const { error, message } = (cell ?? {}) as { error?: unknown; message?: unknown };
  if (typeof error !== "string" || typeof message !== "string") return false;
  return error.startsWith("#") && isMessage(message);
}

/** Every message names what it is about, in words of its own. */
function isMessage(message: string): boolean {
  return /^\w/.test(message) && !/fault in Bole|undefined|\[object/.test(message);
}
