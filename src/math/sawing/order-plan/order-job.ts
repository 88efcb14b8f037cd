import { NoAnswer } from "../../errors";
import type { CutJob } from "../cut-plan/cut-job";

/** One line of an order, by the names of the sheet; inches, but the length in feet. */
export interface OrderLine {
  /** Its row in the order. */
  row: number;
  thickness: number;
  width: number;
  length: number;
  /** How many are wanted; `stock` for as many as come. */
  count: number | "stock";
  customer?: string;
  "green size"?: number;
}

/** One log of the yard, by the names of the sheet; inches, but the length in feet. */
export interface YardLog {
  /** Its row among the logs. */
  row: number;
  diameter: number;
  length: number;
  "large end"?: number;
  cost?: number;
  name?: string;
}

/** Pieces of one size: what is ordered of it, or what is wanted of it for the shelf. */
export interface Piece {
  kind: number;
  widthSteps: number;
  /** Its place among the widths of its kind, narrowest first. */
  width: number;
  /** Length with its trim. */
  cutIn: number;
  boardFeet: number;
  /** How many are ordered, of all lines of this size; Infinity for stock. */
  count: number;
  /** The lines that it goes to, as places in the order. */
  lines: readonly number[];
}

/** Pieces of one green thickness and tally: a flitch holds pieces of one kind only. */
export interface Kind {
  greenSteps: number;
  tallyIn: number;
  /** Its pieces, as places in the job. */
  pieces: readonly number[];
  /** Green widths in scale steps, narrowest first. */
  widths: readonly number[];
  /** The lengths that strips may have, shortest first. */
  runsIn: readonly number[];
}

/** A log that can be sawn, with what opening it takes away: its wood, or its cost. */
export interface SawableLog {
  /** Its place among the logs given. */
  at: number;
  job: CutJob;
  woodBoardFeet: number;
  takes: number;
}

/** An order and a yard, read. */
export interface OrderJob {
  pieces: readonly Piece[];
  kinds: readonly Kind[];
  logs: readonly SawableLog[];
  stepIn: number;
  kerfSteps: number;
  ripKerfSteps: number;
  crosscutIn: number;
  /** What a board foot short counts, so that one more piece is always worth any wood. */
  shortPrice: number;
  /** What a board foot for the shelf counts. */
  stockPrice: number;
}

/** No plan is found in good time for more than this. */
export const MOST_LOGS = 60;
export const MOST_LINES = 30;
export const MOST_PIECES = 9999;
export const MOST_RUNS = 400;

/** Refuses more than the plan takes, with both limits. */
export function mustBeFew(logs: number, lines: number): void {
  if (logs > MOST_LOGS || lines > MOST_LINES)
    throw new NoAnswer(
      `order and logs: wanted up to ${MOST_LOGS} logs and ${MOST_LINES} lines, got ${logs} logs and ${lines} lines`,
    );
}

/** Refuses a count that is no number of pieces. */
export function mustBeCount(count: number | "stock", row: number): void {
  if (count === "stock" || (Number.isInteger(count) && count >= 1 && count <= MOST_PIECES)) return;
  throw new NoAnswer(
    `order, count, row ${row}: wanted a whole number from 1 to ${MOST_PIECES}, or stock, got ${count}`,
  );
}
