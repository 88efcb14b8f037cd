/* Prints how long cut plans take: npx tsx tests/bench/cut-plan.ts. Medians of warm runs, in milliseconds. */
import { CUTYIELD } from "../../src/functions/sawing";
import type { CutRequest } from "../../src/math/sawing/cut-plan/cut-request";
import { planCut } from "../../src/math/sawing/cut-plan/plan-cut";

const thicknesses = (...all: number[]) => all.map((thickness) => ({ thickness }));
const THREE = thicknesses(1, 1.5, 2);
const log30 = (more: Partial<CutRequest>): CutRequest => ({
  diameterIn: 30,
  lengthFt: 12,
  products: THREE,
  kerfIn: 0.125,
  ...more,
});
const cant = (offset: "centred" | "free") =>
  log30({ pattern: "cant", settings: { "cant widths": [6, 8, 10, 12], "cant offset": offset } });

const timber = log30({ pattern: "timber", settings: { timber: { thicknessIn: 6, widthIn: 8 } } });

const CASES: readonly (readonly [what: string, aim: number, run: () => unknown])[] = [
  ["live, 30 in x 12 ft, 1/32 in, 3 products", 1, () => planCut(log30({}))],
  [
    "live, 76 in x 20 ft, 1/64 in, 7 products",
    15,
    () =>
      planCut({
        diameterIn: 76,
        lengthFt: 20,
        products: thicknesses(1, 1.25, 1.5, 2, 2.5, 3, 4),
        kerfIn: 0.125,
        settings: { "scale step": 1 / 64 },
      }),
  ],
  ["slab, 30 in x 12 ft, 1/32 in, 3 products", 1, () => planCut(log30({ pattern: "slab" }))],
  ["cant in the middle, 30 in x 12 ft, 4 widths", 6, () => planCut(cant("centred"))],
  ["cant anywhere, 30 in x 12 ft, 4 widths", 200, () => planCut(cant("free"))],
  ["timber 6 x 8, 30 in x 12 ft, 3 products", 6, () => planCut(timber)],
  [
    "quarters, 30 in x 12 ft, 1/16 in, 3 products",
    40,
    () => planCut(log30({ pattern: "quarter", settings: { "scale step": 1 / 16 } })),
  ],
  ["live, bowed, 30 in x 12 ft, 3 products", 60, () => planCut(log30({ settings: { sweep: 1 } }))],
  ["500 logs in one spilled CUTYIELD, 3 products", 500, fiveHundredLogs()],
];

for (const [what, aim, run] of CASES) {
  const ms = median(run);
  console.log(`${ms.toFixed(2).padStart(9)} ms  (aim ${aim})  ${what}`);
}

function fiveHundredLogs(): () => unknown {
  const diameters = Array.from({ length: 500 }, (_, i) => [8 + (i % 97) * 0.25]);
  const lengths = Array.from({ length: 500 }, (_, i) => [8 + (i % 9)]);
  return () => CUTYIELD(diameters, lengths, [["4/4"], ["6/4"], ["8/4"]], [[0.125]]);
}

function median(run: () => unknown): number {
  const until = performance.now() + 1500;
  const times: number[] = [];
  for (let i = 0; i < 200 && (i < 12 || performance.now() < until); i++) {
    const start = performance.now();
    run();
    if (i >= 5) times.push(performance.now() - start);
  }
  times.sort((a, b) => a - b);
  return times[times.length >> 1]!;
}
