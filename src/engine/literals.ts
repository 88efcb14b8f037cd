import type * as EngineFormula from "@univerjs/engine-formula";
import { arrayPieces } from "../formula/literals";
import { findNamesBesideSpaces } from "./names-with-spaces";
import { keepNumbersAsTyped } from "./numbers-as-typed";
import { rewritePlain, scan } from "../formula/scan";
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
    return built.call(this, rewritePlain(keepDoubledQuotes(formula), asTheEngineSpells), transformSuffix);
  };
}

/** A number that stands alone: neither part of a name, an address, a range of rows nor a sheet's name. */
const NUMBER = /(?<![\p{L}\d_.$!:])(?:\d+\.?\d*|\.\d+)(?:E[+-]?\d+)?(?![\p{L}\d_.(!:])/giu;

/** Excel shows an @ before a function or a cell that answers for one row only; the engine stumbles over it. */
const ONE_ROW = /@(?=[A-Z_][\w.]*\(|\$?[A-Z]{1,3}\$?\d+(?![\d:#!]))/gi;

/** Where text stays text, the engine takes 1.50 or 2e1 for text too, unless they are spelt as it spells them: 1.5, 20. */
function asTheEngineSpells(plain: string): string {
  return plain
    .replace(ONE_ROW, "")
    .replace(NUMBER, (typed) => (Number.isFinite(Number(typed)) ? String(Number(typed)) : typed));
}

/** `{"8'6"""}` with the doubled quote inside an array constant's text made one sign. */
function keepDoubledQuotes(formula: string): string {
  if (!formula.includes("{")) return formula;
  let depth = 0;
  const parts = scan(formula).map(({ kind, text, unclosed }) => {
    if (kind === "plain") for (const sign of text) depth += sign === "{" ? 1 : sign === "}" ? -1 : 0;
    return kind === "text" && depth > 0 && !unclosed ? `"${text.slice(1, -1).replaceAll('""', QUOTE)}"` : text;
  });
  return parts.join("");
}
