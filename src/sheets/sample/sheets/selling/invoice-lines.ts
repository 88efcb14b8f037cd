import type { Column, TableSheet } from "../../../definition";
import { DOLLARS, FORMAT } from "../../../formats";
import type { Draft } from "../../draft";
import { drawTableSheet } from "../../drawing/table-sheet";
import { lookUp } from "../../look-up";
import { yardRows } from "../../yard/read";

/** A column of the piece sold, which is a board or a slab; nothing for a service. */
const ofPiece = (board: string, slab: string, none: string) =>
  `=IF([@Piece]="", ${none}, IFERROR(${lookUp("[@Piece]", "Boards[Piece]", `Boards[${board}]`)}, ${lookUp("[@Piece]", "Slabs[Piece]", `Slabs[${slab}]`)}))`;

const COLUMNS: readonly Column[] = [
  { heading: "Invoice", width: 10 },
  { heading: "Piece", width: 9 },
  { heading: "Description", width: 46 },
  { heading: "Quantity", width: 10, format: FORMAT.two },
  { heading: "Unit", width: 10 },
  { heading: "Price", width: 11, format: DOLLARS.cents },
  { heading: "Amount", width: 12, formula: "=BOLE.LINEAMOUNT([@Quantity], [@Price])", format: DOLLARS.cents },
  {
    heading: "Date",
    width: 12,
    formula: `=${lookUp("[@Invoice]", "Invoices[Invoice]", "Invoices[Date]")}`,
    format: FORMAT.date,
  },
  { heading: "Log", width: 8, formula: ofPiece("Log", "Log", '""') },
  { heading: "Product", width: 27, formula: ofPiece("Product", "Product", '"work"') },
  { heading: "From stock bf", width: 11, formula: ofPiece("Tally bf", "Board feet", "0"), format: FORMAT.two },
];

const LINES: TableSheet = {
  title: "Invoice lines",
  heading: "Invoice lines: what was sold",
  table: "Lines",
  lead: "Type the invoice, the piece and what is billed for it; keep the lines of one invoice together. Each line is rounded to the cent by itself, so that the lines a customer adds up come to the total. From stock counts the piece as it was sawn: a kiln-dried board is billed by its smaller net tally.",
  cautions: [
    "bill dry lumber by a new tally: adding shrinkage back is not allowed where Handbook 130 applies. Softwood sold by its nominal size: show the actual size too.",
  ],
  settings: [],
  figures: [{ label: "All lines", formula: "=SUM(Table[Amount])", format: DOLLARS.cents, note: "" }],
  valueColumn: 3,
  frozenColumns: 2,
  columns: COLUMNS,
  examples: yardRows("invoice-lines"),
  blankRows: 0,
};

/** Invoice lines, each rounded to the cent, so that they add up to the total. */
export function drawInvoiceLines(draft: Draft): void {
  drawTableSheet(draft, LINES);
}
