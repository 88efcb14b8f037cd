/** A step that moved the places of cells: rows or columns put in, taken out or carried elsewhere, or cells carried. */
export interface PlaceStep {
  sheets: string[];
  /** What was done, and what would take it back. */
  did: string;
  undoneBy: string;
  /** Whether only some cells went elsewhere, and no row or column. */
  cellsOnly: boolean;
}

interface Stretch {
  first: number;
  last: number;
}

/**
 * Keeps count of what moved the places of a file's cells. A step that takes the last one back, as undoing does, leaves
 * things as they were.
 */
export function movedPlaces() {
  const steps: PlaceStep[] = [];
  const sheetsOf = (cellsOnly: boolean) => [
    ...new Set(steps.filter((step) => step.cellsOnly === cellsOnly).flatMap(({ sheets }) => sheets)),
  ];
  return {
    happened(step: PlaceStep): void {
      if (steps.at(-1)?.undoneBy === step.did) steps.pop();
      else steps.push(step);
    },
    /** The sheets on which rows or columns do not stand where the file has them. */
    moved: () => sheetsOf(false),
    /** The sheets on which cells were carried elsewhere. */
    carried: () => sheetsOf(true),
  };
}

export function stretchStep(sheet: string, of: "rows" | "columns", put: boolean, { first, last }: Stretch): PlaceStep {
  const said = (isPut: boolean) => `${sheet} ${of} ${first}-${last} ${isPut ? "put in" : "taken out"}`;
  return { sheets: [sheet], did: said(put), undoneBy: said(!put), cellsOnly: false };
}

/** Rows or columns carried to before another one, counted as they stood before. */
export function carriedStep(
  sheet: string,
  of: "rows" | "columns",
  { first, last }: Stretch,
  before: number,
): PlaceStep {
  const count = last - first + 1;
  const said = (from: number, to: number) => `${sheet} ${of} ${from}+${count} to ${to}`;
  const arrives = before > first ? before - count : before;
  return { sheets: [sheet], did: said(first, arrives), undoneBy: said(arrives, first), cellsOnly: false };
}

export function cellsStep(from: { sheet: string; cells: string }, to: { sheet: string; cells: string }): PlaceStep {
  const said = (one: typeof from, other: typeof from) => `${one.sheet}!${one.cells} to ${other.sheet}!${other.cells}`;
  return { sheets: [from.sheet, to.sheet], did: said(from, to), undoneBy: said(to, from), cellsOnly: true };
}
