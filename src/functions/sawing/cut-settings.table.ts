import {
  degrees,
  feet,
  inches,
  inchesList,
  number,
  oneOf,
  section,
  yesNo,
  zeroAsText,
  type Declaration,
} from "../../cells/read";
import type { Pattern } from "../../math/sawing/cut-plan/cut-job";
import type { CutSettings } from "../../math/sawing/cut-plan/cut-settings";
import { HEIGHT_UNITS, type HeightUnit } from "./heights";

/** What may be said beside the log, the products and the kerf. The unit is that of the answer and changes no plan. */
export interface PlanSettings extends CutSettings {
  unit: HeightUnit;
}

/** A setting: all that is known of it but the code that uses it. What is usual stands with that code. */
export interface Setting<T> {
  group: string;
  says: string;
  read: Declaration<T>;
  /** The patterns that make use of it, or that warn of it in words of their own. */
  uses: readonly Pattern[];
  /** It changes nothing where this other one is not given, */
  needs?: keyof PlanSettings;
  /** or where this other one is. */
  yieldsTo?: keyof PlanSettings;
  /** What holds where it is left out, where that is no figure. */
  otherwise?: string;
  /** Its field in the pane, where it has one. */
  field?: { label: string; example: string; place: "first" | "more" };
}

const ALL: readonly Pattern[] = ["live", "slab", "cant", "quarter", "timber"];
const EDGED: readonly Pattern[] = ["live", "cant", "quarter", "timber"];

const LOG = "The log";
const MILL = "The mill";
const WIDTHS = "Widths";
const LENGTHS = "Lengths";
const BOARDS = "Boards";
const WORTH = "Worth";
const CANT = "Cant";
const TIMBER = "Timber";
const QUARTER = "Quarter";

/** Every setting of the cut plan, once. The page, the pane's form and the sheets are made of this. */
export const CUT_SETTINGS: { readonly [K in keyof PlanSettings]: Setting<PlanSettings[K]> } = {
  "bed clearance": {
    group: MILL,
    says: "The lowest height of the blade that clears dogs and log rests, taken up to a whole scale step; every mill with dogs has to be given it.",
    read: inches,
    uses: ALL,
    field: { label: "Bed clearance", example: "1", place: "first" },
  },
  "guide opening": {
    group: MILL,
    says: "The widest cut that the blade guides allow.",
    read: inches,
    uses: ALL,
    otherwise: "no limit",
    field: { label: "Guide opening", example: "30", place: "more" },
  },
  "scale step": {
    group: MILL,
    says: "One step of the saw head's scale.",
    read: inches,
    uses: ALL,
    otherwise: "1/32",
  },
  "first cut": {
    group: MILL,
    says: "Height of the first cut, to see what another than the best would give.",
    read: inches,
    uses: ["live", "slab"],
    otherwise: "the best",
  },
  unit: {
    group: MILL,
    says: "Unit of the blade heights and drops in the answer.",
    read: oneOf(HEIGHT_UNITS),
    uses: ALL,
    otherwise: "in",
  },
  "large end": {
    group: LOG,
    says: "Diameter of the other end, up and down as the log lies.",
    read: inches,
    uses: ALL,
    otherwise: "by the taper",
    field: { label: "Diameter of the large end", example: "23", place: "first" },
  },
  taper: {
    group: LOG,
    says: "How much the diameter grows in 4 ft of length; beside a large end it has to agree.",
    read: zeroAsText(inches),
    uses: ALL,
    field: { label: "Taper", example: "0.5", place: "more" },
  },
  "small end across": {
    group: LOG,
    says: "The level diameter of an oval small end.",
    read: inches,
    uses: ALL,
    otherwise: "as the diameter",
  },
  "log lies": {
    group: LOG,
    says: "How it lies: split, with the small end shimmed up until the pith is level, or flat on the bed.",
    read: oneOf({ split: ["shimmed", "pith level"], flat: ["full", "full taper", "on the bed"] }),
    uses: ALL,
  },
  sweep: {
    group: LOG,
    says: "Bow, as the gap under a string; planned live and split only, with lengths and trim in whole half feet.",
    read: inches,
    uses: EDGED,
  },
  crown: {
    group: LOG,
    says: "Which way the bow points: up, down or side.",
    read: oneOf({ up: [], down: [], side: ["sideways"] }),
    uses: EDGED,
    needs: "sweep",
  },
  "minimum width": {
    group: WIDTHS,
    says: "The narrowest board.",
    read: zeroAsText(inches),
    uses: ALL,
    yieldsTo: "widths",
    field: { label: "Narrowest board", example: "4", place: "more" },
  },
  "maximum width": {
    group: WIDTHS,
    says: "The widest board.",
    read: inches,
    uses: EDGED,
    yieldsTo: "widths",
    otherwise: "no limit",
  },
  "width step": {
    group: WIDTHS,
    says: "Boards are as wide as whole steps.",
    read: inches,
    uses: ALL,
    yieldsTo: "widths",
  },
  widths: {
    group: WIDTHS,
    says: "The widths that are sold, such as 4, 6, 8, in place of the three above.",
    read: inchesList,
    uses: EDGED,
    otherwise: "any width",
  },
  "width allowance": {
    group: WIDTHS,
    says: "What is sawn over each width.",
    read: inches,
    uses: EDGED,
  },
  "minimum length": {
    group: LENGTHS,
    says: "The shortest board.",
    read: zeroAsText(feet),
    uses: ALL,
  },
  "length step": {
    group: LENGTHS,
    says: "Boards are as long as whole steps.",
    read: feet,
    uses: ALL,
  },
  trim: {
    group: LENGTHS,
    says: "What is left on the length of every board.",
    read: inches,
    uses: ALL,
    field: { label: "Trim", example: "4", place: "more" },
  },
  wane: {
    group: BOARDS,
    says: "Share of the thickness, from either face, that an edge may lack, under 0.5.",
    read: number,
    uses: ["live", "cant", "timber"],
  },
  rip: {
    group: BOARDS,
    says: "Whether boards may lie side by side in one flitch: yes or no.",
    read: yesNo,
    uses: EDGED,
    otherwise: "no",
  },
  "rip kerf": {
    group: BOARDS,
    says: "Kerf between boards side by side.",
    read: inches,
    uses: EDGED,
    needs: "rip",
    otherwise: "as the kerf",
  },
  objective: {
    group: WORTH,
    says: "What the plan gives most of: board feet, or value by the prices.",
    read: oneOf({ "board feet": ["bf", "feet"], value: ["money"] }),
    uses: ALL,
  },
  "pass cost": {
    group: WORTH,
    says: "What each board costs to saw, in board feet or money as the objective is.",
    read: number,
    uses: ALL,
  },
  "cant widths": {
    group: CANT,
    says: "The widths to try, such as 4, 6, 8; a cant has to be given them.",
    read: inchesList,
    uses: ["cant"],
    otherwise: "no cant",
    field: { label: "Cant widths", example: "4, 6, 8", place: "more" },
  },
  "cant offset": {
    group: CANT,
    says: "Whether the cant is centred about the pith, or free to lie off it.",
    read: oneOf({ centred: ["centered", "middle"], free: ["anywhere"] }),
    uses: ["cant"],
  },
  timber: {
    group: TIMBER,
    says: "Its two sides in inches as sawn, such as 6x8; the plan stands it the better way up, with the heart in it.",
    read: section,
    uses: ["timber"],
    otherwise: "no timber",
    field: { label: "Timber", example: "6x8", place: "more" },
  },
  "ring angle": {
    group: QUARTER,
    says: "The least angle between rings and face.",
    read: zeroAsText(degrees),
    uses: ["quarter"],
  },
  heart: {
    group: QUARTER,
    says: "The side of the square that is lost about the pith.",
    read: inches,
    uses: ["quarter"],
  },
};
