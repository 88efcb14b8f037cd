import { describe, expect, it } from "vitest";
import { readCatalog } from "../../src/catalog/read-catalog";
import * as registry from "../../src/functions";
import { literalCall } from "./literal-call";

const functions = registry as unknown as Record<string, (...given: unknown[][][]) => unknown[][]>;

/** Numbers beyond what any log, board, wheel or price can be, one way and the other. */
const BEYOND = [-1e9, -1, -1e-9, 1e-9, 0.01, 1, 33, 100, 300, 1e5, 1e9];

/** Each example that answers, with one of its numbers after the other made absurd. */
function* absurdCalls(formula: string): Generator<unknown[][][]> {
  const { given } = literalCall(formula);
  for (const [at, cells] of given.entries())
    if (typeof cells[0]?.[0] === "number")
      for (const number of BEYOND)
        yield given.map((argument, i) => (i === at ? cells.map((row) => row.map(() => number)) : argument));
}

/** `moisture: wanted 0 to 170, got 300`: a name or a sentence first, and nothing that only a programmer knows. */
const READABLE = /^[A-Za-z(]/;
const PROGRAMMERS = /undefined|NaN|Infinity|null\b|\[object|function|(?:^|\s):/;

describe("whatever is refused", () => {
  it.each(readCatalog().map((entry) => [entry.name, entry] as const))(
    "%s says of which quantity and why",
    (name, entry) => {
      for (const { formula, result } of entry.examples) {
        if (result.startsWith("#")) continue;
        for (const given of absurdCalls(formula))
          for (const cell of functions[name]!(...given).flat()) {
            if (typeof cell !== "object" || cell === null || !("message" in cell)) continue;
            const what = `${name}(${JSON.stringify(given)}): ${String(cell.message)}`;
            expect(cell.message, what).toMatch(READABLE);
            expect(cell.message, what).not.toMatch(PROGRAMMERS);
          }
      }
    },
  );
});
