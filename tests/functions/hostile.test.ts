import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readCatalog } from "../../src/catalog/read-catalog";
import * as registry from "../../src/functions";
import { anyArgument, isSoundCell } from "./hostile";
import { literalCall } from "./literal-call";

const functions = registry as unknown as Record<string, (...given: unknown[]) => unknown[][]>;

/** How many calls each function gets here; npm run fuzz asks for many more. */
const CALLS = Number(process.env["BOLE_FUZZ_CALLS"] ?? 300);

describe("whatever stands in the cells, the answer is a number, text, a truth value or an error with a message", () => {
  it.each(readCatalog())("$name", ({ name, params, examples }) => {
    const good = examples.map(({ formula }) => literalCall(formula).given);
    const call = fc.tuple(
      fc.constantFrom(...good),
      fc.array(anyArgument, { minLength: params.length, maxLength: params.length }),
      fc.nat(),
    );
    fc.assert(
      fc.property(call, ([sound, junk, mask]) => {
        // Mostly sound arguments with some junk among them reach deeper than junk alone.
        const given = junk.map((cell, i) => (mask & (1 << i) ? cell : sound[i]));
        const answer = functions[name]!(...given);
        for (const cell of answer.flat()) {
          expect(isSoundCell(cell), `${JSON.stringify(given)} gives ${JSON.stringify(cell)}`).toBe(true);
          if (typeof cell === "object") expect((cell as { message: string }).message).not.toMatch(/fault in Bole/);
        }
      }),
      { seed: 20260301, numRuns: CALLS },
    );
  });
});
