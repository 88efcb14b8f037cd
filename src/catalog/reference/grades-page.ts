import { SOURCES } from "../../math/sources";
import type { Entry } from "../entry";
import { escaped } from "../../xlsx/escaped";
import { linkTo, page, pairs, slug } from "./html";
import { documentOf } from "./sources";

/** What each grade says of a formula. */
const MEANINGS: readonly [grade: string, meaning: string][] = [
  [
    "published",
    "A statute, standard, handbook, textbook or study, named with its page or table. Where only a copy of it was seen, the list below says so.",
  ],
  ["plain arithmetic", "Geometry or a definition. It needs no source; check it with a pencil."],
  ["common practice", "A custom of the trade for which no source was found. Your neighbor may do it another way."],
  ["from memory", "Nobody here saw it in print. Take it as a hint, and check it before money or safety hangs on it."],
];

export const GRADE_TERMS = MEANINGS.map(([grade]) => grade);

/** What the grades mean, and every document that a formula cites. */
export function gradesPage(catalog: readonly Entry[]): string {
  return page(
    "Where the numbers come from",
    "The grades of Bole's formulas and the documents they were taken from",
    `<h1>Where the numbers come from</h1>`,
    `<p>Every function has a grade. It stands on the function's page, in the task pane, and <code>=BOLE.SOURCE("LOGSCALE")</code> puts it into the sheet with every formula, source and range.</p>`,
    `<h2 id="grades">The grades</h2>`,
    pairs(MEANINGS.map(([grade, meaning]) => [escaped(grade), escaped(meaning)])),
    `<p>A function that rests on several formulas names every grade among them, such as <em>published, in part from memory</em>; its page shows which formula is which.</p>`,
    `<p><em>Checked against</em> tells how many printed values, examples or table cells a formula was held to, and where print and formula part.</p>`,
    `<h2 id="documents">The documents</h2>`,
    `<p>Where a line says what a document was seen in, that is what was read, not the document itself.</p>`,
    pairs(Object.keys(SOURCES).map((key) => documentRow(key, catalog))),
  );
}

function documentRow(key: string, catalog: readonly Entry[]): [string, ...string[]] {
  const { document, seenIn } = SOURCES[key]!;
  const citing = catalog.filter(({ formulas }) =>
    formulas.some(({ sources }) => sources.some((source) => documentOf(source) === key)),
  );
  const says = [`${escaped(document)}${seenIn ? ` <span class="quiet">Seen in ${escaped(seenIn)}.</span>` : ""}`];
  if (citing.length > 0)
    says.push(`<span class="quiet">Behind</span> ${citing.map(({ name }) => linkTo(name)).join(", ")}`);
  return [`<span id="${slug(key)}">${escaped(key)}</span>`, ...says];
}
