import { mayBeZero, money, named, number, rows } from "../../cells/read";
import { table } from "../../cells/spread";
import { partnerShareTable } from "./partner-share-table";

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
 * @returns A table: who, own outlay back, share of the rest, gets; the sum last
 * @example =BOLE.PARTNERSHARE(1000, {300;100}, {60;40}) gives {"who","own outlay back","share of the rest","gets";"partner 1",300,360,660;"partner 2",100,240,340;"all",400,600,1000}
 * @example =BOLE.PARTNERSHARE(100, {300;0}, {1;1}) gives {"who","own outlay back","share of the loss","gets";"partner 1",300,-100,200;"partner 2",0,-100,-100;"all",300,-200,100}
 * @example =BOLE.PARTNERSHARE(1000, {300;100}, {60;0}) gives #VALUE!
 * @words split the money, partnership, profit sharing, settle up, year end
 */
export const PARTNERSHARE = table(
  {
    /** Money that came in, all of it. */
    receipts: mayBeZero(money),
    partners: rows({
      /** What each partner laid out, a cell a partner, 0 or blank for nothing; one cell alone counts for each of them. */
      paid: mayBeZero(money),
      /** Share of each partner in what is left, beside it. Plain numbers. */
      share: named("shares", number),
    }),
  },
  partnerShareTable,
);
