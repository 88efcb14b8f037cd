import type { Column } from "../definition";
import { FILLED } from "../formats";

/** A log as it is typed in, wherever logs are listed. */
export const LOG: readonly Column[] = [
  { heading: "Log", kind: "text", width: 24, note: "number or tag" },
  { heading: "Species", kind: "text", width: 17, note: "choose or type", list: "species" },
  { heading: "Small end", kind: "text", width: 10, note: "inches inside bark" },
  { heading: "Large end", kind: "text", width: 10, note: "inches inside bark" },
  { heading: "Length", kind: "text", width: 10, note: "feet; 8-6 is 8 ft 6 in" },
];

/** Its sizes, as a formula of the same row names them. */
export const SIZES = "[@[Small end]], [@[Large end]], [@Length]";

/** What hangs in the sling and lies on the trailer: the green log with its bark. */
export const WEIGHT: readonly Column[] = [
  {
    heading: "Weight lb",
    formula: `=BOLE.LOGWEIGHT([@Species], ${SIZES}, , "with")`,
    format: FILLED.whole,
    width: 10,
    note: "green, with bark",
  },
  {
    heading: "Could be lb",
    formula: `=BOLE.LOGWEIGHT([@Species], ${SIZES}, , "with", "high")`,
    format: FILLED.whole,
    width: 11,
    note: "",
    caution: "lift and load by this one",
  },
];
