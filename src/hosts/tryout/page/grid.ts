import { defaultTheme } from "@univerjs/themes";
import { ICommandService, LifecycleStages, LocaleType, Univer, type IWorkbookData } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import * as parts from "@univerjs/preset-sheets-core";
import * as bole from "../../../functions";
import { CutPlans } from "../../../engine/cut-plans";
import { keepTextLiterals } from "../../../engine/literals";
import { Messages } from "../../../engine/messages";
import { registerAll } from "../../../engine/register";
import { keepTallColumnsQuick } from "../../../engine/tall-columns";
import type { Entry } from "../../../catalog/entry";
import { suggestion, suggestionWithoutCatalog } from "./descriptions";
import { ENGLISH } from "./english";

export type Grid = ReturnType<typeof startGrid>;

/** Starts the spreadsheet in the page, every function of the registry in it, and opens the workbook. */
export function startGrid(container: HTMLElement, workbook: Partial<IWorkbookData>, catalog: readonly Entry[]) {
  const dark = window.matchMedia("(prefers-color-scheme: dark)");
  const univer = new Univer({
    theme: ours(),
    darkMode: dark.matches,
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: ENGLISH },
  });
  registerPlugins(univer, container);
  const api = FUniver.newAPI(univer);
  dark.addEventListener("change", ({ matches }) => api.toggleDarkMode(matches));
  const injector = univer.__getInjector();
  const messages = new Messages();
  injector.get(ICommandService).beforeCommandExecuted(({ id }) => {
    if (id === parts.SetFormulaCalculationStartMutation.id) messages.newRun();
  });

  // Whoever goes to another sheet goes on typing there.
  injector.get(ICommandService).onCommandExecuted(({ id }) => {
    if (id === parts.SetWorksheetActiveOperation.id) setTimeout(() => injector.get(parts.ILayoutService).focus());
  });

  // The engine takes functions only once it has a workbook, so the first calculation waits until they are there.
  api.createWorkbook(workbook);
  const functions = injector.get(parts.IFunctionService);
  const plans = new CutPlans();
  const names = registerAll(bole, { parts, functions, messages, plans });
  keepTextLiterals(functions, parts);
  keepTallColumnsQuick(parts);
  injector.get(parts.IDescriptionService).registerDescriptions(names.map((name) => described(name, catalog)));
  return { api, injector, messages, plans, ready: ready(api) };
}

/** Resolves when the sheet is drawn and its first calculation shows. */
async function ready(api: FUniver): Promise<void> {
  const drawn = new Promise<void>((resolve) => {
    api.addEvent(api.Event.LifeCycleChanged, ({ stage }) => {
      if (stage >= LifecycleStages.Rendered) resolve();
    });
  });
  await Promise.all([drawn, api.getFormula().onCalculationResultApplied()]);
}

function described(name: string, catalog: readonly Entry[]) {
  const entry = catalog.find((one) => `BOLE.${one.name}` === name);
  return entry ? suggestion(entry) : suggestionWithoutCatalog(name.replace("BOLE.", ""));
}

/** Protecting cells needs a server that knows who is who. */
const LEFT_OUT = Object.fromEntries(
  [
    "sheet.contextMenu.permission",
    "sheet.command.add-range-protection-from-sheet-bar",
    "sheet.command.change-sheet-protection-from-sheet-bar",
    "sheet.command.delete-worksheet-protection-from-sheet-bar",
    "sheet.command.view-sheet-permission-from-sheet-bar",
  ].map((id) => [id, { hidden: true }]),
);

/** The parts of a spreadsheet that a person types in; nothing that speaks with a server. */
function registerPlugins(univer: Univer, container: HTMLElement): void {
  univer.registerPlugin(parts.UniverDocsPlugin);
  univer.registerPlugin(parts.UniverRenderEnginePlugin);
  univer.registerPlugin(parts.UniverUIPlugin, { container, header: true, toolbar: false, menu: LEFT_OUT });
  univer.registerPlugin(parts.UniverDocsUIPlugin);
  univer.registerPlugin(parts.UniverFormulaEnginePlugin);
  univer.registerPlugin(parts.UniverSheetsPlugin);
  univer.registerPlugin(parts.UniverSheetsUIPlugin, {
    formulaBar: true,
    footer: { sheetBar: true, statisticBar: true, menus: false, zoomSlider: true },
    clipboardConfig: { hidePasteOptions: true },
    disableForceStringAlert: true,
    disableForceStringMark: true,
    menu: LEFT_OUT,
  });
  univer.registerPlugin(parts.UniverSheetsNumfmtPlugin, { disableTextFormatAlert: true, disableTextFormatMark: true });
  univer.registerPlugin(parts.UniverSheetsNumfmtUIPlugin);
  univer.registerPlugin(parts.UniverSheetsFormulaPlugin, {
    initialFormulaComputing: parts.CalculationMode.FORCED,
  });
  univer.registerPlugin(parts.UniverSheetsFormulaUIPlugin);
}

/** Selection and buttons in the colour of bark. */
function ours(): typeof defaultTheme {
  const bark = {
    50: "#fbf6f0",
    100: "#f4e8da",
    200: "#e6cdb2",
    300: "#d3ac84",
    400: "#b98453",
    500: "#94592b",
    600: "#6b3a16",
    700: "#572f12",
    800: "#43240e",
    900: "#2f190a",
  };
  return { ...defaultTheme, primary: bark };
}
