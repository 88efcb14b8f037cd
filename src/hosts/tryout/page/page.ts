import { ICommandService, type IWorkbookData } from "@univerjs/core";
import { longWork } from "../../../engine/long-work";
import type { CellPlace } from "../../../engine/origin";
import { element } from "../../pane/element";
import { pane } from "../../pane/pane";
import { isReference, type LookUp } from "../../pane/this-cell";
import type { SheetHost } from "../../pane/sheet-host";
import { loadCatalog } from "./catalog";
import { byId } from "./by-id";
import { loadFile } from "./file-client";
import { filePart } from "./file-part";
import { startGrid, type Grid } from "./grid";
import { showCell } from "./panel";
import { selectedCell } from "./selected";
import { gridHost } from "./sheet-host";

start().catch((fault: unknown) => {
  byId("cell").replaceChildren(element("p", { class: "why" }, `The spreadsheet could not start: ${String(fault)}`));
});

async function start(): Promise<void> {
  const [catalog, file] = await Promise.all([loadCatalog(), loadFile()]);
  const { workbook } = file;
  await warnOfLongWork(workbook);
  const grid = startGrid(byId("grid"), workbook, catalog);
  const host = gridHost(grid);
  byId("pane").replaceChildren(...pane(catalog, host));
  changeSidesWithF6();
  await filePart(grid, file);
  let typedLast: CellPlace | undefined;
  grid.api.addEvent(grid.api.Event.SheetEditEnded, ({ worksheet, row, column }) => {
    typedLast = { sheet: worksheet.getSheetName(), row, column };
  });
  let shown = "";
  keepShowing(grid, () => {
    const cell = selectedCell(grid, typedLast);
    const now = JSON.stringify(cell);
    // Drawn anew for nothing it would lose its place, the keyboard's and the reader's.
    if (cell && now !== shown) showCell(cell, catalog, cellsIn(grid, host));
    shown = now;
  });
}

/** The cells that a piece of the chosen cell's formula points at: an address, or a name that stands for one. */
function cellsIn(grid: Grid, { cellsAt }: SheetHost): LookUp {
  return async (piece) => {
    const named = grid.api.getActiveWorkbook()?.getDefinedName(piece)?.getFormulaOrRefString();
    const address = (named ?? piece).replace(/^=/, "").replaceAll("$", "");
    return isReference(address) ? cellsAt(address) : undefined;
  };
}

/** A large workbook keeps the page busy while it calculates: that is said, and shown, before it begins. */
async function warnOfLongWork({ sheets }: Partial<IWorkbookData>): Promise<void> {
  let formulas = 0;
  for (const { cellData } of Object.values(sheets ?? {}))
    for (const row of Object.values((cellData ?? {}) as Record<number, Record<number, { f?: string | null }>>))
      for (const { f } of Object.values(row)) if (f) formulas++;
  const warning = longWork(formulas);
  if (!warning) return;
  byId("cell").replaceChildren(element("p", { class: "quiet" }, warning));
  await new Promise((shown) => requestAnimationFrame(() => setTimeout(shown)));
}

/** Whatever happens in the grid, the panel follows once it has been drawn. */
function keepShowing(grid: Grid, show: () => void): void {
  let waiting = false;
  const soon = () => {
    if (waiting) return;
    waiting = true;
    requestAnimationFrame(() => {
      waiting = false;
      show();
    });
  };
  grid.injector.get(ICommandService).onCommandExecuted(soon);
  soon();
}

/** Keys of the grid stay in the grid; F6 is the way out, and back. */
function changeSidesWithF6(): void {
  let inGrid: Element | null = null;
  window.addEventListener(
    "keydown",
    (event) => {
      if (event.key !== "F6") return;
      event.preventDefault();
      event.stopPropagation();
      const inPanel = byId("panel").contains(document.activeElement);
      if (!inPanel) inGrid = document.activeElement;
      const next = inPanel ? inGrid : wayIn();
      if (next instanceof HTMLElement) next.focus();
    },
    true,
  );
}

/** The search box where it is in sight, else the part of the pane that is. */
function wayIn(): Element | null {
  const search = byId("search");
  return search.offsetParent ? search : byId("pane").querySelector("[aria-current=true]");
}
