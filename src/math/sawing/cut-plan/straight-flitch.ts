import { IN_PER_FT } from "../../units";
import { halfAcrossAt, halfUpAt, type CutJob } from "./cut-job";
import { bestWhereShorterIsWider, perInchOf } from "./best-length";
import type { EdgedBoards } from "./flitch";
import { halfFaceIn } from "./half-face";
import { stepsWithin } from "./scale-steps";
import type { WidthMenu } from "./width-menu";

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
 * Boards in a straight log, reaching from the middle no further than `leftIn` and `rightIn`: flats taken off the log's
 * sides for the blade guides, or the faces of a cant.
 */
export function straightBoards(
  job: CutJob,
  { startIn, halfAcrossIn, halfUpIn, pithIn }: Sections,
  menus: readonly WidthMenu[],
  leftIn = Infinity,
  rightIn = leftIn,
): EdgedBoards {
  const most = menus.map((menu) => menu.most);
  const perInch = perInchOf(job);
  const half = (lowIn: number, highIn: number, i: number) =>
    halfFaceIn(halfAcrossIn[i]!, halfUpIn[i]!, pithIn[i]!, lowIn, highIn);
  const usableSteps = (lowIn: number, highIn: number, i: number) => {
    const halfIn = half(lowIn, highIn, i);
    return stepsWithin(Math.min(halfIn, rightIn) + Math.min(halfIn, leftIn), job.stepIn);
  };
  const widthAt = (product: number, lowIn: number, highIn: number, i: number) =>
    most[product]![usableSteps(lowIn, highIn, i)]!;
  return {
    best: (product, lowIn, highIn) => bestWhereShorterIsWider(perInch[product]!, widthAt, product, lowIn, highIn),
    place: (lowIn, highIn, i) => {
      const halfIn = half(lowIn, highIn, i);
      const middleIn = (Math.min(halfIn, rightIn) - Math.min(halfIn, leftIn)) / 2;
      return { usableSteps: usableSteps(lowIn, highIn, i), middleIn, startIn: startIn[i]! };
    },
  };
}
