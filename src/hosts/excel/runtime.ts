import { excelCells } from "./answer";
import { LEFT_OUT, registry, type WorksheetFunction } from "../../functions/registry";

/** Every worksheet function of the registry, told to Excel under its own name. */
for (const [name, formula] of Object.entries(registry)) CustomFunctions.associate(name, asExcelCalls(formula));

/**
 * Excel puts its own invocation object behind the cells of a call, and null where an argument was left out. Cells
 * always come as rows, so whatever is no list of rows counts as left out.
 */
function asExcelCalls(formula: WorksheetFunction) {
  return (...handed: unknown[]) =>
    excelCells(formula(...handed.map((argument) => (Array.isArray(argument) ? argument : LEFT_OUT))));
}
