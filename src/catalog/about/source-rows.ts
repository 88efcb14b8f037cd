import type { Entry } from "../entry";

/** What SOURCE answers, as the functions bundle carries it: every row once, and which of them each function rests on. */
export interface SourceRows {
  rows: string[][];
  functions: Record<string, number[]>;
}

/** The rows of SOURCE's answers, picked out of the whole catalog. */
export function sourceRows(catalog: readonly Entry[]): SourceRows {
  const places = new Map<string, number>();
  const placeOf = (row: string[]) => {
    const key = JSON.stringify(row);
    if (!places.has(key)) places.set(key, places.size);
    return places.get(key)!;
  };
  const functions = Object.fromEntries(catalog.map((entry) => [entry.name, rowsOf(entry).map(placeOf)]));
  return { rows: [...places.keys()].map((key) => JSON.parse(key) as string[]), functions };
}

function rowsOf({ formulas, summary, grade }: Entry): string[][] {
  if (formulas.length === 0) return [[summary, "", "Bole itself", "", grade]];
  return formulas.map((one) => [one.sentence, one.formula, one.sources.join("; "), one.range, one.grade]);
}
