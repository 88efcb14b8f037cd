import { mayBeNegative, mayBeZero, money, named, number, optional, percent } from "../../cells/read";
import { spread } from "../../cells/spread";
import { lineAmount } from "../../math/money/cents";
import { driedBoardFeet, KILN_LOSS_PERCENT } from "../../math/money/dried-tally";
import { sawFee } from "../../math/money/saw-fee";

/**
 * Custom sawing bill: by the board foot, by the hour, and for blades that hit metal.
 *
 * Feet, hours or blades without their price are refused, so that no work goes unbilled. For a bill by the hour leave
 * the feet and their rate blank.
 *
 * @customfunction SAWFEE
 * @returns Money
 * @example =BOLE.SAWFEE(312, 0.55, 0, 0, 2, 28) gives 227.60
 * @example =BOLE.SAWFEE(0, 0, 6.5, 95, 3, 28) gives 701.50
 * @example =BOLE.SAWFEE(312, 0.55, 2) gives #N/A
 * @caution Expect metal in a log from a yard, street, fence row or pole. Agree before sawing who pays for a blade.
 * @words sawing charge, invoice, nail, metal strike, by the hour, thousand
 * @see LINEAMOUNT
 */
export const SAWFEE = spread(
  {
    /** Board feet sawn, by the lumber tally. */
    boardFeet: mayBeZero(number),
    /** Money per board foot: 550 a thousand is 0.55. */
    ratePerBoardFoot: named("rate", mayBeZero(money)),
    /** Hours billed beside the feet, or instead of them. */
    hours: optional(number, 0),
    /** Money per hour. */
    hourlyRate: named("hourly", optional(money, 0)),
    /** Blades spoiled by metal. */
    blades: optional(number, 0),
    /** Money per blade. */
    bladeCost: optional(money, 0),
  },
  sawFee,
);

/**
 * Board feet a green tally is likely to measure after kiln drying.
 *
 * A forecast, for a price or a plan. The bill goes by a new tally taken on the dry lumber: hardwood measured after kiln
 * drying is sold on its net board feet, with no addition for shrinkage (National Conference on Weights and Measures,
 * 21 July 1977, as quoted in FDMC magazine).
 *
 * @customfunction DRIEDTALLY
 * @returns Board feet
 * @example =BOLE.DRIEDTALLY(1000) gives 930
 * @example =BOLE.DRIEDTALLY(1000, 8) gives 920
 * @example =BOLE.DRIEDTALLY(1000, 100) gives #N/A
 * @caution Never bill more feet than the new tally: adding shrinkage back to dry lumber is not allowed where Handbook 130 applies.
 * @words net tally, kiln loss, shrinkage, gross and net measure
 * @see TALLY
 */
export const DRIEDTALLY = spread(
  {
    /** Board feet of the green tally. */
    greenBoardFeet: named("green", number),
    /** What drying takes off the tally; 5 to 9 % are met. */
    shrinkagePercent: optional(percent, KILN_LOSS_PERCENT),
  },
  driedBoardFeet,
);

/**
 * Amount of one invoice line, to the cent, so that the lines add up to the total.
 *
 * Half a cent goes away from zero, by the decimal digits as typed (15, as many as a sheet keeps): 1.005 is held in
 * binary as a little less, and would otherwise go down. Add up the amounts of the lines; take a tax once, on the sum.
 * A quantity or price below 0 is a return or a discount. A line with a quantity and no price is refused.
 *
 * @customfunction LINEAMOUNT
 * @returns Money, in whole cents
 * @example =BOLE.LINEAMOUNT(1.005, 1) gives 1.01
 * @example =BOLE.LINEAMOUNT(79.06, 6.5) gives 513.89
 * @example =BOLE.LINEAMOUNT(-3, 0.335) gives -1.01
 * @example =BOLE.LINEAMOUNT("a dozen", 6.5) gives #VALUE!
 * @words invoice, sales tax, bill, round to the cent, total, receipt
 * @see SAWFEE
 */
export const LINEAMOUNT = spread(
  {
    /** Board feet, hours or pieces. */
    quantity: mayBeNegative(number),
    /** Money for each. */
    price: mayBeNegative(money),
  },
  lineAmount,
);
