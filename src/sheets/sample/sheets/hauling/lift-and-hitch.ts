import type { Draft } from "../../draft";
import { drawLines, FIGURE_WIDTHS, figureHeader } from "../../drawing/figures";
import { caution, heading, startPage } from "../../drawing/page";
import { FORMAT } from "../../../formats";
import type { Column } from "../../../definition";
import { lookUp } from "../../look-up";
import { drawTable } from "../../drawing/table";

const PLAN_COLUMNS: readonly Column[] = [
  { heading: "Log" },
  { heading: "Weight lb", formula: `=${lookUp("[@Log]", "Logs[Log]", "Logs[Weight lb]")}`, format: FORMAT.whole },
  { heading: "Ahead of axle ft" },
];

/** Three red and white oak logs on one trailer: over its rating on purpose, to show what the sheet says. */
const PLAN = [
  { Log: "L03", ahead: 4 },
  { Log: "L06", ahead: 0.5 },
  { Log: "L16", ahead: -3 },
];

/** A column of the log book for all logs of the plan. */
const ofPlan = (column: string) => `XLOOKUP(Plan[Log], Logs[Log], Logs[${column}])`;

/** A load planned before anything is lifted, and the pull in a sling. */
export function drawLiftAndHitch(draft: Draft): void {
  const page = startPage(draft, "Lift and hitch", {
    title: "Lift and hitch: plan a load and a lift before the loader starts",
    lead: "Type the logs and where each one's middle lies, ahead of the axle (minus behind it). The plan shown is over the rating and too light on the hitch on purpose, and was never hauled.",
    widths: FIGURE_WIDTHS,
  });
  caution(
    page,
    3,
    "rigging and lifting plans belong to a qualified person. Nobody under a load. The marked limit of every sling, shackle and hook rules, and the machine's chart at that reach.",
  );
  heading(page, 5, "The logs of the plan");
  drawTable(page, "A7", "Plan", PLAN_COLUMNS, PLAN);
  figureHeader(page, 13);
  const row = drawLines(page, 14, "Trailer", [
    {
      label: "Vehicle",
      value: "Own trailer",
      name: "Plan_vehicle",
      list: "Vehicle_list",
      says: "one of the sheet Vehicles",
    },
    {
      label: "Rating on the plate",
      formula: `=${lookUp("Plan_vehicle", "Vehicles[Vehicle]", "Vehicles[Rating lb]")}`,
      unit: "lb",
      format: FORMAT.whole,
      name: "Plan_rating",
      caution: "All plates count: trailer, axles, tires, hitch and truck.",
    },
    {
      label: "Empty weight",
      formula: `=${lookUp("Plan_vehicle", "Vehicles[Vehicle]", "Vehicles[Empty lb]")}`,
      unit: "lb",
      format: FORMAT.whole,
      name: "Plan_empty",
    },
    {
      label: "Hitch ahead of the axle",
      value: 14,
      unit: "ft",
      name: "Plan_hitch",
      says: "invented; to the middle of the axles",
    },
    {
      label: "Empty trailer's share on the hitch",
      value: "12%",
      unit: "of its weight",
      format: FORMAT.text,
      name: "Plan_empty_share",
      says: "invented; weigh the tongue once, empty",
    },
    {
      label: "Payload left",
      formula: "=BOLE.LOADLEFT(Plan_rating, Plan_empty, Plan[Weight lb])",
      unit: "lb",
      format: FORMAT.whole,
      key: true,
      caution: "Minus: over the rating. Do not pull.",
    },
    {
      label: "Payload left at worst",
      formula: `=BOLE.LOADLEFT(Plan_rating, Plan_empty, ${ofPlan("Could be lb")})`,
      array: true,
      unit: "lb",
      format: FORMAT.whole,
      caution: "Every log at 15 % over the estimate.",
    },
    {
      label: "Share of the whole weight on the hitch",
      formula: "=BOLE.TONGUESHARE(Plan[Weight lb], Plan[Ahead of axle ft], Plan_hitch, Plan_empty, Plan_empty_share)",
      unit: "percent",
      format: FORMAT.one,
      caution: "Trailer makers ask for 9 to 15 %. Stay under the rating of coupler and ball.",
    },
    {
      label: "Limit of one strap or chain",
      formula: `=${lookUp("Plan_vehicle", "Vehicles[Vehicle]", "Vehicles[Strap limit lb]")}`,
      unit: "lb",
      format: FORMAT.whole,
      name: "Plan_strap",
    },
    {
      label: "Tie-downs for the longest log",
      formula: `=MAX(BOLE.TIEDOWNS(SUM(${ofPlan("Could be lb")}), ${ofPlan("Length")}, Plan_strap))`,
      array: true,
      unit: "at least",
      caution: "The least the federal rule asks for; logs standing in stakes have a rule of their own.",
    },
  ]);
  drawLines(page, row, "One lift", [
    { label: "Log on the hook", value: "L06", name: "Lift_log", says: "a log of the log book" },
    {
      label: "What it could weigh by the log book",
      formula: `=${lookUp("Lift_log", "Logs[Log]", "Logs[Could be lb]")}`,
      unit: "lb",
      format: FORMAT.whole,
      name: "Lift_weight",
    },
    {
      label: "Angle of the legs from the horizontal",
      value: 60,
      unit: "degrees",
      name: "Lift_angle",
      caution: "Below 30 degrees: do not lift.",
    },
    {
      label: "Pull in one leg of two",
      formula: "=BOLE.SLINGLEG(Lift_weight, Lift_angle, 2)",
      unit: "lb",
      format: FORMAT.whole,
      key: true,
      caution: "Count only two legs as carrying unless the load surely spreads over more.",
    },
    {
      label: "The same at 45 degrees",
      formula: "=BOLE.SLINGLEG(Lift_weight, 45, 2)",
      unit: "lb",
      format: FORMAT.whole,
    },
    {
      label: "The same at 30 degrees",
      formula: "=BOLE.SLINGLEG(Lift_weight, 30, 2)",
      unit: "lb",
      format: FORMAT.whole,
      caution: "Twice the pull of a straight lift.",
    },
  ]);
}
