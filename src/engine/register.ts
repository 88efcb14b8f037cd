import type * as EngineFormula from "@univerjs/engine-formula";
import type { CutPlans } from "./cut-plans";
import type { WorksheetFunction } from "../functions/registry";
import { ask } from "./ask";
import { isBoleError, type Messages } from "./messages";

export type Registry = Record<string, unknown>;

type EngineValue = EngineFormula.BaseValueObject;

/** What registering needs from the engine: the terminal and the page load it in different ways. */
export interface Engine {
  parts: typeof EngineFormula;
  functions: EngineFormula.IFunctionService;
  messages: Messages;
  /** Kept where plans can be drawn. */
  plans?: CutPlans;
}

/** Makes every function of the registry known to the engine, as BOLE.NAME. */
export function registerAll(registry: Registry, engine: Engine): string[] {
  const names: string[] = [];
  for (const [name, formula] of Object.entries(registry)) {
    if (typeof formula !== "function") continue;
    names.push(`BOLE.${name}`);
    engine.functions.registerExecutors(executor(`BOLE.${name}`, formula as WorksheetFunction, engine));
  }
  return names;
}

function executor(
  name: string,
  formula: WorksheetFunction,
  { parts, messages, plans }: Engine,
): EngineFormula.BaseFunction {
  const { BaseFunction } = parts;

  class RegisteredFunction extends BaseFunction {
    /** Text stays text as typed: the engine would read "5/4" as a date. */
    override isArgumentsIgnoreNumberPattern(): boolean {
      return true;
    }

    override calculate(...given: EngineValue[]): EngineValue {
      const cells = given.map(toCells);
      const answer = ask(name, formula, cells);
      const place = { unit: this.unitId ?? "", sheet: this.subUnitId ?? "", row: this.row, column: this.column };
      messages.keep(place, answer);
      if (name === "BOLE.CUTPLAN") plans?.keep(place, cells);
      return toEngine(answer, parts);
    }
  }
  return new RegisteredFunction(name);
}

/** The engine's argument as a block of cells: a literal is one cell, a blank cell is 0, an error its text; nothing where it is left out. */
function toCells(value: EngineValue): unknown[][] {
  if (value.isNull()) return [[null]];
  if (value.isArray()) return (value as EngineFormula.ArrayValueObject).toValue();
  if (value.isLambda()) return [["a LAMBDA"]];
  return [[value.getValue()]];
}

function toEngine(answer: unknown[][], parts: typeof EngineFormula): EngineValue {
  if (answer.length === 1 && answer[0]?.length === 1) return toEngineValue(answer[0][0], parts);
  return parts.ArrayValueObject.create({
    calculateValueList: answer.map((row) => row.map((cell) => toEngineValue(cell, parts))),
    rowCount: answer.length,
    columnCount: answer[0]?.length ?? 0,
    unitId: "",
    sheetId: "",
    row: -1,
    column: -1,
  });
}

function toEngineValue(cell: unknown, parts: typeof EngineFormula): EngineValue {
  if (typeof cell === "number") return parts.NumberValueObject.create(cell);
  if (typeof cell === "boolean") return parts.BooleanValueObject.create(cell);
  if (isBoleError(cell)) return parts.ErrorValueObject.create(cell.error as EngineFormula.ErrorType);
  return parts.StringValueObject.create(String(cell ?? ""));
}
