import { mustBeAtLeast } from "../errors";
import { turnBetween } from "../numbers";

interface Pulleys {
  pulley1In: number;
  pulley2In: number;
}

/**
 * Exact length of a belt over two pulleys.
 *
 * The handbook's short form, 2 C + 1.57 (D + d) + (D - d)^2 / 4 C, drifts from it as the pulleys come together.
 *
 * @formula L = sqrt(4 * C^2 - o^2) + D * (pi / 2 + a) + d * (pi / 2 + b); o = D + d if crossed, else D - d [in];
 *   a = asin(o / (2 * C)) [radians]; b = a if crossed, else -a [radians]; D = max(pulley1In, pulley2In) [in];
 *   d = min(pulley1In, pulley2In) [in]; C = centersIn
 * @source Shigley, chapter 17, Eqs 17-1 and 17-2
 * @range centers from where the pulleys touch, (D + d) / 2
 * @checked 5 of 5 printed examples, the 4 by the short form once its missing terms are taken off
 */
export function beltLengthIn({ pulley1In, pulley2In, centersIn, crossed = false }: BeltLength): number {
  mustNotOverlap({ pulley1In, pulley2In, centersIn });
  const small = Math.min(pulley1In, pulley2In);
  const large = Math.max(pulley1In, pulley2In);
  const offset = crossed ? large + small : large - small;
  const lean = Math.asin(offset / (2 * centersIn));
  const straight = Math.sqrt(4 * centersIn ** 2 - offset ** 2);
  const onLarge = large * (Math.PI / 2 + lean);
  const onSmall = small * (Math.PI / 2 + (crossed ? lean : -lean));
  return straight + onLarge + onSmall;
}

/**
 * Distance between centers at which an open belt is tight on two pulleys.
 *
 * @formula by search: the C whose exact belt length is the belt, found by halving until no number lies between
 * @source Shigley, chapter 17, Eqs 17-1 and 17-2
 * @range a belt at least as long as the one round touching pulleys
 * @checked 1 of 1 printed example (23.30 with 6.28 for 2 pi; 23.28 exactly)
 */
export function beltCentersIn({ pulley1In, pulley2In, beltIn }: Pulleys & { beltIn: number }): number {
  const touching = (pulley1In + pulley2In) / 2;
  const shortest = beltLengthIn({ pulley1In, pulley2In, centersIn: touching });
  mustBeAtLeast(shortest, beltIn, "belt (in), from the one round touching pulleys");

  // A belt goes there and back, so half of it is more than the distance sought.
  const isTooNear = (centersIn: number) => beltLengthIn({ pulley1In, pulley2In, centersIn }) <= beltIn;
  const [low, high] = turnBetween(touching, beltIn / 2, isTooNear);
  return (low + high) / 2;
}

/**
 * Degrees of the small pulley that an open belt touches.
 *
 * @formula w = 180 - 2 * asin(abs(D - d) / (2 * C)) / deg; D = pulley1In; d = pulley2In; C = centersIn
 * @source Mott 4e, Example 7-1, p 279
 * @range centers from where the pulleys touch, (D + d) / 2
 * @checked 3 of 3 printed examples
 */
export function beltWrapDegrees({ pulley1In, pulley2In, centersIn }: Pulleys & { centersIn: number }): number {
  mustNotOverlap({ pulley1In, pulley2In, centersIn });
  return 180 - (2 * Math.asin(Math.abs(pulley1In - pulley2In) / (2 * centersIn)) * 180) / Math.PI;
}

/**
 * Length of the band over two wheels.
 *
 * @formula L = beltLengthIn(pulley1In: wheel1In, pulley2In: wheel2In, crossed: no)
 * @source plain geometry
 * @range centers from where the wheels touch
 * @checked no published example of a band was found; the belts it is worked as are checked
 */
export function bandLengthIn({ wheel1In, wheel2In, centersIn }: BandLength): number {
  return beltLengthIn({ pulley1In: wheel1In, pulley2In: wheel2In, centersIn });
}

interface BeltLength extends Pulleys {
  centersIn: number;
  /** The belt crosses itself between the pulleys, which turns the driven one the other way. */
  crossed?: boolean | undefined;
}

interface BandLength {
  wheel1In: number;
  wheel2In: number;
  centersIn: number;
}

function mustNotOverlap({ pulley1In, pulley2In, centersIn }: Pulleys & { centersIn: number }): void {
  mustBeAtLeast((pulley1In + pulley2In) / 2, centersIn, "centers (in), from where the pulleys touch");
}
