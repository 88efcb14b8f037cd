import { boxesOf, canvasFor, figureAt, sizeText, upReach, type Canvas } from "./canvas";
import { description, headline, legend, titleOf } from "./text";
import { quarterLabels, quarterMarks } from "./quarter-marks";
import { ellipse, escaped, line, piece, round, words, type Dash } from "./shapes";
import type { Board } from "../cut-plan/flitch";
import { inchesText } from "../inches-text";
import type { Outline, Pass, Placed, Plan, View } from "../cut-plan/plan";

/** How tall the tallest view is drawn, whatever the log: about a page. */
const TALL = 720;
const TOP_MARGIN = 84;
const BOTTOM_MARGIN = 48;
const BETWEEN = 20;
const PITH_ARM = 6;

/**
 * The end of the log with the plan's boards, as SVG text: true scale, a tick for every inch of blade height, the butt
 * dashed and the small end solid. The same plan always gives the same bytes.
 */
export function endViewSvg(plan: Plan): string {
  const topIn = Math.max(...plan.views.map(upReach));
  const perIn = TALL / topIn;
  const bedY = TOP_MARGIN + TALL;
  let leftX = 0;
  const drawn = plan.views.map((view) => {
    const canvas = canvasFor(view, labelsOf(plan, view), perIn, leftX, bedY);
    leftX += canvas.width + BETWEEN;
    return [
      ...frame(plan, view, canvas),
      ...guideMarks(view, canvas),
      ...contents(plan, view, canvas),
      ...outlines(view, canvas),
    ].join("\n");
  });
  const width = round(leftX - BETWEEN);
  const height = round(bedY + BOTTOM_MARGIN);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" font-family="sans-serif">`,
    `<title>${escaped(headline(plan))}</title>`,
    `<desc>${escaped(description(plan))}</desc>`,
    `<rect width="${width}" height="${height}" fill="#fff"/>`,
    words(12, 24, headline(plan), 18),
    words(12, 46, legend(plan), 13),
    ...drawn,
    "</svg>",
    "",
  ].join("\n");
}

/** Title, bed line and the ruler of blade heights. */
function frame(plan: Plan, view: View, canvas: Canvas): string[] {
  const right = canvas.labelX - 8;
  return [
    words(canvas.rulerX, 70, titleOf(plan, view), 14),
    line(canvas.rulerX, canvas.y(0), right, canvas.y(0), "solid", 3),
    words(right, canvas.y(0) + 14, "bed", 13, "end"),
    ...ruler(canvas),
  ];
}

/** The ends, drawn over the boards, and a cross at the pith of the butt and of a small end that lies lower. */
function outlines({ butt, smallEnd, middle }: View, { x, y, perIn }: Canvas): string[] {
  const outline = ({ halfAcrossIn, halfUpIn, pithIn }: Outline, dash: Dash, acrossIn = 0) =>
    ellipse(x(acrossIn), y(pithIn), halfAcrossIn * perIn, halfUpIn * perIn, dash);
  const piths = [...new Set([butt.pithIn, smallEnd.pithIn])].flatMap((pithIn) => [
    line(x(0) - PITH_ARM, y(pithIn), x(0) + PITH_ARM, y(pithIn), "solid", 1.5),
    line(x(0), y(pithIn) - PITH_ARM, x(0), y(pithIn) + PITH_ARM, "solid", 1.5),
  ]);
  const ends = [outline(butt, "dashed"), outline(smallEnd, "solid")];
  return [...ends, ...(middle ? [outline(middle, "dotted", middle.acrossIn)] : []), ...piths];
}

/** A tick for every inch above the bed; figures where there is room for them. */
function ruler({ rulerX, y, topIn, perIn }: Canvas): string[] {
  const every = [1, 2, 6, 12].find((inches) => inches * perIn >= 18) ?? 12;
  const ticks = Array.from({ length: Math.floor(topIn) + 1 }, (_, inch) => {
    const figure = inch % every === 0;
    const tick = line(rulerX - (figure ? 12 : 6), y(inch), rulerX, y(inch));
    return figure ? `${tick}\n${words(rulerX - 16, y(inch), String(inch), 12, "end")}` : tick;
  });
  return [line(rulerX, y(0), rulerX, y(topIn)), ...ticks];
}

function guideMarks({ guidesIn: opening }: View, canvas: Canvas): string[] {
  if (opening === undefined) return [];
  const top = canvas.y(canvas.topIn) - 6;
  const sides = [-opening / 2, opening / 2].map((side) =>
    line(canvas.x(side), canvas.y(0), canvas.x(side), top, "dash-dot"),
  );
  return [...sides, words(canvas.x(0), canvas.y(0) + 34, `blade guides open ${inchesText(opening)} in`, 13, "middle")];
}

function contents(plan: Plan, view: View, canvas: Canvas): string[] {
  const ripKerfIn = plan.job.ripKerfSteps * plan.job.stepIn;
  if (view.quarter) return quarterMarks(view, canvas, ripKerfIn);
  const middleOf = (board: Board) => canvas.y((board.highIn + board.lowIn) / 2);
  return [
    ...cantMarks(view, canvas),
    ...view.boards.flatMap(({ board, pass }) => [
      ...boxesOf(board, ripKerfIn).map(({ leftIn, rightIn }) => {
        const [wide, thick] = [rightIn - leftIn, board.highIn - board.lowIn];
        return piece(canvas.x(leftIn), canvas.y(board.highIn), wide * canvas.perIn, thick * canvas.perIn);
      }),
      words(
        canvas.x(figureAt(board, ripKerfIn)) + besidePith(board, view, canvas),
        middleOf(board),
        String(pass),
        canvas.fontInside(board),
        "middle",
      ),
      words(canvas.labelX, middleOf(board), callout(plan, view, pass), canvas.font),
    ]),
    ...openingMarks(plan, view, canvas),
  ];
}

/** Moves a board's figure out of the pith's cross. */
function besidePith(board: Board, { butt, smallEnd }: View, { y, font }: Canvas): number {
  const middle = y((board.highIn + board.lowIn) / 2);
  const crossed = [butt, smallEnd].some(({ pithIn }) => Math.abs(y(pithIn) - middle) < PITH_ARM + font / 2);
  return crossed ? 2 * font : 0;
}

/** All that stands at the right of a view. */
function labelsOf(plan: Plan, view: View): string[] {
  if (view.quarter) return quarterLabels(view);
  return [
    ...view.boards.map(({ pass }) => callout(plan, view, pass)),
    ...openings(plan, view).map(({ label }) => label),
    view.cant ? cantText(view.cant) : "",
  ];
}

/** What stands beside a board: its pass, its size, and what the head scale reads when it is freed. */
function callout({ passes }: Plan, { cant }: View, pass: number): string {
  const { board, bladeHeightIn } = passes[pass - 1]!;
  const over = cant && board!.highIn <= cant.lowIn ? ", turned over" : "";
  return `${pass}: ${sizeText(board!)} at ${inchesText(bladeHeightIn)}${over}`;
}

/** The faces opened first, above the topmost board and, with the log turned over, below the lowest. */
function openings({ passes }: Plan, { boards, cant }: View): { atIn: number; way: 1 | -1; label: string }[] {
  const above = boards.filter(({ board }) => !cant || board.lowIn >= cant.highIn);
  const below = boards.filter(({ board }) => cant && board.highIn <= cant.lowIn);
  const before = (placed: Placed[]) => passes[Math.min(...placed.map(({ pass }) => pass)) - 2];
  const text = (pass: Pass) => `${pass.number}: opening face at ${inchesText(pass.bladeHeightIn)}`;
  const [top, bottom] = [before(above), before(below)];
  return [
    ...(top ? [{ atIn: Math.max(...above.map(({ board }) => board.highIn)), way: 1 as const, label: text(top) }] : []),
    ...(bottom
      ? [
          {
            atIn: Math.min(...below.map(({ board }) => board.lowIn)),
            way: -1 as const,
            label: `${text(bottom)}, turned over`,
          },
        ]
      : []),
  ];
}

/** An opening face is drawn out to the ruler where it is read. */
function openingMarks(plan: Plan, view: View, canvas: Canvas): string[] {
  return openings(plan, view).flatMap(({ atIn, way, label }) => [
    line(canvas.rulerX, canvas.y(atIn), canvas.labelX - 8, canvas.y(atIn), "dotted"),
    words(canvas.labelX, canvas.y(atIn) - way * canvas.font * 0.55, label, canvas.font),
  ]);
}

function cantText({ lowIn, highIn }: NonNullable<View["cant"]>): string {
  return `cant, ${inchesText(highIn - lowIn)} in as sawn, upper face at ${inchesText(highIn)}`;
}

function cantMarks({ cant, sides, butt }: View, canvas: Canvas): string[] {
  if (cant) {
    const chord = (aboveIn: number) =>
      butt.halfAcrossIn * Math.sqrt(Math.max(0, 1 - ((aboveIn - butt.pithIn) / butt.halfUpIn) ** 2));
    const faces = [cant.lowIn, cant.highIn].map((face) =>
      line(canvas.x(-chord(face)), canvas.y(face), canvas.x(chord(face)), canvas.y(face), "solid", 2),
    );
    return [...faces, words(canvas.labelX, canvas.y((cant.lowIn + cant.highIn) / 2), cantText(cant), canvas.font)];
  }
  if (!sides) return [];
  return [-sides.leftIn, sides.rightIn].map((side) => {
    const chord = butt.halfUpIn * Math.sqrt(Math.max(0, 1 - (side / butt.halfAcrossIn) ** 2));
    return line(
      canvas.x(side),
      canvas.y(butt.pithIn - chord),
      canvas.x(side),
      canvas.y(butt.pithIn + chord),
      "solid",
      2,
    );
  });
}
