import { mustBeBelow, mustBeBetween, NoAnswer } from "../errors";
import { FTLBF_PER_MIN_PER_HP, IN_PER_FT } from "../units";

interface Thread {
  diameterIn: number;
  pitchIn: number;
  starts?: number | undefined;
  friction?: number | undefined;
}

/** Greased steel on bronze or iron as textbooks work it: Mott 4e, Example 17-1; Bhandari, Examples 6.4 and 6.6. */
export const USUAL_THREAD_FRICTION = 0.15;

/**
 * How far a nut travels.
 *
 * @formula rise = turns * (starts or 1) * p; p = pitchIn
 * @source plain geometry
 * @range 1 to 20 starts
 */
export function screwRiseIn({ turns, pitchIn, starts = 1 }: ScrewRise): number {
  mustBeBetween(1, MOST_STARTS, starts, "thread starts");
  return turns * starts * pitchIn;
}

/**
 * Torque that raises or lowers a load on a square thread, the thread alone; below zero the load runs down by itself.
 *
 * @formula T = F * m / 2 * (mu - s) / (1 + mu * s) if direction = "down", else F * m / 2 * (mu + s) / (1 - mu * s);
 *   F = loadLb; mu = friction or 0.15; m = diameterIn - pitchIn / 2 [in];
 *   s = (starts or 1) * pitchIn / (pi * m) [slope]
 * @source Mott 4e, Example 17-1, p 703
 * @source Bhandari, Examples 6.4 and 6.6
 * @source common practice, no source: friction 0.15 for a greased steel screw when none is given
 * @range a pitch under the diameter; friction up to 1; up only while mu tan l is under 1, or the screw locks
 * @checked 6 of 6 printed examples, the collars of 4 added as their books do; Mott prints 1,809 for inputs that give 1,814
 */
export function screwTorqueLbfIn({ loadLb, direction = "up", friction, ...thread }: ScrewTorque): number {
  const { meanIn, slope } = threadShape(thread);
  const mu = frictionOf(friction);
  if (direction === "down") return (((loadLb * meanIn) / 2) * (mu - slope)) / (1 + mu * slope);
  mustBeBelow(1 / slope, mu, "thread friction, or a load cannot be raised on a thread as steep as this");
  return (((loadLb * meanIn) / 2) * (mu + slope)) / (1 - mu * slope);
}

/**
 * Power that raises a load at a speed, the thread alone.
 *
 * @formula P = 2 * pi * T * n / (12 * 33000); n = riseInPerMin / screwRiseIn(turns: 1) [rpm];
 *   T = screwTorqueLbfIn(direction: "up") [lbf in]
 * @source Bhandari, Example 6.6
 * @range as the torque that raises the load
 * @checked 1 of 1 printed example, with its collar
 */
export function screwPowerHp({ loadLb, riseInPerMin, ...thread }: ScrewPower): number {
  const turnsPerMin = riseInPerMin / screwRiseIn({ turns: 1, pitchIn: thread.pitchIn, starts: thread.starts });
  const torqueLbfIn = screwTorqueLbfIn({ loadLb, ...thread });
  return (2 * Math.PI * torqueLbfIn * turnsPerMin) / (IN_PER_FT * FTLBF_PER_MIN_PER_HP);
}

/**
 * Whether the thread alone holds the load when nothing turns it.
 *
 * @formula holds = mu > s; mu = friction or 0.15; m = diameterIn - pitchIn / 2 [in];
 *   s = (starts or 1) * pitchIn / (pi * m)
 * @source Mott 4e, Example 17-1, p 703
 * @source common practice, no source: friction 0.15 for a greased steel screw when none is given
 * @range a pitch under the diameter; friction up to 1
 */
export function screwHolds({ friction, ...thread }: Thread): boolean {
  return frictionOf(friction) > threadShape(thread).slope;
}

/** Mean diameter of a square thread, half a pitch deep, and the slope of its helix there, tan of the lead angle. */
export function threadShape({ diameterIn, pitchIn, starts = 1 }: Thread): { meanIn: number; slope: number } {
  if (!(pitchIn < diameterIn))
    throw new NoAnswer(`screw pitch (in): wanted less than the diameter, ${diameterIn}, got ${pitchIn}`);
  mustBeBetween(1, MOST_STARTS, starts, "thread starts");
  const meanIn = diameterIn - pitchIn / 2;
  return { meanIn, slope: (starts * pitchIn) / (Math.PI * meanIn) };
}

interface ScrewRise {
  turns: number;
  pitchIn: number;
  starts?: number | undefined;
}

interface ScrewTorque extends Thread {
  loadLb: number;
  direction?: "up" | "down" | undefined;
}

interface ScrewPower extends Thread {
  loadLb: number;
  riseInPerMin: number;
}

/** Dry steel on steel sticks less than this; 15 is a percent typed without its sign, and would hold any head up. */
const MOST_FRICTION = 1;

function frictionOf(friction = USUAL_THREAD_FRICTION): number {
  if (!(friction > 0 && friction <= MOST_FRICTION))
    throw new NoAnswer(
      `thread friction: wanted more than 0, up to ${MOST_FRICTION}, got ${friction}; 15 percent is 0.15 or 15%`,
    );
  return friction;
}

/** More threads side by side than any lift screw has; a larger number is a pitch in the wrong cell. */
const MOST_STARTS = 20;
