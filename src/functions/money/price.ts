import {
  mayBeNegative,
  mayBeZero,
  money,
  named,
  number,
  optional,
  percent,
  sameForAll,
  zeroCounts,
} from "../../cells/read";
import { spread } from "../../cells/spread";
import { boardCost } from "../../math/money/board-cost";
import { listPrice, marginShare } from "../../math/money/price-and-margin";

/**
 * Cost per board foot sold, from all the money in a log.
 *
 * Any currency; the answer is in the same. The log's cost is below 0 where you were paid to take it away. Hours without
 * a rate and money without board feet are refused, so that no cost drops out unseen.
 *
 * @customfunction BOARDCOST
 * @returns Money per board foot sold
 * @example =BOLE.BOARDCOST(120, 60, 3, 40, 60, 400, 10) gives 1
 * @example =BOLE.BOARDCOST(-50, 60, 3, 40, 0, 260) gives 0.5
 * @example =BOLE.BOARDCOST(120, 60, 3, 40, 60, 400, 100) gives #N/A
 * @words cost per foot, what does my lumber cost, break even price, cost of goods
 * @see LISTPRICE
 */
export const BOARDCOST = spread(
  {
    /** Money paid for the log; below 0 for a fee you received. */
    logCost: mayBeNegative(mayBeZero(money)),
    /** Money for hauling and lifting. */
    haul: mayBeZero(money),
    /** Hours of sawing and handling. */
    hours: mayBeZero(number),
    /** Money an hour costs: labour and mill. */
    ratePerHour: named("rate", mayBeZero(money)),
    /** Money for drying all of it. */
    drying: mayBeZero(money),
    /** Board feet sawn from it. */
    boardFeet: mayBeZero(number),
    /** Share of those feet that cannot be sold. */
    wastePercent: optional(percent, 0),
  },
  boardCost,
);

/**
 * Price that leaves a margin on the price.
 *
 * The margin is a share of the price, not a markup on the cost: a markup of 40 % is a margin of 28.6 %. A cost without a
 * margin is refused, so that nothing is sold at cost because a cell was forgotten; a row without a cost answers 0.
 *
 * @customfunction LISTPRICE
 * @returns Price, in the money of the cost
 * @example =BOLE.LISTPRICE(6, 40) gives 10
 * @example =BOLE.LISTPRICE(6, 100) gives #N/A
 * @example =BOLE.LISTPRICE(6, 0) gives #VALUE!
 * @words markup, asking price, what to charge, profit, price with margin, what to charge for a board
 * @see MARGIN
 */
export const LISTPRICE = spread(
  {
    /** What it cost, per board foot or per piece. */
    cost: money,
    /** Share of the price to be left after the cost. */
    marginPercent: sameForAll(percent),
  },
  listPrice,
);

/**
 * Margin in a price: the share of it that is left after the cost.
 *
 * Below 0 it was sold at a loss. Format the cell as percent. Where you were paid to take the log the cost may be below 0,
 * and the margin is over 1.
 *
 * @customfunction MARGIN
 * @returns Share of the price: 0.4 is 40 %
 * @example =BOLE.MARGIN(10, 6) gives 0.4
 * @example =BOLE.MARGIN(1.4, 1) gives 0.286
 * @example =BOLE.MARGIN(10, "six") gives #VALUE!
 * @words profit, markup, gross margin
 * @see LISTPRICE
 */
export const MARGIN = spread(
  {
    /** Price. */
    price: money,
    /** What it cost, in the same money; below 0 where you were paid more than it cost. */
    cost: zeroCounts(mayBeNegative(money)),
  },
  marginShare,
);
