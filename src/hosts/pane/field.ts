import { element } from "./element";

/** A line to type in. */
export interface Field {
  id: string;
  label: string;
  /** What a person might type; none is shown where it is empty. */
  example: string;
  note: string;
}

/** The line with its label above, whatever stands beside it, and its note below. */
export function field({ id, label, example, note }: Field, ...beside: HTMLElement[]) {
  const input = element("input", {
    id,
    type: "text",
    autocomplete: "off",
    spellcheck: "false",
    placeholder: example === "" ? "" : `such as ${example}`,
    "aria-describedby": `${id}-text`,
  });
  const row = element(
    "div",
    { class: "field" },
    element("label", { for: id }, label),
    element("div", { class: "entry-line" }, input, ...beside),
    element("p", { id: `${id}-text` }, note),
  );
  return { row, input };
}
