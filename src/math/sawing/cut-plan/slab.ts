import { NEAR } from "../../rounding";
import { IN_PER_FT } from "../../units";
import { boardOf } from "./board";
import { halfAcrossAt, halfUpAt, type CutJob } from "./cut-job";
import type { Flitches } from "./flitch";
import { flatsIn } from "./guides";
import { halfFaceIn } from "./half-face";
import { placed, sawDown, viewOfLog } from "./live";
import type { Sawn } from "./plan";
import { stepsWithin } from "./scale-steps";
import { priceAt } from "./width-menu";

/**
 * Live-edge slabs: every flitch is one slab of the log's full length. Its tally width is that of its narrow face a
 * third of the way from the small end, down to the width step.
 *
 * @formula by dynamic program: V = tally / 12 * length * width * price - pass cost of each slab, width the one at a
 *   third of the length down to its step
 * @source common practice, no source: the width a third from the narrow end; the stack as in live sawing
 */
export function sawSlabs(job: CutJob): Sawn {
  const flatIn = flatsIn(job);
  const lengthFt = job.lengthsFt[0] ?? 0;
  const third = sectionAt(job, job.log.lengthIn / 3, flatIn);
  const smallEnd = sectionAt(job, 0, flatIn);

  const widthIn = (lowIn: number, highIn: number): number => {
    if (2 * smallEnd(lowIn, highIn) < job.minWidthIn - NEAR) return 0;
    return stepsWithin(2 * third(lowIn, highIn), job.widthStepIn) * job.widthStepIn;
  };
  const perInch = job.products.map(({ tallyIn }) => (tallyIn / IN_PER_FT) * lengthFt);
  const worthOf = (at: number, width: number) =>
    perInch[at]! * width * priceAt(job.products[at]!.prices, width) - job.passCost;
  const slabs: Flitches = {
    value: (at, lowIn) => Math.max(0, worthOf(at, widthIn(lowIn, lowIn + job.products[at]!.greenIn))),
    board: (at, lowIn) => {
      const product = job.products[at]!;
      const width = widthIn(lowIn, lowIn + product.greenIn);
      const where = { lowIn, lengthFt, middleIn: 0, startIn: 0 };
      return boardOf({ product, ...where, widthsIn: [width], greenWidthsIn: [width], value: worthOf(at, width) });
    },
  };
  const sawn = sawDown(job, 2 * halfUpAt(job.log, job.log.lengthIn), slabs);
  return { ...sawn, views: [{ ...viewOfLog(job), boards: placed(sawn.passes) }] };
}

/** Half the narrow face of a flitch between two heights, at a distance from the small end. */
function sectionAt(job: CutJob, z: number, flatIn: number): (lowIn: number, highIn: number) => number {
  const halfUp = halfUpAt(job.log, z);
  const halfAcross = halfAcrossAt(job.log, z);
  const pith = job.lies === "flat" ? halfUp : halfUpAt(job.log, job.log.lengthIn);
  return (lowIn, highIn) => Math.min(flatIn, halfFaceIn(halfAcross, halfUp, pith, lowIn, highIn));
}
