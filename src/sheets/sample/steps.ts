import type { Draft } from "./draft";
import type { Material } from "./material";
import { drawEveryRule } from "./sheets/buying/every-rule";
import { drawLogBook } from "./sheets/buying/log-book";
import { drawWhichRule } from "./sheets/buying/which-rule";
import { drawDrying } from "./sheets/drying/drying";
import { drawLiftAndHitch } from "./sheets/hauling/lift-and-hitch";
import { drawLoads } from "./sheets/hauling/loads";
import { drawVehicles } from "./sheets/hauling/vehicles";
import { drawBoards } from "./sheets/lumber/boards";
import { drawLogResults } from "./sheets/lumber/log-results";
import { drawSlabTickets } from "./sheets/lumber/slab-tickets";
import { drawSlabs } from "./sheets/lumber/slabs";
import { drawLogToSale } from "./sheets/overview/log-to-sale";
import { drawSummary } from "./sheets/overview/summary";
import { drawSummaryTables, SUMMARY_TABLES } from "./sheets/overview/summary-tables";
import { drawFunctions, drawFunctionTables } from "./sheets/reference/functions";
import { drawLists } from "./sheets/reference/lists";
import { drawBandSpeeds } from "./sheets/sawing/band-speeds";
import { drawCutPlan } from "./sheets/sawing/cut-plan";
import { drawHeadHeights } from "./sheets/sawing/head-heights";
import { drawMill } from "./sheets/sawing/mill";
import { drawMillSheet } from "./sheets/sawing/mill-sheets";
import { drawOrderPasses, drawOrders } from "./sheets/sawing/orders";
import { drawInvoiceLines } from "./sheets/selling/invoice-lines";
import { drawInvoiceToPrint } from "./sheets/selling/invoice-to-print";
import { drawInvoices } from "./sheets/selling/invoices";
import { drawMoney } from "./sheets/selling/money";
import { drawPartners } from "./sheets/selling/partners";
import { drawPrices } from "./sheets/selling/prices";

/** A step of the job: the sheets for it, and the colour of their tabs. */
export interface Step {
  title: string;
  tab: string;
  sheets: readonly SheetOfStep[];
}

interface SheetOfStep {
  name: string;
  /** The question it answers. */
  question: string;
  draw: (draft: Draft, material: Material) => void;
}

const sheet = (name: string, question: string, draw: SheetOfStep["draw"]): SheetOfStep => ({ name, question, draw });

/** The sheets in the order of the job. */
export const STEPS: readonly Step[] = [
  {
    title: "The whole yard",
    tab: "22303A",
    sheets: [
      sheet("Summary", "The key figures, one month of them, and charts of money, wood and stock.", drawSummary),
      sheet(SUMMARY_TABLES, "The months, species and stock behind the charts.", drawSummaryTables),
      sheet("Log to sale", "Every log from the call to the sale, with the money it made so far.", drawLogToSale),
    ],
  },
  {
    title: "Judge and buy",
    tab: "8C5A2B",
    sheets: [
      sheet("Log book", "What is in each log, what does it weigh, does the mill take it?", drawLogBook),
      sheet("Which rule", "How much money does the choice of log rule move?", drawWhichRule),
      sheet("Every rule", "One log by every rule, and whom each favors.", drawEveryRule),
    ],
  },
  {
    title: "Lift and haul",
    tab: "8C2F1B",
    sheets: [
      sheet("Loads", "What is left of the trailer's rating, and how is each trip tied down?", drawLoads),
      sheet("Vehicles", "Rating, empty weight and cost of each vehicle.", drawVehicles),
      sheet("Lift and hitch", "Plan a load before the loader starts; the pull in a sling.", drawLiftAndHitch),
    ],
  },
  {
    title: "Saw",
    tab: "3B6E8C",
    sheets: [
      sheet("Cut plan", "Log, blade and products; what a plan yields; what a thinner blade gains.", drawCutPlan),
      sheet("Mill sheet live", "The passes for the log of the cut plan, to print and tick off at the mill.", (draft) =>
        drawMillSheet(draft, "live"),
      ),
      sheet("Mill sheet cant", "The same for a log that is sawn to a cant, with its turns.", (draft) =>
        drawMillSheet(draft, "cant"),
      ),
      sheet("Mill sheet quarter", "The same for a log that is quartersawn.", (draft) =>
        drawMillSheet(draft, "quarter"),
      ),
      sheet(
        "Orders",
        "Which of the logs that a crew offers would fill three orders, and what stays short?",
        drawOrders,
      ),
      sheet("Order passes", "How is each of those logs sawn, and whose pieces come of it?", drawOrderPasses),
      sheet("Head heights", "Even drops of the saw head without a plan, to print for the mill.", drawHeadHeights),
      sheet("Mill", "From the motor's plate to band speed, tension, lift and bed.", drawMill),
      sheet("Band speeds", "Drive frequency against band speed, to hang beside the drive.", drawBandSpeeds),
    ],
  },
  {
    title: "Scale the lumber",
    tab: "4F7A3A",
    sheets: [
      sheet("Boards", "Board feet of square-edged boards, green and again after the kiln.", drawBoards),
      sheet("Slabs", "Board feet of live-edge slabs, and how far the customs differ.", drawSlabs),
      sheet("Slab tickets", "A ticket for each slab, to print: size, how it was measured, price.", drawSlabTickets),
      sheet("Log results", "What each log gave and what a board foot of it cost.", drawLogResults),
    ],
  },
  {
    title: "Dry",
    tab: "C79A2E",
    sheets: [sheet("Drying", "The yard's air, readings over the weeks, the day it is ready, the kiln.", drawDrying)],
  },
  {
    title: "Price and sell",
    tab: "6B4C8C",
    sheets: [
      sheet("Prices", "The price list by species, thickness and state, and the margin it leaves.", drawPrices),
      sheet("Money", "What to bid, what a foot costs, what an hour must earn.", drawMoney),
      sheet("Invoice lines", "What was sold, line by line, each to the cent.", drawInvoiceLines),
      sheet("Invoices", "Lines, tax and total of each invoice, and whether it is paid.", drawInvoices),
      sheet("Invoice to print", "One invoice for the customer.", drawInvoiceToPrint),
      sheet("Partners", "Who laid out what, and what each partner gets.", drawPartners),
    ],
  },
  {
    title: "Look up",
    tab: "8A949A",
    sheets: [
      sheet("Functions", "All functions, each with a live example, its grade and its source.", (draft, { catalog }) =>
        drawFunctions(draft, catalog),
      ),
      sheet("Function tables", "The functions that answer a whole table.", (draft, { catalog }) =>
        drawFunctionTables(draft, catalog),
      ),
      sheet("Lists", "The names behind the drop-down lists.", (draft, { lists }) => drawLists(draft, lists)),
    ],
  },
];
