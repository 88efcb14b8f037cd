import {
  count,
  feetPerMinute,
  inches,
  logLength,
  mayBeZero,
  number,
  oneOf,
  optional,
  sameForAll,
} from "../../cells/read";
import { spread, table } from "../../cells/spread";
import { cutWidthIn } from "../../math/sawing/cut-width";
import { kerfLossShare } from "../../math/sawing/kerf-loss";
import { pieceCount } from "../../math/sawing/piece-count";
import { sawMinutes } from "../../math/sawing/saw-time";
import { headHeightsTable } from "./head-heights-table";
import { HEIGHT_UNITS } from "./heights";

/**
 * Share of the wood that the saw turns into sawdust.
 *
 * It holds for the middle of a stack of equal boards, each with its own kerf: 1/8 in of kerf on a 1 1/8 in board is
 * one tenth of the wood. Format the cell as percent.
 *
 * @customfunction KERFLOSS
 * @returns Share from 0 to 1
 * @example =BOLE.KERFLOSS(1.125, 0.125) gives 0.1
 * @example =BOLE.KERFLOSS("5/4", 0) gives 0
 * @example =BOLE.KERFLOSS(1.125, -0.1) gives #VALUE!
 * @words sawdust, waste, blade thickness, thin kerf, sawdust loss, wood lost
 * @see KERFGAIN
 * @picture kerf
 */
export const KERFLOSS = spread(
  {
    /** Thickness of the board as sawn. */
    thicknessIn: inches,
    /** Width of the saw cut. */
    kerfIn: mayBeZero(inches),
  },
  kerfLossShare,
);

/**
 * Saw-head settings down from a first cut, for boards of one thickness; stops above the bed.
 *
 * The blade height is read at the blade's lower side: it is the height of the sawn face left on the log. The first
 * pass takes the top slab; every pass after it drops the head by one board and one kerf and frees one board.
 *
 * @customfunction HEADHEIGHTS
 * @returns A table: pass, blade height, drop from the pass before, board freed (inches, or heights and drops in the unit asked for)
 * @example =BOLE.HEADHEIGHTS(10, 1.125, 0.125, 3) gives {"pass","blade height","drop","board";1,10,"","first cut";2,8.75,1.25,1.125;3,7.5,1.25,1.125;4,6.25,1.25,1.125}
 * @example =BOLE.HEADHEIGHTS(10, 2.125, 0.125, 9, 1) gives {"pass","blade height","drop","board";1,10,"","first cut";2,7.75,2.25,2.125;3,5.5,2.25,2.125;4,3.25,2.25,2.125;5,1,2.25,2.125}
 * @example =BOLE.HEADHEIGHTS(10, 1.125, 0.125, 1, , "mm") gives {"pass","blade height","drop","board";1,254,"","first cut";2,222.25,31.75,1.125}
 * @example =BOLE.HEADHEIGHTS(1, 1.125, 0.125, 3, 2) gives #N/A
 * @caution Keep the blade above dogs, log rests and clamps: give the lowest height that clears them as bed.
 * @words saw head, drop list, depth of cut, setting, scale, how far to lower the blade
 * @see CUTPLAN
 * @picture heads
 */
export const HEADHEIGHTS = table(
  {
    /** Height of the blade above the bed for the first cut. */
    startIn: inches,
    /** Thickness of the boards as sawn. */
    thicknessIn: inches,
    /** Width of the saw cut. */
    kerfIn: inches,
    /** How many boards are wanted. */
    count: count,
    /** Lowest height the blade may go to, such as the top of the dogs. */
    bedIn: optional(inches, 0),
    /** Unit of the heights and drops in the answer: in or mm. */
    unit: optional(oneOf(HEIGHT_UNITS), "in"),
  },
  headHeightsTable,
);

/**
 * Width of a flat cut through a round log at a depth below its top.
 *
 * @customfunction CUTWIDTH
 * @returns Inches
 * @example =BOLE.CUTWIDTH(20, 4) gives 16
 * @example =BOLE.CUTWIDTH(20, 10) gives 20
 * @example =BOLE.CUTWIDTH(20, 21) gives #N/A
 * @words chord, slab width, face width, how wide, how wide is a board, width of the cut at a depth
 * @picture chord
 */
export const CUTWIDTH = spread(
  {
    /** Diameter of the log where the cut is. */
    diameterIn: inches,
    /** Depth of the cut below the top of the log; none is the top itself. */
    depthIn: mayBeZero(inches),
  },
  cutWidthIn,
);

/**
 * Pieces of one thickness that come out of a depth of wood.
 *
 * The last piece needs no kerf under it. For a whole log with its round sides use CUTPLAN.
 *
 * @customfunction PIECECOUNT
 * @returns Count
 * @example =BOLE.PIECECOUNT(8, 1.125, 0.125) gives 6
 * @example =BOLE.PIECECOUNT(4.875, 1.125, 0.125) gives 4
 * @example =BOLE.PIECECOUNT(8, -1, 0.125) gives #VALUE!
 * @words how many boards, cant, stack, how many pieces
 * @picture kerf
 */
export const PIECECOUNT = spread(
  {
    /** Depth of wood to be sawn up, such as the height of a cant. */
    depthIn: inches,
    /** Thickness of the pieces as sawn. */
    thicknessIn: sameForAll(inches),
    /** Width of the saw cut. */
    kerfIn: mayBeZero(inches),
  },
  pieceCount,
);

/**
 * Minutes at the mill for a number of cuts.
 *
 * @customfunction SAWTIME
 * @returns Minutes
 * @example =BOLE.SAWTIME(20, 12, 24, 1.5) gives 40
 * @example =BOLE.SAWTIME(20, 12, "fast", 1.5) gives #VALUE!
 * @words how long, hours, feed rate, production, minutes to saw, sawing time
 */
export const SAWTIME = spread(
  {
    /** How many passes of the blade. */
    cuts: count,
    /** Length of the log. */
    lengthFt: logLength,
    /** Speed of the saw through the wood. */
    feedFpm: sameForAll(feetPerMinute),
    /** Minutes between cuts: gigging back, setting, taking off the board. */
    handlingMin: mayBeZero(number),
  },
  sawMinutes,
);
