import { describe, expect, it } from "vitest";
import { readCatalog } from "../../src/catalog/read-catalog";
import { CUTPLAN, CUTYIELD } from "../../src/functions/sawing";
import { one, refused, type Cell } from "./sheet";

/** A 20 in log of 12 ft for 4/4 boards, with an eighth of kerf. */
const log = (settings: Cell[][], pattern = "live", products: Cell[][] = one("4/4")) =>
  [one(20), one(12), products, one(0.125), one(pattern), settings] as const;
const feet = (settings: Cell[][], pattern?: string, products?: Cell[][]) =>
  CUTYIELD(...log(settings, pattern, products))[0]![0] as number;

interface Row {
  pass: Cell;
  height: number;
  width: Cell;
  length: number;
  note: string;
}

function plan(settings: Cell[][], pattern?: string, products?: Cell[][]) {
  const table = CUTPLAN(...log(settings, pattern, products)) as Cell[][];
  const rows = table
    .slice(1)
    .map(([pass, height, , width, length, , , , , note]) => ({ pass, height, width, length, note }) as Row);
  const total = rows.findIndex(({ pass }) => pass === "total");
  const passes = rows.slice(0, total);
  return { passes, boards: passes.filter(({ width }) => width !== ""), notes: rows.map(({ note }) => note).join("\n") };
}

const plain = feet([]);
const prices = [["4/4", 1.125, 3, ""]];

describe("every setting changes the plan, the way a sawyer expects", () => {
  it("opening face: the best is what the plan finds by itself, another gives less, and one over the log is refused", () => {
    const best = plan([]).passes[0]!.height;
    expect(feet([["opening face", best]])).toBeCloseTo(plain, 9);
    for (const off of [-2, -0.5, 0.5]) {
      const moved = plan([["opening face", best + off]]);
      expect(moved.passes[0]!.height).toBe(best + off);
      expect(moved.notes).toMatch(/as set/);
      expect(feet([["opening face", best + off]])).toBeLessThanOrEqual(plain);
    }
    expect(feet([["opening face", best - 2]])).toBeLessThan(plain);
    expect(feet([["opening face", best - 0.5]], "slab")).toBeLessThanOrEqual(feet([], "slab"));
    expect(feet([["opening face", 0.5]])).toBe(0);
    expect(CUTYIELD(...log([["opening face", 40]]))).toEqual([
      [refused("#N/A", /opening face \(in above the bed\): wanted 0 to 21\.5, got 40/)],
    ]);
    expect(plan([["opening face", 10.01]]).notes).toMatch(/opening face .* whole number/);
    expect(
      plan(
        [
          ["opening face", 10],
          ["cant widths", 8],
        ],
        "cant",
      ).notes,
    ).toMatch(/not used.*opening face/);
  });

  it("small end across: a wider log gives more, a narrower less", () => {
    expect(feet([["small end across", 22]])).toBeGreaterThan(plain);
    expect(feet([["small end across", 18]])).toBeLessThan(plain);
  });

  it("taper: more of it gives more, and blank is none, not the usual half inch", () => {
    expect(feet([["taper", 1.5]])).toBeGreaterThan(plain);
    expect(feet([["taper", 0]])).toBeLessThan(plain);
    expect(feet([["taper", null]])).toBe(feet([["taper", "0"]]));
    expect(feet([["taper", 0.5]])).toBe(plain);
  });

  it("log lies: flat on the bed the log keeps its lowest boards whole, and needs no shim", () => {
    const taper = ["taper", 1.5];
    const lowest = (lies: string) => plan([taper, ["log lies", lies]]).boards.at(-1)!.length;
    expect(lowest("flat")).toBe(12);
    expect(lowest("split")).toBeLessThan(12);
    expect(feet([taper, ["log lies", "split"]])).toBe(feet([taper]));
  });

  it("sweep and crown: a bow costs lumber, and another way up costs another amount", () => {
    const ways = ["up", "down", "side"].map((way) =>
      feet([
        ["sweep", 2],
        ["crown", way],
      ]),
    );
    for (const bowed of ways) expect(bowed).toBeLessThan(plain);
    expect(new Set(ways).size).toBe(3);
    expect(feet([["sweep", 2]])).toBe(ways[0]);
  });

  it("rip, rip kerf: boards side by side give more, a wide kerf between them less again", () => {
    const widths = ["widths", "4, 6"];
    const rip = ["rip", "yes"];
    expect(feet([widths, rip])).toBeGreaterThan(feet([widths]));
    expect(feet([widths, ["rip", "no"]])).toBe(feet([widths]));
    expect(feet([widths, rip, ["rip kerf", 0.5]])).toBeLessThan(feet([widths, rip]));
    expect(feet([widths, rip, ["rip kerf", 0.125]])).toBe(feet([widths, rip]));
  });

  it("scale step: on a coarse scale the kerf is rounded up to it, and every height is a whole step", () => {
    expect(feet([["scale step", 0.25]])).toBeLessThan(plain);
    for (const { height } of plan([["scale step", 0.25]]).passes) expect(height % 0.25).toBe(0);
    expect(plan([["scale step", 0.25]]).notes).toMatch(/kerf 1\/8 in is no whole number of 1\/4 in scale steps/);
  });

  it("objective, pass cost: money for money, less what each board costs to saw", () => {
    const value = ["objective", "value"];
    expect(feet([value], "live", prices)).toBeCloseTo(3 * plain, 9);
    const boards = plan([], "live", prices).boards.length;
    const costly = feet([value, ["pass cost", 1]], "live", prices);
    expect(costly).toBeLessThan(3 * plain);
    expect(costly).toBeGreaterThanOrEqual(3 * plain - boards - 1e-9);
  });

  it("minimum, maximum width, width step: no board outside them, each a whole number of steps", () => {
    const within = plan([
      ["minimum width", 8],
      ["maximum width", 14],
      ["width step", 2],
    ]).boards.map(({ width }) => width as number);
    expect(Math.min(...within)).toBe(8);
    expect(Math.max(...within)).toBe(14);
    for (const width of within) expect(width % 2).toBe(0);
    for (const setting of [
      ["minimum width", 8],
      ["maximum width", 14],
      ["width step", 2],
    ])
      expect(feet([setting])).toBeLessThan(plain);
  });

  it("widths, width allowance: only the widths listed, and fewer inches where they are sawn over", () => {
    const listed = ["widths", "4, 8"];
    expect(new Set(plan([listed]).boards.map(({ width }) => width))).toEqual(new Set([4, 8]));
    expect(feet([["width allowance", 0.5]])).toBeLessThan(plain);
  });

  it("minimum length, length step, trim: no shorter board, whole steps, and the trim left on", () => {
    expect(Math.min(...plan([]).boards.map(({ length }) => length))).toBeLessThan(8);
    expect(Math.min(...plan([["minimum length", 12]]).boards.map(({ length }) => length))).toBe(12);
    for (const { length } of plan([["length step", 4]]).boards) expect(length % 4).toBe(0);
    expect(Math.max(...plan([["trim", 6]]).boards.map(({ length }) => length))).toBe(11);
    for (const setting of [
      ["minimum length", 12],
      ["length step", 8],
      ["trim", 6],
    ])
      expect(feet([setting])).toBeLessThan(plain);
  });

  it("wane: a quarter of the thickness allowed gives more", () => {
    expect(feet([["wane", 0.25]])).toBeGreaterThan(plain);
    expect(feet([["wane", "25%"]])).toBe(feet([["wane", 0.25]]));
    expect(feet([["wane", null]])).toBe(plain);
  });

  it("bed clearance: the blade stays above it", () => {
    const heights = plan([["bed clearance", 3]]).passes.map(({ height }) => height);
    expect(Math.min(...heights)).toBeGreaterThanOrEqual(3);
    expect(Math.min(...plan([]).passes.map(({ height }) => height))).toBeLessThan(1);
  });

  it("guide opening: no board is wider than it", () => {
    const widths = plan([["guide opening", 16]]).boards.map(({ width }) => width as number);
    expect(Math.max(...widths)).toBe(16);
    expect(feet([["guide opening", 16]])).toBeLessThan(plain);
  });

  it("cant widths, cant offset: the best of the widths, no worse off the middle than in it", () => {
    const widths = (list: Cell) => feet([["cant widths", list]], "cant");
    expect(widths("6, 8")).toBe(Math.max(widths(6), widths(8)));
    const thirteen = (offset: string) =>
      CUTYIELD(one(13.3), one(10), one("4/4"), one(0.125), one("cant"), [
        ["cant widths", "6, 8"],
        ["cant offset", offset],
      ])[0]![0] as number;
    expect(thirteen("free")).toBeGreaterThan(thirteen("centred"));
  });

  it("ring angle, heart: straighter rings and a larger heart left out cost lumber; blank is 45 degrees, not any angle", () => {
    const quarter = feet([], "quarter");
    expect(feet([["ring angle", 60]], "quarter")).toBeLessThan(quarter);
    expect(feet([["ring angle", 1]], "quarter")).toBeGreaterThan(quarter);
    for (const blank of [null, 0, "", 45]) expect(feet([["ring angle", blank]], "quarter")).toBe(quarter);
    expect(feet([["heart", 4]], "quarter")).toBeLessThan(quarter);
  });

  it("green size, price and from width of the products: thicker boards are fewer, dearer ones worth more", () => {
    expect(feet([], "live", [["4/4", 1.5]])).toBeLessThan(plain);
    const wide = [...prices, ["4/4", 1.125, 6, 12]];
    expect(feet([["objective", "value"]], "live", wide)).toBeGreaterThan(3 * plain);
  });
});

describe("the page of CUTPLAN", () => {
  const { remarks } = readCatalog().find(({ name }) => name === "CUTPLAN")!;
  const [{ message }] = CUTPLAN(...log([["no such", 1]]))[0] as [{ message: string }];
  const known = /known: ([^)]*)/.exec(message)![1]!.split(", ");

  it("names every setting, a paragraph a group", () => {
    expect(known).toHaveLength(26);
    for (const setting of known)
      expect(remarks.join(" "), setting).toMatch(new RegExp(`[:;,.] ${setting}|(and|or) ${setting}`));
    for (const remark of remarks) expect(remark.length, remark).toBeLessThan(800);
  });

  it("says that a blank taper is none, which the plan takes it for", () => {
    expect(remarks.join(" ")).toContain("a blank taper is a log without taper");
    expect(feet([["taper", ""]])).toBe(feet([["taper", "0"]]));
  });
});

describe("a plan without a board", () => {
  const why = (...rows: Cell[][]) => /^(no length|no width|none of).*/m.exec(plan(rows).notes)?.[0];

  it("says whether lengths, widths or the log itself forbid it", () => {
    expect(why(["minimum length", 13])).toMatch(/^no length goes into this log with its trim/);
    expect(why(["trim", 120])).toMatch(/^no length/);
    expect(why(["minimum width", 10], ["maximum width", 8])).toMatch(/^no width goes into this log/);
    expect(why(["widths", "30, 40"])).toMatch(/^no width/);
    expect(plan([], "live", one(24)).notes).toMatch(/^none of these products/m);
    expect(why()).toBeUndefined();
  });

  it("leaves the shim of slabs standing where a sweep is given, which slabs make no use of", () => {
    expect(plan([["sweep", 3]], "slab").notes).toMatch(/raise the small end/);
    expect(plan([["sweep", 3]]).notes).not.toMatch(/raise the small end/);
  });
});

describe("a setting that changes nothing", () => {
  const unused = (settings: Cell[][], pattern?: string, products?: Cell[][]) =>
    /not used for this plan, pattern \w+: (.*)/.exec(plan(settings, pattern, products).notes)?.[1];

  it("is named under the plan, so that nobody counts on it", () => {
    expect(unused([])).toBeUndefined();
    expect(unused([["rip", "no"]], "slab")).toBeUndefined();
    expect(
      unused([
        ["heart", 3],
        ["cant widths", 6],
      ]),
    ).toBe("cant widths, heart");
    expect(unused([["crown", "side"]])).toBe("crown");
    expect(unused([["rip kerf", 0.25]])).toBe("rip kerf");
    expect(
      unused([
        ["widths", "4, 8"],
        ["minimum width", 6],
      ]),
    ).toBe("minimum width");
    expect(
      unused(
        [
          ["wane", 0.25],
          ["minimum width", 8],
        ],
        "slab",
      ),
    ).toBe("wane");
    expect(unused([["guide opening", 60]], "quarter")).toBe("guide opening");
    expect(unused([], "live", prices)).toMatch(/prices/);
  });
});

describe("sizes that no log, saw or list has", () => {
  const answer = (...given: Cell[]) => CUTYIELD(...(given.map(one) as [Cell[][], Cell[][], Cell[][], Cell[][]]));
  const with20 = (name: string, value: Cell) => CUTYIELD(...log([[name, value]]));

  it("are refused with the limit", () => {
    expect(answer(300, 12, "4/4", 0.125)[0]![0]).toBeGreaterThan(10_000);
    expect(answer(301, 12, "4/4", 0.125)).toEqual([[refused("#N/A", /diameter \(in\): wanted 0 to 300, got 301/)]]);
    expect(answer(20, 301, "4/4", 0.125)).toEqual([[refused("#N/A", /length \(ft\): wanted 0 to 300, got 301/)]]);
    expect(answer(20, 12, "4/4", 3)).toEqual([[refused("#N/A", /kerf \(in\): wanted 0 to 0\.75, got 3/)]]);
    expect(with20("taper", 12)[0]![0]).toBeGreaterThan(plain);
    expect(with20("taper", 12.5)).toEqual([[refused("#N/A", /taper.*wanted 0 to 12, got 12.5/)]]);
    expect(with20("small end across", 60)[0]![0]).toBeGreaterThan(plain);
    expect(with20("small end across", 61)).toEqual([[refused("#N/A", /small end across.*wanted 6\.66667 to 60/)]]);
    const manyRows = Array.from({ length: 201 }, (_, i) => [1, 1.125, 3, i + 1]);
    expect(CUTYIELD(...log([], "live", manyRows))).toEqual([[refused("#N/A", /rows of products: wanted 1 to 200/)]]);
  });
});
