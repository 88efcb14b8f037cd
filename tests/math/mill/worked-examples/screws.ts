import { screwTorqueLbfIn, threadShape } from "../../../../src/math/mill/screw";
import { degreesOf, radiansOf } from "./angles";

/** A loaded screw, in the order of the books' formulas. */
type Screw = [
  load: number,
  meanDiameter: number,
  lead: number,
  friction: number,
  halfAngleDegrees?: number,
  collarFriction?: number,
  collarDiameter?: number,
];

type Direction = "up" | "down";

const raise = torqueOf("up");

export const SCREWS = {
  lead_deg: (lead: number, mean: number) =>
    degreesOf(Math.atan(threadShape({ diameterIn: mean + lead / 2, pitchIn: lead }).slope)),
  t_raise: raise,
  t_raise_mott: raise,
  raise_arm: perArm("up"),
  lower_arm: perArm("down"),
  raise_eff: (...screw: Screw) => (screw[0] * screw[2]) / (2 * Math.PI * raise(...screw)),
};

/** Torque to turn a screw: the thread's by Bole, and F mu dc / 2 for the collar that Bole's screws do not have. */
function torqueOf(direction: Direction) {
  return (...[load, meanDiameter, lead, friction, halfAngle = 0, collarFriction = 0, collarDiameter = 0]: Screw) => {
    const thread = screwTorqueLbfIn({
      loadLb: load,
      diameterIn: meanDiameter + lead / 2,
      pitchIn: lead,
      friction: friction / Math.cos(radiansOf(halfAngle)),
      direction,
    });
    return thread + (load * collarFriction * collarDiameter) / 2;
  };
}

/** The pull on each of several arms that turn a screw with its collar. */
function perArm(direction: Direction) {
  return (...given: [...Required<Screw>, arms: number, arm: number]) => {
    const [load, mean, lead, friction, halfAngle, collarFriction, collar, arms, arm] = given;
    return torqueOf(direction)(load, mean, lead, friction, halfAngle, collarFriction, collar) / (arms * arm);
  };
}
