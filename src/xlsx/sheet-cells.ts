import { cornerOf, LAST_COLUMN, LAST_ROW } from "../formula/addresses";
import { serialOf } from "./serial";
import type { Held } from "./held";
import { Refused } from "./refused";
import { attribute, cellText, tags, unescaped, type Tag } from "./xml";

/** A stretch of a sheet's XML. */
export interface Stretch {
  start: number;
  end: number;
}

export interface CellFormula extends Stretch {
  attributes: string;
  text: string;
}

/** A cell of a sheet and where each of its pieces stands in the XML. */
export interface SheetCell extends Stretch {
  row: number;
  column: number;
  attributes: string;
  value: Held;
  formula: CellFormula | undefined;
  /** What stands in the cell beside formula and value. */
  others: readonly Stretch[];
}

export interface SheetRow extends Stretch {
  row: number;
  attributes: string;
  /** Written as one tag, with no room for cells. */
  alone: boolean;
  /** Where the row's closing tag starts. */
  close: number;
  cells: SheetCell[];
}

export interface SheetXml {
  xml: string;
  rows: SheetRow[];
  /** The element that holds the rows. */
  data: Stretch & { alone: boolean; close: number };
}

/** Reads the cells of a sheet without changing anything of it. */
export function readSheet(xml: string, sharedTexts: readonly string[]): SheetXml {
  const rows: SheetRow[] = [];
  const data = { start: 0, end: 0, alone: true, close: 0 };
  let row: SheetRow | undefined;
  let cell: OpenCell | undefined;
  for (const tag of tags(xml)) {
    if (tag.name === "sheetData" && tag.depth === 1) {
      if (tag.kind !== "close") Object.assign(data, { start: tag.start, end: tag.end, alone: tag.kind === "alone" });
      else Object.assign(data, { close: tag.start, end: tag.end });
    } else if (tag.name === "row" && tag.depth === 2) {
      if (tag.kind === "close" && row) Object.assign(row, { close: tag.start, end: tag.end });
      else rows.push((row = rowFrom(tag, rows.at(-1))));
    } else if (tag.name === "c" && tag.depth === 3 && row) {
      if (tag.kind !== "close") cell = openCell(tag, row);
      if (tag.kind !== "open" && cell) {
        row.cells.push(finished(cell, tag, sharedTexts));
        // What comes after the rows may lie as deep as a cell's own pieces, and is none of them.
        cell = undefined;
      }
    } else if (cell && tag.depth === 4) childOfCell(cell, tag, xml);
  }
  putInOrder(rows);
  return { xml, rows, data };
}

/** Most programs write rows and cells in order; what does not is put so, since cells are looked up by halving. */
function putInOrder(rows: SheetRow[]): void {
  if (rows.some(({ row }, at) => row < (rows[at - 1]?.row ?? 0))) rows.sort((one, other) => one.row - other.row);
  for (const { cells } of rows)
    if (cells.some(({ column }, at) => column < (cells[at - 1]?.column ?? 0)))
      cells.sort((one, other) => one.column - other.column);
}

/** Nearly every cell has none, and there are millions: they share one list. */
const NONE: readonly Stretch[] = [];

/** A cell whose closing tag is still to come: what it holds, and where the piece begins that is open. */
interface OpenCell {
  cell: SheetCell;
  held: string | undefined;
  childStart: number;
}

function rowFrom(tag: Tag, before: SheetRow | undefined): SheetRow {
  const number = attribute(tag.attributes, "r");
  const { start, end, attributes } = tag;
  const row = number ? Number(number) - 1 : (before?.row ?? -1) + 1;
  if (!Number.isInteger(row) || row < 0 || row > LAST_ROW) throw new Refused(`it is damaged: it has a row ${number}`);
  return { row, start, end, attributes, alone: tag.kind === "alone", close: end, cells: [] };
}

/** A sheet has millions of cells, so each is one object of one shape from the start. */
function openCell({ start, end, attributes }: Tag, row: SheetRow): OpenCell {
  const address = attribute(attributes, "r");
  const place = address ? cornerOf(address) : { row: row.row, column: (row.cells.at(-1)?.column ?? -1) + 1 };
  if (place.row !== row.row || !(place.column! <= LAST_COLUMN))
    throw new Refused(`it is damaged: its row ${row.row + 1} holds a cell ${address}`);
  const cell: SheetCell = {
    row: row.row,
    column: place.column!,
    start,
    end,
    attributes,
    value: null,
    formula: undefined,
    others: NONE,
  };
  return { cell, held: undefined, childStart: end };
}

function childOfCell(open: OpenCell, tag: Tag, xml: string): void {
  const { cell } = open;
  if (tag.kind === "open") {
    open.childStart = tag.start;
    if (tag.name === "f") cell.formula = { start: tag.start, end: tag.end, attributes: tag.attributes, text: "" };
    return;
  }
  const start = tag.kind === "alone" ? tag.start : open.childStart;
  const inside = xml.slice(xml.indexOf(">", start) + 1, tag.start);
  if (tag.name === "f" && tag.kind === "alone")
    cell.formula = { start, end: tag.end, attributes: tag.attributes, text: "" };
  else if (tag.name === "f" && cell.formula) {
    const text = xml.slice(cell.formula.end, tag.start);
    cell.formula = { ...cell.formula, end: tag.end, text: unescaped(text) };
  } else if (tag.name === "v") open.held = tag.kind === "alone" ? "" : inside;
  else if (tag.name === "is") open.held = richText(inside);
  else cell.others = [...cell.others, { start, end: tag.end }];
}

function finished({ cell, held }: OpenCell, tag: Tag, sharedTexts: readonly string[]): SheetCell {
  cell.end = tag.end;
  if (held !== undefined) cell.value = valueOf(attribute(cell.attributes, "t") ?? "n", held, sharedTexts);
  return cell;
}

function valueOf(type: string, held: string, sharedTexts: readonly string[]): Held {
  if (type === "s") return sharedTexts[Number(held)] ?? "";
  if (type === "inlineStr") return held;
  if (type === "str") return cellText(held);
  if (type === "e") return unescaped(held);
  if (held.trim() === "") return null;
  if (type === "b") return held.trim() === "1" || held.trim() === "true";
  if (type === "d") return serialOf(new Date(`${unescaped(held).trim().replace(/Z$/, "")}Z`));
  return Number(held);
}

/** The texts that cells share, in their order. */
export function readSharedTexts(xml: string): string[] {
  const texts: string[] = [];
  let start = 0;
  for (const tag of tags(xml)) {
    if (tag.name !== "si" || tag.depth !== 1) continue;
    if (tag.kind === "open") start = tag.end;
    if (tag.kind !== "open") texts.push(tag.kind === "alone" ? "" : richText(xml.slice(start, tag.start)));
  }
  return texts;
}

/** The text of its runs, without how they look and without the readings of Asian signs. */
function richText(xml: string): string {
  const written = xml.replace(/<(?:[\w.-]+:)?rPh\b[\s\S]*?<\/(?:[\w.-]+:)?rPh>/g, "");
  const runs = [...written.matchAll(/<(?:[\w.-]+:)?t(?:\s[^>]*)?(?:\/>|>([\s\S]*?)<\/(?:[\w.-]+:)?t>)/g)];
  return runs.map(([, text = ""]) => cellText(text)).join("");
}
