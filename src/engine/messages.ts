/** A cell error as our functions answer it: what the cell shows, and why. */
export interface BoleError {
  error: string;
  message?: string;
}

/** Which cell a formula stands in. */
export interface Place {
  unit: string;
  sheet: string;
  row: number;
  column: number;
}

interface Said extends BoleError {
  /** Where in the answer, from its top left corner; a single answer may stand for every cell. */
  row: number;
  column: number;
  single: boolean;
}

/**
 * The engine's cells hold an error's short text only. The reasons are kept here, beside the cells, so that a
 * panel or a line of output can show them.
 */
export class Messages {
  private heard = new Map<string, { run: number; said: Said[] }>();
  private run = 0;

  /** A new calculation: what a cell said before no longer counts once it is calculated again. */
  newRun(): void {
    this.run += 1;
  }

  forget(): void {
    this.heard.clear();
  }

  /** Keeps the errors of one function's answer. */
  keep(place: Place, answer: readonly (readonly unknown[])[]): void {
    const errors = errorsIn(answer);
    if (errors.length === 0 && this.heard.size === 0) return;
    const key = keyOf(place);
    const before = this.heard.get(key);
    if (before?.run === this.run) before.said.push(...errors);
    else if (errors.length > 0) this.heard.set(key, { run: this.run, said: errors });
    else if (before) this.heard.delete(key);
  }

  /**
   * Why a cell shows an error. `down` and `right` say how far the cell lies from its formula's cell in a spilled
   * answer. The reason at that very place counts first, then a single answer's, then any with the same error. A function that only hands an error on is passed over for the one
   * that raised it.
   */
  why(place: Place, error: string, down = 0, right = 0): string | undefined {
    const all = this.heard.get(keyOf(place))?.said.filter((one) => one.error === error && one.message) ?? [];
    const own = all.filter((one) => !one.message?.endsWith(`the cell holds ${error}`));
    const said = (own.length ? own : all).reverse();
    const here = said.find((one) => !one.single && one.row === down && one.column === right);
    return (here ?? said.find((one) => one.single) ?? said[0])?.message;
  }
}

function errorsIn(answer: readonly (readonly unknown[])[]): Said[] {
  const single = answer.length === 1 && answer[0]?.length === 1;
  const errors: Said[] = [];
  for (let row = 0; row < answer.length; row++) {
    const cells = answer[row] ?? [];
    for (let column = 0; column < cells.length; column++) {
      const cell = cells[column];
      if (isBoleError(cell)) errors.push({ ...cell, row, column, single });
    }
  }
  return errors;
}

export function isBoleError(cell: unknown): cell is BoleError {
  return typeof cell === "object" && cell !== null && typeof (cell as BoleError).error === "string";
}

export function keyOf({ unit, sheet, row, column }: Place): string {
  return `${unit}|${sheet}|${row}|${column}`;
}
