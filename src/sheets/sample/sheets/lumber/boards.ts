import type { Draft } from "../../draft";
import { drawFacts } from "../../drawing/facts";
import { startPage } from "../../drawing/page";
import { drawStatus } from "../../drawing/status";
import { FORMAT } from "../../drawing/style";
import { type Column, drawMainTable } from "../../drawing/table";
import { yardRows } from "../../yard/read";

const COLUMNS: readonly Column[] = [
  { header: "Piece", from: "piece" },
  { header: "Log", from: "log" },
  { header: "Species", from: "species", list: "Species_list" },
  { header: "Thickness", from: "thickness", format: FORMAT.text, list: "Thickness_list" },
  { header: "Width", from: "width" },
  { header: "Length", from: "length", format: FORMAT.text },
  { header: "Width after kiln", from: "dry_width" },
  { header: "Surface ft", formula: "=BOLE.SURFACEMEASURE([@Width], [@Length])" },
  { header: "Tally bf", formula: "=BOLE.TALLY([@Width], [@Length], [@Thickness])", format: FORMAT.whole },
  { header: "Exact bf", formula: "=BOLE.BOARDFEET([@Thickness], [@Width], [@Length])", format: FORMAT.two },
  { header: "Green lb", formula: "=BOLE.LUMBERWEIGHT([@Species], [@[Exact bf]])", format: FORMAT.one },
  {
    header: "Width dried",
    formula: '=BOLE.DRIEDSIZE([@Species], [@Width], "30%", Dried_to)',
    format: FORMAT.two,
  },
  {
    header: "Net tally bf",
    formula: "=IF([@[Width after kiln]]>0, BOLE.TALLY([@[Width after kiln]], [@Length], [@Thickness]), 0)",
    format: FORMAT.whole,
  },
  { header: "Product", formula: '=[@Species]&" "&[@Thickness]&" board"' },
  { header: "Invoice", formula: '=XLOOKUP([@Piece], Lines[Piece], Lines[Invoice], "in stock")' },
];

const ONE_CALL = '=BOLE.TALLY(FILTER(Boards[Width], Boards[Log]="L02"), 10, "4/4")';

/** Square-edged boards piece by piece: as graders tally, exactly, and once more after the kiln. */
export function drawBoards(draft: Draft): void {
  const page = startPage(draft, "Boards", {
    title: "Boards: what came out square-edged",
    lead: "Widths in inches, lengths in feet. Thickness is typed as the trade says it: 4/4, 5/4, 8/4 (the column is formatted as Text, so that it stays what you typed). Tally counts whole surface feet of each board, as graders do; exact does not round. Boards from the kiln are measured again and sold by that net tally.",
    widths: [9, 8, 20, 11, 9, 10, 11, 16, 10, 12, 14, 13, 11, 27, 11],
  });
  drawStatus(page, "H1");
  drawFacts(page, { label: "A", value: "D", says: "E" }, 4, [
    {
      label: "Boards dry to",
      value: "8%",
      name: "Dried_to",
      format: FORMAT.text,
      says: "wood shrinks from about 30 % down, so the dried width starts there",
    },
    ...[
      { label: "All boards, tallied", formula: "=SUM(Boards[Tally bf])", name: "Key_board_tally", says: "board feet" },
      {
        label: "All boards, exact",
        formula: "=SUM(Boards[Exact bf])",
        says: "board feet: what rounding to the foot moves",
      },
      { label: "Log L02 in one call", formula: ONE_CALL, says: ONE_CALL, array: true },
    ].map((total) => ({ ...total, format: FORMAT.whole, key: true })),
  ]);
  drawMainTable(page, 10, "Boards", COLUMNS, yardRows("boards", ["thickness"]));
}
