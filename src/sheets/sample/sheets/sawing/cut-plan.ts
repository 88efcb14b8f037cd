import type { Draft } from "../../draft";
import { drawLines, FIGURE_WIDTHS, figureHeader } from "../../drawing/figures";
import { caution, heading, startPage } from "../../drawing/page";
import { DOLLARS, FORMAT } from "../../../formats";
import type { Column } from "../../../definition";
import { drawTable } from "../../drawing/table";
import { lookUp } from "../../look-up";
import { drawWhatChanges } from "./what-changes";

const PRODUCTS: readonly Column[] = [
  { heading: "Thickness", format: FORMAT.text, list: "thicknesses" },
  { heading: "Green size", format: FORMAT.three },
  { heading: "Price", format: DOLLARS.cents },
];

const SETTINGS: readonly Column[] = [{ heading: "Setting" }, { heading: "Value", format: FORMAT.text }];

/** The plan of the log above; the sheet Mill sheet live shows the whole of it. */
const PLAN = "=BOLE.CUTPLAN(Cut_diameter, Cut_length, Products[], Cut_kerf, Cut_pattern, Settings[])";
/** Shows a height as the scale of a saw head is read. */
export const THIRTY_SECONDS = "# ??/32";

/** The plan of one log, the settings to read off at the saw head, and what another way of sawing would change. */
export function drawCutPlan(draft: Draft): void {
  const page = startPage(draft, "Cut plan", {
    title: "Cut plan: what to get out of one log",
    lead: "One log, one blade, the products you have orders for: settings and products stand at the foot of this sheet, where both lists may grow. The plan is the best there is for them by board feet; the sheet Mill sheet live prints it for the mill.",
    widths: FIGURE_WIDTHS,
  });
  caution(
    page,
    3,
    "guards on and wheels enclosed. Lock out the power before you touch the blade. A log this size moves when it is cut free: dog it, and stand clear of its fall.",
  );
  figureHeader(page, 5);
  let row = drawLines(page, 6, "Log and blade", [
    { label: "Log", value: "L04", name: "Cut_log", says: "one of the log book; its large end stands in the settings" },
    {
      label: "Small end inside bark",
      formula: `=${lookUp("Cut_log", "Logs[Log]", "Logs[Dia]")}`,
      unit: "in",
      format: FORMAT.two,
      name: "Cut_diameter",
    },
    {
      label: "Length as it lies on the mill",
      formula: `=${lookUp("Cut_log", "Logs[Log]", "Logs[Length]")}`,
      unit: "ft",
      name: "Cut_length",
    },
    {
      label: "Kerf",
      value: 0.125,
      unit: "in",
      format: FORMAT.three,
      name: "Cut_kerf",
      says: "invented blade; measure a cut",
    },
    {
      label: "Kerf of a thinner blade",
      value: 0.0625,
      unit: "in",
      format: FORMAT.four,
      name: "Thin_kerf",
      says: "invented; to see what it would gain",
    },
    {
      label: "Pattern",
      value: "live",
      name: "Cut_pattern",
      list: "patterns",
      says: "live, slab, cant, quarter or timber",
    },
  ]);
  row = drawLines(page, row, "What comes out", [
    {
      label: "Board feet of the plan",
      formula: "=BOLE.CUTYIELD(Cut_diameter, Cut_length, Products[], Cut_kerf, Cut_pattern, Settings[])",
      unit: "bf",
      format: FORMAT.one,
      key: true,
      name: "Key_cut_plan_feet",
    },
    {
      label: "First cut: height of the blade",
      formula: `=INDEX(${PLAN.slice(1)}, 2, 2)`,
      unit: "in",
      format: THIRTY_SECONDS,
      name: "First_cut",
      array: true,
    },
    {
      label: "Share of the wood turned to sawdust",
      formula: "=BOLE.KERFLOSS(INDEX(Products[Green size], 1), Cut_kerf)",
      format: FORMAT.share,
      says: "for the first product",
    },
    {
      label: "Gain from the thinner blade",
      formula: "=BOLE.KERFGAIN(Cut_diameter, Cut_length, INDEX(Products[Thickness], 1), Cut_kerf, Thin_kerf)",
      unit: "bf",
      format: FORMAT.one,
      key: true,
      name: "Key_thin_kerf_gain",
    },
    {
      label: "Boards of the first size from 20 in",
      formula: "=BOLE.PIECECOUNT(20, INDEX(Products[Green size], 1), Cut_kerf)",
    },
    {
      label: "Cut width 4 in below the top",
      formula: "=BOLE.CUTWIDTH(Cut_diameter, 4)",
      unit: "in",
      format: FORMAT.one,
    },
    {
      label: "Largest log to take on",
      formula: "=BOLE.BIGGESTLOG(Mill_opening)",
      unit: "in",
      format: FORMAT.one,
      caution: "With a foot of room, as is customary. The log book asks for less room, measured log by log.",
    },
    {
      label: "Largest with the room that the log book asks for",
      formula: "=BOLE.BIGGESTLOG(Mill_opening, Opening_clearance)",
      unit: "in",
      format: FORMAT.one,
    },
  ]);
  row = drawWhatChanges(page, row);
  row = drawLines(page, row, "The green size to set", [
    {
      label: "Finished thickness wanted",
      value: 0.8125,
      unit: "in",
      format: FORMAT.four,
      name: "Finished_size",
      says: "13/16, planed",
    },
    {
      label: "Planing, both faces together",
      value: 0.125,
      unit: "in",
      format: FORMAT.three,
      name: "Planing",
      says: "invented",
    },
    {
      label: "Shrinkage to 8 %, the larger way",
      formula: '=BOLE.SHRINKAGE("northern red oak", "30%", "8%", "tangential")',
      unit: "percent",
      format: FORMAT.two,
      name: "Green_shrinkage",
    },
    {
      label: "Spread of sawn thickness",
      value: 0.02,
      unit: "in",
      format: FORMAT.three,
      name: "Sawn_spread",
      says: "standard deviation: see SAWVARIATION",
    },
    {
      label: "Target green size",
      formula: "=BOLE.TARGETSIZE(Finished_size, Planing, Green_shrinkage, Sawn_spread)",
      unit: "in",
      format: FORMAT.three,
      key: true,
      name: "Key_target_size",
    },
    { label: "On the tape", formula: "=BOLE.FRACTION(Key_target_size, 32)", unit: "in" },
  ]);
  heading(page, row, "Settings, sizes in inches: any that the page of CUTPLAN lists", "C");
  const last = drawTable(page, `A${row + 2}`, "Settings", SETTINGS, [
    { Setting: "large end", Value: "32 1/2" },
    { Setting: "trim", Value: "3" },
    { Setting: "minimum width", Value: "4" },
    { Setting: "bed clearance", Value: "1" },
    { Setting: "cant widths", Value: "8, 10, 12" },
  ]);
  heading(
    page,
    last + 2,
    "Products: thickness as the trade says it, green size in inches as sawn, price a bf for the setting objective, value",
    "D",
  );
  drawTable(page, `A${last + 4}`, "Products", PRODUCTS, [{ Thickness: "4/4", "Green size": 1.125, Price: null }]);
}
