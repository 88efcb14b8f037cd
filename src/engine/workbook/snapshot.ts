import type { ICellData, IRange, IStyleData, IWorkbookData, IWorksheetData } from "@univerjs/core";
import type ExcelJS from "exceljs";
import { blockOf } from "../../formula/addresses";
import { looksOf } from "./looks";
import type { DefinedName } from "../../formula/defined-name";
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

function sheetData(id: string, { name, cells, looks }: FileSheet, styles: Styles): Partial<IWorksheetData> {
  const cellData: Record<number, Record<number, ICellData>> = {};
  const put = (row: number, column: number, data: ICellData) => {
    cellData[row] = { ...cellData[row], [column]: { ...cellData[row]?.[column], ...data } };
  };
  looks.eachRow({ includeEmpty: true }, (row) =>
    row.eachCell({ includeEmpty: true }, (cell) => {
      if (Object.keys(cell.style ?? {}).length > 0)
        put(Number(cell.row) - 1, Number(cell.col) - 1, { s: styles.idOf(looksOf(cell)) });
    }),
  );
  for (const cell of cells) put(cell.row, cell.column, engineCell(cell));
  return {
    id,
    name,
    cellData,
    rowCount: looks.rowCount + FREE_ROWS,
    columnCount: looks.columnCount + FREE_COLUMNS,
    defaultColumnWidth: USUAL_WIDTH,
    defaultRowHeight: USUAL_HEIGHT,
    columnData: columnWidths(looks),
    rowData: rowHeights(looks),
    mergeData: merges(looks),
    hidden: looks.state === "visible" ? 0 : 1,
    ...view(looks),
    ...(looks.properties.tabColor?.argb ? { tabColor: `#${looks.properties.tabColor.argb.slice(-6)}` } : {}),
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

function columnWidths(looks: ExcelJS.Worksheet): IWorksheetData["columnData"] {
  const widths = Array.from({ length: looks.columnCount }, (_, at) => {
    const column = looks.getColumn(at + 1);
    const w = column.width ? Math.round(column.width * PIXELS_PER_CHARACTER) + 5 : USUAL_WIDTH;
    return [at, { w, hd: column.hidden ? 1 : 0 }];
  });
  return Object.fromEntries(widths) as IWorksheetData["columnData"];
}

/** Rows whose height the file does not set grow with their text. */
function rowHeights(looks: ExcelJS.Worksheet): IWorksheetData["rowData"] {
  const heights: [number, object][] = [];
  looks.eachRow({ includeEmpty: true }, (row, number) => {
    if (!row.height && !row.hidden && !row.hasValues) return;
    const h = row.height ? Math.round(row.height * PIXELS_PER_POINT) : USUAL_HEIGHT;
    heights.push([number - 1, { h, ia: row.height ? 0 : 1, hd: row.hidden ? 1 : 0 }]);
  });
  return Object.fromEntries(heights) as IWorksheetData["rowData"];
}

function merges(looks: ExcelJS.Worksheet): IRange[] {
  const ranges = (looks.model as unknown as { merges?: string[] }).merges ?? [];
  return ranges.map((range) => {
    const { top, left, bottom, right } = blockOf(range);
    return { startRow: top, startColumn: left, endRow: bottom, endColumn: right };
  });
}

function view(looks: ExcelJS.Worksheet): Partial<IWorksheetData> {
  const shown = (looks.views as Partial<ExcelJS.WorksheetView>[] | null)?.[0];
  const frozen = shown?.state === "frozen" ? (shown as ExcelJS.WorksheetViewFrozen) : undefined;
  const [xSplit, ySplit] = [frozen?.xSplit ?? 0, frozen?.ySplit ?? 0];
  return {
    showGridlines: shown?.showGridLines === false ? 0 : 1,
    freeze: { xSplit, ySplit, startRow: ySplit || -1, startColumn: xSplit || -1 },
  };
}
