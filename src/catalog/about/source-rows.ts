import type { Entry } from "../entry";

/**
 * What SOURCE answers, as the functions bundle carries it: every row once, the name of its formula, and which of them each
 * function rests on, its own formula first.
 */
export interface SourceRows {
  rows: string[][];
  names: string[];
  functions: Record<string, number[]>;
}

/** The rows of SOURCE's answers, picked out of the whole catalog. */
export function sourceRows(catalog: readonly Entry[]): SourceRows {
  const places = new Map<string, number>();
  const placeOf = (named: NamedRow) => {
    const key = JSON.stringify(named);
    if (!places.has(key)) places.set(key, places.size);
    return places.get(key)!;
  };
  const functions = Object.fromEntries(catalog.map((entry) => [entry.name, rowsOf(entry).map(placeOf)]));
  const named = [...places.keys()].map((key) => JSON.parse(key) as NamedRow);
  return { rows: named.map(([, row]) => row), names: named.map(([name]) => name), functions };
}

type NamedRow = [name: string, row: string[]];

function rowsOf({ formulas, summary, grade }: Entry): NamedRow[] {
  if (formulas.length === 0) return [["", [summary, "", "Bole itself", "", grade]]];
  return formulas.map((one) => [one.name, [one.sentence, one.formula, one.sources.join("; "), one.range, one.grade]]);
}
