import { money, named, number, optional, percent } from "../../cells/read";
import { spread } from "../../cells/spread";
import { logBid } from "../../math/money/log-bid";

/**
 * Most to pay for a log: what its lumber sells for, less your costs and margin.
 *
 * An answer below 0 means that you must be paid at least that much to take it: city logs often come with a removal fee.
 *
 * @customfunction LOGBID
 * @returns Money for the log; below 0, money to be paid to you
 * @example =BOLE.LOGBID(300, 5, 600, 20) gives 600
 * @example =BOLE.LOGBID(100, 4, 450) gives -50
 * @example =BOLE.LOGBID(300, 5, 600, 100) gives #N/A
 * @caution Expect metal in a log from a yard, street, fence row or pole: scan it, and allow blade money in the costs. Do not saw painted, treated, tarred or creosoted wood as lumber: paint may hold lead, and the dust and waste are regulated.
 * @words bid, offer, stumpage, what is a log worth, residual value, removal fee
 * @see BOARDCOST
 */
export const LOGBID = spread(
  {
    /** Board feet the log will yield. */
    yieldBoardFeet: named("boardfeet", number),
    /** Price of its lumber per board foot, as it will be sold. */
    price: money,
    /** All costs of that log: felling, hauling, sawing, drying, planing. */
    costs: money,
    /** Share of the sales to keep. */
    marginPercent: optional(percent, 0),
  },
  logBid,
);
