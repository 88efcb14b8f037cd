import { addressOf } from "../formula/addresses";
import { findRow, firstFrom } from "./find-cells";
import type { Held } from "./held";
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
  /** A formula typed into the cell, whatever stood there before. */
  entered?: EnteredFormula;
  /** The number of the look that the cell has from now on. */
  look?: number;
  /** The mark goes by which Excel calculates the formula again at every step. */
  settled?: boolean;
  /** The block that a spilled answer fills from now on. */
  ref?: string;
}

/** A formula as the file stores it, without the equals sign. */
export interface EnteredFormula {
  text: string;
  /** The cells that it fills as an array formula, and the mark by which Excel knows it for one that grows and shrinks. */
  array?: { ref: string; mark?: string };
}

const ERROR = /^#(?:NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|N\/A|GETTING_DATA)$/;

/** The sheet's XML with some of its cells changed; every other sign stays. */
export function withCells(sheet: SheetXml, changes: readonly CellChange[]): string {
  const prefix = prefixOf(sheet.xml);
  const byRow = new Map<number, CellChange[]>();
  for (const change of [...changes].sort((a, b) => a.row - b.row || a.column - b.column)) {
    const own = byRow.get(change.row);
    if (own) own.push(change);
    else byRow.set(change.row, [change]);
  }
  const patches = [...byRow].flatMap(([number, own]) => {
    const row = findRow(sheet.rows, number);
    return row && !row.alone ? cellPatches(sheet.xml, row, own, prefix) : rowPatch(sheet, number, row, own, prefix);
  });
  return patched(sheet.xml, patches);
}

/** Changes the cells of a row that are there; a new one stands before the first to its right. */
function cellPatches(xml: string, row: SheetRow, changes: readonly CellChange[], prefix: string): Patch[] {
  return changes.flatMap((change) => {
    const next = row.cells[firstFrom(row.cells, ({ column }) => column >= change.column)];
    const cell = next?.column === change.column ? next : undefined;
    if (cell) return [{ start: cell.start, end: cell.end, text: changedCell(xml, cell, change, prefix) }];
    const at = next?.start ?? row.close;
    const text = newCell(change, prefix);
    return text ? [{ start: at, end: at, text }] : [];
  });
}

/** A row without cells gets its first ones; a row that is not there stands before the first one below it. */
function rowPatch(sheet: SheetXml, number: number, row: SheetRow | undefined, changes: CellChange[], prefix: string) {
  const cells = changes.map((change) => newCell(change, prefix)).join("");
  if (!cells) return [];
  const attributes = row ? row.attributes.trimEnd() : ` r="${number + 1}"`;
  const text = `<${prefix}row${attributes}>${cells}</${prefix}row>`;
  if (row) return [{ start: row.start, end: row.end, text }];
  const at = sheet.rows[firstFrom(sheet.rows, (other) => other.row > number)]?.start ?? sheet.data.close;
  return [{ start: at, end: at, text }];
}

function changedCell(xml: string, cell: SheetCell, change: CellChange, prefix: string): string {
  const { formula, others } = cell;
  const { entered, look } = change;
  const newValue = change.value !== undefined;
  const written = valueXml(
    newValue ? change.value! : cell.value,
    !entered && (change.dropFormula === true || !formula),
    prefix,
  );
  let attributes = withoutAttribute(cell.attributes.trimEnd(), "t");
  if (change.dropFormula || entered) attributes = withoutAttribute(attributes, "cm");
  if (change.dropFormula || newValue) attributes = withoutAttribute(attributes, "vm");
  if (look !== undefined) attributes = `${withoutAttribute(attributes, "s")} s="${look}"`;
  if (entered) attributes += markXml(entered);
  const kept = entered
    ? enteredXml(entered, prefix)
    : formula && !change.dropFormula
      ? formulaXml(xml, cell, change)
      : "";
  const rest = others.map(({ start, end }) => xml.slice(start, end)).join("");
  const inside = `${kept}${written.xml}${rest}`;
  const open = `<${prefix}c${attributes}${written.type ? ` t="${written.type}"` : ""}`;
  return inside ? `${open}>${inside}</${prefix}c>` : `${open}/>`;
}

function formulaXml(xml: string, { formula }: SheetCell, { ref, formula: text, settled }: CellChange): string {
  if (!formula) return "";
  const whole = xml.slice(formula.start, formula.end);
  const written = whole.slice(0, whole.indexOf(">") + 1);
  const opened = settled ? withoutAttribute(written, "ca") : written;
  const sized = ref ? opened.replace(/(\sref\s*=\s*)(?:"[^"]*"|'[^']*')/, `$1"${ref}"`) : opened;
  const inside =
    text === undefined ? whole.slice(written.length) : `${escaped(text)}${whole.slice(whole.lastIndexOf("<"))}`;
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

function newCell({ row, column, value = null, entered, look }: CellChange, prefix: string): string {
  if (value === null && !entered && look === undefined) return "";
  const { type, xml } = valueXml(value, !entered, prefix);
  const looked = look === undefined ? "" : ` s="${look}"`;
  const open = `<${prefix}c r="${addressOf(row, column)}"${looked}${type ? ` t="${type}"` : ""}`;
  if (entered) return `${open}${markXml(entered)}>${enteredXml(entered, prefix)}${xml}</${prefix}c>`;
  return xml ? `${open}>${xml}</${prefix}c>` : `${open}/>`;
}

function markXml({ array }: EnteredFormula): string {
  return array?.mark ? ` cm="${array.mark}"` : "";
}

function enteredXml({ text, array }: EnteredFormula, prefix: string): string {
  const filling = array ? ` t="array" ref="${array.ref}"` : "";
  return `<${prefix}f${filling}>${escaped(text)}</${prefix}f>`;
}
