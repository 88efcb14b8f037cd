import { NoAnswer } from "../errors";
import type { Log } from "./log";
import { LOG_RULES, type LogRuleName } from "./log-rules";

/** How sizes and result are rounded: not at all, or as the rule's printed table does. */
export type ScaleRounding = "none" | "table";

/**
 * Board feet in a log by the log rule named: each rule has its own formula, source and limits.
 *
 * @formula BF = internationalQuarterBoardFeet() if r = "International 1/4" and asked = "none",
 *   internationalQuarterTableBoardFeet() if r = "International 1/4", internationalEighthBoardFeet() if r =
 *   "International 1/8", doyleBoardFeet() if r = "Doyle" and asked = "none", doyleTableBoardFeet() if r = "Doyle",
 *   scribnerBoardFeet() if r = "Scribner", scribnerDecimalCBoardFeet() if r = "Scribner Decimal C",
 *   doyleScribnerBoardFeet() if r = "Doyle-Scribner", vermontBoardFeet() if r = "Vermont" and asked = "none",
 *   vermontTableBoardFeet() if r = "Vermont", twoThirdsBoardFeet() if r = "Two-thirds", inscribedSquareBoardFeet() if
 *   r = "Inscribed square", else adirondackBoardFeet(); r = rule; asked = rounding or "none"
 * @source plain arithmetic: each rule has its own source
 */
export function logScaleBoardFeet({
  rule,
  rounding = "none",
  ...log
}: Log & { rule: LogRuleName; rounding?: ScaleRounding }): number {
  const asked = LOG_RULES[rule];
  if (rounding === "none") return asked.boardFeet(log);
  if (!asked.tableBoardFeet)
    throw new NoAnswer(`rounding "table": no printed table of ${rule} was seen; wanted "none" with this rule`);
  return asked.tableBoardFeet(log);
}
