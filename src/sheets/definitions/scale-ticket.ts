import type { TableSheet } from "../definition";
import { FILLED, FORMAT } from "../formats";
import { LOG } from "./log-columns";

/** One load between a buyer and a seller: what each log scales, what is taken off and why, what is paid. */
export const SCALE_TICKET: TableSheet = {
  title: "Scale ticket",
  table: "ScaleTicket",
  lead: "One load, scaled for both sides: how it was measured, what each log scales, what is taken off, and what is paid.",
  cautions: ["one side measures, both look. Agree on the rule and on the rounding before the first log is measured."],
  settings: [
    { label: "Seller", kind: "text", value: "Example, invented", note: "name to sign: ______________________" },
    { label: "Buyer", kind: "text", value: "Example, invented", note: "name to sign: ______________________" },
    { label: "Load and day", kind: "text", value: "", note: "number of the load, and the day" },
    { label: "Rule", kind: "text", value: "Doyle", note: "both sides agree on it", list: "rules" },
    { label: "Rounding", kind: "text", value: "none", note: "none, or table: as the rule's printed table" },
    { label: "Price", kind: "number", value: 0.6, note: "money for a board foot, net (invented)" },
  ],
  figures: [
    { label: "Gross board feet", formula: "=SUM(Table[Gross])", format: FORMAT.one, note: "by the rule above" },
    { label: "Net board feet", formula: "=SUM(Table[Net])", format: FORMAT.one, note: "what is paid for" },
    {
      label: "To pay",
      formula: "=IF({Net board feet}=0, 0, BOLE.LINEAMOUNT({Net board feet}, {Price}))",
      format: FORMAT.money,
      note: "net board feet times the price, to the cent",
    },
  ],
  columns: [
    { ...LOG[0]!, width: 18 },
    { ...LOG[1]!, width: 16 },
    { heading: "Diameter", kind: "text", width: 10, note: "inches inside bark" },
    LOG[4]!,
    {
      heading: "Gross",
      formula: "=BOLE.LOGSCALE([@Diameter], [@Length], {Rule}, {Rounding})",
      format: FILLED.one,
      width: 9,
      note: "board feet",
    },
    { heading: "Sweep", kind: "text", width: 8, note: "inches" },
    { heading: "Rot wide", kind: "text", width: 9, note: "inches" },
    { heading: "Rot high", kind: "text", width: 9, note: "inches" },
    { heading: "Rot long", kind: "text", width: 9, note: "feet" },
    {
      heading: "Off",
      formula:
        '=IF([@Diameter]="", 0, MIN([@Gross], IF([@Sweep]="", 0, BOLE.CULLSWEEP([@Sweep], [@Diameter], [@Length], {Rule}))' +
        ' + IF([@[Rot wide]]="", 0, BOLE.CULLBOX([@[Rot wide]], [@[Rot high]], [@[Rot long]]))))',
      format: FILLED.one,
      width: 8,
      note: "board feet",
    },
    {
      heading: "Net",
      formula: '=IF([@Diameter]="", 0, [@Gross] - [@Off])',
      format: FILLED.one,
      width: 9,
      note: "board feet",
    },
    {
      heading: "Why off",
      formula:
        '=IF([@Sweep]="", "", "sweep (" & [@Sweep] & " - 1) / " & [@Diameter] & " of gross") & ' +
        'IF([@[Rot wide]]="", "", IF([@Sweep]="", "", "; ") & "rot (" & [@[Rot wide]] & " + 1) x (" & [@[Rot high]] & " + 1) x " & [@[Rot long]] & " / 15")',
      width: 34,
      note: "to the whole board foot; all of it by WORKING",
    },
  ],
  examples: [
    { Log: "Example, invented", Species: "northern red oak", Diameter: "20", Length: "12", Sweep: "3" },
    {
      Log: "Example, invented",
      Species: "sugar maple",
      Diameter: "17",
      Length: "10",
      "Rot wide": "4",
      "Rot high": "3",
      "Rot long": "6",
    },
    { Log: "Example, invented", Species: "black walnut", Diameter: "16", Length: "8" },
  ],
  blankRows: 15,
};
