import { NoAnswer } from "../errors";
import { sumOf } from "../numbers";
import { IN2_PER_FT2, IN_PER_FT } from "../units";
import type { CutRequest } from "./cut-plan/cut-request";
import type { Outline, Pass, Plan, View } from "./cut-plan/plan";
import { planCut } from "./cut-plan/plan-cut";

/** A cut is followed along the log in so many steps: the taper bends its outline but little. */
const STEPS = 64;

/**
 * Square feet of face that the band cuts in a log's plan: every pass once, from bark to bark or from side to side of the
 * cant, the slab cut too; edging is not in it.
 *
 * @formula by dynamic program: the sum, over the passes of the best plan, of the width of the log or the cant at the
 *   blade's height, added up along the length
 * @source plain geometry: chords of ellipses, straight taper
 * @range patterns live, slab and cant; a straight log
 */
export function sawnFaceFt2(request: CutRequest): number {
  const plan = planCut(request);
  if (plan.job.pattern === "quarter") throw new NoAnswer("pattern: wanted live, slab or cant, got quarter");
  if (plan.job.sweep) throw new NoAnswer(`sweep (in): wanted a straight log, got ${plan.job.sweep.riseIn}`);
  const lengthIn = request.lengthFt * IN_PER_FT;
  return (sumOf(cutsOf(plan), ({ view, heightIn }) => meanWidthIn(view, heightIn)) * lengthIn) / IN2_PER_FT2;
}

/** Where each pass goes through the log as its view shows it. */
function cutsOf({ passes, views }: Plan): { view: View; heightIn: number }[] {
  const [asItLies, turned] = views;
  let place = (heightIn: number) => ({ view: asItLies!, heightIn });
  return passes.map(({ turn, bladeHeightIn }: Pass) => {
    // Turned over, the upper face of the cant lies on the bed, and the view shows the log as it lay before.
    if (turn === "log over") place = (heightIn) => ({ view: asItLies!, heightIn: asItLies!.cant!.highIn - heightIn });
    if (turn === "cant a quarter") place = (heightIn) => ({ view: turned!, heightIn });
    return place(bladeHeightIn);
  });
}

function meanWidthIn(view: View, heightIn: number): number {
  let sum = 0;
  for (let step = 0; step < STEPS; step++) sum += widthIn(view, heightIn, (step + 0.5) / STEPS);
  return sum / STEPS;
}

/** Width of the wood at a height, so far along from the small end. */
function widthIn({ smallEnd, butt, sides }: View, heightIn: number, share: number): number {
  const along = (key: keyof Outline) => smallEnd[key] + share * (butt[key] - smallEnd[key]);
  const off = (heightIn - along("pithIn")) / along("halfUpIn");
  if (Math.abs(off) >= 1) return 0;
  const half = along("halfAcrossIn") * Math.sqrt(1 - off ** 2);
  return Math.min(half, sides?.leftIn ?? half) + Math.min(half, sides?.rightIn ?? half);
}
