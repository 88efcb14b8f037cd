import { LEFT_OUT, registry, type WorksheetFunction } from "../../functions/registry";
import { excelAnswer } from "./answer";
import { keepRefusal } from "./refusals";

/** Every worksheet function of the registry, told to Excel under its own name. */
for (const [name, formula] of Object.entries(registry)) CustomFunctions.associate(name, asExcelCalls(name, formula));

/**
 * Excel puts its own invocation object behind the cells of a call, and null where an argument was left out. Cells
 * always come as rows, so whatever is no list of rows counts as left out.
 */
function asExcelCalls(name: string, formula: WorksheetFunction) {
  return (...handed: unknown[]) => {
    const cells = handed.map((argument) => (Array.isArray(argument) ? (argument as unknown[][]) : LEFT_OUT));
    const answer = formula(...cells);
    keepRefusal(name, cells, answer);
    return excelAnswer(answer);
  };
}
