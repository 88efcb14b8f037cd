import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CUTPLAN, KERFGAIN } from "../../../src/functions/sawing";
import { one, type Cell } from "../sheet";

/**
 * No plan may hold a spreadsheet up. About half a second is what the limit of cuts to weigh is set for; the tests give
 * it ten times as long, since machines differ.
 */
const LONGEST_MS = 5000;

/** A size anywhere between two, as likely near the small one as near the large. */
const anywhere = (low: number, high: number) =>
  fc.double({ min: Math.log(low), max: Math.log(high), noNaN: true }).map(Math.exp);

const WILD_SETTINGS: Record<string, fc.Arbitrary<Cell>> = {
  "scale step": anywhere(1e-5, 0.5),
  taper: anywhere(0.01, 12),
  "log lies": fc.constantFrom("split", "flat"),
  "rip kerf": anywhere(1e-3, 0.75),
  "pass cost": anywhere(0.01, 100),
  "minimum width": anywhere(1e-3, 30),
  "width step": anywhere(1e-2, 5),
  widths: fc.constantFrom("4, 6, 8", "0.01, 0.02, 0.03", "1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12"),
  "minimum length": anywhere(1e-2, 20),
  "length step": anywhere(1e-2, 5),
  wane: anywhere(0.01, 0.49),
  rip: fc.constantFrom("yes", "no"),
  "cant offset": fc.constantFrom("free", "centred"),
  "ring angle": anywhere(1, 89),
};

const wildPlan = fc.record({
  diameter: anywhere(4, 300),
  length: anywhere(4, 65),
  kerf: anywhere(1e-3, 0.75),
  products: fc.array(anywhere(0.1, 12), { minLength: 1, maxLength: 12 }),
  pattern: fc.constantFrom("live", "slab", "cant", "quarter"),
  settings: fc.record(WILD_SETTINGS, { requiredKeys: [] }),
});

/** The answer, and the processor time it took: a busy machine does not lengthen that, as it does the time on the clock. */
function timed(ask: () => Cell[][]): { answer: Cell[][]; tookMs: number } {
  const before = process.cpuUsage();
  const answer = ask();
  return { answer, tookMs: process.cpuUsage(before).user / 1000 };
}

describe("wild settings", () => {
  it("are planned soon or refused at once, whatever log, saw, products and settings stand together", () => {
    let planned = 0;
    let refused = 0;
    fc.assert(
      fc.property(wildPlan, ({ diameter, length, kerf, products, pattern, settings }) => {
        const rows = [["cant widths", "2, 4, 6, 8, 10, 12"], ...Object.entries(settings)];
        const sizes = products.map((thickness) => [thickness]);
        const { answer, tookMs } = timed(() =>
          CUTPLAN(one(diameter), one(length), sizes, one(kerf), one(pattern), rows),
        );
        expect(tookMs).toBeLessThan(LONGEST_MS);
        if (answer.length > 1) planned++;
        else if (/cuts to weigh|to choose from/.test(JSON.stringify(answer))) refused++;
      }),
      { seed: 20260304, numRuns: 120 },
    );
    expect(planned).toBeGreaterThan(60);
    expect(refused).toBeGreaterThan(12);
  });

  it("are planned up to the limit and refused beyond it: a scale ten times as fine is one too fine", () => {
    const ask = (step: number) =>
      timed(() => CUTPLAN(one(40), one(16), one("4/4"), one(0.125), one("live"), [["scale step", step]]));
    const fine = ask(1 / 16384);
    expect(fine.answer.length).toBeGreaterThan(20);
    expect(fine.tookMs).toBeLessThan(LONGEST_MS);
    expect(JSON.stringify(ask(1 / 163840).answer)).toMatch(/wanted up to 4000000 cuts to weigh, got about/);
  });

  it("and a kerf gain is soon answered for the thickest and longest of trees", () => {
    const { answer, tookMs } = timed(() => KERFGAIN(one(300), one(65), one("4/4"), one(0.1), one(0.2)));
    expect(answer[0]![0] as number).toBeGreaterThan(0);
    expect(tookMs).toBeLessThan(LONGEST_MS / 2);
  });
});
