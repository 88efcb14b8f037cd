import type { Column, Figure, TableSheet } from "../definition";
import { FILLED, FORMAT } from "../formats";
import { FEET_OF_A_BOARD } from "./board-columns";
import { NOT_GRADED } from "./cautions";

const MEASURED: readonly Column[] = [
  { heading: "Board", kind: "text", width: 16, note: "number, tag or stack" },
  { heading: "Species", kind: "text", width: 17, note: "choose or type", list: "species" },
  { heading: "Thickness", kind: "text", width: 11, note: "under 1 in counts as 1 in", list: "thicknesses" },
  { heading: "Width", kind: "text", width: 8, note: "inches" },
  { heading: "Length", kind: "text", width: 9, note: "feet; 8-6 is 8 ft 6 in" },
  { heading: "Count", kind: "number", width: 7, note: "1 if blank" },
  { heading: "Grade", kind: "text", width: 14, note: "or its better face" },
];

const [TALLY, EXACT] = FEET_OF_A_BOARD;
const COUNTED: readonly Column[] = [
  {
    heading: "Pieces",
    formula: '=IF([@Width]="", 0, IF([@Count]="", 1, [@Count]))',
    format: FILLED.whole,
    width: 8,
    note: "of this size",
  },
  { ...TALLY!, format: FILLED.two, note: "one board, whole feet" },
  { ...EXACT!, format: FILLED.two, width: 9, note: "one board, no rounding" },
  {
    heading: "Board feet",
    formula: '=IF({To the inch}="yes", [@[Exact bf]], [@[Tally bf]])*[@Pieces]',
    format: FILLED.two,
    width: 10,
    note: "of the line, as paid",
  },
  { heading: "Price", kind: "number", format: FORMAT.money, width: 9, note: "a board foot" },
  {
    heading: "Value",
    formula: '=IF([@Price]="", 0, BOLE.LINEAMOUNT([@[Board feet]], [@Price]))',
    format: FILLED.money,
    width: 11,
    note: "of the line",
  },
  {
    heading: "Side by side",
    formula: '=IF([@Width]="", 0, BOLE.MEASURE([@Width], "in")*[@Pieces])',
    format: FILLED.two,
    width: 9,
    note: "inches, all its widths",
  },
];

const FIGURES: readonly Figure[] = [
  { label: "Pieces", formula: "=SUM(Table[Pieces])", format: FORMAT.whole, note: "" },
  { label: "Board feet", formula: "=SUM(Table[Board feet])", format: FORMAT.two, note: "as paid" },
  { label: "Value", formula: "=SUM(Table[Value])", format: FORMAT.money, note: "before tax" },
  {
    label: "Mean width",
    formula: "=IF({Pieces}=0, 0, SUM(Table[Side by side])/{Pieces})",
    format: FORMAT.two,
    note: "inches, of a piece",
  },
];

/** Square-edged boards by size: how many feet they are, and what they bring. */
export const BOARD_TALLY: TableSheet = {
  title: "Board tally",
  table: "BoardTally",
  lead: "Tally lumber as it comes off the saw or out of the kiln: type thickness, width and length of each board first, and a count where several are alike. Feet, mean width and what the lot is worth add up above.",
  cautions: [NOT_GRADED],
  settings: [
    { label: "Lot", kind: "text", value: "Example, invented", note: "what is tallied, and for whom" },
    {
      label: "To the inch",
      kind: "text",
      value: "no",
      note: "yes: paid by exact feet; else by tally, whole surface feet, as graders do",
    },
  ],
  figures: FIGURES,
  frozenColumns: 1,
  columns: [...MEASURED, ...COUNTED],
  examples: [
    { Board: "B1, invented", Species: "black walnut", Thickness: "5/4", Width: "9 1/2", Length: "8", Price: 8.5 },
    {
      Board: "Stack, invented",
      Species: "red maple",
      Thickness: "4/4",
      Width: "6 1/2",
      Length: "10",
      Count: 12,
      Grade: "one face clear",
      Price: 3.5,
    },
  ],
  blankRows: 18,
};
