import { mayBeNegative, mayBeZero, money, number, optional, percent, rows } from "../cells/read";
import { spread, table } from "../cells/spread";
import { boardCost } from "../math/money/board-cost";
import { breakEvenFeet } from "../math/money/break-even-feet";
import { lineAmount } from "../math/money/cents";
import { driedBoardFeet, KILN_LOSS_PERCENT } from "../math/money/dried-tally";
import { haulCostPerFoot } from "../math/money/haul-cost";
import { hourlyRate } from "../math/money/hourly-rate";
import { logBid } from "../math/money/log-bid";
import { partnerShares } from "../math/money/partner-share";
import { listPrice, marginShare } from "../math/money/price-and-margin";
import { sawFee } from "../math/money/saw-fee";

/**
 * Cost per board foot sold, from all the money in a log.
 *
 * Any currency; the answer is in the same. The log's cost is below 0 where you were paid to take it away. Hours without
 * a rate and money without board feet are refused, so that no cost drops out unseen.
 *
 * @customfunction BOARDCOST
 * @param logcost Money paid for the log; below 0 for a fee you received.
 * @param haul Money for hauling and lifting.
 * @param hours Hours of sawing and handling.
 * @param rate Money an hour costs: labour and mill.
 * @param drying Money for drying all of it.
 * @param boardfeet Board feet sawn from it.
 * @param [waste] Share of those feet that cannot be sold. A bare number is percent; 0 when left out.
 * @returns Money per board foot sold
 * @example =BOLE.BOARDCOST(120, 60, 3, 40, 60, 400, 10) gives 1
 * @example =BOLE.BOARDCOST(-50, 60, 3, 40, 0, 260) gives 0.5
 * @example =BOLE.BOARDCOST(120, 60, 3, 40, 60, 400, 100) gives #N/A
 * @words cost per foot, what does my lumber cost, break even price, cost of goods
 * @see LISTPRICE
 */
export function BOARDCOST(
  logcost: unknown[][],
  haul: unknown[][],
  hours: unknown[][],
  rate: unknown[][],
  drying: unknown[][],
  boardfeet: unknown[][],
  waste?: unknown[][],
): unknown[][] {
  return spread(
    {
      logCost: mayBeNegative(mayBeZero(money(logcost, "logcost"))),
      haul: mayBeZero(money(haul, "haul")),
      hours: mayBeZero(number(hours, "hours")),
      ratePerHour: mayBeZero(money(rate, "rate")),
      drying: mayBeZero(money(drying, "drying")),
      boardFeet: mayBeZero(number(boardfeet, "boardfeet")),
      wastePercent: optional(percent(waste, "waste"), 0),
    },
    boardCost,
  );
}

/**
 * Price that leaves a margin on the price.
 *
 * The margin is a share of the price, not a markup on the cost: a markup of 40 % is a margin of 28.6 %.
 *
 * @customfunction LISTPRICE
 * @param cost What it cost, per board foot or per piece.
 * @param margin Share of the price to be left after the cost. A bare number is percent: 40, 40% and 0.4 are alike.
 * @returns Price, in the money of the cost
 * @example =BOLE.LISTPRICE(6, 40) gives 10
 * @example =BOLE.LISTPRICE(6, 100) gives #N/A
 * @example =BOLE.LISTPRICE(6, -5) gives #VALUE!
 * @words markup, asking price, what to charge, profit
 * @see MARGIN
 */
export function LISTPRICE(cost: unknown[][], margin: unknown[][]): unknown[][] {
  return spread(
    { cost: mayBeZero(money(cost, "cost")), marginPercent: mayBeZero(percent(margin, "margin")) },
    listPrice,
  );
}

/**
 * Margin in a price: the share of it that is left after the cost.
 *
 * Below 0 it was sold at a loss. Format the cell as percent.
 *
 * @customfunction MARGIN
 * @param price Price.
 * @param cost What it cost, in the same money.
 * @returns Share of the price, up to 1
 * @example =BOLE.MARGIN(10, 6) gives 0.4
 * @example =BOLE.MARGIN(1.4, 1) gives 0.286
 * @example =BOLE.MARGIN(10, "six") gives #VALUE!
 * @words profit, markup, gross margin
 * @see LISTPRICE
 */
export function MARGIN(price: unknown[][], cost: unknown[][]): unknown[][] {
  return spread({ price: money(price, "price"), cost: money(cost, "cost") }, marginShare);
}

/**
 * Most to pay for a log: what its lumber sells for, less your costs and margin.
 *
 * An answer below 0 means that you must be paid at least that much to take it: city logs often come with a removal fee.
 *
 * @customfunction LOGBID
 * @param boardfeet Board feet the log will yield.
 * @param price Price of its lumber per board foot, as it will be sold.
 * @param costs All costs of that log: felling, hauling, sawing, drying, planing.
 * @param [margin] Share of the sales to keep. A bare number is percent; 0 when left out.
 * @returns Money for the log; below 0, money to be paid to you
 * @example =BOLE.LOGBID(300, 5, 600, 20) gives 600
 * @example =BOLE.LOGBID(100, 4, 450) gives -50
 * @example =BOLE.LOGBID(300, 5, 600, 100) gives #N/A
 * @caution Expect metal in a log from a yard, street, fence row or pole: scan it, and allow blade money in the costs. Do not saw painted, treated, tarred or creosoted wood as lumber: paint may hold lead, and the dust and waste are regulated.
 * @words bid, offer, stumpage, what is a log worth, residual value, removal fee
 * @see BOARDCOST
 */
export function LOGBID(
  boardfeet: unknown[][],
  price: unknown[][],
  costs: unknown[][],
  margin?: unknown[][],
): unknown[][] {
  return spread(
    {
      yieldBoardFeet: number(boardfeet, "boardfeet"),
      price: money(price, "price"),
      costs: money(costs, "costs"),
      marginPercent: optional(percent(margin, "margin"), 0),
    },
    logBid,
  );
}

/**
 * Custom sawing bill: by the board foot, by the hour, and for blades that hit metal.
 *
 * Feet, hours or blades without their price are refused, so that no work goes unbilled. For a bill by the hour leave
 * the feet and their rate blank.
 *
 * @customfunction SAWFEE
 * @param boardfeet Board feet sawn, by the lumber tally.
 * @param rate Money per board foot.
 * @param [hours] Hours billed beside the feet, or instead of them.
 * @param [hourly] Money per hour.
 * @param [blades] Blades spoiled by metal.
 * @param [bladecost] Money per blade.
 * @returns Money
 * @example =BOLE.SAWFEE(312, 0.55, 0, 0, 2, 28) gives 227.60
 * @example =BOLE.SAWFEE(0, 0, 6.5, 95, 3, 28) gives 701.50
 * @example =BOLE.SAWFEE(312, 0.55, 2) gives #N/A
 * @caution Expect metal in a log from a yard, street, fence row or pole. Agree before sawing who pays for a blade.
 * @words sawing charge, invoice, nail, metal strike, by the hour, thousand
 * @see LINEAMOUNT
 */
export function SAWFEE(
  boardfeet: unknown[][],
  rate: unknown[][],
  hours?: unknown[][],
  hourly?: unknown[][],
  blades?: unknown[][],
  bladecost?: unknown[][],
): unknown[][] {
  return spread(
    {
      boardFeet: mayBeZero(number(boardfeet, "boardfeet")),
      ratePerBoardFoot: mayBeZero(money(rate, "rate")),
      hours: optional(number(hours, "hours"), 0),
      hourlyRate: optional(money(hourly, "hourly"), 0),
      blades: optional(number(blades, "blades"), 0),
      bladeCost: optional(money(bladecost, "bladecost"), 0),
    },
    sawFee,
  );
}

/**
 * Board feet a green tally is likely to measure after kiln drying.
 *
 * A forecast, for a price or a plan. The bill goes by a new tally taken on the dry lumber: hardwood measured after kiln
 * drying is sold on its net board feet, with no addition for shrinkage (National Conference on Weights and Measures,
 * 21 July 1977, as quoted in FDMC magazine).
 *
 * @customfunction DRIEDTALLY
 * @param green Board feet of the green tally.
 * @param [shrinkage] What drying takes off the tally. A bare number is percent; 7 % when left out, 5 to 9 % are met.
 * @returns Board feet
 * @example =BOLE.DRIEDTALLY(1000) gives 930
 * @example =BOLE.DRIEDTALLY(1000, 8) gives 920
 * @example =BOLE.DRIEDTALLY(1000, 100) gives #N/A
 * @caution Never bill more feet than the new tally: adding shrinkage back to dry lumber is not allowed where Handbook 130 applies.
 * @words net tally, kiln loss, shrinkage, gross and net measure
 * @see TALLY
 */
export function DRIEDTALLY(green: unknown[][], shrinkage?: unknown[][]): unknown[][] {
  return spread(
    {
      greenBoardFeet: number(green, "green"),
      shrinkagePercent: optional(percent(shrinkage, "shrinkage"), KILN_LOSS_PERCENT),
    },
    driedBoardFeet,
  );
}

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

/**
 * Amount of one invoice line, to the cent, so that the lines add up to the total.
 *
 * Half a cent goes away from zero, by the decimal digits as typed (15, as many as a sheet keeps): 1.005 is held in
 * binary as a little less, and would otherwise go down. Add up the amounts of the lines; take a tax once, on the sum.
 * A quantity or price below 0 is a return or a discount. A line with a quantity and no price is refused.
 *
 * @customfunction LINEAMOUNT
 * @param quantity Board feet, hours or pieces.
 * @param price Money for each.
 * @returns Money, in whole cents
 * @example =BOLE.LINEAMOUNT(1.005, 1) gives 1.01
 * @example =BOLE.LINEAMOUNT(79.06, 6.5) gives 513.89
 * @example =BOLE.LINEAMOUNT(-3, 0.335) gives -1.01
 * @example =BOLE.LINEAMOUNT("a dozen", 6.5) gives #VALUE!
 * @words invoice, bill, round to the cent, total, receipt
 * @see SAWFEE
 */
export function LINEAMOUNT(quantity: unknown[][], price: unknown[][]): unknown[][] {
  return spread(
    { quantity: mayBeNegative(number(quantity, "quantity")), price: mayBeNegative(money(price, "price")) },
    lineAmount,
  );
}

/**
 * What each partner gets of the receipts: own outlay back first, then the shares.
 *
 * Only the proportion of the shares counts: 60 and 40, 0.6 and 0.4, 3 and 2 are alike. Cents are given out so that the
 * column adds up to the receipts exactly: each gets the full cents of his share, and the cents left over go one each to
 * the largest remainders, at a tie to the earlier partner. When the receipts do not cover the outlays the rest is a
 * loss: the heading says so, it is carried in the same shares, and a partner whose part of it is more than he laid out
 * stands below 0 and pays that in.
 *
 * @customfunction PARTNERSHARE
 * @param receipts Money that came in, all of it.
 * @param paid What each partner laid out, a cell a partner, 0 or blank for nothing; one cell alone counts for each of them.
 * @param shares Share of each partner in what is left, beside it. Plain numbers.
 * @returns A table: who, own outlay back, share of the rest, gets; the sum last
 * @example =BOLE.PARTNERSHARE(1000, {300;100}, {60;40}) gives {"who","own outlay back","share of the rest","gets";"partner 1",300,360,660;"partner 2",100,240,340;"all",400,600,1000}
 * @example =BOLE.PARTNERSHARE(100, {300;0}, {1;1}) gives {"who","own outlay back","share of the loss","gets";"partner 1",300,-100,200;"partner 2",0,-100,-100;"all",300,-200,100}
 * @example =BOLE.PARTNERSHARE(1000, {300;100}, {60;0}) gives #VALUE!
 * @words split the money, partnership, profit sharing, settle up, year end
 */
export function PARTNERSHARE(receipts: unknown[][], paid: unknown[][], shares: unknown[][]): unknown[][] {
  return table(
    {
      receipts: mayBeZero(money(receipts, "receipts")),
      partners: rows({ paid: mayBeZero(money(paid, "paid")), share: number(shares, "shares") }),
    },
    partnerShares,
  );
}
