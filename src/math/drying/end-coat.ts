import { mustBeAbove } from "../errors";
import { IN2_PER_FT2 } from "../units";

/**
 * Gallons to coat both ends of logs once.
 *
 * @formula gallons = sum(2 * pi / 4 * D^2) / 144 / coverageFt2; D = diametersIn
 * @source plain geometry
 * @range diameters and coverage above 0
 */
export function endCoatGallons({ diametersIn, coverageFt2 }: Coat): number {
  mustBeAbove(0, coverageFt2, "coverage (square feet a gallon)");
  let endsIn2 = 0;
  for (const diameterIn of diametersIn) {
    mustBeAbove(0, diameterIn, "diameter (in)");
    endsIn2 += 2 * (Math.PI / 4) * diameterIn ** 2;
  }
  return endsIn2 / IN2_PER_FT2 / coverageFt2;
}

interface Coat {
  diametersIn: readonly number[];
  coverageFt2: number;
}
