/* Ranges of the stand-in for Excel; see fake-excel.ts. */

import { addresses, at, block, write, type FakeCell } from "./fake-cells";
import { fail, loadable, type FakeHost, type Members } from "./fake-host";
import { worksheet } from "./fake-sheet";

export function rangeOf(host: FakeHost, sheetName: () => string, area: string): Record<string, unknown> {
  const sheet = () => host.book.sheets[sheetName()] ?? fail("ItemNotFound", "no such sheet");
  const each = (grid: unknown[][], use: (address: string, value: unknown) => void) => {
    const cells = addresses(area);
    if (grid.length !== cells.length || grid[0]?.length !== cells[0]?.length)
      fail("InvalidArgument", `The array is ${grid.length} × ${grid[0]?.length}, the range ${area}`);
    cells.forEach((line, r) => line.forEach((address, c) => use(address, grid[r]![c])));
  };
  const contents = (of: (cell: FakeCell | undefined) => unknown) => () =>
    addresses(area).map((line) => line.map((address) => of(sheet().cells[address])));
  const validate = (property: string) => (value: never) => {
    const before = sheet().validations?.[area] as object | undefined;
    sheet().validations = { ...sheet().validations, [area]: { ...before, [property]: value } };
  };
  return loadable(host, "range", {
    getters: {
      address: () => `${/\W/.test(sheetName()) ? `'${sheetName()}'` : sheetName()}!${area}`,
      values: contents((cell) => cell?.value ?? ""),
      formulas: contents((cell) => cell?.formula ?? cell?.value ?? ""),
      numberFormat: contents((cell) => cell?.format ?? "General"),
      rowIndex: () => block(area).top,
      columnIndex: () => block(area).left,
      rowCount: () => addresses(area).length,
      columnCount: () => addresses(area)[0]!.length,
      left: () => 48 * block(area).left,
      top: () => 15 * block(area).top,
    },
    setters: {
      values: (grid: unknown[][]) => each(grid, (address, value) => write(sheet(), address, value, false)),
      formulas: (grid: unknown[][]) => each(grid, (address, value) => write(sheet(), address, value, true)),
      numberFormat: (grid: unknown[][]) =>
        each(grid, (address, value) => {
          sheet().cells[address] = { value: "", ...sheet().cells[address], format: String(value) };
        }),
    },
    methods: {
      isNullObject: false,
      format: formatOf(host, sheetName, area),
      dataValidation: loadable(host, "dataValidation", {
        setters: { rule: validate("rule"), errorAlert: validate("errorAlert") },
      }),
      getCell: (row: number, column: number) =>
        rangeOf(host, sheetName, at(block(area).top + row, block(area).left + column)),
      merge: () => host.later(() => void (sheet().merged = [...(sheet().merged ?? []), area])),
      area,
      get worksheet() {
        return worksheet(host, sheetName);
      },
    } satisfies Members<Excel.Range> & { area: string },
  });
}

/** The looks of a range: what is set is kept on the sheet by area and property. */
function formatOf(host: FakeHost, sheetName: () => string, area: string) {
  const set = (property: string) => (value: never) => {
    const sheet = host.book.sheets[sheetName()]!;
    sheet.looks = { ...sheet.looks, [area]: { ...sheet.looks?.[area], [property]: value } };
  };
  const settable = (properties: string[]) =>
    loadable(host, "format", { setters: Object.fromEntries(properties.map((name) => [name, set(name)])) });
  return Object.assign(settable(["verticalAlignment", "wrapText", "indentLevel", "columnWidth", "rowHeight"]), {
    font: settable(["bold", "italic", "size", "color"]),
    fill: settable(["color"]),
    borders: { getItem: (side: string) => loadable(host, "border", { setters: { color: set(`border ${side}`) } }) },
  });
}

export function usedRange(host: FakeHost, sheetName: () => string) {
  const filled = Object.keys(host.book.sheets[sheetName()]?.cells ?? {});
  if (filled.length === 0) return { isNullObject: true, load: () => undefined };
  const blocks = filled.map(block);
  const [top, left] = [Math.min(...blocks.map((b) => b.top)), Math.min(...blocks.map((b) => b.left))];
  const [bottom, right] = [Math.max(...blocks.map((b) => b.bottom)), Math.max(...blocks.map((b) => b.right))];
  return rangeOf(host, sheetName, `${at(top, left)}:${at(bottom, right)}`);
}
