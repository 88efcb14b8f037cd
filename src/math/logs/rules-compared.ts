import { NoAnswer } from "../errors";
import { refusalOf, type Log } from "./log";
import { LOG_RULES, type LogRuleName } from "./log-rules";

/** Below this many percent the two rules agree (common practice, no source: a tape's error is larger). */
const EVEN_PERCENT = 1;

/** What one rule makes of a log, and whom it favors at one price per board foot; or why it has no answer. */
export interface Compared {
  rule: LogRuleName;
  boardFeet: number | NoAnswer;
  /** Against International 1/4, where both have an answer. */
  percent?: number;
  favors?: "buyer" | "seller" | "neither";
}

/**
 * A log scaled by every log rule, and who gains by each at one price per board foot.
 *
 * A rule that scales less than International 1/4 favors the buyer of the log, one that scales more the seller.
 *
 * @formula in words: every rule by its own formula, and percent = 100 * (BF by the rule - BF by International 1/4) /
 *   BF by International 1/4
 * @source plain arithmetic on the rules' own formulas
 * @range each rule's own limits: a rule without an answer on this log says so in its cell
 */
export function rulesCompared(log: Log): Compared[] {
  const yardstick = smallEndScale("International 1/4", log);
  return (Object.keys(LOG_RULES) as LogRuleName[]).map((rule) => {
    const boardFeet = smallEndScale(rule, log);
    return { rule, boardFeet, ...against(yardstick, boardFeet) };
  });
}

/** The diameter given is the small end's: a rule that measures elsewhere would get the wrong one. */
function smallEndScale(rule: LogRuleName, log: Log): number | NoAnswer {
  const { measuredAt, limits, boardFeet } = LOG_RULES[rule];
  if (measuredAt === "middle")
    return new NoAnswer(
      `${rule} diameter (in): wanted at mid-length, got the small end; give LOGSCALE the one at mid-length`,
    );
  return refusalOf(log, limits) ?? boardFeet(log);
}

function against(yardstick: number | NoAnswer, boardFeet: number | NoAnswer): Pick<Compared, "percent" | "favors"> {
  if (typeof yardstick !== "number" || typeof boardFeet !== "number" || yardstick === 0) return {};
  const percent = (100 * (boardFeet - yardstick)) / yardstick;
  return { percent, favors: Math.abs(percent) < EVEN_PERCENT ? "neither" : percent < 0 ? "buyer" : "seller" };
}
