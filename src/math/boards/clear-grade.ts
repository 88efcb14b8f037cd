import { mustBeAbove, mustBeAtLeast } from "../errors";
import { HARDWOOD_GRADES } from "./hardwood-grades.table";
import { surfaceMeasureFt2 } from "./surface-measure";

/** Lumber that was kiln dried may be under the least width by this much. */
const DRY_ALLOWANCE_IN = 0.5;

/** Green or air dried, or kiln dried. */
export type LumberState = "green" | "dry";

export type GradeName = (typeof HARDWOOD_GRADES)[number][0];

interface Cutting {
  widthIn: number;
  lengthFt: number;
}

/** Why a board does not reach a grade. */
export type RuledOut =
  | { by: "width" | "length"; wanted: number; given: number }
  | { by: "cuttings"; wanted: number; given: number; cuttings: number };

export interface ClearGrade {
  /** The best grade that nothing measured rules out; none where all are. */
  grade?: GradeName;
  /** The grade above it, and what rules that out; nothing above the best. */
  next?: { grade: GradeName; why: RuledOut };
}

/**
 * The best hardwood grade that a board's size and its clear cuttings on the poorer face do not rule out.
 *
 * @formula by table: for each grade of the table, width and length are at least its least, and its largest cuttings,
 *   as many as (SM + a) / b in whole numbers allows, hold at least SM * units
 * @source AHEC grades, and two lumber dealers' summaries
 * @source plain arithmetic: the largest cuttings first
 * @range length 1 ft and up; cuttings that do not overlap, and none larger than the board
 */
export function clearGrade({ widthIn, lengthFt, cuttings, state }: Board): ClearGrade {
  mustBeAbove(0, widthIn, "width (in)");
  for (const [at, cutting] of cuttings.entries()) {
    mustBeAtLeast(cutting.widthIn, widthIn, `width of the board (in), which holds cutting ${at + 1}`);
    mustBeAtLeast(cutting.lengthFt, lengthFt, `length of the board (ft), which holds cutting ${at + 1}`);
  }
  const surfaceFt2 = surfaceMeasureFt2({ widthIn, lengthFt, halves: "down" });
  const allowanceIn = state === "dry" ? DRY_ALLOWANCE_IN : 0;
  let next: ClearGrade["next"];
  for (const grade of HARDWOOD_GRADES) {
    const why = ruledOut(grade, { widthIn: widthIn + allowanceIn, lengthFt, cuttings }, surfaceFt2);
    if (!why) return { grade: grade[0], ...(next && { next }) };
    next = { grade: grade[0], why };
  }
  return { next: next! };
}

interface Board {
  widthIn: number;
  lengthFt: number;
  cuttings: readonly Cutting[];
  state: LumberState;
}

function ruledOut(
  [, leastWidthIn, leastLengthFt, leastCuttings, unitsPerFt2, added, by, most]: (typeof HARDWOOD_GRADES)[number],
  board: Omit<Board, "state">,
  surfaceFt2: number,
): RuledOut | undefined {
  if (board.widthIn < leastWidthIn) return { by: "width", wanted: leastWidthIn, given: board.widthIn };
  if (board.lengthFt < leastLengthFt) return { by: "length", wanted: leastLengthFt, given: board.lengthFt };
  const allowed = Math.min(most, by === 1 ? Infinity : Math.floor((surfaceFt2 + added) / by));
  const units = board.cuttings
    .filter(({ widthIn, lengthFt }) => leastCuttings.some(([width, length]) => widthIn >= width && lengthFt >= length))
    .map(({ widthIn, lengthFt }) => widthIn * lengthFt)
    .sort((a, b) => b - a)
    .slice(0, allowed);
  const given = units.reduce((sum, unit) => sum + unit, 0);
  const wanted = surfaceFt2 * unitsPerFt2;
  return given < wanted || units.length === 0 ? { by: "cuttings", wanted, given, cuttings: allowed } : undefined;
}
