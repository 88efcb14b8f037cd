import { count, inches, mayBeNegative, named, number, oneOf, optional, pounds, zeroAsText } from "../../cells/read";
import { spread } from "../../cells/spread";
import { screwHolds, screwPowerHp, screwRiseIn, screwTorqueLbfIn, USUAL_THREAD_FRICTION } from "../../math/mill/screw";

/** The thread, of which the lift screws ask the same. */
const THREAD = {
  /** Outside diameter of the thread. */
  diameterIn: inches,
  /** Pitch of the thread. */
  pitchIn: inches,
  /** Threads side by side. */
  starts: optional(count, 1),
  /** Friction in the thread; 0.15 is a greased steel screw (common practice). 15% works too. */
  friction: optional(zeroAsText(number), USUAL_THREAD_FRICTION),
};

/**
 * How far a lift screw raises its nut.
 *
 * Four turns an inch is a pitch of 1/4. A screw with two threads side by side, two starts, rises twice its pitch a
 * turn.
 *
 * @customfunction SCREWRISE
 * @returns Inches
 * @example =BOLE.SCREWRISE(10, 0.25) gives 2.5
 * @example =BOLE.SCREWRISE(10, 0.25, 1.5) gives #VALUE!
 * @caution Never under a head that only a screw holds up: block it, and lock out the power.
 * @words head height per turn, crank turns, acme screw, lead, threads per inch, raise the head
 * @picture screw
 */
export const SCREWRISE = spread(
  {
    /** Turns of the screw; minus to come down. */
    turns: mayBeNegative(number),
    /** Pitch of the thread. */
    pitchIn: inches,
    /** Threads side by side. */
    starts: optional(count, 1),
  },
  screwRiseIn,
);

/**
 * Torque that raises or lowers a load on a lift screw.
 *
 * A square thread with friction; the thrust bearing is not in it. For an Acme thread divide the friction by 0.968, the
 * cosine of half its angle. Below zero, lowering, the load runs down by itself. Two screws bear half the load each only
 * when they are tied to turn together.
 *
 * @customfunction SCREWTORQUE
 * @returns Pound-force inches
 * @example =BOLE.SCREWTORQUE(10000, 2.25, 0.5, 1, 0.2) gives 2841
 * @example =BOLE.SCREWTORQUE(1000, 1, 0.2, 1, 0.15, "down") gives 35.3
 * @example =BOLE.SCREWTORQUE(1000, 1, 0.9, 4, 0.6) gives #N/A
 * @caution Friction is a guess until measured. Never under a head that only a screw holds; keep to the screw maker's load.
 * @see SCREWHOLDS
 * @words lift screw, jack screw, acme, leadscrew, how hard to crank, raise the head, winch the head
 * @picture screw
 */
export const SCREWTORQUE = spread(
  {
    /** Load on the screw. */
    loadLb: pounds,
    ...THREAD,
    /** Whether the load goes up or down. */
    direction: optional(oneOf({ up: ["raise"], down: ["lower"] }), "up"),
  },
  screwTorqueLbfIn,
);

/**
 * Power that raises a load on a lift screw.
 *
 * The thread alone: thrust bearing, gears and starting want more.
 *
 * @customfunction SCREWPOWER
 * @returns Horsepower
 * @example =BOLE.SCREWPOWER(1000, 60, 1, 0.2) gives 0.478
 * @example =BOLE.SCREWPOWER(1000, 60, 1, 1) gives #N/A
 * @caution Friction is a guess until measured. Never under a head that only a screw holds; keep to the screw maker's load.
 * @see SCREWTORQUE
 * @words lift motor size, head raise motor, up-down motor
 * @picture screw
 */
export const SCREWPOWER = spread(
  {
    /** Load on the screw. */
    loadLb: pounds,
    /** Speed of the rise, inches per minute. */
    riseInPerMin: named("rise", number),
    ...THREAD,
  },
  screwPowerHp,
);

/**
 * Whether a lift screw holds its load by itself when nothing turns it.
 *
 * The thread alone, standing still. Vibration can set down a load that a screw holds at rest: fit a brake. Grease
 * lowers the friction, so try 0.10 too (from memory).
 *
 * @customfunction SCREWHOLDS
 * @returns TRUE or FALSE
 * @example =BOLE.SCREWHOLDS(1, 0.2) gives TRUE
 * @example =BOLE.SCREWHOLDS(1, 0.2, 4) gives FALSE
 * @example =BOLE.SCREWHOLDS(1, 2) gives #N/A
 * @caution A saw shakes: a screw that holds at rest may creep. Fit a brake, block the head, never work under it.
 * @see SCREWTORQUE
 * @words self-locking, will the head drift down, head falls, head drops, power off, self locking, falls by itself
 * @picture screw
 */
export const SCREWHOLDS = spread(THREAD, screwHolds);
