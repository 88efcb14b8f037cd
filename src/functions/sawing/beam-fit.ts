import { inches, logLength, mayBeZero } from "../../cells/read";
import { spread } from "../../cells/spread";
import { beamFitIn } from "../../math/sawing/beam-fit";

/**
 * Inches to spare in the log when a timber is boxed out of it; minus when it shows more wane than allowed.
 *
 * Measured at the small end inside bark, the heart boxed in the middle. A timber that is shorter than its log can lie
 * nearer the butt: with length, the feet from the small end to the timber's thin end, and the log's taper, the log is as
 * thick as it is there. Bow, an oval log and bad heart come off what is to spare.
 *
 * @customfunction BEAMFIT
 * @returns Inches of diameter to spare; minus when too thin
 * @example =BOLE.BEAMFIT(10, 6, 8) gives 0
 * @example =BOLE.BEAMFIT(12, 8, 8, 0, 0, 1) gives 2
 * @example =BOLE.BEAMFIT(9.5, 6, 8, 4, 0.5) gives 0
 * @example =BOLE.BEAMFIT(10, 8, 8) gives -1.31
 * @example =BOLE.BEAMFIT(10, 6, 8, 0, 0, 3) gives #N/A
 * @caution Whether a beam carries its load is not asked here: that is for the building code and a licensed engineer.
 * @see CUTPLAN
 * @words timber, mantel, beam, post, 6x8, cant size, will it fit, boxed heart, wane, square out of a log
 * @picture log
 */
export const BEAMFIT = spread(
  {
    /** Small-end diameter inside bark. */
    diameterIn: inches,
    /** Height of the section. */
    heightIn: inches,
    /** Width of the section. */
    widthIn: inches,
    /** From the log's small end to the timber's thin end. */
    lengthFt: mayBeZero(logLength),
    /** What the diameter gains in 4 ft. */
    taperIn: mayBeZero(inches),
    /** Wane allowed at a corner, across each face. */
    waneIn: mayBeZero(inches),
  },
  beamFitIn,
);
