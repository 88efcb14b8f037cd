import { inches, named, number, optional, percent, rows } from "../../cells/read";
import { spread } from "../../cells/spread";
import { pulleyRpm, pulleySizeIn, pulleyTrainRpm } from "../../math/mill/pulleys";

/**
 * Speed of the driven pulley of a belt drive.
 *
 * Use pitch diameters for V-belts. For a flat belt add its thickness to each pulley. A V-belt slips by 1 to 2 % at full
 * load (from memory).
 *
 * @customfunction PULLEYRPM
 * @returns Turns per minute
 * @example =BOLE.PULLEYRPM(1160, 12.4, 21.1) gives 682
 * @example =BOLE.PULLEYRPM(1750, 6, 12, "2%") gives 857.5
 * @example =BOLE.PULLEYRPM(1750, 6, 12, 100) gives #N/A
 * @caution Wheel, blade and pulley makers limit the speed: never run above it. Guard every pulley, lock out before work.
 * @see PULLEYSIZE
 * @words sheave ratio, rpm of the wheel, belt drive speed, how fast does it turn, pulley speed
 * @picture pulleys
 */
export const PULLEYRPM = spread(
  {
    /** Speed of the driving pulley, turns per minute. */
    rpm: number,
    /** Diameter of the driving pulley. */
    driverIn: inches,
    /** Diameter of the driven pulley. */
    drivenIn: inches,
    /** Slip of the belt, up to 20 %: one percent is 1%, not 1. */
    slipPercent: optional(percent, 0),
  },
  pulleyRpm,
);

/**
 * Diameter of the driven pulley for a wanted speed.
 *
 * The answer is a pitch diameter for a V-belt. Take the nearest pulley that is made and ask PULLEYRPM what it gives.
 *
 * @customfunction PULLEYSIZE
 * @returns Inches
 * @example =BOLE.PULLEYSIZE(200, 60, 300) gives 40
 * @example =BOLE.PULLEYSIZE(1750, 6, 500, 100) gives #N/A
 * @caution Wheel, blade and pulley makers limit the speed: never run above it. Guard every pulley, lock out before work.
 * @see PULLEYRPM
 * @words what sheave do I need, pulley diameter, change the speed, slow the blade, speed up, bigger pulley
 * @picture pulleys
 */
export const PULLEYSIZE = spread(
  {
    /** Speed of the driving pulley, turns per minute. */
    rpm: number,
    /** Diameter of the driving pulley. */
    driverIn: inches,
    /** Speed wanted of the driven pulley, turns per minute. */
    wantedRpm: number,
    /** Slip of the belt, up to 20 %: one percent is 1%, not 1. */
    slipPercent: optional(percent, 0),
  },
  pulleySizeIn,
);

/**
 * Speed at the end of several belt drives, one after another.
 *
 * Each row is one drive, from the motor on. The slip is that of each belt, not of all together.
 *
 * @customfunction PULLEYTRAIN
 * @returns Turns per minute
 * @example =BOLE.PULLEYTRAIN(150, {750;900}, {450;150}) gives 1500
 * @example =BOLE.PULLEYTRAIN(150, {750;900}, {450;150}, "2%") gives 1440.6
 * @example =BOLE.PULLEYTRAIN(150, {750;900}, {450;0}) gives #VALUE!
 * @caution Wheel, blade and pulley makers limit the speed: never run above it. Guard every pulley, lock out before work.
 * @see PULLEYRPM
 * @words jackshaft, two stage reduction, countershaft, several pulleys, compound drive, sheaves in a row
 * @picture train
 */
export const PULLEYTRAIN = spread(
  {
    /** Speed of the first driving pulley, turns per minute. */
    rpm: number,
    drives: rows({
      /** Diameters of the driving pulleys, a list. */
      driverIn: named("drivers", inches),
      /** Diameters of the driven pulleys, a list as long. */
      drivenIn: named("drivens", inches),
    }),
    /** Slip of each belt, up to 20 %: one percent is 1%, not 1. */
    slipPercent: optional(percent, 0),
  },
  pulleyTrainRpm,
);
