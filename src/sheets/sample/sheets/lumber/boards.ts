import type { Column, TableSheet } from "../../../definition";
import { FEET_OF_A_BOARD } from "../../../definitions/board-columns";
import { FORMAT } from "../../../formats";
import type { Draft } from "../../draft";
import { drawTableSheet } from "../../drawing/table-sheet";
import { lookUp } from "../../look-up";
import { yardRows } from "../../yard/read";

const COLUMNS: readonly Column[] = [
  { heading: "Piece", width: 8 },
  { heading: "Log", width: 8 },
  { heading: "Species", width: 20, list: "species" },
  { heading: "Thickness", width: 11, format: FORMAT.text, list: "thicknesses" },
  { heading: "Width", width: 9 },
  { heading: "Length", width: 10, format: FORMAT.text },
  { heading: "Width after kiln", width: 11 },
  { heading: "Surface ft", width: 10, formula: "=BOLE.SURFACEMEASURE([@Width], [@Length])" },
  ...FEET_OF_A_BOARD,
  { heading: "Green lb", width: 10, formula: "=BOLE.LUMBERWEIGHT([@Species], [@[Exact bf]])", format: FORMAT.one },
  {
    heading: "Width dried",
    width: 10,
    formula: '=BOLE.DRIEDSIZE([@Species], [@Width], "30%", Dried_to)',
    format: FORMAT.two,
  },
  {
    heading: "Net tally bf",
    width: 10,
    formula: "=IF([@[Width after kiln]]>0, BOLE.TALLY([@[Width after kiln]], [@Length], [@Thickness]), 0)",
    format: FORMAT.whole,
  },
  { heading: "Product", width: 27, formula: '=[@Species]&" "&[@Thickness]&" board"' },
  {
    heading: "Invoice",
    width: 11,
    formula: `=IFERROR(${lookUp("[@Piece]", "Lines[Piece]", "Lines[Invoice]")}, "in stock")`,
  },
];

const ONE_CALL = '=BOLE.TALLY(FILTER(Boards[Width], Boards[Log]="L02"), 10, "4/4")';

const BOARDS: TableSheet = {
  title: "Boards",
  heading: "Boards: what came out square-edged",
  table: "Boards",
  lead: "Widths in inches, lengths in feet. Thickness is typed as the trade says it: 4/4, 5/4, 8/4 (the column is formatted as Text, so that it stays what you typed). Tally counts whole surface feet of each board, as graders do; exact does not round. Boards from the kiln are measured again and sold by that net tally.",
  cautions: [],
  settings: [
    {
      label: "Boards dry to",
      kind: "text",
      value: "8%",
      name: "Dried_to",
      note: "wood shrinks from about 30 % down, so the dried width starts there",
    },
  ],
  figures: [
    {
      label: "All boards, tallied",
      formula: "=SUM(Table[Tally bf])",
      format: FORMAT.whole,
      note: "board feet",
      name: "Key_board_tally",
    },
    {
      label: "All boards, exact",
      formula: "=SUM(Table[Exact bf])",
      format: FORMAT.whole,
      note: "board feet: what rounding to the foot moves",
    },
    {
      label: "Log L02 in one call",
      formula: ONE_CALL,
      format: FORMAT.whole,
      note: "board feet by TALLY over the boards of one log",
    },
  ],
  valueColumn: 4,
  frozenColumns: 1,
  columns: COLUMNS,
  examples: yardRows("boards", ["Thickness"]),
  blankRows: 0,
  print: { newPageAt: ["Green lb"] },
};

/** Square-edged boards piece by piece: as graders tally, exactly, and once more after the kiln. */
export function drawBoards(draft: Draft): void {
  drawTableSheet(draft, BOARDS);
}
