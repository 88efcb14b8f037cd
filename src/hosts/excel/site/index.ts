import entries from "../../../catalog/catalog.json";
import { callsOf } from "../../../formula/calls";
import { ADD_IN } from "../../../catalog/about/add-in";
import { element } from "../../pane/element";
import { callsShown } from "../../pane/this-cell";

/** Formulas of the everyday, to click on. */
const EXAMPLES = [
  '=BOLE.LOGSCALE(24, "10\'6""", "Doyle")',
  '=BOLE.LOGWEIGHT("black walnut", 24, 27, 10)',
  '=BOLE.EMC(70, "65%")',
  '=BOLE.CUTYIELD(30, 12, {"4/4";"8/4"}, "1/16")',
];

start();

/** The page's formula line: answered by the very functions of the add-in, in the page itself. */
function start(): void {
  const line = document.getElementById("formula") as HTMLInputElement;
  const answer = document.getElementById("answer")!;
  const show = async () => {
    const formula = line.value.trim().replace(/^=?/, "=");
    // There is no sheet behind this line, so an address has no cells.
    const shown = await callsShown({ address: "", formula, value: undefined }, entries, () =>
      Promise.resolve(undefined),
    );
    answer.replaceChildren(...(callsOf(ADD_IN, formula).length > 0 ? shown : [whatToType()]));
  };
  document.getElementById("examples")!.replaceChildren(
    ...EXAMPLES.map((formula) => {
      const button = element("button", { type: "button" }, /BOLE\.(\w+)/.exec(formula)![1]!);
      button.setAttribute("aria-label", `Try ${formula}`);
      button.addEventListener("click", () => {
        line.value = formula;
        void show();
      });
      return button;
    }),
  );
  line.addEventListener("input", () => void show());
  void show();
}

function whatToType(): HTMLElement {
  return element(
    "p",
    { class: "quiet" },
    "Type a formula that begins with =BOLE. and a name, such as =BOLE.LOGSCALE(24, 12).",
  );
}
