import { planDrawing } from "../../functions/plan-drawing";
import { registry } from "../../functions/registry";
import { heightText } from "../../functions/sawing/heights";
import { button } from "./button";
import { shownAnswer, shownTable } from "./answer-shown";
import { cutArguments, cutPlanFormula, type AskedOfLog } from "./cut-request";
import { shownDrawing } from "./drawing";
import { element } from "./element";
import { field } from "./field";
import { leftToTheSheet } from "./form";
import { cellsOf } from "./given-cells";
import { LOG_FIELDS, PATTERNS, settingFields, type CutField } from "./cut-fields";
import { reported } from "./reported";
import type { SheetHost } from "./sheet-host";
import { withoutSheet } from "./typed";

/** A log and what is wanted of it; the plan, the settings of the saw head and the end of the log beside them. */
export function cutPlanPart(host: SheetHost): HTMLElement {
  const log = LOG_FIELDS.map(cutField);
  const first = settingFields("first").map(cutField);
  const others = settingFields("more").map(cutField);
  const pattern = patternField();
  const more = element("details", {}, element("summary", {}, "More about the log and the mill"), ...rowsOf(others));
  const plan = element("div", { class: "plan" });
  const form = element(
    "form",
    { "aria-label": "A log to cut" },
    ...rowsOf([...log, ...first]),
    pattern.row,
    more,
    element("div", { class: "buttons" }, element("button", { type: "submit" }, "Show the plan")),
  );
  const asking = element(
    "details",
    { class: "asking", open: "" },
    element("summary", {}, "The log and the mill"),
    form,
  );
  pattern.select.addEventListener("change", () => {
    if (["cant", "timber"].includes(pattern.select.value)) more.open = true;
  });
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    void reported(async () => {
      plan.replaceChildren();
      const asked = cutArguments(given());
      const { line, shown, heading } = await planned(asked, host);
      plan.replaceChildren(...shown);
      // A plan needs the room of the form, which can be opened again; whatever is wrong is mended in the open form.
      asking.open = !heading;
      heading?.focus();
      (heading ? asking : plan).scrollIntoView({ block: "start" });
      return line;
    });
  });
  return element(
    "section",
    { "aria-label": "Cut plan" },
    element("h2", {}, "Plan the cuts of one log"),
    element(
      "p",
      { class: "caution" },
      element("strong", {}, "Caution: "),
      "check the fit of the log in the mill and the maker's limits before sawing; a log that is turned can roll.",
    ),
    asking,
    plan,
  );

  function given(): AskedOfLog {
    const [diameter = "", length = "", thicknesses = "", kerf = ""] = log.map(({ input }) => input.value);
    const named = [...first, ...others].map(({ name, input }) => [name, input.value]);
    return { diameter, length, thicknesses, kerf, pattern: pattern.select.value, settings: Object.fromEntries(named) };
  }
}

/** What the pane shows of a plan, what is to be said of it in a line, and its heading where there is a plan. */
interface Planned {
  line: string;
  shown: HTMLElement[];
  heading?: HTMLElement;
}

async function planned(asked: ReturnType<typeof cutArguments>, host: SheetHost): Promise<Planned> {
  if (asked.every(({ kind }) => kind === "nothing"))
    return { line: "Nothing to plan yet", shown: [element("p", {}, "Fill in the log and what you want of it first.")] };
  if (asked.some(({ kind }) => kind === "expression"))
    return { line: "No plan here", shown: [leftToTheSheet(), buttons(asked, undefined, "", host)] };
  const cells = await Promise.all(asked.map((part) => cellsOf(part, host)));
  const answer = registry["CUTPLAN"]!(...cells);
  const total = answer.find(([pass]) => pass === "total");
  if (!total) return { line: "No plan: see why above", shown: [shownAnswer(answer, "")] };
  const drawing = planDrawing(cells);
  const passes = answer.slice(1, answer.indexOf(total));
  const line = `${shortNumber(total[5])} board feet in ${passes.length} passes`;
  const heading = element("h3", { tabindex: "-1" }, line);
  return {
    line,
    heading,
    shown: [
      heading,
      ...answer.slice(answer.indexOf(total) + 1).map(remark),
      element("h4", {}, "Settings of the saw head"),
      shownTable([["pass", "blade height", "board"], ...passes.map(sawn)], "Settings of the saw head"),
      element("h4", {}, "End of the log"),
      ...(drawing === undefined ? [] : [shownDrawing(drawing)]),
      buttons(asked, drawing?.beside, line, host),
    ],
  };
}

/**
 * A pass as it is read at the saw: its number, the height to set the head to, and the board that comes off or what else is
 * done. The table's note begins with a board's trade thickness. Board feet, drops and the rest stand in the sheet.
 */
function sawn([pass, height, , width, length, , , , , note]: unknown[]): string[] {
  const [first = "", ...others] = String(note).split(", ");
  const widths = typeof width === "number" ? heightText("in", width) : String(width);
  const board = width === "" ? first : `${first} × ${widths} in × ${String(length)} ft`;
  return [String(pass), heightText("in", Number(height)), [board, ...others].join(", ")];
}

function remark([what, figure, , , , , , , , note]: unknown[]): HTMLElement {
  const isHeight = HEIGHTS.includes(String(what));
  const figureText = isHeight ? heightText("in", Number(figure)) : shortNumber(figure);
  const text = figure === "" ? `${String(note)}.` : `${figureText}: ${String(note)}.`;
  return element("p", what === "warning" ? { class: "caution" } : {}, element("strong", {}, `${String(what)}: `), text);
}

/** Remarks whose figure is read off a tape. */
const HEIGHTS = ["first cut", "shim"];

function shortNumber(value: unknown): string {
  return Number(value).toLocaleString("en-US", { maximumFractionDigits: 2 });
}

function buttons(asked: ReturnType<typeof cutArguments>, svg: string | undefined, about: string, host: SheetHost) {
  const formulaAt = (sheetPrefix: string) => cutPlanFormula(withoutSheet(asked, sheetPrefix));
  const insert = button("Put the formula into the chosen cell", () => host.putIntoChosenCell(formulaAt));
  const place = host.placePicture;
  if (!place || svg === undefined) return element("div", { class: "buttons" }, insert);
  const picture = button("Place the picture on the sheet", () => place(svg, `End of the log: ${about}`));
  return element("div", { class: "buttons" }, insert, picture);
}

function rowsOf(fields: readonly { row: HTMLElement }[]): HTMLElement[] {
  return fields.map(({ row }) => row);
}

function cutField({ name, label, example, note }: CutField) {
  return { name, ...field({ id: `cut-${name.replaceAll(" ", "-")}`, label, example, note }) };
}

function patternField(): { row: HTMLElement; select: HTMLSelectElement } {
  const options = Object.entries(PATTERNS).map(([value, text]) => element("option", { value }, text));
  const select = element("select", { id: "cut-pattern" }, ...options);
  return {
    select,
    row: element("div", { class: "field" }, element("label", { for: "cut-pattern" }, "Pattern"), select),
  };
}
