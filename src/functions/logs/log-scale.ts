import { inches, logLength, oneOf, optional, together } from "../../cells/read";
import { spread, table } from "../../cells/spread";
import { logScaleBoardFeet } from "../../math/logs/log-scale";
import { LOG_RULE_NAMES } from "./log-rule-cards";
import { logRulesTable } from "./log-rules-table";

/**
 * Board feet in a log by a log rule.
 *
 * Rules: International 1/4, International 1/8, Doyle, Scribner (the formula), Scribner Decimal C (the table, 6 to 20 in by
 * 6 to 16 ft), Doyle-Scribner, Vermont, Two-thirds, Inscribed square, Adirondack. LOGRULES shows them side by side.
 *
 * Rounding "table" enters the rule as its printed table is entered: nearest whole inch with an exact half dropped, length
 * down to even feet, result as printed. Authorities differ on the inch: Georgia, Vermont and Wengert take the nearest,
 * Georgia and Wengert share exact halves out, the Idaho contest rules drop them, a Montana lecture always cuts down. Round
 * first with SCALEDIAMETER where yours differs. Printed Doyle tables differ on an exact half board foot: the one followed
 * here counts it, Chase 1913 does either.
 *
 * Long logs: International over 20 ft is scaled as two or more logs with the rule's own taper of half an inch in 4 ft.
 * Vermont over 12 ft and Scribner Decimal C from 18 ft are refused: measure and scale each piece.
 *
 * @customfunction LOGSCALE
 * @returns Board feet
 * @example =BOLE.LOGSCALE(20, 12, "Doyle") gives 192
 * @example =BOLE.LOGSCALE(20, 16) gives 289.741
 * @example =BOLE.LOGSCALE(20, 16, "International 1/4", "table") gives 290
 * @example =BOLE.LOGSCALE(20, 16, "Scribner Decimal C") gives 280
 * @example =BOLE.LOGSCALE(3, 12, "Doyle") gives #N/A
 * @example =BOLE.LOGSCALE(30, 16, "Scribner Decimal C") gives #N/A
 * @words scale a log, log rule, board feet in a log, bdft, log scale, Doyle scale, Scribner scale, International scale
 * @see LOGRULES
 * @picture log-trim
 */
export const LOGSCALE = spread(
  {
    /** Small-end diameter inside bark (Two-thirds: at mid-length). */
    diameterIn: inches,
    /** Log length. */
    lengthFt: logLength,
    /** Name of the rule. */
    rule: optional(oneOf(LOG_RULE_NAMES), "International 1/4"),
    /** none (the sizes as given) or table (whole inches, length classes, result as printed). */
    rounding: optional(oneOf({ none: ["exact", "formula"], table: ["printed", "printed table"] }), "none"),
  },
  logScaleBoardFeet,
);

/**
 * The log rules side by side; with a log, its board feet by each and whom the rule favors.
 *
 * At one price per board foot a rule that scales less than International 1/4 favors the buyer of the log, one that scales
 * more the seller. A rule without an answer on this log shows #N/A in its row; the others still answer.
 *
 * @customfunction LOGRULES
 * @returns A table: rule, board feet, percent against International 1/4, favors, kind, what is measured, limits, rounding, source
 * @example =BOLE.LOGRULES() gives a table of 11 rows
 * @example =BOLE.LOGRULES(20, 12) gives a table of 11 rows: Doyle 192
 * @example =BOLE.LOGRULES(20) gives #VALUE!
 * @words compare log rules, Doyle or International, Scribner, which log scale
 * @see LOGSCALE
 * @picture log-trim
 */
export const LOGRULES = table(
  {
    log: optional(
      together({
        /** Small-end diameter inside bark. Leave both out for the list of rules. */
        diameterIn: inches,
        /** Log length. */
        lengthFt: logLength,
      }),
    ),
  },
  logRulesTable,
);
