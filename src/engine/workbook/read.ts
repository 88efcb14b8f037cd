import type { Held } from "../../xlsx/held";
import ExcelJS from "exceljs";
import { openZip } from "../../xlsx/package";
import { blockOf, fixedRangeOf, placeOf, type Block } from "../../formula/addresses";
import { readLinks } from "../../xlsx/links";
import type { DefinedName } from "../../formula/defined-name";
import { readOpenNames } from "../../xlsx/defined-names";
import { readable } from "../../xlsx/readable";
import { serialOf } from "../../xlsx/serial";
import type { Table } from "../../formula/tables";
import { asTyped, expandSpills } from "../../formula/typed";
import { expandTables } from "../../formula/tables";

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
  looks: ExcelJS.Worksheet;
}

export interface FileWorkbook {
  sheets: FileSheet[];
  names: DefinedName[];
}

/** Reads an .xlsx file: cells, formulas, tables and names. */
export async function readWorkbook(bytes: Uint8Array): Promise<FileWorkbook> {
  const { zip } = await openZip(bytes);
  const workbook = new ExcelJS.Workbook();
  const workbookXml = (await zip.file("xl/workbook.xml")?.async("string")) ?? "";
  const names = readOpenNames(workbookXml);
  const links = await readLinks(zip, workbookXml);
  await workbook.xlsx.load((await readable(zip)) as unknown as ExcelJS.Buffer);
  const tables = workbook.worksheets.flatMap(tablesOf);
  const sheets = workbook.worksheets.map((looks) => ({
    name: looks.name,
    cells: cellsOf(looks, links.get(looks.name)),
    looks,
  }));
  const spills = new Map<string, Block>();
  for (const { name, cells } of sheets)
    for (const { row, column, spill } of cells) if (spill) spills.set(`${name}|${row}|${column}`, spill);
  for (const sheet of sheets) for (const cell of sheet.cells) expand(cell, sheet.name, tables, spills);
  return { sheets: sheets.map(withoutSpilled), names };
}

function expand(cell: FileCell, sheet: string, tables: Table[], spills: Map<string, Block>): void {
  if (cell.stored === undefined) return;
  const spillOf = (named: string | undefined, address: string) => {
    const { row, column } = placeOf(address);
    const spill = spills.get(`${named ?? sheet}|${row}|${column}`) ?? {
      top: row,
      left: column,
      bottom: row,
      right: column,
    };
    return fixedRangeOf(spill);
  };
  const standing = { sheet, row: cell.row, column: cell.column };
  cell.formula = expandSpills(expandTables(asTyped(cell.stored), tables, standing), spillOf);
}

/** Cells that a spilled answer fills hold no entry of their own: the engine fills them again. */
function withoutSpilled(sheet: FileSheet): FileSheet {
  const spills = sheet.cells.flatMap(({ spill }) => (spill ? [spill] : []));
  const filled = ({ row, column }: FileCell) =>
    spills.some((s) => row >= s.top && row <= s.bottom && column >= s.left && column <= s.right);
  return { ...sheet, cells: sheet.cells.filter((cell) => cell.spill !== undefined || !filled(cell)) };
}

function cellsOf(sheet: ExcelJS.Worksheet, links: ReadonlyMap<string, string> = new Map()): FileCell[] {
  const cells: FileCell[] = [];
  sheet.eachRow((row) =>
    row.eachCell((cell) => {
      if (cell.isMerged && cell.master !== cell) return;
      const leadsTo = links.get(cell.address);
      const place = { row: Number(cell.row) - 1, column: Number(cell.col) - 1 };
      cells.push({ ...place, ...contentOf(cell), ...(leadsTo !== undefined && { leadsTo }) });
    }),
  );
  return cells;
}

function contentOf(cell: ExcelJS.Cell): Pick<FileCell, "value" | "stored" | "spill"> {
  if (cell.type !== ExcelJS.ValueType.Formula) return { value: held(cell.value) };
  const { shareType, ref } = cell.value as ExcelJS.CellFormulaValue & { shareType?: string; ref?: string };
  const spill = shareType === "array" && ref ? { spill: blockOf(ref) } : {};
  return { value: held(cell.result as ExcelJS.CellValue), stored: cell.formula, ...spill };
}

function held(value: ExcelJS.CellValue | undefined): Held {
  if (value === null || value === undefined) return null;
  if (value instanceof Date) return serialOf(value);
  if (typeof value !== "object") return value;
  if ("error" in value) return value.error;
  if ("richText" in value) return value.richText.map((run) => run.text).join("");
  if ("text" in value) return String(value.text);
  return null;
}

interface TableModel {
  name: string;
  tableRef: string;
  headerRow?: boolean;
  totalsRow?: boolean;
  columns: { name: string }[];
}

function tablesOf(sheet: ExcelJS.Worksheet): Table[] {
  const models = Object.values((sheet as unknown as { tables: Record<string, { table: TableModel }> }).tables ?? {});
  return models.map(({ table }) => ({
    name: table.name,
    sheet: sheet.name,
    columns: table.columns.map((column) => column.name),
    block: blockOf(table.tableRef),
    headings: table.headerRow !== false,
    totals: table.totalsRow === true,
  }));
}
