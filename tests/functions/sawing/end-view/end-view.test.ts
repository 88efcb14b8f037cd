import { describe, expect, it } from "vitest";
import { validateXML } from "xmllint-wasm";
import type { CutRequest } from "../../../../src/math/sawing/cut-plan/cut-request";
import { endViewSvg } from "../../../../src/functions/sawing/end-view/end-view";
import { planCut } from "../../../../src/math/sawing/cut-plan/plan-cut";
import { quartersText } from "../../../../src/math/inches-text";
import { WORKED_PLANS } from "../../../math/sawing/cut-plan/worked-plans";

const drawing = (request: CutRequest) => endViewSvg(planCut(request));
const svgs = WORKED_PLANS.map(({ request }) => drawing(request));

/** A 20 in log sawn live into products of so many thicknesses. */
const thin = (products: number) =>
  drawing({
    diameterIn: 20,
    lengthFt: 10,
    kerfIn: 0.125,
    products: [{ thickness: 2 }, { thickness: 1 }].slice(0, products),
  });

/** The attributes of every mark of a kind. */
function marks(svg: string, kind: string): Record<string, string>[] {
  return [...svg.matchAll(new RegExp(`<${kind} ([^>]*?)/?>`, "g"))].map(([, attributes]) =>
    Object.fromEntries([...attributes!.matchAll(/([\w-]+)="([^"]*)"/g)].map(([, name, value]) => [name!, value!])),
  );
}
const pieces = (svg: string) => marks(svg, "rect").filter(({ x }) => x !== undefined);
const texts = (svg: string) => [...svg.matchAll(/<text [^>]*>([^<]*)<\/text>/g)].map(([, text]) => text!);

describe("the end view", () => {
  it("is well-formed XML of its own: no script, no style sheet, no address but the SVG name", async () => {
    for (const svg of svgs) {
      const { errors } = await validateXML({ xml: { fileName: "plan.svg", contents: svg }, schema: ANY_ELEMENT });
      expect(errors.filter(({ message }) => !/No matching global declaration|not expected/.test(message))).toEqual([]);
      expect(svg).not.toMatch(/<script|<style|<image|href|url\(|@import|on\w+=/);
      expect(svg.match(/https?:[^"]*/g)).toEqual(["http://www.w3.org/2000/svg"]);
    }
  });

  it("is the same bytes for the same plan", () => {
    WORKED_PLANS.forEach(({ request }, i) => expect(drawing(request)).toBe(svgs[i]));
  });

  it("says in title and description what it shows", () => {
    expect(svgs[0]).toContain("<title>16 in log, 8 ft 4 in long, sawn live: 95.5 board feet</title>");
    expect(svgs[0]).toContain("13 passes, 12 boards, 95.50 board feet out of a log of 148.91.</desc>");
    expect(svgs[4]).toContain("40 boards, 155.00 board feet");
  });

  it("shows every board once, numbered, with its size and blade height beside it", () => {
    WORKED_PLANS.forEach(({ request }, i) => {
      const plan = planCut(request);
      const copies = plan.passes.reduce(
        (sum, pass) => sum + (pass.board ? pass.board.widthsIn.length * pass.copies : 0),
        0,
      );
      expect(pieces(svgs[i]!)).toHaveLength(copies);
      const shown = texts(svgs[i]!);
      for (const { number, board } of plan.passes) {
        if (!board) continue;
        expect(shown).toContain(String(number));
        expect(
          shown.some((text) =>
            text.startsWith(`${number}: ${quartersText(board.product.nominalIn)} × ${board.widthsIn[0]! | 0}`),
          ),
        ).toBe(true);
      }
    });
    expect(texts(svgs[0]!)).toContain("2: 4/4 × 6 × 7 ft at 14-3/4");
    expect(texts(svgs[0]!)).toContain("1: first cut at 16");
    expect(texts(endViewSvg(planCut(WORKED_PLANS[0]!.request), "mm"))).toContain("1: first cut at 406.4 mm");
  });

  it("is to scale: round ends round, boards as wide and high as sawn, the ruler's inches theirs", () => {
    const [small, butt] = marks(svgs[0]!, "ellipse").sort((a, b) => Number(a["rx"]) - Number(b["rx"]));
    expect(small!["rx"]).toBe(small!["ry"]);
    const perIn = Number(small!["rx"]) / 8;
    expect(Number(butt!["rx"]) / perIn).toBeCloseTo((16 + (0.5 * 100) / 48) / 2, 3);
    const ticks = [...svgs[0]!.matchAll(/ d="M52 ([\d.]+)L64 \1"/g)].map(([, y]) => Number(y));
    expect(ticks).toHaveLength(18);
    expect(ticks[0]! - ticks[1]!).toBeCloseTo(perIn, 1);
    expect(pieces(svgs[0]!).map(({ width }) => Math.round(Number(width) / perIn))).toEqual([
      6, 10, 12, 14, 15, 15, 15, 15, 14, 12, 10, 6,
    ]);
    for (const { height } of pieces(svgs[0]!)) expect(Number(height) / perIn).toBeCloseTo(1.125, 3);
  });

  it("has every full-length board inside the small end", () => {
    const [small] = marks(svgs[0]!, "ellipse").sort((a, b) => Number(a["rx"]) - Number(b["rx"]));
    const [cx, cy, r] = [Number(small!["cx"]), Number(small!["cy"]), Number(small!["rx"])];
    for (const { x, y, width, height } of pieces(svgs[0]!).slice(1))
      for (const px of [Number(x), Number(x) + Number(width)])
        for (const py of [Number(y), Number(y) + Number(height)])
          expect(Math.hypot(px - cx, py - cy)).toBeLessThan(r + 0.05);
  });

  it("dashes the butt, draws the small end solid, and dots the middle of a bowed log", () => {
    for (const svg of svgs) {
      const dashes = marks(svg, "ellipse").map((ellipse) => ellipse["stroke-dasharray"]);
      expect(dashes).toContain("8 5");
      expect(dashes).toContain(undefined);
    }
    expect(marks(svgs[5]!, "ellipse")).toHaveLength(3);
    expect(svgs[5]).toContain("middle dotted");
  });

  it("shows a cant from two sides, a quarter-sawn log in four quarters, and the guides where given", () => {
    expect(texts(svgs[3]!)).toContain("cant turned a quarter");
    expect(marks(svgs[3]!, "ellipse")).toHaveLength(4);
    expect(pieces(svgs[4]!)).toHaveLength(40);
    expect(texts(svgs[4]!).filter((text) => text === "7")).toHaveLength(2); // the ruler's inch and pass 7
    expect(texts(svgs[2]!)).toContain("blade guides open 30 in");
    expect(texts(svgs[0]!).join()).not.toContain("guides");
  });

  it("tells the boards of each product apart by tint and, in black and white, by hatching, with a list below", () => {
    const two = svgs.map((svg, i) => ({ svg, plan: planCut(WORKED_PLANS[i]!.request) }));
    for (const { svg, plan } of two.filter(({ plan }) => plan.job.products.length > 1)) {
      const used = new Set(plan.passes.flatMap(({ board }) => (board ? [board.product.nominalIn] : [])));
      const tints = pieces(svg).map(({ fill }) => fill);
      expect(new Set(tints).size).toBe(used.size);
      for (const { nominalIn } of plan.job.products)
        expect(texts(svg).some((text) => text.startsWith(`${quartersText(nominalIn)}, `))).toBe(true);
    }
    const [first, second] = [thin(1), thin(2)];
    expect(first).not.toContain('stroke-opacity="0.35"');
    expect(second.match(/stroke-opacity="0.35"/g)!.length).toBeGreaterThan(2);
  });

  it("hatches a piece to its very edge and never past it", () => {
    const lines = [...thin(2).matchAll(/stroke-opacity="0.35" d="([^"]+)"/g)].map(([, d]) => d!);
    const boxes = pieces(thin(2)).map(({ x, y, width, height }) => [x, y, width, height].map(Number));
    const points = lines.flatMap((d) =>
      [...d.matchAll(/[ML]([\d.]+) ([\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]),
    );
    expect(points.length).toBeGreaterThan(100);
    for (const [px, py] of points) {
      const onEdge = boxes.some(([x, y, w, h]) => {
        const [right, down] = [px! - x!, py! - y!];
        const inside = right >= -0.1 && right <= w! + 0.1 && down >= -0.1 && down <= h! + 0.1;
        return inside && [right, w! - right, down, h! - down].some((off) => Math.abs(off) < 0.11);
      });
      expect(onEdge || py! > Math.max(...boxes.map(([, y, , h]) => y! + h!)), `${px} ${py}`).toBe(true);
    }
  });

  it("lays the views of a cant below each other for a narrow page, the same marks a page lower", () => {
    const cant = planCut(WORKED_PLANS[3]!.request);
    const [beside, below] = [endViewSvg(cant), endViewSvg(cant, "in", "below")];
    const [wide, tall] = [beside, below].map((svg) => marks(svg, "svg")[0]!);
    expect(Number(tall!["width"])).toBeLessThan(0.6 * Number(wide!["width"]));
    expect(texts(below).sort()).toEqual(texts(beside).sort());
    expect(marks(below, "ellipse").map(({ cx }) => cx)).toEqual(
      marks(below, "ellipse").map(() => marks(below, "ellipse")[0]!["cx"]),
    );
  });

  it("draws a log that gives no board, and nothing in colour but the boards", () => {
    const empty = drawing({ diameterIn: 2, lengthFt: 8, kerfIn: 0.125, products: [{ thickness: 1 }] });
    expect(pieces(empty)).toHaveLength(0);
    expect(empty).not.toMatch(/NaN|Infinity|undefined/);
    for (const svg of svgs) {
      const tints = new Set(pieces(svg).map(({ fill }) => fill));
      const others = [...svg.matchAll(/#[0-9a-f]+/g)].map(([colour]) => colour).filter((colour) => !tints.has(colour));
      expect(new Set(others)).toEqual(new Set(["#fff", "#000"]));
      expect(svg).not.toMatch(/NaN|Infinity|undefined/);
    }
  });
});

/** No schema of SVG is at hand: a schema that knows nothing lets only the form be judged. */
const ANY_ELEMENT = {
  fileName: "any.xsd",
  contents: '<xs:schema xmlns:xs="http://www.w3.org/2001/XMLSchema"><xs:element name="none"/></xs:schema>',
};
