import type { ErrorCode } from "./error";

/** What a host hands over for an argument: a grid of cells, or nothing where the argument was left out. */
export type Range = unknown;

/** What one cell may hold once a data-type object has been opened. */
export type Content = number | string | boolean | null | { error: ErrorCode };

const ERROR_TEXT =
  /^#(?:VALUE!|N\/A|REF!|DIV\/0!|NUM!|NAME\?|NULL!|SPILL!|CALC!|FIELD!|BLOCKED!|CONNECT!|BUSY!|UNKNOWN!)$/;

/**
 * The content of a cell as a host hands it over. A data-type object stands for its basic value; an error comes as an
 * object or, in the try-out sheet, as its text; text of spaces only is blank.
 */
export function contentOf(cell: unknown): Content {
  switch (typeof cell) {
    case "number":
      return Number.isFinite(cell) ? cell : { error: "#NUM!" };
    case "boolean":
      return cell;
    case "string":
      if (ERROR_TEXT.test(cell)) return { error: cell as ErrorCode };
      return cell.trim() === "" ? null : cell;
    case "object":
      return cell === null ? null : contentOfObject(cell);
    default:
      return cell === undefined ? null : String(cell);
  }
}

function contentOfObject(cell: object): Content {
  if ("error" in cell && typeof cell.error === "string" && ERROR_TEXT.test(cell.error))
    return { error: cell.error as ErrorCode };
  if ("basicValue" in cell && typeof cell.basicValue !== "object") return contentOf(cell.basicValue);
  return { error: "#VALUE!" };
}

/**
 * An argument as a grid, whatever the host handed over: one value becomes a grid of one cell. Data-type objects are
 * opened here, so that a 0, a minus or a blank in one counts as in any other cell.
 */
export function gridOf(range: Range): readonly (readonly unknown[])[] {
  if (!Array.isArray(range)) return [[opened(range)]];
  if (range.length === 0) return [[null]];
  const rows: readonly unknown[][] = range.every(isFilledArray)
    ? range
    : range.map((row: unknown) => (isFilledArray(row) ? row : Array.isArray(row) ? [null] : [row]));
  return rows.some((row) => row.some(isObject)) ? rows.map((row) => row.map(opened)) : rows;
}

function opened(cell: unknown): unknown {
  return isObject(cell) ? contentOfObject(cell) : cell;
}

function isObject(cell: unknown): cell is object {
  return typeof cell === "object" && cell !== null;
}

/** How many cells the longest row has. */
export function widestRow(cells: readonly (readonly unknown[])[]): number {
  return cells.reduce((widest, row) => Math.max(widest, row.length), 1);
}

/** A range's size as a message says it. */
export function sizeOf(cells: readonly (readonly unknown[])[]): string {
  return `${cells.length} × ${widestRow(cells)} cells`;
}

function isFilledArray(row: unknown): row is unknown[] {
  return Array.isArray(row) && row.length > 0;
}

/** A cell as a message shows it: text in quotes, a long text cut short. */
export function shown(cell: unknown): string {
  const content = contentOf(cell);
  if (content === null) return "a blank cell";
  if (typeof content === "object") return content.error;
  if (typeof content === "boolean") return content ? "TRUE" : "FALSE";
  if (typeof content === "number") return String(content);
  return content.length > 40 ? `"${content.slice(0, 40)}…"` : `"${content}"`;
}
