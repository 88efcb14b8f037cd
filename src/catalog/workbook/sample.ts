import ExcelJS from "exceljs";
import type { Entry } from "../entry";
import type { Answers, Draft } from "./draft";
import { drawBandSpeeds } from "./sheets/band-speeds";
import { drawBoards } from "./sheets/boards";
import { drawCutPlan } from "./sheets/cut-plan";
import { drawDrying } from "./sheets/drying";
import { drawEveryRule } from "./sheets/every-rule";
import { drawFunctions, drawFunctionTables } from "./sheets/functions";
import { drawHeadHeights } from "./sheets/head-heights";
import { drawInvoice } from "./sheets/invoice";
import { drawLiftAndHitch } from "./sheets/lift-and-hitch";
import { drawLists, type NameList } from "./sheets/lists";
import { drawLoads } from "./sheets/loads";
import { drawLogBook } from "./sheets/log-book";
import { drawLogResults } from "./sheets/log-results";
import { drawMill } from "./sheets/mill";
import { drawMoney } from "./sheets/money";
import { drawPartners } from "./sheets/partners";
import { drawPassList } from "./sheets/pass-list";
import { drawPrices } from "./sheets/prices";
import { drawSlabs } from "./sheets/slabs";
import { drawStartHere } from "./sheets/start-here";
import { drawVehicles } from "./sheets/vehicles";
import { drawWhichRule } from "./sheets/which-rule";

/** What the workbook is made from besides the invented yard. */
export interface Material {
  catalog: readonly Entry[];
  lists: readonly NameList[];
}

/** A fixed day, so that the same material gives the same file. */
const DRAWN = new Date(Date.UTC(2026, 0, 1));

/** Draws every sheet, with the answers known so far. */
export function drawSample({ catalog, lists }: Material, answers: Answers): Draft {
  const book = new ExcelJS.Workbook();
  book.creator = "Bole";
  book.lastModifiedBy = "Bole";
  book.title = "Bole sample workbook: all data invented";
  book.created = DRAWN;
  book.modified = DRAWN;
  const draft: Draft = { book, answers, spills: [], columnFormulas: [], charts: [] };
  drawStartHere(draft);
  drawLogBook(draft);
  drawWhichRule(draft);
  drawEveryRule(draft);
  drawLoads(draft);
  drawVehicles(draft);
  drawLiftAndHitch(draft);
  drawBoards(draft);
  drawSlabs(draft);
  drawLogResults(draft);
  drawCutPlan(draft);
  drawPassList(draft);
  drawHeadHeights(draft);
  drawMill(draft);
  drawBandSpeeds(draft);
  drawDrying(draft);
  drawPrices(draft);
  drawMoney(draft);
  drawInvoice(draft);
  drawPartners(draft);
  drawFunctions(draft, catalog);
  drawFunctionTables(draft, catalog);
  drawLists(draft, lists);
  return draft;
}
