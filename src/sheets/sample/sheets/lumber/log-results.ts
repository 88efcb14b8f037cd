import type { Column, TableSheet } from "../../../definition";
import { DOLLARS, FORMAT } from "../../../formats";
import type { Draft } from "../../draft";
import { drawTableSheet } from "../../drawing/table-sheet";
import { lookUp } from "../../look-up";
import { yardRows } from "../../yard/read";

const ofLog = (column: string) => lookUp("[@Log]", "Logs[Log]", `Logs[${column}]`);

const COLUMNS: readonly Column[] = [
  { heading: "Log", width: 8 },
  { heading: "Species", width: 20, formula: `=${ofLog("Species")}` },
  { heading: "Sawn", width: 12, format: FORMAT.date },
  { heading: "Stack", width: 8, list: "Stack_list" },
  { heading: "Scaled bf", width: 10, formula: `=${ofLog("Net")}`, format: FORMAT.whole },
  {
    heading: "Sawn bf",
    width: 10,
    formula: "=SUMIFS(Boards[Tally bf], Boards[Log], [@Log])+SUMIFS(Slabs[Board feet], Slabs[Log], [@Log])",
    format: FORMAT.whole,
  },
  { heading: "Overrun %", width: 10, formula: "=BOLE.OVERRUN([@[Sawn bf]], [@[Scaled bf]])", format: FORMAT.one },
  {
    heading: "bf per ft3",
    width: 10,
    formula: `=BOLE.RECOVERY([@[Sawn bf]], ${ofLog("Cubic ft")})`,
    format: FORMAT.two,
  },
  { heading: "Hours", width: 8 },
  { heading: "Blades", width: 9, format: DOLLARS.whole },
  { heading: "Log cost", width: 10, formula: `=${ofLog("Paid")}+[@Blades]`, format: DOLLARS.whole },
  { heading: "Haul", width: 10, formula: `=${lookUp("[@Log]", "Story[Log]", "Story[Haul]")}`, format: DOLLARS.cents },
  {
    heading: "Kiln",
    width: 10,
    formula: "=IF([@Stack]=Kiln_stack, Kiln_cost*[@[Sawn bf]]/Kiln_green, 0)",
    format: DOLLARS.cents,
  },
  {
    heading: "Cost so far",
    width: 12,
    formula: "=[@[Log cost]]+[@Haul]+[@Hours]*Saw_rate+[@Kiln]",
    format: DOLLARS.cents,
  },
  {
    heading: "Cost per bf",
    width: 10,
    formula: "=BOLE.BOARDCOST([@[Log cost]], [@Haul], [@Hours], Saw_rate, [@Kiln], [@[Sawn bf]])",
    format: FORMAT.two,
  },
];

const RESULTS: TableSheet = {
  title: "Log results",
  heading: "Log results: what each log gave and cost",
  table: "Results",
  lead: "Sawn feet come from Boards and Slabs, scaled feet from the log book. Overrun says how far the saw beat the scale by the rule chosen there. A log of the kiln's stack bears its share of the kiln.",
  cautions: [],
  settings: [],
  figures: [
    {
      label: "An hour at the mill",
      formula: "=Running_costs+Wages",
      format: DOLLARS.cents,
      note: "running costs and wages of the sheet Money, where the fixed costs of the year stand too",
      name: "Saw_rate",
    },
    {
      label: "All sawn, board feet",
      formula: "=SUM(Table[Sawn bf])",
      format: FORMAT.whole,
      note: "",
      name: "Key_sawn_feet",
    },
    {
      label: "Overrun of all, percent",
      formula: "=BOLE.OVERRUN(SUM(Table[Sawn bf]), SUM(Table[Scaled bf]))",
      format: FORMAT.one,
      note: "",
      name: "Key_overrun",
    },
    {
      label: "Dearest board foot",
      formula: "=MAX(Table[Cost per bf])",
      format: DOLLARS.cents,
      note: "",
      name: "Key_dearest_foot",
    },
  ],
  valueColumn: 3,
  frozenColumns: 1,
  columns: COLUMNS,
  examples: yardRows("sawing"),
  blankRows: 0,
};

/** What each sawn log gave, against its scale, and what a board foot of it cost so far. */
export function drawLogResults(draft: Draft): void {
  drawTableSheet(draft, RESULTS);
}
