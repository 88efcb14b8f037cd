import {
  count,
  feet,
  feetPerMinute,
  horsepower,
  inches,
  mayBeNegative,
  number,
  oneOf,
  optional,
  percent,
  pounds,
  poundsForce,
  psi,
  rows,
  yesNo,
} from "../cells/read";
import { spread } from "../cells/spread";
import {
  bandBendingPsi,
  bandCentrifugalPsi,
  bandHeatingPsi,
  bandStrainLbf,
  bandStressPsi,
  bandStretchIn,
} from "../math/mill/band";
import { bandLengthIn, beltCentersIn, beltLengthIn, beltWrapDegrees } from "../math/mill/belt";
import { chainCentersIn, chainLinks, chainSpeedFpm } from "../math/mill/chain";
import { driveHertz, motorRpm } from "../math/mill/motor";
import { motorAmps, sawPowerHp, torqueLbfFt } from "../math/mill/power";
import { pulleyRpm, pulleySizeIn, pulleyTrainRpm, rimRpm, rimSpeedFpm } from "../math/mill/pulleys";
import { ramForceLbf, ramPressurePsi } from "../math/mill/ram";
import { rimStressPsi } from "../math/mill/rim";
import { screwHolds, screwPowerHp, screwRiseIn, screwTorqueLbfIn } from "../math/mill/screw";
import { feedForBiteFpm, gulletFillShare, toothBiteIn } from "../math/mill/tooth";
import { tubeSagIn, tubeWeightLb } from "../math/mill/tube";

/**
 * Speed of the driven pulley of a belt drive.
 *
 * Use pitch diameters for V-belts. For a flat belt add its thickness to each pulley. A V-belt slips by 1 to 2 % at full
 * load (from memory).
 *
 * @customfunction PULLEYRPM
 * @param rpm Speed of the driving pulley, turns per minute.
 * @param driver Diameter of the driving pulley. A bare number is inches; 150 mm works too.
 * @param driven Diameter of the driven pulley. A bare number is inches.
 * @param [slip] Slip of the belt in percent, up to 20: 2 or 2%; one percent is 1%, not 1. None when left out.
 * @returns Turns per minute
 * @example =BOLE.PULLEYRPM(1160, 12.4, 21.1) gives 682
 * @example =BOLE.PULLEYRPM(1750, 6, 12, "2%") gives 857.5
 * @example =BOLE.PULLEYRPM(1750, 6, 12, 100) gives #N/A
 * @caution Wheel, blade and pulley makers limit the speed: never run above it. Guard every pulley, lock out before work.
 * @see PULLEYSIZE
 * @words sheave ratio, rpm of the wheel, belt drive speed, how fast does it turn, pulley speed
 * @picture pulleys
 */
export function PULLEYRPM(rpm: unknown[][], driver: unknown[][], driven: unknown[][], slip?: unknown[][]): unknown[][] {
  return spread(
    {
      rpm: number(rpm, "rpm"),
      driverIn: inches(driver, "driver"),
      drivenIn: inches(driven, "driven"),
      slipPercent: optional(percent(slip, "slip")),
    },
    pulleyRpm,
  );
}

/**
 * Diameter of the driven pulley for a wanted speed.
 *
 * The answer is a pitch diameter for a V-belt. Take the nearest pulley that is made and ask PULLEYRPM what it gives.
 *
 * @customfunction PULLEYSIZE
 * @param rpm Speed of the driving pulley, turns per minute.
 * @param driver Diameter of the driving pulley. A bare number is inches; 150 mm works too.
 * @param wanted Speed wanted of the driven pulley, turns per minute.
 * @param [slip] Slip of the belt in percent, up to 20: 2 or 2%; one percent is 1%, not 1. None when left out.
 * @returns Inches
 * @example =BOLE.PULLEYSIZE(200, 60, 300) gives 40
 * @example =BOLE.PULLEYSIZE(1750, 6, 500, 100) gives #N/A
 * @caution Wheel, blade and pulley makers limit the speed: never run above it. Guard every pulley, lock out before work.
 * @see PULLEYRPM
 * @words what sheave do I need, pulley diameter, change the speed, slow the blade, speed up, bigger pulley
 * @picture pulleys
 */
export function PULLEYSIZE(
  rpm: unknown[][],
  driver: unknown[][],
  wanted: unknown[][],
  slip?: unknown[][],
): unknown[][] {
  return spread(
    {
      rpm: number(rpm, "rpm"),
      driverIn: inches(driver, "driver"),
      wantedRpm: number(wanted, "wanted"),
      slipPercent: optional(percent(slip, "slip")),
    },
    pulleySizeIn,
  );
}

/**
 * Speed at the end of several belt drives, one after another.
 *
 * Each row is one drive, from the motor on. The slip is that of each belt, not of all together.
 *
 * @customfunction PULLEYTRAIN
 * @param rpm Speed of the first driving pulley, turns per minute.
 * @param drivers Diameters of the driving pulleys, a list. Bare numbers are inches.
 * @param drivens Diameters of the driven pulleys, a list as long. Bare numbers are inches.
 * @param [slip] Slip of each belt in percent, up to 20: 2 or 2%; one percent is 1%, not 1. None when left out.
 * @returns Turns per minute
 * @example =BOLE.PULLEYTRAIN(150, {750;900}, {450;150}) gives 1500
 * @example =BOLE.PULLEYTRAIN(150, {750;900}, {450;150}, "2%") gives 1440.6
 * @example =BOLE.PULLEYTRAIN(150, {750;900}, {450;0}) gives #VALUE!
 * @caution Wheel, blade and pulley makers limit the speed: never run above it. Guard every pulley, lock out before work.
 * @see PULLEYRPM
 * @words jackshaft, two stage reduction, countershaft, several pulleys, compound drive, sheaves in a row
 * @picture train
 */
export function PULLEYTRAIN(
  rpm: unknown[][],
  drivers: unknown[][],
  drivens: unknown[][],
  slip?: unknown[][],
): unknown[][] {
  return spread(
    {
      rpm: number(rpm, "rpm"),
      drives: rows({ driverIn: inches(drivers, "drivers"), drivenIn: inches(drivens, "drivens") }),
      slipPercent: optional(percent(slip, "slip")),
    },
    pulleyTrainRpm,
  );
}

/**
 * Speed of an induction motor on a frequency drive.
 *
 * The slip in turns per minute is read off the nameplate and kept the same at every frequency, as it is under a steady
 * torque such as a saw's. Without a nameplate speed the answer is the synchronous speed, which a loaded motor never
 * reaches. Above the base frequency a motor's torque falls.
 *
 * @customfunction MOTORRPM
 * @param hertz Frequency that the drive puts out.
 * @param poles Poles of the motor: 2, 4, 6 or 8.
 * @param [nameplate] Speed on the nameplate, turns per minute.
 * @param [base] Frequency on the nameplate; 60 when left out, so give 50 for a motor made for 50.
 * @returns Turns per minute
 * @example =BOLE.MOTORRPM(40, 4) gives 1200
 * @example =BOLE.MOTORRPM(40, 4, 1750) gives 1150
 * @example =BOLE.MOTORRPM(60, 3) gives #N/A
 * @caution Drives and motors are work for a licensed electrician; keep within the makers' range of frequency.
 * @see DRIVEHERTZ
 * @words vfd speed, variable frequency drive, inverter, hertz to rpm, motor slip, nameplate rpm, poles
 */
export function MOTORRPM(
  hertz: unknown[][],
  poles: unknown[][],
  nameplate?: unknown[][],
  base?: unknown[][],
): unknown[][] {
  return spread(
    {
      hertz: number(hertz, "hertz"),
      poles: count(poles, "poles"),
      nameplateRpm: optional(number(nameplate, "nameplate")),
      baseHertz: optional(number(base, "base")),
    },
    motorRpm,
  );
}

/**
 * Speed of a rim, a band or a belt.
 *
 * No rule was found that puts a number to the speed of a band wheel: OSHA's sawmill rule (29 CFR 1910.265(e)(2)(i),
 * seen in a copy) and Washington's say never above the maker's. The 10,000 ft/min of a Pennsylvania rule are for
 * circular saws.
 *
 * @customfunction RIMSPEED
 * @param diameter Diameter of the wheel or pulley. A bare number is inches; 900 mm works too.
 * @param rpm Turns per minute.
 * @returns Feet per minute
 * @example =BOLE.RIMSPEED(36, 530) gives 4995
 * @example =BOLE.RIMSPEED(36, "fast") gives #VALUE!
 * @caution No rule sets a safe band speed: the makers of the wheel and of the blade do. Never run above either.
 * @see RIMRPM
 * @words band speed, blade speed, how fast is the blade, feet per minute, fpm, sfpm, surface speed, tire speed
 * @picture rim
 */
export function RIMSPEED(diameter: unknown[][], rpm: unknown[][]): unknown[][] {
  return spread({ diameterIn: inches(diameter, "diameter"), rpm: number(rpm, "rpm") }, rimSpeedFpm);
}

/**
 * Turns per minute of a wheel for a wanted rim or band speed.
 *
 * Give it the lower of the blade maker's and the wheel maker's speed and it answers the most turns that wheel may make.
 *
 * @customfunction RIMRPM
 * @param diameter Diameter of the wheel or pulley. A bare number is inches; 900 mm works too.
 * @param speed Speed wanted at the rim. A bare number is feet per minute; 25 m/s works too.
 * @returns Turns per minute
 * @example =BOLE.RIMRPM(36, 5000) gives 530.5
 * @example =BOLE.RIMRPM("36,5", 5000) gives #VALUE!
 * @caution No rule sets a safe band speed: the makers of the wheel and of the blade do. Never run above either.
 * @see RIMSPEED
 * @words wheel rpm, wheel turns, how fast to turn the wheel, rpm for blade speed
 * @picture rim
 */
export function RIMRPM(diameter: unknown[][], speed: unknown[][]): unknown[][] {
  return spread({ diameterIn: inches(diameter, "diameter"), speedFpm: feetPerMinute(speed, "speed") }, rimRpm);
}

/**
 * Drive frequency for a wanted band speed.
 *
 * The motor's slip in turns per minute is read off its plate; the belt's slip is not in it, so check the wheel with a
 * tachometer. Above the frequency on the plate a motor's power stays about the same and its torque falls.
 *
 * @customfunction DRIVEHERTZ
 * @param speed Band speed wanted. A bare number is feet per minute; 25 m/s works too.
 * @param wheel Diameter of the driven band wheel. A bare number is inches.
 * @param driver Pulley on the motor. A bare number is inches.
 * @param driven Pulley on the wheel's shaft. A bare number is inches.
 * @param poles Poles of the motor: 2, 4, 6 or 8.
 * @param [nameplate] Speed on the nameplate, turns per minute; no slip when left out.
 * @param [base] Frequency on the nameplate; 60 when left out, so give 50 for a motor made for 50.
 * @returns Hertz
 * @example =BOLE.DRIVEHERTZ(5000, 36, 6, 18, 4, 1750) gives 54.72
 * @example =BOLE.DRIVEHERTZ(5000, 36, 6, 18, 5) gives #N/A
 * @caution Wheel, blade, motor and drive makers limit speed and frequency: never above. Wiring is licensed work.
 * @see MOTORRPM
 * @words what hertz to set, vfd setting, inverter frequency, slow the blade
 * @picture drive
 */
export function DRIVEHERTZ(
  speed: unknown[][],
  wheel: unknown[][],
  driver: unknown[][],
  driven: unknown[][],
  poles: unknown[][],
  nameplate?: unknown[][],
  base?: unknown[][],
): unknown[][] {
  return spread(
    {
      speedFpm: feetPerMinute(speed, "speed"),
      wheelIn: inches(wheel, "wheel"),
      driverIn: inches(driver, "driver"),
      drivenIn: inches(driven, "driven"),
      poles: count(poles, "poles"),
      nameplateRpm: optional(number(nameplate, "nameplate")),
      baseHertz: optional(number(base, "base")),
    },
    driveHertz,
  );
}

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

/**
 * Links of a roller chain over two sprockets.
 *
 * An even count joins without an offset link, the weak place of a chain. Usual centers are 30 to 50 pitches, and the
 * small sprocket wants at least 120 degrees of chain round it (Mott).
 *
 * @customfunction CHAINLINKS
 * @param teeth1 Teeth of one sprocket.
 * @param teeth2 Teeth of the other sprocket.
 * @param centers Distance between the shafts' centers. A bare number is inches; 400 mm works too.
 * @param pitch Pitch of the chain. A bare number is inches; 1/2 works too.
 * @param [rounding] even, up to an even count, when left out; none for the exact length in pitches.
 * @returns Links
 * @example =BOLE.CHAINLINKS(17, 65, 15, 0.5) gives 104
 * @example =BOLE.CHAINLINKS(17, 65, 15, 0.5, "none") gives 102.9
 * @example =BOLE.CHAINLINKS(17, 65, 6, 0.5) gives #N/A
 * @caution Guard every chain and sprocket, and lock out the power before hands go near them.
 * @see CHAINCENTERS
 * @words roller chain length, how many links, feed chain
 * @picture chain
 */
export function CHAINLINKS(
  teeth1: unknown[][],
  teeth2: unknown[][],
  centers: unknown[][],
  pitch: unknown[][],
  rounding?: unknown[][],
): unknown[][] {
  return spread(
    {
      teeth1: count(teeth1, "teeth1"),
      teeth2: count(teeth2, "teeth2"),
      centersIn: inches(centers, "centers"),
      pitchIn: inches(pitch, "pitch"),
      rounding: optional(oneOf({ even: [], none: [] }, rounding, "rounding")),
    },
    chainLinks,
  );
}

/**
 * Distance between shafts at which a chain of a count of links is tight.
 *
 * A chain wants a little slack: set the shafts a hair closer, or fit a take-up.
 *
 * @customfunction CHAINCENTERS
 * @param teeth1 Teeth of one sprocket.
 * @param teeth2 Teeth of the other sprocket.
 * @param links Links of the chain.
 * @param pitch Pitch of the chain. A bare number is inches; 1/2 works too.
 * @returns Inches
 * @example =BOLE.CHAINCENTERS(17, 65, 104, 0.5) gives 15.272
 * @example =BOLE.CHAINCENTERS(17, 65, 60, 0.5) gives #N/A
 * @caution Guard every chain and sprocket, and lock out the power before hands go near them.
 * @see CHAINLINKS
 * @words sprocket center distance, roller chain
 * @picture chain
 */
export function CHAINCENTERS(
  teeth1: unknown[][],
  teeth2: unknown[][],
  links: unknown[][],
  pitch: unknown[][],
): unknown[][] {
  return spread(
    {
      teeth1: count(teeth1, "teeth1"),
      teeth2: count(teeth2, "teeth2"),
      links: count(links, "links"),
      pitchIn: inches(pitch, "pitch"),
    },
    chainCentersIn,
  );
}

/**
 * Speed of a roller chain.
 *
 * Teeth times pitch is what a turn moves; the same for either sprocket of a pair.
 *
 * @customfunction CHAINSPEED
 * @param teeth Teeth of a sprocket.
 * @param pitch Pitch of the chain. A bare number is inches; 1/2 works too.
 * @param rpm Speed of that sprocket, turns per minute.
 * @returns Feet per minute
 * @example =BOLE.CHAINSPEED(18, 0.5, 60) gives 45
 * @example =BOLE.CHAINSPEED(17.5, 0.5, 60) gives #VALUE!
 * @caution Guard every chain and sprocket, and lock out the power before hands go near them.
 * @words feed speed of a chain, conveyor speed, log deck chain
 */
export function CHAINSPEED(teeth: unknown[][], pitch: unknown[][], rpm: unknown[][]): unknown[][] {
  return spread(
    { teeth: count(teeth, "teeth"), pitchIn: inches(pitch, "pitch"), rpm: number(rpm, "rpm") },
    chainSpeedFpm,
  );
}

/**
 * How far a lift screw raises its nut.
 *
 * Four turns an inch is a pitch of 1/4. A screw with two threads side by side, two starts, rises twice its pitch a
 * turn.
 *
 * @customfunction SCREWRISE
 * @param turns Turns of the screw; minus to come down.
 * @param pitch Pitch of the thread. A bare number is inches; 1/4 and 6 mm work too.
 * @param [starts] Threads side by side; 1 when left out.
 * @returns Inches
 * @example =BOLE.SCREWRISE(10, 0.25) gives 2.5
 * @example =BOLE.SCREWRISE(10, 0.25, 1.5) gives #VALUE!
 * @caution Never under a head that only a screw holds up: block it, and lock out the power.
 * @words head height per turn, crank turns, acme screw, lead, threads per inch, raise the head
 * @picture screw
 */
export function SCREWRISE(turns: unknown[][], pitch: unknown[][], starts?: unknown[][]): unknown[][] {
  return spread(
    {
      turns: mayBeNegative(number(turns, "turns")),
      pitchIn: inches(pitch, "pitch"),
      starts: optional(count(starts, "starts")),
    },
    screwRiseIn,
  );
}

/**
 * Torque that raises or lowers a load on a lift screw.
 *
 * A square thread with friction; the thrust bearing is not in it. For an Acme thread divide the friction by 0.968, the
 * cosine of half its angle. Below zero, lowering, the load runs down by itself. Two screws bear half the load each only
 * when they are tied to turn together.
 *
 * @customfunction SCREWTORQUE
 * @param load Load on the screw. A bare number is pounds; 400 kg works too.
 * @param diameter Outside diameter of the thread. A bare number is inches.
 * @param pitch Pitch of the thread. A bare number is inches; 1/4 and 6 mm work too.
 * @param [starts] Threads side by side; 1 when left out.
 * @param [friction] Friction in the thread; 0.15, a greased steel screw, when left out (common practice). 15% works too.
 * @param [direction] up, when left out, or down.
 * @returns Pound-force inches
 * @example =BOLE.SCREWTORQUE(10000, 2.25, 0.5, 1, 0.2) gives 2841
 * @example =BOLE.SCREWTORQUE(1000, 1, 0.2, 1, 0.15, "down") gives 35.3
 * @example =BOLE.SCREWTORQUE(1000, 1, 0.9, 4, 0.6) gives #N/A
 * @caution Friction is a guess until measured. Never under a head that only a screw holds; keep to the screw maker's load.
 * @see SCREWHOLDS
 * @words lift screw, jack screw, acme, leadscrew, how hard to crank, raise the head, winch the head
 * @picture screw
 */
export function SCREWTORQUE(
  load: unknown[][],
  diameter: unknown[][],
  pitch: unknown[][],
  starts?: unknown[][],
  friction?: unknown[][],
  direction?: unknown[][],
): unknown[][] {
  return spread(
    {
      loadLb: pounds(load, "load"),
      diameterIn: inches(diameter, "diameter"),
      pitchIn: inches(pitch, "pitch"),
      starts: optional(count(starts, "starts")),
      friction: optional(number(friction, "friction")),
      direction: optional(oneOf({ up: ["raise"], down: ["lower"] }, direction, "direction")),
    },
    screwTorqueLbfIn,
  );
}

/**
 * Power that raises a load on a lift screw.
 *
 * The thread alone: thrust bearing, gears and starting want more.
 *
 * @customfunction SCREWPOWER
 * @param load Load on the screw. A bare number is pounds; 400 kg works too.
 * @param rise Speed of the rise, inches per minute.
 * @param diameter Outside diameter of the thread. A bare number is inches.
 * @param pitch Pitch of the thread. A bare number is inches; 1/4 and 6 mm work too.
 * @param [starts] Threads side by side; 1 when left out.
 * @param [friction] Friction in the thread; 0.15, a greased steel screw, when left out (common practice). 15% works too.
 * @returns Horsepower
 * @example =BOLE.SCREWPOWER(1000, 60, 1, 0.2) gives 0.478
 * @example =BOLE.SCREWPOWER(1000, 60, 1, 1) gives #N/A
 * @caution Friction is a guess until measured. Never under a head that only a screw holds; keep to the screw maker's load.
 * @see SCREWTORQUE
 * @words lift motor size, head raise motor, up-down motor
 * @picture screw
 */
export function SCREWPOWER(
  load: unknown[][],
  rise: unknown[][],
  diameter: unknown[][],
  pitch: unknown[][],
  starts?: unknown[][],
  friction?: unknown[][],
): unknown[][] {
  return spread(
    {
      loadLb: pounds(load, "load"),
      riseInPerMin: number(rise, "rise"),
      diameterIn: inches(diameter, "diameter"),
      pitchIn: inches(pitch, "pitch"),
      starts: optional(count(starts, "starts")),
      friction: optional(number(friction, "friction")),
    },
    screwPowerHp,
  );
}

/**
 * Whether a lift screw holds its load by itself when nothing turns it.
 *
 * The thread alone, standing still. Vibration can set down a load that a screw holds at rest: fit a brake. Grease
 * lowers the friction, so try 0.10 too (from memory).
 *
 * @customfunction SCREWHOLDS
 * @param diameter Outside diameter of the thread. A bare number is inches.
 * @param pitch Pitch of the thread. A bare number is inches; 1/4 and 6 mm work too.
 * @param [starts] Threads side by side; 1 when left out.
 * @param [friction] Friction in the thread; 0.15, a greased steel screw, when left out (common practice). 15% works too.
 * @returns TRUE or FALSE
 * @example =BOLE.SCREWHOLDS(1, 0.2) gives TRUE
 * @example =BOLE.SCREWHOLDS(1, 0.2, 4) gives FALSE
 * @example =BOLE.SCREWHOLDS(1, 2) gives #N/A
 * @caution A saw shakes: a screw that holds at rest may creep. Fit a brake, block the head, never work under it.
 * @see SCREWTORQUE
 * @words self-locking, will the head drift down, head falls
 * @picture screw
 */
export function SCREWHOLDS(
  diameter: unknown[][],
  pitch: unknown[][],
  starts?: unknown[][],
  friction?: unknown[][],
): unknown[][] {
  return spread(
    {
      diameterIn: inches(diameter, "diameter"),
      pitchIn: inches(pitch, "pitch"),
      starts: optional(count(starts, "starts")),
      friction: optional(number(friction, "friction")),
    },
    screwHolds,
  );
}

/**
 * Pull on the wheel that strains a band to a stress.
 *
 * Both strands pull. Use the width behind the gullets, where the stress is. No published figure for a sawmill band was
 * found: the stress to set comes from the blade's maker. OSHA (29 CFR 1910.213(i)(2), seen in a copy) asks that a band
 * saw shows its tension.
 *
 * @customfunction BANDSTRAIN
 * @param width Width of the band behind the gullets. A bare number is inches; 32 mm works too.
 * @param thickness Thickness of the band. A bare number is inches; 1.1 mm works too.
 * @param stress Stress the blade's maker asks for. A bare number is psi; 100 MPa works too.
 * @returns Pounds of force
 * @example =BOLE.BANDSTRAIN(1.25, 0.045, 15000) gives 1687.5
 * @example =BOLE.BANDSTRAIN(1.25, "thin", 15000) gives #VALUE!
 * @caution The makers of blade and mill limit the strain: never above. A band that lets go kills; stand clear, guards shut.
 * @see BANDSTRESS
 * @words blade tension, how tight, how much tension, strain the blade, tension wheel, pull on the wheel
 * @picture strain
 */
export function BANDSTRAIN(width: unknown[][], thickness: unknown[][], stress: unknown[][]): unknown[][] {
  return spread(
    {
      widthIn: inches(width, "width"),
      thicknessIn: inches(thickness, "thickness"),
      stressPsi: psi(stress, "stress"),
    },
    bandStrainLbf,
  );
}

/**
 * Stress in a band from the pull on its wheel.
 *
 * Pull alone: bending round the wheel, speed and warming add theirs. With the full width instead of the width behind
 * the gullets the answer is too low. A pull of 2,500 lbf on a 1 1/2 in band is common practice, no source.
 *
 * @customfunction BANDSTRESS
 * @param strain Pull on the wheel, both strands together. A bare number is pounds; 11 kN works too.
 * @param width Width of the band behind the gullets. A bare number is inches; 32 mm works too.
 * @param thickness Thickness of the band. A bare number is inches; 1.1 mm works too.
 * @returns psi
 * @example =BOLE.BANDSTRESS(2500, 1.5, 0.045) gives 18519
 * @example =BOLE.BANDSTRESS(2500, 1.5, -0.045) gives #VALUE!
 * @caution The makers of blade and mill limit the strain: never above. A band that lets go kills; stand clear, guards shut.
 * @see BANDSTRAIN
 * @words blade tension, psi in the blade, is it too tight, tension stress
 * @picture strain
 */
export function BANDSTRESS(strain: unknown[][], width: unknown[][], thickness: unknown[][]): unknown[][] {
  return spread(
    {
      strainLbf: poundsForce(strain, "strain"),
      widthIn: inches(width, "width"),
      thicknessIn: inches(thickness, "thickness"),
    },
    bandStressPsi,
  );
}

/**
 * How much a gauge length of band stretches under a stress.
 *
 * Clamp a gauge to the slack band, strain it and read the growth: 0.001 in on 5 in is 6,000 psi.
 *
 * @customfunction BANDSTRETCH
 * @param stress Stress in the band. A bare number is psi; 100 MPa works too.
 * @param gauge Length the gauge is clamped on. A bare number is inches.
 * @param [modulus] Stiffness of the steel. A bare number is psi; 30,000,000 when left out.
 * @returns Inches
 * @example =BOLE.BANDSTRETCH(6000, 5) gives 0.001
 * @example =BOLE.BANDSTRETCH(6000, "5,0") gives #VALUE!
 * @caution Gauge the band standing still and locked out. The makers of blade and mill limit the strain: never above.
 * @see BANDSTRAIN
 * @words tension gauge, strain gauge, dial indicator on the blade
 * @picture stretch
 */
export function BANDSTRETCH(stress: unknown[][], gauge: unknown[][], modulus?: unknown[][]): unknown[][] {
  return spread(
    {
      stressPsi: psi(stress, "stress"),
      gaugeIn: inches(gauge, "gauge"),
      modulusPsi: optional(psi(modulus, "modulus")),
    },
    bandStretchIn,
  );
}

/**
 * Stress at the face of a band from bending round its wheel.
 *
 * It comes and goes twice in each turn of the band, which is what cracks it. The rule of a wheel of 1,000
 * thicknesses of band (from memory) makes it 30,000 psi. A wide thin band may carry a tenth more (from memory). A crack over a
 * tenth of the width takes a band out of service (29 CFR 1910.265(e)(2)(i), seen in a copy).
 *
 * @customfunction BANDBENDING
 * @param thickness Thickness of the band. A bare number is inches; 1.1 mm works too.
 * @param wheel Diameter of the smaller wheel. A bare number is inches; 900 mm works too.
 * @param [modulus] Stiffness of the steel. A bare number is psi; 30,000,000 when left out.
 * @returns psi
 * @example =BOLE.BANDBENDING(0.042, 36) gives 34959
 * @example =BOLE.BANDBENDING(0.042, "large") gives #VALUE!
 * @caution Blade and wheel makers say which thickness goes on which wheel. A cracked band comes off at once.
 * @see BANDSTRESS
 * @words blade cracking, blade breaks, thick blade small wheel
 * @picture bending
 */
export function BANDBENDING(thickness: unknown[][], wheel: unknown[][], modulus?: unknown[][]): unknown[][] {
  return spread(
    {
      thicknessIn: inches(thickness, "thickness"),
      wheelIn: inches(wheel, "wheel"),
      modulusPsi: optional(psi(modulus, "modulus")),
    },
    bandBendingPsi,
  );
}

/**
 * Stress that its own speed puts in a steel band.
 *
 * On wheels pushed apart by a weight or a ram that follows, this stress comes on top of that of the pull, and the grip
 * on the wheel stays. On wheels locked at their distance by a screw the stress stays, and this much of it no longer
 * grips the wheel.
 *
 * @customfunction BANDCENTRIFUGAL
 * @param speed Speed of the band. A bare number is feet per minute; 25 m/s works too.
 * @returns psi
 * @example =BOLE.BANDCENTRIFUGAL(5000) gives 734
 * @example =BOLE.BANDCENTRIFUGAL("fast") gives #VALUE!
 * @caution No rule sets a safe band speed: the makers of the wheel and of the blade do. Never run above either.
 * @see RIMSTRESS
 * @words blade flies off, band loosens at speed
 */
export function BANDCENTRIFUGAL(speed: unknown[][]): unknown[][] {
  return spread({ speedFpm: feetPerMinute(speed, "speed") }, bandCentrifugalPsi);
}

/**
 * Stress that a band loses as it warms on locked wheels.
 *
 * About 195 psi for each degree. A weight or a ram that follows the band loses nothing. For a band that cools, give
 * minus degrees: the answer is then minus, which is stress gained. That is what a band left strained overnight does.
 *
 * @customfunction BANDHEATING
 * @param degrees Degrees Fahrenheit by which the band warms; minus when it cools. A Celsius degree is 1.8 of them.
 * @param [growth] Growth of the steel per degree Fahrenheit; 0.0000065 when left out.
 * @param [modulus] Stiffness of the steel. A bare number is psi; 30,000,000 when left out.
 * @returns psi
 * @example =BOLE.BANDHEATING(70) gives 13650
 * @example =BOLE.BANDHEATING(-70) gives -13650
 * @example =BOLE.BANDHEATING("20 C") gives #VALUE!
 * @caution A band strained hot and left to cool pulls harder on wheels and frame: slack it off when the day's work ends.
 * @see BANDSTRESS
 * @words blade gets hot, tension drops while sawing, release tension overnight
 */
export function BANDHEATING(degrees: unknown[][], growth?: unknown[][], modulus?: unknown[][]): unknown[][] {
  return spread(
    {
      degreesF: mayBeNegative(number(degrees, "degrees")),
      growthPerF: optional(number(growth, "growth")),
      modulusPsi: optional(psi(modulus, "modulus")),
    },
    bandHeatingPsi,
  );
}

/**
 * Pressure at which a hydraulic ram gives a force.
 *
 * A ram on the slide of the idle wheel carries both strands: give it the pull that BANDSTRAIN answers.
 *
 * @customfunction RAMPRESSURE
 * @param force Force wanted. A bare number is pounds; 11 kN works too.
 * @param bore Bore of the ram. A bare number is inches; 40 mm works too.
 * @param [rod] Rod's diameter, where the oil works on the rod's side. Left out: the full bore pushes.
 * @returns psi
 * @example =BOLE.RAMPRESSURE(2500, 2) gives 795.8
 * @example =BOLE.RAMPRESSURE(2500, 2, 1) gives 1061
 * @example =BOLE.RAMPRESSURE(2500, 2, 2) gives #N/A
 * @caution Keep to the ratings of ram, hose and pump. Oil under pressure cuts skin: bleed it off before opening a line.
 * @see RAMFORCE
 * @words hydraulic tension, cylinder pressure, gauge reading for blade tension
 * @picture ram
 */
export function RAMPRESSURE(force: unknown[][], bore: unknown[][], rod?: unknown[][]): unknown[][] {
  return spread(
    {
      forceLbf: poundsForce(force, "force"),
      boreIn: inches(bore, "bore"),
      rodIn: optional(inches(rod, "rod")),
    },
    ramPressurePsi,
  );
}

/**
 * Force of a hydraulic ram at a pressure.
 *
 * Seals and slides take some of it. On a tension slide the ram's force is shared by the two strands of the band.
 *
 * @customfunction RAMFORCE
 * @param pressure Pressure of the oil. A bare number is psi; 70 bar works too.
 * @param bore Bore of the ram. A bare number is inches; 40 mm works too.
 * @param [rod] Rod's diameter, where the oil works on the rod's side. Left out: the full bore pushes.
 * @returns Pounds of force
 * @example =BOLE.RAMFORCE(800, 3) gives 5654.9
 * @example =BOLE.RAMFORCE(800, 3, 1.875) gives 3445.9
 * @example =BOLE.RAMFORCE(800, 3, 3.5) gives #N/A
 * @caution Keep to the ratings of ram, hose and pump. Oil under pressure cuts skin: bleed it off before opening a line.
 * @see RAMPRESSURE
 * @words cylinder force, how hard does it push, log turner, loader
 * @picture ram
 */
export function RAMFORCE(pressure: unknown[][], bore: unknown[][], rod?: unknown[][]): unknown[][] {
  return spread(
    {
      pressurePsi: psi(pressure, "pressure"),
      boreIn: inches(bore, "bore"),
      rodIn: optional(inches(rod, "rod")),
    },
    ramForceLbf,
  );
}

/**
 * Wood that each tooth takes, its bite.
 *
 * Every tooth is taken to cut. Of a blade set left, right and straight each tooth clears a part of the kerf only.
 *
 * @customfunction BITE
 * @param feed Feed of the log or the head. A bare number is feet per minute; 10 m/min works too.
 * @param speed Speed of the band. A bare number is feet per minute; 25 m/s works too.
 * @param pitch Tooth to tooth. A bare number is inches; 7/8 and 22 mm work too.
 * @returns Inches
 * @example =BOLE.BITE(40, 5000, 0.875) gives 0.007
 * @example =BOLE.BITE(40, "quick", 0.875) gives #VALUE!
 * @caution Blade makers give the bite their teeth take; one forced beyond it dives, heats and cracks.
 * @see FEEDFOR
 * @words chip load, feed per tooth, tooth bite, wavy cut
 * @picture teeth
 */
export function BITE(feed: unknown[][], speed: unknown[][], pitch: unknown[][]): unknown[][] {
  return spread(
    {
      feedFpm: feetPerMinute(feed, "feed"),
      speedFpm: feetPerMinute(speed, "speed"),
      pitchIn: inches(pitch, "pitch"),
    },
    toothBiteIn,
  );
}

/**
 * Feed at which each tooth takes a wanted bite.
 *
 * Check the gullet too: in a wide cut it fills before the tooth has its full bite, and GULLETFILL says by how much.
 *
 * @customfunction FEEDFOR
 * @param bite Bite of a tooth. A bare number is inches; 0.2 mm works too.
 * @param speed Speed of the band. A bare number is feet per minute; 25 m/s works too.
 * @param pitch Tooth to tooth. A bare number is inches; 7/8 and 22 mm work too.
 * @returns Feet per minute
 * @example =BOLE.FEEDFOR(0.007, 5000, 0.875) gives 40
 * @example =BOLE.FEEDFOR(0.007, 5000, "wide") gives #VALUE!
 * @caution Blade makers give the bite their teeth take; one forced beyond it dives, heats and cracks.
 * @see BITE
 * @words how fast to feed, feed rate, carriage speed
 * @picture teeth
 */
export function FEEDFOR(bite: unknown[][], speed: unknown[][], pitch: unknown[][]): unknown[][] {
  return spread(
    {
      biteIn: inches(bite, "bite"),
      speedFpm: feetPerMinute(speed, "speed"),
      pitchIn: inches(pitch, "pitch"),
    },
    feedForBiteFpm,
  );
}

/**
 * Share of the gullet that the wood of one cut would fill, before it swells into sawdust.
 *
 * The gullet's area is taken as pitch times depth over 1.75, and a sharpening firm's trade note uses a half to three
 * quarters of it in softwood; 0.3 for hardwood to 0.7 for softwood is from memory. Over 1 the dust cannot fit at all.
 *
 * @customfunction GULLETFILL
 * @param bite Bite of a tooth. A bare number is inches; 0.2 mm works too.
 * @param depth Width of wood the band goes through. A bare number is inches; 60 cm works too.
 * @param pitch Tooth to tooth. A bare number is inches; 7/8 and 22 mm work too.
 * @param gullet Depth of the gullet. A bare number is inches; 6 mm works too.
 * @returns Share of 1
 * @example =BOLE.GULLETFILL(0.007, 24, 0.875, 0.25) gives 1.344
 * @example =BOLE.GULLETFILL(0.004, 12, 0.875, 0.25) gives 0.384
 * @example =BOLE.GULLETFILL(0.007, 24, 0.875, "deep") gives #VALUE!
 * @caution A packed gullet makes a band dive, heat and crack: slow the feed in a wide cut, by the blade maker's advice.
 * @see BITE
 * @words sawdust packing, wide cut, gullet capacity, blade wanders, wavy cut, dust left on the board
 * @picture teeth
 */
export function GULLETFILL(
  bite: unknown[][],
  depth: unknown[][],
  pitch: unknown[][],
  gullet: unknown[][],
): unknown[][] {
  return spread(
    {
      biteIn: inches(bite, "bite"),
      depthIn: inches(depth, "depth"),
      pitchIn: inches(pitch, "pitch"),
      gulletIn: inches(gullet, "gullet"),
    },
    gulletFillShare,
  );
}

/**
 * Power that goes into the cut, from the specific cutting energy of the wood.
 *
 * No table of that energy by species was found, so none is assumed: measure it on your own mill, from the power drawn
 * under load less idling, and the kerf sawn meanwhile. Density alone foretells it badly. Dull teeth draw more.
 *
 * @customfunction SAWPOWER
 * @param kerf Width of the kerf. A bare number is inches; 2 mm works too.
 * @param depth Width of wood the band goes through. A bare number is inches; 60 cm works too.
 * @param feed Feed of the log or the head. A bare number is feet per minute; 10 m/min works too.
 * @param energy Energy to cut a volume of kerf. A bare number is psi (inch-pounds per cubic inch); 30 MPa works too.
 * @returns Horsepower at the teeth
 * @example =BOLE.SAWPOWER(0.08, 24, 20, 5000) gives 5.82
 * @example =BOLE.SAWPOWER(0.08, 24, 20, "oak") gives #VALUE!
 * @caution It is the cut alone: motor, belts and idling want more. Size motor and wiring with their makers and an electrician.
 * @see TORQUE
 * @words how much horsepower, engine size, motor size, bogging down
 * @picture cut
 */
export function SAWPOWER(kerf: unknown[][], depth: unknown[][], feed: unknown[][], energy: unknown[][]): unknown[][] {
  return spread(
    {
      kerfIn: inches(kerf, "kerf"),
      depthIn: inches(depth, "depth"),
      feedFpm: feetPerMinute(feed, "feed"),
      energyPsi: psi(energy, "energy"),
    },
    sawPowerHp,
  );
}

/**
 * Torque on a shaft from its power and speed.
 *
 * The same power at half the speed is twice the torque: a slow shaft wants to be a stout one.
 *
 * @customfunction TORQUE
 * @param power Power. A bare number is horsepower; 15 kW works too.
 * @param rpm Speed of the shaft, turns per minute.
 * @returns Pound-force feet
 * @example =BOLE.TORQUE(10, 1750) gives 30.01
 * @example =BOLE.TORQUE(10, "slow") gives #VALUE!
 * @caution Shafts, keys and couplings have ratings of their own, and starting or a jam asks for several times the torque.
 * @words shaft torque, foot pounds, gearbox
 */
export function TORQUE(power: unknown[][], rpm: unknown[][]): unknown[][] {
  return spread({ powerHp: horsepower(power, "power"), rpm: number(rpm, "rpm") }, torqueLbfFt);
}

/**
 * Line current of a three-phase motor at full load.
 *
 * For a look at the meter. Wires, breakers and overloads go by the nameplate and the electrical code's own table (NEC
 * 430.250), which prints 28 A for 10 hp at 230 V. The usual efficiency and power factor come within 10 % of that table
 * from 5 to 50 hp; a smaller motor draws up to two thirds more than they say: give it its own.
 *
 * @customfunction MOTORAMPS
 * @param power Power of the motor. A bare number is horsepower; 15 kW works too.
 * @param volts Voltage between two lines.
 * @param [efficiency] Efficiency in percent from the nameplate; 85 when left out (common practice, no source).
 * @param [powerfactor] Power factor in percent from the nameplate; 80 when left out (common practice, no source).
 * @returns Amperes
 * @example =BOLE.MOTORAMPS(10, 230) gives 27.5
 * @example =BOLE.MOTORAMPS(10, 230, 90, 85) gives 24.5
 * @example =BOLE.MOTORAMPS(10, 230, 120) gives #N/A
 * @caution Never size wires or breakers from this: that goes by nameplate, the electrical code and a licensed electrician.
 * @words amp draw, three phase current, motor current, breaker
 */
export function MOTORAMPS(
  power: unknown[][],
  volts: unknown[][],
  efficiency?: unknown[][],
  powerfactor?: unknown[][],
): unknown[][] {
  return spread(
    {
      powerHp: horsepower(power, "power"),
      volts: number(volts, "volts"),
      efficiencyPercent: optional(percent(efficiency, "efficiency")),
      powerFactorPercent: optional(percent(powerfactor, "powerfactor")),
    },
    motorAmps,
  );
}

/**
 * Hoop stress in a spinning steel rim.
 *
 * A thin sound ring, no more: spokes, welds, holes, castings and cracks all make it worse, and no safe speed for a band
 * wheel was found in any rule. Doubling the speed makes four times the stress. Washington State takes a cracked wheel
 * out of use at once, and a head band wheel whose rim is under 5/8 in (WAC 296-79-27005).
 *
 * @customfunction RIMSTRESS
 * @param diameter Mean diameter of the rim. A bare number is inches; 900 mm works too.
 * @param rpm Turns per minute.
 * @returns psi
 * @example =BOLE.RIMSTRESS(36, 530) gives 733
 * @example =BOLE.RIMSTRESS(36, "flat out") gives #VALUE!
 * @caution Only the wheel's maker can give a safe speed; never run above it. A cracked rim comes out of service at once.
 * @see RIMSPEED
 * @words wheel bursts, flywheel, wheel safe speed
 * @picture rim
 */
export function RIMSTRESS(diameter: unknown[][], rpm: unknown[][]): unknown[][] {
  return spread({ diameterIn: inches(diameter, "diameter"), rpm: number(rpm, "rpm") }, rimStressPsi);
}

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
