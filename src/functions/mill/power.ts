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
 * @param kerf Width of the kerf. A bare number is inches; 2 mm works too.
 * @param depth Width of wood the band goes through. A bare number is inches; 60 cm works too.
 * @param feed Feed of the log or the head. A bare number is feet per minute; 10 m/min works too.
 * @param energy Energy to cut a volume of kerf. A bare number is psi (inch-pounds per cubic inch); 30 MPa works too.
 * @returns Horsepower at the teeth
 * @example =BOLE.SAWPOWER(0.08, 24, 20, 5000) gives 5.82
 * @example =BOLE.SAWPOWER(0.08, 24, 20, "oak") gives #VALUE!
 * @caution It is the cut alone: motor, belts and idling want more. Size motor and wiring with their makers and an electrician.
 * @see TORQUE
 * @words how much horsepower, engine size, motor size, bogging down
 * @picture cut
 */
export function SAWPOWER(kerf: unknown[][], depth: unknown[][], feed: unknown[][], energy: unknown[][]): unknown[][] {
  return spread(
    {
      kerfIn: inches(kerf, "kerf"),
      depthIn: inches(depth, "depth"),
      feedFpm: feetPerMinute(feed, "feed"),
      energyPsi: psi(energy, "energy"),
    },
    sawPowerHp,
  );
}

/**
 * Torque on a shaft from its power and speed.
 *
 * The same power at half the speed is twice the torque: a slow shaft wants to be a stout one.
 *
 * @customfunction TORQUE
 * @param power Power. A bare number is horsepower; 15 kW works too.
 * @param rpm Speed of the shaft, turns per minute.
 * @returns Pound-force feet
 * @example =BOLE.TORQUE(10, 1750) gives 30.01
 * @example =BOLE.TORQUE(10, "slow") gives #VALUE!
 * @caution Shafts, keys and couplings have ratings of their own, and starting or a jam asks for several times the torque.
 * @words shaft torque, foot pounds, gearbox
 */
export function TORQUE(power: unknown[][], rpm: unknown[][]): unknown[][] {
  return spread({ powerHp: horsepower(power, "power"), rpm: number(rpm, "rpm") }, torqueLbfFt);
}

/**
 * Line current of a three-phase motor at full load.
 *
 * For a look at the meter. Wires, breakers and overloads go by the nameplate and the electrical code's own table (NEC
 * 430.250), which prints 28 A for 10 hp at 230 V. The usual efficiency and power factor come within 10 % of that table
 * from 5 to 50 hp. A smaller motor draws up to two thirds more than they say, so it has to be given its own.
 *
 * @customfunction MOTORAMPS
 * @param power Power of the motor. A bare number is horsepower; 15 kW works too.
 * @param volts Voltage between two lines.
 * @param [efficiency] Efficiency in percent from the nameplate; 85 when left out (common practice, no source), from 5 hp.
 * @param [powerfactor] Power factor in percent from the nameplate; 80 when left out (common practice, no source), from 5 hp.
 * @returns Amperes
 * @example =BOLE.MOTORAMPS(10, 230) gives 27.5
 * @example =BOLE.MOTORAMPS(10, 230, 90, 85) gives 24.5
 * @example =BOLE.MOTORAMPS(10, 230, 120) gives #N/A
 * @example =BOLE.MOTORAMPS(2, 230) gives #N/A
 * @caution Never size wires or breakers from this: that goes by nameplate, the electrical code and a licensed electrician.
 * @words amp draw, three phase current, motor current, breaker
 */
export function MOTORAMPS(
  power: unknown[][],
  volts: unknown[][],
  efficiency?: unknown[][],
  powerfactor?: unknown[][],
): unknown[][] {
  return spread(
    {
      powerHp: horsepower(power, "power"),
      volts: number(volts, "volts"),
      efficiencyPercent: optional(percent(efficiency, "efficiency")),
      powerFactorPercent: optional(percent(powerfactor, "powerfactor")),
    },
    motorAmps,
  );
}
