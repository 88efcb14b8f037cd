import type { Draft } from "../../draft";
import { entry, figure, spill } from "../../drawing/cells";
import { caution, freeze, put, repeatRows, startPage } from "../../drawing/page";
import { HEADER, SMALL, TEXT } from "../../drawing/style";
import { FORMAT } from "../../../formats";
import { THIRTY_SECONDS } from "./cut-plan";

const HEIGHTS = "=BOLE.HEADHEIGHTS(Drop_start, Drop_thickness, Cut_kerf, Drop_count, Drop_bed)";
const HEADER_ROW = 12;

/** Even drops of one thickness, as the scale of the saw head reads, to print. */
export function drawHeadHeights(draft: Draft): void {
  const page = startPage(draft, "Head heights", {
    title: "Head heights: even drops",
    lead: "The settings of the saw head for boards of one thickness, down from a first cut, in thirty-seconds of an inch.",
    widths: [24, 18, 18, 22],
    landscape: false,
    form: true,
  });
  caution(
    page,
    3,
    "lock out the power before you touch the blade. Check that the dogs stand below the last setting.",
    2,
  );
  put(page, "A5", "First cut, in", TEXT);
  figure(page, "B5", "=First_cut", { format: THIRTY_SECONDS, name: "Drop_start" });
  put(page, "C5", "from the sheet Cut plan", SMALL);
  const settings: [string, number, string][] = [
    ["Boards as sawn, in", 1.125, "Drop_thickness"],
    ["How many boards", 30, "Drop_count"],
    ["Stop above the bed at, in", 1, "Drop_bed"],
  ];
  settings.forEach(([label, value, name], i) => {
    put(page, `A${6 + i}`, label, TEXT);
    entry(page, `B${6 + i}`, value, { name });
  });
  put(page, "A10", HEIGHTS, SMALL);
  spill(page, `A${HEADER_ROW}`, HEIGHTS, [FORMAT.whole, THIRTY_SECONDS], HEADER);
  freeze(page, HEADER_ROW, 0);
  repeatRows(page, HEADER_ROW, HEADER_ROW);
}
