import type { Draft } from "../draft";
import { figure, entry } from "../cells";
import { freeze, put, repeatRows, startPage } from "../page";
import { FORMAT, SMALL, TEXT } from "../style";
import { type Column, drawTable } from "../table";
import { yardRows } from "../yard/read";

const COLUMNS: readonly Column[] = [
  { header: "Piece", from: "piece" },
  { header: "Log", from: "log" },
  { header: "Species", from: "species", list: "Species_list" },
  { header: "Thickness", from: "thickness", format: FORMAT.text, list: "Thickness_list" },
  { header: "Width", from: "width" },
  { header: "Length", from: "length", format: FORMAT.text },
  { header: "Surface ft", formula: "=BOLE.SURFACEMEASURE([@Width], [@Length])" },
  { header: "Tally bf", formula: "=BOLE.TALLY([@Width], [@Length], [@Thickness])", format: FORMAT.whole },
  { header: "Exact bf", formula: "=BOLE.BOARDFEET([@Thickness], [@Width], [@Length])", format: FORMAT.two },
  { header: "Green lb", formula: "=BOLE.LUMBERWEIGHT([@Species], [@[Exact bf]])", format: FORMAT.one },
  {
    header: "Width dried",
    formula: '=BOLE.DRIEDSIZE([@Species], [@Width], "30%", Dried_to)',
    format: FORMAT.two,
  },
];
const HEADER_ROW = 10;

/** Square-edged boards piece by piece: as graders tally, and exactly. */
export function drawBoards(draft: Draft): void {
  const page = startPage(draft, "Boards", {
    title: "Boards: what came out square-edged",
    lead: "Thickness is typed as the trade says it: 4/4, 5/4, 8/4 (the column is formatted as Text, so that it stays what you typed). Tally counts whole surface feet of each board, as graders do; exact does not round.",
    widths: [9, 8, 20, 11, 9, 10, 16, 10, 12, 14, 12],
    landscape: false,
    leadLines: 3,
  });
  put(page, "A4", "Boards dry to", TEXT);
  entry(page, "D4", "8%", { name: "Dried_to", format: FORMAT.text });
  put(page, "E4", "wood shrinks from about 30 % down, so the dried width starts there", SMALL);
  const total = (
    row: number,
    label: string,
    formula: string,
    says: string,
    options: { name?: string; array?: boolean } = {},
  ) => {
    put(page, `A${row}`, label, TEXT);
    figure(page, `D${row}`, formula, { format: FORMAT.whole, key: true, ...options });
    put(page, `E${row}`, says, SMALL);
  };
  total(5, "All boards, tallied", "=SUM(Boards[Tally bf])", "board feet", { name: "Key_board_tally" });
  total(6, "All boards, exact", "=SUM(Boards[Exact bf])", "board feet: what rounding to the foot moves");
  const oneCall = '=BOLE.TALLY(FILTER(Boards[Width], Boards[Log]="L02"), 10, "4/4")';
  total(7, "Log L02 in one call", oneCall, oneCall, { array: true });
  freeze(page, HEADER_ROW, 1);
  repeatRows(page, HEADER_ROW, HEADER_ROW);
  drawTable(page, `A${HEADER_ROW}`, "Boards", COLUMNS, yardRows("boards", ["thickness"]));
}
