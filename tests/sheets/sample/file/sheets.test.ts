import { describe, expect, it } from "vitest";
import { plain } from "../parts";
import { cellAt, parts, rowsBetween, shared, sheets, shown, tables } from "./sample-file";

describe("the sheets in the sample workbook's file", () => {
  it("names its sheets, tables and cells as Excel allows, each once", () => {
    const workbook = parts.get("xl/workbook.xml")!;
    const titles = sheets.map(({ sheet }) => sheet);
    expect(titles[0]).toBe("Start here");
    expect(titles.filter((name) => name.length > 31 || /[[\]:*?/\\]/.test(name))).toEqual([]);
    const names = [...workbook.matchAll(/<definedName name="([^"]*)"/g)]
      .map(([, name = ""]) => name)
      .filter((name) => !name.startsWith("_xlnm"));
    const named = [...names, ...tables.map(({ name }) => name)];
    expect(
      named.filter((name) => !/^[A-Za-z_][\w.]{0,254}$/.test(name) || /^[A-Z]{1,3}\d+$|^[RC]\d*$/i.test(name)),
    ).toEqual([]);
    expect(new Set(named.map((name) => name.toLowerCase())).size).toBe(named.length);
  });

  it("heads every table with its columns' own names, each once, and fills new rows with the formula of the rows above", () => {
    expect(tables.length).toBeGreaterThan(12);
    for (const { sheet, xml, from, to } of tables) {
      const columns = [...xml.matchAll(/<tableColumn [^>]*name="([^"]*)"[^>]*?(?:\/>|>(.*?)<\/tableColumn>)/g)];
      const headings = columns.map(([, name]) => plain(name)!);
      expect(new Set(headings.map((name) => name.toLowerCase())).size).toBe(headings.length);
      const rows = rowsBetween(from, to);
      columns.forEach(([, name, inner], i) => {
        const letter = String.fromCharCode(from.charCodeAt(0) + i);
        expect(shared(sheet, `${letter}${rows[0]}`)).toBe(plain(name));
        const filling = plain(
          /<calculatedColumnFormula(?: array="1")?>(.*)<\/calculatedColumnFormula>/.exec(inner ?? "")?.[1],
        );
        const below = rows.slice(1).map((row) => cellAt(sheet, `${letter}${row}`)?.formula);
        expect([...new Set(below)], `${sheet} ${name}`).toEqual([filling]);
      });
    }
  });

  it("formats thicknesses and lengths as text, so that 5/4 and 8-6 stay what was typed", () => {
    const styles = [
      ...parts
        .get("xl/styles.xml")!
        .match(/<cellXfs.*<\/cellXfs>/s)![0]
        .matchAll(/<xf numFmtId="(\d+)"/g),
    ];
    const isText = (sheet: string, address: string) =>
      styles[Number(/s="(\d+)"/.exec(cellAt(sheet, address)!.attributes)![1])]![1] === "49";
    const typed = { Logs: "Length", Boards: "Length", Slabs: "Length", Stacks: "Thickness", Prices: "Thickness" };
    const places: [string, string][] = Object.entries(typed).map(([table, heading]) => {
      const { sheet, xml, from } = tables.find(({ name }) => name === table)!;
      const headings = [...xml.matchAll(/<tableColumn [^>]*name="([^"]*)"/g)].map(([, name]) => plain(name));
      const letter = String.fromCharCode(from.charCodeAt(0) + headings.indexOf(heading));
      return [sheet, `${letter}${Number(from.replace(/\D/g, "")) + 1}`];
    });
    for (const [sheet, address] of places) expect(isText(sheet, address), `${sheet}!${address}`).toBe(true);
  });

  it("draws its charts from cells that hold the numbers and the names", () => {
    const charts = [...parts].filter(([path]) => path.startsWith("xl/charts/")).map(([, xml]) => xml);
    expect(charts).toHaveLength(5);
    const ranges = charts.flatMap((xml) => [
      ...xml.matchAll(/<c:f>'([^']*)'!\$([A-Z])\$(\d+):\$[A-Z]\$(\d+)<\/c:f>.*?<\/c:(?:num|str)Cache>/g),
    ]);
    expect(ranges.length).toBeGreaterThan(20);
    for (const [whole, sheet = "", column, first, last] of ranges) {
      const points = [...whole.matchAll(/<c:v>([^<]*)<\/c:v>/g)].map(([, value]) => plain(value));
      const rows = rowsBetween(`A${first}`, `A${last}`);
      expect(points).toEqual(rows.map((row) => shown(sheet, `${column}${row}`)));
    }
  });

  it("puts the charts of a sheet into one drawing, as Excel wants it", () => {
    for (const { path, sheet } of sheets)
      expect(parts.get(path)!.match(/<drawing /g)?.length ?? 0, sheet).toBeLessThanOrEqual(1);
    expect(parts.get("xl/drawings/drawing1.xml")!.match(/<c:chart /g)).toHaveLength(4);
  });
});
