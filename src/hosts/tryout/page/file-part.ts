import { FormulaCalculationSessionService } from "@univerjs/preset-sheets-core";
import { calculateAll } from "../../../engine/recalculate";
import { element } from "../../pane/element";
import { changesSince, typedIn, type Changes } from "../saving/changes";
import { asOpened } from "../saving/contents";
import { FREE_SHEET } from "../free-sheet";
import { byId } from "./by-id";
import { gridContents } from "./contents";
import { fileButtons, say } from "./file-buttons";
import { readied, savedCopy, type OpenedFile } from "./file-client";
import type { Grid } from "./grid";
import { mustBeSavable } from "./savable";
import { watchedPlaces } from "./watched-places";

/** Saves what was typed as a copy of the workbook, and opens another one in its place. */
export async function filePart(grid: Grid, file: OpenedFile): Promise<void> {
  const { workbook } = file;
  const own = (id: string) => (id === FREE_SHEET ? undefined : workbook.sheets[id]);
  const places = watchedPlaces(grid, (id) => {
    const sheet = own(id);
    return sheet && { rows: sheet.rowCount ?? 0, columns: sheet.columnCount ?? 0 };
  });
  const atFirst = gridContents(grid);
  byId("file-name").textContent = workbook.name;
  await grid.ready;
  const calculated = gridContents(grid);
  const opened = asOpened(atFirst, calculated);
  const fileSheets = new Map(opened.sheets.filter(({ id }) => own(id)).map(({ id, name }) => [id, name]));
  const changes = (now = gridContents(grid)): Changes => changesSince(opened, now, new Set([FREE_SHEET]));
  let savedLast = typedIn(changes(calculated));
  const isUnsaved = () => typedIn(changes()) !== savedLast;
  let leaving = false;

  window.addEventListener("beforeunload", (event) => {
    if (!leaving && isUnsaved()) event.preventDefault();
  });

  async function save(): Promise<void> {
    await settled(grid);
    const now = gridContents(grid);
    const moved = (ids: readonly string[]) => ids.flatMap((id) => fileSheets.get(id) ?? []);
    mustBeSavable({ opened, now, fileSheets, moved: moved(places.moved()) });
    const made = changes(now);
    const carried = moved(places.carried()).map(
      (name) => `on the sheet ${name} that notes, charts and rules follow cells which were carried elsewhere`,
    );
    const copy = await savedCopy(file, { ...made, left: [...made.left, ...carried] });
    const name = copyName(workbook.name, copy.macros);
    download(copy.bytes, name);
    savedLast = typedIn(made);
    say(`Saved a copy as ${name}. ${copy.said}.`);
  }

  async function open(chosen: File): Promise<void> {
    const address = await readied(chosen);
    leaving = true;
    window.location.assign(address);
  }

  fileButtons({ save, open, isUnsaved });
}

/** Even the largest workbook that a page holds is calculated by then. */
const LONGEST_CALCULATION_MS = 600_000;

/** What is still being typed counts, and every answer is that of what is typed by now. */
async function settled(grid: Grid): Promise<void> {
  await grid.api.getActiveWorkbook()?.endEditingAsync(true);
  const session = grid.injector.get(FormulaCalculationSessionService);
  await calculateAll({ api: grid.api, calculations: () => session.state.id }, LONGEST_CALCULATION_MS);
}

const A_MINUTE_MS = 60_000;

function download(bytes: Blob, name: string): void {
  const address = URL.createObjectURL(bytes);
  element("a", { href: address, download: name }).click();
  // A browser may begin to read only after this; a minute later it has done so.
  setTimeout(() => URL.revokeObjectURL(address), A_MINUTE_MS);
}

function copyName(name: string, macros: boolean): string {
  return `${name.replace(/\.xls[xm]$/i, "")} copy${macros ? ".xlsm" : ".xlsx"}`;
}
