import { feet, inches, list, mayBeZero, number, oneOf, optional, percent } from "../cells/read";
import { spread, table } from "../cells/spread";
import { BRERETON_ROUNDINGS, BRERETON_UNITS, breretonVolume } from "../math/logs/brereton";
import { coneVolume, huberVolume, newtonVolume, smalianVolume } from "../math/logs/cubic";
import { CUBIC_UNITS } from "../math/logs/cubic-unit";
import { cullBoxBoardFeet, cullRingBoardFeet, cullSectorBoardFeet, cullSweepBoardFeet } from "../math/logs/cull";
import { gostCubicMeters } from "../math/logs/gost";
import { hoppusVolume } from "../math/logs/hoppus";
import { jasCubicMeters } from "../math/logs/jas";
import { LOG_RULES } from "../math/logs/log-rules";
import { logRulesTable } from "../math/logs/log-rules-table";
import { logScaleBoardFeet, SCALE_ROUNDINGS } from "../math/logs/log-scale";
import { netScaleBoardFeet, overrunPercent } from "../math/logs/net-scale";
import { scaleLengthFt } from "../math/logs/scale-length";
import { DIAMETER_ROUNDINGS, diameterAtIn, girthDiameterIn, scalingDiameterIn } from "../math/logs/scaling-diameter";

/**
 * Board feet in a log by a log rule.
 *
 * Rules: International 1/4, International 1/8, Doyle, Scribner (the formula), Scribner Decimal C (the table, 6 to 20 in by
 * 6 to 16 ft), Doyle-Scribner, Vermont, Two-thirds, Inscribed square, Adirondack. LOGRULES shows them side by side.
 *
 * Rounding "table" enters the rule as its printed table is entered: nearest whole inch with an exact half dropped, length
 * down to even feet, result as printed. Authorities differ on the inch: Georgia, Vermont and Wengert take the nearest,
 * Georgia and Wengert share exact halves out, the Idaho contest rules drop them, a Montana lecture always cuts down. Round
 * first with SCALEDIAMETER where yours differs. Printed Doyle tables differ on an exact half board foot: the one followed
 * here counts it, Chase 1913 does either.
 *
 * Long logs: International over 20 ft is scaled as two or more logs with the rule's own taper of half an inch in 4 ft.
 * Vermont over 12 ft and Scribner Decimal C from 18 ft are refused: measure and scale each piece.
 *
 * @customfunction LOGSCALE
 * @param diameter Small-end diameter inside bark (Two-thirds: at mid-length). A bare number is inches; 36 cm works too.
 * @param length Log length. A bare number is feet; 8'6" and 2.4 m work too.
 * @param [rule] Name of the rule; International 1/4 when left out.
 * @param [rounding] none (default: the sizes as given) or table (whole inches, length classes, result as printed).
 * @returns Board feet
 * @example =BOLE.LOGSCALE(20, 12, "Doyle") gives 192
 * @example =BOLE.LOGSCALE(20, 16) gives 289.741
 * @example =BOLE.LOGSCALE(20, 16, "International 1/4", "table") gives 290
 * @example =BOLE.LOGSCALE(20, 16, "Scribner Decimal C") gives 280
 * @example =BOLE.LOGSCALE(3, 12, "Doyle") gives #N/A
 * @example =BOLE.LOGSCALE(30, 16, "Scribner Decimal C") gives #N/A
 * @words scale a log, log rule, board feet in a log, bdft, log scale
 * @see LOGRULES
 * @picture log-trim
 */
export function LOGSCALE(
  diameter: unknown[][],
  length: unknown[][],
  rule?: unknown[][],
  rounding?: unknown[][],
): unknown[][] {
  return spread(
    {
      diameterIn: inches(diameter, "diameter"),
      lengthFt: feet(length, "length"),
      rule: optional(oneOf(LOG_RULES, rule, "rule"), "International 1/4"),
      rounding: optional(oneOf(SCALE_ROUNDINGS, rounding, "rounding")),
    },
    logScaleBoardFeet,
  );
}

/**
 * The log rules side by side; with a log, its board feet by each and whom the rule favors.
 *
 * At one price per board foot a rule that scales less than International 1/4 favors the buyer of the log, one that scales
 * more the seller. A rule without an answer on this log shows #N/A in its row; the others still answer.
 *
 * @customfunction LOGRULES
 * @param [diameter] Small-end diameter inside bark. A bare number is inches. Leave both out for the list of rules.
 * @param [length] Log length. A bare number is feet.
 * @returns A table: rule, board feet, percent against International 1/4, favors, kind, what is measured, limits, rounding, source
 * @example =BOLE.LOGRULES() gives a table of 11 rows
 * @example =BOLE.LOGRULES(20, 12) gives a table of 11 rows
 * @example =BOLE.LOGRULES(20) gives #N/A
 * @words compare log rules, Doyle or International, Scribner, which log scale
 * @see LOGSCALE
 * @picture log-trim
 */
export function LOGRULES(diameter?: unknown[][], length?: unknown[][]): unknown[][] {
  return table(
    { diameterIn: optional(inches(diameter, "diameter")), lengthFt: optional(feet(length, "length")) },
    logRulesTable,
  );
}

/**
 * Volume of a log from both ends, by Smalian's formula.
 *
 * It overstates a log with a flared butt: take the large end above the flare, or use HUBER or NEWTON.
 *
 * @customfunction SMALIAN
 * @param small Small-end diameter inside bark. A bare number is inches.
 * @param large Large-end diameter inside bark, not under the small end. A bare number is inches.
 * @param length Log length. A bare number is feet.
 * @param [unit] ft3 (default), m3, hoppus ft, cunit (100 ft3), or cord (128 ft3 of stack, 70 % of it wood: 89.6 ft3).
 * @returns Volume in the unit asked for
 * @example =BOLE.SMALIAN(12, 16, 16) gives 17.453
 * @example =BOLE.SMALIAN("12 cm", "20 cm", "6 m", "m3") gives 0.128
 * @example =BOLE.SMALIAN(16, 12, 16) gives #N/A
 * @words cubic feet in a log, log volume, cubic scale
 * @see HUBER
 * @picture log
 */
export function SMALIAN(small: unknown[][], large: unknown[][], length: unknown[][], unit?: unknown[][]): unknown[][] {
  return spread(
    {
      smallIn: inches(small, "small"),
      largeIn: inches(large, "large"),
      lengthFt: feet(length, "length"),
      unit: optional(oneOf(CUBIC_UNITS, unit, "unit")),
    },
    smalianVolume,
  );
}

/**
 * Volume of a log from the diameter at mid-length, by Huber's formula.
 *
 * @customfunction HUBER
 * @param middle Diameter inside bark at mid-length. A bare number is inches.
 * @param length Log length. A bare number is feet.
 * @param [unit] ft3 (default), m3, hoppus ft, cunit (100 ft3), or cord (128 ft3 of stack, 70 % of it wood: 89.6 ft3).
 * @returns Volume in the unit asked for
 * @example =BOLE.HUBER(14, 16) gives 17.104
 * @example =BOLE.HUBER("40 cm", "10 m", "m3") gives 1.257
 * @example =BOLE.HUBER(400, 16) gives #N/A
 * @words cubic feet in a log, log volume, mid diameter
 * @see SMALIAN
 * @picture log
 */
export function HUBER(middle: unknown[][], length: unknown[][], unit?: unknown[][]): unknown[][] {
  return spread(
    {
      middleIn: inches(middle, "middle"),
      lengthFt: feet(length, "length"),
      unit: optional(oneOf(CUBIC_UNITS, unit, "unit")),
    },
    huberVolume,
  );
}

/**
 * Volume of a log from both ends and the middle, by Newton's formula.
 *
 * @customfunction NEWTON
 * @param small Small-end diameter inside bark. A bare number is inches.
 * @param middle Diameter inside bark at mid-length, between the ends. A bare number is inches.
 * @param large Large-end diameter inside bark. A bare number is inches.
 * @param length Log length. A bare number is feet.
 * @param [unit] ft3 (default), m3, hoppus ft, cunit (100 ft3), or cord (128 ft3 of stack, 70 % of it wood: 89.6 ft3).
 * @returns Volume in the unit asked for
 * @example =BOLE.NEWTON(12, 14, 16, 16) gives 17.221
 * @example =BOLE.NEWTON(12, 18, 16, 16) gives #N/A
 * @words cubic feet in a log, log volume, exact volume
 * @see SMALIAN
 * @picture log
 */
export function NEWTON(
  small: unknown[][],
  middle: unknown[][],
  large: unknown[][],
  length: unknown[][],
  unit?: unknown[][],
): unknown[][] {
  return spread(
    {
      smallIn: inches(small, "small"),
      middleIn: inches(middle, "middle"),
      largeIn: inches(large, "large"),
      lengthFt: feet(length, "length"),
      unit: optional(oneOf(CUBIC_UNITS, unit, "unit")),
    },
    newtonVolume,
  );
}

/**
 * Volume of a log as a cone with its tip cut off, from both ends.
 *
 * @customfunction CONEVOLUME
 * @param small Small-end diameter inside bark. A bare number is inches.
 * @param large Large-end diameter inside bark, not under the small end. A bare number is inches.
 * @param length Log length. A bare number is feet.
 * @param [unit] ft3 (default), m3, hoppus ft, cunit (100 ft3), or cord (128 ft3 of stack, 70 % of it wood: 89.6 ft3).
 * @returns Volume in the unit asked for
 * @example =BOLE.CONEVOLUME(12, 16, 16) gives 17.221
 * @example =BOLE.CONEVOLUME(16, 12, 16) gives #N/A
 * @words cubic feet in a log, frustum, taper
 * @see SMALIAN
 * @picture log
 */
export function CONEVOLUME(
  small: unknown[][],
  large: unknown[][],
  length: unknown[][],
  unit?: unknown[][],
): unknown[][] {
  return spread(
    {
      smallIn: inches(small, "small"),
      largeIn: inches(large, "large"),
      lengthFt: feet(length, "length"),
      unit: optional(oneOf(CUBIC_UNITS, unit, "unit")),
    },
    coneVolume,
  );
}

/**
 * Volume of a log by its quarter girth, in hoppus feet unless another unit is asked for.
 *
 * @customfunction HOPPUS
 * @param girth Girth at mid-length, by tape down to the quarter inch. A bare number is inches.
 * @param length Log length. A bare number is feet.
 * @param [unit] hoppus ft (default), ft3, m3, cunit (100 ft3), or cord (128 ft3 of stack, 70 % of it wood: 89.6 ft3).
 * @returns Volume in the unit asked for
 * @example =BOLE.HOPPUS(48, 16) gives 16
 * @example =BOLE.HOPPUS(48, 16, "ft3") gives 20.37
 * @example =BOLE.HOPPUS(2000, 16) gives #N/A
 * @words quarter girth, hoppus foot, tape round a log
 * @see GIRTHDIAMETER
 * @picture girth
 */
export function HOPPUS(girth: unknown[][], length: unknown[][], unit?: unknown[][]): unknown[][] {
  return spread(
    {
      girthIn: inches(girth, "girth"),
      lengthFt: feet(length, "length"),
      unit: optional(oneOf(CUBIC_UNITS, unit, "unit")),
    },
    hoppusVolume,
  );
}

/**
 * Export volume of a log by Brereton: the whole cylinder of the mean end diameter, in board feet.
 *
 * With rounding "customs" the sizes are cut as the Japanese customs cut them: the mean diameter down to even centimeters,
 * the length less 0.1 m and down to an even tenth of a meter, the volume to 0.001 m3.
 *
 * @customfunction BRERETON
 * @param small Small-end diameter, the mean of the longest and shortest. A bare number is inches.
 * @param large Large-end diameter, the mean of the longest and shortest. A bare number is inches.
 * @param length Log length. A bare number is feet.
 * @param [unit] board feet (default), m3 or ft3.
 * @param [rounding] none (default: the sizes as given) or customs (cut as the Japanese customs do).
 * @returns Volume in the unit asked for; board feet when none is
 * @example =BOLE.BRERETON(23, 25, 16) gives 603.19
 * @example =BOLE.BRERETON("60 cm", "60 cm", "12.1 m", "m3", "customs") gives 3.393
 * @example =BOLE.BRERETON(25, 23, 16) gives #N/A
 * @words export logs, tropical logs, cylinder board feet
 * @picture log, diameters
 */
export function BRERETON(
  small: unknown[][],
  large: unknown[][],
  length: unknown[][],
  unit?: unknown[][],
  rounding?: unknown[][],
): unknown[][] {
  return spread(
    {
      smallIn: inches(small, "small"),
      largeIn: inches(large, "large"),
      lengthFt: feet(length, "length"),
      unit: optional(oneOf(BRERETON_UNITS, unit, "unit")),
      rounding: optional(oneOf(BRERETON_ROUNDINGS, rounding, "rounding")),
    },
    breretonVolume,
  );
}

/**
 * Cubic meters in a log by the Japanese agricultural standard, with its own rounding.
 *
 * @customfunction JAS
 * @param diameter Shortest small-end diameter inside bark. A bare number is inches; 30 cm works too.
 * @param length Log length. A bare number is feet; 4 m works too.
 * @returns Cubic meters, to three decimals
 * @example =BOLE.JAS("30 cm", "4 m") gives 0.360
 * @example =BOLE.JAS("30 cm", "7.6 m") gives 0.754
 * @example =BOLE.JAS("0.5 cm", "4 m") gives #N/A
 * @words Japanese log scale, export logs, cubic meters
 * @picture diameters
 */
export function JAS(diameter: unknown[][], length: unknown[][]): unknown[][] {
  return spread({ diameterIn: inches(diameter, "diameter"), lengthFt: feet(length, "length") }, jasCubicMeters);
}

/**
 * Cubic meters in a log by the table of GOST 2708-75, from its top diameter under bark.
 *
 * The table was seen in three reprints: 10 to 38 cm, most rows by half meters from 1 to 9 or 11 m. Diameters are taken down to
 * the printed class, lengths down to tenths of a meter; between printed lengths a straight line. Two reprints differ on
 * 36 cm by 9 m (1.18 and 1.13), so from 8.6 to 9.9 m at 36 cm there is no answer.
 *
 * @customfunction GOST
 * @param diameter Top diameter under bark. A bare number is inches; 24 cm works too.
 * @param length Log length. A bare number is feet; 6 m works too.
 * @returns Cubic meters
 * @example =BOLE.GOST("24 cm", "6 m") gives 0.33
 * @example =BOLE.GOST("24 cm", "6.2 m") gives 0.34
 * @example =BOLE.GOST("36 cm", "9 m") gives #N/A
 * @words Russian log table, cubic meters
 * @picture log-trim
 */
export function GOST(diameter: unknown[][], length: unknown[][]): unknown[][] {
  return spread({ diameterIn: inches(diameter, "diameter"), lengthFt: feet(length, "length") }, gostCubicMeters);
}

/**
 * Scaling diameter from two or more readings across one end of a log.
 *
 * Who rounds how: to the nearest inch, Georgia, Vermont and Wengert; exact halves shared out, once up and once down, Georgia
 * and Wengert (alternate "nearest up" and "nearest"); halves dropped, the Idaho contest rules; always down, a Montana lecture.
 *
 * @customfunction SCALEDIAMETER
 * @param diameters The readings, a range. A bare number is inches.
 * @param [rounding] none (default), nearest (an exact half dropped), nearest up (an exact half counted) or down.
 * @returns Inches
 * @example =BOLE.SCALEDIAMETER({8;13}, "nearest") gives 10
 * @example =BOLE.SCALEDIAMETER({19;20.5}) gives 19.75
 * @example =BOLE.SCALEDIAMETER({8;-13}) gives #VALUE!
 * @words average diameter, oval log, two diameters
 * @picture diameters
 */
export function SCALEDIAMETER(diameters: unknown[][], rounding?: unknown[][]): unknown[][] {
  return spread(
    {
      diametersIn: list(inches(diameters, "diameters")),
      rounding: optional(oneOf(DIAMETER_ROUNDINGS, rounding, "rounding")),
    },
    scalingDiameterIn,
  );
}

/**
 * Diameter inside bark from a tape round the log and the thickness of its bark.
 *
 * @customfunction GIRTHDIAMETER
 * @param girth Girth over bark. A bare number is inches.
 * @param [bark] Thickness of the bark on one side; 0 when left out. A bare number is inches.
 * @returns Inches
 * @example =BOLE.GIRTHDIAMETER(75.4, 0.5) gives 23.00
 * @example =BOLE.GIRTHDIAMETER(75.4) gives 24.00
 * @example =BOLE.GIRTHDIAMETER(12, 2) gives #N/A
 * @words circumference, tape round a tree, bark thickness
 * @picture girth
 */
export function GIRTHDIAMETER(girth: unknown[][], bark?: unknown[][]): unknown[][] {
  return spread({ girthIn: inches(girth, "girth"), barkIn: mayBeZero(inches(bark, "bark")) }, girthDiameterIn);
}

/**
 * Diameter of a log at a distance from its small end, by straight taper.
 *
 * @customfunction DIAMETERAT
 * @param small Small-end diameter. A bare number is inches.
 * @param large Large-end diameter. A bare number is inches.
 * @param length Log length. A bare number is feet.
 * @param distance Distance from the small end. A bare number is feet.
 * @returns Inches
 * @example =BOLE.DIAMETERAT(16, 20, 16, 8) gives 18
 * @example =BOLE.DIAMETERAT(16, 20, 16, 17) gives #N/A
 * @words taper, diameter along a log, where to buck
 * @picture taper
 */
export function DIAMETERAT(
  small: unknown[][],
  large: unknown[][],
  length: unknown[][],
  distance: unknown[][],
): unknown[][] {
  return spread(
    {
      smallIn: inches(small, "small"),
      largeIn: inches(large, "large"),
      lengthFt: feet(length, "length"),
      distanceFt: mayBeZero(feet(distance, "distance")),
    },
    diameterAtIn,
  );
}

/**
 * Board feet taken off for an interior defect, by the squared-defect method.
 *
 * The defect is boxed with an inch added each way. The method and its rounding are the scaling handbook's; the divisor 15
 * and the inch are from memory.
 *
 * @customfunction CULLBOX
 * @param width Width of the defect in the end of the log. A bare number is inches.
 * @param height Height of the defect. A bare number is inches.
 * @param length Length of the defect along the log. A bare number is feet.
 * @returns Board feet, whole
 * @example =BOLE.CULLBOX(4, 5, 16) gives 32
 * @example =BOLE.CULLBOX(400, 5, 16) gives #N/A
 * @words defect, rot, deduction, cull, hole in a log
 * @see NETSCALE
 * @picture cull-box
 */
export function CULLBOX(width: unknown[][], height: unknown[][], length: unknown[][]): unknown[][] {
  return spread(
    { widthIn: inches(width, "width"), heightIn: inches(height, "height"), lengthFt: feet(length, "length") },
    cullBoxBoardFeet,
  );
}

/**
 * Board feet taken off for sweep.
 *
 * The first inch is not counted. The fraction (sweep - 1) / diameter is from memory.
 *
 * @customfunction CULLSWEEP
 * @param sweep Greatest distance between the log and a straight line along it. A bare number is inches.
 * @param diameter Small-end diameter inside bark. A bare number is inches.
 * @param length Log length. A bare number is feet.
 * @param [rule] Log rule of the gross scale; International 1/4 when left out.
 * @returns Board feet, whole
 * @example =BOLE.CULLSWEEP(3, 20, 16, "Doyle") gives 26
 * @example =BOLE.CULLSWEEP(1, 20, 16, "Doyle") gives 0
 * @example =BOLE.CULLSWEEP(30, 20, 16, "Doyle") gives #N/A
 * @words crooked log, bow, deduction, cull
 * @see NETSCALE
 * @picture sweep
 */
export function CULLSWEEP(
  sweep: unknown[][],
  diameter: unknown[][],
  length: unknown[][],
  rule?: unknown[][],
): unknown[][] {
  return spread(
    {
      sweepIn: mayBeZero(inches(sweep, "sweep")),
      diameterIn: inches(diameter, "diameter"),
      lengthFt: feet(length, "length"),
      rule: optional(oneOf(LOG_RULES, rule, "rule")),
    },
    cullSweepBoardFeet,
  );
}

/**
 * Board feet taken off for a defect that a pie-cut holds, such as a fire scar, seam or cat face.
 *
 * The pie-cut method and its rounding are the scaling handbook's; the fraction of the gross scale is from memory.
 *
 * @customfunction CULLSECTOR
 * @param diameter Small-end diameter inside bark. A bare number is inches.
 * @param length Log length. A bare number is feet.
 * @param share Percent of the circle that is cut out: 25, 25% or 0.25 for a quarter.
 * @param defectlength Length of the defect along the log. A bare number is feet.
 * @param [rule] Log rule of the gross scale; International 1/4 when left out.
 * @returns Board feet, whole
 * @example =BOLE.CULLSECTOR(20, 16, 25, 8, "Doyle") gives 32
 * @example =BOLE.CULLSECTOR(20, 16, 25, 18, "Doyle") gives #N/A
 * @words cat face, fire scar, seam, deduction, cull
 * @see NETSCALE
 * @picture cull-sector
 */
export function CULLSECTOR(
  diameter: unknown[][],
  length: unknown[][],
  share: unknown[][],
  defectlength: unknown[][],
  rule?: unknown[][],
): unknown[][] {
  return spread(
    {
      diameterIn: inches(diameter, "diameter"),
      lengthFt: feet(length, "length"),
      sharePercent: percent(share, "share"),
      defectLengthFt: feet(defectlength, "defectlength"),
      rule: optional(oneOf(LOG_RULES, rule, "rule")),
    },
    cullSectorBoardFeet,
  );
}

/**
 * Board feet taken off for rotten sapwood (with a sound core) or for a rotten heart (without one).
 *
 * With a core, outer is the log's scaling diameter and what is lost is its scale less the core's. Without one, outer is the
 * diameter of the rot, and it is boxed as CULLBOX does.
 *
 * @customfunction CULLRING
 * @param outer Outer diameter of the rot: of the log when the sapwood is rotten. A bare number is inches.
 * @param length Log length. A bare number is feet.
 * @param [core] Diameter of the sound core inside. A bare number is inches. Leave it out for a rotten heart.
 * @param [rule] Log rule, where a core is given; International 1/4 when left out.
 * @returns Board feet, whole
 * @example =BOLE.CULLRING(20, 16, 16, "Doyle") gives 112
 * @example =BOLE.CULLRING(5, 16) gives 38
 * @example =BOLE.CULLRING(16, 16, 20) gives #N/A
 * @words rotten heart, hollow log, rotten sap, deduction, cull
 * @see NETSCALE
 * @picture cull-ring
 */
export function CULLRING(outer: unknown[][], length: unknown[][], core?: unknown[][], rule?: unknown[][]): unknown[][] {
  return spread(
    {
      outerIn: inches(outer, "outer"),
      lengthFt: feet(length, "length"),
      coreIn: optional(inches(core, "core")),
      rule: optional(oneOf(LOG_RULES, rule, "rule")),
    },
    cullRingBoardFeet,
  );
}

/**
 * Log length credited after trim, down to whole feet.
 *
 * Who rounds how: Wengert to the last full foot; the Idaho contest rules by 2 ft with at least 4 in of trim; USDA Bulletin
 * 711 disregards the 2 to 9 in that logs are cut over-length.
 *
 * @customfunction SCALELENGTH
 * @param length Length of the log. A bare number is feet.
 * @param [trim] Trim taken off first; 0 when left out. A bare number is inches.
 * @param [step] Step of the credited length; 1 when left out. A bare number is feet.
 * @returns Feet
 * @example =BOLE.SCALELENGTH("16'4""", 4) gives 16
 * @example =BOLE.SCALELENGTH("15'10""", 4, 2) gives 14
 * @example =BOLE.SCALELENGTH(1, 6) gives #N/A
 * @words trim allowance, log length, over-length
 * @picture log-trim
 */
export function SCALELENGTH(length: unknown[][], trim?: unknown[][], step?: unknown[][]): unknown[][] {
  return spread(
    {
      lengthFt: feet(length, "length"),
      trimIn: mayBeZero(inches(trim, "trim")),
      stepFt: optional(feet(step, "step")),
    },
    scaleLengthFt,
  );
}

/**
 * Net scale: gross scale less its deductions.
 *
 * A deduction under 1 is a share of the gross, so that a percent-formatted cell works: 0.12 is 12 percent. Over 1 it is
 * board feet. 1 itself may be one board foot or a cell of 100 percent, and is refused: for a log lost whole give its gross
 * scale.
 *
 * @customfunction NETSCALE
 * @param gross Gross scale in board feet.
 * @param deductions The deductions, a range: board feet, or shares of the gross such as 12% or 0.12.
 * @returns Board feet
 * @example =BOLE.NETSCALE(300, {32;0.1}) gives 238
 * @example =BOLE.NETSCALE(300, {200;150}) gives #N/A
 * @example =BOLE.NETSCALE(300, 100%) gives #N/A
 * @words defect, deduction, net board feet
 */
export function NETSCALE(gross: unknown[][], deductions: unknown[][]): unknown[][] {
  return spread(
    { grossBf: number(gross, "gross"), deductions: optional(list(number(deductions, "deductions")), []) },
    netScaleBoardFeet,
  );
}

/**
 * Percent that the lumber tally is over the log scale; minus when it is under.
 *
 * @customfunction OVERRUN
 * @param sawn Lumber tally in board feet.
 * @param scaled Net log scale in board feet.
 * @returns Percent
 * @example =BOLE.OVERRUN(150, 100) gives 50
 * @example =BOLE.OVERRUN(201163, 209910) gives -4.2
 * @example =BOLE.OVERRUN(-5, 100) gives #VALUE!
 * @words mill tally, recovery, underrun
 */
export function OVERRUN(sawn: unknown[][], scaled: unknown[][]): unknown[][] {
  return spread({ sawnBf: number(sawn, "sawn"), scaledBf: number(scaled, "scaled") }, overrunPercent);
}
