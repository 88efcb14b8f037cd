import { feet, inches, pounds, yesNo } from "../../cells/read";
import { spread } from "../../cells/spread";
import { tubeSagIn, tubeWeightLb } from "../../math/mill/tube";

/**
 * Weight of a square or rectangular steel tube.
 *
 * By the nominal wall, with the rounded corners of structural tube, as the steel tables print it.
 *
 * @customfunction TUBEWEIGHT
 * @param height Outside height. A bare number is inches; 150 mm works too.
 * @param width Outside width. A bare number is inches.
 * @param wall Nominal wall. A bare number is inches; 1/4 and 6 mm work too.
 * @param length Length. A bare number is feet; 8'6" and 6 m work too.
 * @returns Pounds
 * @example =BOLE.TUBEWEIGHT(6, 2, 0.25, 1) gives 12.2
 * @example =BOLE.TUBEWEIGHT(6, 2, 1, 20) gives #N/A
 * @caution Lift it with rated gear and by its real weight.
 * @see TUBESAG
 * @words box section, square tubing, steel tube, bed rail weight, HSS, pounds per foot
 * @picture tube
 */
export function TUBEWEIGHT(
  height: unknown[][],
  width: unknown[][],
  wall: unknown[][],
  length: unknown[][],
): unknown[][] {
  return spread(
    {
      heightIn: inches(height, "height"),
      widthIn: inches(width, "width"),
      wallIn: inches(wall, "wall"),
      lengthFt: feet(length, "length"),
    },
    tubeWeightLb,
  );
}

/**
 * Sag at the middle of a steel tube between two supports.
 *
 * By the design wall, 0.93 of the nominal one, as the steel tables take it for A500 tube. The tube's own weight is not
 * in it: add its sag from TUBEWEIGHT as a spread load. Height is the side that stands.
 *
 * @customfunction TUBESAG
 * @param height Outside height, the side that stands. A bare number is inches; 150 mm works too.
 * @param width Outside width. A bare number is inches.
 * @param wall Nominal wall. A bare number is inches; 1/4 and 6 mm work too.
 * @param span Between supports. A bare number is feet; 8'6" and 2.4 m work too.
 * @param load Whole load. A bare number is pounds; 900 kg works too.
 * @param [evenly] TRUE or yes for a load spread evenly; at the middle when left out.
 * @returns Inches
 * @example =BOLE.TUBESAG(6, 2, 0.25, 10, 2000) gives 0.190
 * @example =BOLE.TUBESAG(6, 2, 0.25, 10, 2000, TRUE) gives 0.119
 * @example =BOLE.TUBESAG(6, 2, 0.6, 10, 2000) gives #N/A
 * @caution Sag is not strength: buckling, welds, wheels and a dropped log are not in it. Have a lifting frame engineered.
 * @see TUBEWEIGHT
 * @words beam deflection, bed rail bends, how much will it bend, bunk, crossbeam, steel tube, HSS
 * @picture tube
 */
export function TUBESAG(
  height: unknown[][],
  width: unknown[][],
  wall: unknown[][],
  span: unknown[][],
  load: unknown[][],
  evenly?: unknown[][],
): unknown[][] {
  return spread(
    {
      heightIn: inches(height, "height"),
      widthIn: inches(width, "width"),
      wallIn: inches(wall, "wall"),
      spanFt: feet(span, "span"),
      loadLb: pounds(load, "load"),
      spread: yesNo(evenly, "evenly"),
    },
    tubeSagIn,
  );
}
