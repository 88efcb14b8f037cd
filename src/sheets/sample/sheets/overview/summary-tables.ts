import type { Draft } from "../../draft";
import { heading, put, startPage } from "../../drawing/page";
import { SMALL } from "../../drawing/style";
import { DOLLARS, FORMAT } from "../../../formats";
import type { Column, Row } from "../../../definition";
import { drawTable } from "../../drawing/table";
import { lookUp } from "../../look-up";
import { yardRows } from "../../yard/read";

const inMonth = (sum: string, dates: string) =>
  `=SUMIFS(${sum}, ${dates}, ">="&[@Month], ${dates}, "<"&EDATE([@Month], 1))`;

const MONTHS: readonly Column[] = [
  { heading: "Month", format: FORMAT.date },
  { heading: "Name", formula: '=TEXT([@Month], "mmm")' },
  {
    heading: "Logs in",
    formula: '=COUNTIFS(Logs[Date], ">="&[@Month], Logs[Date], "<"&EDATE([@Month], 1))',
    format: FORMAT.whole,
  },
  { heading: "Paid for logs", formula: inMonth("Logs[Paid]", "Logs[Date]"), format: DOLLARS.whole },
  { heading: "Scaled bf", formula: inMonth("Logs[Net]", "Logs[Date]"), format: FORMAT.whole },
  { heading: "Sawn bf", formula: inMonth("Results[Sawn bf]", "Results[Sawn]"), format: FORMAT.whole },
  { heading: "Sold bf", formula: inMonth("Lines[From stock bf]", "Lines[Date]"), format: FORMAT.whole },
  { heading: "Billed", formula: inMonth("Lines[Amount]", "Lines[Date]"), format: DOLLARS.cents },
];

const SPECIES: readonly Column[] = [
  { heading: "Species", list: "species" },
  { heading: "Scaled", formula: "=SUMIFS(Logs[Net], Logs[Species], [@Species])", format: FORMAT.whole },
  {
    heading: "Sawn",
    formula:
      "=SUMIFS(Boards[Tally bf], Boards[Species], [@Species])+SUMIFS(Slabs[Board feet], Slabs[Species], [@Species])",
    format: FORMAT.whole,
  },
];

const STOCK: readonly Column[] = [
  { heading: "Product" },
  { heading: "State now", list: "states" },
  {
    heading: "Sawn in all",
    formula:
      "=SUMIFS(Boards[Tally bf], Boards[Product], [@Product])+SUMIFS(Slabs[Board feet], Slabs[Product], [@Product])",
    format: FORMAT.whole,
  },
  { heading: "Sold", formula: "=SUMIFS(Lines[From stock bf], Lines[Product], [@Product])", format: FORMAT.whole },
  { heading: "Left", formula: "=[@[Sawn in all]]-[@Sold]", format: FORMAT.whole },
  {
    heading: "List price",
    formula: `=${lookUp('[@Product]&", "&[@[State now]]', "Prices[Sold as]", "Prices[Asked]")}`,
    format: DOLLARS.cents,
  },
  { heading: "Left at list price", formula: "=[@Left]*[@[List price]]", format: DOLLARS.whole },
];

const STOCK_ROWS: readonly Row[] = [
  { Product: "black walnut 4/4 board", "State now": "kiln-dried rough" },
  { Product: "black cherry 4/4 board", "State now": "kiln-dried rough" },
  { Product: "northern red oak 4/4 board", "State now": "green" },
  { Product: "white ash 8/4 board", "State now": "green" },
  { Product: "black walnut 9/4 slab", "State now": "green" },
  { Product: "silver maple 10/4 slab", "State now": "green" },
  { Product: "silver maple 12/4 slab", "State now": "green" },
];

/** February and September, counted from 0. */
const FIRST_MONTH = 1;
const LAST_MONTH = 8;
const monthRows = (): Row[] =>
  Array.from({ length: LAST_MONTH - FIRST_MONTH + 1 }, (_, i) => ({
    Month: new Date(Date.UTC(2026, FIRST_MONTH + i)),
  }));

const speciesRows = (): Row[] =>
  [...new Set(yardRows("logs").map(({ Species }) => String(Species)))].sort().map((species) => ({ Species: species }));

export const SUMMARY_TABLES = "Summary tables";
const HEADER_ROW = 6;
export const FIRST_ROW = HEADER_ROW + 1;
/** The last rows of the tables of months, species and stock. */
export const LAST_ROWS = {
  months: HEADER_ROW + monthRows().length,
  species: HEADER_ROW + speciesRows().length,
  stock: HEADER_ROW + STOCK_ROWS.length,
};

/** The tables behind the summary's charts: months, species, and what is left to sell. */
export function drawSummaryTables(draft: Draft): void {
  const page = startPage(draft, SUMMARY_TABLES, {
    title: "Summary tables: months, species, stock",
    lead: "What the charts of the sheet Summary show. Add a month, a species or a product below its table. Stock counts feet as sawn; boards that went through the kiln measure less when they are sold.",
    pages: { startAt: [9, 13], namesRows: false },
    widths: [13, 9, 9, 12, 12, 12, 12, 14, 3, 22, 12, 12, 3, 30, 19, 12, 12, 12, 12, 14],
  });
  heading(page, 4, "Month by month", "H");
  drawTable(page, `A${HEADER_ROW}`, "Months", MONTHS, monthRows());
  draft.book.names.push({ name: "Month_list", refersTo: `'${SUMMARY_TABLES}'!$A$${FIRST_ROW}:$A$${LAST_ROWS.months}` });
  heading(page, 4, "By species", "L", "J");
  drawTable(page, `J${HEADER_ROW}`, "Species_sawn", SPECIES, speciesRows());
  heading(page, 4, "Stock, and what it would bring by the price list", "T", "N");
  drawTable(page, `N${HEADER_ROW}`, "Stock", STOCK, STOCK_ROWS);
  put(page, "N5", "State now: as the piece stands today", SMALL);
}
