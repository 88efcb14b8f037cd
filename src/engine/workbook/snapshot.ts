import type { ICellData, IRange, IStyleData, IWorkbookData, IWorksheetData } from "@univerjs/core";
import { looksOf } from "./looks";
import type { DefinedName } from "../../formula/defined-name";
import type { Layout } from "../../xlsx/layout";
import type { FileCell, FileSheet, FileWorkbook } from "./read";

/** Cell kinds of the engine. */
const TEXT = 1;
const NUMBER = 2;
const TRUTH = 3;

/** Rows and columns left free below and beside what the file holds, to type in. */
const FREE_ROWS = 60;
const FREE_COLUMNS = 12;
const PIXELS_PER_CHARACTER = 7;
const PIXELS_PER_POINT = 4 / 3;
const USUAL_WIDTH = 92;
const USUAL_HEIGHT = 22;

/** The workbook as the engine takes it, in the terminal and in the page. */
export function snapshotOf(workbook: FileWorkbook, id: string, name: string): IWorkbookData {
  const styles = new Styles();
  const sheets = workbook.sheets.map((sheet, at) => [`s${at}`, sheetData(`s${at}`, sheet, styles)] as const);
  return {
    id,
    name,
    appVersion: "",
    locale: "enUS" as IWorkbookData["locale"],
    sheetOrder: sheets.map(([sheetId]) => sheetId),
    sheets: Object.fromEntries(sheets),
    styles: styles.all,
    resources: [{ name: "SHEET_DEFINED_NAME_PLUGIN", data: JSON.stringify(nameMap(workbook.names)) }],
  };
}

/** Cells that look the same share one style. */
class Styles {
  readonly all: Record<string, IStyleData> = {};
  private known = new Map<string, string>();

  idOf(style: IStyleData): string {
    const key = JSON.stringify(style);
    const known = this.known.get(key) ?? `k${this.known.size}`;
    this.known.set(key, known);
    this.all[known] = style;
    return known;
  }
}

function nameMap(names: DefinedName[]): Record<string, object> {
  const entries = names.map(({ name, refersTo, comment }) => {
    const entry = { id: name, name, formulaOrRefString: refersTo, comment: comment ?? "" };
    return [name, { ...entry, localSheetId: "AllDefaultWorkbook" }];
  });
  return Object.fromEntries(entries) as Record<string, object>;
}

function sheetData(id: string, { name, cells, size, looks }: FileSheet, styles: Styles): Partial<IWorksheetData> {
  const cellData: Record<number, Record<number, ICellData>> = {};
  const put = (row: number, column: number, data: ICellData) => {
    const own = (cellData[row] ??= {});
    own[column] = { ...own[column], ...data };
  };
  for (const { row, column, look } of looks?.cells ?? []) put(row, column, { s: styles.idOf(looksOf(look)) });
  for (const cell of cells) put(cell.row, cell.column, engineCell(cell));
  const last = (of: "row" | "column") => cells.reduce((most, cell) => Math.max(most, cell[of] + 1), 0);
  return {
    ...{ id, name, cellData },
    rowCount: Math.max(last("row"), size?.rows ?? 0, looks?.layout.rows ?? 0) + FREE_ROWS,
    columnCount: Math.max(last("column"), size?.columns ?? 0, looks?.layout.columns ?? 0) + FREE_COLUMNS,
    defaultColumnWidth: USUAL_WIDTH,
    defaultRowHeight: USUAL_HEIGHT,
    hidden: looks?.hidden ? 1 : 0,
    ...(looks && laidOut(looks.layout)),
  };
}

function laidOut(layout: Layout): Partial<IWorksheetData> {
  const { rows, columns } = layout.frozen;
  return {
    columnData: columnWidths(layout),
    rowData: rowHeights(layout),
    mergeData: merges(layout),
    showGridlines: layout.gridlines ? 1 : 0,
    freeze: { xSplit: columns, ySplit: rows, startRow: rows || -1, startColumn: columns || -1 },
    ...(layout.tab ? { tabColor: `#${layout.tab}` } : {}),
  };
}

function engineCell({ value, formula, leadsTo }: FileCell): ICellData {
  const held =
    typeof value === "number"
      ? { v: value, t: NUMBER }
      : typeof value === "boolean"
        ? { v: value ? 1 : 0, t: TRUTH }
        : value === null
          ? {}
          : { v: value, t: TEXT };
  return {
    ...held,
    ...(formula !== undefined && { f: formula }),
    ...(leadsTo !== undefined && { custom: { leadsTo } }),
  };
}

function columnWidths({ widths, columns }: Layout): IWorksheetData["columnData"] {
  const known = Array.from({ length: columns }, (_, at) => {
    const { characters, hidden = false } = widths.get(at) ?? {};
    const w = characters ? Math.round(characters * PIXELS_PER_CHARACTER) + 5 : USUAL_WIDTH;
    return [at, { w, hd: hidden ? 1 : 0 }];
  });
  return Object.fromEntries(known) as IWorksheetData["columnData"];
}

/** Rows whose height the file does not set grow with their text. */
function rowHeights({ heights }: Layout): IWorksheetData["rowData"] {
  const known = [...heights].map(([row, { points, hidden }]) => {
    const h = points ? Math.round(points * PIXELS_PER_POINT) : USUAL_HEIGHT;
    return [row, { h, ia: points ? 0 : 1, hd: hidden ? 1 : 0 }];
  });
  return Object.fromEntries(known) as IWorksheetData["rowData"];
}

function merges({ merges }: Layout): IRange[] {
  return merges.map(({ top, left, bottom, right }) => ({
    startRow: top,
    startColumn: left,
    endRow: bottom,
    endColumn: right,
  }));
}
