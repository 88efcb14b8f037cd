import type { Draft } from "../../draft";
import { drawFacts } from "../../drawing/facts";
import { caution, markOver, startPage } from "../../drawing/page";
import { drawStatus } from "../../drawing/status";
import { FORMAT } from "../../drawing/style";
import { type Column, drawMainTable } from "../../drawing/table";
import { yardRows } from "../../yard/read";

const ofLog = (column: string) => `XLOOKUP([@Log], Logs[Log], Logs[${column}])`;
/** A log that is not sawn yet is not among the results. */
const ofSawing = (column: string, ifNotSawn: string) =>
  `IFERROR(INDEX(Results[${column}], MATCH([@Log], Results[Log], 0)), ${ifNotSawn})`;

const CALL: readonly Column[] = [
  { header: "Log", from: "log" },
  { header: "Called", from: "called", format: FORMAT.date },
  { header: "Species", formula: `=${ofLog("Species")}` },
  { header: "Does it fit", formula: `=${ofLog("Verdict")}` },
  { header: "Expect per bf", from: "expect", format: FORMAT.money },
  {
    header: "Most to bid",
    formula: "=BOLE.LOGBID([@[Scaled bf]], [@[Expect per bf]], [@[Scaled bf]]*Bid_cost_foot, Bid_margin)",
    format: FORMAT.moneyWhole,
  },
  { header: "Decision", from: "decision" },
  { header: "Paid", formula: `=${ofLog("Paid")}`, format: FORMAT.moneyWhole },
];

const HAUL: readonly Column[] = [
  { header: "Load", formula: `=${ofLog("Load")}` },
  {
    header: "Haul",
    formula: "=XLOOKUP([@Load], Loads[Load], Loads[Haul per bf])*[@[Scaled bf]]",
    format: FORMAT.money,
  },
];

const SAWN: readonly Column[] = [
  { header: "Scaled bf", formula: `=${ofLog("Net")}`, format: FORMAT.whole },
  { header: "Sawn", formula: `=${ofSawing("Sawn", '""')}`, format: FORMAT.date },
  { header: "Sawn bf", formula: `=${ofSawing("Sawn bf", "0")}`, format: FORMAT.whole },
  { header: "Stack", formula: `=${ofSawing("Stack", '""')}` },
  {
    header: "Dried to",
    formula:
      '=IF([@Stack]="", "", IF([@Stack]=Kiln_stack, "kiln-dried", TEXT(XLOOKUP([@Stack], Stacks[Stack], Stacks[Last reading]), "0")&" %"))',
  },
];

const SOLD: readonly Column[] = [
  { header: "Sold bf", formula: "=SUMIFS(Lines[From stock bf], Lines[Log], [@Log])", format: FORMAT.whole },
  { header: "Left bf", formula: "=[@[Sawn bf]]-[@[Sold bf]]", format: FORMAT.whole },
  { header: "Cost so far", formula: `=${ofSawing("Cost so far", "[@Paid]+[@Haul]")}`, format: FORMAT.money },
  { header: "Billed", formula: "=SUMIFS(Lines[Amount], Lines[Log], [@Log])", format: FORMAT.money },
  {
    header: "Profit so far",
    formula: `=[@Billed]-[@[Sold bf]]*${ofSawing("Cost per bf", "0")}`,
    format: FORMAT.money,
  },
  { header: "Left at cost", formula: "=[@[Cost so far]]-[@Billed]+[@[Profit so far]]", format: FORMAT.money },
  {
    header: "Where it stands",
    formula:
      '=IF([@Stack]="", "log in the yard", IF([@[Sold bf]]=0, "in the stack, none sold", IF([@[Left bf]]<0.005, "sold out", "selling")))',
  },
];

const HEADER_ROW = 11;
export const STORY_FIRST = HEADER_ROW + 1;
export const STORY_LAST = HEADER_ROW + yardRows("calls").length;
const WIDTHS = [7, 12, 21, 18, 10, 11, 34, 9, 8, 11, 9, 12, 9, 8, 11, 9, 9, 12, 12, 12, 12, 22];

/** Each log from the call to the sale: what was decided, what came out of it, and the money it made so far. */
export function drawLogToSale(draft: Draft): void {
  const page = startPage(draft, "Log to sale", {
    title: "Log to sale: every log from the call on",
    lead: "One row a log. Type a log's name, the day of the call, what you expect its lumber to sell for and what you decided; the other sheets fill in the rest. Profit so far is what was billed, before tax, less the cost of the feet sold; what is left stands at its cost, not at its price.",
    widths: WIDTHS,
  });
  drawStatus(page, "G1");
  caution(
    page,
    3,
    "a bid is a figure, not an offer: hidden metal, rot and a change of price can eat it. Who may buy, cut or move a street tree is for the owner, the town and the quarantine to say.",
  );
  const total = (label: string, column: string, name: string) => ({
    label,
    formula: `=SUM(Story[${column}])`,
    format: FORMAT.moneyWhole,
    key: true,
    name,
  });
  drawFacts(page, { label: "A", value: "D", says: "E" }, 4, [
    total("Cost of all logs so far", "Cost so far", "Key_all_cost"),
    total("Billed for their lumber", "Billed", "Key_lumber_money"),
    total("Profit on the feet sold", "Profit so far", "Key_log_profit"),
    total("Logs and lumber left, at cost", "Left at cost", "Key_left_at_cost"),
    {
      label: "Lumber left",
      formula: "=SUM(Story[Left bf])",
      format: FORMAT.whole,
      key: true,
      name: "Key_left_feet",
      says: "board feet, as sawn",
    },
  ]);
  const columns = [...CALL, ...HAUL, ...SAWN, ...SOLD];
  drawMainTable(page, HEADER_ROW, "Story", columns, yardRows("calls"));
  markOver(page, "D", STORY_FIRST, STORY_LAST + 200);
}
