import { inchesText } from "../../math/inches-text";
import { nearest } from "../../math/rounding";
import type { OrderPlan } from "../../math/sawing/order-plan/order-plan";
import type { OrderWarning } from "../../math/sawing/order-plan/order-warning";
import type { Proof } from "../../math/sawing/order-plan/proof";
import type { SawnLog } from "../../math/sawing/order-plan/sawn-log";
import { nameOf, unusedHere, type OrderPlanRequest } from "./order-request";
import { lowBladeText, roundedText } from "./plan-remarks";

/** A remark under a plan: a name, its figure, and a sentence. */
export interface Remark {
  name: string;
  figure?: number;
  says: string;
}

/** What should be known of a plan as a whole. */
export function remarksOn(plan: OrderPlan, request: OrderPlanRequest): Remark[] {
  const { left, boardFeet, woodBoardFeet } = plan;
  const remarks: Remark[] = [{ name: "bound", ...boundRemark(plan, request) }];
  const kept = Math.max(0, boardFeet.ordered - boardFeet.short);
  if (woodBoardFeet > 0)
    remarks.push({
      name: "share ordered",
      figure: kept / woodBoardFeet,
      says: "of the wood of the logs sawn becomes pieces of the order; the rest is sawdust, slabs, edgings, stock",
    });
  const lying = left.filter(({ tooWide }) => !tooWide);
  if (lying.length > 0)
    remarks.push({
      name: "logs left",
      figure: lying.length,
      says: `stay in the yard: ${lying.map(({ log }) => nameOf(log)).join(", ")}`,
    });
  const tooWide = left.filter((one) => one.tooWide);
  if (tooWide.length > 0)
    remarks.push({
      name: "not sawable",
      figure: tooWide.length,
      says: `too wide for guides that open ${inchesText(request.settings["guide opening"]!)} in, even after flats: ${tooWide.map(({ log }) => nameOf(log)).join(", ")}`,
    });
  const unused = unusedHere(request.settings);
  if (unused.length > 0) remarks.push({ name: "warning", says: `not used for an order: ${unused.join(", ")}` });
  for (const warning of plan.warnings) {
    const says = warningText(warning, request);
    if (says) remarks.push({ name: "warning", says });
  }
  return remarks;
}

/** What the bound means, in words that a customer could read. */
function boundRemark({ proof, bound }: OrderPlan, request: OrderPlanRequest): Omit<Remark, "name"> {
  const byCost = request.settings.least === "cost";
  return { figure: figureOf(proof, bound), says: proofText(proof, byCost) };
}

function figureOf(proof: Proof, bound: number): number | undefined {
  if (proof.is === "short") return proof.leastShort > 0 ? proof.leastShort : undefined;
  return proof.is === "fullest" ? undefined : bound;
}

export function proofText(proof: Proof, byCost: boolean): string {
  switch (proof.is) {
    case "best":
      return byCost ? "no plan costs less" : "no plan takes less wood";
    case "near": {
      const most = `${(100 * proof.overShare).toFixed(1)} % at most over the best`;
      return byCost
        ? `${most}: no plan costs less than ${proof.leastTakes.toFixed(2)}`
        : `${most}: no plan takes less than ${proof.leastTakes.toFixed(1)} board feet of wood`;
    }
    case "fullest":
      return "these logs cannot give more";
    case "short":
      return proof.leastShort > 0
        ? `no plan can be short of less than ${proof.leastShort.toFixed(1)} board feet; a fuller plan may exist: this search did not find one`
        : "a fuller plan may exist: this search did not find one";
  }
}

function warningText(warning: OrderWarning, { settings }: OrderPlanRequest): string | undefined {
  switch (warning.code) {
    case "rounded":
      return roundedText(warning, settings["scale step"] ?? 1 / 32);
    case "low blade":
      return lowBladeText(warning, settings.unit ?? "in");
    case "too long":
      return `row ${warning.row} of the order is longer than every log with its trim`;
    case "too wide":
      return `row ${warning.row} of the order is wider than every butt`;
    case "too large":
      return `no log here gives a piece of row ${warning.row} of the order`;
    case "flats":
      return undefined;
  }
}

/** What is said beside a log: flats to take first, and what is left of it to saw as one likes. */
export function logNote({ log, aboveIn, belowIn, flitches }: SawnLog, { warnings }: OrderPlan): string {
  const thinnest = Math.min(...flitches.map(({ greenIn }) => greenIn));
  const notes: string[] = [];
  if (warnings.some((warning) => warning.code === "flats" && warning.log === log))
    notes.push("take flats off both sides first");
  if (aboveIn > SLAB_SHARE * thinnest) notes.push(`${eighthsText(aboveIn)} in left above at the butt`);
  if (belowIn > SLAB_SHARE * thinnest) notes.push(`${eighthsText(belowIn)} in left below`);
  return notes.join("; ");
}

/** To the nearest eighth: what is left is looked at with a tape. */
function eighthsText(sizeIn: number): string {
  return inchesText(nearest(1 / 8, sizeIn));
}

/** A slab this many times as thick as the thinnest flitch may hold another one. */
const SLAB_SHARE = 2;
