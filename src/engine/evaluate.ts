import type { FunctionVariantType } from "@univerjs/engine-formula";
import { answerOf, type Answer } from "./answers";
import { explain, SOMETHING_MISSING, spellingFault } from "./explain";
import type { Messages } from "./messages";
import type { Spreadsheet } from "./node";
import { cellsIn, LAST_ROW } from "../formula/addresses";
import { referencesOf } from "../formula/references";
import { sheetNameIn, tokensOf } from "../formula/tokens";

/** The sheet on which formulas without a sheet of their own are calculated. */
export const SCRATCH = { unit: "scratch", sheet: "s" };
const SCRATCH_ROWS = 1000;
const SCRATCH_COLUMNS = 26;

/** Calculates formulas one after the other; an empty scratch sheet stands for every cell they point at. */
export async function evaluateAll(
  formulas: readonly string[],
  { injector, parts }: Spreadsheet,
  messages: Messages,
): Promise<Answer[]> {
  const calculator = injector.get(parts.ICalculateFormulaService);
  const cells = injector.get(parts.IFormulaCurrentConfigService);
  const runtime = injector.get(parts.IFormulaRuntimeService);
  const names = [...injector.get(parts.IFunctionService).getExecutors().keys()].map(String);
  cells.loadDataLite();
  const answers: Answer[] = [];
  for (const typed of formulas) {
    const formula = `=${typed.trim().replace(/^=/, "")}`;
    runtime.reset();
    runtime.setCurrent(0, 0, SCRATCH_ROWS, SCRATCH_COLUMNS, SCRATCH.sheet, SCRATCH.unit);
    messages.forget();
    answers.push(await evaluateOne(formula, (text) => calculator.calculate(text), messages, names));
  }
  return answers;
}

/** The engine declares that calculating gives nothing back; it gives the value. */
type Calculate = (formula: string) => unknown;

async function evaluateOne(
  formula: string,
  calculate: Calculate,
  messages: Messages,
  names: string[],
): Promise<Answer> {
  const tooMuch = tooMuchIn(formula);
  if (tooMuch) return { error: "#ERROR!", message: tooMuch };
  const fault = spellingFault(formula);
  if (fault) return { error: "#ERROR!", message: `Not a formula: ${fault}` };
  const sheet = sheetIn(formula);
  if (sheet)
    return { error: "#REF!", message: `There is no sheet ${sheet} here: write the value itself in its place.` };
  try {
    const value = (await calculate(formula)) as FunctionVariantType | undefined;
    if (!value) return { error: "#ERROR!", message: `Not a formula: ${SOMETHING_MISSING}` };
    return answerOf(value, (error, down, right) => {
      const said = messages.why({ ...SCRATCH, row: 0, column: 0 }, error, down, right);
      return explain(formula, error, said, names);
    });
  } catch (fault) {
    const reason = fault instanceof Error ? fault.message : String(fault);
    return { error: "#ERROR!", message: `The spreadsheet engine cannot calculate this: ${reason}` };
  }
}

/** As long as a formula may be in a spreadsheet. */
const LONGEST_FORMULA = 8192;
/** A whole column, and as much again. */
const MOST_CELLS = 2 * (LAST_ROW + 1);

/** What a formula asks for beyond any sense; nothing for all others. */
function tooMuchIn(formula: string): string | undefined {
  if (formula.length > LONGEST_FORMULA)
    return `This formula is ${formula.length} signs long; a spreadsheet takes at most ${LONGEST_FORMULA}.`;
  const cells = referencesOf(formula, "").reduce((sum, { block }) => sum + cellsIn(block), 0);
  return cells > MOST_CELLS
    ? `This points at ${cells} cells, and all of them are blank here; at most ${MOST_CELLS} are looked at.`
    : undefined;
}

/** A sheet that a formula names, in whatever workbook. */
function sheetIn(formula: string): string | undefined {
  const token = tokensOf(formula).find(({ kind }) => kind === "sheet");
  return token && sheetNameIn(token.text).replace(/^\[[^\]]*\]/, "");
}
