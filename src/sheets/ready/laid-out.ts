import { addressOf, type Cell } from "../../formula/addresses";
import type { Look } from "./looks";
import type { Column, ListName, ReadySheet } from "./ready-sheet";
import { formulaInCell, type Places, type ReferenceStyle } from "../../formula/sheet-references";

/** What stands in a cell. Text is text even where it looks like a number. */
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
  frozenRows: number;
  choices: { address: string; list: ListName }[];
}

/** Excel's own words for it: where to click when the add-in has not started. */
const STATUS =
  "If the cell at the left shows #NAME?, Bole has not started: Home, Add-ins, My Add-ins, and click Bole's icon once.";

/** A label and its value stand in the first two columns, a remark beside them. */
const [LABEL, VALUE, REMARK] = [1, 2, 3];

/** More rows than these kept in sight would leave no room for the table. */
const MOST_FROZEN_ROWS = 12;
const GAP_WIDTH = 3;
const BOLD_IS_WIDER = 1.15;
/** In characters; a line of text no longer than this can be read without scrolling. */
const WIDEST_TEXT = 110;

/** Puts a ready sheet together under free names. */
export function laidOut(sheet: ReadySheet, names: { sheet: string; table: string }, style: ReferenceStyle): LaidOut {
  const places = placesOf(sheet, names.table);
  const headerRow = places.firstRow - 1;
  const placed: PlacedContent[] = [...above(sheet, places), ...tableOf(sheet, places), ...besideIt(sheet, headerRow)];
  return {
    name: names.sheet,
    table: { name: names.table, headerRow, lastRow: places.lastRow, columns: sheet.columns },
    cells: placed.map(({ formula, content = "", ...cell }) =>
      formula === undefined
        ? { ...cell, content, isFormula: false }
        : { ...cell, content: formulaInCell(formula, places, style, cell.row), isFormula: true },
    ),
    across: linesAcross(sheet),
    widths: [...sheet.columns.map(({ width }) => width), ...widthsBeside(sheet)],
    frozenRows: headerRow <= MOST_FROZEN_ROWS ? headerRow : 0,
    choices: choicesIn(sheet, places),
  };
}

type PlacedContent = Omit<Placed, "content" | "isFormula"> & { content?: string | number; formula?: string };

/** Heading and lead stand in the first two rows, then the cautions, the status and the values. */
const FIRST_CAUTION_ROW = 3;

function placesOf({ cautions, settings, figures, columns, examples, blankRows }: ReadySheet, table: string): Places {
  const firstValueRow = FIRST_CAUTION_ROW + cautions.length + 1;
  const labels = [...settings, ...figures].map(({ label }) => label);
  const headerRow = firstValueRow + labels.length + 2;
  return {
    table,
    columns: new Map(columns.map(({ heading }, i) => [heading, i + 1])),
    firstRow: headerRow + 1,
    lastRow: headerRow + examples.length + blankRows,
    values: new Map(labels.map((label, i) => [label, { row: firstValueRow + i, column: VALUE }])),
  };
}

function above({ title, lead, cautions, settings, figures }: ReadySheet, { values }: Places): PlacedContent[] {
  const statusRow = FIRST_CAUTION_ROW + cautions.length;
  const named = (label: string): PlacedContent => ({
    row: values.get(label)!.row,
    column: LABEL,
    content: label,
    look: "label",
  });
  return [
    { row: 1, column: 1, content: title, look: "title" },
    { row: 2, column: 1, content: lead, look: "lead" },
    ...cautions.map((text, i): PlacedContent => ({
      row: FIRST_CAUTION_ROW + i,
      column: 1,
      content: `Caution: ${text}`,
      look: "caution",
    })),
    { row: statusRow, column: LABEL, formula: "=BOLE.VERSION()", look: "status" },
    { row: statusRow, column: VALUE, content: STATUS, look: "note" },
    ...settings.flatMap(({ label, kind, value, note }): PlacedContent[] => [
      named(label),
      { ...values.get(label)!, content: value, look: "entry", format: formatOf(kind) },
      { row: values.get(label)!.row, column: REMARK, content: note, look: "note" },
    ]),
    ...figures.flatMap(({ label, formula, format, note, caution }): PlacedContent[] => [
      named(label),
      { ...values.get(label)!, formula, look: "figure", format },
      caution
        ? { row: values.get(label)!.row, column: REMARK, content: `Caution: ${caution}`, look: "warning" }
        : { row: values.get(label)!.row, column: REMARK, content: note, look: "note" },
    ]),
  ];
}

function tableOf({ columns, examples }: ReadySheet, { firstRow, lastRow }: Places): PlacedContent[] {
  return columns.flatMap((given, i): PlacedContent[] => {
    const column = i + 1;
    const { heading, note, caution, kind, formula } = given;
    const format = given.format ?? formatOf(kind);
    const rows = Array.from({ length: lastRow - firstRow + 1 }, (_, at): PlacedContent => {
      const cell = { row: firstRow + at, column, format };
      if (formula !== undefined) return { ...cell, formula, look: "computed" };
      return { ...cell, content: examples[at]?.[heading] ?? "", look: "entry" };
    });
    return [
      { row: firstRow - 2, column, content: caution ?? note, look: caution ? "columnWarning" : "columnNote" },
      { row: firstRow - 1, column, content: heading, look: "header" },
      ...rows,
    ];
  });
}

function besideIt({ beside, columns }: ReadySheet, headerRow: number): PlacedContent[] {
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

function widthsBeside({ beside }: ReadySheet): number[] {
  return beside ? [GAP_WIDTH, ...beside.columns.map(({ width }) => width)] : [];
}

function linesAcross({ lead, cautions, columns }: ReadySheet): LaidOut["across"] {
  const ends = columns.map((_, i) => columns.slice(0, i + 1).reduce((sum, { width }) => sum + width, 0));
  const within = ends.filter((end) => end <= WIDEST_TEXT);
  const texts = [lead, ...cautions.map((text) => `Caution: ${text}`)];
  return texts.map((text, i) => ({
    row: 2 + i,
    columns: within.length,
    lines: Math.ceil((text.length * BOLD_IS_WIDER) / within.at(-1)!),
  }));
}

function choicesIn({ settings, columns }: ReadySheet, { values, firstRow, lastRow }: Places): LaidOut["choices"] {
  const single = settings.flatMap(({ label, list }) =>
    list ? [{ address: sheetAddress(values.get(label)!), list }] : [],
  );
  const whole = columns.flatMap(({ list }, i) => {
    const [from, to] = [firstRow, lastRow].map((row) => sheetAddress({ row, column: i + 1 }));
    return list ? [{ address: `${from}:${to}`, list }] : [];
  });
  return [...single, ...whole];
}

function formatOf(kind: Column["kind"]): string | undefined {
  return kind === "text" ? "@" : undefined;
}

/** Rows and columns of a ready sheet bear the numbers that stand beside a sheet, from 1. */
function sheetAddress({ row, column }: Cell): string {
  return addressOf(row - 1, column - 1);
}
