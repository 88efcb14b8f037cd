import { element } from "./element";

/**
 * A drawing of ours as wide as its place, and the way to see it large, its letters legible. It is read as an image, not
 * as markup of the page.
 */
export function shownDrawing(svg: string): HTMLElement {
  const large = element("button", { type: "button" }, "See it large");
  large.addEventListener("click", () => showLarge(imageOf(svg)));
  return element("div", {}, large, element("div", { class: "drawing" }, imageOf(svg)));
}

function imageOf(svg: string): Element {
  const read = new DOMParser().parseFromString(svg, "image/svg+xml").documentElement;
  const image = document.importNode(read, true);
  image.setAttribute("aria-label", read.querySelector("title")?.textContent ?? "End view of the log");
  return image;
}

/** Over the whole page, all of it in sight, until Esc or a button closes it; its small letters at full size. */
function showLarge(image: Element): void {
  const close = element("button", { type: "button" }, "Close");
  const full = element("button", { type: "button", "aria-pressed": "false" }, "Full size");
  const frame = element(
    "div",
    { class: "drawing", tabindex: "0", role: "group", "aria-label": "End view, can be scrolled" },
    image,
  );
  const buttons = element("div", { class: "buttons" }, close, full);
  const dialog = element("dialog", { class: "pane", "aria-label": "The end view, large" }, buttons, frame);
  const [width, height] = ["width", "height"].map((side) => Number(image.getAttribute(side)));
  frame.style.setProperty("--drawn-width", `${width}px`);
  frame.style.setProperty("--drawn-ratio", String(width! / height!));
  full.addEventListener("click", () => {
    full.setAttribute("aria-pressed", String(frame.classList.toggle("full")));
  });
  close.addEventListener("click", () => dialog.close());
  dialog.addEventListener("close", () => dialog.remove());
  document.body.append(dialog);
  dialog.showModal();
}
