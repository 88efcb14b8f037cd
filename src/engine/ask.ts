import type { WorksheetFunction } from "../functions/registry";

/** Calls a function; a mistake of ours must not end the engine, so it becomes an error that says so. */
export function ask(name: string, formula: WorksheetFunction, given: unknown[][][]): unknown[][] {
  if (given.length > formula.length) {
    const most = formula.length === 1 ? "one argument" : `${formula.length || "no"} arguments`;
    return oneError("#VALUE!", `${name}: wanted at most ${most}, got ${given.length}`);
  }
  try {
    const answer = formula(...given);
    if (Array.isArray(answer) && answer.length > 0) return answer.map((row) => row.map(checked));
    return fault(name, "it gave no answer");
  } catch (mistake) {
    const reason = mistake instanceof Error ? mistake.message : String(mistake);
    return fault(name, reason);
  }
}

function fault(name: string, reason: string): unknown[][] {
  return oneError("#VALUE!", `A fault in Bole itself, please report it: ${name}: ${reason}`);
}

function oneError(error: string, message: string): unknown[][] {
  return [[{ error, message }]];
}

/** No number that is none may reach a cell. */
function checked(cell: unknown): unknown {
  if (typeof cell === "number" && !Number.isFinite(cell))
    return { error: "#NUM!", message: "A fault in Bole itself, please report it: the answer is not a number" };
  return cell;
}
