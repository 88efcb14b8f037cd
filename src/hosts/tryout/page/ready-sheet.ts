import type { ICellData, IStyleData, IWorksheetData } from "@univerjs/core";
import type { LaidOut, Placed } from "../../../sheets/laid-out";
import { LOOKS, type Appearance } from "../../../sheets/looks";

/** The engine's codes: kinds of cells, wrapped text, text at the top, thin lines. */
const [TEXT, NUMBER] = [1, 2];
const WRAP = 3;
const TOP = 1;
const THIN = 1;

/** Rows and columns left free below and beside, to type in and for answers that spill. */
const FREE_ROWS = 40;
const FREE_COLUMNS = 12;
const PIXELS_PER_CHARACTER = 7.5;
const LINE_HEIGHT = 20;
const TITLE_LINES = 1.4;
const NOTE_LINES = 3;

/** A ready sheet as the engine takes it. It knows no tables, so the formulas name cells. */
export function engineSheet({ cells, across, table, widths, frozenRows }: LaidOut): Partial<IWorksheetData> {
  const cellData: Record<number, Record<number, ICellData>> = {};
  for (const cell of cells) (cellData[cell.row - 1] ??= {})[cell.column - 1] = engineCell(cell);
  const rows: [number, number][] = [
    ...across.map(({ row, lines }): [number, number] => [row - 1, lines]),
    [0, TITLE_LINES],
    [table.headerRow - 2, NOTE_LINES],
    [table.headerRow - 1, 2],
  ];
  return {
    cellData,
    rowCount: table.lastRow + FREE_ROWS,
    columnCount: widths.length + FREE_COLUMNS,
    columnData: Object.fromEntries(widths.map((width, i) => [i, { w: Math.round(width * PIXELS_PER_CHARACTER) + 5 }])),
    rowData: Object.fromEntries(rows.map(([row, lines]) => [row, { h: lines * LINE_HEIGHT + 4, ia: 0 }])),
    mergeData: across.map(({ row, columns }) => ({
      startRow: row - 1,
      endRow: row - 1,
      startColumn: 0,
      endColumn: columns - 1,
    })),
    freeze: { xSplit: 0, ySplit: frozenRows, startRow: frozenRows || -1, startColumn: -1 },
  };
}

function engineCell({ content, isFormula, look, format }: Placed): ICellData {
  const s = styleOf(LOOKS[look], format);
  if (isFormula) return { f: String(content), s };
  if (content === "") return { s };
  return typeof content === "number" ? { v: content, t: NUMBER, s } : { v: content, t: TEXT, s };
}

function styleOf({ bold, size, ink, fill, wrap, edge }: Appearance, format: string | undefined): IStyleData {
  const line = edge ? { s: THIN, cl: { rgb: edge } } : undefined;
  return {
    ...(bold && { bl: 1 }),
    ...(size && { fs: size }),
    ...(ink && { cl: { rgb: ink } }),
    ...(fill && { bg: { rgb: fill } }),
    ...(wrap && { tb: WRAP, vt: TOP }),
    ...(line && { bd: { t: line, r: line, b: line, l: line } }),
    ...(format !== undefined && { n: { pattern: format === "@" ? "@@@" : format } }),
  } as IStyleData;
}
