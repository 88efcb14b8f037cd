import { money, number, optional, percent } from "../../cells/read";
import { spread } from "../../cells/spread";
import { logBid } from "../../math/money/log-bid";

/**
 * Most to pay for a log: what its lumber sells for, less your costs and margin.
 *
 * An answer below 0 means that you must be paid at least that much to take it: city logs often come with a removal fee.
 *
 * @customfunction LOGBID
 * @param boardfeet Board feet the log will yield.
 * @param price Price of its lumber per board foot, as it will be sold.
 * @param costs All costs of that log: felling, hauling, sawing, drying, planing.
 * @param [margin] Share of the sales to keep: 20, 20% and 0.2 are alike; 0 when left out.
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
