import type { Draft } from "../draft";
import { entry, figure } from "../cells";
import { freeze, put, repeatRows, startPage } from "../page";
import { FORMAT, SMALL, TEXT } from "../style";
import { type Column, drawTable } from "../table";
import { yardRows } from "../yard/read";

const ofLog = (column: string) => `XLOOKUP([@Log], Logs[Log], Logs[${column}])`;

const COLUMNS: readonly Column[] = [
  { header: "Log", from: "log" },
  { header: "Species", formula: `=${ofLog("Species")}` },
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
  {
    header: "Haul",
    formula: `=XLOOKUP(${ofLog("Load")}, Loads[Load], Loads[Haul per bf])*[@[Scaled bf]]`,
    format: FORMAT.money,
  },
  {
    header: "Cost per bf",
    formula: "=BOLE.BOARDCOST([@[Log cost]], [@Haul], [@Hours], Saw_rate, 0, [@[Sawn bf]])",
    format: FORMAT.two,
  },
];
const HEADER_ROW = 10;

/** What each sawn log gave, against its scale, and what a green board foot of it cost. */
export function drawLogResults(draft: Draft): void {
  const page = startPage(draft, "Log results", {
    title: "Log results: what each log gave and cost",
    lead: "Sawn feet come from Boards and Slabs, scaled feet from the log book. Overrun says how far the saw beat the scale by the rule chosen there.",
    widths: [24, 21, 11, 11, 11, 11, 9, 10, 10, 11, 12],
  });
  put(page, "A4", "An hour at the mill", TEXT);
  entry(page, "B4", 55, { format: FORMAT.money, name: "Saw_rate" });
  put(page, "C4", "invented: both partners, fuel, upkeep", SMALL);
  put(page, "A5", "All sawn, board feet", TEXT);
  figure(page, "B5", "=SUM(Results[Sawn bf])", { format: FORMAT.whole, key: true, name: "Key_sawn_feet" });
  put(page, "A6", "Overrun of all, percent", TEXT);
  figure(page, "B6", "=BOLE.OVERRUN(SUM(Results[Sawn bf]), SUM(Results[Scaled bf]))", {
    format: FORMAT.one,
    key: true,
    name: "Key_overrun",
  });
  put(page, "A7", "Dearest green board foot", TEXT);
  figure(page, "B7", "=MAX(Results[Cost per bf])", { format: FORMAT.money, key: true, name: "Key_dearest_foot" });
  freeze(page, HEADER_ROW, 1);
  repeatRows(page, HEADER_ROW, HEADER_ROW);
  drawTable(page, `A${HEADER_ROW}`, "Results", COLUMNS, yardRows("sawing"));
}
