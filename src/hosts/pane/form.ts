import type { Entry } from "../../catalog/entry";
import { argumentText } from "../../catalog/printing/argument-text";
import { registry } from "../../functions/registry";
import { shownAnswer } from "./answer-shown";
import { button } from "./button";
import { element } from "./element";
import { field } from "./field";
import { fitPart } from "./fit-part";
import { cellsOf } from "./given-cells";
import { reported } from "./reported";
import { Refusal, type SheetHost } from "./sheet-host";
import { workingShown } from "./working-shown";
import { formulaOf, typed, withoutSheet, type Typed } from "./typed";

/**
 * The columns of the person's own sheet that fit, where the chosen cell lies on one; then a field for each argument, the
 * answer before it goes anywhere, and the formula into the chosen cell.
 */
export function argumentForm(entry: Entry, host: SheetHost): HTMLElement[] {
  const fields = entry.params.map((_, i) => argumentField(entry, i, host));
  const answer = element("output", { class: "answer" });
  const parts = () => fields.map(({ input }) => typed(input.value));
  const formulaAt = (sheetPrefix: string) => formulaOf(entry.name, withoutSheet(parts(), sheetPrefix));
  const form = element(
    "form",
    { "aria-label": `Your numbers for ${entry.name}` },
    ...fields.map(({ row }) => row),
    element(
      "div",
      { class: "buttons" },
      element("button", { type: "submit" }, "Show the answer"),
      button("Put into the chosen cell", async () => {
        if (isUnfilled(entry, parts())) throw new Refusal(FILL_IN);
        return host.putIntoChosenCell(formulaAt);
      }),
    ),
    answer,
  );
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    void reported(async () => {
      answer.replaceChildren();
      answer.replaceChildren(element("code", {}, formulaOf(entry.name, parts())), await answerTo(entry, parts(), host));
      answer.scrollIntoView({ block: "nearest" });
      return "";
    });
  });
  return [fitPart(entry, host, form, parts), element("h4", {}, "Your numbers"), form];
}

function argumentField(entry: Entry, argument: number, host: SheetHost) {
  const param = entry.params[argument]!;
  const { name, optional, example = "" } = param;
  const label = optional ? `${name} (may be left out)` : name;
  const take = button(
    "Chosen cells",
    async () => {
      made.input.value = await host.chosenAddress();
      made.input.dispatchEvent(new Event("input", { bubbles: true }));
      return `${name} comes from ${made.input.value}`;
    },
    { "aria-label": `Use the chosen cells for ${name}` },
  );
  const made = field({ id: `${entry.name}-${name}`, label, example, note: argumentText(param) }, take);
  return made;
}

const FILL_IN = "Fill in your numbers first";

/** Whether nothing is typed where something has to be: such a formula would show 0, which looks like an answer. */
function isUnfilled(entry: Entry, parts: readonly Typed[]): boolean {
  return parts.every(({ kind }) => kind === "nothing") && entry.params.some(({ optional }) => !optional);
}

/** The answer to what was typed, by the same function that the cell will call. */
async function answerTo(entry: Entry, parts: readonly Typed[], host: SheetHost): Promise<HTMLElement> {
  if (isUnfilled(entry, parts)) return element("p", {}, `${FILL_IN}.`);
  const formula = registry[entry.name];
  if (!formula || parts.some(({ kind }) => kind === "expression")) return leftToTheSheet();
  const cells = await Promise.all(parts.map((part) => cellsOf(part, host)));
  const answer = formula(...cells);
  const working = workingShown({ name: entry.name, cells, parts, answer }, host);
  return element("div", {}, shownAnswer(answer, entry.returns), ...working);
}

/** Instead of an answer: calculations, tables and spilled answers are known to the sheet alone. */
export function leftToTheSheet(): HTMLElement {
  return element("p", {}, "The sheet has to work this one out: put it into a cell to see the answer.");
}
