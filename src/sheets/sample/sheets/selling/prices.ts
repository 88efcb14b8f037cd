import type { Column } from "../../../definition";
import { priceListOf } from "../../../definitions/price-list";
import { DOLLARS } from "../../../formats";
import type { Draft } from "../../draft";
import { put, setWidth } from "../../drawing/page";
import { SMALL } from "../../drawing/style";
import { drawTable } from "../../drawing/table";
import { drawTableSheet } from "../../drawing/table-sheet";
import { yardRows } from "../../yard/read";

/** What tickets, stock and invoices look a price up by. */
const SOLD_AS: Column = {
  heading: "Sold as",
  formula: '=[@Species]&" "&[@Thickness]&" "&[@Kind]&", "&[@State]',
  width: 42,
  note: "what tickets and stock look up",
};

const SERVICES: readonly Column[] = [
  { heading: "Service" },
  { heading: "Per" },
  { heading: "Price", format: DOLLARS.cents },
];

/** The price list by species, thickness and state, with the margin each price leaves, and the price of a service. */
export function drawPrices(draft: Draft): void {
  const rows = yardRows("prices", ["Thickness"]);
  const { page, table } = drawTableSheet(draft, priceListOf({ title: "Prices", table: "Prices" }, [SOLD_AS], rows));
  page.sheet.print.area = { top: 0, left: 0, bottom: table.lastRow - 1, right: table.columns.length - 1 };
  [44, 11, 10].forEach((width, i) => setWidth(page, "LMN"[i]!, width));
  setWidth(page, "K", 3);
  put(page, `L${table.headerRow - 1}`, "Work by the piece or the hour", SMALL);
  drawTable(page, `L${table.headerRow}`, "Services", SERVICES, yardRows("services"));
}
