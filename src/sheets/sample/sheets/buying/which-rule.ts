import type { Draft } from "../../draft";
import { entry, figure, spill } from "../../drawing/cells";
import { caution, freeze, put, repeatRows, startPage, setLook, merge } from "../../drawing/page";
import { HEADER, PROSE, SMALL, TEXT } from "../../drawing/style";
import { DOLLARS, FORMAT } from "../../../formats";

const RULES = ["Doyle", "Scribner", "International 1/4", "International 1/8"];
const FIRST = 13;
const RULE_COLUMNS = ["D", "E", "F", "G"];

/** The same logs by several rules side by side, and the money that the choice of rule moves. */
export function drawWhichRule(draft: Draft): void {
  const page = startPage(draft, "Which rule", {
    title: "Which rule: the same logs, different money",
    lead: "Choose four rules in the tinted cells. Every log of the log book is scaled by each of them, and priced at one price per board foot, so that the difference is the rule's alone.",
    widths: [14, 12, 12, 19, 19, 19, 19],
    landscape: false,
    leadLines: 3,
  });
  put(page, "A4", "Price per board foot of log", TEXT);
  entry(page, "D4", 0.85, { format: DOLLARS.cents, name: "Log_price" });
  put(page, "E4", "invented", SMALL);
  put(page, "A6", "All logs, by rule", HEADER);
  merge(page, "A6:C6");
  RULE_COLUMNS.forEach((column, i) => {
    entry(page, `${column}6`, RULES[i]!, { list: "rules" });
    figure(page, `${column}7`, `=SUM(${column}${FIRST}:${column}400)`, { format: FORMAT.whole });
    figure(page, `${column}8`, `=${column}7*Log_price`, { format: DOLLARS.whole });
    figure(page, `${column}9`, `=${column}8-$D$8`, { format: DOLLARS.whole });
  });
  ["Board feet", "Money at that price", "More than the first rule"].forEach((label, i) =>
    put(page, `A${7 + i}`, label, TEXT),
  );
  put(page, "A10", "Money the choice moves", PROSE);
  merge(page, "A10:C10");
  figure(page, "D10", "=MAX(D8:G8)-MIN(D8:G8)", { format: DOLLARS.whole, key: true, name: "Key_rule_money" });
  put(page, "E10", "Agree on the rule before you agree on the price.", SMALL);

  const header = FIRST - 1;
  ["Log", "Dia", "Scaled ft"].forEach((text, i) => put(page, `${"ABC"[i]}${header}`, text, HEADER));
  RULE_COLUMNS.forEach((column) => {
    figure(page, `${column}${header}`, `=${column}6`);
    setLook(page, `${column}${header}`, HEADER);
  });
  spill(page, `A${FIRST}`, "=Logs[Log]", []);
  spill(page, `B${FIRST}`, "=Logs[Dia]", [FORMAT.two]);
  spill(page, `C${FIRST}`, "=Logs[Scaled ft]", [FORMAT.whole]);
  put(page, `D${header - 1}`, `=BOLE.LOGSCALE(Logs[Dia], Logs[Scaled ft], D6:G6) fills the whole grid`, SMALL);
  spill(page, `D${FIRST}`, "=BOLE.LOGSCALE(Logs[Dia], Logs[Scaled ft], D6:G6)", [FORMAT.whole]);

  caution(
    page,
    3,
    "some states fix by law the rule a seller must use; a rule that exists as a table only has no answer outside its table (#N/A).",
    2,
  );
  freeze(page, header, 1);
  repeatRows(page, header, header);
}
