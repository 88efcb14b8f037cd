import type { Entry, SettingEntry } from "../../catalog/entry";
import { argumentText, asParam } from "../../catalog/printing/argument-text";
import { shownAnswer } from "./answer-shown";
import { button } from "./button";
import { element } from "./element";
import { argumentForm } from "./form";
import type { SheetHost } from "./sheet-host";
import { SHOWN } from "./shown";
import { arrayConstant } from "../../formula/literals";

/** One function: its name and summary; opened, everything a person needs to trust and use it. */
export function shownEntry(entry: Entry, host: SheetHost): HTMLElement {
  const heading = element("h3", {}, entry.name);
  const details = element(
    "details",
    { class: "entry" },
    element("summary", {}, heading, element("span", {}, entry.summary)),
  );
  details.addEventListener("toggle", () => details.append(...insideOf(entry, host)), { once: true });
  details.addEventListener("toggle", () => tellFits(details));
  return details;
}

/** Tells what fits columns in a part of the pane that it has come into sight. */
export function tellFits(within: HTMLElement): void {
  for (const fit of within.querySelectorAll(".fit")) fit.dispatchEvent(new Event(SHOWN));
}

function insideOf(entry: Entry, host: SheetHost): HTMLElement[] {
  return [
    ...entry.cautions.map((text) => element("p", { class: "caution" }, element("strong", {}, "Caution: "), text)),
    ...entry.remarks.map((text) => element("p", {}, text)),
    element("p", {}, element("strong", {}, "Answers: "), entry.returns),
    ...(entry.params.length > 0 ? argumentForm(entry, host) : []),
    ...entry.params.flatMap(({ name, settings = [] }) => settingsList(name, settings)),
    element("h4", {}, "Examples"),
    element(
      "ul",
      { class: "examples" },
      ...entry.examples.map((example) => shownExample(example, entry.returns, host)),
    ),
    element("h4", {}, "Where it comes from"),
    element("p", {}, `Grade: ${entry.grade}`),
    ...entry.formulas.flatMap(shownFormula),
  ];
}

/** What may stand in a table of settings, folded away: it is long. */
function settingsList(argument: string, settings: readonly SettingEntry[]): HTMLElement[] {
  if (settings.length === 0) return [];
  const rows = settings.map((setting) => {
    const about = argumentText(asParam(setting));
    return element("li", {}, element("strong", {}, setting.name), `: ${about}`);
  });
  return [element("details", {}, element("summary", {}, `What may stand in ${argument}`), element("ul", {}, ...rows))];
}

/** An example with what it gives; one that answers can be put into the sheet. */
function shownExample({ formula, result }: Entry["examples"][number], returns: string, host: SheetHost): HTMLElement {
  const line = element("li", {}, element("code", {}, formula), " gives ");
  line.append(result.startsWith("{") ? shownAnswer(arrayConstant(result), returns) : result);
  if (result.startsWith("#")) return line;
  const label = `Put into the chosen cell: ${formula}`;
  line.append(button("Put into the chosen cell", () => host.putIntoChosenCell(() => formula), { "aria-label": label }));
  return line;
}

function shownFormula({ sentence, formula, sources, range, checked }: Entry["formulas"][number]): HTMLElement[] {
  const lines = [`Formula: ${formula}`, ...sources.map((source) => `Source: ${source}`)];
  if (range !== "") lines.push(`Range: ${range}`);
  if (checked !== "") lines.push(`Checked against: ${checked}`);
  return [
    element("p", {}, sentence),
    element("ul", { class: "sources" }, ...lines.map((line) => element("li", {}, line))),
  ];
}
