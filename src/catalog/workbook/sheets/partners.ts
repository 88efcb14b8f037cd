import type { Draft } from "../draft";
import { entry, spill } from "../cells";
import { caution, put, startPage } from "../page";
import { FORMAT, HEADER, SMALL, TEXT } from "../style";
import { type Column, drawTable } from "../table";

const COLUMNS: readonly Column[] = [
  { header: "Partner" },
  { header: "Paid out", format: FORMAT.money },
  { header: "Share" },
];
const SHARES = "=BOLE.PARTNERSHARE(Receipts, Partners[Paid out], Partners[Share])";

/** What each partner gets: own outlay back first, then the shares. */
export function drawPartners(draft: Draft): void {
  const page = startPage(draft, "Partners", {
    title: "Partners: who gets what",
    lead: "Each partner first gets back what he laid out; the rest goes by the shares agreed, to the cent.",
    widths: [24, 14, 12, 4, 18, 20, 20, 16],
  });
  caution(page, 3, "the partners' own agreement decides, and taxes are a matter for an accountant.");
  put(page, "A5", "Money that came in", TEXT);
  entry(page, "B5", 7001.81, { format: FORMAT.money, name: "Receipts" });
  drawTable(page, "A8", "Partners", COLUMNS, [
    { Partner: "Nora", "Paid out": 2575.6, Share: 60 },
    { Partner: "Emil", "Paid out": 1181.44, Share: 40 },
  ]);
  put(page, "E7", SHARES, SMALL);
  spill(page, "E8", SHARES, [FORMAT.money], HEADER);
}
