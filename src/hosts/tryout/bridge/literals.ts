import type * as EngineFormula from "@univerjs/engine-formula";

/**
 * Functions that hand their arguments on as they are. In Excel the text "5/4" comes out of IF as text; the engine
 * would read it as a date on the way, unless told not to.
 */
const HANDED_ON = "IF IFS IFERROR IFNA SWITCH CHOOSE VSTACK HSTACK TOCOL TOROW EXPAND XLOOKUP XMATCH FILTER".split(" ");
const HANDED_ON_TOO = "VLOOKUP HLOOKUP LOOKUP MATCH INDEX CONCAT CONCATENATE TEXTJOIN T EXACT MAP".split(" ");

/** Makes the engine leave text that looks like a date, percent or number alone, as Excel does. */
export function keepTextLiterals(functions: EngineFormula.IFunctionService, parts: typeof EngineFormula): void {
  for (const name of [...HANDED_ON, ...HANDED_ON_TOO]) {
    const executor = functions.getExecutor(name);
    if (executor) executor.isArgumentsIgnoreNumberPattern = () => true;
  }
  readArrayConstantsAsExcelDoes(parts);
}

/** The private method of the engine's array that takes `{1,"a, b";2,"5/4"}` apart. */
interface ArrayInsides {
  _rowCount: number;
  _columnCount: number;
  _formatValue(raw: unknown): EngineFormula.BaseValueObject[][];
}

const mended = new WeakSet<object>();

/** The engine cuts an array constant at every comma, inside quotes too, and reads its text as dates. */
function readArrayConstantsAsExcelDoes(parts: typeof EngineFormula): void {
  const insides = parts.ArrayValueObject.prototype as unknown as ArrayInsides;
  if (mended.has(insides)) return;
  mended.add(insides);
  const original = insides._formatValue;
  insides._formatValue = function (raw) {
    if (typeof raw !== "string") return original.call(this, raw);
    const rows = splitArrayConstant(raw).map((row) => row.map((cell) => parts.ValueObjectFactory.create(cell, true)));
    this._rowCount = rows.length;
    this._columnCount = Math.max(...rows.map((row) => row.length));
    return rows;
  };
}

/** `{1,"a, b";2,"c"}` to rows of cells as typed, quotes kept. */
export function splitArrayConstant(constant: string): string[][] {
  const rows: string[][] = [[]];
  let cell = "";
  const endCell = () => {
    rows.at(-1)?.push(cell.trim());
    cell = "";
  };
  for (const [piece] of constant
    .trim()
    .slice(1, -1)
    .matchAll(/"(?:[^"]|"")*"|[^"]/g)) {
    if (piece === "," || piece === ";") endCell();
    else cell += piece;
    if (piece === ";") rows.push([]);
  }
  endCell();
  return rows;
}
