import entries from "../../../catalog/catalog.json";
import { TOPICS, type Entry } from "../../../catalog/entry";
import { element } from "./element";
import { shownEntry } from "./entry";
import { found } from "./search";

const catalog: readonly Entry[] = entries;
const search = byId<HTMLInputElement>("search");
const list = byId("list");
const count = byId("found");

showSteps();
search.addEventListener("input", () => (search.value.trim() === "" ? showSteps() : showFound(search.value)));
// Without a network Microsoft's script is missing; the list still serves as a reference.
if (typeof Office !== "undefined") void Office.onReady(followExcelsColours);

function showSteps(): void {
  count.textContent = "";
  list.replaceChildren(
    ...Object.entries(TOPICS)
      .map(([topic, title]) => ({ title, entries: catalog.filter((entry) => entry.topic === topic) }))
      .filter(({ entries }) => entries.length > 0)
      .map(({ title, entries }) =>
        element(
          "details",
          { class: "step" },
          element("summary", {}, element("h2", {}, title), element("span", {}, `(${entries.length})`)),
          ...entries.map(shownEntry),
        ),
      ),
  );
}

function showFound(question: string): void {
  const entries = found(question, catalog);
  if (entries.length === 0) {
    count.textContent = "Nothing found. Try one plain word: weight, kerf, dry, price.";
    list.replaceChildren();
  } else {
    count.textContent = `${entries.length} found, the likeliest first`;
    list.replaceChildren(element("h2", {}, "Found"), ...entries.map(shownEntry));
  }
}

/** Desktop Excel has colours of its own that the system does not know of. */
function followExcelsColours(): void {
  const theme = Office.context?.officeTheme;
  if (theme) document.documentElement.dataset["theme"] = theme.isDarkTheme ? "dark" : "light";
}

function byId<Kind extends HTMLElement>(id: string): Kind {
  return document.getElementById(id) as Kind;
}
