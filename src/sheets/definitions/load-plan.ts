import type { TableSheet } from "../definition";
import { FORMAT } from "../formats";
import { tieDowns, VEHICLE, WEIGH_FIRST } from "./hauling";
import { LOG, WEIGHT } from "./log-columns";

/** One trip: what is aboard, what is left of the rating, how it sits on the trailer. */
export const LOAD_PLAN: TableSheet = {
  title: "Load plan",
  table: "LoadPlan",
  lead: "One trip: what the logs weigh, what is left of the rating, and how much of it rests on the hitch.",
  cautions: [WEIGH_FIRST],
  settings: [
    ...VEHICLE,
    { label: "Hitch ahead of axle", kind: "text", value: "14", note: "feet (invented)" },
    { label: "Empty on hitch", kind: "text", value: "12%", note: "share of the empty weight, by a scale (invented)" },
    { label: "Strap limit", kind: "number", value: 3300, note: "pounds, working load limit on its tag (invented)" },
  ],
  figures: [
    {
      label: "Payload left",
      formula: "=BOLE.LOADLEFT({Rating on the plate}, {Empty weight}, Table[Weight lb])",
      format: FORMAT.whole,
      note: "",
      caution: "pounds by the typical weights; minus is overloaded",
    },
    {
      label: "Left at worst",
      formula: "=BOLE.LOADLEFT({Rating on the plate}, {Empty weight}, Table[Could be lb])",
      format: FORMAT.whole,
      note: "",
      caution: "pounds if every log is as heavy as it may be; below 0: take one off or weigh first",
    },
    {
      label: "On the hitch %",
      formula:
        "=BOLE.TONGUESHARE(Table[Weight lb], Table[Ahead of axle], {Hitch ahead of axle}, {Empty weight}, {Empty on hitch})",
      format: FORMAT.one,
      note: "",
      caution: "too light and the trailer sways, too heavy and it overloads the hitch; check on a scale",
    },
  ],
  columns: [
    ...LOG,
    { heading: "Ahead of axle", kind: "number", width: 10, note: "feet to its middle; minus behind" },
    ...WEIGHT,
    tieDowns("{Strap limit}"),
  ],
  examples: [
    {
      Log: "Example, invented",
      Species: "red maple",
      "Small end": "20",
      "Large end": "23 1/2",
      Length: "8-6",
      "Ahead of axle": 1.5,
    },
    {
      Log: "Example, invented",
      Species: "black walnut",
      "Small end": "26",
      "Large end": "30",
      Length: "10",
      "Ahead of axle": 1,
    },
  ],
  blankRows: 10,
};
