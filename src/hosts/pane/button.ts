import { element } from "./element";
import { reported } from "./reported";

/**
 * A button that does something in the workbook, and a line that says what came of it. The second click of a double
 * click, or one before the first is done, would do it twice, so it does nothing.
 */
export function button(
  text: string,
  work: () => Promise<string>,
  attributes: Record<string, string> = {},
): HTMLButtonElement {
  const made = element("button", { type: "button", ...attributes }, text);
  made.addEventListener("click", async ({ detail: clicksInARow }) => {
    if (clicksInARow > 1 || made.getAttribute("aria-disabled") === "true") return;
    made.setAttribute("aria-disabled", "true");
    await reported(work);
    made.removeAttribute("aria-disabled");
  });
  return made;
}
