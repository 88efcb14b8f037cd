import {
  columns,
  inches,
  list,
  logLength,
  money,
  oneOf,
  optional,
  series,
  stemLength,
  zeroAsText,
} from "../../cells/read";
import { table, type TableCell } from "../../cells/spread";
import { buckPlan, diameterAt } from "../../math/logs/buck-plan";
import type { LogRuleName } from "../../math/logs/log-rules";
import { IN_PER_FT } from "../../math/units";
import { LOG_RULE_NAMES } from "./log-rule-cards";

/** Room at the end of a log for the saw cut and a square trim. */
const CUSTOMARY_TRIM_IN = 4;

interface Stem {
  diametersIn: number[];
  lengthFt: number;
  lengthsFt: number[];
  prices: { fromIn: number; price: number; lengthFt?: number | undefined }[];
  trimIn: number;
  rule: LogRuleName;
}

/**
 * Where to cut a long stem so that its logs scale for the most board feet, or sell for the most money.
 *
 * Measure the stem inside bark at equal steps, the butt first and the top last; the diameter goes straight from reading to
 * reading. Every place on whole inches is tried with every length, so no other cuts on whole inches give more. A log is
 * scaled at its small end, behind its trim; the trim holds the saw cut. Prices are columns: from what small end, money a
 * board foot, and, where a price is for one length only, that length; a log takes the best price that it reaches, and one
 * without a price is not cut. Bow, knots and rot are not seen here: buck at the crook first, then ask for each piece.
 *
 * @customfunction BUCKPLAN
 * @returns A table: log, feet from the butt, length, ends, board feet, with prices price and money; total and what is left
 * @example =BOLE.BUCKPLAN({20;18;16;14}, 36, {8;10;12;16}) gives a table of 7 rows
 * @example =BOLE.BUCKPLAN({20;18;16;14}, 36, {8;12}, {12,0.4;16,0.7}, 6, "Doyle") gives a table of 6 rows
 * @example =BOLE.BUCKPLAN({20}, 36, 8) gives #N/A
 * @caution A stem under tension springs, rolls and splits when it is cut: read the binds, and leave felling and bucking to trained people.
 * @see LOGSCALE
 * @words bucking, cut to length, crosscut, where to cut the tree, long log, tree length, log lengths, best cuts, merchandising
 * @picture log-trim
 */
export const BUCKPLAN = table(
  {
    /** Diameters of the stem inside bark at equal steps, butt first, in one row or column. */
    diametersIn: series(inches),
    /** Length of the stem. */
    lengthFt: stemLength,
    /** Lengths that a log may have, without trim. */
    lengthsFt: list(logLength),
    /** Columns: from small end, money a board foot, and the one length that it is for. */
    prices: optional(columns({ fromIn: inches, price: money, lengthFt: optional(logLength) }), []),
    /** Trim of each log, with the saw cut. */
    trimIn: optional(zeroAsText(inches), CUSTOMARY_TRIM_IN),
    /** Log rule. */
    rule: optional(oneOf(LOG_RULE_NAMES), "International 1/4"),
  },
  buckPlanTable,
);

function buckPlanTable(stem: Stem): TableCell[][] {
  const { logs, worth, leftIn } = buckPlan(stem);
  const sold = stem.prices.length > 0;
  const money = (...cells: TableCell[]) => (sold ? cells : []);
  const boardFeet = logs.reduce((sum, log) => sum + log.boardFeet, 0);
  const blank = undefined;
  return [
    ["log", "from butt, ft", "length, ft", "large end, in", "small end, in", "board feet", ...money("price", "money")],
    ...logs.map((log, at) => [
      at + 1,
      log.fromIn / IN_PER_FT,
      log.lengthFt,
      diameterAt(stem, log.fromIn),
      log.smallIn,
      log.boardFeet,
      ...money(log.price, log.worth),
    ]),
    ["total", blank, logs.reduce((sum, log) => sum + log.lengthFt, 0), blank, blank, boardFeet, ...money(blank, worth)],
    ["left over", blank, leftIn / IN_PER_FT, blank, blank, blank, ...money(blank, blank)],
  ];
}
