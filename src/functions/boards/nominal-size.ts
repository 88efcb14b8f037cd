import { inches, nominalSize, oneOf, optional } from "../../cells/read";
import { spread } from "../../cells/spread";
import { hardwoodThicknessIn } from "../../math/boards/hardwood-thickness";
import { dressedSize } from "./dressed-size-answer";

/** What may be asked about a hardwood thickness, and other names for it. */
const THICKNESS_STATES = {
  nominal: ["rough"],
  "kiln-dried": ["kd", "dry"],
  surfaced: ["s2s", "surfaced two sides", "planed"],
  "surfaced one side": ["s1s"],
};

/**
 * Inches in a hardwood thickness such as 5/4: nominal, the least when kiln-dried, or surfaced.
 *
 * Rough green or air-dried lumber must hold its nominal thickness; kiln-dried it may be 1/16 in scant up to 1 3/4 in
 * and 1/8 in from 2 in. The surfaced thickness is the table's: two sides, or one. The table has no figure seen in print
 * for 10/4; what we remember stands in the message of the #N/A.
 *
 * @customfunction QUARTERS
 * @returns Inches
 * @example =BOLE.QUARTERS("5/4") gives 1.25
 * @example =BOLE.QUARTERS("8/4", "surfaced") gives 1.75
 * @example =BOLE.QUARTERS("5/4", "kiln-dried") gives 1.1875
 * @example =BOLE.QUARTERS("10/4", "surfaced") gives #N/A
 * @words 4/4, 8/4, s2s, s1s, planed, rough thickness, five quarter
 */
export const QUARTERS = spread(
  {
    /** Nominal thickness: 5/4, 5Q or 1 1/4. */
    thicknessIn: inches,
    /** nominal, kiln-dried, surfaced (two sides) or surfaced one side. */
    state: optional(oneOf(THICKNESS_STATES), "nominal"),
  },
  hardwoodThicknessIn,
);

/**
 * Least dressed dry size of softwood lumber by its nominal name such as 2x6.
 *
 * Bills and invoices of softwood must show the actual size. Sizes nobody saw printed are marked "(from memory)" in the
 * text of both sides and refused as a single number. Timbers, 5 in and up both ways, follow the standard's older
 * edition, which has one schedule green and dry. Green boards and dimension are a little larger; they are not here.
 *
 * @customfunction DRESSEDSIZE
 * @returns Inches, or text with both sides
 * @example =BOLE.DRESSEDSIZE("2x6") gives "1-1/2 x 5-1/2"
 * @example =BOLE.DRESSEDSIZE("2x8", "width") gives 7.25
 * @example =BOLE.DRESSEDSIZE("3x8") gives "2-1/2 (from memory) x 7-1/4"
 * @example =BOLE.DRESSEDSIZE("2x7") gives #N/A
 * @example =BOLE.DRESSEDSIZE("joist") gives #VALUE!
 * @caution A size is not a grade. Lumber for a joist, rafter, post, stair or guard must be graded, or allowed by the local code or a native-lumber certificate.
 * @words actual size, two by four, planed, dimension lumber, s4s
 * @picture dressed
 */
export const DRESSEDSIZE = spread(
  {
    /** Nominal thickness x width, the thickness first: 2x6, 5/4x6, 8x8. */
    nominal: nominalSize,
    /** thickness or width, in inches; both as text when left out. */
    part: optional(oneOf({ thickness: ["thick"], width: ["wide"] })),
  },
  dressedSize,
);
