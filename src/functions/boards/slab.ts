import { boardLength, forWholeList, inches, oneOf, optional, series } from "../../cells/read";
import { spread } from "../../cells/spread";
import { roundBoardFeet } from "../../math/boards/round-board-feet";
import { slabAreaFt2, slabBoardFeet } from "../../math/boards/slab";

/** The customs of measuring a live-edge slab, and other names for them. */
const SLAB_METHODS = {
  mean: ["average"],
  middle: ["mid"],
  narrow: ["narrowest"],
  third: ["one third"],
  simpson: ["simpson's rule"],
};

/**
 * Board feet in a round or oval slice cut across a log.
 *
 * @customfunction ROUNDFEET
 * @returns Board feet
 * @example =BOLE.ROUNDFEET(24, 24, 2) gives 6.283
 * @example =BOLE.ROUNDFEET(30, 24, "10/4") gives 9.817
 * @example =BOLE.ROUNDFEET(24, 24, -2) gives #VALUE!
 * @words cookie, disc, cross cut, table top, oval
 * @picture round
 */
export const ROUNDFEET = spread(
  {
    /** Diameter one way. */
    diameter1In: inches,
    /** Diameter at right angles to it; the same again for a true round. */
    diameter2In: inches,
    /** Thickness of the slice. Under 1 in counts as 1 in. */
    thicknessIn: inches,
  },
  roundBoardFeet,
);

/**
 * Board feet of a live-edge slab from widths read along it at equal steps.
 *
 * No authority on slabs was found and the customs differ, here by a fifth. One invented slab, 8/4, 10 ft long, read
 * every 30 in from the butt as 30, 24, 21, 20 and 25 in, inside bark: mean 40, simpson 37.9, middle 35, third 33.9,
 * narrow 33.3 board feet. Agree on one before the price, and write it on the ticket.
 *
 * mean takes the average of all readings: fair to both, and three readings will do (common practice, no source).
 * middle takes the width at half length: fair on a straight taper (common practice; two old textbooks allow it for
 * tapering boards). narrow takes the least width: the buyer gains (common practice; a textbook has it for common
 * boards). third takes the width a third of the length from the narrower end: near fair (from memory). simpson follows
 * the curve of the edges and is nearest to the true area (plain geometry). The widest width, or a width over bark, is
 * met too; the seller gains, so it is not offered.
 *
 * Say as well which face is measured (the narrower one, or the mean of both), whether cracks and voids come off, and
 * whether the thickness is that of the green slab or what is left after flattening: none of these has a standard.
 *
 * @customfunction SLABFEET
 * @returns Board feet
 * @example =BOLE.SLABFEET("8/4", {30;24;21;20;25}, 10) gives 40
 * @example =BOLE.SLABFEET("8/4", {30;24;21;20;25}, 10, "middle") gives 35
 * @example =BOLE.SLABFEET("8/4", {30;24;21;20;25}, 10, "narrow") gives 33.33
 * @example =BOLE.SLABFEET("8/4", {30;24;21;20;25}, 10, "third") gives 33.89
 * @example =BOLE.SLABFEET("8/4", {30;24;21;20;25}, 10, "simpson") gives 37.92
 * @example =BOLE.SLABFEET("8/4", {30;24;21;25}, 10, "simpson") gives #N/A
 * @words live edge, natural edge, waney edge, flitch, table top, footage of a slab
 * @see SLABAREA
 * @picture slab
 */
export const SLABFEET = spread(
  {
    /** Thickness. Under 1 in counts as 1 in. */
    thicknessIn: forWholeList(inches, "widths"),
    /** Widths of one slab at equal steps from end to end, in one row or column. */
    widthsIn: series(inches),
    /** Length. */
    lengthFt: forWholeList(boardLength, "widths"),
    /** mean, middle, narrow, third or simpson. */
    method: optional(oneOf(SLAB_METHODS), "mean"),
  },
  slabBoardFeet,
);

/**
 * Face area of a live-edge slab in square feet, from the mean of its widths.
 *
 * Times the thickness in inches it is the mean of SLABFEET, for slabs of 1 in and thicker.
 *
 * @customfunction SLABAREA
 * @returns Square feet
 * @example =BOLE.SLABAREA({30;24;21;20;25}, 10) gives 20
 * @example =BOLE.SLABAREA({30;"wide";21}, 10) gives #VALUE!
 * @words live edge, square feet, finish, epoxy, price by the square foot
 * @see SLABFEET
 * @picture slab
 */
export const SLABAREA = spread(
  {
    /** Widths of one slab at equal steps from end to end, in one row or column. */
    widthsIn: series(inches),
    /** Length. */
    lengthFt: forWholeList(boardLength, "widths"),
  },
  slabAreaFt2,
);
