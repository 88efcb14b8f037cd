import { describe, expect, it } from "vitest";
import { slingLegLb } from "../../../src/math/haul/sling";
import { tiedownCount } from "../../../src/math/haul/tiedowns";
import { tongueSharePercent } from "../../../src/math/haul/tongue";
import { bandCentrifugalPsi, bandHeatingPsi, bandStressPsi, bandStretchIn } from "../../../src/math/mill/band";
import { beltCentersIn, beltLengthIn, beltWrapDegrees } from "../../../src/math/mill/belt";
import { chainCentersIn, chainLinks, sprocketDiameterIn } from "../../../src/math/mill/chain";
import { motorRpm } from "../../../src/math/mill/motor";
import { torqueLbfFt } from "../../../src/math/mill/power";
import { pulleyRpm, pulleySizeIn, pulleyTrainRpm, rimSpeedFpm } from "../../../src/math/mill/pulleys";
import { ramForceLbf } from "../../../src/math/mill/ram";
import { screwTorqueLbfIn, threadShape } from "../../../src/math/mill/screw";
import { beamSagIn, tubeAreaIn2, tubeInertiaIn4, tubeWeightLb } from "../../../src/math/mill/tube";
import { GRAVITY_FT_PER_S2, IN_PER_FT, M_PER_FT, SECONDS_PER_MIN } from "../../../src/math/units";
import { rowsOf } from "../../csv";

/*
 * Every row of worked_examples.csv through Bole's formulas. The formulas do not mind the unit as long as it is the same
 * throughout, so a row in millimetres goes in as it stands. Where a book rounds pi or leaves the short form's last terms
 * out, the row's reading below says so and undoes that, and the tolerance of the row stays as it is.
 */
type Answer = (...inputs: never[]) => number;

const degreesOf = (radians: number) => (radians * 180) / Math.PI;
const radiansOf = (degrees: number) => (degrees * Math.PI) / 180;

/** What the handbooks' short form of belt length leaves out: the next two terms of the series, C (u^4/12 + u^6/40). */
function shortFormLacks(offset: number, centers: number): number {
  const u = offset / (2 * centers);
  return centers * (u ** 4 / 12 + u ** 6 / 40);
}

/** The stress of one rod, as of a band half as wide on two strands. */
const pullOver = (load: number, area: number) => bandStressPsi({ strainLbf: load, widthIn: area / 2, thicknessIn: 1 });

/** Free growth on warming: the stretch that the stress of held-back growth would make. */
const growth = (size: number, degreesF: number, growthPerF: number) =>
  bandStretchIn({ stressPsi: bandHeatingPsi({ degreesF, growthPerF }), gaugeIn: size });

/** Torque to turn a screw: the thread's by Bole, and F mu dc / 2 for the collar that Bole's screws do not have. */
function screwWithCollar(
  direction: "up" | "down",
  load: number,
  meanDiameter: number,
  lead: number,
  threadFriction: number,
  halfAngleDegrees = 0,
  collarFriction = 0,
  collarDiameter = 0,
): number {
  const thread = screwTorqueLbfIn({
    loadLb: load,
    diameterIn: meanDiameter + lead / 2,
    pitchIn: lead,
    friction: threadFriction / Math.cos(radiansOf(halfAngleDegrees)),
    direction,
  });
  return thread + (load * collarFriction * collarDiameter) / 2;
}

const ANSWERS: Record<string, Answer> = {
  // Pulleys and motors
  chain_rpm: (rpm: number, pairs: [number, number][], slips: number[] = []) =>
    pulleyTrainRpm({
      rpm,
      drives: pairs.map(([driverIn, drivenIn]) => ({ driverIn, drivenIn })),
      slipPercent: slips[0],
    }),
  /** From the driven end: the driver is what the driven pulley would drive. */
  driver_rpm: (drivenRpm: number, driven: number, driver: number) =>
    pulleyRpm({ rpm: drivenRpm, driverIn: driven, drivenIn: driver }),
  driver_dia: (driven: number, drivenRpm: number, driverRpm: number) =>
    pulleySizeIn({ rpm: drivenRpm, driverIn: driven, wantedRpm: driverRpm }),
  /** A flat belt runs at the middle of its thickness: it goes on to both pulleys. */
  rpm_thick: (rpm: number, driver: number, driven: number, belt = 0) =>
    pulleyRpm({ rpm, driverIn: driver + belt, drivenIn: driven + belt }),
  driven_dia: (rpm: number, driver: number, wantedRpm: number, belt = 0, slipPercent = 0) =>
    pulleySizeIn({ rpm, driverIn: driver + belt, wantedRpm, slipPercent }) - belt,
  rim_speed_ms: (diameterIn: number, rpm: number) => (rimSpeedFpm({ diameterIn, rpm }) * M_PER_FT) / SECONDS_PER_MIN,
  sync_rpm: (hertz: number, poles: number) => motorRpm({ hertz, poles }),
  slip: (hertz: number, poles: number, rpm: number) => 1 - rpm / motorRpm({ hertz, poles }),

  // Belts
  open_approx: (large: number, small: number, centers: number, halfPi = Math.PI / 2) =>
    beltLengthIn({ pulley1In: large, pulley2In: small, centersIn: centers }) -
    (Math.PI / 2 - halfPi) * (large + small) -
    shortFormLacks(large - small, centers),
  cross_approx: (large: number, small: number, centers: number) =>
    beltLengthIn({ pulley1In: large, pulley2In: small, centersIn: centers, crossed: true }) -
    shortFormLacks(large + small, centers),
  /** A book that prints 6.28 for 2 pi finds room for a belt longer by a quarter of the difference on both pulleys. */
  c_from_L: (belt: number, large: number, small: number, twoPi: number) =>
    beltCentersIn({ pulley1In: large, pulley2In: small, beltIn: belt + ((2 * Math.PI - twoPi) * (large + small)) / 4 }),
  wrap_small_deg: (large: number, small: number, centers: number) =>
    beltWrapDegrees({ pulley1In: large, pulley2In: small, centersIn: centers }),
  wrap_large_rad: (large: number, small: number, centers: number) =>
    radiansOf(360 - beltWrapDegrees({ pulley1In: large, pulley2In: small, centersIn: centers })),
  open_exact: (large: number, small: number, centers: number) =>
    beltLengthIn({ pulley1In: large, pulley2In: small, centersIn: centers }),

  // Chain
  sprocket_pd: (pitchIn: number, teeth: number) => sprocketDiameterIn({ teeth, pitchIn }),
  chain_len: (centersIn: number, teeth1: number, teeth2: number) =>
    chainLinks({ teeth1, teeth2, centersIn, pitchIn: 1, rounding: "none" }),
  chain_c: (links: number, teeth1: number, teeth2: number) => chainCentersIn({ teeth1, teeth2, links, pitchIn: 1 }),
  chain_c_mm: (links: number, teeth1: number, teeth2: number, pitchIn: number, sag = 0) =>
    chainCentersIn({ teeth1, teeth2, links, pitchIn }) * (1 - sag),

  // Screws
  lead_deg: (lead: number, mean: number) =>
    degreesOf(Math.atan(threadShape({ diameterIn: mean + lead / 2, pitchIn: lead }).slope)),
  t_raise: (load: number, mean: number, lead: number, friction: number) =>
    screwWithCollar("up", load, mean, lead, friction),
  t_raise_mott: (load: number, mean: number, lead: number, friction: number, halfAngle: number) =>
    screwWithCollar("up", load, mean, lead, friction, halfAngle),
  raise_arm: perArm("up"),
  lower_arm: perArm("down"),
  raise_eff: (
    load: number,
    mean: number,
    lead: number,
    friction: number,
    halfAngle: number,
    collarFriction: number,
    collar: number,
  ) =>
    (load * lead) /
    (2 * Math.PI * screwWithCollar("up", load, mean, lead, friction, halfAngle, collarFriction, collar)),

  // The band
  strain: (load: number, area: number, modulusPsi: number) =>
    bandStretchIn({ stressPsi: pullOver(load, area), gaugeIn: 1, modulusPsi }),
  /** The area at which the rod stretches by so much: the load over the stress that a stretch of 1 per stress answers. */
  area_for_stretch: (load: number, length: number, modulusPsi: number, stretch: number) =>
    load / (stretch / bandStretchIn({ stressPsi: 1, gaugeIn: length, modulusPsi })),
  /** The book's weight and gravity: 490 lb/ft3 and 32.2 ft/s2. Its speed gives its stress, within what it rounds. */
  hoop_v: (stressPsi: number, _weight: number, gravity: number) =>
    Math.sqrt((stressPsi / bandCentrifugalPsi({ speedFpm: SECONDS_PER_MIN })) * (gravity / GRAVITY_FT_PER_S2)),
  thermal_stress: (load: number, area: number, degreesF: number, modulusPsi: number, growthPerF: number) =>
    pullOver(load, area) + bandHeatingPsi({ degreesF, growthPerF, modulusPsi }),
  zero_stress_T: (start: number, load: number, area: number, modulusPsi: number, growthPerF: number) =>
    start + pullOver(load, area) / bandHeatingPsi({ degreesF: 1, growthPerF, modulusPsi }),
  growth_diff: (size: number, degreesF: number, growth1: number, growth2: number) =>
    growth(size, degreesF, growth1) - growth(size, degreesF, growth2),

  // Power
  torque_lbin: (powerHp: number, rpm: number) => torqueLbfFt({ powerHp, rpm }) * IN_PER_FT,

  // Loads
  sling_factor: (angleDegrees: number) => slingLegLb({ weightLb: 2, angleDegrees, legs: 2 }),
  sling_leg: (weightLb: number, legs: number, angleDegrees: number) => slingLegLb({ weightLb, legs, angleDegrees }),
  /** A leg's rating brought down by the height of the hook over the length of the leg: what loads the leg to its rating. */
  reduced_cap: (rating: number, height: number, length: number) =>
    rating / slingLegLb({ weightLb: 2, angleDegrees: degreesOf(Math.asin(height / length)) }),
  tiedown_count: (lengthFt: number, weightLb: number) => tiedownCount({ weightLb, lengthFt, limitLb: 1e6 }),
  /** The pounds on the hitch that make so many percent of the trailer's weight. */
  pct: (weightLb: number, percent: number) =>
    (weightLb * tongueSharePercent({ loads: [{ weightLb, positionFt: percent }], hitchFt: 100 })) / 100,

  // Steel
  hss_plf: (heightIn: number, widthIn: number, wallIn: number) =>
    tubeWeightLb({ heightIn, widthIn, wallIn, lengthFt: 1 }),
  hss_area: (heightIn: number, widthIn: number, wallIn: number) => tubeAreaIn2({ heightIn, widthIn, wallIn }),
  hss_I: (heightIn: number, widthIn: number, wallIn: number) => tubeInertiaIn4({ heightIn, widthIn, wallIn }),
  beam_mid: (loadKip: number, spanFt: number, modulusKsi: number, inertiaIn4: number) =>
    (beamSagIn({ spanFt, loadLb: loadKip * 1000, inertiaIn4 }) * 29e3) / modulusKsi,
  ring_area: (bore: number, rod: number) => ramForceLbf({ pressurePsi: 1, boreIn: bore, rodIn: rod }),
};

/** The pull on each of several arms that turn a screw with its collar. */
function perArm(direction: "up" | "down") {
  return (
    load: number,
    mean: number,
    lead: number,
    friction: number,
    halfAngle: number,
    collarFriction: number,
    collar: number,
    arms: number,
    arm: number,
  ) => screwWithCollar(direction, load, mean, lead, friction, halfAngle, collarFriction, collar) / (arms * arm);
}

/** Rows that Bole has no mill or haul function for, and why. */
const NOT_ANSWERED: Record<string, string> = {
  t_from_eff: "a ball screw by its efficiency: Bole's screws go by friction",
  limit360: "a building rule for floors; no limit of sag for a sawmill bed was found",
  sb: "sawing variation, checked with SAWVARIATION",
  st: "sawing variation, checked with SAWVARIATION",
  target: "target size, checked with TARGETSIZE",
  chord: "width of a cut, checked with CUTWIDTH",
};

/** So that a difference of exactly half the last printed digit passes. */
const LAST_BINARY_DIGITS = 1e-9;

describe("printed worked examples of mill and haul", () => {
  const printed = rowsOf("mill/worked_examples.csv");
  const answered = printed.filter(({ fn }) => !(fn! in NOT_ANSWERED));
  console.log(
    `mill and haul: ${answered.length} of ${printed.length} printed worked examples checked; ` +
      `${printed.length - answered.length} belong to other topics or have no function`,
  );

  it("are all there: 134 rows, of which 6 are not for mill or haul", () => {
    expect(printed).toHaveLength(134);
    expect(printed.length - answered.length).toBe(6);
    expect(printed.filter(({ fn }) => !(fn! in ANSWERS) && !(fn! in NOT_ANSWERED))).toEqual([]);
  });

  it("each name a source that sources.csv describes", () => {
    const known = new Set(rowsOf("mill/sources.csv").map(({ key }) => key));
    expect(printed.filter(({ source }) => !known.has(source!))).toEqual([]);
  });

  it.each(answered)("$id, $source: $fn $inputs is $expected $unit", ({ fn, inputs, expected, tol_abs }) => {
    const answer = ANSWERS[fn!]!(...(JSON.parse(inputs!) as never[]));
    expect(Math.abs(answer - Number(expected)), `answers ${answer}`).toBeLessThanOrEqual(
      Number(tol_abs) + LAST_BINARY_DIGITS,
    );
  });
});
