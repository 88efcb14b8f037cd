import * as bole from "../functions";
import type { Answer } from "./answers";
import { evaluateAll, SCRATCH } from "./evaluate";
import { keepTextLiterals } from "./literals";
import { Messages } from "./messages";
import { loadSpreadsheet } from "./node";
import { recalculate, type OpenedWorkbook } from "./recalculate";
import { registerAll, type Registry } from "./register";
import { keepTallColumnsQuick } from "./tall-columns";
import { readWorkbook, type FileWorkbook } from "./workbook/read";
import { snapshotOf } from "./workbook/snapshot";

export type { Answer, CellAnswer } from "./answers";
export type { BoleError } from "./messages";
export type { FormulaCell, OpenedWorkbook } from "./recalculate";

export interface Engine {
  /** Answers formulas, each for itself, with or without an equals sign in front. */
  evaluate(formulas: readonly string[]): Promise<Answer[]>;
  /** Reads an .xlsx file and calculates it afresh. */
  open(bytes: Uint8Array): Promise<OpenedWorkbook>;
  /** Calculates cells that were read from a file already. */
  calculate(file: FileWorkbook): Promise<OpenedWorkbook>;
  stop(): void;
}

/** A spreadsheet without a window, with every function of the registry in it. */
export async function startEngine(registry: Registry = bole): Promise<Engine> {
  const spreadsheet = loadSpreadsheet();
  const { api, injector, parts } = spreadsheet;
  const sheets = { [SCRATCH.sheet]: { id: SCRATCH.sheet, name: "Sheet1" } };
  api.createWorkbook({ id: SCRATCH.unit, sheetOrder: [SCRATCH.sheet], sheets });
  const functions = injector.get(parts.IFunctionService);
  const messages = new Messages();
  registerAll(registry, { parts, functions, messages });
  keepTextLiterals(functions, parts);
  keepTallColumnsQuick(parts);

  /** The engine calculates one thing at a time: the next waits for the last. */
  let last: Promise<unknown> = Promise.resolve();
  const inTurn = <T>(work: () => Promise<T>): Promise<T> => {
    const mine = last.then(work, work);
    last = mine.catch(() => undefined);
    return mine;
  };

  const calculate = (file: FileWorkbook) => recalculate(file, snapshotOf(file, "bole", "Bole"), spreadsheet, messages);

  return {
    evaluate: (formulas) => inTurn(() => evaluateAll(formulas, spreadsheet, messages)),
    open: (bytes) => inTurn(async () => calculate(readWorkbook(bytes))),
    calculate: (file) => inTurn(() => calculate(file)),
    stop: () => spreadsheet.dispose(),
  };
}
