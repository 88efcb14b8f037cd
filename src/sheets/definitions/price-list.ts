import type { Column, TableSheet } from "../definition";
import { FILLED, FORMAT } from "../formats";
import { NOT_GRADED } from "./cautions";

/** What to ask for a board foot, and what each price leaves. */
export const PRICE_LIST: TableSheet = {
  title: "Price list",
  heading: "Price list: what to ask, and what it leaves",
  table: "PriceList",
  lead: "What a board foot costs you, what to ask for it, and what is left. A margin is a share of the price, not of the cost: 40 % on top of the cost leaves a margin of 28.6 %.",
  cautions: [NOT_GRADED],
  settings: [
    {
      label: "Margin wanted",
      kind: "text",
      value: "45%",
      name: "Margin_wanted",
      note: "share of the price left after the cost (invented)",
    },
  ],
  figures: [],
  columns: [
    { heading: "Species", kind: "text", width: 21, note: "choose or type", list: "species" },
    { heading: "Thickness", kind: "text", width: 11, note: "4/4, 5/4, 8/4", list: "thicknesses" },
    { heading: "Kind", kind: "text", width: 16, note: "board or slab, grade" },
    { heading: "State", kind: "text", width: 18, note: "green, air-dried, kiln-dried", list: "states" },
    { heading: "Cost", format: FORMAT.money, width: 9, note: "a board foot, all in" },
    {
      heading: "For the margin",
      formula: "=IF([@Cost]=0, 0, BOLE.LISTPRICE([@Cost], {Margin wanted}))",
      format: FILLED.money,
      width: 10,
      note: "price a board foot",
    },
    { heading: "Asked", format: FORMAT.money, width: 9, note: "your price" },
    {
      heading: "Margin got",
      formula: `=IF([@Asked]=0, "", BOLE.MARGIN([@Asked], [@Cost]))`,
      format: FORMAT.share,
      width: 9,
      note: "share of your price",
    },
    {
      heading: "10 ft of 10 in",
      formula: `=IF([@Thickness]="", 0, BOLE.BOARDFEET([@Thickness], 10, 10)*[@Asked])`,
      format: FILLED.money,
      width: 11,
      note: "what such a piece comes to",
    },
  ],
  examples: [
    {
      Species: "black walnut",
      Thickness: "5/4",
      Kind: "example, invented",
      State: "kiln-dried rough",
      Cost: 4.4,
      Asked: 8.5,
    },
    { Species: "red maple", Thickness: "4/4", Kind: "example, invented", State: "air-dried", Cost: 2.1, Asked: 3.5 },
  ],
  blankRows: 18,
};

/** The same with columns of a yard's own at the end, and its rows. */
export function priceListOf(
  named: Pick<TableSheet, "title" | "table">,
  own: readonly Column[],
  rows: TableSheet["examples"],
): TableSheet {
  return { ...PRICE_LIST, ...named, columns: [...PRICE_LIST.columns, ...own], examples: rows };
}
