import { mayBeZero, money, number } from "../../cells/read";
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
 * @param miles Miles driven, there and back.
 * @param permile Money per mile: truck, trailer, fuel.
 * @param hours Hours of driving, loading and unloading, of all hands.
 * @param rate Money per hour.
 * @param boardfeet Board feet in the load.
 * @returns Money per board foot
 * @example =BOLE.HAULCOST(60, 1.5, 3, 30, 600) gives 0.30
 * @example =BOLE.HAULCOST(60, 1.5, 3, 0, 600) gives #N/A
 * @example =BOLE.HAULCOST(60, 1.5, 3, 30, -600) gives #VALUE!
 * @caution Check insect quarantines and firewood rules before a log with bark crosses a county or state line.
 * @words trucking, mileage, delivery, transport
 * @see BOARDCOST
 */
export function HAULCOST(
  miles: unknown[][],
  permile: unknown[][],
  hours: unknown[][],
  rate: unknown[][],
  boardfeet: unknown[][],
): unknown[][] {
  return spread(
    {
      miles: mayBeZero(number(miles, "miles")),
      costPerMile: mayBeZero(money(permile, "permile")),
      hours: mayBeZero(number(hours, "hours")),
      ratePerHour: mayBeZero(money(rate, "rate")),
      boardFeet: mayBeZero(number(boardfeet, "boardfeet")),
    },
    haulCostPerFoot,
  );
}

/**
 * What an hour must earn to pay for itself.
 *
 * Count only hours that somebody pays for: setting up, sharpening and selling are in the fixed cost or the wage.
 *
 * @customfunction HOURLYRATE
 * @param fixed Fixed cost of a period: mill payment, insurance, rent.
 * @param hours Hours sold in the same period.
 * @param variable Cost of a running hour: fuel, blades, wear.
 * @param wage Wage of an hour, of all hands.
 * @returns Money per hour
 * @example =BOLE.HOURLYRATE(12000, 600, 15, 40) gives 75
 * @example =BOLE.HOURLYRATE(12000, -600, 15, 40) gives #VALUE!
 * @words shop rate, mill rate, overhead, charge per hour
 * @see SAWFEE
 */
export function HOURLYRATE(
  fixed: unknown[][],
  hours: unknown[][],
  variable: unknown[][],
  wage: unknown[][],
): unknown[][] {
  return spread(
    {
      fixedCost: money(fixed, "fixed"),
      hours: number(hours, "hours"),
      variablePerHour: mayBeZero(money(variable, "variable")),
      wagePerHour: mayBeZero(money(wage, "wage")),
    },
    hourlyRate,
  );
}

/**
 * Board feet to sell before the fixed cost of a period is earned.
 *
 * @customfunction BREAKEVENFEET
 * @param fixed Fixed cost of a period.
 * @param price Price per board foot.
 * @param variable Cost of each board foot: log, sawing, drying.
 * @returns Board feet
 * @example =BOLE.BREAKEVENFEET(12000, 4, 1) gives 4000
 * @example =BOLE.BREAKEVENFEET(12000, 4, 4) gives #N/A
 * @words break even, overhead, how much must I saw, how much must I sell
 * @see HOURLYRATE
 */
export function BREAKEVENFEET(fixed: unknown[][], price: unknown[][], variable: unknown[][]): unknown[][] {
  return spread(
    {
      fixedCost: money(fixed, "fixed"),
      pricePerFoot: money(price, "price"),
      variablePerFoot: money(variable, "variable"),
    },
    breakEvenFeet,
  );
}
