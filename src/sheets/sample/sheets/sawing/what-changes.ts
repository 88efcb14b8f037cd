import { figure } from "../../drawing/cells";
import { drawLines, type Line } from "../../drawing/figures";
import { heading, type Page, put } from "../../drawing/page";
import { PROSE } from "../../drawing/style";
import { FORMAT } from "../../../formats";

/** How many rows of the table Settings go over to the list with another first cut; blank ones say nothing. */
const SETTINGS_KEPT = 8;

/** What a thinner blade, another pattern or another first cut would give against the plan. Returns the next free row. */
export function drawWhatChanges(page: Page, row: number): number {
  const lines: Line[] = [
    against("A thinner blade", "Thin_kerf", "Cut_pattern"),
    against("Live, through and through", "Cut_kerf", '"live"'),
    {
      ...against("Live-edge slabs", "Cut_kerf", '"slab"'),
      caution:
        "A slab's board feet are taken a third of its length from the narrow end: another measure than a board's.",
    },
    against("A cant of the widths in the settings", "Cut_kerf", '"cant"'),
    against("Quartersawn", "Cut_kerf", '"quarter"'),
    {
      label: "First cut moved by",
      value: -0.5,
      unit: "in",
      format: FORMAT.three,
      name: "Face_moved",
      says: "minus is down; live and slab only",
    },
    against("Opened there", "Cut_kerf", "Cut_pattern", "Moved_settings"),
  ];
  const next = drawLines(page, row, "What would change it, in board feet against the plan", lines);
  return drawMovedSettings(page, next);
}

function against(label: string, kerf: string, pattern: string, settings = "Settings[]"): Line {
  return {
    label,
    formula: `=BOLE.CUTYIELD(Cut_diameter, Cut_length, Products[], ${kerf}, ${pattern}, ${settings}) - Key_cut_plan_feet`,
    unit: "bf",
    format: FORMAT.one,
  };
}

/** The settings of the sheet, with the first cut set: a list of its own for the last line above. */
function drawMovedSettings(page: Page, row: number): number {
  heading(page, row, "The settings below, with the first cut moved", "B");
  for (let i = 1; i <= SETTINGS_KEPT; i++) {
    figure(page, `A${row + i}`, `=IFERROR(INDEX(Settings[Setting], ${i})&"", "")`);
    figure(page, `B${row + i}`, `=IFERROR(INDEX(Settings[Value], ${i})&"", "")`);
  }
  const last = row + SETTINGS_KEPT + 1;
  put(page, `A${last}`, "first cut", PROSE);
  figure(page, `B${last}`, "=First_cut + Face_moved", { format: FORMAT.four });
  page.draft.book.names.push({ name: "Moved_settings", refersTo: `'${page.sheet.name}'!$A$${row + 1}:$B$${last}` });
  return last + 2;
}
