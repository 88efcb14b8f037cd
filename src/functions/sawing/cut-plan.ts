import { inches, logLength, sameForAll } from "../../cells/read";
import { spread, table } from "../../cells/spread";
import { kerfGain } from "../../math/sawing/kerf-gain";
import { cutYield } from "../../math/sawing/cut-plan/plan-cut";
import { cutPlanTable } from "./cut-plan-table";
import { CUT_REQUEST } from "./cut-request";

/**
 * The sawing plan of one log that gives the most: every pass with its blade height and board, and the total.
 *
 * Measure both ends inside the bark. The diameter is the small end's, up and down as the log lies for its first cut;
 * an oval log has its other diameter among the settings as `small end across`. Give the large end there too, and the log
 * is planned with its own taper. The taper is how much the diameter grows in 4 ft: (large end - small end) / length in
 * feet * 4.
 *
 * The plan takes the pith as level (log lies `split`): shim the small end up by half the difference of the two ends,
 * and all boards run along the pith. A log that simply lies on the bed is `flat`.
 *
 * The blade height is read at the blade's lower side, and is the height of the sawn face left on the log. Pass 1 takes
 * the top slab; each later pass drops the head by `drop` and frees the board of its row. Heights are whole scale steps
 * above the bed, so that the head scale can be set to them. Only the pith cuts of a quarter-sawn log, and the boards off
 * a cant that is centred, are measured from the pith and may fall between two steps; cant offset `free` keeps them on
 * the scale. Below the total stand the shim, how far the first cut may be moved with the same drops, the share
 * reached of what no plan can pass, and warnings, such as a kerf that is no whole number of scale steps with the figure
 * it was rounded to. A kerf under half a scale step is refused, because the plan would have none.
 *
 * A cant is sawn in three positions: boards off the top down to the cant; the log turned over onto that flat, its
 * heights now measured from it; then the cant turned a quarter onto its round side. A quarter-sawn log is halved
 * through the pith, the halves quartered, and every quarter laid on the face whose board comes off next. A heart takes
 * two cuts each time, over and under it.
 *
 * A timber is a beam or mantel with the heart in it: the setting `timber` has its two sides as they are sawn, such as 6x8.
 * The log is sawn to a cant as wide as one of them, and the turned cant into boards, the timber, and boards again, the
 * better way up. It is as long as a full section goes, within the wane allowed. By value it counts nothing, for it has
 * no price among the products. BEAMFIT says beforehand how much room there is. A timber is not graded here: where it
 * carries a load, that is for an engineer and the local code.
 *
 * Settings are two columns of name and value, in any order. A row that is left out or blank leaves its setting as it
 * usually is. A setting that changes nothing is named under the plan. Stock under an inch counts as an inch in board feet,
 * as the trade tallies it.
 *
 * Boards are not rounded to surface measure here. Keep the customary foot of room over the biggest log for knots,
 * flare and turning (common practice, no source).
 *
 * @customfunction CUTPLAN
 * @returns A table of passes (inches, feet, board feet), the total, and remarks
 * @example =BOLE.CUTPLAN(16, "8-4", "4/4", 0.125, "live", {"trim",4}) gives a table of 19 rows: 2 14.75; 13 1; total 95.5; first cut 16; log holds 148.914
 * @example =BOLE.CUTPLAN(22, 8, 1, 0.125, "quarter", {"scale step",0.0625}) gives a table of 17 rows: 3 1.125; total 155; shim 0.5; log holds 265.116
 * @example =BOLE.CUTPLAN(18, "12-4", "8/4", 0.125, "timber", {"timber","6x8";"trim",4}) gives a table of 17 rows: 10 5.625; total 187.667
 * @example =BOLE.CUTPLAN(44, 10, "8/4", 0.125, "slab", {"guide opening",30}) gives #N/A
 * @example =BOLE.CUTPLAN(16, 8, "4/4", 0.125, "live", {"color","red"}) gives #VALUE!
 * @caution Check the fit of the log in the mill and the maker's limits before sawing; a log that is turned can roll.
 * @words cut list, sawing pattern, first cut, opening face, boards, slabs, flitch, best, quartersawn, beam, timber, mantel, boxed heart, best way to saw a log, how to saw, sawing plan, quarter sawn plan, plan the cuts
 * @see CUTYIELD, BEAMFIT
 * @picture patterns, heads
 */
export const CUTPLAN = table(CUT_REQUEST, cutPlanTable);

/**
 * Board feet that the best sawing plan of a log gives; money with the setting objective, value.
 *
 * It takes what CUTPLAN takes and answers its total alone, so that it can stand beside every log of a list.
 *
 * @customfunction CUTYIELD
 * @returns Board feet, or money
 * @example =BOLE.CUTYIELD(12.5, 10, "4/4", 0.125, "cant", {"cant widths","6, 8"}) gives 68.166667
 * @example =BOLE.CUTYIELD(22, 8, "4/4", 0.125, "quarter", {"scale step",0.0625}) gives 155
 * @example =BOLE.CUTYIELD(2, 8, "4/4", 0.125) gives 0
 * @example =BOLE.CUTYIELD(16, 8, "4/4", 0.125, "live", {"objective","value"}) gives #N/A
 * @words yield, how much lumber, expected boards, recovery of a log, how many boards, how much lumber out of a log
 * @see CUTPLAN
 * @picture patterns
 */
export const CUTYIELD = spread(CUT_REQUEST, cutYield);

/**
 * Extra board feet that the thinner of two kerfs gives from a log.
 *
 * Both kerfs are planned live, with the usual taper, for boards of one thickness sawn 1/8 in over. On one log a
 * thinner kerf may gain nothing: it pays when it makes room for one more board, or wider ones. Kerfs are taken to the
 * nearest 1/256 in, finer than in CUTPLAN, so that two thin blades are not rounded to the same.
 *
 * @customfunction KERFGAIN
 * @returns Board feet
 * @example =BOLE.KERFGAIN(20, 12, "4/4", 0.25, 0.125) gives 19
 * @example =BOLE.KERFGAIN(20, 12, "4/4", 0.125, 0.125) gives 0
 * @example =BOLE.KERFGAIN(20, 12, "4/4", "thin", 0.125) gives #VALUE!
 * @words thin kerf, band against circular, blade choice
 * @see KERFLOSS
 * @picture kerf
 */
export const KERFGAIN = spread(
  {
    /** Small-end diameter inside bark. */
    diameterIn: inches,
    /** Length of the log. */
    lengthFt: logLength,
    /** Thickness of the boards, such as 4/4. */
    thicknessIn: sameForAll(inches),
    /** One width of saw cut. */
    kerfIn: sameForAll(inches),
    /** The other. */
    otherKerfIn: sameForAll(inches),
  },
  kerfGain,
);
