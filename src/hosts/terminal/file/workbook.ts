import { rewritePlain } from "../../../formula/scan";
import { blockOf, fixedRangeOf, placeOf, type Block } from "../../../formula/addresses";
import type { DefinedName } from "../../../formula/defined-name";
import { readNames } from "../../../xlsx/defined-names";
import type { Held } from "../../../xlsx/held";
import { serialOf } from "../../../xlsx/serial";
import { expandTables, type Table } from "../../../formula/tables";
import { asTyped, expandSpills } from "../../../formula/typed";
import { asksBole, withoutNames } from "../../../formula/names";
import type { Package } from "../../../xlsx/package";
import { pointsOutside, referencesOf, type Reference } from "../../../formula/references";
import { Refused } from "../../../xlsx/refused";
import { contentTypeOf, relationsOf } from "../../../xlsx/relations";
import { movedFormula } from "../../../formula/shared-formula";
import { readSharedTexts, readSheet, type SheetCell, type SheetXml } from "../../../xlsx/sheet-cells";
import { attribute, elements } from "../../../xlsx/xml";

/** A calculating cell of the file. */
export interface Formula {
  sheet: string;
  row: number;
  column: number;
  cell: SheetCell;
  /** As the file stores it, without the equals sign; a copied-down formula as it reads in this cell. */
  stored: string;
  /** As the engine reads it: no names, tables or prefixes. */
  forEngine: string;
  bole: boolean;
  cached: Held;
  /** The block that the file says its answer fills: one cell, unless it spills. */
  block: Block;
  /** Written as an array formula, whose answer may fill more than its cell. */
  array: boolean;
  /** Its block grows and shrinks with the answer, as Excel's newer array formulas do. */
  dynamic: boolean;
  references: Reference[];
  outside: ReturnType<typeof pointsOutside>;
}

export interface Sheet {
  name: string;
  part: string;
  xml: SheetXml;
  formulas: Formula[];
  tableParts: string[];
}

export interface Workbook {
  file: Package;
  part: string;
  /** When the values are taken: the hours of the clock on the wall, written as UTC. */
  at: Date;
  macros: boolean;
  sheets: Sheet[];
  names: DefinedName[];
}

/** More than any list of logs that one formula answers. */
const MOST_CELLS_FILLED = 1_000_000;

const WORKBOOK = /sheet\.main\+xml$|sheet\.macroEnabled\.main\+xml$/i;
const OTHER_FILES: [RegExp, string][] = [
  [/template/i, "it is a template: make a workbook from it first"],
  [/sheet\.binary/i, "it is a binary workbook (.xlsb): save it as .xlsx in Excel"],
  [/wordprocessingml|presentationml/i, "it is a text or a presentation, not a workbook"],
];

/** Reads what the file calculates: every sheet's cells, tables and names. */
export function readWorkbookParts(file: Package, at: Date): Workbook {
  try {
    return read(file, at);
  } catch (fault) {
    if (fault instanceof Refused) throw fault;
    throw new Refused(`it is damaged: ${fault instanceof Error ? fault.message : String(fault)}`);
  }
}

function read(file: Package, at: Date): Workbook {
  const part = workbookPart(file);
  const type = contentTypeOf(file, part) ?? "";
  if (!WORKBOOK.test(type))
    throw new Refused(OTHER_FILES.find(([kind]) => kind.test(type))?.[1] ?? "it is not an .xlsx workbook");
  const workbookXml = file.text(part);
  const settings = elements(workbookXml, "workbookPr").map(({ attributes }) => attribute(attributes, "date1904"));
  if (settings.some((since1904) => since1904 === "1" || since1904 === "true"))
    throw new Refused("it counts its days from 1904, which the engine does not: change that in Excel's options");
  const relations = relationsOf(file, part);
  const texts = relations.find(({ type }) => type === "sharedStrings")?.target;
  const sharedTexts = texts && file.has(texts) ? readSharedTexts(file.text(texts)) : [];
  // The numbers of sheet-bound names count every sheet, those with only a chart on them too.
  const listed = elements(workbookXml, "sheet")
    .filter(({ depth }) => depth === 2)
    .map(({ attributes }) => ({
      name: attribute(attributes, "name") ?? "",
      relation: relations.find(({ id }) => id === attribute(attributes, "id")),
    }));
  const names = readNames(workbookXml);
  const sheets = listed.flatMap(({ name, relation }) => {
    if (relation?.type !== "worksheet") return [];
    const tableParts = relationsOf(file, relation.target).flatMap(({ type, target }) =>
      type === "table" ? [target] : [],
    );
    const xml = readSheet(file.text(relation.target), sharedTexts);
    return [{ name, part: relation.target, xml, formulas: [] as Formula[], tableParts }];
  });
  const tables = sheets.flatMap((sheet) => sheet.tableParts.map((one) => readTable(file.text(one), sheet.name)));
  const sheetNames = listed.map(({ name }) => name);
  for (const sheet of sheets) sheet.formulas = formulasOf(sheet, tables, names, sheetNames);
  return { file, part, at, macros: /macroEnabled/i.test(type), sheets, names };
}

function workbookPart(file: Package): string {
  if (!file.has("[Content_Types].xml") || !file.has("_rels/.rels"))
    throw new Refused("it is a zip, but not an .xlsx workbook");
  const main = relationsOf(file, "").find(({ type }) => type === "officeDocument");
  if (!main || !file.has(main.target)) throw new Refused("it is a zip, but not an .xlsx workbook");
  return main.target;
}

function readTable(xml: string, sheet: string): Table {
  const [table] = elements(xml, "table");
  if (!table) throw new Refused("one of its tables has no description");
  const columns = elements(xml, "tableColumn").map(({ attributes }) => attribute(attributes, "name") ?? "");
  return {
    name: attribute(table.attributes, "displayName") ?? attribute(table.attributes, "name") ?? "",
    sheet,
    columns,
    block: blockOf(attribute(table.attributes, "ref") ?? "A1"),
    headings: attribute(table.attributes, "headerRowCount") !== "0",
    totals: Number(attribute(table.attributes, "totalsRowCount") ?? 0) > 0,
  };
}

function formulasOf({ name: sheet, xml }: Sheet, tables: Table[], names: DefinedName[], sheets: string[]): Formula[] {
  const masters = new Map<string, { stored: string; row: number; column: number }>();
  return xml.rows.flatMap(({ cells }) =>
    cells.flatMap((cell) => {
      const { row, column, formula } = cell;
      if (!formula) return [];
      const type = attribute(formula.attributes, "t");
      // A what-if table's formula is none that reads like one.
      if (type === "dataTable") return [];
      const group = type === "shared" ? attribute(formula.attributes, "si") : undefined;
      if (group !== undefined && formula.text) masters.set(group, { stored: formula.text, row, column });
      const master = group === undefined || formula.text ? undefined : masters.get(group);
      const stored = master ? movedFormula(master.stored, row - master.row, column - master.column) : formula.text;
      if (!stored) return [];
      const ref = type === "array" ? attribute(formula.attributes, "ref") : undefined;
      const block = ref ? blockOf(ref) : { top: row, left: column, bottom: row, right: column };
      if ((block.bottom - block.top + 1) * (block.right - block.left + 1) > MOST_CELLS_FILLED)
        throw new Refused(`a formula on its sheet ${sheet} fills ${ref}, more than is calculated here`);
      const plain = asTyped(withoutNames(stored, names, sheets, sheets.indexOf(sheet)));
      const forEngine = expandTables(plain, tables, { sheet, row, column });
      const asked = {
        bole: asksBole(plain),
        references: referencesOf(forEngine, sheet),
        outside: pointsOutside(plain),
      };
      const dynamic = type === "array" && attribute(cell.attributes, "cm") !== undefined;
      const place = { sheet, row, column, cell, cached: cell.value, block, array: type === "array", dynamic };
      return [{ ...place, ...asked, stored, forEngine }];
    }),
  );
}

/** The formula at one time of day: TODAY() and NOW() are that day and hour, and `D1#` is the block that D1 fills. */
export function formulaNow(formula: Formula, blocks: ReadonlyMap<string, Block>, at: Date): string {
  const day = serialOf(at);
  const timed = rewritePlain(formula.forEngine, (plain) =>
    plain.replace(/(?<![\w.])TODAY\(\s*\)/gi, String(Math.floor(day))).replace(/(?<![\w.])NOW\(\s*\)/gi, String(day)),
  );
  if (!timed.includes("#")) return timed;
  return expandSpills(timed, (named, address) => {
    const { row, column } = placeOf(address);
    const block = blocks.get(keyOf(named ?? formula.sheet, row, column));
    return fixedRangeOf(block ?? { top: row, left: column, bottom: row, right: column });
  });
}

export function keyOf(sheet: string, row: number, column: number): string {
  return `${sheet.toLowerCase()}|${row}|${column}`;
}
