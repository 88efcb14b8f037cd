import { NEAR } from "../../rounding";
import { mustBeAbove, mustBeAtLeast, mustBeBetween, NoAnswer } from "../../errors";
import { THICKEST_IN } from "../../logs/log";
import { IN_PER_FT } from "../../units";
import { mustBeKerf } from "../kerf";
import { isPithLevel, widestIn, type BoardWidth, type CutJob, type Log, type Pattern } from "./cut-job";
import { mustBeLargeEnd, mustBeLog, mustBeOnScale, mustBeTaper, mustSuit } from "./cut-limits";
import { withUsual, type CutSettings, type FullSettings } from "./cut-settings";
import { warningsAbout, type PlanWarning } from "./plan-warning";
import { productsOf, type ProductRow } from "./products";
import { nearestSteps, stepsClearing } from "./scale-steps";
import { mustBeBounded } from "./work";

/** A log, the products wanted of it, and the mill. */
export interface CutRequest {
  diameterIn: number;
  lengthFt: number;
  products: readonly ProductRow[];
  kerfIn: number;
  pattern?: Pattern;
  settings?: Partial<CutSettings>;
}

/** The length that a taper is said for. */
const TAPER_SPAN_IN = 48;

/** A job as it is read, with what the sawyer should know of how the inputs were taken. */
export function readRequest(request: CutRequest): { job: CutJob; warnings: PlanWarning[] } {
  const { kerfIn, products, settings: given = {} } = request;
  const job = cutJob(request);
  const ripKerfIn = given["rip kerf"] ?? kerfIn;
  return { job, warnings: warningsAbout(job, { kerfIn, ripKerfIn, products, settings: given }) };
}

/** Reads a request into a job: usual settings put in, sizes of the mill in whole steps of its scale, limits checked. */
export function cutJob({
  diameterIn,
  lengthFt,
  products,
  kerfIn,
  pattern = "live",
  settings: given = {},
}: CutRequest): CutJob {
  const settings = withUsual(given);
  const stepIn = settings["scale step"];
  const log = logOf(diameterIn, lengthFt, given);
  mustBeKerf(kerfIn);
  mustBeAbove(0, stepIn, "scale step (in)");
  const ripKerfIn = settings["rip kerf"] ?? kerfIn;
  mustBeKerf(ripKerfIn, "rip kerf");
  mustBeOnScale(kerfIn, stepIn, "kerf");
  if (settings.rip) mustBeOnScale(ripKerfIn, stepIn, "rip kerf");
  const byValue = settings.objective === "value";
  const kerfSteps = nearestSteps(kerfIn, stepIn);
  const greenWidth = (nominalIn: number): BoardWidth => ({
    nominalIn,
    greenSteps: nearestSteps(nominalIn + settings["width allowance"], stepIn),
  });

  const job: CutJob = {
    pattern,
    log,
    lies: settings["log lies"],
    sweep: settings.sweep && pattern !== "slab" ? { riseIn: settings.sweep, way: settings.crown } : undefined,
    stepIn,
    kerfSteps,
    kerfIn: kerfSteps * stepIn,
    ripKerfSteps: nearestSteps(ripKerfIn, stepIn),
    bedSteps: stepsClearing(settings["bed clearance"], stepIn),
    firstCutSteps: firstCutSteps(settings["first cut"], pattern, stepIn),
    guideOpeningIn: settings["guide opening"],
    products: productsOf(products, stepIn, byValue),
    byValue,
    passCost: settings["pass cost"],
    widths: widthsWanted(settings, widestIn(log) + 1)
      .map(greenWidth)
      .filter(({ greenSteps }) => greenSteps > 0),
    minWidthIn: settings["minimum width"],
    widthStepIn: settings["width step"],
    lengthsFt: lengthsWanted(settings, log.lengthIn),
    trimIn: settings.trim,
    wane: settings.wane,
    rip: settings.rip,
    cantWidths: (settings["cant widths"] ?? []).map(greenWidth),
    cantOffset: settings["cant offset"],
    timber: timberOf(settings.timber, stepIn),
    ringAngleDegrees: settings["ring angle"],
    heartIn: settings.heart,
  };
  mustSuit(job);
  mustBeBounded(job);
  return job;
}

/** The log, its taper as said or as its two ends show it. */
export function logOf(diameterIn: number, lengthFt: number, given: Partial<CutSettings>, whose = ""): Log {
  const lengthIn = lengthFt * IN_PER_FT;
  const acrossIn = given["small end across"] ?? diameterIn;
  const largeIn = given["large end"];
  const saidPerIn = withUsual(given).taper / TAPER_SPAN_IN;
  mustBeLog(diameterIn, lengthFt, acrossIn, whose);
  if (largeIn !== undefined)
    mustBeLargeEnd(
      largeIn,
      diameterIn,
      given.taper === undefined ? undefined : diameterIn + saidPerIn * lengthIn,
      whose,
    );
  const taperInPerIn = largeIn === undefined ? saidPerIn : (largeIn - diameterIn) / lengthIn;
  mustBeTaper(taperInPerIn * TAPER_SPAN_IN, whose);
  return { smallUpIn: diameterIn, smallAcrossIn: acrossIn, taperInPerIn, lengthIn };
}

/** A timber is sawn as large as it is said: nothing is sawn over its sides. */
function timberOf(size: CutSettings["timber"] | undefined, stepIn: number): CutJob["timber"] {
  if (!size) return undefined;
  const side = (nominalIn: number): BoardWidth => {
    mustBeBetween(0, THICKEST_IN, nominalIn, "side of the timber (in)");
    return { nominalIn, greenSteps: nearestSteps(nominalIn, stepIn) };
  };
  return [side(size.thicknessIn), side(size.widthIn)];
}

/** The first cut of a cant follows from its place in the log, and that of quarters goes through the pith. */
function firstCutSteps(firstCutIn: number | undefined, pattern: Pattern, stepIn: number): number | undefined {
  if (firstCutIn === undefined || isPithLevel(pattern)) return undefined;
  return nearestSteps(firstCutIn, stepIn);
}

/** Random widths by the step, or the widths listed; none wider than the log. */
function widthsWanted(settings: FullSettings, widestIn: number): number[] {
  const listed = settings.widths;
  if (listed) return listed.filter((width) => width <= widestIn);
  mustBeAbove(0, settings["width step"], "width step (in)");
  const most = Math.min(settings["maximum width"] ?? Infinity, widestIn);
  return multiples(settings["width step"], settings["minimum width"], most, "widths");
}

/** Lengths by the step that leave the trim, longest first. */
function lengthsWanted(settings: FullSettings, lengthIn: number): number[] {
  mustBeAbove(0, settings["length step"], "length step (ft)");
  mustBeAtLeast(0, settings.trim, "trim (in)");
  const most = (lengthIn - settings.trim + NEAR) / IN_PER_FT;
  return multiples(settings["length step"], settings["minimum length"], most, "lengths").reverse();
}

/** No mill sorts by so many widths or lengths. More of them come from a step that was mistyped. */
const MOST_CHOICES = 2000;

function multiples(step: number, least: number, most: number, what: string): number[] {
  const first = Math.max(1, Math.ceil(least / step - NEAR));
  const last = Math.floor(most / step + NEAR);
  if (last - first >= MOST_CHOICES)
    throw new NoAnswer(
      `${what} to choose from: wanted up to ${MOST_CHOICES}, got ${last - first + 1}; take a larger step`,
    );
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => (first + i) * step);
}
