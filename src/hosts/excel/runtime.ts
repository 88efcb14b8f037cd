import { LEFT_OUT, registry, type WorksheetFunction } from "../../functions/registry";
import { excelAnswer } from "./answer";
import { keepRefusal } from "./refusals";

/** Every worksheet function of the registry, told to Excel under its own name. */
for (const [name, formula] of Object.entries(registry)) CustomFunctions.associate(name, asExcelCalls(name, formula));

/**
 * Excel puts its own invocation object behind the cells of a call, and null where an argument was left out. Cells
 * always come as rows, so whatever is no list of rows counts as left out. An argument that is repeated comes as one list
 * of all that was given for it.
 */
function asExcelCalls(name: string, formula: WorksheetFunction) {
  return (...handed: unknown[]) => {
    const last = formula.takes.length - 1;
    const isRepeated = formula.takes[last]?.facts.many === "repeated" && Array.isArray(handed[last]);
    const given = isRepeated ? [...handed.slice(0, last), ...(handed[last] as unknown[])] : handed;
    const cells = given.map((argument) => (Array.isArray(argument) ? (argument as unknown[][]) : LEFT_OUT));
    const answer = formula(...cells);
    keepRefusal(name, cells, answer);
    return excelAnswer(answer);
  };
}
