import {
  count as wholeNumber,
  feet,
  feetPerMinute,
  inches,
  matrix,
  mayBeZero,
  number,
  optional,
  percent,
  sameForAll,
} from "../cells/read";
import { spread, table } from "../cells/spread";
import { cutPlanTable } from "../math/sawing/cut-plan-table";
import { cutWidthIn } from "../math/sawing/cut-width";
import { headHeights } from "../math/sawing/head-heights";
import { kerfGain } from "../math/sawing/kerf-gain";
import { kerfLossShare } from "../math/sawing/kerf-loss";
import { pieceCount } from "../math/sawing/piece-count";
import { cutYield } from "../math/sawing/plan-cut";
import { lumberRecovery } from "../math/sawing/recovery";
import { sawMinutes } from "../math/sawing/saw-time";
import { sawVariation } from "../math/sawing/saw-variation";
import { targetSizeIn } from "../math/sawing/target-size";
import { biggestLogIn, throatFitIn } from "../math/sawing/throat-fit";
import { cutRequest } from "./sawing-readers";

/**
 * Share of the wood that the saw turns into sawdust.
 *
 * It holds for the middle of a stack of equal boards, each with its own kerf: 1/8 in of kerf on a 1 1/8 in board is
 * one tenth of the wood. Format the cell as percent.
 *
 * @customfunction KERFLOSS
 * @param thickness Thickness of the board as sawn. A bare number is inches.
 * @param kerf Width of the saw cut. A bare number is inches; blank or 0 loses nothing.
 * @returns Share from 0 to 1
 * @example =BOLE.KERFLOSS(1.125, 0.125) gives 0.1
 * @example =BOLE.KERFLOSS("5/4", 0) gives 0
 * @example =BOLE.KERFLOSS(1.125, -0.1) gives #VALUE!
 * @words sawdust, waste, blade thickness, thin kerf
 * @see KERFGAIN
 * @picture kerf
 */
export function KERFLOSS(thickness: unknown[][], kerf: unknown[][]): unknown[][] {
  return spread(
    { thicknessIn: inches(thickness, "thickness"), kerfIn: mayBeZero(inches(kerf, "kerf")) },
    kerfLossShare,
  );
}

/**
 * Saw-head settings down from an opening cut, for boards of one thickness; stops above the bed.
 *
 * The blade height is read at the blade's lower side: it is the height of the sawn face left on the log. The first
 * pass takes the top slab; every pass after it drops the head by one board and one kerf and frees one board.
 *
 * @customfunction HEADHEIGHTS
 * @param start Height of the blade above the bed for the opening cut. A bare number is inches.
 * @param thickness Thickness of the boards as sawn. A bare number is inches.
 * @param kerf Width of the saw cut. A bare number is inches.
 * @param count How many boards are wanted.
 * @param [bed] Lowest height the blade may go to, such as the top of the dogs; 0 when left out.
 * @returns A table: pass, blade height, drop from the pass before, board freed (inches)
 * @example =BOLE.HEADHEIGHTS(10, 1.125, 0.125, 3) gives {"pass","blade height","drop","board";1,10,"","opening face";2,8.75,1.25,1.125;3,7.5,1.25,1.125;4,6.25,1.25,1.125}
 * @example =BOLE.HEADHEIGHTS(10, 2.125, 0.125, 9, 1) gives a table of 6 rows
 * @example =BOLE.HEADHEIGHTS(1, 1.125, 0.125, 3, 2) gives #N/A
 * @words saw head, drop list, depth of cut, setting, scale, how far to lower the blade
 * @see CUTPLAN
 * @picture heads
 */
export function HEADHEIGHTS(
  start: unknown[][],
  thickness: unknown[][],
  kerf: unknown[][],
  count: unknown[][],
  bed?: unknown[][],
): unknown[][] {
  return table(
    {
      startIn: inches(start, "start"),
      thicknessIn: inches(thickness, "thickness"),
      kerfIn: inches(kerf, "kerf"),
      count: wholeNumber(count, "count"),
      bedIn: optional(inches(bed, "bed"), 0),
    },
    headHeights,
  );
}

/**
 * Width of a flat cut through a round log at a depth below its top.
 *
 * @customfunction CUTWIDTH
 * @param diameter Diameter of the log where the cut is. A bare number is inches.
 * @param depth Depth of the cut below the top of the log. A bare number is inches; blank or 0 is the top itself.
 * @returns Inches
 * @example =BOLE.CUTWIDTH(20, 4) gives 16
 * @example =BOLE.CUTWIDTH(20, 10) gives 20
 * @example =BOLE.CUTWIDTH(20, 21) gives #N/A
 * @words chord, slab width, face width, how wide
 * @picture chord
 */
export function CUTWIDTH(diameter: unknown[][], depth: unknown[][]): unknown[][] {
  return spread({ diameterIn: inches(diameter, "diameter"), depthIn: mayBeZero(inches(depth, "depth")) }, cutWidthIn);
}

/**
 * Pieces of one thickness that come out of a depth of wood.
 *
 * The last piece needs no kerf under it. For a whole log with its round sides use CUTPLAN.
 *
 * @customfunction PIECECOUNT
 * @param depth Depth of wood to be sawn up, such as the height of a cant. A bare number is inches.
 * @param thickness Thickness of the pieces as sawn. A bare number is inches.
 * @param kerf Width of the saw cut. A bare number is inches; blank or 0 loses nothing.
 * @returns Count
 * @example =BOLE.PIECECOUNT(8, 1.125, 0.125) gives 6
 * @example =BOLE.PIECECOUNT(4.875, 1.125, 0.125) gives 4
 * @example =BOLE.PIECECOUNT(8, -1, 0.125) gives #VALUE!
 * @words how many boards, cant, stack
 * @picture kerf
 */
export function PIECECOUNT(depth: unknown[][], thickness: unknown[][], kerf: unknown[][]): unknown[][] {
  return spread(
    {
      depthIn: inches(depth, "depth"),
      thicknessIn: sameForAll(inches(thickness, "thickness")),
      kerfIn: mayBeZero(inches(kerf, "kerf")),
    },
    pieceCount,
  );
}

/**
 * Minutes at the mill for a number of cuts.
 *
 * @customfunction SAWTIME
 * @param cuts How many passes of the blade.
 * @param length Length of the log. A bare number is feet.
 * @param feed Speed of the saw through the wood. A bare number is feet per minute.
 * @param handling Minutes between cuts: gigging back, setting, taking off the board. Blank is none.
 * @returns Minutes
 * @example =BOLE.SAWTIME(20, 12, 24, 1.5) gives 40
 * @example =BOLE.SAWTIME(20, 12, "fast", 1.5) gives #VALUE!
 * @words how long, hours, feed rate, production
 */
export function SAWTIME(cuts: unknown[][], length: unknown[][], feed: unknown[][], handling: unknown[][]): unknown[][] {
  return spread(
    {
      cuts: wholeNumber(cuts, "cuts"),
      lengthFt: feet(length, "length"),
      feedFpm: sameForAll(feetPerMinute(feed, "feed")),
      handlingMin: mayBeZero(number(handling, "handling")),
    },
    sawMinutes,
  );
}

/**
 * Green size to set the saw to, so that boards dry and plane to the finished size.
 *
 * Planing and shrinkage make the critical size; sawing variation comes on top, times the factor for the share of
 * boards that may come out under. The printed factor for none, 3.09, leaves one board in a thousand under.
 * SAWVARIATION answers the standard deviation to use: its total.
 *
 * @customfunction TARGETSIZE
 * @param finished Size wanted, dry and planed. A bare number is inches.
 * @param [planing] Taken off by planing, both faces together. A bare number is inches; none when left out.
 * @param [shrinkage] Shrinkage from green to dry across that size, in percent, up to 20; half a percent is 0.5%. None when left out.
 * @param [variation] Standard deviation of sawn size. A bare number is inches; none when left out.
 * @param [undersize] Percent of boards that may come out under, up to 15; half a percent is 0.5%. None when left out.
 * @returns Inches
 * @example =BOLE.TARGETSIZE(1.56, 0.06) gives 1.62
 * @example =BOLE.TARGETSIZE(1, 0.1875, 8, 0.02, "5%") gives 1.3238
 * @example =BOLE.TARGETSIZE(1, 0, 0, 0.02, "40%") gives #N/A
 * @words green thickness, allowance, scant, oversize
 * @see SAWVARIATION
 * @picture target
 */
export function TARGETSIZE(
  finished: unknown[][],
  planing?: unknown[][],
  shrinkage?: unknown[][],
  variation?: unknown[][],
  undersize?: unknown[][],
): unknown[][] {
  return spread(
    {
      finishedIn: inches(finished, "finished"),
      planingIn: optional(inches(planing, "planing"), 0),
      shrinkagePercent: optional(percent(shrinkage, "shrinkage"), 0),
      variationIn: optional(inches(variation, "variation"), 0),
      undersizePercent: optional(percent(undersize, "undersize"), 0),
    },
    targetSizeIn,
  );
}

/**
 * How much the saw strays, from thickness readings with a row for each board.
 *
 * Take the same number of readings on every board, along both edges. The total is the standard deviation of all
 * readings: it is the one TARGETSIZE asks for, and it is not the root of the other two squared and added.
 *
 * @customfunction SAWVARIATION
 * @param readings Thickness readings, a row for each board; a blank is a reading not taken. A bare number is inches.
 * @returns A table: mean, within boards, between boards, total (inches)
 * @example =BOLE.SAWVARIATION({1.70,1.73,1.71,1.72;1.67,1.72,1.70,1.71}) gives a table of 5 rows
 * @example =BOLE.SAWVARIATION({1.70,1.73}) gives #N/A
 * @words size control, thick and thin, wavy, standard deviation, accuracy
 * @see TARGETSIZE
 * @picture readings
 */
export function SAWVARIATION(readings: unknown[][]): unknown[][] {
  return table({ boardsIn: matrix(inches(readings, "readings")) }, sawVariation);
}

/**
 * Lumber recovery factor: board feet out of each cubic foot of log.
 *
 * @customfunction RECOVERY
 * @param boardfeet Board feet tallied.
 * @param cubicfeet Cubic feet of the log, inside bark.
 * @returns Board feet per cubic foot
 * @example =BOLE.RECOVERY(300, 40) gives 7.5
 * @example =BOLE.RECOVERY(300, "many") gives #VALUE!
 * @words yield, lrf, how much lumber
 */
export function RECOVERY(boardfeet: unknown[][], cubicfeet: unknown[][]): unknown[][] {
  return spread(
    { boardFeet: number(boardfeet, "boardfeet"), cubicFeet: number(cubicfeet, "cubicfeet") },
    lumberRecovery,
  );
}

/**
 * Inches to spare between the mill's opening and a log as it turns; minus when it will not pass.
 *
 * Measure the log over its knots, flare and bark where it is thickest. The sweep is the gap between the log and a
 * string stretched along its hollow side.
 *
 * @customfunction THROATFIT
 * @param throat Clear opening of the mill between posts, and under the beam. A bare number is inches.
 * @param small Diameter of the small end. A bare number is inches.
 * @param large Diameter of the large end. A bare number is inches.
 * @param length Length of the log, which limits the sweep that can be. A bare number is feet.
 * @param [sweep] Largest gap under a string along the hollow side. A bare number is inches; none when left out.
 * @param [clearance] Room to keep, both sides together. A bare number is inches; none when left out.
 * @returns Inches to spare
 * @example =BOLE.THROATFIT(40, 16, 20, 12, 2) gives 18.875
 * @example =BOLE.THROATFIT(30, 28, 33, 10) gives -3
 * @example =BOLE.THROATFIT(30, 33, 28, 10) gives #N/A
 * @caution A log that is let down into a mill it does not pass can jam or roll: measure the log again on the deck.
 * @words will it fit, too big, capacity, opening
 * @see BIGGESTLOG
 * @picture throat, sweep
 */
export function THROATFIT(
  throat: unknown[][],
  small: unknown[][],
  large: unknown[][],
  length: unknown[][],
  sweep?: unknown[][],
  clearance?: unknown[][],
): unknown[][] {
  return spread(
    {
      throatIn: sameForAll(inches(throat, "throat")),
      smallIn: inches(small, "small"),
      largeIn: inches(large, "large"),
      lengthFt: feet(length, "length"),
      sweepIn: optional(inches(sweep, "sweep"), 0),
      clearanceIn: optional(inches(clearance, "clearance"), 0),
    },
    throatFitIn,
  );
}

/**
 * Largest log diameter to take on for a mill's opening.
 *
 * A foot of room over the biggest log is customary (common practice, no source): for knots, flare and turning.
 *
 * @customfunction BIGGESTLOG
 * @param throat Clear opening of the mill. A bare number is inches.
 * @param [clearance] Room to keep over the log. A bare number is inches; 12 when left out.
 * @returns Inches
 * @example =BOLE.BIGGESTLOG(84) gives 72
 * @example =BOLE.BIGGESTLOG(10) gives #N/A
 * @words maximum diameter, capacity, how big a log
 * @see THROATFIT
 * @picture throat
 */
export function BIGGESTLOG(throat: unknown[][], clearance?: unknown[][]): unknown[][] {
  return spread(
    { throatIn: inches(throat, "throat"), clearanceIn: optional(inches(clearance, "clearance")) },
    biggestLogIn,
  );
}

/**
 * The sawing plan of one log that gives the most: every pass with its blade height and board, and the total.
 *
 * Measure both ends inside the bark. The diameter is the small end's, up and down as the log lies for its first cut;
 * an oval log has its other diameter among the settings as `small end across`. The taper is how much the diameter
 * grows in 4 ft: (large end - small end) / length in feet * 4.
 *
 * The plan takes the pith as level (log lies `split`): shim the small end up by half the difference of the two ends,
 * and all boards run along the pith. A log that simply lies on the bed is `flat`.
 *
 * The blade height is read at the blade's lower side, and is the height of the sawn face left on the log. Pass 1 takes
 * the top slab; each later pass drops the head by `drop` and frees the board of its row. Heights are whole scale steps
 * above the bed, so that the head scale can be set to them. Only the pith cuts of a quarter-sawn log, and the boards off
 * a cant that is centred, are measured from the pith and may fall between two steps; cant offset `free` keeps them on
 * the scale. Below the total stand the shim, how far the opening face may be moved with the same drops, the share
 * reached of what no plan can pass, and warnings, such as a kerf that is no whole number of scale steps with the figure
 * it was rounded to.
 *
 * A cant is sawn in three positions: boards off the top down to the cant; the log turned over onto that flat, its
 * heights now measured from it; then the cant turned a quarter onto its round side. A quarter-sawn log is halved
 * through the pith, the halves quartered, and every quarter laid on the face whose board comes off next.
 *
 * Settings are two columns of name and value, in any order. What stands in brackets holds where a row is left out, or is
 * blank; but a blank taper is a log without taper. A setting that changes nothing is named under the plan.
 *
 * The log: small end across (as the diameter); taper (1/2 in of diameter in 4 ft); log lies, split or flat (split);
 * sweep, planned live and split only, with lengths and trim in whole half feet (none); crown, up, down or side (up).
 *
 * The mill: scale step (1/32); rip kerf (as the kerf); bed clearance, the lowest height of the blade (0); guide opening,
 * the widest cut (no limit); opening face, the first blade height, live and slab only, to see what another than the
 * best would give.
 *
 * Widths: minimum width (3), maximum width (none) and width step (1); or widths, a list such as 4, 6, 8, instead of
 * those three; width allowance, sawn over each width (0).
 *
 * Lengths: minimum length (4 ft); length step (1 ft); trim, left on every board (0 in).
 *
 * Boards: wane, the share of the thickness from either face that an edge may lack, under 0.5 (0); rip, yes for boards
 * side by side out of one flitch (no).
 *
 * Worth: objective, board feet or value (board feet); pass cost, what each board costs to saw, in board feet or money as
 * the objective is (0).
 *
 * Cant: cant widths, a list to try, which has to be given; cant offset, centred or free (centred).
 *
 * Quarter: ring angle, the least between rings and face (45 degrees); heart, the square lost about the pith (0).
 *
 * Boards are not rounded to surface measure here. Keep the customary foot of room over the biggest log for knots,
 * flare and turning (common practice, no source).
 *
 * @customfunction CUTPLAN
 * @param diameter Small-end diameter inside bark, up and down as the log lies. A bare number is inches.
 * @param length Length of the log. A bare number is feet; 8'6" and 2.4 m work too.
 * @param products Thicknesses such as 4/4; or columns thickness, green size, price a board foot, from width.
 * @param kerf Width of the saw cut. A bare number is inches.
 * @param [pattern] live (default: through and through), slab (live edge), cant or quarter.
 * @param [settings] Two columns of name and value, such as scale step and 1/16.
 * @returns A table of passes (inches, feet, board feet), the total, and remarks
 * @example =BOLE.CUTPLAN(16, 8.3333333333, "4/4", 0.125, "live", {"trim",4}) gives a table of 19 rows
 * @example =BOLE.CUTPLAN(22, 8, 1, 0.125, "quarter", {"scale step",0.0625}) gives a table of 17 rows
 * @example =BOLE.CUTPLAN(44, 10, "8/4", 0.125, "slab", {"guide opening",30}) gives #N/A
 * @example =BOLE.CUTPLAN(16, 8, "4/4", 0.125, "live", {"colour","red"}) gives #VALUE!
 * @caution Check the fit of the log in the mill and the maker's limits before sawing; a log that is turned can roll.
 * @words cut list, sawing pattern, opening face, boards, slabs, flitch, best, quartersawn
 * @see CUTYIELD
 * @picture patterns, heads
 */
export function CUTPLAN(
  diameter: unknown[][],
  length: unknown[][],
  products: unknown[][],
  kerf: unknown[][],
  pattern?: unknown[][],
  settings?: unknown[][],
): unknown[][] {
  return table(cutRequest(diameter, length, products, kerf, pattern, settings), cutPlanTable);
}

/**
 * Board feet that the best sawing plan of a log gives; money with the setting objective, value.
 *
 * It takes what CUTPLAN takes and answers its total alone, so that it can stand beside every log of a list.
 *
 * @customfunction CUTYIELD
 * @param diameter Small-end diameter inside bark, up and down as the log lies. A bare number is inches.
 * @param length Length of the log. A bare number is feet; 8'6" and 2.4 m work too.
 * @param products Thicknesses such as 4/4; or columns thickness, green size, price a board foot, from width.
 * @param kerf Width of the saw cut. A bare number is inches.
 * @param [pattern] live (default: through and through), slab (live edge), cant or quarter.
 * @param [settings] Two columns of name and value, as in CUTPLAN.
 * @returns Board feet, or money
 * @example =BOLE.CUTYIELD(12.5, 10, "4/4", 0.125, "cant", {"cant widths","6, 8"}) gives 68.166667
 * @example =BOLE.CUTYIELD(22, 8, "4/4", 0.125, "quarter", {"scale step",0.0625}) gives 155
 * @example =BOLE.CUTYIELD(2, 8, "4/4", 0.125) gives 0
 * @example =BOLE.CUTYIELD(16, 8, "4/4", 0.125, "live", {"objective","value"}) gives #N/A
 * @words yield, how much lumber, expected boards, recovery of a log
 * @see CUTPLAN
 * @picture patterns
 */
export function CUTYIELD(
  diameter: unknown[][],
  length: unknown[][],
  products: unknown[][],
  kerf: unknown[][],
  pattern?: unknown[][],
  settings?: unknown[][],
): unknown[][] {
  return spread(cutRequest(diameter, length, products, kerf, pattern, settings), cutYield);
}

/**
 * Extra board feet that the thinner of two kerfs gives from a log.
 *
 * Both kerfs are planned live, with the usual taper, for boards of one thickness sawn 1/8 in over. On one log a
 * thinner kerf may gain nothing: it pays when it makes room for one more board, or wider ones. Kerfs are taken to the
 * nearest 1/256 in, finer than in CUTPLAN, so that two thin blades are not rounded to the same.
 *
 * @customfunction KERFGAIN
 * @param diameter Small-end diameter inside bark. A bare number is inches.
 * @param length Length of the log. A bare number is feet.
 * @param thickness Thickness of the boards, such as 4/4. A bare number is inches.
 * @param kerf One width of saw cut. A bare number is inches.
 * @param otherkerf The other. A bare number is inches.
 * @returns Board feet
 * @example =BOLE.KERFGAIN(20, 12, "4/4", 0.25, 0.125) gives 19
 * @example =BOLE.KERFGAIN(20, 12, "4/4", 0.125, 0.125) gives 0
 * @example =BOLE.KERFGAIN(20, 12, "4/4", "thin", 0.125) gives #VALUE!
 * @words thin kerf, band against circular, blade choice
 * @see KERFLOSS
 * @picture kerf
 */
export function KERFGAIN(
  diameter: unknown[][],
  length: unknown[][],
  thickness: unknown[][],
  kerf: unknown[][],
  otherkerf: unknown[][],
): unknown[][] {
  return spread(
    {
      diameterIn: inches(diameter, "diameter"),
      lengthFt: feet(length, "length"),
      thicknessIn: sameForAll(inches(thickness, "thickness")),
      kerfIn: sameForAll(inches(kerf, "kerf")),
      otherKerfIn: sameForAll(inches(otherkerf, "otherkerf")),
    },
    kerfGain,
  );
}
