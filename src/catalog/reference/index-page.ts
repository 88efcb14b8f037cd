import { TOPICS, type Entry } from "../entry";
import { escaped } from "../../xlsx/escaped";
import { linkTo, page, pairs } from "./html";

/** All functions by the step of the job. */
export function indexPage(catalog: readonly Entry[]): string {
  const topics = Object.entries(TOPICS);
  return page(
    "All functions",
    "Timber and mill formulas for the spreadsheet, by the step of the job",
    `<h1>Bole’s worksheet functions</h1>`,
    `<p>Type <code>=BOLE.</code> and a name into a cell. A bare number is inches for a diameter, width or thickness, feet for a length, pounds for a weight. Text is read as it stands on the tape: <code>14 1/2</code>, <code>5/4</code>, <code>8'6"</code>, <code>45 cm</code>. Format such columns as Text, or the sheet makes dates of them. A whole column may stand where one cell is asked for. A blank row answers 0; #VALUE! says that a cell cannot be read, #N/A that there is no answer for these sizes. <a href="reading.html">How Bole reads a cell</a> has the rest.</p>`,
    `<p>The grade beside each function says how far to trust it: <strong>published</strong> in a document that its page names, <strong>plain arithmetic</strong>, <strong>common practice</strong> without a source, or <strong>from memory</strong>, seen by nobody here in print. <a href="grades.html">Where the numbers come from</a> lists the documents.</p>`,
    `<nav aria-label="Steps of the job"><ul class="steps">${topics.map(([topic, title]) => `<li><a href="#${topic}">${escaped(title)}</a></li>`).join("")}</ul></nav>`,
    ...topics.map(
      ([topic, title]) =>
        `<h2 id="${topic}">${escaped(title)}</h2>\n${pairs(catalog.filter((entry) => entry.topic === topic).map(row))}`,
    ),
  );
}

function row({ name, summary, grade, topic }: Entry): [string, string] {
  return [
    linkTo(name),
    `${escaped(summary)}${topic === "about" ? "" : ` <span class="quiet">${escaped(grade)}</span>`}`,
  ];
}
