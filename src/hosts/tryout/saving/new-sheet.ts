import { lookBack } from "../../../engine/workbook/look-back";
import { readSheet } from "../../../xlsx/sheet-cells";
import type { AddedLooks } from "../../../xlsx/added-looks";
import { placeOf, rangeOf } from "../../../formula/addresses";
import { withCells, type CellChange } from "../../../xlsx/sheet-edit";
import { newSheet, type Sheet } from "../../../xlsx/write/book";
import { sheetPart } from "../../../xlsx/write/sheet-part";
import { styleList } from "../../../xlsx/write/style-list";
import type { CellContents, SheetContents } from "./contents";
import { editsOf, type EditTools, type SheetEdits } from "./edits";

const PIXELS_PER_CHARACTER = 7;
const PIXELS_PER_POINT = 4 / 3;

/** The sheet's frame holds no cell, so it names no look and no text. */
const NO_TEXTS = { numberOf: () => 0 };

/** A sheet that the file does not have, as a part of its own: its frame first, then its cells by the editor of all cells. */
export function newSheetXml(
  sheet: SheetContents,
  looks: AddedLooks,
  tools: EditTools,
): { xml: string; edits: SheetEdits } {
  const frame = readSheet(sheetPart(frameOf(sheet), styleList({}), NO_TEXTS, { tables: [] }), []);
  const edits = editsOf({ name: sheet.name, xml: frame }, sheet.cells.map(asTyped), tools);
  const lookOf = new Map(
    sheet.cells.flatMap(({ row, column, style, format }): [string, number][] => {
      const look = { ...lookBack(style ?? {}), ...(format === undefined ? {} : { numberFormat: format }) };
      return style || format !== undefined ? [[placeOf({ row, column }), looks.numberOf(look)]] : [];
    }),
  );
  const changes = edits.changes.map((change): CellChange => {
    const look = lookOf.get(placeOf(change));
    return look === undefined ? change : { ...change, look };
  });
  return { xml: withCells(frame, changes), edits };
}

/** Every cell of a new sheet is typed; its look is written whole, and not as another one's with a format. */
function asTyped({ style: _style, format: _format, ...cell }: CellContents) {
  return cell;
}

function frameOf({ name, frame: { widths, heights, merges, frozen } }: SheetContents): Sheet {
  const columns = Math.max(-1, ...Object.keys(widths).map(Number)) + 1;
  return {
    ...newSheet(name, { landscape: true, onePage: false, footer: "" }),
    widths: Array.from({ length: columns }, (_, at) => Math.round((widths[at] ?? 0) / PIXELS_PER_CHARACTER)),
    heights: new Map(
      Object.entries(heights).map(([row, height]) => [Number(row), Math.round(height / PIXELS_PER_POINT)]),
    ),
    merges: merges.map(rangeOf),
    frozen,
    gridlines: true,
  };
}
