import type { PlanDrawing } from "../../functions/plan-drawing";
import { button } from "./button";
import { drawnOnCanvas } from "./drawn-on-canvas";
import { element } from "./element";

/**
 * A drawing of ours as wide as its place, and the way to see it large, its letters legible. A pane is narrow: the views of
 * a cant stand one below the other there. It is read as an image, not as markup of the page.
 */
export function shownDrawing(drawing: PlanDrawing): HTMLElement {
  const large = element("button", { type: "button" }, "See it large");
  large.addEventListener("click", () => showLarge(drawing));
  return element(
    "div",
    {},
    element(
      "div",
      { class: "buttons" },
      large,
      button("Copy the picture", () => copied(drawing.beside)),
    ),
    element("div", { class: "drawing" }, imageOf(drawing.below)),
  );
}

function imageOf(svg: string): Element {
  const read = new DOMParser().parseFromString(svg, "image/svg+xml").documentElement;
  const image = document.importNode(read, true);
  image.setAttribute("aria-label", read.querySelector("title")?.textContent ?? "End view of the log");
  return image;
}

/** Puts the drawing where a letter or a message can take it from. */
async function copied(svg: string): Promise<string> {
  const canvas = await drawnOnCanvas(svg);
  const png = new Promise<Blob>((made, failed) =>
    canvas.toBlob((blob) => (blob ? made(blob) : failed(new Error("The picture is too large"))), "image/png"),
  );
  await navigator.clipboard.write([new ClipboardItem({ "image/png": png })]);
  return "The end view is copied: paste it where you want it";
}

/** Over the whole page, all of it in sight, until Esc or a button closes it; its small letters at full size. It prints alone. */
function showLarge({ beside, below }: PlanDrawing): void {
  const image = imageOf(window.innerWidth >= window.innerHeight ? beside : below);
  const close = element("button", { type: "button" }, "Close");
  const full = element("button", { type: "button", "aria-pressed": "false" }, "Full size");
  const print = element("button", { type: "button" }, "Print");
  const frame = element(
    "div",
    { class: "drawing", tabindex: "0", role: "group", "aria-label": "End view, can be scrolled" },
    image,
  );
  const buttons = element("div", { class: "buttons" }, close, full, print);
  const dialog = element("dialog", { class: "pane", "aria-label": "The end view, large" }, buttons, frame);
  const [width, height] = ["width", "height"].map((side) => Number(image.getAttribute(side)));
  frame.style.setProperty("--drawn-width", `${width}px`);
  frame.style.setProperty("--drawn-ratio", String(width! / height!));
  full.addEventListener("click", () => {
    full.setAttribute("aria-pressed", String(frame.classList.toggle("full")));
  });
  print.addEventListener("click", () => window.print());
  close.addEventListener("click", () => dialog.close());
  dialog.addEventListener("close", () => dialog.remove());
  document.body.append(dialog);
  dialog.showModal();
}
