import type { Draft } from "../../draft";
import { shownFormula } from "../../../../formula/stored";
import { figure, spill } from "../../drawing/cells";
import { caution, freeze, put, repeatRows, startPage } from "../../drawing/page";
import { HEADER, SMALL, TEXT, UNIT } from "../../drawing/style";
import { FORMAT } from "../../../formats";
import { PLAN } from "./cut-plan";

const HEADER_ROW = 8;
/** More rows than any plan has passes. */
const LAST_ROW = 999;
/** The heights of the passes alone, as a tape is read: down to 1/64, so that halves of the scale's steps come out right. */
const ON_THE_SCALE = `=BOLE.FRACTION(FILTER(D${HEADER_ROW + 1}:D${LAST_ROW}, ISNUMBER(C${HEADER_ROW + 1}:C${LAST_ROW})), 64)`;

/** The whole plan of the log of the sheet Cut plan, to print and take to the mill. */
export function drawPassList(draft: Draft): void {
  const page = startPage(draft, "Pass list", {
    title: "Pass list: the settings of the saw head",
    lead: "The plan of the log on the sheet Cut plan, in inches; lengths in feet. The first column is the blade height as the head's scale reads it: the sawn face left on the log. The first pass takes the top slab.",
    widths: [15, 2, 8, 11, 9, 9, 9, 11, 9, 9, 9, 52],
  });
  caution(
    page,
    3,
    "lock out the power before you touch the blade. Dog the log; stand clear of its fall when it is cut free.",
  );
  put(page, "A5", "Log, its ends in", TEXT);
  figure(page, "C5", "=Cut_log", { key: true });
  figure(
    page,
    "D5",
    '=BOLE.FRACTION(Cut_diameter)&" / "&BOLE.FRACTION(INDEX(Logs[Butt], MATCH(Cut_log, Logs[Log], 0)))',
  );
  put(page, "F5", "Length", UNIT);
  figure(page, "G5", "=Cut_length");
  put(page, "H5", "Kerf, in", UNIT);
  figure(page, "I5", "=Cut_kerf", { format: FORMAT.four });
  put(page, "A6", shownFormula(PLAN), SMALL);
  spill(
    page,
    `C${HEADER_ROW}`,
    PLAN,
    [FORMAT.whole, FORMAT.four, "0.##", "0.##", "0.##", FORMAT.two, FORMAT.four],
    HEADER,
  );
  put(page, `A${HEADER_ROW}`, "on the scale", HEADER);
  spill(page, `A${HEADER_ROW + 1}`, ON_THE_SCALE, []);
  freeze(page, HEADER_ROW, 0);
  repeatRows(page, HEADER_ROW, HEADER_ROW);
}
