import { count, degrees, optional, pounds, sameForAll, yesNo } from "../../cells/read";
import { spread } from "../../cells/spread";
import { slingLegLb, LEGS_SURE_TO_CARRY } from "../../math/haul/sling";

/**
 * Pull in one leg of a sling, by its angle from the horizontal.
 *
 * Some tables count the angle from the vertical: 30 here is 60 there. Of three or four legs two are taken to carry a
 * stiff load such as a log, unless you are sure that all share it.
 *
 * @customfunction SLINGLEG
 * @returns Pounds
 * @example =BOLE.SLINGLEG(2000, 60) gives 1155
 * @example =BOLE.SLINGLEG(2000, 30, 2) gives 2000
 * @example =BOLE.SLINGLEG(2000, 60, 4) gives 1155
 * @example =BOLE.SLINGLEG(2000, 29) gives #N/A
 * @caution Rated gear only, by its tag, and a choke hitch carries less. Nobody under the load. A qualified rigger decides.
 * @words choker, chain sling, bridle, strap angle, lifting a log, crane, loader, rigging, how strong a chain
 * @picture sling
 */
export const SLINGLEG = spread(
  {
    /** Weight lifted. */
    weightLb: pounds,
    /** Angle between a leg and the horizontal, in degrees, 30 to 90. */
    angleDegrees: sameForAll(degrees),
    /** Legs of the sling, 1 to 4. A single leg hangs plumb, at 90. */
    legs: optional(count, LEGS_SURE_TO_CARRY),
    /** TRUE or yes when every leg is sure to carry its part; no when two may carry all. */
    shared: yesNo,
  },
  slingLegLb,
);
