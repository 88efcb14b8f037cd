import type { Draft } from "../../draft";
import { entry, figure, spill } from "../../drawing/cells";
import { caution, heading, type Page, put, startPage } from "../../drawing/page";
import { HEADER, SMALL, TEXT } from "../../drawing/style";
import { PARTNERS_AGREE } from "../../../definitions/cautions";
import { DOLLARS } from "../../../formats";
import type { Column } from "../../../definition";
import { drawTable } from "../../drawing/table";

const COLUMNS: readonly Column[] = [
  { heading: "Partner" },
  { heading: "Share" },
  { heading: "Paid out", formula: "=SUMIFS(Outlay_amounts, Outlay_payers, [@Partner])", format: DOLLARS.cents },
];
const SHARES = "=BOLE.PARTNERSHARE(Receipts, Partners[Paid out], Partners[Share])";

/** What was laid out: label, who paid it, the amount or its formula, and what is said of it. */
const OUTLAYS: readonly [string, string, number | string, string][] = [
  ["Logs", "Emil", "=SUM(Logs[Paid])", "less the fees that owners paid us"],
  ["Hauling", "Nora", "=SUMPRODUCT(Loads[Haul per bf], Loads[Board feet])", "own trailer and hired crane truck"],
  ["Blades", "Emil", "=SUM(Results[Blades])", "of the logs sawn"],
  ["Other supplies", "Emil", 240, "invented: stickers, end paint, straps"],
  ["Power for the kiln", "Emil", "=Kiln_power", "see the sheet Drying"],
];
const OUTLAY_ROW = 6;

/** What each partner gets: own outlay back first, then the shares. */
export function drawPartners(draft: Draft): void {
  const page = startPage(draft, "Partners", {
    title: "Partners: who gets what",
    lead: "The partners stand on the right in the order of the left. Each first gets back what he laid out; the rest goes by the shares agreed, to the cent. Own hours at the mill are no outlay: they come out of the shares.",
    widths: [28, 14, 14, 4, 20, 20, 20, 16],
  });
  caution(page, 3, PARTNERS_AGREE);
  drawOutlays(page);
  put(page, "A13", "Money that came in", TEXT);
  figure(page, "C13", "=Receipts", { format: DOLLARS.cents, key: true });
  put(page, "D13", "invoices paid, before tax: the tax is not the yard's", SMALL);
  drawTable(page, "A16", "Partners", COLUMNS, [
    { Partner: "Nora", Share: 60 },
    { Partner: "Emil", Share: 40 },
  ]);
  put(page, "E15", SHARES, SMALL);
  spill(page, "E16", SHARES, [DOLLARS.cents], HEADER);
}

function drawOutlays(page: Page): void {
  heading(page, OUTLAY_ROW - 1, "What was laid out", "C");
  ["What", "Paid by", "Amount"].forEach((text, i) => put(page, `${"ABC"[i]}${OUTLAY_ROW}`, text, HEADER));
  OUTLAYS.forEach(([label, payer, amount, says], i) => {
    const row = OUTLAY_ROW + 1 + i;
    put(page, `A${row}`, label, TEXT);
    entry(page, `B${row}`, payer);
    if (typeof amount === "string") figure(page, `C${row}`, amount, { format: DOLLARS.cents });
    else entry(page, `C${row}`, amount, { format: DOLLARS.cents });
    put(page, `D${row}`, says, SMALL);
  });
  const rows = [OUTLAY_ROW + 1, OUTLAY_ROW + OUTLAYS.length];
  page.draft.book.names.push({ name: "Outlay_payers", refersTo: `'Partners'!$B$${rows[0]}:$B$${rows[1]}` });
  page.draft.book.names.push({ name: "Outlay_amounts", refersTo: `'Partners'!$C$${rows[0]}:$C$${rows[1]}` });
}
