import {
  box,
  curve,
  DARK,
  dashed,
  dimension,
  hair,
  label,
  name,
  oval,
  shape,
  WOOD,
  type Part,
  type Picture,
} from "../../functions/drawing/marks";

export const board: Picture = {
  title: "Thickness, width and length of a board",
  desc: "A board lying flat, seen from above one corner. Its upper face is shaded: surface measure is that face in square feet. Times the thickness in inches it makes board feet.",
  height: 170,
  parts: [
    shape(
      [
        [72, 108],
        [122, 58],
        [326, 58],
        [276, 108],
      ],
      DARK,
    ),
    shape(
      [
        [72, 108],
        [276, 108],
        [276, 126],
        [72, 126],
      ],
      WOOD,
    ),
    shape([
      [276, 108],
      [326, 58],
      [326, 76],
      [276, 126],
    ]),
    label([199, 88], "surface measure"),
    dimension([72, 146], [276, 146], "length", "below"),
    dimension([46, 108], [46, 126], ""),
    name([4, 156], "thickness", "start"),
    dimension([60, 102], [110, 52], ""),
    name([78, 72], "width", "end"),
  ],
};

export const dressed: Picture = {
  title: "Nominal size and dressed size",
  desc: "The end of a two-by-six. The dashed outline is the nominal size it is called by; the shaded board inside is what is left when it is dry and dressed.",
  height: 150,
  parts: [
    dashed([60, 36], [276, 36], [276, 108], [60, 108], [60, 36]),
    box(69, 45, 198, 54, WOOD),
    label([168, 26], "nominal, such as 2x6"),
    label([168, 77], "dry and dressed"),
    dimension([69, 124], [267, 124], "width", "below"),
    hair([30, 45], [69, 45]),
    hair([30, 99], [69, 99]),
    dimension([36, 45], [36, 99], ""),
    name([4, 118], "thickness", "start"),
  ],
};

/** Where the boards of a drawn layer meet. */
const BOARD_EDGES = [38, 70, 114, 141, 170];

export const pack: Picture = {
  title: "A bundle by its layers",
  desc: "A bundle of lumber seen from one end and the side: four layers of boards as wide as the bundle, with small gaps between the boards. Fill is the share of a layer that is wood.",
  height: 185,
  parts: [
    ...[0, 1, 2, 3].map((layer) => layerOfBoards(112 - layer * 17)),
    shape(
      [
        [50, 61],
        [116, 24],
        [322, 24],
        [256, 61],
      ],
      WOOD,
    ),
    ...BOARD_EDGES.map((x) => hair([x + 50, 61], [x + 116, 24])),
    shape([
      [256, 61],
      [322, 24],
      [322, 92],
      [256, 129],
    ]),
    ...[1, 2, 3].map((layer) => hair([256, 61 + layer * 17], [322, 24 + layer * 17])),
    dimension([50, 146], [256, 146], "width", "below"),
    dimension([266, 137], [332, 100], ""),
    name([336, 138], "length", "end"),
    dimension([40, 61], [40, 129], ""),
    name([4, 52], "layers", "start"),
  ],
};

export const round: Picture = {
  title: "A slice across a log",
  desc: "A round or oval slice. Two diameters are taken at right angles; the thickness is that of the slice.",
  height: 180,
  parts: [
    curve("M40 84V104A110 60 0 0 0 260 104V84", WOOD),
    oval([150, 84], 110, 60, WOOD),
    dimension([40, 84], [260, 84], ""),
    name([204, 78], "diameter1"),
    dimension([150, 24], [150, 144], ""),
    name([157, 54], "diameter2", "start"),
    hair([260, 104], [286, 104]),
    hair([260, 84], [286, 84]),
    dimension([280, 84], [280, 104], ""),
    name([336, 134], "thickness", "end"),
  ],
};

/** Widths of the drawn slab in inches, at five equal steps. */
const SLAB_WIDTHS = [30, 24, 21, 20, 25];

export const slab: Picture = {
  title: "A live-edge slab read at equal steps",
  desc: "A slab from above with wavy edges. Its width is read at both ends and at points between them that lie equally far apart along the length; here five readings.",
  height: 190,
  parts: [
    shape(slabOutline(), WOOD),
    ...SLAB_WIDTHS.map((width, i) => dimension([slabX(i), 85 - width * 2], [slabX(i), 85 + width * 2], String(width))),
    ...SLAB_WIDTHS.map((width, i) => hair([slabX(i), 85 + width * 2], [slabX(i), 160])),
    ...[0, 1, 2, 3].map((i) => dimension([slabX(i), 154], [slabX(i + 1), 154], "")),
    label([160, 176], "equal steps; the widths from end to end"),
  ],
};

function layerOfBoards(y: number): Part[] {
  return [box(50, y, 206, 17, WOOD), ...BOARD_EDGES.map((x) => `<path stroke-width="2.5" d="M${50 + x} ${y}v17"/>`)];
}

function slabX(i: number): number {
  return 20 + i * 70;
}

/** The edges run through the readings and wander a little between them. */
function slabOutline(): (readonly [number, number])[] {
  const steps = Array.from({ length: 41 }, (_, k) => k / 10);
  const half = (t: number) => {
    const i = Math.min(3, Math.floor(t));
    const f = t - i;
    const eased = f * f * (3 - 2 * f);
    return 2 * (SLAB_WIDTHS[i]! + (SLAB_WIDTHS[i + 1]! - SLAB_WIDTHS[i]!) * eased) + Math.sin(Math.PI * f * 2) * 2;
  };
  const upper = steps.map((t) => [slabX(t), 85 - half(t)] as const);
  const lower = steps.map((t) => [slabX(t), 85 + half(t)] as const).reverse();
  return [...upper, ...lower];
}
