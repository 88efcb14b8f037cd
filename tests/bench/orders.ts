/* Prints how long orders against invented yards take and how far the plans are from the bound: npx tsx tests/bench/orders.ts. */
import { planOrder } from "../../src/math/sawing/order-plan/order-plan";
import { faultsOf } from "../math/sawing/order-plan/check-plan";
import { inventedYard } from "../math/sawing/order-plan/yards";

/** Yards of each size; the share of the yard's solid wood that is ordered goes from a tenth to near half. */
const SIZES = [
  { logs: 10, lines: 5, yards: 15, aim: "under 1 s; 6 %" },
  { logs: 25, lines: 12, yards: 30, aim: "under 1 s; 4 % in the mean, 7 % at most" },
  { logs: 60, lines: 30, yards: 5, aim: "under 5 s; 4 to 12 %" },
];

for (const { logs, lines, yards, aim } of SIZES) {
  const runs = Array.from({ length: yards }, (_, seed) => {
    const request = inventedYard(seed + 1, logs, lines, 0.1 + (0.35 * seed) / yards);
    const started = performance.now();
    const plan = planOrder(request);
    const seconds = (performance.now() - started) / 1000;
    const faults = faultsOf(request, plan);
    if (faults.length > 0) throw new Error(`${logs} logs, seed ${seed + 1}: ${faults.join("; ")}`);
    return { seconds, gap: plan.total / plan.bound - 1, short: plan.boardFeet.short > 0 };
  });
  const filled = runs.filter(({ short }) => !short);
  const gaps = filled.map(({ gap }) => 100 * gap);
  const seconds = runs.map((run) => run.seconds).sort((a, b) => a - b);
  console.log(
    `${logs} logs by ${lines} lines, ${yards} yards (aim ${aim}): ${seconds[yards >> 1]!.toFixed(2)} s in the middle, ` +
      `${seconds.at(-1)!.toFixed(2)} s at most; ${mean(gaps).toFixed(1)} % over the bound in the mean, ` +
      `${Math.max(...gaps).toFixed(1)} % at most; best proved in ${gaps.filter((gap) => gap < 1e-4).length}; ` +
      `${runs.length - filled.length} came out short`,
  );
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
