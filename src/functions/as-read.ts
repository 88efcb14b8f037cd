import { isCellError } from "../cells/error";
import { readingOf, type WorksheetFunction } from "../cells/spread";

/** Digits that are plenty to recognise a size by. */
const DIGITS = 6;

/** Values of a list that are told one by one. */
const MOST_TOLD = 4;

/**
 * Each argument of a call as Bole reads it: `diameter 24 inches`, `rule Doyle`, `length: 40 rows, the first 8.5 feet`. What
 * cannot be read says why, in the words of the cell's own message. Cells that are not known are left to the sheet.
 */
export function argumentsAsRead(formula: WorksheetFunction, given: readonly Given[]): string[] {
  return formula.takes.map((argument, at) => {
    const { name, facts } = argument;
    const cells = given[at];
    if (cells === UNKNOWN) return `${name}: worked out by the sheet`;
    if (cells === undefined) return `${name} left out${defaultOf(facts.default, facts.bare)}`;
    const read = readingOf(argument, cells);
    if (isCellError(read)) return read.message;
    return said(name, read, facts.bare, cells.length * (cells[0]?.length ?? 0));
  });
}

/** The cells given for an argument; nothing where it is left out; unknown where only the sheet can work them out. */
export type Given = unknown[][] | undefined | typeof UNKNOWN;
export const UNKNOWN = "unknown";

function defaultOf(fallback: unknown, unit: string | undefined): string {
  return fallback === undefined ? "" : `: ${withUnit(fallback, unit)}`;
}

function said(name: string, values: readonly unknown[], unit: string | undefined, cells: number): string {
  const [first] = values;
  if (values.length > 1) return `${name}: ${values.length} cells, the first ${withUnit(first, unit)}`;
  if (first === undefined) return `${name} blank`;
  if (Array.isArray(first)) return list(name, first, unit);
  if (typeof first === "object" && first !== null) return `${name}: ${cells} cells`;
  return `${name} ${withUnit(first, unit)}`;
}

function list(name: string, values: readonly unknown[], unit: string | undefined): string {
  if (values.some((value) => typeof value === "object"))
    return `${name}: ${values.length} ${values.length === 1 ? "row" : "rows"}`;
  const told = values.slice(0, MOST_TOLD).map((value) => withUnit(value, undefined));
  const more = values.length > MOST_TOLD ? ` and ${values.length - MOST_TOLD} more` : "";
  return `${name} ${told.join(", ")}${more}${unit ? ` ${unit}` : ""}`;
}

function withUnit(value: unknown, unit: string | undefined): string {
  if (typeof value === "number") return `${Number(value.toPrecision(DIGITS))}${unit ? ` ${unit}` : ""}`;
  if (typeof value === "boolean") return value ? "yes" : "no";
  return String(value);
}
