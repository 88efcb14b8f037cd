import type { ReadySheet } from "./ready-sheet";
import { CUT_PLAN } from "./sheets/cut-plan";
import { DRYING_STACK } from "./sheets/drying-stack";
import { LOAD_PLAN } from "./sheets/load-plan";
import { LOG_BOOK } from "./sheets/log-book";
import { MILL_SETTINGS } from "./sheets/mill-settings";
import { PRICE_LIST } from "./sheets/price-list";
import { SAWING_BILL } from "./sheets/sawing-bill";

/** The sheets that a person can add to his workbook, in the order of the job. */
export const READY_SHEETS: readonly ReadySheet[] = [
  LOG_BOOK,
  LOAD_PLAN,
  CUT_PLAN,
  DRYING_STACK,
  PRICE_LIST,
  SAWING_BILL,
  MILL_SETTINGS,
];
