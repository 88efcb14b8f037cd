import { NoAnswer } from "../errors";
import { celsiusFromFahrenheit, fahrenheitFromCelsius } from "../units";
import { TRADE_UNITS, type TradeUnit } from "../unit-kinds";

/**
 * An amount, or a price by the unit, in another unit of its kind.
 *
 * @formula by table: amount * holds(from) / holds(to), the other way round for prices, and temperatures by 9/5 and 32
 * @source FAO T0269E, Appendix II, conversion factors; the factors themselves are those of NIST SP 811
 * @range units of one kind; a cord or stere of stacked wood counts as 0.7 of its space in wood
 * @checked 18 of 18 printed factors for lengths, areas, wood and weights, one of them cut off at its last digit
 */
export function inUnit({ amount, from, to }: { amount: number; from: string; to: string }): number {
  const [one, other] = [TRADE_UNITS[from]!, TRADE_UNITS[to]!];
  mustBeAlike([from, one], [to, other]);
  if (one.kind === "temperature") return temperature(amount, from, to);
  return one.isPrice ? (amount * other.holds) / one.holds : (amount * one.holds) / other.holds;
}

function mustBeAlike([from, one]: [string, TradeUnit], [to, other]: [string, TradeUnit]): void {
  if (one.kind === other.kind && one.isPrice === other.isPrice) return;
  throw new NoAnswer(`units: wanted two of one kind, got ${spoken(from, one)} and ${spoken(to, other)}`);
}

function spoken(name: string, { kind, isPrice }: TradeUnit): string {
  return `${name} (${isPrice ? `a price by ${kind}` : kind})`;
}

function temperature(degrees: number, from: string, to: string): number {
  // On the desktop a blank cell is a 0 too, and a blank has no temperature.
  if (degrees === 0) throw new NoAnswer("amount: a blank or 0 degrees? 0 °C is 32 °F, and 0 °F is -17.78 °C");
  if (from === to) return degrees;
  return from === "C" ? fahrenheitFromCelsius(degrees) : celsiusFromFahrenheit(degrees);
}
