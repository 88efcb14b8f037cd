import { contentOf } from "../../cells/cell";
import { isCellError, type CellError } from "../../cells/error";
import { isDateSerial } from "../../cells/read";
import { LEFT_OUT } from "../../functions/registry";
import { serialOf } from "../../xlsx/serial";
import { fullRows } from "../full-rows";

/**
 * An argument as the online sheet hands it over, as a grid of cells: one cell comes as its bare value, a range as rows,
 * and what was left out as nothing.
 */
export function cellsGiven(argument: unknown): unknown[][] | undefined {
  if (argument === undefined || argument === null) return LEFT_OUT;
  if (!Array.isArray(argument)) return [[cellGiven(argument)]];
  return argument.map((row: unknown) => (Array.isArray(row) ? row.map(cellGiven) : [cellGiven(row)]));
}

/** A cell as our readers know it: a day is its number, as in Excel, and an error is no text. */
function cellGiven(cell: unknown): unknown {
  if (isDay(cell)) return dayGiven(serialOf(onTheWall(cell)));
  return typeof cell === "string" ? (errorIn(cell) ?? cell) : cell;
}

/**
 * Whoever wants inches refuses a day of these years and says why. A time of day, which is a number below 1, or a day of
 * another age would pass for a size, so it is handed over in words, which nobody takes for one.
 */
function dayGiven(serial: number): number | string {
  if (isDateSerial(serial)) return serial;
  return serial >= 0 && serial < 1 ? "a time of day" : "a day before 1930 or after 2050";
}

/** The day may come from another realm of the script's engine, where it is of no class that is known here. */
function isDay(cell: unknown): cell is Date {
  return Object.prototype.toString.call(cell) === "[object Date]";
}

/** The hours that the sheet shows, written as UTC, so that no time zone moves a day. */
function onTheWall(day: Date): Date {
  const time = [day.getHours(), day.getMinutes(), day.getSeconds(), day.getMilliseconds()] as const;
  return new Date(Date.UTC(day.getFullYear(), day.getMonth(), day.getDate(), ...time));
}

/** What this host shows for a formula that it cannot read, or that threw. Excel has no such error. */
const OWN_ERROR = "#ERROR!";

/** The error that a text begins with: the host's own errors come as text, and so do our refusals in other cells. */
function errorIn(text: string): object | undefined {
  const [beginning] = /^#[^\s:]+/.exec(text) ?? [];
  if (beginning === OWN_ERROR) return { error: "#VALUE!" };
  const content = beginning === undefined ? null : contentOf(beginning);
  return typeof content === "object" && content !== null ? content : undefined;
}

/**
 * An answer as the online sheet takes it: one value bare, several as full rows. A refusal that is the whole answer is
 * thrown, so that the cell is an error and no total passes over it. Among several values one that throws would lose all
 * the others, so there a refusal is text that begins with the code of the error.
 */
export function onlineAnswer(answer: unknown[][]): unknown {
  const rows = fullRows(answer, (cell) => (isCellError(cell) ? refusalText(cell) : cell));
  if (rows.length !== 1 || rows[0]!.length !== 1) return rows;
  const [[whole]] = answer as [[unknown]];
  if (isCellError(whole)) throw new Error(refusalText(whole));
  return rows[0]![0];
}

function refusalText({ error, message }: CellError): string {
  return `${error}: ${message}`;
}
