import { mustBeAbove, mustBeAtLeast, mustBeBetween, NoAnswer } from "../../errors";
import { inchesText } from "../../inches-text";
import { LONGEST_FT, THICKEST_IN } from "../../logs/log";
import { sumOf } from "../../numbers";
import { NEAR } from "../../rounding";
import { IN_PER_FT } from "../../units";
import { mustBeOnScale } from "../cut-plan/cut-limits";
import { cutJob, logOf } from "../cut-plan/cut-request";
import { withUsual, type CutSettings } from "../cut-plan/cut-settings";
import { flatsAreNotEnough } from "../cut-plan/guides";
import { greenSizeIn } from "../cut-plan/products";
import { nearestSteps } from "../cut-plan/scale-steps";
import { solidBoardFeet } from "../cut-plan/yield-bounds";
import { mustBeKerf } from "../kerf";
import type { Log } from "../cut-plan/cut-job";
import {
  mustBeCount,
  mustBeFew,
  type Kind,
  type OrderJob,
  type OrderLine,
  type Piece,
  type YardLog,
} from "./order-job";
import { mustBeFewRuns, runsOf } from "./runs";

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

/** An order as it is read: the job, all logs with their wood, and the board feet of one piece of each line. */
export interface ReadOrder {
  job: OrderJob;
  logs: readonly { log: Log; woodBoardFeet: number; tooWide: boolean }[];
  lineBoardFeet: readonly number[];
}

/** Reads an order and a yard into a job: sizes in whole steps of the scale, limits checked, lines of one size put together. */
export function readOrder({ order, logs, kerfIn, settings: given = {} }: OrderRequest): ReadOrder {
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
  const ofLogs = logs.map(({ "large end": largeIn }) =>
    withoutBlanks(largeIn === undefined ? shared : { ...shared, taper: undefined, "large end": largeIn }),
  );
  const all = logs.map(({ row, diameter, length }, at) => logOf(diameter, length, ofLogs[at]!, `logs, row ${row}, `));
  const longestIn = Math.max(0, ...all.map(({ lengthIn }) => lengthIn));
  const { kinds, pieces } = kindsOf(order, sizes, crosscutIn, longestIn);
  const products = kinds.map(({ of }) => ({ thickness: order[of]!.thickness, "green size": greenSizeIn(order[of]!) }));
  const jobs = logs.map(({ diameter, length }, at) =>
    cutJob({ diameterIn: diameter, lengthFt: length, products, kerfIn, settings: ofLogs[at]! }),
  );
  const read = all.map((log, at) => ({
    log,
    woodBoardFeet: solidBoardFeet(log),
    tooWide: flatsAreNotEnough(jobs[at]!),
  }));
  const takes = read.map(({ woodBoardFeet }, at) => (given.least === "cost" ? logs[at]!.cost! : woodBoardFeet));
  const allTakes = sumOf(takes, (one) => one);
  const ordered = pieces.filter(({ count }) => count < Infinity);
  const job: OrderJob = {
    pieces,
    kinds,
    logs: read.flatMap(({ woodBoardFeet, tooWide }, at) =>
      tooWide ? [] : [{ at, job: jobs[at]!, woodBoardFeet, takes: takes[at]! }],
    ),
    stepIn,
    kerfSteps: nearestSteps(kerfIn, stepIn),
    ripKerfSteps: nearestSteps(ripKerfIn, stepIn),
    crosscutIn,
    shortPrice: 1 + (1.01 * allTakes) / Math.min(...ordered.map(({ boardFeet }) => boardFeet)),
    stockPrice: (0.01 * allTakes) / sumOf(read, ({ woodBoardFeet }) => woodBoardFeet),
  };
  mustBeWorkable(job);
  return { job, logs: read, lineBoardFeet: sizes.map(({ boardFeet }) => boardFeet) };
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

interface Size {
  tallyIn: number;
  greenSteps: number;
  widthSteps: number;
  cutIn: number;
  boardFeet: number;
}

function sizeOf(line: OrderLine, settings: ReturnType<typeof withUsual>): Size {
  const stepIn = settings["scale step"];
  const tallyIn = Math.max(1, line.thickness);
  const widthSteps = nearestSteps(line.width + settings["width allowance"], stepIn);
  const greenSteps = nearestSteps(greenSizeIn(line), stepIn);
  mustBeAtLeast(1, widthSteps, `order, width, row ${line.row}, of ${inchesText(line.width)} in, in scale steps`);
  mustBeAtLeast(1, greenSteps, `order, thickness, row ${line.row}, in scale steps`);
  return {
    tallyIn,
    greenSteps,
    widthSteps,
    cutIn: IN_PER_FT * line.length + settings.trim,
    boardFeet: (tallyIn * line.width * line.length) / IN_PER_FT,
  };
}

/** Kinds and pieces: lines of one size are one piece, but stock and order are kept apart. */
function kindsOf(order: readonly OrderLine[], sizes: readonly Size[], crosscutIn: number, longestIn: number) {
  const places = new Map<string, { lines: number[]; kind: string }>();
  sizes.forEach((size, at) => {
    const kind = `${size.greenSteps} ${size.tallyIn}`;
    const key = `${kind} ${size.widthSteps} ${order[at]!.width} ${size.cutIn} ${order[at]!.count === "stock"}`;
    places.set(key, { kind, lines: [...(places.get(key)?.lines ?? []), at] });
  });
  const groups = [...places.values()];
  const names = [...new Set(groups.map(({ kind }) => kind))];
  const widthsOf = (kind: string) =>
    [...new Set(groups.filter((group) => group.kind === kind).map(({ lines }) => sizes[lines[0]!]!.widthSteps))].sort(
      (a, b) => a - b,
    );
  const pieces = groups.map(({ kind, lines }): Piece => {
    const { widthSteps, cutIn, boardFeet } = sizes[lines[0]!]!;
    const counts = lines.map((at) => order[at]!.count);
    const count = counts[0] === "stock" ? Infinity : sumOf(counts as number[], (one) => one);
    const width = widthsOf(kind).indexOf(widthSteps);
    return { kind: names.indexOf(kind), widthSteps, width, cutIn, boardFeet, count, lines };
  });
  const kinds = names.map((name): Kind & { of: number } => {
    const ofKind = groups.flatMap(({ kind }, piece) => (kind === name ? [piece] : []));
    const { greenSteps, tallyIn } = sizes[groups[ofKind[0]!]!.lines[0]!]!;
    const runsIn = runsOf(
      ofKind.map((piece) => pieces[piece]!.cutIn),
      crosscutIn,
      longestIn,
    );
    return { greenSteps, tallyIn, pieces: ofKind, widths: widthsOf(name), runsIn, of: groups[ofKind[0]!]!.lines[0]! };
  });
  mustBeFewRuns(sumOf(kinds, ({ runsIn }) => runsIn.length));
  return { pieces, kinds };
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
