import type { Draft } from "../../draft";
import { drawLines, FIGURE_WIDTHS, figureHeader } from "../../drawing/figures";
import { caution, startPage } from "../../drawing/page";
import { FORMAT } from "../../drawing/style";

const ofKilnStack = (column: string) => `SUMIFS(Results[${column}], Results[Stack], Kiln_stack)`;

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
    {
      label: "Board feet you expect to sell",
      formula: '=XLOOKUP("L24", Logs[Log], Logs[Net])',
      unit: "bf",
      format: FORMAT.whole,
      name: "Bid_yield",
      says: "log L24, black walnut",
    },
    { label: "What they sell for", value: 6.5, unit: "per bf", format: FORMAT.money, name: "Bid_price" },
    {
      label: "Haul, sawing, drying, metal",
      value: 1.6,
      unit: "per bf",
      format: FORMAT.money,
      name: "Bid_cost_foot",
      says: "invented; the sheet Log to sale bids by it too",
    },
    { label: "Margin to keep", value: "35%", format: FORMAT.text, name: "Bid_margin", says: "a share of the price" },
    {
      label: "Most to pay for the log",
      formula: "=BOLE.LOGBID(Bid_yield, Bid_price, Bid_yield*Bid_cost_foot, Bid_margin)",
      format: FORMAT.money,
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
    { label: "Shrinkage", value: "6%", format: FORMAT.text, name: "Kiln_shrinkage" },
    {
      label: "Board feet left",
      formula: "=BOLE.DRIEDTALLY(Kiln_green, Kiln_shrinkage)",
      unit: "bf",
      format: FORMAT.whole,
      name: "Kiln_dry",
      caution: "Bill by a new tally of the dry boards, never by this estimate.",
    },
    {
      label: "Cost of a dry board foot",
      formula: `=BOLE.BOARDCOST(${ofKilnStack("Log cost")}, ${ofKilnStack("Haul")}, ${ofKilnStack("Hours")}, Saw_rate, Kiln_cost, Kiln_dry, "8%")`,
      unit: "per bf",
      format: FORMAT.money,
      key: true,
      name: "Key_dry_foot",
    },
  ]);
  drawLines(page, row, "What an hour and a foot must earn", [
    { label: "Fixed costs of a year", value: 18500, format: FORMAT.moneyWhole, name: "Fixed_costs" },
    { label: "Hours sold in a year", value: 900, unit: "h", name: "Hours_sold" },
    {
      label: "Running costs of an hour",
      value: 12,
      format: FORMAT.money,
      name: "Running_costs",
      says: "invented: fuel, blades, wear",
    },
    { label: "Wages of an hour", value: 44, format: FORMAT.money, name: "Wages" },
    {
      label: "What an hour must earn",
      formula: "=BOLE.HOURLYRATE(Fixed_costs, Hours_sold, Running_costs, Wages)",
      unit: "per hour",
      format: FORMAT.money,
    },
    {
      label: "Feet that cover the fixed costs",
      formula: "=BOLE.BREAKEVENFEET(Fixed_costs, 4.25, 1.9)",
      unit: "bf",
      format: FORMAT.whole,
    },
    {
      label: "Bill for sawing 312 bf, 2 blades",
      formula: "=BOLE.SAWFEE(312, 0.55, 0, 0, 2, 28)",
      format: FORMAT.money,
    },
  ]);
}
