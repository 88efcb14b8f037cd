import { count, mayBeZero, money, named, number, optional } from "../../cells/read";
import { spread } from "../../cells/spread";
import { bladeCost } from "../../math/sawing/blade-cost";

/**
 * What a blade costs for each square foot of face that it saws, or for each board foot.
 *
 * Face is what dulls a blade: count the square feet of SAWNFACE between two sharpenings. A blade is sawn with once more
 * than it is sharpened. With yield, the board feet that a square foot gives (1 for 4/4 where every pass frees a board),
 * the answer is for a board foot. A blade that breaks early costs more: count the sharpenings that yours really reach.
 *
 * @customfunction BLADECOST
 * @returns Money per square foot of face, or per board foot
 * @example =BOLE.BLADECOST(30, 5, 8, 400) gives 0.0292
 * @example =BOLE.BLADECOST(30, 5, 8, 400, 0.8) gives 0.0365
 * @example =BOLE.BLADECOST(30, 0, 0, 400) gives 0.075
 * @example =BOLE.BLADECOST(30, 5, 8, "dull") gives #VALUE!
 * @see SAWNFACE
 * @words band blade, sharpening, resharpen, blade life, cost of blades, how long does a blade last, dull
 */
export const BLADECOST = spread(
  {
    /** Price of a new blade. */
    price: money,
    /** How often it is sharpened before it is thrown away. */
    sharpenings: mayBeZero(count),
    /** Money for one sharpening. */
    sharpening: mayBeZero(money),
    /** Square feet of face sawn between two sharpenings. */
    faceFt2: named("face", number),
    /** Board feet that a square foot of face gives. */
    yieldBf: named("yield", optional(number)),
  },
  bladeCost,
);
