import { readingOf } from "../../../cells/spread";
import { isCellError } from "../../../cells/error";
import { registry } from "../../../functions/registry";

/** A heading taken apart: its words, and the unit that it names, as TOUNIT calls it. */
export interface ReadHeading {
  words: readonly string[];
  /** The same with those of the unit, for BF says what it is too. */
  withUnit: readonly string[];
  unit?: string;
  /** Whether it says nothing but the unit. */
  unitAlone?: boolean;
}

/** The argument whose reader knows every unit of the trade by every spelling. */
const UNIT = registry["TOUNIT"]!.takes.find(({ name }) => name === "from")!;

/** Units are written with at most so many words: thousand board feet. */
const MOST_UNIT_WORDS = 3;

/** Half written out: "board ft" is no ft. */
const BOARD_FEET = /\b(?:board|bd)s?\.? ?f(?:ee|oo)?t\b/gi;

/** `Len ft`, `Dia (cm)`, `Weight, lb`, `SmallEnd_in`, `Length '` to what they mean and in what. */
export function readHeading(written: string): ReadHeading {
  const heading = written.replace(BOARD_FEET, "board feet");
  const inBrackets = [...heading.matchAll(/[([{]([^)\]}]*)[)\]}]/g)].map((found) => found[1]!);
  const outside = heading.replace(/[([{][^)\]}]*[)\]}]?/g, " ");
  const bracketed = inBrackets.map(wholeUnit).find((unit) => unit !== undefined);
  const others = inBrackets.filter((text) => wholeUnit(text) === undefined).join(" ");
  const marked = markedUnit(outside);
  const words = wordsOf(marked ? outside.replace(/["'″′”’]\s*$/, "") : outside);
  const unit = bracketed ?? marked;
  const { left, unit: ending } = unit === undefined ? endingUnit(words) : { left: words, unit };
  const said = { words: [...left, ...wordsOf(others)], withUnit: wordsOf(heading) };
  if (ending === undefined) return said;
  return { ...said, unit: ending, unitAlone: left.length === 0 };
}

/** The words of a heading in small letters: `SmallEnd_in` has three, `Dia1` has two, `S.E.` is one. */
export function wordsOf(text: string): string[] {
  return text
    .replace(/(?<!\p{L})(\p{L})\.(?=\p{L}(?!\p{L}))/gu, "$1")
    .replace(/(\p{Ll})(\p{Lu})/gu, "$1 $2")
    .toLowerCase()
    .replace(/\b([a-z]{3,})(\d+)\b/g, "$1 $2")
    .split(/[^\p{L}\p{N}°²³/]+/u)
    .flatMap((word) => word.split("/"))
    .filter((word) => word !== "");
}

/** The unit of that spelling, by the name that Bole has for it. */
export function unitNamed(spelling: string): string | undefined {
  const written = spelling.trim();
  return markedUnit(written) ?? unitSpelt(written) ?? unitSpelt(written.replace(/s\.?$/i, ""));
}

function unitSpelt(spelling: string): string | undefined {
  if (spelling === "") return undefined;
  const read = readingOf(UNIT, [[spelling]]);
  return isCellError(read) ? undefined : String(read[0]);
}

/** The mark of an inch or a foot behind a word. */
function markedUnit(text: string): string | undefined {
  const mark = /(["'″′”’])\s*$/.exec(text)?.[1];
  if (mark === undefined) return undefined;
  return /["″”]/.test(mark) ? "in" : "ft";
}

/** A text that is a unit and nothing else. */
function wholeUnit(text: string): string | undefined {
  return unitNamed(text) ?? (areFeetAndInches(wordsOf(text)) ? "ft" : undefined);
}

/** "ft-in" heads what is written 8-6 or 8'6", where a bare number is feet. */
function areFeetAndInches(words: readonly string[]): boolean {
  const [feet = "", inches = "", more] = words;
  return more === undefined && unitNamed(feet) === "ft" && unitNamed(inches) === "in";
}

/**
 * The unit at the end of a heading. A single letter alone is rather a size, as in T, W, L. Within a heading, where "in" is a word, only a plain unit
 * counts.
 */
function endingUnit(words: readonly string[]): { left: readonly string[]; unit?: string } {
  if (areFeetAndInches(words.slice(-2))) return { left: words.slice(0, -2), unit: "ft" };
  for (let count = Math.min(MOST_UNIT_WORDS, words.length); count > 0; count--) {
    const ending = words.slice(-count).join(" ");
    const unit = unitNamed(ending);
    if (unit === undefined || (words.length === 1 && ending.length === 1)) continue;
    return { left: words.slice(0, -count), unit };
  }
  const within = words.findIndex((word) => word.length > 1 && word !== "in" && unitNamed(word) !== undefined);
  if (within < 0) return { left: words };
  return { left: words.filter((_, i) => i !== within), unit: unitNamed(words[within]!)! };
}
