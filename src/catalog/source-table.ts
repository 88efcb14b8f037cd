import { NoAnswer } from "../math/errors";
import catalog from "./catalog.json";
import type { Entry } from "./entry";

const HEADINGS = ["What", "Formula", "Source", "Range", "Grade"];

/** Where a worksheet function's numbers come from: a row for every formula it rests on. */
export function sourceTable({ name }: { name: string }): string[][] {
  const wanted = name
    .trim()
    .toUpperCase()
    .replace(/^=?(?:BOLE\.)?/, "")
    .replace(/\(.*$/, "");
  const entry = (catalog as Entry[]).find((listed) => listed.name === wanted);
  if (!entry) throw new NoAnswer(`name: wanted a function of Bole, such as LOGSCALE, got "${name.slice(0, 40)}"`);
  const rows = entry.formulas.map(({ sentence, formula, sources, range, grade }) => [
    sentence,
    formula,
    sources.join("; "),
    range,
    grade,
  ]);
  return [HEADINGS, ...(rows.length > 0 ? rows : [[entry.summary, "", "Bole itself", "", entry.grade]])];
}
