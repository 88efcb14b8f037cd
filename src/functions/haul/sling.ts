import { count, degrees, optional, pounds, sameForAll, yesNo } from "../../cells/read";
import { spread } from "../../cells/spread";
import { slingLegLb } from "../../math/haul/sling";

/**
 * Pull in one leg of a sling, by its angle from the horizontal.
 *
 * Some tables count the angle from the vertical: 30 here is 60 there. Of three or four legs two are taken to carry a
 * stiff load such as a log, unless you are sure that all share it.
 *
 * @customfunction SLINGLEG
 * @param weight Weight lifted. A bare number is pounds; 1.2 t works too.
 * @param angle Angle between a leg and the horizontal, in degrees, 30 to 90.
 * @param [legs] Legs of the sling, 1 to 4; 2 when left out. A single leg hangs plumb, at 90.
 * @param [shared] TRUE or yes when every leg is sure to carry its part; two carry when left out.
 * @returns Pounds
 * @example =BOLE.SLINGLEG(2000, 60) gives 1155
 * @example =BOLE.SLINGLEG(2000, 30, 2) gives 2000
 * @example =BOLE.SLINGLEG(2000, 60, 4) gives 1155
 * @example =BOLE.SLINGLEG(2000, 29) gives #N/A
 * @caution Rated gear only, by its tag, and a choke hitch carries less. Nobody under the load. A qualified rigger decides.
 * @words choker, chain sling, bridle, strap angle, lifting a log, crane, loader, rigging, how strong a chain
 * @picture sling
 */
export function SLINGLEG(
  weight: unknown[][],
  angle: unknown[][],
  legs?: unknown[][],
  shared?: unknown[][],
): unknown[][] {
  return spread(
    {
      weightLb: pounds(weight, "weight"),
      angleDegrees: sameForAll(degrees(angle, "angle")),
      legs: optional(count(legs, "legs")),
      shared: yesNo(shared, "shared"),
    },
    slingLegLb,
  );
}
