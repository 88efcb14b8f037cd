import { partsOf, plain, sheetPaths, writtenCells, type WrittenCell } from "../parts";

/** The sample workbook's file, opened once for every test of it. */
export const parts = await partsOf();
export const sheets = sheetPaths(parts);
export const cells = writtenCells(parts);
export const formulas = cells.flatMap(({ formula, ...cell }) => (formula === undefined ? [] : [{ ...cell, formula }]));

const byPlace = new Map(cells.map((cell) => [`${cell.sheet}!${cell.address}`, cell]));
export const cellAt = (sheet: string, address: string): WrittenCell | undefined => byPlace.get(`${sheet}!${address}`);

/** Every table: its part, its name, the sheet it stands on and its corners. */
export const tables = sheets.flatMap(({ sheet, path }) => {
  const relations = parts.get(path.replace("worksheets/", "worksheets/_rels/") + ".rels") ?? "";
  return [...relations.matchAll(/Target="\.\.\/(tables\/[^"]*)"/g)].map(([, target]) => {
    const xml = parts.get(`xl/${target}`)!;
    const [, name = ""] = / displayName="([^"]*)"/.exec(xml)!;
    const [, from = "", to = ""] = / ref="([A-Z]+\d+):([A-Z]+\d+)"/.exec(xml)!;
    return { sheet, xml, name, from, to };
  });
});

const strings = [...parts.get("xl/sharedStrings.xml")!.matchAll(/<si><t[^>]*>([^<]*)<\/t><\/si>/g)];

/** The text of a cell that holds a shared string. */
export const shared = (sheet: string, address: string): string | undefined =>
  plain(strings[Number(cellAt(sheet, address)?.value)]?.[1]);

/** What a cell shows as it is in the file: a number, or text by whichever way it is kept. */
export function shown(sheet: string, address: string): string | undefined {
  const cell = cellAt(sheet, address);
  return cell?.attributes.includes('t="s"') ? shared(sheet, address) : cell?.value;
}

/** A formula with its texts emptied, so that a word in them is not taken for a name. */
export const withoutText = (formula: string) => formula.replace(/"(?:[^"]|"")*"/g, '""');

export function rowsBetween(from: string, to: string): number[] {
  const [first, last] = [from, to].map((address) => Number(address.replace(/\D/g, ""))) as [number, number];
  return Array.from({ length: last - first + 1 }, (_, i) => first + i);
}

export function within(address: string, from: string, to: string): boolean {
  const place = (text: string) => [text.replace(/\d/g, "").padStart(3), Number(text.replace(/\D/g, ""))] as const;
  const [[column, row], [left, top], [right, bottom]] = [place(address), place(from), place(to)];
  return column >= left && column <= right && row >= top && row <= bottom;
}
