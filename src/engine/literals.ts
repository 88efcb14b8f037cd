import type * as EngineFormula from "@univerjs/engine-formula";
import { arrayPieces } from "../formula/literals";
import { findNamesBesideSpaces } from "./names-with-spaces";
import { keepNumbersAsTyped } from "./numbers-as-typed";
import { rewritten, type Token } from "../formula/tokens";
import { isOneCell } from "../formula/typed";
import { isMended } from "./mended";

/**
 * Functions that hand their arguments on as they are. In Excel the text "5/4" comes out of IF as text; the engine
 * would read it as a date on the way, unless told not to.
 */
const HANDED_ON = "IF IFS IFERROR IFNA SWITCH CHOOSE VSTACK HSTACK TOCOL TOROW EXPAND SORT UNIQUE INDEX MAP".split(" ");

/** Functions that look text up, compare it or work on its letters. */
const OF_TEXT = [
  ..."XLOOKUP XMATCH VLOOKUP HLOOKUP LOOKUP MATCH FILTER EXACT FIND SEARCH T N TYPE ISTEXT ISNONTEXT ISNUMBER".split(
    " ",
  ),
  ..."CONCAT CONCATENATE TEXTJOIN TEXTBEFORE TEXTAFTER TEXTSPLIT UPPER LOWER PROPER TRIM CLEAN REPT".split(" "),
  ..."SUBSTITUTE REPLACE LEFT RIGHT MID LEN".split(" "),
];

/** Makes the engine leave text that looks like a date, percent or number alone, as Excel does. */
export function keepTextLiterals(functions: EngineFormula.IFunctionService, parts: typeof EngineFormula): void {
  for (const name of [...HANDED_ON, ...OF_TEXT]) {
    const executor = functions.getExecutor(name);
    if (executor) executor.isArgumentsIgnoreNumberPattern = () => true;
  }
  readArrayConstantsAsExcelDoes(parts);
  keepNumbersAsTyped(parts);
  findNamesBesideSpaces(parts);
}

/** The private method of the engine's array that takes `{1,"a, b";2,"5/4"}` apart. */
interface ArrayInsides {
  _rowCount: number;
  _columnCount: number;
  _formatValue(raw: unknown): EngineFormula.BaseValueObject[][];
}

/** Stands for a doubled quote within an array constant on its way through the engine, which would halve it. */
const QUOTE = "\uE000";

/** The engine cuts an array constant at every comma, inside quotes too, and reads its text as dates. */
function readArrayConstantsAsExcelDoes({ ArrayValueObject, Lexer, ValueObjectFactory }: typeof EngineFormula): void {
  const insides = ArrayValueObject.prototype as unknown as ArrayInsides;
  if (isMended(insides)) return;
  const formatted = insides._formatValue;
  insides._formatValue = function (raw) {
    if (typeof raw !== "string") return formatted.call(this, raw);
    const rows = arrayPieces(raw).map((row) =>
      row.map((cell) => ValueObjectFactory.create(cell.replaceAll(QUOTE, '""'), true)),
    );
    this._rowCount = rows.length;
    this._columnCount = Math.max(...rows.map((row) => row.length));
    return rows;
  };
  const built = Lexer.prototype.treeBuilder;
  Lexer.prototype.treeBuilder = function (formula, transformSuffix) {
    return built.call(this, asTheEngineSpells(formula), transformSuffix);
  };
}

/** A formula in the spelling that the engine understands, with the same meaning. */
function asTheEngineSpells(formula: string): string {
  let braces = 0;
  return rewritten(formula, (token, at, all) => {
    const { kind, text } = token;
    if (kind === "number") return standsAlone(at, all) ? plainNumber(text) : text;
    if (kind === "text") return braces > 0 && !token.unclosed ? withoutDoubledQuotes(text) : text;
    if (kind !== "sign") return text;
    braces += text === "{" ? 1 : text === "}" ? -1 : 0;
    return text === "@" && answersOneRow(at, all) ? "" : text;
  });
}

/** Where text stays text, the engine takes 1.50 or 2e1 for text too, unless they are spelt as it spells them: 1.5, 20. */
function plainNumber(typed: string): string {
  return Number.isFinite(Number(typed)) ? String(Number(typed)) : typed;
}

/** A number that is no part of a word, nor of a range of rows. */
function standsAlone(at: number, all: readonly Token[]): boolean {
  const [before, behind] = [all[at - 1], all[at + 1]];
  return isApart(before, ":!$.") && isApart(behind, ":!(.");
}

function isApart(beside: Token | undefined, joining: string): boolean {
  return !beside || beside.kind === "space" || (beside.kind === "sign" && !joining.includes(beside.text));
}

/** Excel shows an @ before a function or a cell that answers for one row only; the engine stumbles over it. */
function answersOneRow(at: number, all: readonly Token[]): boolean {
  const next = all[at + 1];
  return next?.kind === "function" || (isOneCell(next) && all[at + 2]?.text !== "#" && all[at + 2]?.text !== ":");
}

/** `"8'6"""` with its doubled quote made one sign. */
function withoutDoubledQuotes(text: string): string {
  return `"${text.slice(1, -1).replaceAll('""', QUOTE)}"`;
}
