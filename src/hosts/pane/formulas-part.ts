import { TOPICS, type Entry } from "../../catalog/entry";
import { element } from "./element";
import { shownEntry, tellFits } from "./entry";
import { helpPart } from "./help-part";
import { searchOver, type Hit } from "./search";
import { shownSheet } from "./sheets-part";
import { READY_SHEETS } from "../../sheets/ready";
import type { SheetHost } from "./sheet-host";
import { SHOWN } from "./shown";

/** Every function by the step of the job, and a search box that finds one by what a person wants to know. */
export function formulasPart(catalog: readonly Entry[], host: SheetHost): HTMLElement {
  const find = searchOver(catalog, READY_SHEETS);
  const search = element("input", {
    id: "search",
    type: "search",
    autocomplete: "off",
    spellcheck: "false",
    placeholder: "how heavy, does it fit, rpm",
  });
  const count = element("p", { id: "found", role: "status" });
  const list = element("div", { id: "list" });
  const refresh = () => {
    const question = search.value.trim();
    if (question === "") {
      count.textContent = "";
      return list.replaceChildren(...steps(catalog, host));
    }
    const { hits, everyWord } = find(question);
    count.textContent = counted(hits.length, everyWord);
    list.replaceChildren(
      ...(hits.length > 0 ? [element("h2", {}, "Found")] : []),
      ...hits.map((hit) => shownHit(hit, host)),
    );
  };
  search.addEventListener("input", refresh);
  refresh();
  const section = element(
    "section",
    { "aria-label": "Formulas" },
    element("label", { for: "search" }, "What do you want to know?"),
    search,
    count,
    list,
    ...helpPart(host),
  );
  section.addEventListener(SHOWN, () => tellFits(section));
  return section;
}

function shownHit(hit: Hit, host: SheetHost): HTMLElement {
  return hit.kind === "function"
    ? shownEntry(hit.entry, host)
    : element("ul", { class: "sheets" }, shownSheet(hit.sheet, host));
}

function counted(entries: number, everyWord: boolean): string {
  if (entries === 0) return "Nothing found. Try one plain word: weight, kerf, dry, price.";
  return `${entries} found, the likeliest first${everyWord ? "" : "; none has all of these words"}`;
}

function steps(catalog: readonly Entry[], host: SheetHost): HTMLElement[] {
  return Object.entries(TOPICS)
    .map(([topic, title]) => ({ title, entries: catalog.filter((entry) => entry.topic === topic) }))
    .filter(({ entries }) => entries.length > 0)
    .map(({ title, entries }) =>
      element(
        "details",
        { class: "step" },
        element("summary", {}, element("h2", {}, title), element("span", {}, `(${entries.length})`)),
        ...entries.map((entry) => shownEntry(entry, host)),
      ),
    );
}
