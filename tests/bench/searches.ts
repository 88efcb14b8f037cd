/* Prints how long the searches of a haul and of a stem take: npx tsx tests/bench/searches.ts. Medians, in milliseconds. */
import { tripPlan } from "../../src/math/haul/trip-plan";
import { buckPlan } from "../../src/math/logs/buck-plan";

/** Weights as they come from a yard, always the same ones. */
function weights(seed: number): number[] {
  let state = seed;
  const next = () => (state = (state * 48271) % 2147483647) / 2147483647;
  return Array.from({ length: 40 }, () => Math.round(400 + 3600 * next()));
}

const HAULS = Array.from({ length: 25 }, (_, i) => weights(i + 1));
const STEM = {
  diametersIn: [24, 22.5, 21, 19.8, 18.5, 17, 15],
  lengthFt: 60,
  lengthsFt: [6, 8, 10, 12, 14, 16, 18, 20],
  prices: [
    { fromIn: 10, price: 0.4 },
    { fromIn: 14, price: 0.6 },
    { fromIn: 18, price: 0.9, lengthFt: 16 },
  ],
  trimIn: 4,
  rule: "International 1/4",
} as const;

const slowest = Math.max(...HAULS.map((weightsLb) => median(() => tripPlan({ weightsLb, payloadLb: 9800 }))));
report(slowest, 50, "trips of 40 logs, the slowest of 25 hauls");
report(
  median(() => buckPlan(STEM)),
  20,
  "cuts of a 60 ft stem on every inch, 8 lengths, 3 prices",
);

function report(ms: number, aim: number, what: string): void {
  console.log(`${ms.toFixed(2).padStart(9)} ms  (aim ${aim})  ${what}`);
}

function median(run: () => unknown): number {
  const times = Array.from({ length: 11 }, () => {
    const start = performance.now();
    run();
    return performance.now() - start;
  });
  return times.sort((a, b) => a - b)[5]!;
}
