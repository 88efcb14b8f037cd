import type { TableSheet } from "../definition";
import { BLADE_LOG } from "../definitions/blade-log";
import { BOARD_TALLY } from "../definitions/board-tally";
import { CUT_PLAN } from "../definitions/cut-plan";
import { DRYING_LOG } from "../definitions/drying-log";
import { DRYING_STACK } from "../definitions/drying-stack";
import { LOAD_PLAN } from "../definitions/load-plan";
import { LOG_BOOK } from "../definitions/log-book";
import { MILL_SHEET } from "../definitions/mill-sheet";
import { MILL_SETTINGS } from "../definitions/mill-settings";
import { ORDERS } from "../definitions/orders";
import { PARTNER_ACCOUNT } from "../definitions/partner-account";
import { PRICE_LIST } from "../definitions/price-list";
import { QUOTE_OR_INVOICE } from "../definitions/quote-or-invoice";
import { SAWING_QUOTE } from "../definitions/sawing-quote";
import { SAWING_BILL } from "../definitions/sawing-bill";
import { SCALE_TICKET } from "../definitions/scale-ticket";
import { SLAB_STOCK } from "../definitions/slab-stock";
import { STOCK } from "../definitions/stock";
import { TRIPS } from "../definitions/trips";

/** The sheets that a person can add to his workbook, in the order of the job. */
export const READY_SHEETS: readonly TableSheet[] = [
  LOG_BOOK,
  SCALE_TICKET,
  LOAD_PLAN,
  TRIPS,
  CUT_PLAN,
  MILL_SHEET,
  ORDERS,
  BLADE_LOG,
  BOARD_TALLY,
  SLAB_STOCK,
  DRYING_STACK,
  DRYING_LOG,
  STOCK,
  PRICE_LIST,
  SAWING_QUOTE,
  QUOTE_OR_INVOICE,
  SAWING_BILL,
  PARTNER_ACCOUNT,
  MILL_SETTINGS,
];
