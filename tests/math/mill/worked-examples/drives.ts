import { beltCentersIn, beltLengthIn, beltWrapDegrees } from "../../../../src/math/mill/belt";
import { chainCentersIn, chainLinks, sprocketDiameterIn } from "../../../../src/math/mill/chain";
import { motorRpm } from "../../../../src/math/mill/motor";
import { torqueLbfFt } from "../../../../src/math/mill/power";
import { pulleyRpm, pulleySizeIn, pulleyTrainRpm } from "../../../../src/math/mill/pulleys";
import { rimSpeedFpm } from "../../../../src/math/mill/rim";
import { IN_PER_FT, M_PER_FT, SECONDS_PER_MIN } from "../../../../src/math/units";
import { radiansOf } from "./angles";

export const MOTORS_AND_PULLEYS = {
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
  torque_lbin: (powerHp: number, rpm: number) => torqueLbfFt({ powerHp, rpm }) * IN_PER_FT,
};

export const BELTS = {
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
};

export const CHAINS = {
  sprocket_pd: (pitchIn: number, teeth: number) => sprocketDiameterIn({ teeth, pitchIn }),
  chain_len: (centersIn: number, teeth1: number, teeth2: number) =>
    chainLinks({ teeth1, teeth2, centersIn, pitchIn: 1, rounding: "none" }),
  chain_c: (links: number, teeth1: number, teeth2: number) => chainCentersIn({ teeth1, teeth2, links, pitchIn: 1 }),
  chain_c_mm: (links: number, teeth1: number, teeth2: number, pitchIn: number, sag = 0) =>
    chainCentersIn({ teeth1, teeth2, links, pitchIn }) * (1 - sag),
};

/** What the handbooks' short form of belt length leaves out: the next two terms of the series, C (u^4/12 + u^6/40). */
function shortFormLacks(offset: number, centers: number): number {
  const u = offset / (2 * centers);
  return centers * (u ** 4 / 12 + u ** 6 / 40);
}
