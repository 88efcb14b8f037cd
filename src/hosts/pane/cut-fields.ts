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
};

export const SETTING_FIELDS: readonly CutField[] = [
  {
    name: "taper",
    label: "Taper",
    example: "0.5",
    note: "Inches the diameter grows in 4 ft; 0.5 when left out, 0 for none.",
  },
  { name: "trim", label: "Trim", example: "4", note: "Inches of length to leave for trimming." },
  { name: "minimum width", label: "Narrowest board", example: "4", note: "Inches; 3 when left out." },
  {
    name: "bed clearance",
    label: "Bed clearance",
    example: "1",
    note: "Lowest height of the blade above the bed, inches.",
  },
  {
    name: "guide opening",
    label: "Guide opening",
    example: "30",
    note: "Inches between the blade guides at their widest.",
  },
  {
    name: "cant widths",
    label: "Cant widths",
    example: "4, 6, 8",
    note: "Inches to try; needed for the pattern Cant, and for that alone.",
  },
];
