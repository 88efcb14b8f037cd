import { inches, named, pounds, spanLength, yesNo } from "../../cells/read";
import { spread } from "../../cells/spread";
import { tubeSagIn, tubeWeightLb } from "../../math/mill/tube";

/**
 * Weight of a square or rectangular steel tube.
 *
 * By the nominal wall, with the rounded corners of structural tube, as the steel tables print it.
 *
 * @customfunction TUBEWEIGHT
 * @returns Pounds
 * @example =BOLE.TUBEWEIGHT(6, 2, 0.25, 1) gives 12.2
 * @example =BOLE.TUBEWEIGHT(6, 2, 1, 20) gives #N/A
 * @caution Lift it with rated gear and by its real weight.
 * @see TUBESAG
 * @words box section, square tubing, steel tube, bed rail weight, HSS, pounds per foot
 * @picture tube
 */
export const TUBEWEIGHT = spread(
  {
    /** Outside height. */
    heightIn: inches,
    /** Outside width. */
    widthIn: inches,
    /** Nominal wall. */
    wallIn: inches,
    /** Length. */
    lengthFt: spanLength,
  },
  tubeWeightLb,
);

/**
 * Sag at the middle of a steel tube between two supports.
 *
 * By the design wall, 0.93 of the nominal one, as the steel tables take it for A500 tube. The tube's own weight is not
 * in it: add its sag from TUBEWEIGHT as a spread load. Height is the side that stands.
 *
 * @customfunction TUBESAG
 * @returns Inches
 * @example =BOLE.TUBESAG(6, 2, 0.25, 10, 2000) gives 0.190
 * @example =BOLE.TUBESAG(6, 2, 0.25, 10, 2000, TRUE) gives 0.119
 * @example =BOLE.TUBESAG(6, 2, 0.6, 10, 2000) gives #N/A
 * @caution Sag is not strength: buckling, welds, wheels and a dropped log are not in it. Have a lifting frame engineered.
 * @see TUBEWEIGHT
 * @words beam deflection, bed rail bends, how much will it bend, bunk, crossbeam, steel tube, HSS
 * @picture tube
 */
export const TUBESAG = spread(
  {
    /** Outside height, the side that stands. */
    heightIn: inches,
    /** Outside width. */
    widthIn: inches,
    /** Nominal wall. */
    wallIn: inches,
    /** Between supports. */
    spanFt: spanLength,
    /** Whole load. */
    loadLb: pounds,
    /** TRUE or yes for a load spread evenly; no for one at the middle. */
    spread: named("evenly", yesNo),
  },
  tubeSagIn,
);
