import { figure } from "../../drawing/cells";
import { drawLines, type Line } from "../../drawing/figures";
import { heading, type Page, put } from "../../drawing/page";
import { FORMAT, PROSE } from "../../drawing/style";

/** How many rows of the table Settings go over to the list with another opening face. */
const SETTINGS_KEPT = 3;

/** Cants need widths to try; the other settings are those of the sheet. */
const CANT_SETTINGS = '{"cant widths","8, 10, 12";"trim","3";"minimum width","4";"bed clearance","1"}';

/** What a thinner blade, another pattern or another opening face would give against the plan. Returns the next free row. */
export function drawWhatChanges(page: Page, row: number): number {
  const settingsAt = row + 9;
  const next = drawLines(page, row, "What would change it, in board feet against the plan", [
    against("A thinner blade", "Thin_kerf", "Cut_pattern", "Settings[]"),
    against("Live, through and through", "Cut_kerf", '"live"', "Settings[]"),
    {
      ...against("Live-edge slabs", "Cut_kerf", '"slab"', "Settings[]"),
      caution:
        "A slab's board feet are taken a third of its length from the narrow end: another measure than a board's.",
    },
    against("A cant of 8, 10 or 12 in", "Cut_kerf", '"cant"', CANT_SETTINGS),
    against("Quartersawn", "Cut_kerf", '"quarter"', "Settings[]"),
    { label: "Opening face moved by", value: -0.5, unit: "in", format: FORMAT.three },
    against("Opened there", "Cut_kerf", "Cut_pattern", "Moved_settings"),
  ]);
  drawMovedSettings(page, settingsAt, row + 6);
  return Math.max(next, settingsAt + SETTINGS_KEPT + 3);
}

function against(label: string, kerf: string, pattern: string, settings: string): Line {
  return {
    label,
    formula: `=BOLE.CUTYIELD(Cut_diameter, Cut_length, Products[], ${kerf}, ${pattern}, ${settings}) - Key_cut_plan_feet`,
    unit: "bf",
    format: FORMAT.one,
  };
}

/** The settings of the sheet, with the opening face set: a list of its own for the line above. */
function drawMovedSettings(page: Page, row: number, movedAt: number): void {
  heading(page, row, "The first settings below, with the opening face moved", "B");
  for (let i = 1; i <= SETTINGS_KEPT; i++) {
    figure(page, `A${row + i}`, `=INDEX(Settings[Setting], ${i})`);
    figure(page, `B${row + i}`, `=INDEX(Settings[Value], ${i})`);
  }
  const last = row + SETTINGS_KEPT + 1;
  put(page, `A${last}`, "opening face", PROSE);
  figure(page, `B${last}`, `=Opening_face + B${movedAt}`, { format: FORMAT.four });
  page.draft.book.definedNames.add(`'${page.sheet.name}'!$A$${row + 1}:$B$${last}`, "Moved_settings");
}
