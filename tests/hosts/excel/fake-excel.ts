/*
 * A stand-in for the part of Excel's object model that the pane reaches into. It runs in the browser's page, so it
 * imports nothing but the other fake files. As in Excel nothing can be read before it is loaded and synced, what is
 * written arrives with the next sync, text that looks like a date becomes one unless the cell is Text, and a spilled
 * answer goes with its formula.
 */

import { addresses, at, block, write, type FakeWorkbook } from "./fake-cells";
import { fail, loadable, type FakeHost } from "./fake-host";
import { rangeOf } from "./fake-range";
import { addedSheet, worksheet } from "./fake-sheet";

export function fakeExcel(book: FakeWorkbook) {
  let pending: (() => void)[] = [];
  const host: FakeHost = { book, later: (step) => void pending.push(step) };
  const context = {
    workbook: {
      getSelectedRange: () => rangeOf(host, () => book.active, book.chosen),
      names: loadable(host, "names", {
        getters: { items: () => (book.names ?? []).map((name) => ({ name, formula: book.refersTo?.[name] ?? "" })) },
      }),
      onSelectionChanged: { add: (listener: () => void) => void (book.listener = listener) },
      tables: loadable(host, "tables", {
        getters: { items: () => tablesOf(host) },
        methods: {
          getItem: (name: string) =>
            tablesOf(host).find((table) => table.name === name) ?? fail("ItemNotFound", "no such table"),
        },
      }),
      worksheets: loadable(host, "worksheets", {
        getters: { items: () => Object.keys(book.sheets).map((name) => listed(host, name)) },
        methods: {
          add: (name: string) =>
            addedSheet(
              host,
              () => name,
              () => ({ cells: {} }),
            ),
          getActiveWorksheet: () => worksheet(host, () => book.active),
          getItem: (name: string) =>
            worksheet(host, () => (book.sheets[name] ? name : fail("ItemNotFound", "no such sheet"))),
        },
      }),
    },
    sync: async () => {
      if (book.refuses) fail(book.refuses, "refused");
      const work = pending;
      pending = [];
      for (const step of work) step();
    },
  };
  const isSetSupported = (_: string, version: string) =>
    Number(version.split(".")[1]) <= Number(String(book.version ?? 1.18).split(".")[1]);
  return { Excel: { run: async (work: (given: typeof context) => unknown) => work(context) }, isSetSupported };
}

/** Tables with a heading row; those that a sheet lists have a row of totals at their foot. */
function tablesOf(host: FakeHost) {
  return Object.entries(host.book.sheets).flatMap(([sheet, { tables, totals = [], cells }]) =>
    Object.entries(tables ?? {}).map(([name, area]) => ({
      ...{ name, worksheet: { name: sheet }, showHeaders: true, showTotals: totals.includes(name) },
      getRange: () => rangeOf(host, () => sheet, area),
      columns: loadable(host, "columns", {
        getters: { items: () => addresses(area)[0]!.map((address) => ({ name: String(cells[address]?.value) })) },
        methods: { add: (_: number, __: undefined, heading: string) => addedColumn(host, sheet, name, heading) },
      }),
    })),
  );
}

/** A column at the end of a table: the table grows, with the heading in its first row. */
function addedColumn(host: FakeHost, sheet: string, table: string, heading: string) {
  const own = host.book.sheets[sheet]!;
  const { top, left, bottom, right } = block(own.tables![table]!);
  const lastRow = bottom - (own.totals?.includes(table) ? 1 : 0);
  host.later(() => {
    own.tables![table] = `${at(top, left)}:${at(bottom, right + 1)}`;
    write(own, at(top, right + 1), heading, false);
  });
  return { getDataBodyRange: () => rangeOf(host, () => sheet, `${at(top + 1, right + 1)}:${at(lastRow, right + 1)}`) };
}

/** A sheet as the list of all sheets holds it: its own properties come loaded with the list. */
function listed(host: FakeHost, name: string) {
  const { visibility = "Visible", protected: isProtected = false } = host.book.sheets[name]!;
  return Object.defineProperties(
    worksheet(host, () => name),
    {
      name: { value: name },
      visibility: { value: visibility },
      protection: { value: { protected: isProtected } },
    },
  );
}
