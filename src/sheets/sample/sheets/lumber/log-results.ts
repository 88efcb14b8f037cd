import type { Draft } from "../../draft";
import { drawFacts } from "../../drawing/facts";
import { startPage } from "../../drawing/page";
import { FORMAT } from "../../drawing/style";
import { type Column, drawMainTable } from "../../drawing/table";
import { yardRows } from "../../yard/read";

const ofLog = (column: string) => `XLOOKUP([@Log], Logs[Log], Logs[${column}])`;

const COLUMNS: readonly Column[] = [
  { header: "Log", from: "log" },
  { header: "Species", formula: `=${ofLog("Species")}` },
  { header: "Sawn", from: "sawn", format: FORMAT.date },
  { header: "Stack", from: "stack", list: "Stack_list" },
  { header: "Scaled bf", formula: `=${ofLog("Net")}`, format: FORMAT.whole },
  {
    header: "Sawn bf",
    formula: "=SUMIFS(Boards[Tally bf], Boards[Log], [@Log])+SUMIFS(Slabs[Board feet], Slabs[Log], [@Log])",
    format: FORMAT.whole,
  },
  { header: "Overrun %", formula: "=BOLE.OVERRUN([@[Sawn bf]], [@[Scaled bf]])", format: FORMAT.one },
  { header: "bf per ft3", formula: `=BOLE.RECOVERY([@[Sawn bf]], ${ofLog("Cubic ft")})`, format: FORMAT.two },
  { header: "Hours", from: "hours" },
  { header: "Blades", from: "blades", format: FORMAT.moneyWhole },
  { header: "Log cost", formula: `=${ofLog("Paid")}+[@Blades]`, format: FORMAT.moneyWhole },
  { header: "Haul", formula: "=XLOOKUP([@Log], Story[Log], Story[Haul])", format: FORMAT.money },
  {
    header: "Kiln",
    formula: "=IF([@Stack]=Kiln_stack, Kiln_cost*[@[Sawn bf]]/Kiln_green, 0)",
    format: FORMAT.money,
  },
  {
    header: "Cost so far",
    formula: "=[@[Log cost]]+[@Haul]+[@Hours]*Saw_rate+[@Kiln]",
    format: FORMAT.money,
  },
  {
    header: "Cost per bf",
    formula: "=BOLE.BOARDCOST([@[Log cost]], [@Haul], [@Hours], Saw_rate, [@Kiln], [@[Sawn bf]])",
    format: FORMAT.two,
  },
];

/** What each sawn log gave, against its scale, and what a board foot of it cost so far. */
export function drawLogResults(draft: Draft): void {
  const page = startPage(draft, "Log results", {
    title: "Log results: what each log gave and cost",
    lead: "Sawn feet come from Boards and Slabs, scaled feet from the log book. Overrun says how far the saw beat the scale by the rule chosen there. A log of the kiln's stack bears its share of the kiln.",
    widths: [26, 21, 12, 9, 11, 11, 11, 11, 9, 10, 10, 11, 11, 13, 12],
  });
  drawFacts(page, { label: "A", value: "B", says: "C" }, 4, [
    {
      label: "An hour at the mill",
      value: 55,
      format: FORMAT.money,
      name: "Saw_rate",
      says: "invented: both partners, fuel, upkeep; the year's fixed costs stand on the sheet Money",
    },
    {
      label: "All sawn, board feet",
      formula: "=SUM(Results[Sawn bf])",
      format: FORMAT.whole,
      key: true,
      name: "Key_sawn_feet",
    },
    {
      label: "Overrun of all, percent",
      formula: "=BOLE.OVERRUN(SUM(Results[Sawn bf]), SUM(Results[Scaled bf]))",
      format: FORMAT.one,
      key: true,
      name: "Key_overrun",
    },
    {
      label: "Dearest board foot",
      formula: "=MAX(Results[Cost per bf])",
      format: FORMAT.money,
      key: true,
      name: "Key_dearest_foot",
    },
  ]);
  drawMainTable(page, 10, "Results", COLUMNS, yardRows("sawing"));
}
