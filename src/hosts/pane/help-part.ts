import { button } from "./button";
import { element } from "./element";
import type { RefusedCall, SheetHost } from "./sheet-host";

/** What to do when a cell shows an error: the last messages, and formulas that have to be entered anew. */
export function helpPart(host: SheetHost): HTMLElement[] {
  const { enterDeadFormulas, lastRefusals } = host;
  return [
    ...(lastRefusals ? [refusalsFold(lastRefusals)] : []),
    ...(enterDeadFormulas ? [deadFold(enterDeadFormulas)] : []),
  ];
}

/** The list is made when it is opened, so that it is never of yesterday. */
function refusalsFold(lastRefusals: () => readonly RefusedCall[]): HTMLElement {
  const list = element("div", {});
  const fold = element(
    "details",
    { class: "help" },
    element("summary", {}, element("h2", {}, "A cell shows #VALUE! or #N/A")),
    element("p", {}, "What Bole said of the last calls it could not answer, the newest first:"),
    list,
  );
  fold.addEventListener("toggle", () => {
    if (fold.open) list.replaceChildren(...shownRefusals(lastRefusals()));
  });
  return fold;
}

function shownRefusals(refusals: readonly RefusedCall[]): HTMLElement[] {
  if (refusals.length === 0) return [element("p", {}, "None since Excel was opened.")];
  return [element("ul", { class: "refusals" }, ...refusals.map(shownRefusal))];
}

function shownRefusal({ name, given, error, message, rows }: RefusedCall): HTMLElement {
  const more = rows > 1 ? ` (and ${rows - 1} more ${rows === 2 ? "row" : "rows"})` : "";
  return element(
    "li",
    {},
    element("code", {}, `${name}(${given})`),
    " ",
    element("span", { class: "refused" }, `${error}: ${message}`),
    more,
  );
}

function deadFold(enterDeadFormulas: () => Promise<string>): HTMLElement {
  return element(
    "details",
    { class: "help" },
    element("summary", {}, element("h2", {}, "Cells show #NAME?")),
    element(
      "p",
      {},
      "A formula that was typed before Bole was loaded shows #NAME? until it is entered anew. This enters all such " +
        "formulas of the workbook and leaves every other cell alone.",
    ),
    button("Enter them anew", enterDeadFormulas),
  );
}
