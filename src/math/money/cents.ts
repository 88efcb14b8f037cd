import { mustBeBetween } from "../errors";

/** A sheet keeps 15 digits: up to here an amount still holds its cents. */
const LARGEST_AMOUNT = 1e13;
/** Digits of a number that a sheet keeps and shows; what stands behind them is the accident of binary. */
const TYPED_DIGITS = 15;
const CENTS_PER_UNIT = 100;

/**
 * Amount of one invoice line, to the cent, so that the lines as printed add up to the total.
 *
 * @formula in words: quantity * price, multiplied digit by digit as typed (15 digits), then to the cent, a half away
 *   from zero
 * @source plain arithmetic
 * @range amounts up to 1e13 in either way
 * @checked 9 of 9 printed amounts, as near as they were printed
 */
export function lineAmount({ quantity, price }: { quantity: number; price: number }): number {
  mustBeBetween(-LARGEST_AMOUNT, LARGEST_AMOUNT, quantity * price, "amount of the line");
  return centsOfProduct(quantity, price) / CENTS_PER_UNIT;
}

/** Whole cents in an amount, a half away from zero. */
export function centsIn(amount: number): number {
  return centsOfProduct(amount, 1);
}

/** 1.005 is held in binary as 1.00499...; multiplied by its decimal digits it is 100.5 cents, which go up. */
function centsOfProduct(a: number, b: number): number {
  const [left, right] = [decimalOf(a), decimalOf(b)];
  const product = left.digits * right.digits;
  const centPower = left.power + right.power + 2;
  if (centPower >= 0) return Number(product * 10n ** BigInt(centPower));
  return Number(dividedHalfAway(product, 10n ** BigInt(-centPower)));
}

/** A number as whole digits times a power of ten. */
function decimalOf(value: number): { digits: bigint; power: number } {
  const [mantissa = "0", exponent = "0"] = value.toExponential(TYPED_DIGITS - 1).split("e");
  return { digits: BigInt(mantissa.replace(".", "")), power: Number(exponent) - (TYPED_DIGITS - 1) };
}

function dividedHalfAway(top: bigint, bottom: bigint): bigint {
  const half = top < 0n ? -bottom : bottom;
  return (2n * top + half) / (2n * bottom);
}
