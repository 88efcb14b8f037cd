import type { Figure, Setting } from "../definition";
import { FORMAT } from "../formats";

/** The air that a stack stands in. */
export const AIR: readonly Setting[] = [
  { label: "Temperature", kind: "text", value: "68 F", note: "of the yard or room, the season's mean (invented)" },
  { label: "Humidity", kind: "text", value: "65%", note: "the season's mean (invented)" },
];

/** What wood settles at in that air. */
export const AIR_DRIES_TO: Figure = {
  label: "Air dries to %",
  formula: "=BOLE.EMC({Temperature}, {Humidity})",
  format: FORMAT.one,
  note: "no drier than this, however long it stands",
};
