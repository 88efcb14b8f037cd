import type { Draft } from "../draft";
import { figure } from "../cells";
import { caution, freeze, put, repeatRows, startPage } from "../page";
import { FORMAT, TEXT } from "../style";
import { type Column, drawTable } from "../table";
import { yardRows } from "../yard/read";

const COLUMNS: readonly Column[] = [
  { header: "Invoice", from: "invoice" },
  { header: "Date", from: "date", format: FORMAT.date },
  { header: "Customer", from: "customer" },
  { header: "Description", from: "description" },
  { header: "Quantity", from: "quantity", format: FORMAT.two },
  { header: "Unit", from: "unit" },
  { header: "Price", from: "price", format: FORMAT.money },
  { header: "Amount", formula: "=BOLE.LINEAMOUNT([@Quantity], [@Price])", format: FORMAT.money },
];
const HEADER_ROW = 8;

/** Invoice lines, each rounded to the cent, so that they add up to the total. */
export function drawInvoice(draft: Draft): void {
  const page = startPage(draft, "Invoice", {
    title: "Invoice lines",
    lead: "Each line is rounded to the cent by itself, so that the lines a customer adds up come to the total.",
    widths: [10, 12, 16, 52, 11, 10, 11, 14],
  });
  caution(
    page,
    3,
    "bill dry lumber by a new tally: adding shrinkage back is not allowed where Handbook 130 applies. Softwood sold by its nominal size: show the actual size too.",
    2,
  );
  put(page, "G5", "All lines", TEXT);
  figure(page, "H5", "=SUM(Invoice[Amount])", { format: FORMAT.money, key: true });
  freeze(page, HEADER_ROW, 0);
  repeatRows(page, HEADER_ROW, HEADER_ROW);
  drawTable(page, `A${HEADER_ROW}`, "Invoice", COLUMNS, yardRows("invoice"));
}
