import { boardLength, columns, inches, oneOf, optional } from "../../cells/read";
import { spread } from "../../cells/spread";
import { clearGrade, type RuledOut } from "../../math/boards/clear-grade";
import { short } from "../../math/errors";

const LUMBER_STATES = { green: ["air dried", "rough"], dry: ["kiln dried", "kd"] } as const;

/** What the rules also limit, and no sheet can see. */
const NOT_SEEN = "This grades nothing: wane, pith, knots, splits and warp are not seen here";

/**
 * The best hardwood grade that a board's size and clear cuttings do not rule out, and what rules out the next.
 *
 * It does not grade: the rules also limit wane, pith, knots, splits and warp, and a grader turns the board over. Measure
 * the cuttings on the poorer face, clear pieces that do not overlap, each as a width in inches and a length in feet. A
 * cutting unit is 1 in by 1 ft. Asked of FAS, No. 1, No. 2A and No. 3A Common; not of FAS One Face and Selects, which
 * need both faces. The rule book itself was not seen, summaries of it were.
 *
 * @customfunction CLEARGRADE
 * @returns Text
 * @example =BOLE.CLEARGRADE(8, 12, {8,10}) gives "FAS is not ruled out. This grades nothing: wane, pith, knots, splits and warp are not seen here"
 * @example =BOLE.CLEARGRADE(8, 12, {4,5}) gives "Every grade is ruled out, No. 3A Common by its cuttings: 20 of 32 units. This grades nothing: wane, pith, knots, splits and warp are not seen here"
 * @example =BOLE.CLEARGRADE(8, 12, {9,5}) gives #N/A
 * @words lumber grade, FAS, No. 1 Common, grade boards, NHLA, clear face, hardwood grading, surface measure
 * @see SURFACEMEASURE
 */
export const CLEARGRADE = spread(
  {
    /** Width of the board. */
    widthIn: inches,
    /** Length of the board. */
    lengthFt: boardLength,
    /** Clear cuttings of its poorer face: columns width and length. */
    cuttings: columns({ widthIn: inches, lengthFt: boardLength }),
    /** green, or dry for kiln dried, which may be 1/2 in under the least width. */
    state: optional(oneOf(LUMBER_STATES), "green"),
  },
  (board) => {
    const { grade, next } = clearGrade(board);
    if (!grade) return `Every grade is ruled out, ${next!.grade} by ${reason(next!.why)}. ${NOT_SEEN}`;
    return `${grade} is not ruled out${next ? `; ${next.grade} is, by ${reason(next.why)}` : ""}. ${NOT_SEEN}`;
  },
);

function reason(why: RuledOut): string {
  if (why.by !== "cuttings")
    return `its ${why.by}: ${short(why.given)} of ${why.wanted} ${why.by === "width" ? "in" : "ft"}`;
  const number = Number.isFinite(why.cuttings) ? ` in ${why.cuttings} at most` : "";
  return `its cuttings: ${short(why.given)} of ${why.wanted} units${number}`;
}
