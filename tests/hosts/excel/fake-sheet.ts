/* Sheets of the stand-in for Excel; see fake-excel.ts. */

import { at, type FakeSheet } from "./fake-cells";
import { fail, loadable, type FakeHost, type Members } from "./fake-host";
import { pageBreaks, pageLayout } from "./fake-pages";
import { rangeOf, usedRange } from "./fake-range";

export function worksheet(
  host: FakeHost,
  nameNow: () => string,
  rename: (name: string) => void = () => undefined,
): Record<string, unknown> {
  const { book, later } = host;
  const own = () => book.sheets[nameNow()]!;
  return loadable(host, "worksheet", {
    getters: {
      name: nameNow,
      visibility: () => own().visibility ?? "Visible",
      protection: () => ({ protected: own().protected ?? false }),
    },
    setters: {
      name: (name: string) => {
        renamed(host, nameNow(), name);
        rename(name);
      },
    },
    methods: {
      getRange: (area: string) => rangeOf(host, nameNow, area),
      getRangeByIndexes: (row: number, column: number, rows: number, columns: number) =>
        rangeOf(
          host,
          nameNow,
          rows * columns === 1 ? at(row, column) : `${at(row, column)}:${at(row + rows - 1, column + columns - 1)}`,
        ),
      getUsedRangeOrNullObject: (_valuesOnly?: boolean) => usedRange(host, nameNow),
      activate: () => later(() => void (book.active = nameNow())),
      delete: () => later(() => void delete book.sheets[nameNow()]),
      copy: () =>
        addedSheet(
          host,
          () => `${nameNow()} (copy ${Object.keys(book.sheets).length})`,
          () => structuredClone(own()),
        ),
      freezePanes: { freezeRows: (rows: number) => later(() => void (own().frozenRows = rows)) },
      pageLayout: pageLayout(host, own),
      verticalPageBreaks: pageBreaks(host, own),
      tables: { add: (area: string) => addedTable(host, own, area) },
      shapes: { addImage: (base64: string) => addedImage(host, own, base64) },
      notes: annotations(host, nameNow, "notes"),
      comments: annotations(host, nameNow, "comments"),
    } satisfies Members<Excel.Worksheet>,
  });
}

/** A sheet that comes into being with the next sync; it may be renamed before and after. */
export function addedSheet(host: FakeHost, nameOf: () => string, make: () => FakeSheet) {
  const { book, later } = host;
  let name = "";
  later(() => {
    name = nameOf();
    if (book.sheets[name]) fail("ItemAlreadyExists", `There is a sheet ${name}`);
    book.sheets[name] = make();
  });
  return worksheet(
    host,
    () => name,
    (next) => (name = next),
  );
}

function renamed({ book }: FakeHost, from: string, to: string): void {
  if (to !== from && book.sheets[to]) fail("ItemAlreadyExists", `There is a sheet ${to}`);
  if (to.length > 31) fail("InvalidArgument", `${to} is too long for a sheet`);
  book.sheets = Object.fromEntries(
    Object.entries(book.sheets).map(([name, sheet]) => [name === from ? to : name, sheet]),
  );
}

function addedTable(host: FakeHost, sheet: () => FakeSheet, area: string) {
  const name = (wanted: string) => {
    if (Object.values(host.book.sheets).some(({ tables }) => wanted in (tables ?? {})))
      fail("ItemAlreadyExists", `There is a table ${wanted}`);
    sheet().tables = { ...sheet().tables, [wanted]: area };
  };
  const ignored = ["style", "showBandedRows", "showFilterButton"].map((property) => [property, () => undefined]);
  return loadable(host, "table", { setters: { name, ...Object.fromEntries(ignored) } });
}

function addedImage(host: FakeHost, sheet: () => FakeSheet, base64: string) {
  const picture = { left: 0, top: 0, altTextDescription: "", base64 };
  host.later(() => void (sheet().pictures = [...(sheet().pictures ?? []), picture]));
  const settable = ["left", "top", "width", "lockAspectRatio", "altTextDescription"];
  const set = (property: string) => (value: never) => Object.assign(picture, { [property]: value });
  return loadable(host, "shape", { setters: Object.fromEntries(settable.map((name) => [name, set(name)])) });
}

function annotations(host: FakeHost, sheetName: () => string, kind: "notes" | "comments") {
  const own = () => host.book.sheets[sheetName()]![kind] ?? {};
  return loadable(host, kind, {
    getters: {
      items: () => Object.keys(own()).map((address) => ({ getLocation: () => rangeOf(host, sheetName, address) })),
    },
    methods: {
      add: (range: { area: string }, text: string) =>
        host.later(() => {
          if (own()[range.area]) fail("InvalidOperation", `${range.area} has one already`);
          host.book.sheets[sheetName()]![kind] = { ...own(), [range.area]: text };
        }),
    },
  });
}
