import type { Book } from "../../xlsx/write/book";
import type { Answers, Draft } from "./draft";
import { STEPS } from "./steps";
import type { Material } from "./material";
import { drawStartHere } from "./sheets/overview/start-here";

/** A fixed day, so that the same material gives the same file. */
const DRAWN = new Date(Date.UTC(2026, 0, 1));

/** Draws every sheet, with the answers known so far. */
export function drawSample(material: Material, answers: Answers): Draft {
  const title = "Bole sample workbook: all data invented";
  const book: Book = { title, author: "Bole", at: DRAWN, sheets: [], names: [] };
  const draft: Draft = { book, answers, spills: [] };
  drawStartHere(draft, STEPS);
  for (const { sheets, tab } of STEPS)
    for (const { name, draw } of sheets) {
      draw(draft, material);
      book.sheets.find((sheet) => sheet.name === name)!.tab = tab;
    }
  return draft;
}
