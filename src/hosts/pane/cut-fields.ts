import { settingEntry } from "../../catalog/known";
import { argumentText, asParam } from "../../catalog/printing/argument-text";
import { SETTING_READERS } from "../../functions/sawing/cut-settings";
import { CUT_SETTINGS, type PlanSettings } from "../../functions/sawing/cut-settings.table";
import type { SettingFacts } from "../../cells/read";
import type { Field } from "./field";

/** A field of the cut-plan form. The name of a setting is the one CUTPLAN knows. */
export interface CutField extends Omit<Field, "id"> {
  name: string;
}

export const LOG_FIELDS: readonly CutField[] = [
  {
    name: "diameter",
    label: "Diameter of the small end",
    example: "20",
    note: "Inside bark, up and down as the log lies. A bare number is inches; 50 cm works too, and so does a cell such as B4.",
  },
  { name: "length", label: "Length", example: "8-6", note: "A bare number is feet; 8'6\" and 2.4 m work too." },
  {
    name: "thicknesses",
    label: "Thicknesses wanted",
    example: "5/4, 8/4",
    note: "With commas between; the plan mixes them for the most board feet. 1/8 in over is sawn for drying.",
  },
  { name: "kerf", label: "Kerf", example: "1/8", note: "Width of the saw cut in inches." },
];

export const PATTERNS: Readonly<Record<string, string>> = {
  live: "Live: through and through",
  slab: "Slabs with live edge",
  cant: "Cant, then boards of it",
  quarter: "Quarter-sawn",
  timber: "Timber with the heart in it, boards beside",
};

/** The settings that stand in the form: those without which a plan misleads first, the others folded away. */
export function settingFields(place: "first" | "more"): CutField[] {
  return (Object.keys(CUT_SETTINGS) as (keyof PlanSettings)[]).flatMap((name) => {
    const { field } = CUT_SETTINGS[name];
    if (field?.place !== place) return [];
    const entry = settingEntry({ ...SETTING_READERS[name].facts, name } as SettingFacts);
    return [{ name, label: field.label, example: field.example, note: argumentText(asParam(entry)) }];
  });
}
