import type { Column, Setting } from "../definition";
import { FILLED } from "../formats";

/** The vehicle of a trip, loaded up to what stands on its plate. */
export const VEHICLE: readonly Setting[] = [
  { label: "Rating on the plate", kind: "number", value: 14000, note: "pounds, loaded (invented: read your plate)" },
  { label: "Empty weight", kind: "number", value: 4200, note: "pounds, by a scale (invented)" },
];

/** What pulling by these figures asks for first. */
export const WEIGH_FIRST =
  "these are estimates. Weigh the load before you pull it, and stay under every plate: vehicle, axles, tires, hitch and straps. The lowest one counts.";

/** Tie-downs of one log, by the working load limit of each. */
export function tieDowns(limit: string): Column {
  return {
    heading: "Tie-downs",
    formula: `=IF([@Length]="", 0, BOLE.TIEDOWNS([@[Could be lb]], [@Length], ${limit}))`,
    format: FILLED.whole,
    width: 13,
    note: "",
    caution: "least by the federal rule; not for logs in stakes",
  };
}
