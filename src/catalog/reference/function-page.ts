import { TOPICS, type Entry, type Formula, type Param, type SettingEntry } from "../entry";
import { argumentNote, asParam, zeroText } from "../printing/argument-text";
import { svg } from "../../functions/drawing/marks";
import { PICTURES } from "../pictures";
import { exampleList } from "./examples";
import { escaped } from "../../xlsx/escaped";
import { linkTo, page, pairs, prose } from "./html";
import { gradeLink, sourceLink } from "./sources";
import { workedExample } from "./worked-example";

/** More formulas than this are folded away, each under its sentence. */
const MOST_OPEN_FORMULAS = 3;

/** The page that opens as the help of one function. */
export function functionPage(entry: Entry, catalog: readonly Entry[]): string {
  const others = new Set(catalog.map(({ name }) => name).filter((name) => name !== entry.name));
  const said = (text: string) => prose(text, others);
  return page(
    entry.name,
    entry.summary,
    `<p class="step"><a href="index.html#${entry.topic}">${escaped(TOPICS[entry.topic]!)}</a></p>`,
    `<h1>${entry.name}</h1>`,
    `<p class="summary">${escaped(entry.summary)}</p>`,
    `<p class="call"><code>${escaped(callOf(entry))}</code></p>`,
    ...entry.cautions.map((caution) => `<p class="caution" role="note"><strong>Caution.</strong> ${said(caution)}</p>`),
    ...entry.pictures.map(figure),
    entry.params.length > 0
      ? `<h2>Arguments</h2>\n${pairs(entry.params.map((param) => [paramTerm(param), ...paramLines(param, said)]))}`
      : "",
    ...entry.params.flatMap(({ name, settings = [] }) => settingsList(name, settings, said)),
    `<h2>Answer</h2>\n<p>${said(entry.returns)}</p>`,
    ...entry.remarks.map((remark) => `<p>${said(remark)}</p>`),
    `<h2>Examples</h2>\n${exampleList(entry.examples)}`,
    workedExample(entry),
    `<h2>Where the numbers come from</h2>\n<p>Grade: ${gradeLink(entry.grade)}</p>`,
    formulas(entry, catalog),
    entry.see.length > 0 ? `<p>See also ${entry.see.map(linkTo).join(", ")}.</p>` : "",
  );
}

/** How a function is called: BOLE.NAME(needed, [optional]). */
export function callOf({ name, params }: Entry): string {
  return `=BOLE.${name}(${params.map((param) => (param.optional ? `[${param.name}]` : param.name)).join(", ")})`;
}

/** The rows that a table of settings may have, group by group. */
function settingsList(argument: string, settings: readonly SettingEntry[], said: (text: string) => string): string[] {
  if (settings.length === 0) return [];
  const groups = [...new Set(settings.map(({ group }) => group))];
  const list = (group: string) =>
    pairs(
      settings
        .filter((setting) => setting.group === group)
        .map((setting) => [`<code>${escaped(setting.name)}</code>`, ...paramLines(asParam(setting), said)]),
    );
  return [
    `<h2>What may stand in ${argument}</h2>`,
    ...groups.map((group) => `<h3>${escaped(group)}</h3>\n${list(group)}`),
  ];
}

function figure(asked: string): string {
  const picture = PICTURES[asked];
  if (!picture) throw new Error(`@picture ${asked}: there is no such picture in src/catalog/pictures`);
  return `<figure>\n${svg(`picture-${asked}`, picture)}\n<figcaption>${picture.title}</figcaption>\n</figure>`;
}

/** What is written about an argument, what its declaration knows, and what a zero does. */
function paramLines(param: Param, said: (text: string) => string): string[] {
  const known = [argumentNote(param), zeroText(param)].filter(Boolean).map(said);
  return [said(param.text), ...known.map((text) => `<span class="quiet">${text}</span>`)];
}

function paramTerm({ name, optional }: Entry["params"][number]): string {
  return `<code>${name}</code>${optional ? ` <span class="quiet">optional</span>` : ""}`;
}

/** The formulas behind a function. Where they hold all those of another one, its page is named instead. */
function formulas(entry: Entry, catalog: readonly Entry[]): string {
  const lender = lenderOf(entry, catalog);
  const lent = new Set(lender?.formulas.map(({ name }) => name));
  const own = entry.formulas.filter(({ name }) => !lent.has(name));
  const folded = own.length > MOST_OPEN_FORMULAS;
  const parts = own.map((formula) => (folded ? foldedFormula(formula) : openFormula(formula)));
  if (lender)
    parts.push(`<p>And all ${lender.formulas.length} formulas of ${linkTo(lender.name)}: they stand on its page.</p>`);
  return parts.join("\n");
}

function lenderOf({ name, formulas }: Entry, catalog: readonly Entry[]): Entry | undefined {
  const held = new Set(formulas.map((formula) => formula.name));
  return catalog
    .filter((other) => other.formulas.length > MOST_OPEN_FORMULAS && other.formulas.length < formulas.length)
    .filter((other) => other.name !== name && other.formulas.every((formula) => held.has(formula.name)))
    .sort((a, b) => b.formulas.length - a.formulas.length)[0];
}

function openFormula(formula: Formula): string {
  return `<h3>${escaped(formula.sentence)}</h3>\n${formulaRows(formula)}`;
}

function foldedFormula(formula: Formula): string {
  return `<details><summary>${escaped(formula.sentence)} <span class="quiet">${formula.grade}</span></summary>\n${formulaRows(formula)}\n</details>`;
}

function formulaRows({ formula, sources, range, checked, grade }: Formula): string {
  const rows: [string, ...string[]][] = [["Formula", `<code>${escaped(formula)}</code>`]];
  if (range) rows.push(["Range", escaped(range)]);
  rows.push(["Source", ...sources.map(sourceLink)], ["Grade", escaped(grade)]);
  if (checked) rows.push(["Checked against", escaped(checked)]);
  return pairs(rows);
}
