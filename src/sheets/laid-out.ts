import { addressOf, type Cell } from "../formula/addresses";
import type { Column, Row, Setting, TableSheet } from "./definition";
import { FORMAT } from "./formats";
import type { Look } from "./looks";
import { onPaper, type OnPaper } from "./on-paper";
import { serialOf } from "../xlsx/serial";
import { formulaInCell, type Places, type ReferenceStyle } from "../formula/sheet-references";

/** What stands in a cell. Text is text even where it looks like a number; a day is a number in a format of days. */
export interface Placed extends Cell {
  content: string | number;
  isFormula: boolean;
  look: Look;
  format?: string;
}

/** A ready sheet with everything in its place, for a host to draw. */
export interface LaidOut {
  name: string;
  table: { name: string; headerRow: number; lastRow: number; columns: readonly Column[] };
  cells: Placed[];
  /** Rows whose first cell runs across some columns, with the lines its text needs. */
  across: { row: number; columns: number; lines: number }[];
  /** In characters, from the first column on. */
  widths: number[];
  paper: OnPaper;
  frozenRows: number;
  frozenColumns: number;
  choices: { address: string; list: string }[];
  /** Cells with a name for the other sheets of a workbook. */
  named: { address: string; name: string }[];
}

/** Excel's own words for it: where to click when the add-in has not started. */
const STATUS = "If the left cell shows #NAME?, start Bole: Home, Add-ins, My Add-ins, its icon once.";

/** Labels begin in the first column; their values stand in the second if the sheet says no other. */
const LABEL = 1;
const USUAL_VALUE_COLUMN = 2;

/** Of a column whose definition says none. */
const USUAL_WIDTH = 12;

/** More rows than these kept in sight would leave no room for the table. */
const MOST_FROZEN_ROWS = 14;
const GAP_WIDTH = 3;
const BOLD_IS_WIDER = 1.15;
/** In characters; a line of text no longer than this can be read without scrolling. */
const WIDEST_TEXT = 110;

/** Puts a ready sheet together under free names. */
export function laidOut(sheet: TableSheet, names: { sheet: string; table: string }, style: ReferenceStyle): LaidOut {
  const places = placesOf(sheet, names.table);
  const headerRow = places.firstRow - 1;
  const widths = [...sheet.columns.map(widthOf), ...widthsBeside(sheet)];
  const paper = onPaper(sheet, widths);
  const placed: PlacedContent[] = [...above(sheet, places), ...tableOf(sheet, places), ...besideIt(sheet, headerRow)];
  return {
    name: names.sheet,
    table: { name: names.table, headerRow, lastRow: places.lastRow, columns: sheet.columns },
    cells: placed.map(({ formula, content = "", ...cell }) =>
      formula === undefined
        ? { ...cell, content, isFormula: false }
        : { ...cell, content: formulaInCell(formula, places, style, cell.row), isFormula: true },
    ),
    across: linesAcross(sheet, paper),
    widths,
    paper,
    frozenRows: headerRow <= MOST_FROZEN_ROWS ? headerRow : 0,
    frozenColumns: sheet.frozenColumns ?? 0,
    choices: choicesIn(sheet, places),
    named: [...sheet.settings, ...sheet.figures].flatMap(({ label, name }) =>
      name ? [{ address: sheetAddress(places.values.get(label)!), name }] : [],
    ),
  };
}

/** The first and the last row of a sheet's table. */
export function tableRows(sheet: TableSheet): { first: number; last: number } {
  const { firstRow, lastRow } = placesOf(sheet, sheet.table);
  return { first: firstRow, last: lastRow };
}

type PlacedContent = Omit<Placed, "content" | "isFormula"> & { content?: string | number; formula?: string };

/** Heading and lead stand in the first two rows, then the cautions, the status and the values. */
const FIRST_CAUTION_ROW = 3;

function placesOf(sheet: TableSheet, table: string): Places {
  const { cautions, settings, figures, columns, examples, blankRows } = sheet;
  const firstValueRow = FIRST_CAUTION_ROW + cautions.length + 1;
  const { value, figuresFrom } = stacksOf(sheet);
  const below = figuresFrom ? 0 : settings.length;
  const headerRow = firstValueRow + Math.max(settings.length, below + figures.length) + 2;
  const placed = (labels: readonly { label: string }[], row: number, column: number): [string, Cell][] =>
    labels.map(({ label }, i) => [label, { row: row + i, column }]);
  return {
    table,
    columns: new Map(columns.map(({ heading }, i) => [heading, i + 1])),
    firstRow: headerRow + 1,
    lastRow: headerRow + examples.length + blankRows,
    values: new Map([
      ...placed(settings, firstValueRow, value),
      ...placed(figures, firstValueRow + below, figuresFrom?.value ?? value),
      ...cornersBeside(sheet, headerRow),
    ]),
  };
}

/** By what a formula calls them, the corners of the answer beside the table. */
function cornersBeside({ beside, columns }: TableSheet, top: number): [string, Cell][] {
  if (!beside) return [];
  const left = columns.length + 2;
  const bottom = top + beside.rows;
  return [
    ["beside", { row: top, column: left }],
    ["beside foot", { row: bottom, column: left }],
    ["beside end", { row: bottom, column: left + beside.columns.length - 1 }],
  ];
}

/** Where values stand; figures stand under the settings, or beside them where the sheet says so. */
function stacksOf({ valueColumn: value = USUAL_VALUE_COLUMN, figuresFrom }: TableSheet) {
  return { value, figuresFrom };
}

function above(sheet: TableSheet, { values }: Places): PlacedContent[] {
  const { title, heading = title, lead, cautions } = sheet;
  const statusRow = FIRST_CAUTION_ROW + cautions.length;
  return [
    { row: 1, column: 1, content: heading, look: "title" },
    { row: 2, column: 1, content: lead, look: "lead" },
    ...cautions.map((text, i): PlacedContent => ({
      row: FIRST_CAUTION_ROW + i,
      column: 1,
      content: `Caution: ${text}`,
      look: "caution",
    })),
    { row: statusRow, column: LABEL, formula: "=BOLE.VERSION()", look: "status" },
    { row: statusRow, column: stacksOf(sheet).value, content: STATUS, look: "note" },
    ...settingsOf(sheet, values),
    ...figuresOf(sheet, values),
  ];
}

function settingsOf({ settings }: TableSheet, values: Places["values"]): PlacedContent[] {
  return settings.flatMap((setting): PlacedContent[] => {
    const place = values.get(setting.label)!;
    return [
      { row: place.row, column: LABEL, content: setting.label, look: "label" },
      { ...place, content: setting.value, look: "entry", format: formatOf(setting) },
      ...(setting.note
        ? [{ row: place.row, column: place.column + 1, content: setting.note, look: "note" as const }]
        : []),
    ];
  });
}

function figuresOf({ figures, figuresFrom }: TableSheet, values: Places["values"]): PlacedContent[] {
  return figures.flatMap(({ label, formula, format, note, caution }): PlacedContent[] => {
    const place = values.get(label)!;
    const remark = { row: place.row, column: place.column + 1 };
    return [
      { row: place.row, column: figuresFrom?.label ?? LABEL, content: label, look: "label" },
      { ...place, formula, look: "figure", format },
      caution
        ? { ...remark, content: `Caution: ${caution}`, look: "warning" }
        : { ...remark, content: note, look: "note" },
    ];
  });
}

function tableOf({ columns, examples }: TableSheet, { firstRow, lastRow }: Places): PlacedContent[] {
  return columns.flatMap((given, i): PlacedContent[] => {
    const column = i + 1;
    const { heading, note = "", caution, formula } = given;
    const format = formatOf(given);
    const rows = Array.from({ length: lastRow - firstRow + 1 }, (_, at): PlacedContent => {
      const cell = { row: firstRow + at, column, format };
      if (formula !== undefined) return { ...cell, formula, look: given.look ?? "computed" };
      return { ...cell, content: plainContent(examples[at]?.[heading]), look: "entry" };
    });
    return [
      { row: firstRow - 2, column, content: caution ?? note, look: caution ? "columnWarning" : "columnNote" },
      { row: firstRow - 1, column, content: heading, look: "header" },
      ...rows,
    ];
  });
}

function besideIt({ beside, columns }: TableSheet, headerRow: number): PlacedContent[] {
  if (!beside) return [];
  const column = columns.length + 2;
  return [
    { row: headerRow - 1, column, content: beside.heading, look: "label" },
    { row: headerRow, column, formula: beside.formula, look: "spilled" },
    ...beside.columns.flatMap(({ format }, i) =>
      Array.from({ length: format ? beside.rows : 0 }, (_, at): PlacedContent => {
        return { row: headerRow + 1 + at, column: column + i, content: "", look: "spilled", format };
      }),
    ),
  ];
}

function plainContent(typed: Row[string] | undefined): string | number {
  return typed instanceof Date ? serialOf(typed) : (typed ?? "");
}

function widthOf({ width = USUAL_WIDTH }: Column): number {
  return width;
}

function widthsBeside({ beside }: TableSheet): number[] {
  return beside ? [GAP_WIDTH, ...beside.columns.map(({ width }) => width)] : [];
}

/** Text runs across as many columns as can be read without scrolling, and never past the first page. */
function linesAcross(sheet: TableSheet, { pageStarts }: OnPaper): LaidOut["across"] {
  const { lead, cautions } = sheet;
  const columns = sheet.columns.slice(0, pageStarts[0]);
  const ends = columns.map((_, i) => columns.slice(0, i + 1).reduce((sum, column) => sum + widthOf(column), 0));
  const within = ends.filter((end) => end <= WIDEST_TEXT);
  const texts = [lead, ...cautions.map((text) => `Caution: ${text}`)];
  return texts.map((text, i) => ({
    row: 2 + i,
    columns: within.length,
    lines: Math.ceil((text.length * BOLD_IS_WIDER) / within.at(-1)!),
  }));
}

function choicesIn({ settings, columns }: TableSheet, { values, firstRow, lastRow }: Places): LaidOut["choices"] {
  const single = settings.flatMap(({ label, list }) =>
    list ? [{ address: sheetAddress(values.get(label)!), list }] : [],
  );
  const whole = columns.flatMap(({ list }, i) => {
    const [from, to] = [firstRow, lastRow].map((row) => sheetAddress({ row, column: i + 1 }));
    return list ? [{ address: `${from}:${to}`, list }] : [];
  });
  return [...single, ...whole];
}

function formatOf({ kind, format }: Pick<Column | Setting, "kind" | "format">): string | undefined {
  return format ?? (kind === "text" ? FORMAT.text : undefined);
}

/** Rows and columns of a ready sheet bear the numbers that stand beside a sheet, from 1. */
function sheetAddress({ row, column }: Cell): string {
  return addressOf(row - 1, column - 1);
}
