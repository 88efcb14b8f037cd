import { TOPICS, type Entry } from "../entry";
import { callOf } from "../reference/function-page";

const BEGIN = "<!-- functions: written by npm run catalog -->";
const END = "<!-- end of functions -->";

/** The README with its table of functions made anew, between its two marks. */
export function withFunctionTable(readme: string, catalog: readonly Entry[]): string {
  const from = readme.indexOf(BEGIN);
  const to = readme.indexOf(END);
  if (from < 0 || to < from) throw new Error(`README.md lacks the marks ${BEGIN} and ${END}`);
  return `${readme.slice(0, from)}${BEGIN}\n\n${tables(catalog)}\n\n${readme.slice(to)}`;
}

function tables(catalog: readonly Entry[]): string {
  return Object.entries(TOPICS)
    .map(([topic, title]) => {
      const rows = catalog.filter((entry) => entry.topic === topic).map(row);
      return `### ${title}\n\n| Function | Answers | Grade |\n| --- | --- | --- |\n${rows.join("\n")}`;
    })
    .join("\n\n");
}

function row(entry: Entry): string {
  return `| \`${callOf(entry).slice("=BOLE.".length)}\` | ${entry.summary.replace(/\|/g, "\\|")} | ${entry.grade} |`;
}
