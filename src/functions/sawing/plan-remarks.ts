import type { FirstCutRun, Pass, Plan, Task, WhyNone } from "../../math/sawing/cut-plan/plan";
import type { PlanWarning } from "../../math/sawing/cut-plan/plan-warning";
import { inchesText } from "../../math/inches-text";
import type { PlanRequest } from "./cut-request";
import { unusedSettings } from "./cut-settings";
import { heightText, type HeightUnit } from "./heights";

/** What a pass does, in words; nothing for one that just frees its board. */
export function passNote({ task, turn }: Pass): string {
  const does = task ? taskText(task) : "";
  if (turn === "log over") return `turn the log over on its flat: ${does}`;
  return turn === "cant a quarter" ? `turn the cant a quarter onto its round side: ${does}` : does;
}

function taskText(task: Task): string {
  switch (task.kind) {
    case "first cut":
      return "first cut";
    case "slab":
      return `${task.side} slab, down to the ${inchesText(task.cantIn)} in cant`;
    case "cant face":
      return `down to the ${inchesText(task.cantIn)} in cant`;
    case "quarter board":
      return `off face ${task.face}, that face on the bed; one from each quarter`;
    case "halve":
      return pithCutText(task, "halve the log", "halve the log through the pith");
    case "quarter":
      return pithCutText(task, "stand the halves on edge and quarter them");
  }
}

function pithCutText({ heart }: { heart?: { sizeIn: number; side: string } }, what: string, through = what): string {
  if (!heart) return through;
  const place = `${heart.side} the ${inchesText(heart.sizeIn)} in heart`;
  return heart.side === "over" ? `${what}: ${place}` : place;
}

const WHY_NONE: Readonly<Record<WhyNone, string>> = {
  lengths: "no length goes into this log with its trim: see minimum length and trim",
  widths: "no width goes into this log: see widths, or minimum and maximum width",
  "cant widths": "no cant as wide as these goes into this log: see cant widths",
  timber: "no timber of these sides comes out of this log at any length: see timber, minimum length and BEAMFIT",
  products: "none of these products comes out of this log",
};

export function noBoardRemark(why: WhyNone): string {
  return WHY_NONE[why];
}

/** How far the first cut may be moved. Between two scale steps nothing was tried, so nothing is said of it. */
export function firstCutRemark(
  { job }: Plan,
  { chosenIn, lowestIn, highestIn }: FirstCutRun,
  unit: HeightUnit,
): string {
  if (job.firstCutSteps !== undefined) return "as set; leave the setting out to see the best";
  const what = job.pattern === "cant" ? " of the turned cant" : "";
  const below = Math.round((chosenIn - lowestIn) / job.stepIn);
  const above = Math.round((highestIn - chosenIn) / job.stepIn);
  if (below + above === 0)
    return `the height${what} that gives this total with these drops; one scale step off gives less`;
  const place =
    below === above ? "the middle" : below === 0 ? "the lower of the two" : "the lower of the two in the middle";
  const run = `from ${heightText(unit, lowestIn)} to ${heightText(unit, highestIn)}`;
  return `any scale step${what} ${run} gives the same total with the same drops; this is ${place}`;
}

/** A sawn face lies on the bed by itself. */
export function shimRemark({ job }: Plan, unit: HeightUnit): string {
  const units = unit === "in" ? "inches" : "millimetres";
  const when = {
    live: "",
    slab: "",
    cant: "; none while the log lies on its flat, and again under the turned cant",
    quarter: "; none under the quarters",
    timber: "; none while the log lies on its flat, and again under the turned cant",
  };
  return `${units} to raise the small end off the bed, so that the pith is level${when[job.pattern]}`;
}

/** All that a sawyer should know of the plan before sawing by it. */
export function warningsOf(plan: Plan, { products, settings }: PlanRequest): string[] {
  const { pattern, byValue } = plan.job;
  const unit = settings.unit ?? "in";
  const unused = unusedSettings(pattern, settings);
  if (!byValue && products.some(({ price }) => price !== undefined))
    unused.push("prices (the objective is board feet)");
  const texts = plan.warnings.map((warning) => warningText(warning, plan, unit));
  const rounded = plan.warnings.filter(({ code }) => code === "rounded").length;
  if (unused.length > 0) texts.splice(rounded, 0, `not used for this plan, pattern ${pattern}: ${unused.join(", ")}`);
  return texts;
}

function warningText(warning: PlanWarning, plan: Plan, unit: HeightUnit): string {
  switch (warning.code) {
    case "rounded":
      return roundedText(warning, plan.job.stepIn);
    case "pith level":
      return `a ${warning.pattern} is planned with the small end shimmed up until the pith is level (log lies split)`;
    case "round quarters":
      return "small end across is not used for quarters: the log is taken as round at its diameter";
    case "cant under the blade":
      return `a cant narrower than the bed clearance of ${inchesText(warning.lowestIn)} in needs something under it when the log is turned over`;
    case "quarters under the blade":
      return `the blade goes no lower than ${inchesText(warning.lowestIn)} in: lay the quarters on something flat, and add its height to the blade's`;
    case "guides":
      return guidesText(warning);
    case "low blade":
      return lowBladeText(warning, unit);
  }
}

export function lowBladeText({ lowestIn }: Coded<"low blade">, unit: HeightUnit): string {
  return (
    `the blade goes down to ${heightText(unit, lowestIn)} ${unit} over the bed: ` +
    "set bed clearance to the lowest height that clears dogs and log rests"
  );
}

type Coded<C extends PlanWarning["code"]> = Extract<PlanWarning, { code: C }>;

export function roundedText({ what, givenIn, takenIn }: Coded<"rounded">, stepIn: number): string {
  const offIn = takenIn - givenIn;
  const so =
    what === "kerf"
      ? `, so every board comes out ${inchesText(Math.abs(offIn))} in ${offIn > 0 ? "thicker" : "thinner"} than it says; a finer scale step comes nearer`
      : "";
  return `${what} ${inchesText(givenIn)} in is no whole number of ${inchesText(stepIn)} in scale steps: ${inchesText(takenIn)} in was taken${so}`;
}

function guidesText({ pattern, buttIn, openingIn }: Coded<"guides">): string {
  const first =
    pattern === "quarter"
      ? "halve the log through the pith with another saw first, such as a chain saw"
      : "take flats off both sides first, until the log goes between them";
  return `the butt is ${inchesText(buttIn)} in and the guides open ${inchesText(openingIn)} in: ${first}`;
}
