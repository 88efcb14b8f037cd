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
 * @param pulley1 Diameter of one pulley. A bare number is inches; 150 mm works too.
 * @param pulley2 Diameter of the other pulley. A bare number is inches.
 * @param centers Distance between the shafts' centers. A bare number is inches.
 * @param [crossed] TRUE or yes for a belt that crosses itself; open when left out.
 * @returns Inches
 * @example =BOLE.BELTLENGTH(18, 6, 96) gives 230.074
 * @example =BOLE.BELTLENGTH(640, 480, 3000, TRUE) gives 7864
 * @example =BOLE.BELTLENGTH(18, 6, 10) gives #N/A
 * @caution Guard every belt and pulley, and lock out the power before hands go near them.
 * @see BELTCENTERS
 * @words v-belt length, belt size, what belt to buy, drive belt, pitch length
 * @picture belt
 */
export function BELTLENGTH(
  pulley1: unknown[][],
  pulley2: unknown[][],
  centers: unknown[][],
  crossed?: unknown[][],
): unknown[][] {
  return spread(
    {
      pulley1In: inches(pulley1, "pulley1"),
      pulley2In: inches(pulley2, "pulley2"),
      centersIn: inches(centers, "centers"),
      crossed: yesNo(crossed, "crossed"),
    },
    beltLengthIn,
  );
}

/**
 * Distance between shafts at which a belt is tight on two pulleys.
 *
 * The exact inverse of BELTLENGTH for an open belt. Leave room to slip the belt on and to take up stretch.
 *
 * @customfunction BELTCENTERS
 * @param pulley1 Diameter of one pulley. A bare number is inches; 150 mm works too.
 * @param pulley2 Diameter of the other pulley. A bare number is inches.
 * @param belt Length of the belt: its pitch length with pitch diameters. A bare number is inches.
 * @returns Inches
 * @example =BOLE.BELTCENTERS(21.1, 12.4, 100) gives 23.28
 * @example =BOLE.BELTCENTERS(18, 6, 50) gives #N/A
 * @caution Guard every belt and pulley, and lock out the power before hands go near them.
 * @see BELTLENGTH
 * @words center distance, where to put the motor, shaft spacing, motor mount slot, belt fits
 * @picture belt
 */
export function BELTCENTERS(pulley1: unknown[][], pulley2: unknown[][], belt: unknown[][]): unknown[][] {
  return spread(
    {
      pulley1In: inches(pulley1, "pulley1"),
      pulley2In: inches(pulley2, "pulley2"),
      beltIn: inches(belt, "belt"),
    },
    beltCentersIn,
  );
}

/**
 * Degrees of the small pulley that an open belt touches.
 *
 * A belt grips by its wrap: the less of it, the less the belt can pull. A belt's maker says how far to rate it down.
 *
 * @customfunction BELTWRAP
 * @param pulley1 Diameter of one pulley. A bare number is inches; 150 mm works too.
 * @param pulley2 Diameter of the other pulley. A bare number is inches.
 * @param centers Distance between the shafts' centers. A bare number is inches.
 * @returns Degrees
 * @example =BOLE.BELTWRAP(21.1, 12.4, 23.3) gives 158.5
 * @example =BOLE.BELTWRAP(21.1, 12.4, 16) gives #N/A
 * @caution Guard every belt and pulley, and lock out the power before hands go near them.
 * @see BELTLENGTH
 * @words arc of contact, belt slipping, belt grip
 * @picture belt
 */
export function BELTWRAP(pulley1: unknown[][], pulley2: unknown[][], centers: unknown[][]): unknown[][] {
  return spread(
    {
      pulley1In: inches(pulley1, "pulley1"),
      pulley2In: inches(pulley2, "pulley2"),
      centersIn: inches(centers, "centers"),
    },
    beltWrapDegrees,
  );
}

/**
 * Length of band that goes over two wheels.
 *
 * Measure the centers with the tension slide where it stands when the band is strained.
 *
 * @customfunction BANDLENGTH
 * @param wheel1 Diameter of one wheel. A bare number is inches; 900 mm works too.
 * @param wheel2 Diameter of the other wheel. A bare number is inches.
 * @param centers Distance between the wheels' centers. A bare number is inches.
 * @returns Inches
 * @example =BOLE.BANDLENGTH(36, 36, 100) gives 313.1
 * @example =BOLE.BANDLENGTH(36, 36, 30) gives #N/A
 * @caution Lock out the power and wear gloves before a band is fitted; guard it again before it runs.
 * @words blade length, how long a blade, order a blade, band size, weld a blade, coil stock
 * @picture band
 */
export function BANDLENGTH(wheel1: unknown[][], wheel2: unknown[][], centers: unknown[][]): unknown[][] {
  return spread(
    {
      wheel1In: inches(wheel1, "wheel1"),
      wheel2In: inches(wheel2, "wheel2"),
      centersIn: inches(centers, "centers"),
    },
    bandLengthIn,
  );
}
