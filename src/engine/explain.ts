import { editDistance } from "../cells/edit-distance";
import { tokensOf, type Token } from "../formula/tokens";
import { isOneCell } from "../formula/typed";

/** What an error of the spreadsheet itself means, in words; Excel's own help is not at hand in the try-out. */
const MEANINGS: Record<string, string> = {
  "#DIV/0!": "Something is divided by zero or by a blank cell.",
  "#REF!": "The formula points at cells that do not exist.",
  "#NUM!": "The spreadsheet cannot calculate with this number.",
  "#CYCLE!": "The formula leads back to its own cell.",
  "#SPILL!": "The answer needs more cells than are free: clear those below and to the right.",
  "#CALC!": "There is nothing to answer: no row fits.",
  "#VALUE!": "One of the values is not of the kind that is wanted here.",
  "#N/A": "No value was found, or a cell that is used here has no answer.",
};

/**
 * Why a formula shows an error. `said` is the reason that one of our functions gave; none of them raises #NAME?, so
 * there they can only have handed it on.
 */
export function explain(
  formula: string,
  error: string,
  said: string | undefined,
  knownFunctions: Iterable<string>,
): string | undefined {
  if (said && error !== "#NAME?") return said;
  if (onlyInExcel(formula)) return "Logs[BF] and A1# are understood by Excel only: here point at the cells, as A1:A9.";
  const fault = spellingFault(formula);
  if (fault && (error === "#NAME?" || error === "#ERROR!")) return `Not a formula: ${fault}`;
  if (error === "#NAME?") return unknownName(formula, new Set(knownFunctions));
  if (error === "#ERROR!") return `Not a formula: ${SOMETHING_MISSING}`;
  return MEANINGS[error];
}

export const SOMETHING_MISSING = "a value, a comma or an operator is missing or extra";

/** References to tables and to spilled answers. */
function onlyInExcel(formula: string): boolean {
  return tokensOf(formula).some(
    ({ kind, text }, at, all) =>
      kind === "bracket" || (kind === "sheet" && text.includes("[")) || (text === "#" && isOneCell(all[at - 1])),
  );
}

function unknownName(formula: string, known: Set<string>): string {
  const unknown = calledIn(tokensOf(formula)).find((name) => !known.has(name));
  if (!unknown) return "Not a formula, or one with a name that is not known here. Text belongs in quotes.";
  const near = nearest(unknown, known);
  return `There is no function ${unknown}.${near ? ` Did you mean ${near}?` : ""}`;
}

/** What is called in a formula, spaces before the bracket allowed. */
function calledIn(tokens: readonly Token[]): string[] {
  return tokens.flatMap(({ kind, text }, at) => {
    const spaced = kind === "name" && tokens[at + 1]?.kind === "space" && tokens[at + 2]?.text === "(";
    return kind === "function" || spaced ? [text.toUpperCase()] : [];
  });
}

function nearest(name: string, known: Set<string>): string | undefined {
  if (known.has(`BOLE.${name}`)) return `BOLE.${name}`;
  const close = [...known].map((other) => ({ other, apart: editDistance(name, other) }));
  const best = close.sort((a, b) => a.apart - b.apart)[0];
  return best && best.apart <= Math.max(2, name.length / 4) ? best.other : undefined;
}

const OPENED: Partial<Record<Token["kind"], string>> = {
  text: 'quote (")',
  sheet: "quoted name (')",
  bracket: "bracket ([)",
};

/** Says what is wrong with a formula's spelling, or nothing if it can be read. */
export function spellingFault(formula: string): string | undefined {
  const open: string[] = [];
  for (const { kind, text, unclosed } of tokensOf(formula)) {
    if (unclosed) return `A ${OPENED[kind]} is opened but not closed`;
    if (kind !== "sign") continue;
    if (text === "(" || text === "{") open.push(text);
    if (text === ")" && open.pop() !== "(") return "A ) closes nothing";
    if (text === "}" && open.pop() !== "{") return "A } closes nothing";
    if (text === ";" && open.at(-1) !== "{") return "A comma goes between two arguments, not a semicolon";
  }
  const left = open.pop();
  if (left) return `A ${left} is opened but not closed`;
  if (formula.replace(/^\s*=/, "").trim() === "") return "There is nothing after the =";
  return undefined;
}
