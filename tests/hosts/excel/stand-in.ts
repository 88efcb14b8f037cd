import type { Page } from "playwright-core";

/** A workbook of one sheet, as far as the pane reaches into one. */
export interface Sheet {
  name: string;
  chosen: string;
  /** What cells hold, by their address: `B4`. */
  cells: Record<string, unknown>;
  /** An error that Excel answers with instead of doing anything, by its code. */
  refuses?: string;
}

/**
 * Gives the page a stand-in of Excel's object model. As in Excel nothing can be read before it is loaded and synced,
 * and what is written arrives with the next sync.
 */
export async function standIn(page: Page, sheet: Sheet): Promise<void> {
  await page.evaluate((given) => {
    const state = { ...given, cells: { ...given.cells } };
    let pending: (() => void)[] = [];

    const addressesIn = (area: string) => {
      const [from = "", to = from] = area.split(":");
      const [left, top] = [from.replace(/\d/g, "").charCodeAt(0), Number(from.replace(/\D/g, ""))];
      const [right, bottom] = [to.replace(/\d/g, "").charCodeAt(0), Number(to.replace(/\D/g, ""))];
      return Array.from({ length: bottom - top + 1 }, (_, row) =>
        Array.from({ length: right - left + 1 }, (_, column) => `${String.fromCharCode(left + column)}${top + row}`),
      );
    };

    const rangeAt = (area: string) => {
      const loaded: Record<string, unknown> = {};
      const read = (name: string) => () => {
        if (!(name in loaded)) throw new Error(`The property '${name}' is not available. Load it and sync first.`);
        return loaded[name];
      };
      const contents = () => addressesIn(area).map((row) => row.map((address) => state.cells[address] ?? ""));
      const range = {
        getCell: () => rangeAt(addressesIn(area)[0]![0]!),
        load: (names: string) =>
          pending.push(() => {
            for (const name of names.split(/,\s*/))
              loaded[name] = name === "address" ? `${state.name}!${area}` : contents();
          }),
      };
      Object.defineProperty(range, "address", { get: read("address") });
      Object.defineProperty(range, "values", { get: read("values") });
      Object.defineProperty(range, "formulas", {
        get: read("formulas"),
        set: (formulas: unknown[][]) => pending.push(() => (state.cells[area] = formulas[0]![0])),
      });
      return range;
    };

    const sheet = { getRange: rangeAt };
    const context = {
      workbook: {
        getSelectedRange: () => rangeAt(state.chosen),
        worksheets: {
          getActiveWorksheet: () => sheet,
          getItem: (name: string) => {
            if (name !== state.name) throw Object.assign(new Error("no such sheet"), { code: "ItemNotFound" });
            return sheet;
          },
        },
      },
      sync: () => {
        if (state.refuses) throw Object.assign(new Error("refused"), { code: state.refuses });
        const work = pending;
        pending = [];
        for (const step of work) step();
        return Promise.resolve();
      },
    };
    Object.assign(window, {
      Excel: { run: async (work: (c: typeof context) => unknown) => work(context) },
      standIn: state,
    });
  }, sheet);
}

/** Chooses other cells, as a click in the sheet does. */
export async function choose(page: Page, chosen: string): Promise<void> {
  await page.evaluate((area) => ((window as unknown as { standIn: Sheet }).standIn.chosen = area), chosen);
}

/** What the cells hold now. */
export function cells(page: Page): Promise<Record<string, unknown>> {
  return page.evaluate(() => (window as unknown as { standIn: Sheet }).standIn.cells);
}
