import { mustBeAtLeast } from "../errors";
import { sumOf } from "../numbers";
import { MIN_PER_H } from "../units";
import type { CutRequest } from "./cut-plan/cut-request";
import type { Pass, Plan } from "./cut-plan/plan";
import { planCut } from "./cut-plan/plan-cut";
import { sawMinutes } from "./saw-time";

/** A log has two halves to be quartered, and four quarters. */
const HALVES = 2;
const QUARTERS = 4;

/**
 * Hours at the mill to saw a log by its best plan: each pass takes the length at the feed speed and its handling, each turn
 * of the log, the cant, a half or a quarter its own minutes. Edging, loading and sharpening are not in it.
 *
 * @formula by dynamic program: (passes * (length / feed + handling) + turns * turning) / 60, passes and turns those
 *   of the best plan
 * @source plain arithmetic on the passes of the cut plan
 * @range feed above 0; handling and turning from 0
 */
export function logHours({ feedFpm, handlingMin, turningMin, ...request }: Work): number {
  mustBeAtLeast(0, turningMin, "turning (min)");
  const plan = planCut(request);
  const passes = sumOf(plan.passes, timesOf);
  const minutes = sawMinutes({ cuts: passes, lengthFt: request.lengthFt, feedFpm, handlingMin });
  return (minutes + turnsOf(plan) * turningMin) / MIN_PER_H;
}

interface Work extends CutRequest {
  feedFpm: number;
  /** Minutes between one pass and the next. */
  handlingMin: number;
  /** Minutes of one turn. */
  turningMin: number;
}

/** How often a pass is made: a cut that quarters on both halves, one that frees a quarter's board on all four. */
export function timesOf({ task, copies }: Pass): number {
  return task?.kind === "quarter" ? HALVES : copies;
}

/** How often something is turned: a quarter each time that its other face goes on the bed. */
export function turnsOf({ passes }: Pick<Plan, "passes">): number {
  const turned = passes.filter(({ turn }) => turn !== undefined).length;
  const faces = passes.flatMap(({ task }) => (task?.kind === "quarter board" ? [task.face] : []));
  if (faces.length === 0) return turned;
  const changes = faces.filter((face, at) => at === 0 || face !== faces[at - 1]).length;
  return turned + HALVES + QUARTERS * changes;
}
