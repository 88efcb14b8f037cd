import type { Entry } from "../../catalog/entry";
import { argumentPieces, literal } from "../../catalog/literals";
import { LEFT_OUT, registry } from "../registry";
import { shownAnswer } from "./answer-shown";
import { element } from "./element";
import { reported } from "./reported";
import type { SheetHost } from "./sheet-host";
import { formulaOf, typed, withoutSheet, type Typed } from "./typed";

/** A field for each argument, the answer before it goes anywhere, and the formula into the chosen cell. */
export function argumentForm(entry: Entry, host: SheetHost): HTMLElement {
  const fields = entry.params.map((param, i) => field(entry, param, exampleOf(entry, i), host));
  const answer = element("output", { class: "answer" });
  const parts = () => fields.map(({ input }) => typed(input.value));
  const form = element(
    "form",
    { "aria-label": `Your numbers for ${entry.name}` },
    ...fields.map(({ row }) => row),
    element("div", { class: "buttons" }, element("button", { type: "submit" }, "Show the answer"), insertButton()),
    answer,
  );
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    void reported(async () => {
      answer.replaceChildren(element("code", {}, formulaOf(entry.name, parts())), await answerTo(entry, parts(), host));
      return "";
    });
  });
  return form;

  function insertButton(): HTMLElement {
    const button = element("button", { type: "button" }, "Put into the chosen cell");
    button.addEventListener(
      "click",
      () => void reported(() => host.putIntoChosenCell((sheet) => formulaOf(entry.name, withoutSheet(parts(), sheet)))),
    );
    return button;
  }
}

/** What an example gives for an argument, as a person would type it: `black walnut`, not `"black walnut"`. */
function exampleOf(entry: Entry, argument: number): string {
  const pieces = entry.examples.map(({ formula }) => argumentPieces(formula)[argument] ?? "");
  const piece = pieces.find((given) => given !== "") ?? "";
  return String(literal(piece) ?? piece);
}

function field(
  entry: Entry,
  param: Entry["params"][number],
  example: string,
  host: SheetHost,
): { row: HTMLElement; input: HTMLInputElement } {
  const id = `${entry.name}-${param.name}`;
  const input = element("input", {
    id,
    type: "text",
    autocomplete: "off",
    spellcheck: "false",
    placeholder: example === "" ? "" : `such as ${example}`,
    "aria-describedby": `${id}-text`,
  });
  const take = element(
    "button",
    { type: "button", "aria-label": `Use the chosen cells for ${param.name}` },
    "Chosen cells",
  );
  take.addEventListener("click", () =>
    reported(async () => {
      input.value = await host.chosenAddress();
      return `${param.name} comes from ${input.value}`;
    }),
  );
  const row = element(
    "div",
    { class: "field" },
    element("label", { for: id }, param.name, ...(param.optional ? [" (may be left out)"] : [])),
    element("div", { class: "entry-line" }, input, take),
    element("p", { id: `${id}-text` }, param.text),
  );
  return { row, input };
}

/** The answer to what was typed, by the same function that the cell will call. */
async function answerTo(entry: Entry, parts: readonly Typed[], host: SheetHost): Promise<HTMLElement> {
  if (parts.every(({ kind }) => kind === "nothing") && entry.params.some(({ optional }) => !optional))
    return element("p", {}, "Fill in your numbers first.");
  const formula = registry[entry.name];
  if (!formula || parts.some(({ kind }) => kind === "expression"))
    return element("p", {}, "Excel has to work this one out: put it into a cell to see the answer.");
  const ranges = await Promise.all(parts.map((part) => cellsOf(part, host)));
  return shownAnswer(formula(...ranges), entry.returns);
}

/** The cells that stand for an argument, as a function takes them. */
export async function cellsOf(part: Typed, host: SheetHost): Promise<unknown[][]> {
  if (part.kind === "value") return part.cells;
  return part.kind === "reference" ? host.cellsAt(part.piece) : LEFT_OUT;
}
