import type { Sweep } from "./cut-job";

/** What may be said about a log, a mill and the boards wanted, by the names of the sheet; inches where not said. */
export interface CutSettings {
  "large end": number;
  /** Growth of the diameter in 4 ft of length. */
  taper: number;
  "small end across": number;
  "log lies": "split" | "flat";
  sweep: number;
  crown: Sweep["way"];
  "bed clearance": number;
  "guide opening": number;
  "scale step": number;
  "first cut": number;
  "minimum width": number;
  "maximum width": number;
  "width step": number;
  widths: readonly number[];
  "width allowance": number;
  /** Feet. */
  "minimum length": number;
  /** Feet. */
  "length step": number;
  trim: number;
  /** Share of the green thickness, from either face. */
  wane: number;
  rip: boolean;
  "rip kerf": number;
  objective: "board feet" | "value";
  "pass cost": number;
  "cant widths": readonly number[];
  "cant offset": "centred" | "free";
  timber: { thicknessIn: number; widthIn: number };
  /** Degrees. */
  "ring angle": number;
  heart: number;
}

/** What holds where a setting is left out. The others have no usual value: the plan does without them. */
export const USUAL_SETTINGS = {
  /** The taper of the International log rule: half an inch of diameter to 4 ft. */
  taper: 0.5,
  "log lies": "split",
  sweep: 0,
  crown: "up",
  "bed clearance": 0,
  "scale step": 1 / 32,
  "minimum width": 3,
  "width step": 1,
  "width allowance": 0,
  "minimum length": 4,
  "length step": 1,
  trim: 0,
  wane: 0,
  rip: false,
  objective: "board feet",
  "pass cost": 0,
  "cant offset": "centred",
  /** Quartersawn is 45 to 90 degrees between the rings and the face, as the US Department of Agriculture uses the word. */
  "ring angle": 45,
  heart: 0,
} as const satisfies Partial<CutSettings>;

/** Settings with what is usual put in. */
export type FullSettings = Partial<CutSettings> & Pick<CutSettings, keyof typeof USUAL_SETTINGS>;

export function withUsual(given: Partial<CutSettings>): FullSettings {
  return { ...USUAL_SETTINGS, ...given };
}
