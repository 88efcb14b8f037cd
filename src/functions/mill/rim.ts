import { feetPerMinute, inches, number } from "../../cells/read";
import { spread } from "../../cells/spread";
import { rimRpm, rimSpeedFpm, rimStressPsi } from "../../math/mill/rim";

/**
 * Speed of a rim, a band or a belt.
 *
 * No rule was found that puts a number to the speed of a band wheel: OSHA's sawmill rule (29 CFR 1910.265(e)(2)(i),
 * seen in a copy) and Washington's say never above the maker's. The 10,000 ft/min of a Pennsylvania rule are for
 * circular saws.
 *
 * @customfunction RIMSPEED
 * @returns Feet per minute
 * @example =BOLE.RIMSPEED(36, 530) gives 4995
 * @example =BOLE.RIMSPEED(36, "fast") gives #VALUE!
 * @caution No rule sets a safe band speed: the makers of the wheel and of the blade do. Never run above either.
 * @see RIMRPM
 * @words band speed, blade speed, how fast is the blade, feet per minute, fpm, sfpm, surface speed, tire speed
 * @picture rim
 */
export const RIMSPEED = spread(
  {
    /** Diameter of the wheel or pulley. */
    diameterIn: inches,
    /** Turns per minute. */
    rpm: number,
  },
  rimSpeedFpm,
);

/**
 * Turns per minute of a wheel for a wanted rim or band speed.
 *
 * Give it the lower of the blade maker's and the wheel maker's speed and it answers the most turns that wheel may make.
 *
 * @customfunction RIMRPM
 * @returns Turns per minute
 * @example =BOLE.RIMRPM(36, 5000) gives 530.5
 * @example =BOLE.RIMRPM("36,5", 5000) gives #VALUE!
 * @caution No rule sets a safe band speed: the makers of the wheel and of the blade do. Never run above either.
 * @see RIMSPEED
 * @words wheel rpm, wheel turns, how fast to turn the wheel, rpm for blade speed
 * @picture rim
 */
export const RIMRPM = spread(
  {
    /** Diameter of the wheel or pulley. */
    diameterIn: inches,
    /** Speed wanted at the rim. */
    speedFpm: feetPerMinute,
  },
  rimRpm,
);

/**
 * Hoop stress in a spinning steel rim.
 *
 * A thin sound ring, no more: spokes, welds, holes, castings and cracks all make it worse, and no safe speed for a band
 * wheel was found in any rule. Doubling the speed makes four times the stress. Washington State takes a cracked wheel
 * out of use at once, and a head band wheel whose rim is under 5/8 in (WAC 296-79-27005).
 *
 * @customfunction RIMSTRESS
 * @returns psi
 * @example =BOLE.RIMSTRESS(36, 530) gives 733
 * @example =BOLE.RIMSTRESS(36, "flat out") gives #VALUE!
 * @caution Only the wheel's maker can give a safe speed; never run above it. A cracked rim comes out of service at once.
 * @see RIMSPEED
 * @words wheel bursts, flywheel, wheel safe speed
 * @picture rim
 */
export const RIMSTRESS = spread(
  {
    /** Mean diameter of the rim. */
    diameterIn: inches,
    /** Turns per minute. */
    rpm: number,
  },
  rimStressPsi,
);
