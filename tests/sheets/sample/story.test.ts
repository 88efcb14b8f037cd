import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { startEngine, type OpenedWorkbook } from "../../../src/engine/engine";
import { SAMPLE } from "./parts";
import { type Row, rowsUnder } from "./rows";

let opened: OpenedWorkbook;
let logs: Row[],
  story: Row[],
  results: Row[],
  boards: Row[],
  slabs: Row[],
  lines: Row[],
  invoices: Row[],
  prices: Row[];

beforeAll(async () => {
  const engine = await startEngine();
  opened = await engine.open(readFileSync(SAMPLE));
  engine.stop();
  logs = rowsUnder(opened, "Log book", "Log");
  story = rowsUnder(opened, "Log to sale", "Log");
  results = rowsUnder(opened, "Log results", "Log");
  boards = rowsUnder(opened, "Boards", "Piece");
  slabs = rowsUnder(opened, "Slabs", "Piece");
  lines = rowsUnder(opened, "Invoice lines", "Invoice");
  invoices = rowsUnder(opened, "Invoices", "Invoice");
  prices = rowsUnder(opened, "Prices", "Species");
});

const sum = (rows: readonly Row[], column: string) => rows.reduce((total, row) => total + Number(row[column]), 0);
const cents = (money: unknown) => Math.round(Number(money) * 100);
const sumOfCents = (rows: readonly Row[], column: string) => rows.reduce((total, row) => total + cents(row[column]), 0);

describe("the invoices of the sample workbook", () => {
  it("have lines that add up to the cent", () => {
    expect(invoices).toHaveLength(8);
    for (const invoice of invoices) {
      const own = lines.filter((line) => line["Invoice"] === invoice["Invoice"]);
      expect(own.length, String(invoice["Invoice"])).toBe(invoice["Lines"]);
      expect(sumOfCents(own, "Amount")).toBe(cents(invoice["Sum of lines"]));
      expect(cents(invoice["Total"])).toBe(cents(invoice["Sum of lines"]) + cents(invoice["Tax"]));
    }
  });

  it("come to the totals worked out by hand from the quantities and prices", () => {
    const printed = [1247.2, 288.96, 3870.49, 701.5, 436.3, 227.6, 190.8, 594.13];
    expect(invoices.map(({ Total }) => Number(Total))).toEqual(printed.map((total) => expect.closeTo(total, 9)));
  });

  it("hold no piece twice, and no line without an invoice", () => {
    const pieces = lines.map(({ Piece }) => Piece).filter((piece) => piece !== "");
    expect(new Set(pieces).size).toBe(pieces.length);
    const numbers = invoices.map(({ Invoice }) => Invoice);
    expect(lines.filter(({ Invoice }) => !numbers.includes(Invoice!))).toEqual([]);
  });

  it("bill each piece by its ticket, and a kiln-dried board by its net tally", () => {
    let checked = 0;
    for (const line of lines.filter(({ Piece }) => Piece !== "")) {
      const board = boards.find(({ Piece }) => Piece === line["Piece"]);
      const slab = slabs.find(({ Piece }) => Piece === line["Piece"]);
      const dry = String(line["Description"]).includes("kiln-dried");
      const measured = slab ? slab["Board feet"] : board![dry ? "Net tally bf" : "Tally bf"];
      expect(Math.abs(Number(measured) - Number(line["Quantity"])), String(line["Piece"])).toBeLessThanOrEqual(
        0.005001,
      );
      expect((slab ?? board)!["Invoice"]).toBe(line["Invoice"]);
      checked++;
    }
    expect(checked).toBe(39);
  });

  it("ask the price of the list for each piece", () => {
    for (const line of lines.filter(({ Piece }) => Piece !== "")) {
      const soldAs = String(line["Description"]).replace(", net tally", "");
      expect(prices.find((price) => price["Sold as"] === soldAs)?.Asked, soldAs).toBe(line["Price"]);
    }
  });

  it("print one by one without losing a line", () => {
    expect(Math.max(...invoices.map(({ Lines }) => Number(Lines)))).toBeLessThanOrEqual(24);
    expect(opened.value("Invoice to print", "I6")).toBe("yes, to the cent");
  });
});

describe("the price list of the sample workbook", () => {
  it("has a price for every thing sawn, green, air-dried and kiln-dried", () => {
    const products = [...new Set([...boards, ...slabs].map(({ Product }) => Product))];
    expect(products.length).toBe(7);
    const wanted = products.flatMap((product) =>
      ["green", "air-dried", "kiln-dried rough"].map((state) => `${product}, ${state}`),
    );
    expect(prices.map((price) => String(price["Sold as"])).sort()).toEqual(wanted.sort());
  });

  it("asks more than it costs, and more for drier wood", () => {
    for (const price of prices) expect(Number(price["Asked"])).toBeGreaterThan(Number(price["Cost"]));
    for (let i = 0; i < prices.length; i++)
      if (prices[i]!["State"] !== "green")
        expect(Number(prices[i]!["Asked"])).toBeGreaterThan(Number(prices[i - 1]!["Asked"]));
  });
});

describe("each log of the sample workbook from the call to the sale", () => {
  it("is followed, every one of the log book, with a day of the call before it came in", () => {
    expect(story.map(({ Log }) => Log)).toEqual(logs.map(({ Log }) => Log));
    story.forEach((row, i) => expect(Number(row["Called"]), String(row["Log"])).toBeLessThan(Number(logs[i]!["Date"])));
  });

  it("was not paid for above its bid", () => {
    for (const row of story.slice(2)) expect(Number(row["Paid"])).toBeLessThanOrEqual(Number(row["Most to bid"]));
  });

  it("adds the board feet of its boards and slabs up to what was sawn", () => {
    const total = sum(boards, "Tally bf") + sum(slabs, "Board feet");
    expect(sum(results, "Sawn bf")).toBeCloseTo(total, 9);
    expect(sum(story, "Sawn bf")).toBeCloseTo(total, 9);
    expect(sum(story, "Sold bf") + sum(story, "Left bf")).toBeCloseTo(total, 9);
  });

  it("shares out all the haul and all the money for lumber, none twice", () => {
    const loads = rowsUnder(opened, "Loads", "Load");
    const hauled = loads.reduce((total, load) => total + Number(load["Haul per bf"]) * Number(load["Board feet"]), 0);
    expect(sum(story, "Haul")).toBeCloseTo(hauled, 9);
    const ofWood = lines.filter(({ Piece }) => Piece !== "");
    expect(sum(story, "Billed")).toBeCloseTo(sum(ofWood, "Amount"), 9);
  });

  it("costs by the foot what it costs in all", () => {
    for (const row of results)
      expect(Number(row["Cost per bf"]) * Number(row["Sawn bf"])).toBeCloseTo(Number(row["Cost so far"]), 9);
  });

  it("has what was billed, profit and stock that balance with its cost", () => {
    for (const row of story) {
      const [cost, billed, profit, left] = ["Cost so far", "Billed", "Profit so far", "Left at cost"].map((column) =>
        Number(row[column]),
      ) as [number, number, number, number];
      expect(billed - profit + left, String(row["Log"])).toBeCloseTo(cost, 9);
      if (row["Sold bf"] === 0) expect([billed, profit]).toEqual([0, 0]);
    }
  });

  it("leaves the stock that the summary counts", () => {
    const left = Array.from({ length: 7 }, (_, i) => Number(opened.value("Summary tables", `R${7 + i}`)));
    expect(left.reduce((a, b) => a + b)).toBeCloseTo(sum(story, "Left bf"), 9);
  });
});

describe("the partners of the sample workbook", () => {
  it("lay out what logs, hauling and supplies cost, and get all that was paid in, to the cent", () => {
    expect(opened.value("Partners", "C17")).toBeCloseTo(2575.6, 9);
    expect(opened.value("Partners", "C18")).toBeCloseTo(1181.44, 9);
    expect(opened.value("Partners", "C13")).toBeCloseTo(7001.81, 9);
    // By hand: 7,001.81 less 3,757.04 leaves 3,244.77; 60 % of it is 1,946.862 and 40 % is 1,297.908.
    expect([opened.value("Partners", "H17"), opened.value("Partners", "H18")]).toEqual([4522.46, 2479.35]);
  });
});

describe("the slab tickets of the sample workbook", () => {
  it("print for each slab of the log its size, how it was measured, its board feet and its price", () => {
    const own = slabs.filter(({ Log }) => Log === "L01");
    expect(own).toHaveLength(8);
    own.forEach((slab, i) => {
      const [column, top] = [i % 2 === 0 ? "B" : "E", 11 + Math.floor(i / 2) * 10];
      const ticket = Array.from({ length: 9 }, (_, line) => opened.value("Slab tickets", `${column}${top + line}`));
      const feet = Math.round(Number(slab["Board feet"]) * 100) / 100;
      expect(ticket.slice(0, 4)).toEqual([slab["Piece"], "black walnut", "9/4 as sawn, counted as 2-1/4 in", "10'3\""]);
      expect(ticket[5]).toBe("mean of 3 widths, narrow face");
      expect(ticket[6]).toBe(feet);
      expect(ticket[7]).toBe(11);
      expect(ticket[8]).toBeCloseTo(feet * 11, 2);
    });
    expect(opened.value("Slab tickets", "B15")).toBe("15 / 17-1/4 / 19-3/4");
  });
});
