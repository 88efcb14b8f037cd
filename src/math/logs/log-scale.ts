import { NoAnswer } from "../errors";
import type { Log } from "./log";
import { LOG_RULE_CARDS, type LogRule, type LogRuleName } from "./log-rules";

/** How sizes and result are rounded: not at all, or as the rule's printed table does. */
export const SCALE_ROUNDINGS = { none: ["exact", "formula"], table: ["printed", "printed table"] } as const;
export type ScaleRounding = keyof typeof SCALE_ROUNDINGS;

/**
 * Board feet in a log by the log rule named: each rule has its own formula, source and limits.
 */
export function logScaleBoardFeet({
  rule,
  rounding = "none",
  ...log
}: Log & { rule: LogRuleName; rounding?: ScaleRounding }): number {
  const card: LogRule = LOG_RULE_CARDS[rule];
  if (rounding === "none") return card.boardFeet(log);
  if (!card.tableBoardFeet)
    throw new NoAnswer(`rounding "table": no printed table of ${rule} was seen; wanted "none" with this rule`);
  return card.tableBoardFeet(log);
}
