import {
  box,
  circle,
  DARK,
  dimension,
  hair,
  label,
  line,
  name,
  WOOD,
  type Part,
  type Picture,
} from "../../functions/drawing/marks";

export const grain: Picture = {
  title: "Flat-sawn, quarter-sawn, and the two ways wood shrinks",
  desc: "The end of a log with its growth rings. A flat-sawn board lies along the rings, so its width shrinks tangentially, the most. A quarter-sawn board stands across the rings, so its width shrinks radially, about half as much.",
  height: 210,
  parts: [
    ...[84, 70, 56, 42, 28, 14].map((r, i) => circle([110, 105], r, i === 0 ? WOOD : 0)),
    box(68, 38, 84, 18, DARK),
    box(120, 96, 70, 18, DARK),
    dimension([68, 12], [152, 12], ""),
    hair([152, 12], [204, 24]),
    name([207, 28], "tangential", "start"),
    label([207, 44], "width flat-sawn", "start"),
    dimension([120, 130], [190, 130], ""),
    hair([190, 130], [204, 140]),
    name([207, 144], "radial", "start"),
    label([207, 160], "width quarter-sawn,", "start"),
    label([207, 176], "thickness flat-sawn", "start"),
  ],
};

export const water: Picture = {
  title: "Moisture content is water over oven-dry wood",
  desc: "A bar of two parts, oven-dry wood and water; both together are the wet weight. Moisture is the water as a percent of the oven-dry wood, so it can pass 100.",
  height: 150,
  parts: [
    box(30, 50, 170, 40, DARK),
    box(200, 50, 110, 40),
    ...[225, 250, 275, 300].map((x) => line([x, 50], [x - 25, 90])),
    name([115, 75], "oven dry"),
    `<rect x="229" y="62" width="52" height="17" fill="var(--paper)" stroke="none"/>`,
    name([255, 75], "water"),
    dimension([30, 32], [310, 32], "wet: weight as it is"),
    label([170, 120], "moisture % = 100 × water / oven dry"),
    label([170, 138], "here 65 %"),
  ],
};

export const stack: Picture = {
  title: "A stack on stickers",
  desc: "A stack of boards from the side. Under every layer lies a row of stickers, one above the other, with one at each end and equal gaps of at most the spacing between. The stack stands on a base.",
  height: 216,
  parts: [
    ...[0, 1, 2, 3].flatMap((layer) => [layerOnStickers(140 - layer * 28)]),
    ...stickerPlaces().map((x) => box(x, 158, 12, 24, WOOD)),
    line([20, 182], [250, 182]),
    dimension([64, 34], [115, 34], "spacing"),
    dimension([48, 158], [48, 182], "base", "left"),
    hair([222, 130], [250, 130]),
    hair([222, 148], [250, 148]),
    dimension([242, 130], [242, 148], ""),
    name([254, 144], "thickness", "start"),
    hair([222, 74], [250, 74]),
    hair([222, 64], [250, 64]),
    dimension([242, 64], [242, 74], ""),
    name([254, 74], "sticker", "start"),
    dimension([58, 194], [222, 194], "length", "below"),
  ],
};

/** One layer of boards with the stickers under it; its lower edge on the stickers' upper side. */
function layerOnStickers(y: number): Part[] {
  return [box(58, y - 10, 164, 18, WOOD), ...stickerPlaces().map((x) => box(x, y + 8, 12, 10, DARK))];
}

function stickerPlaces(): number[] {
  return [58, 109, 159, 210];
}
