import { count, feetPerMinute, inches, number, optional, percent } from "../../cells/read";
import { spread } from "../../cells/spread";
import { driveHertz, motorRpm, MAINS_HERTZ } from "../../math/mill/motor";

/**
 * Speed of an induction motor on a frequency drive.
 *
 * The slip in turns per minute is read off the nameplate and kept the same at every frequency, as it is under a steady
 * torque such as a saw's. Without a nameplate speed the answer is the synchronous speed, which a loaded motor never
 * reaches. Above the base frequency a motor's torque falls.
 *
 * @customfunction MOTORRPM
 * @returns Turns per minute
 * @example =BOLE.MOTORRPM(40, 4) gives 1200
 * @example =BOLE.MOTORRPM(40, 4, 1750) gives 1150
 * @example =BOLE.MOTORRPM(60, 3) gives #N/A
 * @caution Drives and motors are work for a licensed electrician; keep within the makers' range of frequency.
 * @see DRIVEHERTZ
 * @words vfd speed, variable frequency drive, inverter, hertz to rpm, motor slip, nameplate rpm, poles
 */
export const MOTORRPM = spread(
  {
    /** Frequency that the drive puts out. */
    hertz: number,
    /** Poles of the motor: 2, 4, 6 or 8. */
    poles: count,
    /** Speed on the nameplate, turns per minute. */
    nameplateRpm: optional(number),
    /** Frequency on the nameplate, so give 50 for a motor made for 50. */
    baseHertz: optional(number, MAINS_HERTZ),
  },
  motorRpm,
);

/**
 * Drive frequency for a wanted band speed.
 *
 * The motor's slip in turns per minute is read off its plate; the belt slips besides: give its slip as PULLEYRPM is given it,
 * and check the wheel with a tachometer. Above the frequency on the plate a motor's power stays about the same and its torque falls.
 *
 * @customfunction DRIVEHERTZ
 * @returns Hertz
 * @example =BOLE.DRIVEHERTZ(5000, 36, 6, 18, 4, 1750) gives 54.72
 * @example =BOLE.DRIVEHERTZ(5000, 36, 6, 18, 4, 1750, 60, "2%") gives 55.80
 * @example =BOLE.DRIVEHERTZ(5000, 36, 6, 18, 5) gives #N/A
 * @caution Wheel, blade, motor and drive makers limit speed and frequency: never above. Wiring is licensed work.
 * @see MOTORRPM
 * @words what hertz to set, vfd setting, inverter frequency, slow the blade
 * @picture drive
 */
export const DRIVEHERTZ = spread(
  {
    /** Band speed wanted. */
    speedFpm: feetPerMinute,
    /** Diameter of the driven band wheel. */
    wheelIn: inches,
    /** Pulley on the motor. */
    driverIn: inches,
    /** Pulley on the wheel's shaft. */
    drivenIn: inches,
    /** Poles of the motor: 2, 4, 6 or 8. */
    poles: count,
    /** Speed on the nameplate, turns per minute; no slip when left out. */
    nameplateRpm: optional(number),
    /** Frequency on the nameplate, so give 50 for a motor made for 50. */
    baseHertz: optional(number, MAINS_HERTZ),
    /** Slip of the belt, up to 20 %: one percent is 1%, not 1. */
    slipPercent: optional(percent, 0),
  },
  driveHertz,
);
