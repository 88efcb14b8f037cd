import { element } from "./element";

/** A drawing of ours in a frame that can be scrolled. It is read as an image, not as markup of the page. */
export function shownDrawing(svg: string): HTMLElement {
  const read = new DOMParser().parseFromString(svg, "image/svg+xml").documentElement;
  const name = read.querySelector("title")?.textContent ?? "End view of the log";
  return element(
    "div",
    { class: "drawing", tabindex: "0", role: "group", "aria-label": "End view, can be scrolled" },
    labelled(document.importNode(read, true), name),
  );
}

function labelled(drawing: Element, name: string): Element {
  drawing.setAttribute("aria-label", name);
  return drawing;
}
