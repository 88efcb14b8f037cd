import { mayBeZero, money, named, number } from "../../cells/read";
import { spread } from "../../cells/spread";
import { breakEvenFeet } from "../../math/money/break-even-feet";
import { haulCostPerFoot } from "../../math/money/haul-cost";
import { hourlyRate } from "../../math/money/hourly-rate";

/**
 * Cost of hauling, per board foot brought home.
 *
 * Miles or hours without their rate and money without board feet are refused, so that no cost drops out unseen.
 *
 * @customfunction HAULCOST
 * @returns Money per board foot
 * @example =BOLE.HAULCOST(60, 1.5, 3, 30, 600) gives 0.30
 * @example =BOLE.HAULCOST(60, 1.5, 3, 0, 600) gives #N/A
 * @example =BOLE.HAULCOST(60, 1.5, 3, 30, -600) gives #VALUE!
 * @caution Check insect quarantines and firewood rules before a log with bark crosses a county or state line.
 * @words trucking, mileage, delivery, transport
 * @see BOARDCOST
 */
export const HAULCOST = spread(
  {
    /** Miles driven, there and back. */
    miles: mayBeZero(number),
    /** Money per mile: truck, trailer, fuel. */
    costPerMile: named("permile", mayBeZero(money)),
    /** Hours of driving, loading and unloading, of all hands. */
    hours: mayBeZero(number),
    /** Money per hour. */
    ratePerHour: named("rate", mayBeZero(money)),
    /** Board feet in the load. */
    boardFeet: mayBeZero(number),
  },
  haulCostPerFoot,
);

/**
 * What an hour must earn to pay for itself.
 *
 * Count only hours that somebody pays for: setting up, sharpening and selling are in the fixed cost or the wage.
 *
 * @customfunction HOURLYRATE
 * @returns Money per hour
 * @example =BOLE.HOURLYRATE(12000, 600, 15, 40) gives 75
 * @example =BOLE.HOURLYRATE(12000, -600, 15, 40) gives #VALUE!
 * @words hourly rate, shop rate, mill rate, overhead, charge per hour
 * @see SAWFEE
 */
export const HOURLYRATE = spread(
  {
    /** Fixed cost of a period: mill payment, insurance, rent. */
    fixedCost: named("fixed", money),
    /** Hours sold in the same period. */
    hours: number,
    /** Cost of a running hour: fuel, blades, wear. */
    variablePerHour: named("variable", mayBeZero(money)),
    /** Wage of an hour, of all hands. */
    wagePerHour: named("wage", mayBeZero(money)),
  },
  hourlyRate,
);

/**
 * Board feet to sell before the fixed cost of a period is earned.
 *
 * @customfunction BREAKEVENFEET
 * @returns Board feet
 * @example =BOLE.BREAKEVENFEET(12000, 4, 1) gives 4000
 * @example =BOLE.BREAKEVENFEET(12000, 4, 4) gives #N/A
 * @words break even, overhead, how much must I saw, how much must I sell
 * @see HOURLYRATE
 */
export const BREAKEVENFEET = spread(
  {
    /** Fixed cost of a period. */
    fixedCost: named("fixed", money),
    /** Price per board foot. */
    pricePerFoot: named("price", money),
    /** Cost of each board foot: log, sawing, drying. */
    variablePerFoot: named("variable", money),
  },
  breakEvenFeet,
);
