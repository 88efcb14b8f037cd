import { mustBeAbove, mustBeAtLeast, NoAnswer } from "../../errors";
import { IN_PER_FT } from "../../units";
import { mustBeKerf } from "../kerf";
import { widestIn, type BoardWidth, type CutJob, type Log, type Pattern } from "./cut-job";
import { mustBeLog, mustBeOnScale, mustSuit } from "./cut-limits";
import type { CutSettings } from "./cut-settings";
import { warningsAbout } from "./cut-warnings";
import { productsOf, type ProductRow } from "./products";
import { NEAR_IN, nearestSteps, stepsClearing } from "./scale-steps";
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

/** The taper of the International log rule: half an inch of diameter to 4 ft. */
const USUAL_TAPER_IN = 0.5;
const TAPER_SPAN_IN = 48;
const USUAL_STEP_IN = 1 / 32;
const USUAL_MIN_WIDTH_IN = 3;
const USUAL_MIN_LENGTH_FT = 4;
/** Quartersawn is 45 to 90 degrees between the rings and the face, as the US Department of Agriculture uses the word. */
const QUARTERSAWN_DEGREES = 45;

/** Reads a request into a job: defaults put in, sizes of the mill in whole steps of its scale, limits checked. */
export function cutJob({
  diameterIn,
  lengthFt,
  products,
  kerfIn,
  pattern = "live",
  settings = {},
}: CutRequest): CutJob {
  const stepIn = settings["scale step"] ?? USUAL_STEP_IN;
  const log: Log = {
    smallUpIn: diameterIn,
    smallAcrossIn: settings["small end across"] ?? diameterIn,
    taperInPerIn: (settings.taper ?? USUAL_TAPER_IN) / TAPER_SPAN_IN,
    lengthIn: lengthFt * IN_PER_FT,
  };
  mustBeLog(diameterIn, lengthFt, settings);
  mustBeKerf(kerfIn);
  mustBeAbove(0, stepIn, "scale step (in)");
  const byValue = settings.objective === "value";
  const trimIn = settings.trim ?? 0;
  const kerfSteps = nearestSteps(kerfIn, stepIn);
  const ripKerfIn = settings["rip kerf"] ?? kerfIn;
  mustBeKerf(ripKerfIn, "rip kerf");
  mustBeOnScale(kerfIn, stepIn, "kerf");
  if (settings.rip) mustBeOnScale(ripKerfIn, stepIn, "rip kerf");
  const allowanceIn = settings["width allowance"] ?? 0;
  const greenWidth = (nominalIn: number): BoardWidth => ({
    nominalIn,
    greenSteps: nearestSteps(nominalIn + allowanceIn, stepIn),
  });

  const job: CutJob = {
    pattern,
    log,
    lies: settings["log lies"] ?? "split",
    sweep: settings.sweep && pattern !== "slab" ? { riseIn: settings.sweep, way: settings.crown ?? "up" } : undefined,
    stepIn,
    kerfSteps,
    kerfIn: kerfSteps * stepIn,
    ripKerfSteps: nearestSteps(ripKerfIn, stepIn),
    bedSteps: stepsClearing(settings["bed clearance"] ?? 0, stepIn),
    openingSteps: openingSteps(settings["opening face"], pattern, stepIn),
    guideOpeningIn: settings["guide opening"],
    products: productsOf(products, stepIn, byValue),
    byValue,
    passCost: settings["pass cost"] ?? 0,
    widths: widthsWanted(settings, widestIn(log) + 1)
      .map(greenWidth)
      .filter(({ greenSteps }) => greenSteps > 0),
    minWidthIn: settings["minimum width"] ?? USUAL_MIN_WIDTH_IN,
    widthStepIn: settings["width step"] ?? 1,
    lengthsFt: lengthsWanted(settings, log.lengthIn, trimIn),
    trimIn,
    wane: settings.wane ?? 0,
    rip: settings.rip ?? false,
    cantWidths: (settings["cant widths"] ?? []).map(greenWidth),
    cantOffset: settings["cant offset"] ?? "centred",
    ringAngleDegrees: settings["ring angle"] ?? QUARTERSAWN_DEGREES,
    heartIn: settings.heart ?? 0,
    warnings: [],
  };
  mustSuit(job);
  mustBeBounded(job);
  return { ...job, warnings: warningsAbout(job, { kerfIn, ripKerfIn, products, settings }) };
}

/** A cant is opened by its own place, and a quarter through the pith. */
function openingSteps(openingIn: number | undefined, pattern: Pattern, stepIn: number): number | undefined {
  return openingIn === undefined || pattern === "cant" || pattern === "quarter"
    ? undefined
    : nearestSteps(openingIn, stepIn);
}

/** Random widths by the step, or the widths listed; none wider than the log. */
function widthsWanted(settings: Partial<CutSettings>, widestIn: number): number[] {
  const listed = settings.widths;
  if (listed) return listed.filter((width) => width <= widestIn);
  const step = settings["width step"] ?? 1;
  mustBeAbove(0, step, "width step (in)");
  const most = Math.min(settings["maximum width"] ?? Infinity, widestIn);
  return multiples(step, settings["minimum width"] ?? USUAL_MIN_WIDTH_IN, most, "widths");
}

/** Lengths by the step that leave the trim, longest first. */
function lengthsWanted(settings: Partial<CutSettings>, lengthIn: number, trimIn: number): number[] {
  const step = settings["length step"] ?? 1;
  mustBeAbove(0, step, "length step (ft)");
  mustBeAtLeast(0, trimIn, "trim (in)");
  const least = settings["minimum length"] ?? USUAL_MIN_LENGTH_FT;
  const most = (lengthIn - trimIn + NEAR_IN) / IN_PER_FT;
  return multiples(step, least, most, "lengths").reverse();
}

/** More choices than any mill sorts by are a slip of the keyboard. */
const MOST_CHOICES = 2000;

function multiples(step: number, least: number, most: number, what: string): number[] {
  const first = Math.max(1, Math.ceil(least / step - NEAR_IN));
  const last = Math.floor(most / step + NEAR_IN);
  if (last - first >= MOST_CHOICES)
    throw new NoAnswer(
      `${what} to choose from: wanted up to ${MOST_CHOICES}, got ${last - first + 1}; take a larger step`,
    );
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => (first + i) * step);
}
