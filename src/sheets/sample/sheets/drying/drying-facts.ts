import type { Line } from "../../drawing/figures";
import { DOLLARS, FORMAT } from "../../../formats";

/** The yard's air, and how dry the stacks must get. */
export const SETTINGS: readonly Line[] = [
  {
    label: "Yard temperature",
    value: "68 F",
    format: FORMAT.text,
    name: "Yard_temperature",
    says: "invented: an average over the drying season",
  },
  { label: "Yard humidity", value: "68%", format: FORMAT.text, name: "Yard_humidity", says: "invented" },
  {
    label: "Dry to",
    value: "20%",
    format: FORMAT.text,
    name: "Target_mc",
    says: "air dry; a kiln or a warm room goes on from there",
  },
  {
    label: "What the yard's air dries to, percent",
    formula: "=BOLE.EMC(Yard_temperature, Yard_humidity)",
    format: FORMAT.one,
    name: "Yard_emc",
    key: true,
    says: "equilibrium moisture content",
  },
];

/** One board weighed through the drying, from a section cut off it. */
export const SAMPLE_BOARD: readonly Line[] = [
  { label: "Section cut from it, wet", value: 412, name: "Section_wet", says: "grams, invented" },
  { label: "The same, dried in the oven", value: 231.5, name: "Section_dry", says: "grams, invented" },
  {
    label: "Its moisture, percent",
    formula: "=BOLE.MOISTURE(Section_wet, Section_dry)",
    name: "Section_mc",
    format: FORMAT.one,
    says: "=BOLE.MOISTURE(Section_wet, Section_dry)",
  },
  { label: "The board itself on that day", value: 6350, name: "Board_wet", says: "grams, invented" },
  {
    label: "The board bone dry would weigh",
    formula: "=BOLE.OVENDRYWEIGHT(Board_wet, Section_mc)",
    name: "Board_dry",
    format: FORMAT.whole,
    says: "grams =BOLE.OVENDRYWEIGHT(Board_wet, Section_mc)",
  },
  {
    label: "The board at the target weighs",
    formula: "=BOLE.WEIGHTAT(Board_wet, Section_mc, Target_mc)",
    name: "Key_board_weight",
    format: FORMAT.whole,
    key: true,
    says: "grams =BOLE.WEIGHTAT(Board_wet, Section_mc, Target_mc)",
  },
];

/** One run of the kiln, and what it adds to the cost of a dry foot. */
export const KILN: readonly Line[] = [
  { label: "Stack in the kiln", value: "D3", name: "Kiln_stack", list: "Stack_list", says: "24 August to 7 September" },
  { label: "Days", value: 14, name: "Kiln_days", says: "invented" },
  { label: "Power, kWh a day", value: 31, name: "Kiln_kwh", says: "invented" },
  { label: "Price of a kWh", value: 0.16, format: DOLLARS.cents, name: "Kwh_price", says: "invented" },
  { label: "Labor", value: 90, format: DOLLARS.cents, name: "Kiln_labor", says: "loading, watching" },
  {
    label: "Power in all",
    formula: "=Kiln_days*Kiln_kwh*Kwh_price",
    format: DOLLARS.cents,
    name: "Kiln_power",
  },
  { label: "Cost of the run", formula: "=Kiln_power+Kiln_labor", format: DOLLARS.cents, name: "Kiln_cost" },
  {
    label: "Green board feet in it",
    formula: "=SUMIFS(Results[Sawn bf], Results[Stack], Kiln_stack)",
    format: FORMAT.whole,
    name: "Kiln_green",
  },
  {
    label: "Out of it, net tally",
    formula: "=SUM(Boards[Net tally bf])",
    format: FORMAT.whole,
    name: "Kiln_net",
    says: "board feet, measured again",
  },
  {
    label: "Run, for a dry foot",
    formula: "=Kiln_cost/Kiln_net",
    format: FORMAT.three,
    key: true,
    name: "Key_kiln_foot",
  },
];
