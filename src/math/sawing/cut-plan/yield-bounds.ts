import { IN3_PER_BF } from "../../units";
import { halfAcrossAt, halfUpAt, type CutJob, type Log } from "./cut-job";

/**
 * What no plan can pass: the solid of the log in board feet, and the most lumber of the best product it could give.
 *
 * @formula by search: the most is r * (V + k * L * mean greater diameter) / 144 with V = L / 6 * (A0 + 4 * Am + AL)
 *   and r the greatest tally / (t + k) of the products
 * @source plain geometry: Newton's formula for the solid, one kerf added round the stack
 */
export function yieldBounds(job: CutJob): { logBoardFeet: number; mostBoardFeet: number; mostWithoutKerf: number } {
  const { log, products, kerfIn } = job;
  const solidIn3 = solidOf(log);
  const meanGreaterIn = greaterIn(log, 0) / 2 + greaterIn(log, log.lengthIn) / 2;
  const best = Math.max(...products.map(({ tallyIn, greenIn }) => tallyIn / (greenIn + kerfIn)));
  const bestWithoutKerf = Math.max(...products.map(({ tallyIn, greenIn }) => tallyIn / greenIn));
  return {
    logBoardFeet: solidIn3 / IN3_PER_BF,
    mostBoardFeet: (best * (solidIn3 + kerfIn * log.lengthIn * meanGreaterIn)) / IN3_PER_BF,
    mostWithoutKerf: (bestWithoutKerf * solidIn3) / IN3_PER_BF,
  };
}

/** The solid board feet of a log, whatever comes out of it. */
export function solidBoardFeet(log: Log): number {
  return solidOf(log) / IN3_PER_BF;
}

function solidOf(log: Log): number {
  const area = (z: number) => Math.PI * halfAcrossAt(log, z) * halfUpAt(log, z);
  return (log.lengthIn / 6) * (area(0) + 4 * area(log.lengthIn / 2) + area(log.lengthIn));
}

function greaterIn(log: Log, z: number): number {
  return 2 * Math.max(halfAcrossAt(log, z), halfUpAt(log, z));
}
