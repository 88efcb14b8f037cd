import { forWholeList, inches, list, named, number } from "../../cells/read";
import { spread } from "../../cells/spread";
import { endCoatGallons } from "../../math/drying/end-coat";

/**
 * Gallons of sealer to coat both ends of logs once.
 *
 * Give the mean of each log's two ends. The coverage stands on the can; a rough end takes more than a smooth one, and a
 * second coat as much again. Coat within days of felling, before the ends check (common practice, no source).
 *
 * @customfunction ENDCOAT
 * @returns Gallons
 * @example =BOLE.ENDCOAT({24;30;18}, 100) gives 0.196
 * @example =BOLE.ENDCOAT(24, 100) gives 0.0628
 * @example =BOLE.ENDCOAT({24;-3}, 100) gives #VALUE!
 * @words end sealer, wax, checking, end checks, seal log ends, paint ends, how much sealer
 * @picture log
 */
export const ENDCOAT = spread(
  {
    /** Diameters of the logs, a list. */
    diametersIn: list(inches),
    /** Square feet that a gallon covers, from the can. */
    coverageFt2: named("coverage", forWholeList(number, "diameters")),
  },
  endCoatGallons,
);
