import type { Draft } from "../../draft";
import { drawLines, FIGURE_WIDTHS, figureHeader, type Line } from "../../drawing/figures";
import { caution, freeze, markOver, repeatRows, startPage } from "../../drawing/page";
import { BAND, CUT, TENSION } from "./mill-band";
import { DRIVE, MOTOR } from "./mill-drive";
import { BED, LIFT } from "./mill-frame";

/** One invented mill, worked through from the motor's plate to the bed. */
export function drawMill(draft: Draft): void {
  const page = startPage(draft, "Mill", {
    title: "Mill: from the motor plate to the blade",
    lead: "One invented mill, figure by figure. The tinted cells have names (Motor_rpm, Wheel_diameter) so that a formula reads like a sentence; change them to yours.",
    widths: FIGURE_WIDTHS,
  });
  caution(
    page,
    3,
    "a spinning wheel and a strained band hold enough energy to kill. These figures check a set-up, they do not approve one: the makers' limits, the local code and a licensed engineer decide.",
  );
  figureHeader(page, 5);
  freeze(page, 5, 0);
  repeatRows(page, 5, 5);
  let row = 6;
  for (const [title, lines] of SECTIONS) row = drawLines(page, row, title, lines);
  markOver(page, "B", 6, row);
}

const SECTIONS: readonly [string, readonly Line[]][] = [
  ["Opening and bed", BED],
  ["Motor", MOTOR],
  ["Belt drive", DRIVE],
  ["Band and wheels", BAND],
  ["Band tension", TENSION],
  ["Tooth, feed and power", CUT],
  ["Lift", LIFT],
];
