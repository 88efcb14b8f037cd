import type { TableCell } from "../../../cells/spread";
import { agreedDigits, valueText } from "./printed";

/** Nearer than this a sum of rows is the total that the table shows. */
const NEAR = 1e-9;

/** The total of a table, added up from its rows: a line for each column that its row of totals sums. */
export function addedUp(table: readonly (readonly TableCell[])[]): TableCell[][] {
  const at = table.findIndex(([first]) => typeof first === "string" && /^(?:total|all)\b/.test(first));
  if (at < 2) return [];
  const [headings, ...rows] = table.slice(0, at);
  return table[at]!.flatMap((total, column) => {
    const parts = rows.map((row) => row[column]).filter((cell) => typeof cell === "number");
    const sum = parts.reduce((all, part) => all + part, 0);
    if (typeof total !== "number" || parts.length === 0 || !(Math.abs(sum - total) <= NEAR * Math.abs(total)))
      return [];
    const shown = parts.map((part) => agreedDigits(part, part) as number);
    const value = agreedDigits(
      total,
      shown.reduce((all, part) => all + part, 0),
    ) as number;
    return [["total", `${String(headings![column])}, added up`, shown.map(valueText).join(" + "), value]];
  });
}
