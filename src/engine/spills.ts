import type { IRange, Nullable } from "@univerjs/core";

/** The engine keeps by row and column of the formula's cell the range that its answer fills. */
export type SpillRanges = Nullable<Record<number, Nullable<Record<number, IRange>>>>;

export interface Spill {
  home: { row: number; column: number };
  range: IRange;
}

/** The answers of a sheet that fill more than their own cell. */
export function spills(ranges: SpillRanges): Spill[] {
  return Object.entries(ranges ?? {}).flatMap(([row, columns]) =>
    Object.entries(columns ?? {}).map(([column, range]) => ({
      home: { row: Number(row), column: Number(column) },
      range,
    })),
  );
}
