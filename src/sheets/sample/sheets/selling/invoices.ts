import type { Draft } from "../../draft";
import { drawFacts } from "../../drawing/facts";
import { caution, startPage } from "../../drawing/page";
import { FORMAT } from "../../drawing/style";
import { type Column, drawMainTable } from "../../drawing/table";
import { yardRows } from "../../yard/read";

const COLUMNS: readonly Column[] = [
  { header: "Invoice", from: "invoice" },
  { header: "Date", from: "date", format: FORMAT.date },
  { header: "Customer", from: "customer" },
  { header: "Tax rate", from: "tax_rate", format: FORMAT.share },
  { header: "Paid", from: "paid" },
  { header: "Lines", formula: "=COUNTIFS(Lines[Invoice], [@Invoice])" },
  {
    header: "Sum of lines",
    formula: "=ROUND(SUMIFS(Lines[Amount], Lines[Invoice], [@Invoice]), 2)",
    format: FORMAT.money,
  },
  {
    header: "Tax",
    formula: "=IF([@[Tax rate]]=0, 0, BOLE.LINEAMOUNT([@[Sum of lines]], [@[Tax rate]]))",
    format: FORMAT.money,
  },
  { header: "Total", formula: "=[@[Sum of lines]]+[@Tax]", format: FORMAT.money },
  { header: "Owed", formula: '=IF([@Paid]="yes", 0, [@Total])', format: FORMAT.money },
];

/** Each invoice with the sum of its lines, its tax and whether it is paid. */
export function drawInvoices(draft: Draft): void {
  const page = startPage(draft, "Invoices", {
    title: "Invoices: billed, taxed, paid",
    lead: "One row an invoice. The sum is that of its lines on the sheet Invoice lines; the tax is taken once, on the sum.",
    widths: [24, 15, 18, 11, 10, 9, 14, 13, 14, 13],
  });
  caution(
    page,
    3,
    "the tax rates are invented. What is taxed, and how high, is for the state and an accountant to say.",
  );
  drawFacts(page, { label: "A", value: "B", says: "C" }, 4, [
    {
      label: "Billed, before tax",
      formula: "=SUM(Invoices[Sum of lines])",
      format: FORMAT.money,
      key: true,
      name: "Key_billed",
    },
    {
      label: "Paid of it, before tax",
      formula: '=SUMIFS(Invoices[Sum of lines], Invoices[Paid], "yes")',
      format: FORMAT.money,
      key: true,
      name: "Receipts",
      says: "what the partners share",
    },
    {
      label: "Still owed, tax included",
      formula: "=SUM(Invoices[Owed])",
      format: FORMAT.money,
      key: true,
      name: "Key_owed",
    },
  ]);
  const HEADER_ROW = 9;
  const last = drawMainTable(page, HEADER_ROW, "Invoices", COLUMNS, yardRows("invoices"));
  draft.book.names.push({ name: "Invoice_list", refersTo: `'Invoices'!$A$${HEADER_ROW + 1}:$A$${last}` });
}
