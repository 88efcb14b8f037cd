import {
  count,
  degrees,
  feet,
  list,
  mayBeNegative,
  mayBeZero,
  optional,
  percent,
  pounds,
  rows,
  sameForAll,
  yesNo,
} from "../cells/read";
import { spread } from "../cells/spread";
import { payloadLeftLb } from "../math/haul/payload";
import { slingLegLb } from "../math/haul/sling";
import { tiedownCount } from "../math/haul/tiedowns";
import { tongueSharePercent } from "../math/haul/tongue";

/**
 * Pounds that a truck or trailer may still carry.
 *
 * The rating is the gross weight on the plate of the vehicle; with fuel, people, chains and tools aboard the empty
 * weight is what a scale says. Below zero it is overloaded. Every axle, tire, hitch and bridge has a limit of its own.
 *
 * @customfunction LOADLEFT
 * @param rating Gross weight rating on the plate. A bare number is pounds; 3.5 t works too.
 * @param empty Weight before loading, by a scale. A bare number is pounds; 1200 kg works too.
 * @param [weights] Weights aboard, a list. Bare numbers are pounds.
 * @returns Pounds; minus when overloaded
 * @example =BOLE.LOADLEFT(14000, 4200, {3100;2650}) gives 4050
 * @example =BOLE.LOADLEFT(7000, 2100, {3100;2650}) gives -850
 * @example =BOLE.LOADLEFT(7000, "light", 3100) gives #VALUE!
 * @caution The plate on the vehicle rules, and the lowest of axle, tire, hitch and tow ratings. Weigh a first load on a scale.
 * @see TONGUESHARE
 * @words payload, gvwr, gross weight, overloaded, how much can I haul, how many logs on the trailer, axle rating, truck
 */
export function LOADLEFT(rating: unknown[][], empty: unknown[][], weights?: unknown[][]): unknown[][] {
  return spread(
    {
      ratingLb: pounds(rating, "rating"),
      emptyLb: pounds(empty, "empty"),
      weightsLb: optional(list(pounds(weights, "weights"))),
    },
    payloadLeftLb,
  );
}

/**
 * Percent of a trailer's whole weight that rests on the hitch.
 *
 * Owner's manuals ask for 10 to 15 %; others print 9 to 15, one 9 to 11. No law was found, so the trailer's maker
 * rules. Measure from the axle, or from the middle of a group of axles. The empty trailer's own share comes from a
 * scale under the jack. Below zero the trailer lifts the hitch.
 *
 * @customfunction TONGUESHARE
 * @param weights Weights aboard, a list; blank for the empty trailer. Bare numbers are pounds.
 * @param positions Middle of each ahead of the axle, a list; minus behind it, 0 or blank over it. Bare numbers are feet.
 * @param hitch The hitch ahead of the axle. A bare number is feet; 4.2 m works too.
 * @param [empty] Weight of the empty trailer. A bare number is pounds.
 * @param [emptyshare] Percent of the empty trailer's weight on its hitch: 12 or 12%. Needed with its weight.
 * @returns Percent
 * @example =BOLE.TONGUESHARE({3000;2000}, {3;-1}, 14, 2000, 12) gives 10.6
 * @example =BOLE.TONGUESHARE({3000;2000}, {-3;-1}, 14) gives -15.7
 * @example =BOLE.TONGUESHARE(3000, 15, 14) gives #N/A
 * @caution A light tongue lets a trailer sway and turn over; a heavy one overloads hitch and rear axle. Check on a scale.
 * @see LOADLEFT
 * @words tongue weight, trailer sway, fishtail, balance the load, hitch weight, where to set the log, pin weight
 * @picture tongue
 */
export function TONGUESHARE(
  weights: unknown[][],
  positions: unknown[][],
  hitch: unknown[][],
  empty?: unknown[][],
  emptyshare?: unknown[][],
): unknown[][] {
  return spread(
    {
      loads: optional(
        rows({
          weightLb: pounds(weights, "weights"),
          positionFt: mayBeZero(mayBeNegative(feet(positions, "positions"))),
        }),
        [],
      ),
      hitchFt: feet(hitch, "hitch"),
      emptyLb: optional(pounds(empty, "empty")),
      emptySharePercent: optional(percent(emptyshare, "emptyshare")),
    },
    tongueSharePercent,
  );
}

/**
 * Tie-downs needed for one log or bundle, rounded up, by the federal rule.
 *
 * 49 CFR 393.106 asks that they hold half the weight together, by the working load limit of the weakest part of each,
 * and 393.110 sets their number by length for a load that nothing blocks in front. Each is taken to run from one side
 * of the vehicle over the load to the other; one fastened to the load or back to its own side counts half. Logs
 * lengthwise between stakes have a rule of their own, 393.116, and a state may ask for more.
 *
 * @customfunction TIEDOWNS
 * @param weight Weight of the article. A bare number is pounds; 1.2 t works too.
 * @param length Its length along the vehicle. A bare number is feet; 8'6" and 3 m work too.
 * @param limit Working load limit of one tie-down, from its tag or grade mark. A bare number is pounds.
 * @returns Tie-downs
 * @example =BOLE.TIEDOWNS(9000, 16, 3300) gives 3
 * @example =BOLE.TIEDOWNS(1100, 5, 3300) gives 1
 * @example =BOLE.TIEDOWNS(9000, 16, "new") gives #VALUE!
 * @caution The least the law asks, not always enough: read the rule, use rated gear with its tag, stop and check on the way.
 * @words chains, straps, binders, how many straps, tie down, working load limit, wll, securing logs, dot rule
 */
export function TIEDOWNS(weight: unknown[][], length: unknown[][], limit: unknown[][]): unknown[][] {
  return spread(
    {
      weightLb: pounds(weight, "weight"),
      lengthFt: feet(length, "length"),
      limitLb: sameForAll(pounds(limit, "limit")),
    },
    tiedownCount,
  );
}

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
