import { isCellError, type CellError } from "../../cells/error";

/**
 * An answer of ours as Excel takes it: full rows of equal length, an error as Excel's own. Excel shows an empty place
 * as 0, so a hole in an answer becomes empty text.
 */
export function excelCells(answer: unknown[][]): unknown[][] {
  // Not Math.max(...lengths): a call takes no million arguments, and a sheet has a million rows.
  const width = answer.reduce((widest, row) => Math.max(widest, row.length), 1);
  const rows = answer.length === 0 ? [[]] : answer;
  return rows.map((row) => Array.from({ length: width }, (_, column) => excelCell(row[column])));
}

function excelCell(cell: unknown): unknown {
  if (cell === undefined || cell === null) return "";
  return isCellError(cell) ? excelError(cell) : cell;
}

/** Excel shows a message with #VALUE! and #N/A; its other errors speak for themselves. */
function excelError({ error, message }: CellError): CustomFunctions.Error {
  const { ErrorCode, Error } = CustomFunctions;
  switch (error) {
    case "#N/A":
      return new Error(ErrorCode.notAvailable, message);
    case "#DIV/0!":
      return new Error(ErrorCode.divisionByZero);
    case "#NAME?":
      return new Error(ErrorCode.invalidName);
    case "#NULL!":
      return new Error(ErrorCode.nullReference);
    case "#NUM!":
      return new Error(ErrorCode.invalidNumber);
    case "#REF!":
      return new Error(ErrorCode.invalidReference);
    default:
      // #VALUE!, and those that no add-in may answer (#SPILL!, #CALC! and the like): the message names the one it was.
      return new Error(ErrorCode.invalidValue, message);
  }
}
