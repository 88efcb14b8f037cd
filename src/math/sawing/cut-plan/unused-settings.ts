import type { Pattern } from "./cut-job";
import type { CutSettings } from "./cut-settings";

type Setting = keyof CutSettings;

const OF_CANTS: readonly Setting[] = ["cant widths", "cant offset"];
const OF_QUARTERS: readonly Setting[] = ["ring angle", "heart"];
const OF_EDGED_BOARDS: readonly Setting[] = ["maximum width", "widths", "width allowance", "wane", "rip", "rip kerf"];

/** What a pattern makes no use of, and no other warning speaks of. */
const UNUSED: Readonly<Record<Pattern, readonly Setting[]>> = {
  live: [...OF_CANTS, ...OF_QUARTERS],
  slab: ["sweep", "crown", ...OF_EDGED_BOARDS, ...OF_CANTS, ...OF_QUARTERS],
  cant: ["opening face", ...OF_QUARTERS],
  quarter: ["opening face", "wane", ...OF_CANTS],
};

/** The settings given that change nothing, so that nobody counts on them. */
export function unusedSettings(pattern: Pattern, settings: Partial<CutSettings>): Setting[] {
  const unused = new Set(UNUSED[pattern]);
  if (!settings.sweep) unused.add("crown");
  if (!settings.rip) unused.add("rip kerf");
  if (settings.widths && pattern !== "slab") unused.add("minimum width").add("maximum width").add("width step");
  return [...unused].filter((setting) => settings[setting] !== undefined && settings[setting] !== false);
}
