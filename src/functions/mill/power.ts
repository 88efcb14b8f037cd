import { feetPerMinute, horsepower, inches, number, optional, percent, psi } from "../../cells/read";
import { spread } from "../../cells/spread";
import { motorAmps, sawPowerHp, torqueLbfFt } from "../../math/mill/power";

/**
 * Power that goes into the cut, from the specific cutting energy of the wood.
 *
 * No table of that energy by species was found, so none is assumed: measure it on your own mill, from the power drawn
 * under load less idling, and the kerf sawn meanwhile. Density alone foretells it badly. Dull teeth draw more.
 *
 * @customfunction SAWPOWER
 * @returns Horsepower at the teeth
 * @example =BOLE.SAWPOWER(0.08, 24, 20, 5000) gives 5.82
 * @example =BOLE.SAWPOWER(0.08, 24, 20, "oak") gives #VALUE!
 * @caution It is the cut alone: motor, belts and idling want more. Size motor and wiring with their makers and an electrician.
 * @see TORQUE
 * @words how much horsepower, engine size, motor size, bogging down, horsepower to saw, how big a motor
 * @picture cut
 */
export const SAWPOWER = spread(
  {
    /** Width of the kerf. */
    kerfIn: inches,
    /** Width of wood the band goes through. */
    depthIn: inches,
    /** Feed of the log or the head. */
    feedFpm: feetPerMinute,
    /** Energy to cut a volume of kerf. */
    energyPsi: psi,
  },
  sawPowerHp,
);

/**
 * Torque on a shaft from its power and speed.
 *
 * The same power at half the speed is twice the torque: a slow shaft wants to be a stout one.
 *
 * @customfunction TORQUE
 * @returns Pound-force feet
 * @example =BOLE.TORQUE(10, 1750) gives 30.01
 * @example =BOLE.TORQUE(10, "slow") gives #VALUE!
 * @caution Shafts, keys and couplings have ratings of their own, and starting or a jam asks for several times the torque.
 * @words shaft torque, foot pounds, gearbox
 */
export const TORQUE = spread(
  {
    /** Power. */
    powerHp: horsepower,
    /** Speed of the shaft, turns per minute. */
    rpm: number,
  },
  torqueLbfFt,
);

/**
 * Line current of a three-phase motor at full load.
 *
 * For a look at the meter. Wires, breakers and overloads go by the nameplate and the electrical code's own table (NEC
 * 430.250), which prints 28 A for 10 hp at 230 V. The usual efficiency and power factor come within 10 % of that table
 * from 5 to 50 hp. A smaller motor draws up to two thirds more than they say, so it has to be given its own.
 *
 * @customfunction MOTORAMPS
 * @returns Amperes
 * @example =BOLE.MOTORAMPS(10, 230) gives 27.5
 * @example =BOLE.MOTORAMPS(10, 230, 90, 85) gives 24.5
 * @example =BOLE.MOTORAMPS(10, 230, 120) gives #N/A
 * @example =BOLE.MOTORAMPS(2, 230) gives #N/A
 * @caution Never size wires or breakers from this: that goes by nameplate, the electrical code and a licensed electrician.
 * @words amp draw, three phase current, motor current, breaker
 */
export const MOTORAMPS = spread(
  {
    /** Power of the motor. */
    powerHp: horsepower,
    /** Voltage between two lines. */
    volts: number,
    /** Efficiency from the nameplate; 85 % when left out (common practice, no source), from 5 hp. */
    efficiencyPercent: optional(percent),
    /** Power factor from the nameplate; 80 % when left out (common practice, no source), from 5 hp. */
    powerFactorPercent: optional(percent),
  },
  motorAmps,
);
