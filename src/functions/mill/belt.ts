import { inches, yesNo } from "../../cells/read";
import { spread } from "../../cells/spread";
import { bandLengthIn, beltCentersIn, beltLengthIn, beltWrapDegrees } from "../../math/mill/belt";

/**
 * Exact length of a belt over two pulleys.
 *
 * Use pitch diameters for V-belts: the answer is then the pitch length, which the belt's maker converts to the number
 * on the belt.
 *
 * @customfunction BELTLENGTH
 * @returns Inches
 * @example =BOLE.BELTLENGTH(18, 6, 96) gives 230.074
 * @example =BOLE.BELTLENGTH(640, 480, 3000, TRUE) gives 7864
 * @example =BOLE.BELTLENGTH(18, 6, 10) gives #N/A
 * @caution Guard every belt and pulley, and lock out the power before hands go near them.
 * @see BELTCENTERS
 * @words v-belt length, belt size, what belt to buy, drive belt, pitch length
 * @picture belt
 */
export const BELTLENGTH = spread(
  {
    /** Diameter of one pulley. */
    pulley1In: inches,
    /** Diameter of the other pulley. */
    pulley2In: inches,
    /** Distance between the shafts' centers. */
    centersIn: inches,
    /** TRUE or yes for a belt that crosses itself; no for an open one. */
    crossed: yesNo,
  },
  beltLengthIn,
);

/**
 * Distance between shafts at which a belt is tight on two pulleys.
 *
 * The exact inverse of BELTLENGTH for an open belt. Leave room to slip the belt on and to take up stretch.
 *
 * @customfunction BELTCENTERS
 * @returns Inches
 * @example =BOLE.BELTCENTERS(21.1, 12.4, 100) gives 23.28
 * @example =BOLE.BELTCENTERS(18, 6, 50) gives #N/A
 * @caution Guard every belt and pulley, and lock out the power before hands go near them.
 * @see BELTLENGTH
 * @words center distance, where to put the motor, shaft spacing, motor mount slot, belt fits
 * @picture belt
 */
export const BELTCENTERS = spread(
  {
    /** Diameter of one pulley. */
    pulley1In: inches,
    /** Diameter of the other pulley. */
    pulley2In: inches,
    /** Length of the belt: its pitch length with pitch diameters. */
    beltIn: inches,
  },
  beltCentersIn,
);

/**
 * Degrees of the small pulley that an open belt touches.
 *
 * A belt grips by its wrap: the less of it, the less the belt can pull. A belt's maker says how far to rate it down.
 *
 * @customfunction BELTWRAP
 * @returns Degrees
 * @example =BOLE.BELTWRAP(21.1, 12.4, 23.3) gives 158.5
 * @example =BOLE.BELTWRAP(21.1, 12.4, 16) gives #N/A
 * @caution Guard every belt and pulley, and lock out the power before hands go near them.
 * @see BELTLENGTH
 * @words arc of contact, belt slipping, belt grip
 * @picture belt
 */
export const BELTWRAP = spread(
  {
    /** Diameter of one pulley. */
    pulley1In: inches,
    /** Diameter of the other pulley. */
    pulley2In: inches,
    /** Distance between the shafts' centers. */
    centersIn: inches,
  },
  beltWrapDegrees,
);

/**
 * Length of band that goes over two wheels.
 *
 * Measure the centers with the tension slide where it stands when the band is strained.
 *
 * @customfunction BANDLENGTH
 * @returns Inches
 * @example =BOLE.BANDLENGTH(36, 36, 100) gives 313.1
 * @example =BOLE.BANDLENGTH(36, 36, 30) gives #N/A
 * @caution Lock out the power and wear gloves before a band is fitted; guard it again before it runs.
 * @words blade length, how long a blade, order a blade, band size, weld a blade, coil stock
 * @picture band
 */
export const BANDLENGTH = spread(
  {
    /** Diameter of one wheel. */
    wheel1In: inches,
    /** Diameter of the other wheel. */
    wheel2In: inches,
    /** Distance between the wheels' centers. */
    centersIn: inches,
  },
  bandLengthIn,
);
