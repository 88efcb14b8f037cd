import type { Entry, Param } from "../../../catalog/entry";
import { shown } from "../../../cells/cell";
import { isCellError } from "../../../cells/error";
import { readingOf } from "../../../cells/spread";
import { columnLetters } from "../../../formula/addresses";
import type { HeadedBlock, SheetColumn } from "./block";
import { argumentOf, fitting, type Fitted, type Fitting } from "./fit";
import { readHeading } from "./heading-read";
import { isBlankCell } from "./sheet-here";
import { readIn, withUnit } from "./unit-said";

/** `B: Sm end`, as a person finds it on the sheet. */
export function columnName({ column, heading }: SheetColumn): string {
  return `${columnLetters(column)}: ${heading}`;
}

/** The rows of a block as a person counts them: `rows 4 to 12`. */
export function rowsNamed({ rows }: HeadedBlock): string {
  const [first = 0, last = first] = [rows[0], rows.at(-1)];
  return first === last ? `row ${first + 1}` : `rows ${first + 1} to ${last + 1}`;
}

/** What there is to say of the choice for an argument: nothing where one column fits and all of it can be read. */
export function remarkOn(entry: Entry, block: HeadedBlock, { param, found, alike }: Fitted): string {
  if (alike.length > 0) {
    const names = alike.map(({ column }) => columnName(column));
    return `${names.slice(0, -1).join(", ")} and ${names.at(-1)} fit equally well: choose one. ${param.text}`;
  }
  if (!found) return param.optional ? "" : `No column fits: choose one, or type it below. ${param.text}`;
  const { column, said } = found;
  const argument = argumentOf(entry, param);
  const isRefused = (cell: unknown) => !isBlankCell(cell) && readIn(argument, withUnit(cell, said)) === undefined;
  const refused = column.cells.filter(isRefused).length;
  if (refused === 0) return said.how === "none" ? "" : `Read as ${said.unit}, as its heading says.`;
  const first = column.cells.findIndex(isRefused);
  const filled = column.cells.filter((cell) => !isBlankCell(cell)).length;
  return `${refused} of ${filled} cells cannot be read, the first in row ${block.rows[first]! + 1}: ${shown(column.cells[first])}.`;
}

/** A column that a person chose for an argument, or why it cannot stand there. */
export function asChosen(entry: Entry, param: Param, column: SheetColumn): Fitting | string {
  const found = fitting(entry, param, column);
  if (found) return found;
  const cell = column.cells.find((one) => !isBlankCell(one));
  const { unit } = readHeading(column.heading);
  const isRead = cell !== undefined && readIn(argumentOf(entry, param), cell) !== undefined;
  if (unit !== undefined && isRead) return `${columnName(column)} is in ${unit}, which ${param.name} does not read.`;
  return `None of its cells can be read. ${reasonOf(entry, param, cell)}`;
}

function reasonOf(entry: Entry, param: Param, cell: unknown): string {
  const read = readingOf(argumentOf(entry, param), [[cell]]);
  return isCellError(read) ? `The first: ${read.message}.` : "";
}
