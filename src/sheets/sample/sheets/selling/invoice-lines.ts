import type { Draft } from "../../draft";
import { drawFacts } from "../../drawing/facts";
import { caution, startPage } from "../../drawing/page";
import { drawStatus } from "../../drawing/status";
import { FORMAT } from "../../drawing/style";
import { type Column, drawMainTable } from "../../drawing/table";
import { yardRows } from "../../yard/read";

/** A column of the piece sold, which is a board or a slab; nothing for a service. */
const ofPiece = (board: string, slab: string, none: string) =>
  `=IF([@Piece]="", ${none}, XLOOKUP([@Piece], Boards[Piece], Boards[${board}], XLOOKUP([@Piece], Slabs[Piece], Slabs[${slab}])))`;

const COLUMNS: readonly Column[] = [
  { header: "Invoice", from: "invoice" },
  { header: "Piece", from: "piece" },
  { header: "Description", from: "description" },
  { header: "Quantity", from: "quantity", format: FORMAT.two },
  { header: "Unit", from: "unit" },
  { header: "Price", from: "price", format: FORMAT.money },
  { header: "Amount", formula: "=BOLE.LINEAMOUNT([@Quantity], [@Price])", format: FORMAT.money },
  { header: "Date", formula: "=XLOOKUP([@Invoice], Invoices[Invoice], Invoices[Date])", format: FORMAT.date },
  { header: "Log", formula: ofPiece("Log", "Log", '""') },
  { header: "Product", formula: ofPiece("Product", "Product", '"work"') },
  { header: "From stock bf", formula: ofPiece("Tally bf", "Board feet", "0"), format: FORMAT.two },
];
const HEADER_ROW = 8;

/** Invoice lines, each rounded to the cent, so that they add up to the total. */
export function drawInvoiceLines(draft: Draft): void {
  const page = startPage(draft, "Invoice lines", {
    title: "Invoice lines: what was sold",
    lead: "Type the invoice, the piece and what is billed for it; keep the lines of one invoice together. Each line is rounded to the cent by itself, so that the lines a customer adds up come to the total. From stock counts the piece as it was sawn: a kiln-dried board is billed by its smaller net tally.",
    widths: [10, 9, 54, 11, 10, 11, 13, 12, 8, 27, 13],
  });
  drawStatus(page, "E1");
  caution(
    page,
    3,
    "bill dry lumber by a new tally: adding shrinkage back is not allowed where Handbook 130 applies. Softwood sold by its nominal size: show the actual size too.",
  );
  drawFacts(page, { label: "F", value: "G", says: "H" }, 5, [
    { label: "All lines", formula: "=SUM(Lines[Amount])", format: FORMAT.money, key: true },
  ]);
  drawMainTable(page, HEADER_ROW, "Lines", COLUMNS, yardRows("invoice-lines"), 2);
}
