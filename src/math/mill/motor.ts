import { mustBeAbove, mustBeBetween, NoAnswer } from "../errors";
import { SECONDS_PER_MIN } from "../units";
import { speedKept } from "./pulleys";
import { rimRpm } from "./rim";

/** The mains frequency of North America, in hertz: a nameplate speed there is the speed at 60 Hz. */
export const MAINS_HERTZ = 60;

/**
 * Speed of an induction motor on a frequency drive; without a nameplate speed, its synchronous speed.
 *
 * The turns a motor falls behind at full load are taken from its nameplate and kept the same at every frequency,
 * as they are under a steady torque. A saw is such a load; the cube law of fans and pumps is not for it.
 *
 * @formula n = synchronousRpm() - slip; slip = slipRpm() [rpm]
 * @source plain arithmetic: a pair of poles passes once a cycle; the full-load slip in rpm held at constant torque
 * @range an even number of poles from 2; a frequency above the slip; a nameplate speed from 85 to 100 % of the synchronous one
 * @checked 3 of 3 printed examples of the synchronous speed; the one with slip on a drive (1,150 rpm) is from memory
 */
export function motorRpm({ hertz, poles, nameplateRpm, baseHertz = MAINS_HERTZ }: MotorRpm): number {
  const slip = slipRpm({ poles, nameplateRpm, baseHertz });
  mustBeAbove(hertzFor(slip, poles), hertz, "drive frequency (Hz), which must exceed the motor's slip");
  return synchronousRpm(hertz, poles) - slip;
}

/**
 * Drive frequency for a wanted band speed.
 *
 * @formula f = (motor + slip) * poles / 120; motor = wheel * drivenIn / driverIn / speedKept() [rpm];
 *   wheel = rimRpm(diameterIn: wheelIn) [rpm]; slip = slipRpm() [rpm]
 * @source plain arithmetic: the motor's speed formula and the pulley rule turned round
 * @range an even number of poles from 2; a nameplate speed from 85 to 100 % of the synchronous one; a belt that slips 0 to 20 %
 */
export function driveHertz({
  speedFpm,
  wheelIn,
  driverIn,
  drivenIn,
  poles,
  nameplateRpm,
  baseHertz = MAINS_HERTZ,
  slipPercent = 0,
}: DriveHertz): number {
  mustBeAbove(0, driverIn, "motor pulley (in)");
  const motorTurns = (rimRpm({ diameterIn: wheelIn, speedFpm }) * drivenIn) / driverIn / speedKept(slipPercent);
  return hertzFor(motorTurns + slipRpm({ poles, nameplateRpm, baseHertz }), poles);
}

interface Nameplate {
  poles: number;
  nameplateRpm?: number | undefined;
  baseHertz?: number | undefined;
}

interface MotorRpm extends Nameplate {
  hertz: number;
}

interface DriveHertz extends Nameplate {
  speedFpm: number;
  wheelIn: number;
  driverIn: number;
  drivenIn: number;
  slipPercent?: number | undefined;
}

/**
 * A pair of poles passes once a cycle, so a field of p poles turns 2 f / p times a second.
 *
 * @formula n = 120 * hertz / poles
 * @source plain arithmetic
 */
export function synchronousRpm(hertz: number, poles: number): number {
  return (2 * SECONDS_PER_MIN * hertz) / poles;
}

function hertzFor(rpm: number, poles: number): number {
  return (rpm * poles) / (2 * SECONDS_PER_MIN);
}

/**
 * No usual motor falls further behind its field at full load; the most slippery design for sale stays under 13 % (from
 * memory). More is the speed of a motor of more poles, or of one for 50 Hz.
 */
const MOST_SLIP_SHARE = 0.15;

/**
 * How far the motor falls behind its field at full load, in turns a minute.
 *
 * @formula slip = field - (nameplateRpm or field); field = synchronousRpm(hertz: baseHertz or 60) [rpm]
 * @source plain arithmetic
 */
export function slipRpm({ poles, nameplateRpm, baseHertz }: Nameplate & { baseHertz: number }): number {
  if (!(Number.isInteger(poles) && poles >= 2 && poles % 2 === 0))
    throw new NoAnswer(`motor poles: wanted an even number, 2 or more, got ${poles}`);
  const field = synchronousRpm(baseHertz, poles);
  if (nameplateRpm === undefined) return 0;
  mustBeBetween(
    (1 - MOST_SLIP_SHARE) * field,
    field,
    nameplateRpm,
    `nameplate speed (rpm) of ${poles} poles at a base of ${baseHertz} Hz`,
  );
  return field - nameplateRpm;
}
