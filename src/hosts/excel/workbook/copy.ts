import { addressOf } from "../../../formula/addresses";
import { freeSheetName } from "../../../sheets/ready/free-name";
import { Refusal } from "../../pane/sheet-host";
import { ABOUT_SHEET, aboutLines, type CopiedSheet } from "./about-copies";
import { asWritten, emptied, frozenCells, unready, type Contents, type FrozenCell } from "./frozen";
import { inWorkbook, mustSupport } from "./in-workbook";
import { addNotes } from "./notes";

/** What a copy is called after its original; a sheet with such a name is an earlier copy. */
const ENDING = " (values)";
const EARLIER_COPY = / \(values\)(?: \d+)?$/;

/** A sheet as it stands before anything is copied. */
interface Original extends Contents {
  sheet: Excel.Worksheet;
  name: string;
  /** The first row and column in use, counted from 0. */
  top: number;
  left: number;
  frozen: FrozenCell[];
}

/**
 * Copies every visible sheet for someone without the add-in: in the copies Bole's cells are values, their formulas hang
 * on them as notes, and a sheet says what was done. The originals are only read.
 */
export function copyWithoutBole(): Promise<string> {
  return inWorkbook(async (context) => {
    mustSupport("1.10", "copies with notes");
    const originals = await readOriginals(context);
    mustBeReady(originals);
    const taken = await sheetNames(context);
    const made: Excel.Worksheet[] = [];
    try {
      const copied: CopiedSheet[] = [];
      for (const original of originals) {
        const copy = original.sheet.copy("End");
        made.push(copy);
        const name = freeSheetName(shortened(original.name) + ENDING, taken);
        copy.name = name;
        taken.push(name);
        copied.push({ original: original.name, name, ...(await freeze(context, original, copy)) });
      }
      const about = context.workbook.worksheets.add(freeSheetName(ABOUT_SHEET, taken));
      made.push(about);
      writeAbout(about, copied);
      await context.sync();
      const cells = copied.reduce((sum, one) => sum + one.bole, 0);
      return `Copied ${copied.length} sheets; ${cells} cells became values. The last sheet says how to hand them on`;
    } catch (refused) {
      for (const sheet of made) sheet.delete();
      await context.sync();
      throw refused;
    }
  });
}

async function readOriginals(context: Excel.RequestContext): Promise<Original[]> {
  const { worksheets, names, tables } = context.workbook;
  worksheets.load("items/name, items/visibility, items/protection/protected");
  names.load("items/name");
  tables.load("items/name, items/worksheet/name");
  await context.sync();
  const visible = worksheets.items.filter(
    ({ visibility, name }) => visibility === "Visible" && !EARLIER_COPY.test(name) && !name.startsWith(ABOUT_SHEET),
  );
  const used = visible.map((sheet) => ({ sheet, range: sheet.getUsedRangeOrNullObject() }));
  for (const { range } of used) range.load("formulas, values, rowIndex, columnIndex");
  await context.sync();
  const originals = used
    .filter(({ range }) => !range.isNullObject)
    .map(({ sheet, range }): Original => {
      const { formulas, values, rowIndex: top, columnIndex: left } = range;
      const elsewhere = tables.items.filter(({ worksheet }) => worksheet.name !== sheet.name);
      const outside = [...names.items, ...elsewhere].map(({ name }) => name);
      return {
        sheet,
        name: sheet.name,
        formulas,
        values,
        top,
        left,
        frozen: frozenCells({ formulas, values }, outside),
      };
    });
  return originals;
}

function mustBeReady(originals: readonly Original[]): void {
  if (!originals.some(({ frozen }) => frozen.some(({ bole }) => bole)))
    throw new Refusal("No cell asks Bole, so the workbook can be handed on as it is");
  const locked = originals.find(({ sheet }) => sheet.protection.protected);
  if (locked) throw new Refusal(`The sheet ${locked.name} is protected, and so would its copy be. Unprotect it first`);
  for (const { name, frozen, top, left } of originals) {
    const [cell] = unready(frozen);
    if (!cell) continue;
    const address = addressOf(top + cell.row, left + cell.column);
    throw new Refusal(
      `${name}!${address} shows ${String(cell.value)}, so it has no value to keep yet. Wait, then try again`,
    );
  }
}

async function sheetNames(context: Excel.RequestContext): Promise<string[]> {
  const { worksheets } = context.workbook;
  worksheets.load("items/name");
  await context.sync();
  return worksheets.items.map(({ name }) => name);
}

/** Turns cells of a copy into what the original shows in them. */
async function freeze(context: Excel.RequestContext, original: Original, copy: Excel.Worksheet) {
  const { frozen, top, left, values } = original;
  const write = (cells: readonly { row: number; column: number; value: unknown }[]) => {
    for (const { row, column, value } of cells)
      copy.getRangeByIndexes(top + row, left + column, 1, 1).values = [[asWritten(value)]];
  };
  write(frozen);
  const range = copy.getRangeByIndexes(top, left, values.length, values[0]?.length ?? 1);
  range.load("values");
  await context.sync();
  write(emptied(values, range.values));
  const notes = frozen.map(({ row, column, formula }) => ({
    row: top + row,
    column: left + column,
    formula,
  }));
  const unnoted = await addNotes(context, copy, notes);
  const bole = frozen.filter((cell) => cell.bole).length;
  return { bole, outside: frozen.length - bole, unnoted };
}

function writeAbout(about: Excel.Worksheet, copied: readonly CopiedSheet[]): void {
  const lines = aboutLines(copied, new Date());
  const range = about.getRangeByIndexes(0, 0, lines.length, 4);
  range.values = lines.map((line) => Array.from({ length: 4 }, (_, i) => line[i] ?? ""));
  about.getRange("A1").format.font.bold = true;
  about.getRange("A:A").format.columnWidth = 150;
  about.getRange("B:B").format.columnWidth = 150;
  about.activate();
}

/** Leaves room for the ending and a number. */
function shortened(name: string): string {
  return name.slice(0, 31 - ENDING.length - 3).trimEnd();
}
