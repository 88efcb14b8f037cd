import { serialOf } from "../../xlsx/serial";
import type { Column, Figure, TableSheet } from "../definition";
import { FILLED, FORMAT } from "../formats";

/** A place shows its sum once, in its first row. */
const FIRST_AT_PLACE = "MATCH([@Place], Table[Place], 0)=ROW([@Place])-ROW(INDEX(Table[Place], 1))+1";

const COLUMNS: readonly Column[] = [
  { heading: "Tag", kind: "text", width: 22, note: "log, stack, board or slab" },
  { heading: "What", kind: "text", width: 12, note: "log, board or slab" },
  { heading: "Species", kind: "text", width: 17, note: "choose or type", list: "species" },
  { heading: "Place", kind: "text", width: 16, note: "where it lies" },
  { heading: "Since", format: FORMAT.date, width: 11, note: "a date" },
  { heading: "Board feet", kind: "number", format: FORMAT.one, width: 10, note: "by its own sheet" },
  { heading: "Cost", kind: "number", format: FORMAT.money, width: 9, note: "a board foot, so far" },
  {
    heading: "Days lying",
    formula:
      '=IF(OR([@Since]="", {Day of the count}=""), "", IF([@Since]>{Day of the count}, "came later", {Day of the count}-[@Since]))',
    format: FORMAT.whole,
    width: 10,
    note: "to the day of the count",
  },
  {
    heading: "Worth",
    formula: '=IF([@Cost]="", 0, BOLE.LINEAMOUNT([@[Board feet]], [@Cost]))',
    format: FILLED.money,
    width: 11,
    note: "at cost",
  },
  {
    heading: "At this place",
    formula: `=IF([@Place]="", "", IF(${FIRST_AT_PLACE}, SUMIFS(Table[Worth], Table[Place], [@Place]), ""))`,
    format: FORMAT.money,
    width: 11,
    note: "all that lies there",
  },
  {
    heading: "Verdict",
    formula: '=IF(N([@[Days lying]])=0, "", IF([@[Days lying]]>{Days are enough}, "OVER: saw or sell", "may lie"))',
    width: 18,
    note: "by the days above",
    marksOver: true,
  },
];

const worthOf = (what: string): Figure => ({
  label: `Worth of ${what}s`,
  formula: `=SUMIFS(Table[Worth], Table[What], "${what}*")`,
  format: FORMAT.money,
  note: "at cost",
});

const FIGURES: readonly Figure[] = [
  { label: "Lying", formula: "=COUNTA(Table[Tag])", format: FORMAT.whole, note: "rows of the list" },
  { label: "Board feet", formula: "=SUM(Table[Board feet])", format: FORMAT.one, note: "logs by their scale" },
  {
    label: "Worth of all",
    formula: "=SUM(Table[Worth])",
    format: FORMAT.money,
    note: "at cost: what the books ask at the year's end is for an accountant",
  },
  ...["log", "board", "slab"].map(worthOf),
  { label: "Longest lying", formula: "=MAX(Table[Days lying])", format: FORMAT.whole, note: "days" },
];

/** Everything that lies in the yard in one list: where, since when, and what money is in it. */
export const STOCK: TableSheet = {
  title: "Stock by tag",
  table: "Stock",
  lead: "Inventory of the yard, logs, boards and slabs in one list: type the day of the count first, then a row for each tag with its place, its feet and what a foot has cost so far. What lies too long, and how much money lies where?",
  cautions: [
    "logs roll and stacks slide while you count: chock the bottom row, stay off the pile and out of its fall (common practice, no source).",
  ],
  settings: [
    {
      label: "Day of the count",
      kind: "number",
      value: serialOf(new Date(Date.UTC(2026, 0, 1))),
      format: FORMAT.date,
      note: "a date (invented); =TODAY() keeps it at today",
    },
    { label: "Days are enough", kind: "number", value: 365, note: "after so many it is marked (invented)" },
  ],
  figures: FIGURES,
  frozenColumns: 1,
  columns: COLUMNS,
  examples: [
    {
      Tag: "A1, invented",
      What: "log",
      Species: "red maple",
      Place: "log deck",
      Since: new Date(Date.UTC(2025, 9, 2)),
      "Board feet": 124,
      Cost: 0.45,
    },
    {
      Tag: "Stack 2, invented",
      What: "boards",
      Species: "white oak",
      Place: "shed",
      Since: new Date(Date.UTC(2024, 8, 12)),
      "Board feet": 600,
      Cost: 1.6,
    },
    {
      Tag: "S1, invented",
      What: "slab",
      Species: "black walnut",
      Place: "shed",
      Since: new Date(Date.UTC(2025, 4, 20)),
      "Board feet": 46.6,
      Cost: 3.2,
    },
  ],
  blankRows: 12,
};
