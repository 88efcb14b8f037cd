import type { FunctionVariantType } from "@univerjs/engine-formula";
import { answerOf, type Answer } from "./answers";
import { explain, SOMETHING_MISSING, spellingFault } from "./explain";
import type { Messages } from "./messages";
import type { Spreadsheet } from "./node";
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

/** A sheet that a formula names, in whatever workbook. */
function sheetIn(formula: string): string | undefined {
  const token = tokensOf(formula).find(({ kind }) => kind === "sheet");
  return token && sheetNameIn(token.text).replace(/^\[[^\]]*\]/, "");
}
