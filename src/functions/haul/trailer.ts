import {
  feet,
  forWholeList,
  list,
  mayBeBlank,
  mayBeNegative,
  mayBeZero,
  named,
  optional,
  percent,
  pounds,
  rows,
} from "../../cells/read";
import { spread } from "../../cells/spread";
import { payloadLeftLb } from "../../math/haul/payload";
import { tongueSharePercent } from "../../math/haul/tongue";

/**
 * Pounds that a truck or trailer may still carry.
 *
 * The rating is the gross weight on the plate of the vehicle; with fuel, people, chains and tools aboard the empty
 * weight is what a scale says. Below zero it is overloaded. Every axle, tire, hitch and bridge has a limit of its own.
 * The weights are one load: several trucks beside a list of weights are refused, so write one formula a truck.
 *
 * @customfunction LOADLEFT
 * @returns Pounds; minus when overloaded
 * @example =BOLE.LOADLEFT(14000, 4200, {3100;2650}) gives 4050
 * @example =BOLE.LOADLEFT(7000, 2100, {3100;2650}) gives -850
 * @example =BOLE.LOADLEFT(7000, "light", 3100) gives #VALUE!
 * @example =BOLE.LOADLEFT({7000;14000}, {2100;4200}, {3100;2650}) gives #VALUE!
 * @caution The plate on the vehicle rules, and the lowest of axle, tire, hitch and tow ratings. Weigh a first load on a scale.
 * @see TONGUESHARE
 * @words payload, gvwr, gross weight, overloaded, how much can I haul, how many logs on the trailer, axle rating, truck, can my truck haul it, is the trailer overloaded, payload left, overweight
 */
export const LOADLEFT = spread(
  {
    /** Gross weight rating on the plate. */
    ratingLb: forWholeList(pounds, "weights"),
    /** Weight before loading, by a scale. */
    emptyLb: forWholeList(pounds, "weights"),
    /** Weights aboard, a list. */
    weightsLb: optional(list(pounds)),
  },
  payloadLeftLb,
);

/**
 * Percent of a trailer's whole weight that rests on the hitch.
 *
 * Owner's manuals ask for 10 to 15 %; others print 9 to 15, one 9 to 11. No law was found, so the trailer's maker
 * rules. Measure from the axle, or from the middle of a group of axles. The empty trailer's own share comes from a
 * scale under the jack; without the empty trailer the answer is that of the load alone. Below zero the trailer lifts
 * the hitch.
 *
 * @customfunction TONGUESHARE
 * @returns Percent
 * @example =BOLE.TONGUESHARE({3000;2000}, {3;-1}, 14, 2000, 12) gives 10.6
 * @example =BOLE.TONGUESHARE({3000;2000}, {-3;-1}, 14) gives -15.7
 * @example =BOLE.TONGUESHARE(3000, 15, 14) gives #N/A
 * @caution A light tongue lets a trailer sway and turn over; a heavy one overloads hitch and rear axle. Check on a scale.
 * @see LOADLEFT
 * @words tongue weight, trailer sway, fishtail, balance the load, hitch weight, where to set the log, pin weight
 * @picture tongue
 */
export const TONGUESHARE = spread(
  {
    loads: mayBeBlank(
      rows({
        /** Weights aboard, a list; blank for the empty trailer. */
        weightLb: named("weights", pounds),
        /** Middle of each ahead of the axle, a list; minus behind it, 0 or blank over it. */
        positionFt: named("positions", mayBeZero(mayBeNegative(feet))),
      }),
      [],
    ),
    /** The hitch ahead of the axle. */
    hitchFt: feet,
    /** Weight of the empty trailer. */
    emptyLb: optional(pounds, 0),
    /** Percent of the empty trailer's weight on its hitch: 12 or 12%. Needed with its weight. */
    emptySharePercent: optional(percent, 0),
  },
  tongueSharePercent,
);
