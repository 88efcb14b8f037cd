import { NEAR } from "../../rounding";
import { mustBeAbove, mustBeAtLeast, mustBeBelow, mustBeBetween, NoAnswer, short } from "../../errors";
import { LONGEST_FT, THICKEST_IN } from "../../logs/log";
import { IN_PER_FT } from "../../units";
import type { CutJob, Sweep } from "./cut-job";
import { inchesText } from "../../inches-text";
import { nearestSteps } from "./scale-steps";
import { STATION_IN } from "./swept-flitch";

/** No log tapers more or is flatter (common practice, no source). A larger number is another size in the wrong cell. */
const MOST_TAPER_IN = 12;
const MOST_TIMES_AS_WIDE = 3;

/** Refuses sizes that no log has. `whose` says which log, where there are several: `logs, row 3, `. */
export function mustBeLog(diameterIn: number, lengthFt: number, acrossIn: number, whose = ""): void {
  mustBeAbove(0, diameterIn, `${whose}diameter (in)`);
  mustBeBetween(0, THICKEST_IN, diameterIn, `${whose}diameter (in)`);
  mustBeBetween(
    diameterIn / MOST_TIMES_AS_WIDE,
    diameterIn * MOST_TIMES_AS_WIDE,
    acrossIn,
    "small end across (in), for this diameter",
  );
  mustBeAbove(0, lengthFt, `${whose}length (ft)`);
  mustBeBetween(0, LONGEST_FT, lengthFt, `${whose}length (ft)`);
}

export function mustBeTaper(inchesIn4Ft: number, whose = ""): void {
  mustBeBetween(0, MOST_TAPER_IN, inchesIn4Ft, `${whose}taper (in of diameter in 4 ft)`);
}

/** A tape across the butt is read to an eighth of an inch, so a large end this near to what the taper makes agrees with it. */
const AGREE_IN = 1 / 8;

/** Refuses a large end under the small end, and one that is not what the taper makes of the log, where that is given. */
export function mustBeLargeEnd(largeIn: number, smallIn: number, byTaperIn?: number, whose = ""): void {
  mustBeAtLeast(smallIn, largeIn, `${whose}large end (in)`);
  if (byTaperIn === undefined || Math.abs(byTaperIn - largeIn) <= AGREE_IN) return;
  throw new NoAnswer(
    `large end (in): wanted about ${short(byTaperIn)}, as the taper makes it, got ${short(largeIn)}; give one of the two`,
  );
}

/** Refuses a kerf that the scale would round to none: every board of such a plan would come out thin. */
export function mustBeOnScale(kerfIn: number, stepIn: number, what: string): void {
  if (nearestSteps(kerfIn, stepIn) >= 1) return;
  throw new NoAnswer(
    `${what} (in): wanted ${inchesText(stepIn / 2)} or more, half the scale step of ${inchesText(stepIn)}, ` +
      `got ${inchesText(kerfIn)}; set a finer scale step`,
  );
}

/** Refuses settings that the pattern cannot be sawn with. */
export function mustSuit(job: CutJob): void {
  mustBeAtLeast(0, job.wane, "wane (share of the thickness)");
  mustBeBelow(0.5, job.wane, "wane (share of the thickness)");
  mustBeBetween(0, 89, job.ringAngleDegrees, "ring angle (degrees)");
  mustBeAtLeast(0, job.heartIn, "heart (in)");
  mustBeAtLeast(0, job.passCost, "pass cost");
  mustBeAtLeast(0, job.bedSteps, "bed clearance (scale steps)");
  if (job.pattern === "cant" && job.cantWidths.length === 0)
    throw new NoAnswer("cant widths: a cant needs the widths to try, such as 4, 6, 8, among the settings");
  if (job.pattern === "timber" && !job.timber)
    throw new NoAnswer("timber: needs its two sides in inches, such as 6x8, among the settings");
  if (job.timber?.some(({ greenSteps }) => greenSteps < 1))
    throw new NoAnswer("timber: wanted sides of one scale step or more, got one that is less");
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
  const odd = sizes.find((size) => Math.abs(size / STATION_IN - Math.round(size / STATION_IN)) > NEAR);
  if (odd !== undefined)
    throw new NoAnswer(
      `sweep: wanted log length, board lengths and trim in whole ${STATION_IN} in steps, got ${inchesText(odd)} in`,
    );
}
