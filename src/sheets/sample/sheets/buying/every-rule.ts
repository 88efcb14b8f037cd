import type { Draft } from "../../draft";
import { entry, spill } from "../../drawing/cells";
import { printOnly, put, startPage, setHeight } from "../../drawing/page";
import { HEADER, SMALL, TEXT } from "../../drawing/style";
import { FORMAT } from "../../../formats";

/** There are fewer rules than rows down to here. */
const LAST_ROW = 30;
const RULES = "=BOLE.LOGRULES(One_log_dia, One_log_length)";

/** One log by every rule side by side. */
export function drawEveryRule(draft: Draft): void {
  const page = startPage(draft, "Every rule", {
    title: "Every rule: one log by all of them",
    lead: "Type a log. Percent says how much more or less than International 1/4 a rule gives this log, and favors whom that helps.",
    pages: { startAt: [6] },
    widths: [22, 13, 20, 12, 12, 46, 13, 13, 48, 54],
  });
  put(page, "A4", "Small end, inches", TEXT);
  entry(page, "B4", 20, { name: "One_log_dia" });
  put(page, "A5", "Length, feet", TEXT);
  entry(page, "B5", "12'", { format: FORMAT.text, name: "One_log_length" });
  put(
    page,
    "C4",
    "#N/A: the rule has no answer for this log, which lies outside its table or is measured elsewhere",
    SMALL,
  );
  put(page, "B7", RULES, SMALL);
  spill(page, "A8", RULES, [FORMAT.text, FORMAT.one], HEADER);
  setHeight(page, 8, 33);
  printOnly(page, `A4:J${LAST_ROW}`);
}
