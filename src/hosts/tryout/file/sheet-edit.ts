import { addressOf } from "../workbook/addresses";
import type { Held } from "../workbook/read";
import type { SheetCell, SheetRow, SheetXml } from "./sheet-cells";
import { escaped, escapedCellText, patched, prefixOf, withoutAttribute, type Patch } from "./xml";

/** What becomes of a cell. */
export interface CellChange {
  row: number;
  column: number;
  /** The value it shows from now on; left out where that stays. */
  value?: Held;
  /** The formula goes and its value stays. */
  dropFormula?: boolean;
  /** The formula reads like this from now on. */
  formula?: string;
  /** The block that a spilled answer fills from now on. */
  ref?: string;
}

const ERROR = /^#(?:NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|N\/A|GETTING_DATA)$/;

/** The sheet's XML with some of its cells changed; every other sign stays. */
export function withCells(sheet: SheetXml, changes: readonly CellChange[]): string {
  const prefix = prefixOf(sheet.xml);
  const rows = new Map(sheet.rows.map((row) => [row.row, row]));
  const patches: Patch[] = [];
  const newRows = new Map<number, string[]>();
  for (const change of [...changes].sort((a, b) => a.row - b.row || a.column - b.column)) {
    const row = rows.get(change.row);
    const cell = row?.cells.find(({ column }) => column === change.column);
    if (cell) patches.push({ start: cell.start, end: cell.end, text: changedCell(sheet.xml, cell, change, prefix) });
    else if (change.value === undefined || change.value === null) continue;
    else if (row) patches.push(cellInRow(row, change, prefix));
    else newRows.set(change.row, [...(newRows.get(change.row) ?? []), newCell(change, prefix)]);
  }
  const openings = new Map<number, Patch>();
  const all = patches.flatMap((patch) => inOneOpening(patch, openings));
  return patched(sheet.xml, [...all, ...openings.values(), ...rowPatches(sheet, newRows, prefix)]);
}

function changedCell(xml: string, cell: SheetCell, change: CellChange, prefix: string): string {
  const { formula, others } = cell;
  const newValue = change.value !== undefined;
  const written = valueXml(newValue ? change.value! : cell.value, change.dropFormula || !formula, prefix);
  let attributes = withoutAttribute(cell.attributes.trimEnd(), "t");
  if (change.dropFormula) attributes = withoutAttribute(attributes, "cm");
  if (change.dropFormula || newValue) attributes = withoutAttribute(attributes, "vm");
  const kept = formula && !change.dropFormula ? formulaXml(xml, cell, change) : "";
  const rest = others.map(({ start, end }) => xml.slice(start, end)).join("");
  const inside = `${kept}${written.xml}${rest}`;
  const open = `<${prefix}c${attributes}${written.type ? ` t="${written.type}"` : ""}`;
  return inside ? `${open}>${inside}</${prefix}c>` : `${open}/>`;
}

function formulaXml(xml: string, { formula }: SheetCell, { ref, formula: text }: CellChange): string {
  if (!formula) return "";
  const whole = xml.slice(formula.start, formula.end);
  const opened = whole.slice(0, whole.indexOf(">") + 1);
  const sized = ref ? opened.replace(/(\sref\s*=\s*)(?:"[^"]*"|'[^']*')/, `$1"${ref}"`) : opened;
  const inside = text === undefined ? whole.slice(opened.length) : `${escaped(text)}${whole.slice(whole.lastIndexOf("<"))}`;
  return sized + inside;
}

/** A value as a cell spells it: a formula's text answer is not written like a text that stands there itself. */
function valueXml(value: Held, standsAlone: boolean, prefix: string): { type?: string; xml: string } {
  const v = (text: string) => `<${prefix}v>${text}</${prefix}v>`;
  if (value === null) return { xml: "" };
  if (typeof value === "number") return { xml: v(String(value)) };
  if (typeof value === "boolean") return { type: "b", xml: v(value ? "1" : "0") };
  if (ERROR.test(value)) return { type: "e", xml: v(value) };
  if (!standsAlone) return { type: "str", xml: v(escapedCellText(value)) };
  const text = `<${prefix}t xml:space="preserve">${escapedCellText(value)}</${prefix}t>`;
  return { type: "inlineStr", xml: `<${prefix}is>${text}</${prefix}is>` };
}

function newCell({ row, column, value = null }: CellChange, prefix: string): string {
  const { type, xml } = valueXml(value, true, prefix);
  return `<${prefix}c r="${addressOf(row, column)}"${type ? ` t="${type}"` : ""}>${xml}</${prefix}c>`;
}

/** A new cell stands before the first one to its right. */
function cellInRow(row: SheetRow, change: CellChange, prefix: string): Patch {
  const text = newCell(change, prefix);
  if (row.alone) return { start: row.start, end: row.end, text: `<${prefix}row${row.attributes}>${text}</${prefix}row>` };
  const next = row.cells.find(({ column }) => column > change.column);
  const at = next?.start ?? row.close;
  return { start: at, end: at, text };
}

/** Several new cells may open the same row that was written as one tag: they share the opening. */
function inOneOpening(patch: Patch, openings: Map<number, Patch>): Patch[] {
  const close = /<\/[\w.-]*:?row>$/.exec(patch.text)?.[0];
  if (!close) return [patch];
  const known = openings.get(patch.start);
  if (known) known.text = known.text.slice(0, -close.length) + patch.text.slice(patch.text.indexOf(">") + 1);
  else openings.set(patch.start, patch);
  return [];
}

/** New rows stand before the first one below. */
function rowPatches({ rows, data }: SheetXml, newRows: Map<number, string[]>, prefix: string): Patch[] {
  return [...newRows].map(([number, cells]) => {
    const at = rows.find(({ row }) => row > number)?.start ?? data.close;
    return { start: at, end: at, text: `<${prefix}row r="${number + 1}">${cells.join("")}</${prefix}row>` };
  });
}
