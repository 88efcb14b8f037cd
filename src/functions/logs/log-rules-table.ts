import type { TableCell } from "../../cells/spread";
import type { Limits, Log } from "../../math/logs/log";
import { LOG_RULES, type LogRuleName } from "../../math/logs/log-rules";
import { rulesCompared } from "../../math/logs/rules-compared";
import { LOG_RULE_CARDS } from "./log-rule-cards";

const CARD_HEADINGS = ["rule", "kind", "measured", "smallest", "largest", "rounding as table", "source"];
const LOG_HEADINGS = ["rule", "board feet", "percent against International 1/4", "favors", ...CARD_HEADINGS.slice(1)];

/** The log rules side by side; with a log, its board feet by each and who gains by the rule. */
export function logRulesTable({ log }: { log?: Log }): TableCell[][] {
  const rules = Object.keys(LOG_RULES) as LogRuleName[];
  if (!log) return [CARD_HEADINGS, ...rules.map((rule) => [rule, ...cardCells(rule)])];
  const rows = rulesCompared(log).map(({ rule, boardFeet, percent = "", favors = "" }) => [
    rule,
    boardFeet,
    percent,
    favors,
    ...cardCells(rule),
  ]);
  return [LOG_HEADINGS, ...rows];
}

function cardCells(rule: LogRuleName): string[] {
  const { limits } = LOG_RULES[rule];
  const { kind, measured, asTable, source } = LOG_RULE_CARDS[rule];
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
