import type { OrderPlan } from "../../../../src/math/sawing/order-plan/order-plan";
import type { OrderRequest } from "../../../../src/math/sawing/order-plan/order-request";

const EPS = 1e-6;

/**
 * Faults of an order plan, in words; none of a right one. It looks at corners in the log and at sums, and shares nothing with
 * the planner but the shape of its answer.
 */
export function faultsOf(request: OrderRequest, plan: OrderPlan): string[] {
  const faults: string[] = [];
  const say = (holds: boolean, fault: string) => void (holds || faults.push(fault));
  const { order, kerfIn, settings = {} } = request;
  const step = settings["scale step"] ?? 1 / 32;
  const onScale = (size: number) => Math.floor(size / step + 0.5 + 1e-9) * step;
  const ripIn = onScale(settings["rip kerf"] ?? kerfIn);
  const crosscutIn = settings["crosscut kerf"] ?? kerfIn;
  const trimIn = settings.trim ?? 0;
  const made = order.map(() => 0);
  const seen = new Set<unknown>();
  let takes = 0;
  for (const { log, flitches } of plan.sawn) {
    say(!seen.has(log), `log ${log.row} twice`);
    seen.add(log);
    say(flitches.length > 0, `log ${log.row} gives nothing`);
    const lengthIn = 12 * log.length;
    const buttIn = log["large end"] ?? log.diameter + ((settings.taper ?? 0.5) * lengthIn) / 48;
    const across = (z: number) => log.diameter + ((buttIn - log.diameter) * z) / lengthIn;
    const opening = settings["guide opening"] ?? Infinity;
    say(buttIn <= opening * Math.SQRT2 + EPS, `log ${log.row} does not go between the guides`);
    const sideIn = buttIn > opening + 1e-9 ? opening / 2 : Infinity;
    const wood = (Math.PI / 4) * (log.diameter ** 2 + 4 * across(lengthIn / 2) ** 2 + buttIn ** 2);
    takes += settings.least === "cost" ? log.cost! : ((lengthIn / 6) * wood) / 144;
    let roofIn = Infinity;
    for (const { lowIn, greenIn, runIn, strips } of flitches) {
      const at = `log ${log.row} at ${lowIn}`;
      say(Math.abs(lowIn / step - Math.round(lowIn / step)) < EPS, `${at}: off the scale`);
      say(lowIn + greenIn <= roofIn + EPS, `${at}: no kerf above`);
      say(roofIn === Infinity || Math.abs(lowIn + greenIn - roofIn) < EPS, `${at}: a gap above`);
      roofIn = lowIn - onScale(kerfIn);
      say(roofIn >= (settings["bed clearance"] ?? 0) - EPS, `${at}: under the bed clearance`);
      say(runIn <= lengthIn + EPS, `${at}: longer than the log`);
      const wide = strips.reduce((sum, { greenIn }) => sum + greenIn, 0) + (strips.length - 1) * ripIn;
      const startIn = lengthIn - runIn;
      const waneIn = (settings.wane ?? 0) * greenIn;
      for (const z of [startIn, lengthIn]) {
        const radius = across(z) / 2;
        const pith = settings["log lies"] === "flat" ? radius : buttIn / 2;
        for (const y of [lowIn + waneIn, lowIn + greenIn - waneIn])
          say(Math.hypot(wide / 2, y - pith) <= radius + EPS, `${at}: a corner outside the log`);
      }
      say(wide / 2 <= sideIn + EPS, `${at}: wider than the guides`);
      for (const strip of strips) {
        let usedIn = -crosscutIn;
        for (const line of strip.lines) {
          const { thickness, width, length, "green size": green } = order[line]!;
          say(Math.abs(onScale(green ?? thickness + 1 / 8) - greenIn) < EPS, `${at}: a piece of another thickness`);
          say(onScale(width + (settings["width allowance"] ?? 0)) <= strip.greenIn + EPS, `${at}: a piece too wide`);
          usedIn += 12 * length + trimIn + crosscutIn;
          made[line]!++;
        }
        say(strip.lines.length > 0, `${at}: an empty strip`);
        say(usedIn <= runIn + EPS, `${at}: a strip longer than its run`);
      }
    }
  }
  order.forEach(({ count }, line) => {
    const sum = plan.lines[line]!;
    say(sum.made === made[line], `line ${line + 1}: ${sum.made} said, ${made[line]} made`);
    say(sum.short === Math.max(0, (count === "stock" ? 0 : count) - made[line]!), `line ${line + 1}: short`);
  });
  say(Math.abs(totalOf(request, made, takes) - plan.total) < EPS, `total ${plan.total}`);
  say(plan.bound <= plan.total + EPS, `bound ${plan.bound} over total ${plan.total}`);
  return faults;
}

/** The total of pieces made and wood or cost taken, as the definitions say it. */
export function totalOf(request: OrderRequest, made: readonly number[], takes: number): number {
  const { short, stock } = pricesOf(request);
  return request.order.reduce((sum, { thickness, width, length, count }, line) => {
    const boardFeet = (Math.max(1, thickness) * width * length) / 12;
    if (count === "stock") return sum - stock * boardFeet * made[line]!;
    return sum + short * boardFeet * Math.max(0, count - made[line]!);
  }, takes);
}

/** What a board foot short and one for the shelf count. */
function pricesOf({ order, logs, settings = {} }: OrderRequest) {
  const woodOf = ({ diameter, length, "large end": large }: OrderRequest["logs"][number]) => {
    const butt = large ?? diameter + ((settings.taper ?? 0.5) * length) / 4;
    return (((Math.PI / 4) * length * 12) / 6 / 144) * (diameter ** 2 + (diameter + butt) ** 2 + butt ** 2);
  };
  const wood = logs.reduce((sum, log) => sum + woodOf(log), 0);
  const takes = settings.least === "cost" ? logs.reduce((sum, { cost }) => sum + cost!, 0) : wood;
  const smallest = Math.min(
    ...order
      .filter(({ count }) => count !== "stock")
      .map(({ thickness, width, length }) => (Math.max(1, thickness) * width * length) / 12),
  );
  return { short: 1 + (1.01 * takes) / smallest, stock: (0.01 * takes) / wood };
}
