import type { Draft } from "../../draft";
import { drawLines, FIGURE_WIDTHS, figureHeader } from "../../drawing/figures";
import { caution, startPage } from "../../drawing/page";
import { lookUp } from "../../look-up";
import { DOLLARS, FORMAT } from "../../../formats";

const ofKilnStack = (column: string) => `SUMIFS(Results[${column}], Results[Stack], Kiln_stack)`;

const service = (name: string) => lookUp(`"${name}"`, "Services[Service]", "Services[Price]");

/** Bids, costs and fees. */
export function drawMoney(draft: Draft): void {
  const page = startPage(draft, "Money", {
    title: "Money: bid, cost and fee",
    lead: "What the lumber sells for decides what a log is worth: start from the price and take off everything between log and sale.",
    widths: FIGURE_WIDTHS,
  });
  caution(
    page,
    3,
    "invented figures, in dollars. Taxes, permits and what a partner may take out are matters for an accountant.",
  );
  figureHeader(page, 5);
  let row = drawLines(page, 6, "What to bid for a log", [
    { label: "Log to bid for", value: "L24", name: "Bid_log", says: "a log of the log book" },
    {
      label: "Board feet you expect to sell",
      formula: `=${lookUp("Bid_log", "Logs[Log]", "Logs[Net]")}`,
      unit: "bf",
      format: FORMAT.whole,
      name: "Bid_yield",
    },
    { label: "What they sell for", value: 6.5, unit: "per bf", format: DOLLARS.cents, name: "Bid_price" },
    {
      label: "Haul, sawing, drying, metal",
      value: 1.6,
      unit: "per bf",
      format: DOLLARS.cents,
      name: "Bid_cost_foot",
      says: "invented; the sheet Log to sale bids by it too",
    },
    { label: "Margin to keep", value: "35%", format: FORMAT.text, name: "Bid_margin", says: "a share of the price" },
    {
      label: "Most to pay for the log",
      formula: "=BOLE.LOGBID(Bid_yield, Bid_price, Bid_yield*Bid_cost_foot, Bid_margin)",
      format: DOLLARS.cents,
      key: true,
      name: "Key_bid",
    },
  ]);
  row = drawLines(page, row, "What a dry board foot costs", [
    {
      label: "Green board feet into the kiln",
      formula: "=Kiln_green",
      unit: "bf",
      format: FORMAT.whole,
      says: "see the sheet Drying",
    },
    {
      label: "Shrinkage",
      value: "6%",
      format: FORMAT.text,
      name: "Kiln_shrinkage",
      says: "invented; of the green tally",
    },
    {
      label: "Board feet left",
      formula: "=BOLE.DRIEDTALLY(Kiln_green, Kiln_shrinkage)",
      unit: "bf",
      format: FORMAT.whole,
      name: "Kiln_dry",
      caution: "Bill by a new tally of the dry boards, never by this estimate.",
    },
    {
      label: "Waste",
      value: "8%",
      format: FORMAT.text,
      name: "Kiln_waste",
      says: "invented; dry boards that do not sell",
    },
    {
      label: "Cost of a dry board foot",
      formula: `=BOLE.BOARDCOST(${ofKilnStack("Log cost")}, ${ofKilnStack("Haul")}, ${ofKilnStack("Hours")}, Saw_rate, Kiln_cost, Kiln_dry, Kiln_waste)`,
      unit: "per bf",
      format: DOLLARS.cents,
      key: true,
      name: "Key_dry_foot",
    },
  ]);
  row = drawLines(page, row, "What an hour and a foot must earn", [
    {
      label: "Fixed costs of a year",
      value: 18500,
      format: DOLLARS.whole,
      name: "Fixed_costs",
      says: "invented: insurance, rent, the mill's wear by age",
    },
    { label: "Hours sold in a year", value: 900, unit: "h", name: "Hours_sold", says: "invented" },
    {
      label: "Running costs of an hour",
      value: 12,
      unit: "per hour",
      format: DOLLARS.cents,
      name: "Running_costs",
      says: "invented: fuel, blades, wear",
    },
    {
      label: "Wages of an hour",
      value: 43,
      unit: "per hour",
      format: DOLLARS.cents,
      name: "Wages",
      says: "invented: both partners",
    },
    {
      label: "What an hour must earn",
      formula: "=BOLE.HOURLYRATE(Fixed_costs, Hours_sold, Running_costs, Wages)",
      unit: "per hour",
      format: DOLLARS.cents,
    },
    {
      label: "What a foot sells for",
      value: 4.25,
      unit: "per bf",
      format: DOLLARS.cents,
      name: "Foot_price",
      says: "invented: a mean over all that is sold",
    },
    {
      label: "What a foot costs beside the fixed costs",
      value: 1.9,
      unit: "per bf",
      format: DOLLARS.cents,
      name: "Foot_cost",
      says: "invented: log, haul, blades, drying",
    },
    {
      label: "Feet that cover the fixed costs",
      formula: "=BOLE.BREAKEVENFEET(Fixed_costs, Foot_price, Foot_cost)",
      name: "Key_break_even",
      key: true,
      unit: "bf",
      format: FORMAT.whole,
    },
  ]);
  drawLines(page, row, "A bill for sawing a customer's log", [
    {
      label: "Board feet sawn for him",
      value: 312,
      unit: "bf",
      format: FORMAT.whole,
      name: "Fee_feet",
      says: "invented",
    },
    { label: "Blades spoiled by metal in it", value: 2, unit: "blades", name: "Fee_blades", says: "invented" },
    {
      label: "What he pays, before tax",
      formula: `=BOLE.SAWFEE(Fee_feet, ${service("custom sawing")}, 0, 0, Fee_blades, ${service("metal strike")})`,
      format: DOLLARS.cents,
      key: true,
    },
  ]);
}
