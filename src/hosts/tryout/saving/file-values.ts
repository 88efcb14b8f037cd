import type { Held } from "../../../xlsx/held";

/** Errors that only the page knows; a file keeps #VALUE! in their place, as Excel itself does for the newer ones. */
const NOT_IN_FILES = /^#(?:SPILL!|CALC!|CYCLE!|ERROR!|CONNECT!|BLOCKED!)$/;
/** Errors by which the page says that it could not calculate. */
const UNANSWERED = /^#(?:NAME\?|SPILL!|CALC!|CYCLE!|ERROR!|CONNECT!|BLOCKED!)$/;

interface Shown {
  value: Held;
  formula?: string;
  answered?: true;
}

/** What a cell of the page shows, as a file can hold it. */
export function valueInFile(cell: Shown): Held {
  return calculates(cell) && NOT_IN_FILES.test(String(cell.value)) ? "#VALUE!" : cell.value;
}

/** Whether a cell calculates and the page knows no answer. */
export function showsUnanswered(cell: Shown): boolean {
  return calculates(cell) && UNANSWERED.test(String(cell.value));
}

function calculates({ formula, answered }: Shown): boolean {
  return formula !== undefined || answered === true;
}
