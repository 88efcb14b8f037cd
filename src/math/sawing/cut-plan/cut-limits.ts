import { mustBeAbove, mustBeAtLeast, mustBeBelow, mustBeBetween, NoAnswer } from "../../errors";
import { LONGEST_FT, THICKEST_IN } from "../../logs/log";
import { IN_PER_FT } from "../../units";
import type { CutJob, Sweep } from "./cut-job";
import type { CutSettings } from "./cut-settings";
import { inchesText } from "../inches-text";
import { NEAR_IN, nearestSteps } from "./scale-steps";
import { STATION_IN } from "./swept-width";

/** More taper, or a flatter log, is another size in its cell (common practice, no source). */
const MOST_TAPER_IN = 12;
const MOST_TIMES_AS_WIDE = 3;

/** Refuses sizes that no log has. */
export function mustBeLog(diameterIn: number, lengthFt: number, settings: Partial<CutSettings>): void {
  mustBeAbove(0, diameterIn, "diameter (in)");
  mustBeBetween(0, THICKEST_IN, diameterIn, "diameter (in)");
  const acrossIn = settings["small end across"] ?? diameterIn;
  mustBeBetween(
    diameterIn / MOST_TIMES_AS_WIDE,
    diameterIn * MOST_TIMES_AS_WIDE,
    acrossIn,
    "small end across (in), for this diameter",
  );
  mustBeBetween(0, MOST_TAPER_IN, settings.taper ?? 0, "taper (in of diameter in 4 ft)");
  mustBeAbove(0, lengthFt, "length (ft)");
  mustBeBetween(0, LONGEST_FT, lengthFt, "length (ft)");
}

/** Refuses a kerf that the scale would round to none: every board of such a plan would come out thin. */
export function mustBeOnScale(kerfIn: number, stepIn: number, what: string): void {
  if (nearestSteps(kerfIn, stepIn) >= 1) return;
  throw new NoAnswer(
    `${what} (in): wanted ${inchesText(stepIn / 2)} or more, half the scale step of ${inchesText(stepIn)}, ` +
      `got ${inchesText(kerfIn)}; set a finer scale step`,
  );
}

/** Refuses what the pattern cannot be sawn with. */
export function mustSuit(job: CutJob): void {
  mustBeAtLeast(0, job.wane, "wane (share of the thickness)");
  mustBeBelow(0.5, job.wane, "wane (share of the thickness)");
  mustBeBetween(0, 89, job.ringAngleDegrees, "ring angle (degrees)");
  mustBeAtLeast(0, job.heartIn, "heart (in)");
  mustBeAtLeast(0, job.passCost, "pass cost");
  mustBeAtLeast(0, job.bedSteps, "bed clearance (scale steps)");
  if (job.pattern === "cant" && job.cantWidths.length === 0)
    throw new NoAnswer("cant widths: a cant needs the widths to try, such as 4, 6, 8, among the settings");
  if (job.sweep) mustSuitSweep(job, job.sweep);
}

/** A bowed log is planned live with its ends level only, station by station. */
function mustSuitSweep(job: CutJob, sweep: Sweep): void {
  mustBeBetween(0, job.log.lengthIn / 4, sweep.riseIn, "sweep (in)");
  if (job.pattern !== "live" || job.lies !== "split")
    throw new NoAnswer(
      "sweep: is planned for live sawing of a log that lies split; leave the sweep out for other patterns",
    );
  const sizes = [job.log.lengthIn, job.trimIn, ...job.lengthsFt.map((length) => length * IN_PER_FT)];
  const odd = sizes.find((size) => Math.abs(size / STATION_IN - Math.round(size / STATION_IN)) > NEAR_IN);
  if (odd !== undefined)
    throw new NoAnswer(
      `sweep: wanted log length, board lengths and trim in whole ${STATION_IN} in steps, got ${inchesText(odd)} in`,
    );
}
