import { mustBeAbove, mustBeAtLeast, NoAnswer } from "../errors";
import { mustBeKerf } from "../sawing/kerf";
import { FTLBF_PER_MIN_PER_HP, IN_PER_FT, W_PER_ELECTRIC_HP } from "../units";

/**
 * Power that goes into the cut, from the energy that a cubic inch of kerf takes.
 *
 * No table of that energy by species was found, so there is no usual value: it is measured on the mill itself.
 *
 * @formula P = U * wood / 396000; wood = k * h * 12 * v [in3/min]; U = energyPsi; k = kerfIn; h = depthIn;
 *   v = feedFpm
 * @source plain arithmetic: energy of the wood removed in a minute
 * @range kerf 0 to 3/4 in
 */
export function sawPowerHp({ kerfIn, depthIn, feedFpm, energyPsi }: SawPower): number {
  mustBeKerf(kerfIn);
  const woodRemovedIn3PerMin = kerfIn * depthIn * feedFpm * IN_PER_FT;
  return (energyPsi * woodRemovedIn3PerMin) / (FTLBF_PER_MIN_PER_HP * IN_PER_FT);
}

/**
 * Torque on a shaft.
 *
 * @formula T = 33000 * P / (2 * pi * n); P = powerHp; n = rpm
 * @source Foundry handbook, part 42, torque table
 * @range a speed above 0
 * @checked 15 of 15 printed values
 */
export function torqueLbfFt({ powerHp, rpm }: { powerHp: number; rpm: number }): number {
  mustBeAbove(0, rpm, "shaft speed (rpm)");
  return (FTLBF_PER_MIN_PER_HP * powerHp) / (2 * Math.PI * rpm);
}

/** Common practice, no source. With the power factor it comes within 10 % of NEC table 430.250 from 5 to 50 hp. */
export const USUAL_EFFICIENCY_PERCENT = 85;
/** Common practice, no source: see the efficiency. */
export const USUAL_POWER_FACTOR_PERCENT = 80;
/** Smaller motors are worse: by the same table they draw up to two thirds more than the usual figures say. */
const USUAL_FROM_HP = 5;

/**
 * Line current of a three-phase motor.
 *
 * @formula I = 746 * P / (sqrt(3) * V * e * pf); P = powerHp; V = volts; e = (efficiencyPercent or 85) / 100;
 *   pf = (powerFactorPercent or 80) / 100
 * @source plain arithmetic: power of three phases, root 3 V I e pf; an electric horsepower is 746 W (NIST SP 811)
 * @source common practice, no source: efficiency 85 % and power factor 80 % when none are given
 * @range efficiency and power factor above 0 and up to 100 %; both have to be given for a motor under 5 hp
 * @checked no published example was seen; within 10 % of 36 cells of NEC table 430.250 from 5 to 50 hp
 */
export function motorAmps({ powerHp, volts, efficiencyPercent, powerFactorPercent }: MotorAmps): number {
  mustBeAbove(0, volts, "line voltage (V)");
  if (efficiencyPercent === undefined || powerFactorPercent === undefined)
    mustBeAtLeast(USUAL_FROM_HP, powerHp, "motor (hp) without its own efficiency and power factor");
  const efficiency = shareOf(efficiencyPercent ?? USUAL_EFFICIENCY_PERCENT, "motor efficiency (%)");
  const powerFactor = shareOf(powerFactorPercent ?? USUAL_POWER_FACTOR_PERCENT, "power factor (%)");
  return (W_PER_ELECTRIC_HP * powerHp) / (Math.sqrt(3) * volts * efficiency * powerFactor);
}

interface SawPower {
  kerfIn: number;
  depthIn: number;
  feedFpm: number;
  energyPsi: number;
}

interface MotorAmps {
  powerHp: number;
  volts: number;
  efficiencyPercent?: number | undefined;
  powerFactorPercent?: number | undefined;
}

function shareOf(percent: number, what: string): number {
  if (!(percent > 0 && percent <= 100)) throw new NoAnswer(`${what}: wanted more than 0, up to 100, got ${percent}`);
  return percent / 100;
}
