import { addressOf } from "../../../formula/addresses";
import { agrees, type Calculated } from "./plan";

interface Place {
  sheet: string;
  row: number;
  column: number;
}

/** `1 cell`, `3 cells`. */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}

const SHOWN = 5;

/** The first few, and how many more there are. */
export function few(all: readonly string[]): string {
  const more = all.length - SHOWN;
  return all.slice(0, SHOWN).join(", ") + (more > 0 ? ` and ${more} more` : "");
}

/** The first few cells by name, and how many more there are. */
export function places(cells: readonly Place[]): string {
  return few(cells.map(({ sheet, row, column }) => `${sheet}!${addressOf(row, column)}`));
}

/** What was not calculated and why, one sentence each. */
export function whatElse({ results, unable, foreign, linksOutside, searching }: Calculated): string[] {
  const byReason = new Map<string, Place[]>();
  for (const [formula, reason] of unable) byReason.set(reason, [...(byReason.get(reason) ?? []), formula]);
  const kept = [...byReason].map(
    ([reason, cells]) => `${counted(cells.length, "cell")} kept the file's value because ${reason}: ${places(cells)}`,
  );
  if (foreign.length > 0) kept.push(`${counted(foreign.length, "formula")} of another add-in kept as found`);
  if (linksOutside.length > 0)
    kept.push(`${counted(linksOutside.length, "link")} to another workbook kept, counted with the values in the file`);
  if (searching.length > 0 && results.some((result) => !agrees(result)))
    kept.push(
      `${counted(searching.length, "formula")} with INDIRECT or OFFSET may be out of date until Excel calculates: ${places(searching)}`,
    );
  return kept;
}

/** `2026-03-01, 14:05`, from a time whose UTC hours are those of the clock on the wall. */
export function dayAndHour(at: Date): string {
  const [day = "", time = ""] = at.toISOString().split("T");
  return time.startsWith("00:00:00") ? day : `${day}, ${time.slice(0, 5)}`;
}
