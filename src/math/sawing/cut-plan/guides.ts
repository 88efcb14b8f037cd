import { NEAR } from "../../rounding";
import { NoAnswer } from "../../errors";
import { halfUpAt, widestIn, type CutJob } from "./cut-job";
import { inchesText } from "../../inches-text";

/**
 * How far from its middle a log may be cut: no limit where the butt goes between the blade guides, half the opening
 * where flats have to be taken off both sides first. A log too wide for that cannot be sawn whole.
 */
export function flatsIn(job: CutJob): number {
  if (!guidesAreNarrow(job)) return Infinity;
  const opening = job.guideOpeningIn!;
  if (flatsAreNotEnough(job))
    throw new NoAnswer(
      `${tooWide(job, opening)}: halve or quarter it first, as flats on both sides would not be enough`,
    );
  return opening / 2;
}

/** Whether the butt does not go between the guides even with a flat on both sides. */
export function flatsAreNotEnough({ log, guideOpeningIn }: CutJob): boolean {
  return guideOpeningIn !== undefined && widestIn(log) > guideOpeningIn * Math.SQRT2 + NEAR;
}

/** A cant or a timber is sawn with nothing taken off its sides first. */
export function mustGoBetweenGuides(job: CutJob): void {
  if (guidesAreNarrow(job))
    throw new NoAnswer(
      `${tooWide(job, job.guideOpeningIn!)}: neither a cant nor a timber can be sawn; try live sawing after flats, or halve it`,
    );
}

/** The cuts of a quarter, and of a half on its edge, are as wide as half the butt. */
export function mustQuarterBetweenGuides(job: CutJob): void {
  const opening = job.guideOpeningIn;
  if (opening !== undefined && halfUpAt(job.log, job.log.lengthIn) > opening + NEAR)
    throw new NoAnswer(`${tooWide(job, opening)}: its quarters would be too wide too, so this mill cannot quarter it`);
}

/** Whether the butt is wider than the blade guides open. */
export function guidesAreNarrow({ log, guideOpeningIn }: CutJob): boolean {
  return guideOpeningIn !== undefined && widestIn(log) > guideOpeningIn + NEAR;
}

function tooWide(job: CutJob, opening: number): string {
  return `butt of ${inchesText(widestIn(job.log))} in, guides that open ${inchesText(opening)} in`;
}
