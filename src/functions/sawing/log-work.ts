import { feetPerMinute, inches, mayBeZero, named, number, sameForAll } from "../../cells/read";
import { spread } from "../../cells/spread";
import { logHours } from "../../math/sawing/log-hours";
import { sawnFaceFt2 } from "../../math/sawing/sawn-face";
import { CUT_REQUEST } from "./cut-request";

/**
 * Square feet of face that the band cuts when a log is sawn by its best plan.
 *
 * This is what dulls a blade: every pass counts once, from bark to bark or from side to side of a cant, the cuts that take
 * the slabs too. Edging on the same mill comes on top. Pass lists of quarter-sawn and of bowed logs are not counted.
 *
 * @customfunction SAWNFACE
 * @returns Square feet
 * @example =BOLE.SAWNFACE(16, 8, "4/4", 0.125) gives 114.25
 * @example =BOLE.SAWNFACE(16, 8, "4/4", 0.125, "cant", {"cant widths",8}) gives 124.60
 * @example =BOLE.SAWNFACE(16, 8, "4/4", 0.125, "quarter") gives #N/A
 * @see BLADECOST
 * @words blade life, dull blade, square feet of cut, band wear, how long a blade lasts
 * @picture patterns
 */
export const SAWNFACE = spread(
  {
    /** Small-end diameter inside bark, up and down as the log lies. */
    diameterIn: CUT_REQUEST.diameterIn,
    /** Length of the log. */
    lengthFt: CUT_REQUEST.lengthFt,
    /** Thickness of the boards, such as 4/4. */
    thicknessIn: sameForAll(inches),
    /** Width of the saw cut. */
    kerfIn: CUT_REQUEST.kerfIn,
    /** live, slab or cant. */
    pattern: CUT_REQUEST.pattern!,
    /** Two columns of name and value, as in CUTPLAN. */
    settings: CUT_REQUEST.settings,
  },
  ({ thicknessIn, ...log }) => sawnFaceFt2({ ...log, products: [{ thickness: thicknessIn }] }),
);

/**
 * Hours at the mill to saw one log by its best plan.
 *
 * Each pass takes the log's length at the feed speed and the minutes of handling; each turn of the log, the cant, a half
 * or a quarter takes its own minutes. Time yourself for those. Loading, edging, stacking and blade changes are not in it.
 *
 * @customfunction LOGHOURS
 * @returns Hours
 * @example =BOLE.LOGHOURS(16, 8, "4/4", 0.125, 30, 1) gives 0.274
 * @example =BOLE.LOGHOURS(16, 8, "4/4", 0.125, 30, 1, 5, "cant", {"cant widths",8}) gives 0.631
 * @example =BOLE.LOGHOURS(16, 8, "4/4", 0.125, "slow", 1) gives #VALUE!
 * @see SAWTIME
 * @words how long to saw, quote, hours per log, custom sawing time, passes, turning time, sawing by the hour, how long to saw a log, hours at the mill
 * @picture patterns
 */
export const LOGHOURS = spread(
  {
    /** Small-end diameter inside bark, up and down as the log lies. */
    diameterIn: CUT_REQUEST.diameterIn,
    /** Length of the log. */
    lengthFt: CUT_REQUEST.lengthFt,
    /** Thicknesses such as 4/4, or columns, as in CUTPLAN. */
    products: CUT_REQUEST.products,
    /** Width of the saw cut. */
    kerfIn: CUT_REQUEST.kerfIn,
    /** Speed of the head through the log. */
    feedFpm: named("feed", sameForAll(feetPerMinute)),
    /** Minutes of handling for each pass. */
    handlingMin: named("handling", mayBeZero(number)),
    /** Minutes for each turn. */
    turningMin: named("turning", mayBeZero(number)),
    /** live, slab, cant or quarter. */
    pattern: CUT_REQUEST.pattern!,
    /** Two columns of name and value, as in CUTPLAN. */
    settings: CUT_REQUEST.settings,
  },
  logHours,
);
