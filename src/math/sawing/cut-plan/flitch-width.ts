import { IN_PER_FT } from "../../units";
import { halfAcrossAt, halfUpAt, type CutJob } from "./cut-job";
import { halfFaceIn } from "./half-face";

/** How wide square-edged boards may be in a flitch between two heights above the bed. */
export interface FlitchWidth {
  /** Whether a shorter board may never be narrower: then the search of lengths can stop early. */
  shorterIsWider: boolean;
  /** Looks at a flitch; the other answers are about it. */
  look(lowIn: number, highIn: number): void;
  /** Inches for a board of the i-th length, longest first. */
  usableIn(i: number): number;
  /** Where such a board lies: the middle of its width across the log, and its start from the small end. */
  place(i: number): { middleIn: number; startIn: number };
}

/** The section of the log at the narrow end of a board of each length; every board starts at the butt. */
export interface Sections {
  startIn: Float64Array;
  halfAcrossIn: Float64Array;
  halfUpIn: Float64Array;
  pithIn: Float64Array;
}

/** The sections as the log lies for its first cut. */
export function sectionsOf({ log, lies, lengthsFt, trimIn }: CutJob): Sections {
  const startIn = Float64Array.from(lengthsFt, (length) => Math.max(0, log.lengthIn - IN_PER_FT * length - trimIn));
  const halfUpIn = startIn.map((z) => halfUpAt(log, z));
  const pithIn = lies === "flat" ? halfUpIn : startIn.map(() => halfUpAt(log, log.lengthIn));
  return { startIn, halfAcrossIn: startIn.map((z) => halfAcrossAt(log, z)), halfUpIn, pithIn };
}

/** The sections after a quarter turn: height and width change places, and the butt touches the bed. */
export function quarterTurned(sections: Sections, { log }: CutJob): Sections {
  const pithIn = sections.startIn.map(() => halfAcrossAt(log, log.lengthIn));
  return { ...sections, halfAcrossIn: sections.halfUpIn, halfUpIn: sections.halfAcrossIn, pithIn };
}

/**
 * Widths in a straight log, reaching from the middle no further than `leftIn` and `rightIn`: flats taken off the log's
 * sides for the blade guides, or the faces of a cant.
 */
export function straightWidth(sections: Sections, leftIn = Infinity, rightIn = leftIn): FlitchWidth {
  let low = 0;
  let high = 0;
  const halfIn = (i: number) =>
    halfFaceIn(sections.halfAcrossIn[i]!, sections.halfUpIn[i]!, sections.pithIn[i]!, low, high);
  return {
    shorterIsWider: true,
    look: (lowIn, highIn) => {
      low = lowIn;
      high = highIn;
    },
    usableIn: (i) => {
      const half = halfIn(i);
      return Math.min(half, rightIn) + Math.min(half, leftIn);
    },
    place: (i) => {
      const half = halfIn(i);
      return { middleIn: (Math.min(half, rightIn) - Math.min(half, leftIn)) / 2, startIn: sections.startIn[i]! };
    },
  };
}
