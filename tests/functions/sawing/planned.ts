import { CUTPLAN, CUTYIELD } from "../../../src/functions/sawing";
import { one, type Cell } from "../sheet";

/** Names and values, as they stand in two columns of a sheet. */
export type Settings = Record<string, Cell>;

/** A 20 in log of 12 ft for 4/4 boards, with an eighth of kerf. */
export const log = (settings: Settings = {}, pattern = "live", products: Cell[][] = one("4/4")) =>
  [one(20), one(12), products, one(0.125), one(pattern), Object.entries(settings)] as const;

/** What CUTYIELD makes of it: board feet, or money where that is the objective. */
export const yieldOf = (...asked: Parameters<typeof log>) => CUTYIELD(...log(...asked))[0]![0] as number;

/** The board feet of the log without a setting. */
export const PLAIN = yieldOf();

export const PRICED = [["4/4", 1.125, 3, ""]];

/** What CUTPLAN makes of it: every pass, those among them that give a board, and all that is said beside them. */
export function plan(...asked: Parameters<typeof log>) {
  const table = CUTPLAN(...log(...asked)) as Cell[][];
  const rows = table
    .slice(1)
    .map(([pass, height, , width, length, , , , , note]) => ({ pass, height, width, length, note }) as Row);
  const passes = rows.slice(
    0,
    rows.findIndex(({ pass }) => pass === "total"),
  );
  const boards = passes.filter((row): row is Board => row.width !== "");
  return { passes, boards, notes: rows.map(({ note }) => note).join("\n") };
}

interface Row {
  pass: Cell;
  height: number;
  width: number | "";
  length: number;
  note: string;
}

interface Board extends Row {
  width: number;
}
