import { readAnswers, type Shows } from "./answers";
import type { Draft } from "./draft";
import type { Material } from "./material";
import { drawSample } from "./sample";
import { USUAL } from "./drawing/style";
import { writeBook } from "../../xlsx/write/write-book";

/** Recalculates the bytes of a workbook and tells what each cell then shows. */
export type Recalculate = (bytes: Uint8Array) => Promise<Shows>;

/** The sample workbook: drawn once without values, calculated, and drawn again with what came out. */
export async function makeSample(material: Material, recalculate: Recalculate): Promise<Uint8Array> {
  const blank: Draft = drawSample(material, new Map());
  const shows = await recalculate(writeBook(blank.book, USUAL));
  return writeBook(drawSample(material, readAnswers(blank, shows)).book, USUAL);
}
