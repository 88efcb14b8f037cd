import { blockAt, blockOf, fixedRangeOf, isWithin, placeOf, type Block } from "../../formula/addresses";
import type { DefinedName } from "../../formula/defined-name";
import { expandTables, type Table } from "../../formula/tables";
import { sheetNameIn, tokensOf } from "../../formula/tokens";
import { asTyped, expandSpills } from "../../formula/typed";
import { readOpenNames } from "../../xlsx/defined-names";
import { formulasIn } from "../../xlsx/formulas";
import type { Held } from "../../xlsx/held";
import { layoutOf, type Layout } from "../../xlsx/layout";
import { openPackage } from "../../xlsx/package";
import { readParts, type SheetPart, type WorkbookParts } from "../../xlsx/parts";
import { relationsOf } from "../../xlsx/relations";
import { readStyles, type CellLook } from "../../xlsx/styles";
import { attribute, elements } from "../../xlsx/xml";
import { hasTooManySteps } from "../too-many-steps";

/** A cell of the file: what it held when it was saved and, if it calculates, its formula as typed and as expanded. */
export interface FileCell {
  row: number;
  column: number;
  value: Held;
  /** The formula as the file stores it, without the equals sign. */
  stored?: string;
  /** The formula for the engine: no prefixes, no table references, no `D1#`. */
  formula?: string;
  /** The block that a spilled answer filled. */
  spill?: Block;
  /** The sheet that a link in the cell leads to. */
  leadsTo?: string;
}

export interface FileSheet {
  name: string;
  cells: FileCell[];
  /** How far it reaches, where that is further than its cells. */
  size?: { rows: number; columns: number };
  /** How it looks; left out where nobody looks at it. */
  looks?: SheetLooks;
}

/** The look of each cell that has one, and of the sheet round them. */
export interface SheetLooks {
  hidden: boolean;
  layout: Layout;
  cells: { row: number; column: number; look: CellLook }[];
}

export interface FileWorkbook {
  sheets: FileSheet[];
  names: DefinedName[];
}

/** Nothing is written into a file that is only read, so no hour is needed. */
const NO_HOUR = new Date(0);

/** Reads an .xlsx file: cells, formulas, tables, names and looks. */
export function readWorkbook(bytes: Uint8Array): FileWorkbook {
  const parts = readParts(openPackage(bytes, NO_HOUR));
  const looks = stylesOf(parts);
  const sheets = parts.sheets.map((sheet) => sheetOf(sheet, looks));
  const spills = new Map<string, Block>();
  for (const { name, cells } of sheets)
    for (const { row, column, spill } of cells) if (spill) spills.set(`${name}|${row}|${column}`, spill);
  for (const sheet of sheets) for (const cell of sheet.cells) expand(cell, sheet.name, parts.tables, spills);
  return { sheets: sheets.map(withoutSpilled), names: readOpenNames(parts.file.text(parts.part)) };
}

function stylesOf({ file, part }: WorkbookParts): CellLook[] {
  const styles = relationsOf(file, part).find(({ type }) => type === "styles")?.target;
  return styles && file.has(styles) ? readStyles(file.text(styles)) : [];
}

function sheetOf(sheet: SheetPart, styles: readonly CellLook[]): FileSheet {
  const layout = layoutOf(sheet);
  const covered = coveredBy(layout.merges);
  const formulas = new Map(formulasIn(sheet.xml).map((one) => [one.cell, one]));
  const links = linksIn(sheet);
  const all = sheet.xml.rows.flatMap(({ cells }) => cells);
  const cells = all.flatMap((cell): FileCell[] => {
    const { row, column, value } = cell;
    const found = formulas.get(cell);
    const leadsTo = links.get(placeOf({ row, column }));
    if (covered.has(placeOf({ row, column })) || (value === null && !found && leadsTo === undefined)) return [];
    return [
      {
        ...{ row, column, value },
        ...(found && { stored: found.stored, ...(found.fills && { spill: found.fills }) }),
        ...(leadsTo !== undefined && { leadsTo }),
      },
    ];
  });
  const looks = all.flatMap(({ row, column, attributes }) => {
    const look = styles[Number(attribute(attributes, "s") ?? 0)];
    return look ? [{ row, column, look }] : [];
  });
  return { name: sheet.name, cells, looks: { hidden: sheet.hidden, layout, cells: looks } };
}

/** The cells of merged blocks but the first, which alone holds anything. */
function coveredBy(merges: readonly Block[]): Set<string> {
  const covered = new Set<string>();
  for (const { top, left, bottom, right } of merges)
    for (let row = top; row <= bottom; row++)
      for (let column = left; column <= right; column++)
        if (row !== top || column !== left) covered.add(placeOf({ row, column }));
  return covered;
}

/** By place, the sheet that a link within the workbook leads to. */
function linksIn({ xml: { xml, data } }: SheetPart): Map<string, string> {
  const links = new Map<string, string>();
  if (!xml.includes("hyperlink", data.end)) return links;
  for (const { attributes } of elements(xml, "hyperlink")) {
    const [cells, location] = [attribute(attributes, "ref"), attribute(attributes, "location")];
    const leadsTo = location && sheetNamedIn(location);
    if (!cells || !leadsTo) continue;
    const { top, left } = blockOf(cells);
    links.set(`${top} ${left}`, leadsTo);
  }
  return links;
}

/** `'Log book'!A1` leads to Log book. */
function sheetNamedIn(location: string): string | undefined {
  const [first] = tokensOf(location.replace(/^#/, ""));
  return first?.kind === "sheet" ? sheetNameIn(first.text) : undefined;
}

function expand(cell: FileCell, sheet: string, tables: Table[], spills: Map<string, Block>): void {
  if (cell.stored === undefined) return;
  const spillOf = (named: string | undefined, row: number, column: number) =>
    fixedRangeOf(spills.get(`${named ?? sheet}|${row}|${column}`) ?? blockAt({ row, column }));
  const standing = { sheet, row: cell.row, column: cell.column };
  // A cell that the engine cannot calculate shows the value that the file holds.
  if (hasTooManySteps(cell.stored)) return;
  cell.formula = expandSpills(expandTables(asTyped(cell.stored), tables, standing), spillOf);
}

/** Cells that a spilled answer fills hold no entry of their own: the engine fills them again. */
function withoutSpilled(sheet: FileSheet): FileSheet {
  const spills = sheet.cells.flatMap(({ spill }) => (spill ? [spill] : []));
  const filled = (cell: FileCell) => spills.some((spill) => isWithin(cell, spill));
  return { ...sheet, cells: sheet.cells.filter((cell) => cell.spill !== undefined || !filled(cell)) };
}
