/*
 * A stand-in for the part of Excel's object model that the pane reaches into. It runs in the browser's page, so it
 * imports nothing but the cells. As in Excel nothing can be read before it is loaded and synced, what is written arrives with the next
 * sync, text that looks like a date becomes one unless the cell is Text, and a spilled answer goes with its formula.
 */

import { addresses, at, block, write, type FakeCell, type FakeSheet, type FakeWorkbook } from "./fake-cells";

/** Names of what Excel really has, so that the stand-in cannot make anything up. */
type Members<Real> = { [Member in keyof Real]?: unknown };

type Getters = Record<string, () => unknown>;
type Setters = Record<string, (value: never) => void>;

export function fakeExcel(book: FakeWorkbook) {
  let pending: (() => void)[] = [];
  const later = (step: () => void) => void pending.push(step);
  const fail = (code: string, why: string): never => {
    throw Object.assign(new Error(why), { code });
  };

  /** An object whose properties can be read once they are loaded and synced. */
  function loadable<Methods extends object>(name: string, getters: Getters, setters: Setters, methods: Methods) {
    const loaded: Record<string, unknown> = {};
    const load = (wanted: string) =>
      later(() => {
        for (const path of wanted.split(/,\s*/)) {
          const property = path.split("/")[0]!;
          const getter = getters[property] ?? fail("InvalidArgument", `${name} has no property ${property}`);
          loaded[property] = getter();
        }
      });
    const made = { load, ...methods };
    for (const property of new Set([...Object.keys(getters), ...Object.keys(setters)]))
      Object.defineProperty(made, property, {
        configurable: true,
        get: () =>
          property in loaded
            ? loaded[property]
            : fail("PropertyNotLoaded", `${name}.${property} is not available. Load it and sync first.`),
        set: (value: never) => later(() => (setters[property] ?? fail("ReadOnly", `${property} cannot be set`))(value)),
      });
    return made as typeof made & Record<string, unknown>;
  }

  function rangeOf(sheetName: () => string, area: string): Record<string, unknown> {
    const sheet = () => book.sheets[sheetName()] ?? fail("ItemNotFound", "no such sheet");
    const each = (grid: unknown[][], use: (address: string, value: unknown) => void) => {
      const cells = addresses(area);
      if (grid.length !== cells.length || grid[0]?.length !== cells[0]?.length)
        fail("InvalidArgument", `The array is ${grid.length} × ${grid[0]?.length}, the range ${area}`);
      cells.forEach((line, r) => line.forEach((address, c) => use(address, grid[r]![c])));
    };
    const contents = (of: (cell: FakeCell | undefined) => unknown) => () =>
      addresses(area).map((line) => line.map((address) => of(sheet().cells[address])));
    const look = (property: string) => (value: never) => {
      sheet().looks = { ...sheet().looks, [area]: { ...sheet().looks?.[area], [property]: value } };
    };
    const lookSetters = (properties: string[]) =>
      loadable("format", {}, Object.fromEntries(properties.map((name) => [name, look(name)])), {});
    const format = Object.assign(
      lookSetters(["verticalAlignment", "wrapText", "indentLevel", "columnWidth", "rowHeight"]),
      { font: lookSetters(["bold", "italic", "size", "color"]), fill: lookSetters(["color"]) },
      { borders: { getItem: (side: string) => loadable("border", {}, { color: look(`border ${side}`) }, {}) } },
    );
    const validate = (property: string) => (value: never) => {
      const before = sheet().validations?.[area] as object | undefined;
      sheet().validations = { ...sheet().validations, [area]: { ...before, [property]: value } };
    };
    return loadable(
      "range",
      {
        address: () => `${/\W/.test(sheetName()) ? `'${sheetName()}'` : sheetName()}!${area}`,
        values: contents((cell) => cell?.value ?? ""),
        formulas: contents((cell) => cell?.formula ?? cell?.value ?? ""),
        rowIndex: () => block(area).top,
        columnIndex: () => block(area).left,
        left: () => 48 * block(area).left,
        top: () => 15 * block(area).top,
      },
      {
        values: (grid: unknown[][]) => each(grid, (address, value) => write(sheet(), address, value, false)),
        formulas: (grid: unknown[][]) => each(grid, (address, value) => write(sheet(), address, value, true)),
        numberFormat: (grid: unknown[][]) =>
          each(grid, (address, value) => {
            sheet().cells[address] = { value: "", ...sheet().cells[address], format: String(value) };
          }),
      },
      {
        isNullObject: false,
        format,
        dataValidation: loadable(
          "dataValidation",
          {},
          { rule: validate("rule"), errorAlert: validate("errorAlert") },
          {},
        ),
        getCell: (row: number, column: number) =>
          rangeOf(sheetName, at(block(area).top + row, block(area).left + column)),
        merge: () => later(() => void (sheet().merged = [...(sheet().merged ?? []), area])),
        area,
        get worksheet() {
          return worksheet(sheetName);
        },
      } satisfies Members<Excel.Range> & { area: string },
    );
  }

  function annotations(sheetName: () => string, kind: "notes" | "comments") {
    const own = () => book.sheets[sheetName()]![kind] ?? {};
    return loadable(
      kind,
      { items: () => Object.keys(own()).map((address) => ({ getLocation: () => rangeOf(sheetName, address) })) },
      {},
      {
        add: (range: { area: string }, text: string) =>
          later(() => {
            if (own()[range.area]) fail("InvalidOperation", `${range.area} has one already`);
            book.sheets[sheetName()]![kind] = { ...own(), [range.area]: text };
          }),
      },
    );
  }

  function usedRange(sheetName: () => string) {
    const filled = Object.keys(book.sheets[sheetName()]?.cells ?? {});
    if (filled.length === 0) return loadable("range", {}, {}, { isNullObject: true, load: () => undefined });
    const blocks = filled.map(block);
    const [top, left] = [Math.min(...blocks.map((b) => b.top)), Math.min(...blocks.map((b) => b.left))];
    const [bottom, right] = [Math.max(...blocks.map((b) => b.bottom)), Math.max(...blocks.map((b) => b.right))];
    return rangeOf(sheetName, `${at(top, left)}:${at(bottom, right)}`);
  }

  function renamed(from: string, to: string): void {
    if (to !== from && book.sheets[to]) fail("ItemAlreadyExists", `There is a sheet ${to}`);
    if (to.length > 31) fail("InvalidArgument", `${to} is too long for a sheet`);
    book.sheets = Object.fromEntries(
      Object.entries(book.sheets).map(([name, sheet]) => [name === from ? to : name, sheet]),
    );
  }

  function worksheet(nameNow: () => string, rename: (name: string) => void = () => undefined): Record<string, unknown> {
    return loadable(
      "worksheet",
      {
        name: nameNow,
        visibility: () => book.sheets[nameNow()]!.visibility ?? "Visible",
        protection: () => ({ protected: book.sheets[nameNow()]!.protected ?? false }),
      },
      {
        name: (name: string) => {
          renamed(nameNow(), name);
          rename(name);
        },
      },
      {
        getRange: (area: string) => rangeOf(nameNow, area),
        getRangeByIndexes: (row: number, column: number, rows: number, columns: number) =>
          rangeOf(
            nameNow,
            rows * columns === 1 ? at(row, column) : `${at(row, column)}:${at(row + rows - 1, column + columns - 1)}`,
          ),
        getUsedRangeOrNullObject: () => usedRange(nameNow),
        activate: () => later(() => void (book.active = nameNow())),
        delete: () => later(() => void delete book.sheets[nameNow()]),
        copy: () =>
          added(
            () => `${nameNow()} (copy ${Object.keys(book.sheets).length})`,
            () => structuredClone(book.sheets[nameNow()]!),
          ),
        freezePanes: { freezeRows: (rows: number) => later(() => void (book.sheets[nameNow()]!.frozenRows = rows)) },
        tables: {
          add: (area: string) => {
            const set = (name: string) => {
              if (tableNames().includes(name)) fail("ItemAlreadyExists", `There is a table ${name}`);
              book.sheets[nameNow()]!.tables = { ...book.sheets[nameNow()]!.tables, [name]: area };
            };
            const plain = ["style", "showBandedRows", "showFilterButton"].map((name) => [name, () => undefined]);
            return loadable("table", {}, { name: set, ...Object.fromEntries(plain) }, {});
          },
        },
        shapes: {
          addImage: (base64: string) => {
            const picture = { left: 0, top: 0, altTextDescription: "", base64 };
            later(() => {
              const sheet = book.sheets[nameNow()]!;
              sheet.pictures = [...(sheet.pictures ?? []), picture];
            });
            const setters = Object.fromEntries(
              ["left", "top", "width", "lockAspectRatio", "altTextDescription"].map((name) => [
                name,
                (value: never) => Object.assign(picture, { [name]: value }),
              ]),
            );
            return loadable("shape", {}, setters, {});
          },
        },
        notes: annotations(nameNow, "notes"),
        comments: annotations(nameNow, "comments"),
      } satisfies Members<Excel.Worksheet>,
    );
  }

  /** A sheet that comes into being with the next sync; it may be renamed before and after. */
  function added(nameOf: () => string, make: () => FakeSheet) {
    let name = "";
    later(() => {
      name = nameOf();
      if (book.sheets[name]) fail("ItemAlreadyExists", `There is a sheet ${name}`);
      book.sheets[name] = make();
    });
    return worksheet(
      () => name,
      (next) => (name = next),
    );
  }

  const tableNames = () => Object.values(book.sheets).flatMap(({ tables }) => Object.keys(tables ?? {}));
  const named = (name: string, sheet?: string) => ({ name, worksheet: { name: sheet } });
  const context = {
    workbook: {
      getSelectedRange: () => rangeOf(() => book.active, book.chosen),
      names: loadable("names", { items: () => (book.names ?? []).map((name) => named(name)) }, {}, {}),
      tables: loadable(
        "tables",
        {
          items: () =>
            Object.entries(book.sheets).flatMap(([sheet, { tables }]) =>
              Object.keys(tables ?? {}).map((name) => named(name, sheet)),
            ),
        },
        {},
        {},
      ),
      worksheets: loadable(
        "worksheets",
        {
          items: () =>
            Object.keys(book.sheets).map((name) =>
              Object.defineProperties(
                worksheet(() => name),
                {
                  name: { value: name },
                  visibility: { value: book.sheets[name]!.visibility ?? "Visible" },
                  protection: { value: { protected: book.sheets[name]!.protected ?? false } },
                },
              ),
            ),
        },
        {},
        {
          add: (name: string) =>
            added(
              () => name,
              () => ({ cells: {} }),
            ),
          getActiveWorksheet: () => worksheet(() => book.active),
          getItem: (name: string) =>
            worksheet(() => (book.sheets[name] ? name : fail("ItemNotFound", "no such sheet"))),
        },
      ),
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
