import { isCellError, type CellError } from "../../cells/error";
import { fullRows } from "../full-rows";

/**
 * An answer of ours as Excel takes it, an error as Excel's own. An answer that is one error is thrown, as Microsoft
 * documents it: as an array of one it would count as an answer that went well. In a spilled answer a bad row holds its
 * own error.
 */
export function excelAnswer(answer: unknown[][]): unknown[][] {
  const only = answer.length === 1 && answer[0]?.length === 1 ? answer[0][0] : undefined;
  if (isCellError(only)) throw excelError(only);
  return fullRows(answer, (cell) => (isCellError(cell) ? excelError(cell) : cell));
}

/**
 * Excel shows a message with #VALUE! and #N/A; #DIV/0!, #NUM! and #NULL! speak for themselves. It takes no other error
 * from an add-in (#NAME?, #REF!, #SPILL! and the like): those become #VALUE!, and the message names the one it was.
 */
function excelError({ error, message }: CellError): CustomFunctions.Error {
  const { ErrorCode, Error } = CustomFunctions;
  switch (error) {
    case "#N/A":
      return new Error(ErrorCode.notAvailable, message);
    case "#DIV/0!":
      return new Error(ErrorCode.divisionByZero);
    case "#NULL!":
      return new Error(ErrorCode.nullReference);
    case "#NUM!":
      return new Error(ErrorCode.invalidNumber);
    default:
      return new Error(ErrorCode.invalidValue, message);
  }
}
