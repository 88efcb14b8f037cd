import { NoAnswer } from "../errors";
import type { Log } from "./log";
import { LOG_RULE_CARDS, type LogRule } from "./log-rules";
import { logScaleBoardFeet } from "./log-scale";

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
export function logRulesTable({ diameterIn, lengthFt }: Partial<Log>): Cell[][] {
  const cards = Object.entries<LogRule>(LOG_RULE_CARDS);
  if (diameterIn === undefined && lengthFt === undefined)
    return [CARD_HEADINGS, ...cards.map(([name, card]) => [name, ...cardCells(card)])];
  if (diameterIn === undefined || lengthFt === undefined)
    throw new NoAnswer(
      `a log's diameter and length: wanted both or neither, got ${diameterIn === undefined ? "the length" : "the diameter"} only`,
    );

  const log = { diameterIn, lengthFt };
  const yardstick = answerOf(() => logScaleBoardFeet({ ...log, rule: "International 1/4" }));
  const row = ([name, card]: [string, LogRule]) => {
    const boardFeet = answerOf(() => smallEndBoardFeet(card, name, log));
    return [name, boardFeet, ...against(yardstick, boardFeet), ...cardCells(card)];
  };
  return [LOG_HEADINGS, ...cards.map(row)];
}

function cardCells({ kind, measured, smallest, largest, asTable, source }: LogRule): string[] {
  return [kind, measured, smallest, largest, asTable, source];
}

/** The diameter of the table is the small end's; a rule that measures elsewhere would get the wrong one. */
function smallEndBoardFeet(card: LogRule, name: string, log: Log): number {
  if (card.measuredAt === "middle")
    throw new NoAnswer(
      `${name} diameter (in): wanted at mid-length, got the small end; give LOGSCALE the one at mid-length`,
    );
  return card.boardFeet(log);
}

function against(yardstick: number | NoAnswer, boardFeet: number | NoAnswer): [number | string, string] {
  if (typeof yardstick !== "number" || typeof boardFeet !== "number" || yardstick === 0) return ["", ""];
  const percent = (100 * (boardFeet - yardstick)) / yardstick;
  return [percent, Math.abs(percent) < EVEN_PERCENT ? "neither" : percent < 0 ? "buyer" : "seller"];
}

function answerOf(ask: () => number): number | NoAnswer {
  try {
    return ask();
  } catch (error) {
    if (error instanceof NoAnswer) return error;
    throw error;
  }
}
