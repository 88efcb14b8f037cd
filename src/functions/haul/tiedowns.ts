import { logLength, pounds, sameForAll } from "../../cells/read";
import { spread } from "../../cells/spread";
import { tiedownCount } from "../../math/haul/tiedowns";

/**
 * Tie-downs needed for one log or bundle, rounded up, by the federal rule.
 *
 * 49 CFR 393.106 asks that they hold half the weight together, by the working load limit of the weakest part of each,
 * and 393.110 sets their number by length for a load that nothing blocks in front. Each is taken to run from one side
 * of the vehicle over the load to the other; one fastened to the load or back to its own side counts half. Logs
 * lengthwise between stakes have a rule of their own, 393.116, and a state may ask for more.
 *
 * @customfunction TIEDOWNS
 * @returns Tie-downs
 * @example =BOLE.TIEDOWNS(9000, 16, 3300) gives 3
 * @example =BOLE.TIEDOWNS(1100, 5, 3300) gives 1
 * @example =BOLE.TIEDOWNS(9000, 16, "new") gives #VALUE!
 * @caution The least the law asks, not always enough: read the rule, use rated gear with its tag, stop and check on the way.
 * @see TIEDOWNLIMIT
 * @words chains, straps, binders, how many straps, tie down, working load limit, wll, securing logs, dot rule, how many chains
 */
export const TIEDOWNS = spread(
  {
    /** Weight of the article. */
    weightLb: pounds,
    /** Its length along the vehicle. */
    lengthFt: logLength,
    /** Working load limit of one tie-down, from its tag or grade mark; without one by TIEDOWNLIMIT. */
    limitLb: sameForAll(pounds),
  },
  tiedownCount,
);
