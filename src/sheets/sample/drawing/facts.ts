import { shownFormula } from "../../../formula/stored";
import { entry, figure } from "./cells";
import type { Line } from "./figures";
import { type Page, put } from "./page";
import { SMALL, TEXT } from "./style";

/** The columns of a block of facts: what each is, its figure, and what is said of it. */
export interface FactColumns {
  label: string;
  value: string;
  says: string;
}

/** Labelled figures one under the other beside a sheet's table: typed ones tinted, others worked out. */
export function drawFacts(page: Page, columns: FactColumns, firstRow: number, facts: readonly Line[]): void {
  facts.forEach((fact, i) => {
    const row = firstRow + i;
    put(page, `${columns.label}${row}`, fact.label, TEXT);
    if (fact.formula) figure(page, `${columns.value}${row}`, fact.formula, fact);
    else entry(page, `${columns.value}${row}`, fact.value ?? null, fact);
    put(page, `${columns.says}${row}`, shownFormula(fact.says ?? fact.unit ?? ""), SMALL);
  });
}
