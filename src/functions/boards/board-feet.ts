import {
  boardLength,
  count,
  forWholeList,
  inches,
  named,
  number,
  oneOf,
  optional,
  percent,
  rows,
  sameForAll,
} from "../../cells/read";
import { spread } from "../../cells/spread";
import { boardFeet } from "../../math/boards/board-feet";
import { linearFeet } from "../../math/boards/linear-feet";
import { packBoardFeet } from "../../math/boards/pack-board-feet";
import { surfaceMeasureFt2 } from "../../math/boards/surface-measure";
import { tallyBoardFeet } from "../../math/boards/tally";

/**
 * Board feet in boards of one size, unrounded.
 *
 * A board foot is 144 cubic inches. Stock under 1 in is tallied as 1 in, as the trade does: a 3/4 in board counts the
 * same as a 4/4 one. Hardwood lots are tallied piece by piece in whole feet instead: see TALLY. Softwood is figured on
 * its nominal size by custom (from memory), and its bill must show the actual size: see DRESSEDSIZE.
 *
 * @customfunction BOARDFEET
 * @returns Board feet
 * @example =BOLE.BOARDFEET(2, 6, 12) gives 12
 * @example =BOLE.BOARDFEET("5/4", 8, 12, 10) gives 100
 * @example =BOLE.BOARDFEET(0.75, 9, "96 in") gives 6
 * @example =BOLE.BOARDFEET(2, -6, 12) gives #VALUE!
 * @words bf, board foot, board measure, how much lumber, footage, volume of a board, board feet of lumber
 * @see TALLY
 * @picture board
 */
export const BOARDFEET = spread(
  {
    /** Thickness. */
    thicknessIn: inches,
    /** Width. */
    widthIn: inches,
    /** Length. */
    lengthFt: boardLength,
    /** How many such boards. */
    count: optional(count, 1),
  },
  boardFeet,
);

/**
 * Surface measure of a board: square feet of its face, to the whole foot.
 *
 * The width counts with its fractions, the length in whole feet: a part of a foot is dropped. Standard lengths are 4 to
 * 16 ft; a shorter or longer board is measured all the same.
 *
 * Three rules for an exact half foot are met. Retail: halves down (Handbook 130 on retail sales of hardwood lumber, not
 * of flooring or moulding, which binds where a state adopts it; its sentence on halves is cut short in the copy read, and
 * "dropped" is our reading). Trade: halves down and up by turns, which takes more than one board: see TALLY. Export:
 * halves to the even foot (common practice, no source).
 *
 * @customfunction SURFACEMEASURE
 * @returns Whole square feet
 * @example =BOLE.SURFACEMEASURE(6.25, 8) gives 4
 * @example =BOLE.SURFACEMEASURE(8.5, 12) gives 8
 * @example =BOLE.SURFACEMEASURE(9.5, 12, "even") gives 10
 * @example =BOLE.SURFACEMEASURE(8.5, "9 in") gives #N/A
 * @words sm, face of a board, square feet, grading, lumber rule, board stick
 * @see TALLY
 * @picture board
 */
export const SURFACEMEASURE = spread(
  {
    /** Full width of the board. */
    widthIn: inches,
    /** Length. A part of a foot is dropped. */
    lengthFt: boardLength,
    /** Where an exact half foot goes: down (retail) or even (export). */
    halves: optional(oneOf({ down: ["retail"], even: ["export"] }), "down"),
  },
  surfaceMeasureFt2,
);

/**
 * Board feet of many boards of one thickness, piece by piece as graders tally.
 *
 * The order of rounding: the surface measure of each board comes to the whole foot first, then the feet are added up,
 * then the sum is multiplied by the thickness. The answer is not rounded again; with 5/4 and 6/4 it may end in a
 * fraction, and a dealer brings the whole lot to the whole board foot once, at the end: put ROUND around it.
 *
 * Surface measure of each piece is the official hardwood tally. Rounding the widths first, or the sum only, makes another
 * total, so lengths and widths as printed do not multiply back to it; where an end tally disagrees, surface measure wins.
 * An export bundle tally is another count: each width to the nearest inch, exact halves by turns. By turns here
 * (alternate) the first exact half foot of the list goes down, the next up, and so on in the order of the list.
 *
 * Kiln-dried hardwood is measured again after drying and billed by that tally, with nothing added for shrinkage.
 *
 * @customfunction TALLY
 * @returns Board feet
 * @example =BOLE.TALLY({6.25;8.75;9.25}, {8;12;12}, 1) gives 22
 * @example =BOLE.TALLY({8.5;8.5}, 12, 1, "alternate") gives 17
 * @example =BOLE.TALLY({8.5;8.5}, 12, "8/4") gives 32
 * @example =BOLE.TALLY({8.5;8.5}, {12;0}, 1) gives #VALUE!
 * @example =BOLE.TALLY({8.5;8.5}, {12;12}, {1;2}) gives #VALUE!
 * @words scale a load of boards, tally stick, footage of a lot, how much lumber, grading
 * @see SURFACEMEASURE
 * @picture board
 */
export const TALLY = spread(
  {
    boards: rows({
      /** Full widths, a cell a board. */
      widthIn: named("widths", inches),
      /** Lengths beside them, or one for all. A part of a foot is dropped. */
      lengthFt: named("lengths", boardLength),
    }),
    /** One thickness for them all. Under 1 in counts as 1 in. */
    thicknessIn: sameForAll(forWholeList(inches, "widths", "lengths")),
    /** Where exact half feet go: down (retail) or alternate (down and up by turns). */
    halves: optional(oneOf({ down: ["retail"], alternate: ["alternately", "trade"] }), "down"),
  },
  tallyBoardFeet,
);

/**
 * Board feet in a bundle by its width, length and layers.
 *
 * A quick check of a bill, not a tally: gaps, short boards and narrow layers are in it unless the fill takes them out.
 *
 * @customfunction PACKFEET
 * @returns Board feet
 * @example =BOLE.PACKFEET(48, 10, 12, 1) gives 480
 * @example =BOLE.PACKFEET(48, 10, 12, 1, 90) gives 432
 * @example =BOLE.PACKFEET(48, 10, 12, 1, 110) gives #N/A
 * @words bundle, stack, pile, pallet, unit of lumber, lift
 * @see TALLY
 * @picture pack
 */
export const PACKFEET = spread(
  {
    /** Width of a layer. */
    widthIn: inches,
    /** Length of the bundle. */
    lengthFt: boardLength,
    /** How many layers. */
    layers: count,
    /** Thickness of the boards. Under 1 in counts as 1 in. */
    thicknessIn: inches,
    /** How much of each layer is wood, 10 to 100 %. */
    fillPercent: optional(percent, 100),
  },
  packBoardFeet,
);

/**
 * Running feet of one thickness and width that hold the given board feet.
 *
 * @customfunction LINEARFEET
 * @returns Feet
 * @example =BOLE.LINEARFEET(100, "5/4", 6) gives 160
 * @example =BOLE.LINEARFEET(100, 1, -6) gives #VALUE!
 * @words lineal feet, running feet, trim, siding
 * @see BOARDFEET
 * @picture board
 */
export const LINEARFEET = spread(
  {
    /** Board feet. */
    boardFeet: number,
    /** Thickness. Under 1 in counts as 1 in. */
    thicknessIn: inches,
    /** Width. */
    widthIn: inches,
  },
  linearFeet,
);
