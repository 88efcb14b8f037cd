import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readCatalog } from "../../src/catalog/read-catalog";
import { faultOf, hostileCalls } from "./hostile";

/** How many calls each function gets here; npm run fuzz makes many more. */
const CALLS = 250;

describe("whatever stands in the cells, the answer is a number, text, a truth value or an error with a message", () => {
  it.each(readCatalog())("$name", (entry) => {
    const sound = fc.property(hostileCalls(entry), (given) => {
      expect(faultOf(entry, given)).toBeUndefined();
    });
    fc.assert(sound, { seed: 20260301, numRuns: CALLS });
  });
});
