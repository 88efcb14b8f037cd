import { NoAnswer } from "../errors";
import { refusalOf, type Limits, type Log } from "./log";
import { LOG_RULE_CARDS, type LogRule } from "./log-rules";

type Cell = string | number | NoAnswer;

const CARD_HEADINGS = ["rule", "kind", "measured", "smallest", "largest", "rounding as table", "source"];
const LOG_HEADINGS = ["rule", "board feet", "percent against International 1/4", "favors", ...CARD_HEADINGS.slice(1)];

/** Below this many percent the two rules agree (common practice, no source: a tape's error is larger). */
const EVEN_PERCENT = 1;

/**
 * The log rules side by side; with a log, its board feet by each and who gains by the rule at one price per board foot.
 *
 * A rule that scales less than International 1/4 favors the buyer of the log, one that scales more the seller.
 *
 * @formula percent = 100 * (BF by the rule - BF by International 1/4) / BF by International 1/4
 * @source plain arithmetic on the rules' own formulas
 * @range each rule's own limits: a rule without an answer on this log says so in its cell
 */
export function logRulesTable({ log }: { log?: Log }): Cell[][] {
  const cards = Object.entries<LogRule>(LOG_RULE_CARDS);
  if (!log) return [CARD_HEADINGS, ...cards.map(([name, card]) => [name, ...cardCells(card)])];

  const yardstick = smallEndScale("International 1/4", LOG_RULE_CARDS["International 1/4"], log);
  const rows = cards.map(([name, card]) => {
    const boardFeet = smallEndScale(name, card, log);
    return [name, boardFeet, ...against(yardstick, boardFeet), ...cardCells(card)];
  });
  return [LOG_HEADINGS, ...rows];
}

/** The diameter of this table is the small end's: a rule that measures elsewhere would get the wrong one. */
function smallEndScale(name: string, { measuredAt, limits, boardFeet }: LogRule, log: Log): number | NoAnswer {
  if (measuredAt === "middle")
    return new NoAnswer(
      `${name} diameter (in): wanted at mid-length, got the small end; give LOGSCALE the one at mid-length`,
    );
  return refusalOf(log, limits) ?? boardFeet(log);
}

function against(yardstick: number | NoAnswer, boardFeet: number | NoAnswer): [number | string, string] {
  if (typeof yardstick !== "number" || typeof boardFeet !== "number" || yardstick === 0) return ["", ""];
  const percent = (100 * (boardFeet - yardstick)) / yardstick;
  return [percent, Math.abs(percent) < EVEN_PERCENT ? "neither" : percent < 0 ? "buyer" : "seller"];
}

function cardCells({ kind, measured, limits, asTable, source }: LogRule): string[] {
  return [kind, measured, smallestOf(limits), largestOf(limits), asTable, source];
}

function smallestOf({ smallestIn, shortestFt }: Limits): string {
  return shortestFt === undefined ? `${smallestIn} in` : `${smallestIn} in, ${shortestFt} ft`;
}

function largestOf({ largestIn, longestFt }: Limits): string {
  if (largestIn === undefined && longestFt === undefined) return "no limit";
  return [largestIn === undefined ? [] : `${largestIn} in`, longestFt === undefined ? [] : `${longestFt} ft`]
    .flat()
    .join(", ");
}
