import type { Column, TableSheet } from "../../../definition";
import { DOLLARS, FORMAT } from "../../../formats";
import { tableRows } from "../../../laid-out";
import type { Draft } from "../../draft";
import { drawTableSheet } from "../../drawing/table-sheet";
import { lookUp } from "../../look-up";
import { yardRows } from "../../yard/read";

const ofLog = (column: string) => lookUp("[@Log]", "Logs[Log]", `Logs[${column}]`);
/** A log that is not sawn yet is not among the results. */
const ofSawing = (column: string, ifNotSawn: string) =>
  `IFERROR(${lookUp("[@Log]", "Results[Log]", `Results[${column}]`)}, ${ifNotSawn})`;

const CALL: readonly Column[] = [
  { heading: "Log", width: 7 },
  { heading: "Called", width: 12, format: FORMAT.date },
  { heading: "Species", width: 20, formula: `=${ofLog("Species")}` },
  { heading: "Does it fit", marksOver: true, width: 17, formula: `=${ofLog("Verdict")}` },
  { heading: "Expect per bf", width: 10, format: DOLLARS.cents },
  {
    heading: "Most to bid",
    width: 10,
    formula: "=BOLE.LOGBID([@[Scaled bf]], [@[Expect per bf]], [@[Scaled bf]]*Bid_cost_foot, Bid_margin)",
    format: DOLLARS.whole,
  },
  { heading: "Decision", width: 31 },
  { heading: "Paid", width: 9, formula: `=${ofLog("Paid")}`, format: DOLLARS.whole },
];

const HAUL: readonly Column[] = [
  { heading: "Load", width: 7, formula: `=${ofLog("Load")}` },
  {
    heading: "Haul",
    width: 10,
    formula: `=${lookUp("[@Load]", "Loads[Load]", "Loads[Haul per bf]")}*[@[Scaled bf]]`,
    format: DOLLARS.cents,
  },
];

const SAWN: readonly Column[] = [
  { heading: "Scaled bf", width: 9, formula: `=${ofLog("Net")}`, format: FORMAT.whole },
  { heading: "Sawn", width: 12, formula: `=${ofSawing("Sawn", '""')}`, format: FORMAT.date },
  { heading: "Sawn bf", width: 9, formula: `=${ofSawing("Sawn bf", "0")}`, format: FORMAT.whole },
  { heading: "Stack", width: 8, formula: `=${ofSawing("Stack", '""')}` },
  {
    heading: "Dried to",
    width: 11,
    formula: `=IF([@Stack]="", "", IF([@Stack]=Kiln_stack, "kiln-dried", TEXT(${lookUp("[@Stack]", "Stacks[Stack]", "Stacks[Last reading]")}, "0")&" %"))`,
  },
];

const SOLD: readonly Column[] = [
  { heading: "Sold bf", width: 9, formula: "=SUMIFS(Lines[From stock bf], Lines[Log], [@Log])", format: FORMAT.whole },
  { heading: "Left bf", width: 9, formula: "=[@[Sawn bf]]-[@[Sold bf]]", format: FORMAT.whole },
  {
    heading: "Cost so far",
    width: 12,
    formula: `=${ofSawing("Cost so far", "[@Paid]+[@Haul]")}`,
    format: DOLLARS.cents,
  },
  { heading: "Billed", width: 12, formula: "=SUMIFS(Lines[Amount], Lines[Log], [@Log])", format: DOLLARS.cents },
  {
    heading: "Profit so far",
    width: 12,
    formula: `=[@Billed]-[@[Sold bf]]*${ofSawing("Cost per bf", "0")}`,
    format: DOLLARS.cents,
  },
  {
    heading: "Left at cost",
    width: 12,
    formula: "=[@[Cost so far]]-[@Billed]+[@[Profit so far]]",
    format: DOLLARS.cents,
  },
  {
    heading: "Where it stands",
    width: 22,
    formula:
      '=IF([@Stack]="", "log in the yard", IF([@[Sold bf]]=0, "in the stack, none sold", IF([@[Left bf]]<0.005, "sold out", "selling")))',
  },
];

const STORY: TableSheet = {
  title: "Log to sale",
  heading: "Log to sale: every log from the call on",
  table: "Story",
  lead: "One row a log. Type a log's name, the day of the call, what you expect its lumber to sell for and what you decided; the other sheets fill in the rest. Profit so far is what was billed, before tax, less the cost of the feet sold; what is left stands at its cost, not at its price.",
  cautions: [
    "a bid is a figure, not an offer: hidden metal, rot and a change of price can eat it. Who may buy, cut or move a street tree is for the owner, the town and the quarantine to say.",
  ],
  settings: [],
  figures: [
    {
      label: "Cost of all logs so far",
      formula: "=SUM(Table[Cost so far])",
      format: DOLLARS.whole,
      note: "",
      name: "Key_all_cost",
    },
    {
      label: "Billed for their lumber",
      formula: "=SUM(Table[Billed])",
      format: DOLLARS.whole,
      note: "",
      name: "Key_lumber_money",
    },
    {
      label: "Profit on the feet sold, before fixed costs",
      formula: "=SUM(Table[Profit so far])",
      format: DOLLARS.whole,
      note: "",
      name: "Key_log_profit",
    },
    {
      label: "The same after the fixed costs of a year",
      formula: "={Profit on the feet sold, before fixed costs}-Fixed_costs",
      format: DOLLARS.whole,
      note: "the sheet Money has the fixed costs, and the feet to sell that cover them",
      name: "Key_after_fixed",
    },
    {
      label: "Logs and lumber left, at cost",
      formula: "=SUM(Table[Left at cost])",
      format: DOLLARS.whole,
      note: "",
      name: "Key_left_at_cost",
    },
    {
      label: "Lumber left",
      formula: "=SUM(Table[Left bf])",
      format: FORMAT.whole,
      note: "board feet, as sawn",
      name: "Key_left_feet",
    },
  ],
  valueColumn: 4,
  frozenColumns: 1,
  columns: [...CALL, ...HAUL, ...SAWN, ...SOLD],
  examples: yardRows("calls"),
  blankRows: 0,
  print: { newPageAt: ["Load", "Sold bf"] },
};

/** The rows of its table on the sheet, for charts. */
export const STORY_ROWS = tableRows(STORY);

/** Each log from the call to the sale: what was decided, what came out of it, and the money it made so far. */
export function drawLogToSale(draft: Draft): void {
  drawTableSheet(draft, STORY);
}
