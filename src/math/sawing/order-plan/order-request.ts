import { mustBeAbove, mustBeAtLeast, mustBeBetween, NoAnswer } from "../../errors";
import { LONGEST_FT, THICKEST_IN } from "../../logs/log";
import { sumOf } from "../../numbers";
import { NEAR } from "../../rounding";
import { mustBeOnScale } from "../cut-plan/cut-limits";
import { cutJob, logOf } from "../cut-plan/cut-request";
import { withUsual, type CutSettings } from "../cut-plan/cut-settings";
import { flatsAreNotEnough } from "../cut-plan/guides";
import { greenSizeIn } from "../cut-plan/products";
import { nearestSteps } from "../cut-plan/scale-steps";
import { solidBoardFeet } from "../cut-plan/yield-bounds";
import { mustBeKerf } from "../kerf";
import type { Log } from "../cut-plan/cut-job";
import { mustBeCount, mustBeFew, type OrderJob, type OrderLine, type YardLog } from "./order-job";
import { linesNotToBeHad } from "./lines-not-to-be-had";
import { kindsOf, sizeOf, type Size } from "./order-sizes";

/** What may be said of the mill and of all logs, as for the cut plan, and two things of the order alone. */
export interface OrderSettings extends CutSettings {
  /** Wood lost between two pieces cut one after the other from a strip. */
  "crosscut kerf": number;
  /** What the plan takes least of: the wood of the logs sawn, or their cost. */
  least: "wood" | "cost";
}

/** An order, the logs lying in the yard, and the mill. */
export interface OrderRequest {
  order: readonly OrderLine[];
  logs: readonly YardLog[];
  kerfIn: number;
  settings?: Partial<OrderSettings>;
}

/** The settings of the cut plan that say something of these plans too. */
export const SHARED_SETTINGS = [
  "taper",
  "log lies",
  "scale step",
  "rip kerf",
  "bed clearance",
  "guide opening",
  "width allowance",
  "trim",
  "wane",
] as const satisfies readonly (keyof CutSettings)[];

/** An order as it is read: the job, all logs with their wood, and the size of each line. */
export interface ReadOrder {
  /** Without the lines that no log gives: they would be looked for in vain, at the cost of those that can be had. */
  job: OrderJob;
  notToBeHad: NotToBeHad;
  logs: readonly { log: Log; woodBoardFeet: number; tooWide: boolean }[];
  /** Line by line of the order. */
  sizes: readonly Size[];
}

/** Lines of which no log gives a piece, as places in the order, and the board feet that are ordered of them. */
export interface NotToBeHad {
  lines: readonly number[];
  boardFeet: number;
}

/** Reads an order and a yard into a job: sizes in whole steps of the scale, limits checked, lines of one size put together. */
export function readOrder(request: OrderRequest): ReadOrder {
  const { order } = request;
  const asked = checked(request);
  const all = [...order.keys()];
  const whole = jobOf(asked, all);
  mustBeWorkable(whole);
  const none = linesNotToBeHad(whole);
  const others = all.filter((line) => !none.includes(line));
  const orderedFeet = (line: number) => boardFeetOrdered(order[line]!, asked.sizes[line]!);
  // Where nothing that is ordered can be had, the search finds so by itself.
  const leavesOut = none.length > 0 && others.some((line) => orderedFeet(line) > 0);
  return {
    job: leavesOut ? jobOf(asked, others) : whole,
    notToBeHad: leavesOut ? { lines: none, boardFeet: sumOf(none, orderedFeet) } : { lines: [], boardFeet: 0 },
    logs: asked.logs.map(({ log, woodBoardFeet }, place) => {
      return { log, woodBoardFeet, tooWide: !whole.logs.some(({ at }) => at === place) };
    }),
    sizes: asked.sizes,
  };
}

/** An order whose every size is read and within its limits. */
interface Asked extends Pick<OrderJob, "stepIn" | "kerfSteps" | "ripKerfSteps" | "crosscutIn"> {
  request: OrderRequest;
  sizes: readonly Size[];
  logs: readonly { log: Log; settings: Partial<CutSettings>; woodBoardFeet: number; takes: number }[];
}

function checked(request: OrderRequest): Asked {
  const { order, logs, kerfIn, settings: given = {} } = request;
  const settings = withUsual(given);
  const stepIn = settings["scale step"];
  mustBeFew(logs.length, order.length);
  mustBeKerf(kerfIn);
  const ripKerfIn = given["rip kerf"] ?? kerfIn;
  mustBeKerf(ripKerfIn, "rip kerf");
  const crosscutIn = given["crosscut kerf"] ?? kerfIn;
  mustBeAbove(0, stepIn, "scale step (in)");
  mustBeOnScale(kerfIn, stepIn, "kerf");
  mustBeOnScale(ripKerfIn, stepIn, "rip kerf");
  mustBeAtLeast(0, crosscutIn, "crosscut kerf (in)");
  mustBeKerf(crosscutIn, "crosscut kerf");
  mustBeAtLeast(0, settings.trim, "trim (in)");
  order.forEach(mustBeLine);
  const sizes = order.map((line) => sizeOf(line, settings));
  const shared = sharedSettings(given);
  return {
    request,
    sizes,
    logs: logs.map((log) => readLog(log, shared, given.least === "cost")),
    stepIn,
    kerfSteps: nearestSteps(kerfIn, stepIn),
    ripKerfSteps: nearestSteps(ripKerfIn, stepIn),
    crosscutIn,
  };
}

/** A log with the settings that hold for it alone: a large end that was measured says more than a taper. */
function readLog(
  { row, diameter, length, cost, "large end": largeIn }: YardLog,
  shared: Partial<CutSettings>,
  byCost: boolean,
) {
  const own = largeIn === undefined ? shared : { ...shared, taper: undefined, "large end": largeIn };
  const settings = withoutBlanks(own);
  const log = logOf(diameter, length, settings, `logs, row ${row}, `);
  const woodBoardFeet = solidBoardFeet(log);
  return { log, settings, woodBoardFeet, takes: byCost ? cost! : woodBoardFeet };
}

/** The job of some lines of the order. What a board foot short counts does not depend on which lines they are. */
function jobOf({ request, sizes, logs, ...scale }: Asked, lines: readonly number[]): OrderJob {
  const { order, kerfIn } = request;
  const longestIn = Math.max(0, ...logs.map(({ log }) => log.lengthIn));
  const { kinds, pieces } = kindsOf(order, lines, sizes, scale.crosscutIn, longestIn);
  const products = kinds.map(({ of }) => ({ thickness: order[of]!.thickness, "green size": greenSizeIn(order[of]!) }));
  const takesInAll = sumOf(logs, ({ takes }) => takes);
  const ordered = sizes.filter((_, line) => order[line]!.count !== "stock");
  return {
    ...scale,
    pieces,
    kinds,
    logs: logs.flatMap(({ woodBoardFeet, takes, settings }, at) => {
      const { diameter: diameterIn, length: lengthFt } = request.logs[at]!;
      const job = cutJob({ diameterIn, lengthFt, products, kerfIn, settings });
      return flatsAreNotEnough(job) ? [] : [{ at, job, woodBoardFeet, takes }];
    }),
    shortPrice: 1 + (1.01 * takesInAll) / Math.min(...ordered.map(({ boardFeet }) => boardFeet)),
    stockPrice: (0.01 * takesInAll) / sumOf(logs, ({ woodBoardFeet }) => woodBoardFeet),
  };
}

function boardFeetOrdered({ count }: OrderLine, { boardFeet }: Size): number {
  return count === "stock" ? 0 : count * boardFeet;
}

function sharedSettings(given: Partial<OrderSettings>): Partial<CutSettings> {
  return withoutBlanks(Object.fromEntries(SHARED_SETTINGS.map((name) => [name, given[name]])));
}

function withoutBlanks(settings: Partial<CutSettings>): Partial<CutSettings> {
  return Object.fromEntries(Object.entries(settings).filter(([, value]) => value !== undefined));
}

function mustBeLine({ row, thickness, width, length, count }: OrderLine): void {
  mustBeCount(count, row);
  mustBeBetween(0, THICKEST_IN, thickness, `order, thickness, row ${row} (in)`);
  mustBeBetween(0, THICKEST_IN, width, `order, width, row ${row} (in)`);
  mustBeBetween(0, LONGEST_FT, length, `order, length, row ${row} (ft)`);
}

/** How many flitches may be measured, each of their runs counted: this takes about half a second. */
const MOST_MEASURED = 25_000_000;

/** Refuses a scale so fine that the search would stop before it had begun. */
function mustBeWorkable({ logs, kinds, stepIn }: OrderJob): void {
  const faces = sumOf(logs, ({ job: { log } }) => (log.smallUpIn + log.taperInPerIn * log.lengthIn) / stepIn);
  const measured = faces * (sumOf(kinds, ({ runsIn }) => runsIn.length) + kinds.length);
  if (measured > MOST_MEASURED + NEAR)
    throw new NoAnswer(
      `scale step, logs and lengths: wanted up to ${MOST_MEASURED} flitches to measure, got about ` +
        `${Math.round(measured)}; take a coarser scale step, or give lengths in whole or half feet`,
    );
}
