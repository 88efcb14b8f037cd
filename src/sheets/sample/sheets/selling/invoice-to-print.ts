import type { Draft } from "../../draft";
import { entry, figure } from "../../drawing/cells";
import { type Page, printOnly, prose, put, startPage, setLook, setWidth } from "../../drawing/page";
import { type CellStyle, COMPUTED, HEADER, KEY, SMALL, TEXT } from "../../drawing/style";
import { DOLLARS, FORMAT } from "../../../formats";
import { lookUp } from "../../look-up";
import { cellIn } from "../../../../xlsx/write/book";

const HEADER_ROW = 9;
const LINES_SHOWN = 24;
const FIRST = HEADER_ROW + 1;
const LAST = HEADER_ROW + LINES_SHOWN;

/** The columns of a line: those of the table of lines with the same headings. */
const COLUMNS = [
  { heading: "Piece" },
  { heading: "Description" },
  { heading: "Quantity", format: FORMAT.two },
  { heading: "Unit" },
  { heading: "Price", format: DOLLARS.cents },
  { heading: "Amount", format: DOLLARS.cents },
];

const SET_IN: CellStyle = { across: "left", upright: "top", indent: 1 };

const ofInvoice = (column: string) => `=${lookUp("Invoice_shown", "Invoices[Invoice]", `Invoices[${column}]`)}`;

/** One invoice on a page, with how its wood was measured. */
export function drawInvoiceToPrint(draft: Draft): void {
  const page = startPage(draft, "Invoice to print", {
    title: "Invoice",
    lead: "The sample yard, Nora and Emil. An invented yard.",
    widths: [15, 50, 11, 9, 12, 13],
    leadLines: 1,
    landscape: false,
    form: true,
    onePage: true,
  });
  const head = ["Invoice number", "Date", "Customer"];
  head.forEach((label, i) => put(page, `A${4 + i}`, label, TEXT));
  entry(page, "B4", 1001, { name: "Invoice_shown", list: "Invoice_list" });
  figure(page, "B5", ofInvoice("Date"), { format: FORMAT.date });
  figure(page, "B6", ofInvoice("Customer"));
  for (const address of ["B4", "B5", "B6"]) {
    const cell = cellIn(page.sheet, address);
    cell.style = { ...cell.style, ...SET_IN };
  }
  drawForTheSawyer(page);
  COLUMNS.forEach(({ heading }, i) => put(page, `${"ABCDEF"[i]}${HEADER_ROW}`, heading, HEADER));
  for (let line = 1; line <= LINES_SHOWN; line++) drawLine(page, line);
  drawTotals(page);
  prose(
    page,
    LAST + 5,
    "How it was measured. Slabs: board feet by the way named below, thickness as sawn. Boards: piece by piece, whole feet of surface measure, times the thickness. Kiln-dried boards: measured again after the kiln, nothing added for shrinkage.",
    { ...SMALL, wrap: true, upright: "top", across: undefined, indent: undefined },
    3,
  );
  put(page, `A${LAST + 6}`, "Slabs by", SMALL);
  figure(page, `B${LAST + 6}`, "=Tickets_method");
  setLook(page, `B${LAST + 6}`, SMALL);
}

/** What stands beside the invoice, on the screen only. */
function drawForTheSawyer(page: Page): void {
  put(page, "H3", "Not printed", SMALL);
  put(page, "H4", "Choose the invoice in the tinted cell. Its lines come from the sheet Invoice lines.", TEXT);
  put(page, "H5", "Lines", TEXT);
  figure(page, "I5", ofInvoice("Lines"), { name: "Lines_shown" });
  put(page, "H6", "Do they add up?", TEXT);
  figure(page, "I6", `=IF(ROUND(SUM(F${FIRST}:F${LAST}), 2)=F${LAST + 1}, "yes, to the cent", "NO: see the lines")`);
  setWidth(page, "H", 18);
  setWidth(page, "I", 20);
  printOnly(page, `A1:F${LAST + 6}`);
}

/** The lines of an invoice stand together, so the first one's place gives that of the others. */
function drawLine(page: Page, line: number): void {
  const row = HEADER_ROW + line;
  COLUMNS.forEach(({ heading, format }, i) => {
    const address = `${"ABCDEF"[i]}${row}`;
    const value = `INDEX(Lines[${heading}], MATCH(Invoice_shown, Lines[Invoice], 0)+${line - 1})`;
    figure(page, address, `=IF(${line}>Lines_shown, "", ${heading === "Piece" ? `${value}&""` : value})`, { format });
    setLook(page, address, format ? { ...COMPUTED, numberFormat: format } : { ...COMPUTED, ...SET_IN });
  });
}

function drawTotals(page: Page): void {
  const totals = ["Sum of lines", "Tax", "Total"];
  totals.forEach((column, i) => {
    const row = LAST + 1 + i;
    put(page, `E${row}`, column, TEXT);
    figure(page, `F${row}`, ofInvoice(column), { format: DOLLARS.cents });
    setLook(page, `F${row}`, { ...KEY, numberFormat: DOLLARS.cents });
  });
}
