import type { TableSheet } from "../definition";
import { FILLED, FORMAT } from "../formats";

const IS_INVOICE = '{Quote or invoice}="invoice"';

/** One paper for a customer: a quote that becomes an invoice by changing one cell. */
export const QUOTE_OR_INVOICE: TableSheet = {
  title: "Quote or invoice",
  table: "BillLines",
  lead: "Lines with their own tax, deposit and total. Type invoice in the first cell when the quote is taken: its name and its day change with it.",
  cautions: [
    "what is taxed, how high, and what a bill must say is for your state and an accountant. Sell lumber by a tally that the law of the place knows, and name the softwood sizes as they measure.",
  ],
  settings: [
    { label: "Quote or invoice", kind: "text", value: "quote", note: "one word, quote or invoice" },
    { label: "Number", kind: "text", value: "1", note: "" },
    { label: "Yard", kind: "text", value: "Example yard, invented", note: "" },
    { label: "Its address", kind: "text", value: "", note: "" },
    { label: "Customer", kind: "text", value: "Example, invented", note: "" },
    { label: "Their address", kind: "text", value: "", note: "" },
    { label: "Day", kind: "number", value: "", format: FORMAT.date, note: "a date" },
    { label: "Days", kind: "number", value: 30, note: "to pay, or that the quote holds" },
    { label: "Deposit", kind: "number", value: "", format: FORMAT.money, note: "paid, or asked for with the order" },
    { label: "Measured", kind: "text", value: "boards piece by piece, surface measure times thickness", note: "" },
  ],
  figures: [
    {
      label: "This paper",
      formula: `=IF(${IS_INVOICE}, "INVOICE ", IF({Quote or invoice}="quote", "QUOTE, not a bill: ", "SAY quote OR invoice: "))&{Number}`,
      note: "",
    },
    {
      label: "Until",
      formula: `=IF({Day}="", "", IF(${IS_INVOICE}, "due ", "holds until ")&TEXT({Day}+{Days}, "yyyy-mm-dd"))`,
      note: "",
    },
    { label: "Sum of lines", formula: "=SUM(Table[Amount])", format: FORMAT.money, note: "before tax" },
    { label: "Tax", formula: "=SUM(Table[Tax])", format: FORMAT.money, note: "line by line, each to the cent" },
    { label: "Total", formula: "={Sum of lines}+{Tax}", format: FORMAT.money, note: "" },
    { label: "Left to pay", formula: "={Total}-N({Deposit})", format: FORMAT.money, note: "the deposit taken off" },
  ],
  columns: [
    { heading: "What", kind: "text", width: 30, note: "piece, species, size" },
    { heading: "Quantity", kind: "number", width: 14, note: "" },
    { heading: "Unit", kind: "text", width: 10, note: "bf, piece, hour" },
    { heading: "Price", kind: "number", width: 11, format: FORMAT.money, note: "of one" },
    {
      heading: "Amount",
      formula: "=BOLE.LINEAMOUNT([@Quantity], [@Price])",
      format: FILLED.money,
      width: 12,
      note: "to the cent",
    },
    { heading: "Tax rate", kind: "number", width: 10, format: FORMAT.share, note: "blank for none" },
    {
      heading: "Tax",
      formula: '=IF([@[Tax rate]]="", 0, ROUND([@Amount]*[@[Tax rate]], 2))',
      format: FILLED.money,
      width: 11,
      note: "of the line",
    },
  ],
  examples: [
    { What: "white oak 4/4, invented", Quantity: 120, Unit: "bf", Price: 6.5, "Tax rate": 0.06 },
    { What: "flattening, invented", Quantity: 1.5, Unit: "hour", Price: 85 },
  ],
  blankRows: 16,
  print: { upright: true },
};
