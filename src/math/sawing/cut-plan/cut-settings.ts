import type { Sweep } from "./cut-job";

/** What may be said about a log, a mill and the boards wanted, by the names of the sheet; inches where not said. */
export interface CutSettings {
  "small end across": number;
  /** Growth of the diameter in 4 ft of length. */
  taper: number;
  "log lies": "split" | "flat";
  sweep: number;
  crown: Sweep["way"];
  "rip kerf": number;
  "scale step": number;
  objective: "board feet" | "value";
  "pass cost": number;
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
  "bed clearance": number;
  "opening face": number;
  "guide opening": number;
  "cant widths": readonly number[];
  "cant offset": "centred" | "free";
  /** Degrees. */
  "ring angle": number;
  heart: number;
}
