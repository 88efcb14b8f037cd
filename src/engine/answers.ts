import type { ICellData, Nullable } from "@univerjs/core";
import type * as EngineFormula from "@univerjs/engine-formula";
import type { BoleError } from "./messages";

/** What one cell answers. */
export type CellAnswer = number | string | boolean | BoleError;

/** What a formula answers: one cell, or a block that spills. */
export type Answer = CellAnswer | CellAnswer[][];

const TRUTH = 3;
const ERRORS =
  /^#(?:VALUE!|N\/A|REF!|DIV\/0!|NUM!|NAME\?|NULL!|SPILL!|CALC!|CYCLE!|ERROR!|CONNECT!|BLOCKED!|GETTING_DATA)$/;

/** The reason for an error at a place of the answer, counted from its top left corner. */
export type Why = (error: string, down: number, right: number) => string | undefined;

/** The engine's value as plain data, with the reason beside every error. */
export function answerOf(value: EngineFormula.FunctionVariantType | undefined, why: Why): Answer {
  if (!value) return withReason("#VALUE!", why, 0, 0);
  if (value.isReferenceObject())
    return answerOf((value as EngineFormula.BaseReferenceObject).toArrayValueObject(), why);
  const plain = value as EngineFormula.BaseValueObject;
  if (!plain.isArray()) return plainAnswer(plain, why, 0, 0);
  const array = plain as EngineFormula.ArrayValueObject;
  const block = Array.from({ length: array.getRowCount() }, (_, row) =>
    Array.from({ length: array.getColumnCount() }, (_, column) =>
      plainAnswer(array.get(row, column), why, row, column),
    ),
  );
  return block.length === 1 && block[0]?.length === 1 ? (block[0][0] ?? 0) : block;
}

/** A blank shows as 0, as in Excel. */
function plainAnswer(
  value: Nullable<EngineFormula.BaseValueObject>,
  why: Why,
  down: number,
  right: number,
): CellAnswer {
  if (!value || value.isNull()) return 0;
  if (value.isError()) return withReason((value as EngineFormula.ErrorValueObject).getErrorType(), why, down, right);
  if (value.isLambda()) return { error: "#CALC!", message: "A LAMBDA must be called to give an answer." };
  const held = value.getValue();
  return typeof held === "number" && !Number.isFinite(held) ? withReason("#NUM!", why, down, right) : held;
}

/** A cell of a sheet as plain data; a blank cell is "". */
export function cellAnswer(cell: Nullable<ICellData>, why: Why): CellAnswer {
  const held = cell?.v;
  if (held === null || held === undefined) return "";
  if (cell?.t === TRUTH) return held === 1 || held === true;
  if (typeof held === "number") return Number.isFinite(held) ? held : withReason("#NUM!", why, 0, 0);
  if (typeof held === "string" && ERRORS.test(held)) return withReason(held, why, 0, 0);
  return held;
}

function withReason(error: string, why: Why, down: number, right: number): BoleError {
  const message = why(error, down, right);
  return message === undefined ? { error } : { error, message };
}
