import { boxesOf, canvasFor, figureAt, productOf, sizeText, upReach, type Canvas } from "./canvas";
import { cantMarks, cantText } from "./cant-marks";
import { description, headline, legend, titleOf } from "./text";
import { quarterLabels, quarterMarks } from "./quarter-marks";
import type { Board } from "../../../math/sawing/cut-plan/board";
import type { Outline, Pass, Placed, Plan, View } from "../../../math/sawing/cut-plan/plan";
import { inchesText, quartersText } from "../../../math/inches-text";
import { escaped } from "../../../xlsx/escaped";
import { line, n, onPaper, oval, stroked, widthOf, words, type Point } from "../../drawing/marks";
import { heightText, type HeightUnit } from "../heights";
import { piece, rings, swatch, thin } from "./strokes";

/** How tall the tallest view is drawn, whatever the log: about a page. */
const TALL = 720;
const TOP_MARGIN = 84;
const BOTTOM_MARGIN = 48;
const BETWEEN = 20;
const PRODUCTS_BELOW_BED = 58;
const SWATCH: Point = [26, 14];
const PITH_ARM = 6;
const DASHED = "8 5";
const DOTTED = "2 4";
const DASH_DOT = "12 4 2 4";

/** A plan, and the unit that its blade heights are said in. */
interface Shown extends Plan {
  unit: HeightUnit;
}

/** How the views of a cant lie: beside each other on a wide page, one below the other on a narrow one. */
export type Lay = "beside" | "below";

/**
 * The end of the log with the plan's boards, as SVG text: true scale, a tick for every inch of blade height, the butt
 * dashed and the small end solid. The same plan always gives the same bytes.
 */
export function endViewSvg(plan: Plan, unit: HeightUnit = "in", lay: Lay = "beside"): string {
  const shown: Shown = { ...plan, unit };
  const perIn = TALL / Math.max(...plan.views.map(upReach));
  let [leftX, bedY, width] = [0, TOP_MARGIN + TALL, 0];
  const drawn = plan.views.flatMap((view, at) => {
    if (at > 0 && lay === "below") bedY += TOP_MARGIN + TALL;
    const canvas = canvasFor(view, labelsOf(shown, view), perIn, leftX, bedY);
    width = Math.max(width, leftX + canvas.width);
    if (lay === "beside") leftX += canvas.width + BETWEEN;
    return [
      ...frame(plan, view, canvas),
      ...guideMarks(view, canvas),
      ...contents(shown, view, canvas),
      ...rings([canvas.x(0), canvas.y(view.butt.pithIn)], view.butt.halfAcrossIn * perIn, view.butt.halfUpIn * perIn),
      ...outlines(view, canvas),
    ];
  });
  const list = productList(plan, bedY + PRODUCTS_BELOW_BED);
  const height = bedY + (list.length > 0 ? PRODUCTS_BELOW_BED + BETWEEN : BOTTOM_MARGIN);
  const size = `viewBox="0 0 ${n(width)} ${n(height)}" width="${n(width)}" height="${n(height)}"`;
  const heading = [words([12, 24], headline(plan), 18), words([12, 46], legend(plan), 13)];
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" ${size} role="img" font-family="sans-serif">`,
    `<title>${escaped(headline(plan))}</title>`,
    `<desc>${escaped(description(plan))}</desc>`,
    ...onPaper([...heading, ...drawn, ...list], width, height),
    "</svg>",
    "",
  ].join("\n");
}

/** Which look is which product, where there is more than one. */
function productList({ job }: Plan, y: number): string[] {
  if (job.products.length < 2) return [];
  let x = 12;
  return job.products.flatMap(({ nominalIn, greenIn }, product) => {
    const text = `${quartersText(nominalIn)}, ${inchesText(greenIn)} green`;
    const marks = [...swatch([x, y - SWATCH[1] / 2], SWATCH, product), words([x + SWATCH[0] + 6, y], text, 13)];
    x += SWATCH[0] + 6 + widthOf(text, 13) + BETWEEN;
    return marks;
  });
}

/** Title, bed line and the ruler of blade heights. */
function frame(plan: Plan, view: View, canvas: Canvas): string[] {
  const right = canvas.labelX - 8;
  const bedY = canvas.y(0);
  return [
    words([canvas.rulerX, bedY - TALL - 14], titleOf(plan, view), 14),
    stroked(line([canvas.rulerX, bedY], [right, bedY]), { thick: 3 }),
    words([right, bedY + 14], "bed", 13, "end"),
    ...ruler(canvas),
  ];
}

/** The ends, drawn over the boards, and a cross at the pith of the butt and of a small end that lies lower. */
function outlines({ butt, smallEnd, middle }: View, { x, y, perIn }: Canvas): string[] {
  const outline = ({ halfAcrossIn, halfUpIn, pithIn }: Outline, dashes?: string, acrossIn = 0) =>
    stroked(oval([x(acrossIn), y(pithIn)], halfAcrossIn * perIn, halfUpIn * perIn), { dashes });
  const piths = [...new Set([butt.pithIn, smallEnd.pithIn])].flatMap((pithIn) => [
    line([x(0) - PITH_ARM, y(pithIn)], [x(0) + PITH_ARM, y(pithIn)]),
    line([x(0), y(pithIn) - PITH_ARM], [x(0), y(pithIn) + PITH_ARM]),
  ]);
  const ends = [outline(butt, DASHED), outline(smallEnd)];
  return [...ends, ...(middle ? [outline(middle, DOTTED, middle.acrossIn)] : []), ...piths];
}

/** A tick for every inch above the bed; figures where there is room for them. */
function ruler({ rulerX, y, topIn, perIn }: Canvas): string[] {
  const every = [1, 2, 6, 12].find((inches) => inches * perIn >= 18) ?? 12;
  const ticks = Array.from({ length: Math.floor(topIn) + 1 }, (_, inch) => {
    const figure = inch % every === 0;
    const tick = thin([rulerX - (figure ? 12 : 6), y(inch)], [rulerX, y(inch)]);
    return figure ? [tick, words([rulerX - 16, y(inch)], String(inch), 12, "end")] : [tick];
  });
  return [thin([rulerX, y(0)], [rulerX, y(topIn)]), ...ticks.flat()];
}

function guideMarks({ guidesIn: opening }: View, canvas: Canvas): string[] {
  if (opening === undefined) return [];
  const top = canvas.y(canvas.topIn) - 6;
  const sides = [-opening / 2, opening / 2].map((side) =>
    thin([canvas.x(side), canvas.y(0)], [canvas.x(side), top], DASH_DOT),
  );
  return [
    ...sides,
    words([canvas.x(0), canvas.y(0) + 34], `blade guides open ${inchesText(opening)} in`, 13, "middle"),
  ];
}

function contents(plan: Shown, view: View, canvas: Canvas): string[] {
  const ripKerfIn = plan.job.ripKerfSteps * plan.job.stepIn;
  if (view.quarter) return quarterMarks(plan, view, canvas, ripKerfIn);
  return [
    ...cantMarks(view, canvas),
    ...view.boards.flatMap((placed) => boardMarks(placed, plan, view, canvas, ripKerfIn)),
    ...firstCutMarks(plan, view, canvas),
  ];
}

/** A flitch as it lay in the log, with its pass in it and its size beside it. */
function boardMarks({ board, pass }: Placed, plan: Shown, view: View, canvas: Canvas, ripKerfIn: number): string[] {
  const middleY = canvas.y((board.highIn + board.lowIn) / 2);
  const figureX = canvas.x(figureAt(board, ripKerfIn)) + besidePith(board, view, canvas);
  const product = productOf(plan, board);
  return [
    `<g><title>${escaped(callout(plan, view, pass))}</title>`,
    ...boxesOf(board, ripKerfIn).flatMap(({ leftIn, rightIn }) => {
      const [wide, thick] = [rightIn - leftIn, board.highIn - board.lowIn];
      return piece(canvas.x(leftIn), canvas.y(board.highIn), wide * canvas.perIn, thick * canvas.perIn, product);
    }),
    "</g>",
    words([figureX, middleY], String(pass), canvas.fontInside(board), "middle"),
    words([canvas.labelX, middleY], callout(plan, view, pass), canvas.font),
  ];
}

/** Moves a board's figure out of the pith's cross. */
function besidePith(board: Board, { butt, smallEnd }: View, { y, font }: Canvas): number {
  const middle = y((board.highIn + board.lowIn) / 2);
  const crossed = [butt, smallEnd].some(({ pithIn }) => Math.abs(y(pithIn) - middle) < PITH_ARM + font / 2);
  return crossed ? 2 * font : 0;
}

/** All that stands at the right of a view. */
function labelsOf(plan: Shown, view: View): string[] {
  if (view.quarter) return quarterLabels(view);
  return [
    ...view.boards.map(({ pass }) => callout(plan, view, pass)),
    ...firstCuts(plan, view).map(({ label }) => label),
    view.cant ? cantText(view.cant) : "",
  ];
}

/** What stands beside a board: its pass, its size, and what the head scale reads when it is freed. */
function callout({ passes, unit }: Shown, { cant }: View, pass: number): string {
  const { board, bladeHeightIn } = passes[pass - 1]!;
  const over = cant && board!.highIn <= cant.lowIn ? ", turned over" : "";
  return `${pass}: ${sizeText(board!)} at ${scaleText(unit, bladeHeightIn)}${over}`;
}

/** Inches are said once, in the legend. */
function scaleText(unit: HeightUnit, heightIn: number): string {
  return unit === "in" ? inchesText(heightIn) : `${heightText(unit, heightIn)} ${unit}`;
}

/** The first cuts: above the topmost board and, with the log turned over, below the lowest. */
function firstCuts(plan: Shown, { boards, cant }: View): { atIn: number; way: 1 | -1; label: string }[] {
  const above = boards.filter(({ board }) => !cant || board.lowIn >= cant.highIn);
  const below = boards.filter(({ board }) => cant && board.highIn <= cant.lowIn);
  const before = (placed: Placed[]) => plan.passes[Math.min(...placed.map(({ pass }) => pass)) - 2];
  const text = (pass: Pass) => `${pass.number}: first cut at ${scaleText(plan.unit, pass.bladeHeightIn)}`;
  const [top, bottom] = [before(above), before(below)];
  const highest = Math.max(...above.map(({ board }) => board.highIn));
  const lowest = Math.min(...below.map(({ board }) => board.lowIn));
  return [
    ...(top ? [{ atIn: highest, way: 1 as const, label: text(top) }] : []),
    ...(bottom ? [{ atIn: lowest, way: -1 as const, label: `${text(bottom)}, turned over` }] : []),
  ];
}

/** A first cut is drawn out to the ruler where it is read. */
function firstCutMarks(plan: Shown, view: View, canvas: Canvas): string[] {
  return firstCuts(plan, view).flatMap(({ atIn, way, label }) => {
    const y = canvas.y(atIn);
    return [
      thin([canvas.rulerX, y], [canvas.labelX - 8, y], DOTTED),
      words([canvas.labelX, y - way * canvas.font * 0.55], label, canvas.font),
    ];
  });
}
