import { label, optional } from "../../cells/read";
import { table } from "../../cells/spread";
import { orderPassesTable } from "./order-passes-table";
import { ORDER_REQUEST } from "./order-request";
import { orderTable } from "./order-table";

/**
 * Which logs of the yard to saw for an order with the least wood or cost, and what each gives to which line.
 *
 * The order has one row a line: thickness, width in inches, length in feet, count, and if wanted the customer and the green
 * size. A count of `stock` means that these pieces are not ordered but wanted for the shelf, as many as come. The logs have
 * one row each: small-end diameter inside bark, length with its trim, and if wanted the large end, the cost and a name.
 *
 * Every log is round and straight and is sawn live, through and through. A flitch is cut off at its longest strip from the
 * butt, squared to one width, and ripped into strips; each strip is crosscut into pieces one after the other. A flitch gives
 * pieces of one thickness only. ORDERPASSES says how every log is sawn.
 *
 * The row `bound` says what is proved. "No plan takes less wood" is certain. "2.4 % at most over the best: no plan takes less
 * than 640.1 board feet" means that whoever planned this order, by hand or by machine, would need at least 640.1 board feet
 * of logs lying here, under these rules; the plan shown needs 2.4 % more at most. Where the order cannot be filled, "these logs
 * cannot give more" is certain too; otherwise the plan is the fullest that was found.
 *
 * Same inputs, same plan: the search stops after a number of steps, never after a time. A plan of 25 logs and 12 lines takes
 * a second to some seconds. The wood of a log is its solid content in board feet. Whatever stands above the first flitch and below the
 * last is left to saw as one likes.
 *
 * @customfunction ORDERPLAN
 * @returns A table: log, diameter, length, wood and board feet, a column for each line of the order, note; sums and remarks
 * @example =BOLE.ORDERPLAN({"8/4",8,8,4;"4/4",6,8,4}, {12,"8-4";13,"8-4";14,"8-4";17,"8-4"}, 0.125, {"trim",2}) gives a table of 9 rows: 3 14; bound 115.0527; logs left 3
 * @example =BOLE.ORDERPLAN({"4/4",6,8,4}, {12,8;14,8}, 0.125, {"least","cost"}) gives #VALUE!
 * @caution Check the fit of the log in the mill and the maker's limits before sawing; a log that is turned can roll.
 * @words customer order, fill an order, which logs, cutting stock, least waste, what to saw, bill of lumber, yard
 * @see ORDERPASSES, CUTPLAN
 * @picture patterns
 */
export const ORDERPLAN = table(ORDER_REQUEST, orderTable);

/**
 * How each log of an order plan is sawn: blade heights, and how every flitch is ripped and crosscut into whose pieces.
 *
 * Pass 1 takes the top slab; its note says how much of the butt stands above the face it leaves. Every later pass frees one
 * flitch. `run` is where the flitch is cut off, measured from the butt; `rip` the green widths of its strips, widest first;
 * `cut` the nominal lengths in each strip, from the butt on, strips parted by semicolons. A piece narrower than its strip is
 * ripped down afterwards.
 *
 * @customfunction ORDERPASSES
 * @returns A table: log, pass, blade height, drop, sawn, run, rip, cut, pieces, board feet, note
 * @example =BOLE.ORDERPASSES({"8/4",8,8,4;"4/4",6,8,4}, {12,"8-4";13,"8-4";14,"8-4";17,"8-4"}, 0.125, {"trim",2}, 3) gives a table of 8 rows: 3 1
 * @example =BOLE.ORDERPASSES({"4/4",6,8,4}, {12,8;14,8}, 0.125, {"trim",2}, "log 9") gives #VALUE!
 * @caution Check the fit of the log in the mill and the maker's limits before sawing; a log that is turned can roll.
 * @words cut list, saw list, rip, crosscut, edger, passes, customer pieces, sawing instructions
 * @see ORDERPLAN, CUTPLAN
 * @picture patterns
 */
export const ORDERPASSES = table(
  {
    ...ORDER_REQUEST,
    /** One log, by its name or its row among the logs; all that are sawn where it is left out. */
    log: optional(label),
  },
  orderPassesTable,
);
