import * as registry from "../../functions";
import { excelCells } from "./answer";

/** Every worksheet function of the registry, told to Excel under its own name. */
for (const [name, formula] of Object.entries(registry)) CustomFunctions.associate(name, asExcelCalls(formula));

/**
 * Excel puts its own invocation object behind the cells of a call. Cells always come as rows, so an object that is no
 * list of rows is never ours.
 */
function asExcelCalls(formula: (...cells: unknown[][][]) => unknown[][]) {
  return (...handed: unknown[]) => excelCells(formula(...(handed.filter(isNoInvocation) as unknown[][][])));
}

function isNoInvocation(argument: unknown): boolean {
  return typeof argument !== "object" || argument === null || Array.isArray(argument);
}
