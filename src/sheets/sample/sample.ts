import ExcelJS from "exceljs";
import type { Answers, Draft } from "./draft";
import { STEPS } from "./steps";
import type { Material } from "./material";
import { drawStartHere } from "./sheets/overview/start-here";

/** A fixed day, so that the same material gives the same file. */
const DRAWN = new Date(Date.UTC(2026, 0, 1));

/** Draws every sheet, with the answers known so far. */
export function drawSample(material: Material, answers: Answers): Draft {
  const book = new ExcelJS.Workbook();
  book.creator = "Bole";
  book.lastModifiedBy = "Bole";
  book.title = "Bole sample workbook: all data invented";
  book.created = DRAWN;
  book.modified = DRAWN;
  const draft: Draft = { book, answers, spills: [], columnFormulas: [], charts: [] };
  drawStartHere(draft, STEPS);
  for (const { sheets, tab } of STEPS)
    for (const { name, draw } of sheets) {
      draw(draft, material);
      book.getWorksheet(name)!.properties.tabColor = { argb: tab };
    }
  return draft;
}
