import { addressOf } from "../../../formula/addresses";
import type { FormulaNote } from "./notes";

/** The sheet that goes with the copies. */
export const ABOUT_SHEET = "About the copies";

/** A copied sheet and what became of its cells. */
export interface CopiedSheet {
  original: string;
  name: string;
  /** Cells that asked Bole and are values now. */
  bole: number;
  /** Other cells that led out of their sheet and are values now. */
  outside: number;
  /** Cells that had a note of their own, so their formula stands on the about sheet. */
  unnoted: FormulaNote[];
}

/** What the sheet says, line by line. */
export function aboutLines(copied: readonly CopiedSheet[], at: Date): (string | number)[][] {
  const unnoted = copied.flatMap(({ name, unnoted }) =>
    unnoted.map((note) => [`${name}!${addressOf(note.row, note.column)}`, `'${note.formula}`]),
  );
  return [
    ["Copies for someone without Bole"],
    [`The values were taken ${dayAndHour(at)}. They do not change any more when the numbers beside them do.`],
    ["In each copy a cell that asked Bole holds its value; its formula hangs on the cell as a note."],
    ["A formula that led to another sheet or a name is a value too, so that the copies stand by themselves."],
    ["To hand them on: select the copies' tabs and this one, right-click, Move or Copy, new book, Create a copy."],
    ["The original sheets were not touched. Hidden sheets and earlier copies were left out."],
    [],
    ["Original", "Copy", "Cells of Bole", "Other cells"],
    ...copied.map(({ original, name, bole, outside }) => [original, name, bole, outside]),
    ...(unnoted.length > 0
      ? [[], ["These cells had a note of their own, so their formulas stand here:"], ...unnoted]
      : []),
  ];
}

/** `2026-03-01, 14:05` by the clock on the wall. */
function dayAndHour(at: Date): string {
  const two = (number: number) => String(number).padStart(2, "0");
  const day = [at.getFullYear(), two(at.getMonth() + 1), two(at.getDate())].join("-");
  return `${day}, ${two(at.getHours())}:${two(at.getMinutes())}`;
}
