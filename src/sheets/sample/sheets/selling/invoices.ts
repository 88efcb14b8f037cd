import type { Column, TableSheet } from "../../../definition";
import { DOLLARS, FORMAT } from "../../../formats";
import type { Draft } from "../../draft";
import { drawTableSheet } from "../../drawing/table-sheet";
import { yardRows } from "../../yard/read";

const COLUMNS: readonly Column[] = [
  { heading: "Invoice", width: 10 },
  { heading: "Date", width: 12, format: FORMAT.date },
  { heading: "Customer", width: 18 },
  { heading: "Tax rate", width: 10, format: FORMAT.share },
  { heading: "Paid", width: 8 },
  { heading: "Lines", width: 8, formula: "=COUNTIFS(Lines[Invoice], [@Invoice])" },
  {
    heading: "Sum of lines",
    width: 14,
    formula: "=ROUND(SUMIFS(Lines[Amount], Lines[Invoice], [@Invoice]), 2)",
    format: DOLLARS.cents,
  },
  {
    heading: "Tax",
    width: 13,
    formula: "=IF([@[Tax rate]]=0, 0, BOLE.LINEAMOUNT([@[Sum of lines]], [@[Tax rate]]))",
    format: DOLLARS.cents,
  },
  { heading: "Total", width: 14, formula: "=[@[Sum of lines]]+[@Tax]", format: DOLLARS.cents },
  { heading: "Owed", width: 13, formula: '=IF([@Paid]="yes", 0, [@Total])', format: DOLLARS.cents },
];

const INVOICES: TableSheet = {
  title: "Invoices",
  heading: "Invoices: billed, taxed, paid",
  table: "Invoices",
  lead: "One row an invoice. The sum is that of its lines on the sheet Invoice lines; the tax is taken once, on the sum.",
  cautions: ["the tax rates are invented. What is taxed, and how high, is for the state and an accountant to say."],
  settings: [],
  figures: [
    {
      label: "Billed, before tax",
      formula: "=SUM(Table[Sum of lines])",
      format: DOLLARS.cents,
      note: "",
      name: "Key_billed",
    },
    {
      label: "Paid of it, before tax",
      formula: '=SUMIFS(Table[Sum of lines], Table[Paid], "yes")',
      format: DOLLARS.cents,
      note: "what the partners share",
      name: "Receipts",
    },
    {
      label: "Still owed, tax included",
      formula: "=SUM(Table[Owed])",
      format: DOLLARS.cents,
      note: "",
      name: "Key_owed",
    },
  ],
  valueColumn: 3,
  frozenColumns: 1,
  columns: COLUMNS,
  examples: yardRows("invoices"),
  blankRows: 0,
};

/** Each invoice with the sum of its lines, its tax and whether it is paid. */
export function drawInvoices(draft: Draft): void {
  const { table } = drawTableSheet(draft, INVOICES);
  const numbers = `$A$${table.headerRow + 1}:$A$${table.lastRow}`;
  draft.book.names.push({ name: "Invoice_list", refersTo: `'Invoices'!${numbers}` });
}
