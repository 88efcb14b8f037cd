import { described, optional, type Declarations } from "../../cells/read";
import type { Pattern } from "../../math/sawing/cut-plan/cut-job";
import { USUAL_SETTINGS } from "../../math/sawing/cut-plan/cut-settings";
import { CUT_SETTINGS, type PlanSettings, type Setting } from "./cut-settings.table";

/** How each setting is read: a blank row leaves it at what is usual. */
export const SETTING_READERS = Object.fromEntries(
  Object.entries(CUT_SETTINGS as Record<string, Setting<unknown>>).map(([name, { read, group, says, otherwise }]) => {
    const usual = (USUAL_SETTINGS as Record<string, unknown>)[name];
    return [name, described(optional(read, usual), { group, says, otherwise })];
  }),
) as unknown as Declarations<PlanSettings>;

/** The settings given that change nothing, so that nobody counts on them. */
export function unusedSettings(pattern: Pattern, given: Partial<PlanSettings>): string[] {
  const isGiven = (name: keyof PlanSettings) => given[name] !== undefined && given[name] !== false;
  const isUsed = (name: keyof PlanSettings) => CUT_SETTINGS[name].uses.includes(pattern);
  return (Object.keys(CUT_SETTINGS) as (keyof PlanSettings)[]).filter((name) => {
    const { needs, yieldsTo } = CUT_SETTINGS[name];
    const idle = (needs && !isGiven(needs)) || (yieldsTo && isGiven(yieldsTo) && isUsed(yieldsTo));
    return isGiven(name) && (!isUsed(name) || idle);
  });
}
