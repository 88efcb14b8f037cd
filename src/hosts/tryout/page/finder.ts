import { search, signature, type Entry } from "./catalog";
import { byId, element } from "./element";
import { described } from "./panel";

/** The search box: words in, functions out; a chosen function is described in full. */
export function startFinder(catalog: Entry[]): void {
  const box = byId("search") as HTMLInputElement;
  const list = byId("found");
  const refresh = () => {
    const found = search(catalog, box.value);
    const nothing = box.value.trim() !== "" && found.length === 0 ? [element("li", "quiet", "No function fits.")] : [];
    list.replaceChildren(...nothing, ...found.map(line));
  };
  box.addEventListener("input", refresh);
}

function line(entry: Entry): HTMLElement {
  const button = element("button", "", element("b", "", signature(entry)), entry.summary) as HTMLButtonElement;
  button.type = "button";
  const item = element("li", "", button);
  button.addEventListener("click", () => {
    item.replaceChildren(...described(entry));
    item.tabIndex = -1;
    item.focus();
  });
  return item;
}
