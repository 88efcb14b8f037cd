import {
  count as wholeNumber,
  feet,
  inches,
  inches as readInches,
  mayBeNegative,
  number,
  oneOf,
  optional,
  percent,
  rows,
  series,
  text as textOf,
} from "../cells/read";
import { spread } from "../cells/spread";
import { boardFeet } from "../math/boards/board-feet";
import { DRESSED_PARTS, dressedSize } from "../math/boards/dressed-size";
import { hardwoodThicknessIn, THICKNESS_STATES } from "../math/boards/hardwood-thickness";
import { LENGTH_UNITS, lengthInUnit } from "../math/boards/length-in-unit";
import { linearFeet } from "../math/boards/linear-feet";
import { packBoardFeet } from "../math/boards/pack-board-feet";
import { roundBoardFeet } from "../math/boards/round-board-feet";
import { SLAB_METHODS, slabAreaFt2, slabBoardFeet } from "../math/boards/slab";
import { SURFACE_HALVES, surfaceMeasureFt2 } from "../math/boards/surface-measure";
import { TALLY_HALVES, tallyBoardFeet } from "../math/boards/tally";
import { feetInchesText, fractionText } from "../math/boards/tape-text";

/**
 * Board feet in boards of one size, unrounded.
 *
 * A board foot is 144 cubic inches. Stock under 1 in is tallied as 1 in, as the trade does: a 3/4 in board counts the
 * same as a 4/4 one. Hardwood lots are tallied piece by piece in whole feet instead: see TALLY. Softwood is figured on
 * its nominal size by custom (from memory), and its bill must show the actual size: see DRESSEDSIZE.
 *
 * @customfunction BOARDFEET
 * @param thickness Thickness. A bare number is inches; 5/4 works too.
 * @param width Width. A bare number is inches.
 * @param length Length. A bare number is feet; 8'6" and 2.4 m work too.
 * @param [count] How many such boards; 1 when left out.
 * @returns Board feet
 * @example =BOLE.BOARDFEET(2, 6, 12) gives 12
 * @example =BOLE.BOARDFEET("5/4", 8, 12, 10) gives 100
 * @example =BOLE.BOARDFEET(0.75, 9, "96 in") gives 6
 * @example =BOLE.BOARDFEET(2, -6, 12) gives #VALUE!
 * @words bf, board foot, board measure, how much lumber, footage, volume of a board
 * @see TALLY
 * @picture board
 */
export function BOARDFEET(
  thickness: unknown[][],
  width: unknown[][],
  length: unknown[][],
  count?: unknown[][],
): unknown[][] {
  return spread(
    {
      thicknessIn: inches(thickness, "thickness"),
      widthIn: inches(width, "width"),
      lengthFt: feet(length, "length"),
      count: optional(wholeNumber(count, "count"), 1),
    },
    boardFeet,
  );
}

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
 * @param width Full width of the board. A bare number is inches.
 * @param length Length. A bare number is feet; a part of a foot is dropped.
 * @param [halves] Where an exact half foot goes: down (retail, when left out) or even (export).
 * @returns Whole square feet
 * @example =BOLE.SURFACEMEASURE(6.25, 8) gives 4
 * @example =BOLE.SURFACEMEASURE(8.5, 12) gives 8
 * @example =BOLE.SURFACEMEASURE(9.5, 12, "even") gives 10
 * @example =BOLE.SURFACEMEASURE(8.5, "9 in") gives #N/A
 * @words sm, face of a board, square feet, grading, lumber rule, board stick
 * @see TALLY
 * @picture board
 */
export function SURFACEMEASURE(width: unknown[][], length: unknown[][], halves?: unknown[][]): unknown[][] {
  return spread(
    {
      widthIn: inches(width, "width"),
      lengthFt: feet(length, "length"),
      halves: optional(oneOf(SURFACE_HALVES, halves, "halves"), "down"),
    },
    surfaceMeasureFt2,
  );
}

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
 * @param widths Full widths, a cell a board. A bare number is inches.
 * @param lengths Lengths beside them, or one for all. A bare number is feet; a part of a foot is dropped.
 * @param thickness Thickness of them all. A bare number is inches; 5/4 works too; under 1 in counts as 1 in.
 * @param [halves] Where exact half feet go: down (retail, when left out) or alternate (down and up by turns).
 * @returns Board feet
 * @example =BOLE.TALLY({6.25;8.75;9.25}, {8;12;12}, 1) gives 22
 * @example =BOLE.TALLY({8.5;8.5}, 12, 1, "alternate") gives 17
 * @example =BOLE.TALLY({8.5;8.5}, 12, "8/4") gives 32
 * @example =BOLE.TALLY({8.5;8.5}, {12;0}, 1) gives #VALUE!
 * @words scale a load of boards, tally stick, footage of a lot, how much lumber, grading
 * @see SURFACEMEASURE
 * @picture board
 */
export function TALLY(
  widths: unknown[][],
  lengths: unknown[][],
  thickness: unknown[][],
  halves?: unknown[][],
): unknown[][] {
  return spread(
    {
      boards: rows({ widthIn: inches(widths, "widths"), lengthFt: feet(lengths, "lengths") }),
      thicknessIn: inches(thickness, "thickness"),
      halves: optional(oneOf(TALLY_HALVES, halves, "halves"), "down"),
    },
    tallyBoardFeet,
  );
}

/**
 * Board feet in a bundle by its width, length and layers.
 *
 * A quick check of a bill, not a tally: gaps, short boards and narrow layers are in it unless the fill takes them out.
 *
 * @customfunction PACKFEET
 * @param width Width of a layer. A bare number is inches.
 * @param length Length of the bundle. A bare number is feet.
 * @param layers How many layers.
 * @param thickness Thickness of the boards. A bare number is inches; under 1 in counts as 1 in.
 * @param [fill] How much of each layer is wood. A bare number is percent; 100 % when left out.
 * @returns Board feet
 * @example =BOLE.PACKFEET(48, 10, 12, 1) gives 480
 * @example =BOLE.PACKFEET(48, 10, 12, 1, 90) gives 432
 * @example =BOLE.PACKFEET(48, 10, 12, 1, 110) gives #N/A
 * @words bundle, stack, pile, pallet, unit of lumber, lift
 * @see TALLY
 * @picture pack
 */
export function PACKFEET(
  width: unknown[][],
  length: unknown[][],
  layers: unknown[][],
  thickness: unknown[][],
  fill?: unknown[][],
): unknown[][] {
  return spread(
    {
      widthIn: inches(width, "width"),
      lengthFt: feet(length, "length"),
      layers: wholeNumber(layers, "layers"),
      thicknessIn: inches(thickness, "thickness"),
      fillPercent: optional(percent(fill, "fill"), 100),
    },
    packBoardFeet,
  );
}

/**
 * Board feet in a round or oval slice cut across a log.
 *
 * @customfunction ROUNDFEET
 * @param diameter1 Diameter one way. A bare number is inches.
 * @param diameter2 Diameter at right angles to it; the same again for a true round.
 * @param thickness Thickness of the slice. A bare number is inches; under 1 in counts as 1 in.
 * @returns Board feet
 * @example =BOLE.ROUNDFEET(24, 24, 2) gives 6.283
 * @example =BOLE.ROUNDFEET(30, 24, "10/4") gives 9.817
 * @example =BOLE.ROUNDFEET(24, 24, -2) gives #VALUE!
 * @words cookie, disc, cross cut, table top, oval
 * @picture round
 */
export function ROUNDFEET(diameter1: unknown[][], diameter2: unknown[][], thickness: unknown[][]): unknown[][] {
  return spread(
    {
      diameter1In: inches(diameter1, "diameter1"),
      diameter2In: inches(diameter2, "diameter2"),
      thicknessIn: inches(thickness, "thickness"),
    },
    roundBoardFeet,
  );
}

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
 * @param thickness Thickness. A bare number is inches; 9/4 works too; under 1 in counts as 1 in.
 * @param widths Widths at equal steps from one end to the other. A bare number is inches.
 * @param length Length. A bare number is feet.
 * @param [method] mean (when left out), middle, narrow, third or simpson.
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
export function SLABFEET(
  thickness: unknown[][],
  widths: unknown[][],
  length: unknown[][],
  method?: unknown[][],
): unknown[][] {
  return spread(
    {
      thicknessIn: inches(thickness, "thickness"),
      widthsIn: series(inches(widths, "widths")),
      lengthFt: feet(length, "length"),
      method: optional(oneOf(SLAB_METHODS, method, "method"), "mean"),
    },
    slabBoardFeet,
  );
}

/**
 * Face area of a live-edge slab in square feet, from the mean of its widths.
 *
 * Times the thickness in inches it is the mean of SLABFEET, for slabs of 1 in and thicker.
 *
 * @customfunction SLABAREA
 * @param widths Widths at equal steps from one end to the other. A bare number is inches.
 * @param length Length. A bare number is feet.
 * @returns Square feet
 * @example =BOLE.SLABAREA({30;24;21;20;25}, 10) gives 20
 * @example =BOLE.SLABAREA({30;"wide";21}, 10) gives #VALUE!
 * @words live edge, square feet, finish, epoxy, price by the square foot
 * @see SLABFEET
 * @picture slab
 */
export function SLABAREA(widths: unknown[][], length: unknown[][]): unknown[][] {
  return spread({ widthsIn: series(inches(widths, "widths")), lengthFt: feet(length, "length") }, slabAreaFt2);
}

/**
 * Running feet of one thickness and width that hold the given board feet.
 *
 * @customfunction LINEARFEET
 * @param boardfeet Board feet.
 * @param thickness Thickness. A bare number is inches; under 1 in counts as 1 in.
 * @param width Width. A bare number is inches.
 * @returns Feet
 * @example =BOLE.LINEARFEET(100, "5/4", 6) gives 160
 * @example =BOLE.LINEARFEET(100, 1, -6) gives #VALUE!
 * @words lineal feet, running feet, trim, siding
 * @see BOARDFEET
 * @picture board
 */
export function LINEARFEET(boardfeet: unknown[][], thickness: unknown[][], width: unknown[][]): unknown[][] {
  return spread(
    {
      boardFeet: number(boardfeet, "boardfeet"),
      thicknessIn: inches(thickness, "thickness"),
      widthIn: inches(width, "width"),
    },
    linearFeet,
  );
}

/**
 * Inches in a hardwood thickness such as 5/4: nominal, the least when kiln-dried, or surfaced.
 *
 * Rough green or air-dried lumber must hold its nominal thickness; kiln-dried it may be 1/16 in scant up to 1 3/4 in
 * and 1/8 in from 2 in. The surfaced thickness is the table's: two sides, or one. The table has no figure seen in print
 * for 10/4; what we remember stands in the message of the #N/A.
 *
 * @customfunction QUARTERS
 * @param thickness Nominal thickness: 5/4, 5Q or 1 1/4. A bare number is inches.
 * @param [state] nominal (when left out), kiln-dried, surfaced (two sides) or surfaced one side.
 * @returns Inches
 * @example =BOLE.QUARTERS("5/4") gives 1.25
 * @example =BOLE.QUARTERS("8/4", "surfaced") gives 1.75
 * @example =BOLE.QUARTERS("5/4", "kiln-dried") gives 1.1875
 * @example =BOLE.QUARTERS("10/4", "surfaced") gives #N/A
 * @words 4/4, 8/4, s2s, s1s, planed, rough thickness, five quarter
 */
export function QUARTERS(thickness: unknown[][], state?: unknown[][]): unknown[][] {
  return spread(
    {
      thicknessIn: inches(thickness, "thickness"),
      state: optional(oneOf(THICKNESS_STATES, state, "state"), "nominal"),
    },
    hardwoodThicknessIn,
  );
}

/**
 * Least dressed dry size of softwood lumber by its nominal name such as 2x6.
 *
 * Bills and invoices of softwood must show the actual size. Sizes nobody saw printed are marked "(from memory)" in the
 * text of both sides and refused as a single number. Timbers, 5 in and up both ways, follow the standard's older
 * edition, which has one schedule green and dry. Green boards and dimension are a little larger; they are not here.
 *
 * @customfunction DRESSEDSIZE
 * @param nominal Nominal thickness x width: 2x6, 5/4x6, 8x8.
 * @param [part] thickness or width, in inches; both as text when left out.
 * @returns Inches, or text with both sides
 * @example =BOLE.DRESSEDSIZE("2x6") gives "1-1/2 x 5-1/2"
 * @example =BOLE.DRESSEDSIZE("2x8", "width") gives 7.25
 * @example =BOLE.DRESSEDSIZE("3x8") gives "2-1/2 (from memory) x 7-1/4"
 * @example =BOLE.DRESSEDSIZE("2x7") gives #N/A
 * @caution A size is not a grade. Lumber for a joist, rafter, post, stair or guard must be graded, or allowed by the local code or a native-lumber certificate.
 * @words actual size, two by four, planed, dimension lumber, s4s
 * @picture dressed
 */
export function DRESSEDSIZE(nominal: unknown[][], part?: unknown[][]): unknown[][] {
  return spread(
    { nominal: textOf(nominal, "nominal"), part: optional(oneOf(DRESSED_PARTS, part, "part")) },
    dressedSize,
  );
}

/**
 * Inches as a fraction for the tape, such as 24-1/2.
 *
 * To the nearest fraction, in lowest terms. The answer is text; keep the number for sums.
 *
 * @customfunction FRACTION
 * @param inches Length. A bare number is inches; it may be below 0.
 * @param [denominator] Finest fraction: 16 for sixteenths, which is used when left out.
 * @returns Text
 * @example =BOLE.FRACTION(24.5) gives "24-1/2"
 * @example =BOLE.FRACTION(0.8, 8) gives "3/4"
 * @example =BOLE.FRACTION(24.5, 1.5) gives #VALUE!
 * @words sixteenths, eighths, tape measure, decimal to fraction, ruler
 * @see FEETINCHES
 */
export function FRACTION(inches: unknown[][], denominator?: unknown[][]): unknown[][] {
  return spread(
    {
      lengthIn: mayBeNegative(readInches(inches, "inches")),
      denominator: optional(wholeNumber(denominator, "denominator"), 16),
    },
    fractionText,
  );
}

/**
 * Inches as feet and inches for the tape, such as 8'-6 1/2".
 *
 * To the nearest fraction, in lowest terms; 11.999 in is a foot. Bole reads the text back where a length is asked.
 *
 * @customfunction FEETINCHES
 * @param inches Length. A bare number is inches; it may be below 0.
 * @param [denominator] Finest fraction: 16 for sixteenths, which is used when left out.
 * @returns Text
 * @example =BOLE.FEETINCHES(102.5) gives "8'-6 1/2"""
 * @example =BOLE.FEETINCHES(11.999) gives "1'-0"""
 * @example =BOLE.FEETINCHES("long") gives #VALUE!
 * @words tape measure, feet and inches, sixteenths, carpenter
 * @see FRACTION
 */
export function FEETINCHES(inches: unknown[][], denominator?: unknown[][]): unknown[][] {
  return spread(
    {
      lengthIn: mayBeNegative(readInches(inches, "inches")),
      denominator: optional(wholeNumber(denominator, "denominator"), 16),
    },
    feetInchesText,
  );
}

/**
 * A length as Bole reads it, in the unit asked for.
 *
 * It reads as a diameter, width or thickness is read: a bare number is inches, whatever unit the answer is in. A dash
 * between feet and inches only parts them: 4'-7 1/4" is 55.25 in.
 *
 * @customfunction MEASURE
 * @param text Length as typed: 14 1/2, 5/4, 8'6", 45 cm. A bare number is inches.
 * @param [unit] Unit of the answer: in (when left out), ft, mm, cm or m.
 * @returns Length in that unit
 * @example =BOLE.MEASURE("2'-4 1/2""") gives 28.5
 * @example =BOLE.MEASURE("5'-6 3/4""", "ft") gives 5.5625
 * @example =BOLE.MEASURE("45 cm", "mm") gives 450
 * @example =BOLE.MEASURE("1,5") gives #VALUE!
 * @words convert, metric, inches to millimetres, feet and inches to decimal, units
 * @see FEETINCHES
 */
export function MEASURE(text: unknown[][], unit?: unknown[][]): unknown[][] {
  return spread(
    { lengthIn: inches(text, "text"), unit: optional(oneOf(LENGTH_UNITS, unit, "unit"), "in") },
    lengthInUnit,
  );
}
