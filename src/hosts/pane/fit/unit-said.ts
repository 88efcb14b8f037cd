import { isCellError } from "../../../cells/error";
import { readingOf, type WorksheetFunction } from "../../../cells/spread";
import { isBlankCell } from "./sheet-here";
import { unitNamed, wordsOf } from "./heading-read";

type Argument = WorksheetFunction["takes"][number];

/**
 * How a column's unit is said in a formula. `none`: a bare number means it already. `always`: `B5&" cm"`. `unlessBlank`:
 * the same where some cells are blank. `numbersOnly`: some cells are text that says its unit itself.
 */
export interface UnitSaid {
  how: "none" | "always" | "unlessBlank" | "numbersOnly";
  unit: string;
}

export const AS_IT_IS: UnitSaid = { how: "none", unit: "" };

/** An amount that every reader of amounts takes. */
const TRIED = 10;

/**
 * How the unit of a heading has to be said for an argument to read the column right; nothing where it reads no such unit,
 * or where bare numbers typed as text stand beside texts with a unit, which no formula tells apart.
 */
export function unitSaid(
  argument: Argument,
  about: string,
  unit: string | undefined,
  cells: readonly unknown[],
): UnitSaid | undefined {
  if (unit === undefined) return AS_IT_IS;
  const [bare, said] = [readIn(argument, TRIED), readIn(argument, `${TRIED} ${unit}`)];
  if (said === undefined) return isMeantBy(about, unit) ? AS_IT_IS : undefined;
  if (bare === said) return AS_IT_IS;
  const filled = cells.filter((cell) => !isBlankCell(cell));
  const own = filled.filter((cell) => typeof cell === "string" && !isBareNumber(cell));
  const typedNumbers = filled.filter((cell) => typeof cell === "string" && isBareNumber(cell));
  if (own.length > 0 && own.length === filled.length) return AS_IT_IS;
  if (own.length > 0) return typedNumbers.length > 0 ? undefined : { how: "numbersOnly", unit };
  return { how: filled.length < cells.length ? "unlessBlank" : "always", unit };
}

/** A cell of the column as the formula hands it over. */
export function withUnit(cell: unknown, { how, unit }: UnitSaid): unknown {
  if (how === "none" || isBlankCell(cell)) return cell;
  return how === "numbersOnly" && typeof cell !== "number" ? cell : `${String(cell)} ${unit}`;
}

/** The same as a piece of the formula, for the cell at a reference. */
export function pieceWithUnit(reference: string, { how, unit }: UnitSaid): string {
  const said = `${reference}&" ${unit}"`;
  if (how === "always") return said;
  if (how === "unlessBlank") return `IF(${reference}="","",${said})`;
  return how === "numbersOnly" ? `IF(ISNUMBER(${reference}),${said},${reference})` : reference;
}

/** What an argument reads in one cell; nothing where it refuses it. */
export function readIn(argument: Argument, cell: unknown): unknown {
  const read = readingOf(argument, [[cell]]);
  return isCellError(read) ? undefined : read[0];
}

/**
 * Plain amounts read no unit, but their sentence names theirs: "Board feet tallied", "Price per board foot". The longest
 * spelling counts, for board feet are no feet.
 */
function isMeantBy(about: string, unit: string): boolean {
  const words = wordsOf(about);
  for (let at = 0; at < words.length; at++) {
    const named = [3, 2, 1]
      .map((count) => ({ count, unit: unitNamed(words.slice(at, at + count).join(" ")) }))
      .find((one) => one.unit !== undefined);
    if (named?.unit === unit || named?.unit === `per ${unit}`) return true;
    at += (named?.count ?? 1) - 1;
  }
  return false;
}

function isBareNumber(text: string): boolean {
  return /^\s*[\d\s./-]+\s*$/.test(text) && !/\d-\d/.test(text);
}
