import {
  arrow,
  box,
  circle,
  curve,
  DARK,
  dimension,
  hair,
  label,
  line,
  n,
  name,
  WOOD,
  type Picture,
} from "../../functions/drawing/marks";

/** Tooth to tooth in the picture, and the gullet's depth. */
const PITCH = 90;

export const teeth: Picture = {
  title: "Pitch, gullet and bite",
  desc: "Three teeth of a band. Pitch is from tip to tip; the gullet is as deep as from the tips to its bottom; the bite is what each tooth takes of the wood.",
  height: 185,
  parts: [
    curve(`M20 40H290V90${[2, 1, 0].map((i) => tooth(30 + i * PITCH)).join("")}L20 90Z`, WOOD),
    dimension([62, 142], [62 + PITCH, 142], "pitch", "below"),
    hair([286, 126], [322, 126]),
    hair([296, 90], [322, 90]),
    dimension([314, 90], [314, 126], ""),
    name([336, 80], "gullet", "end"),
    line([20, 136], [290, 136]),
    arrow([120, 24], [60, 24]),
    label([126, 28], "band", "start"),
    dimension([242, 126], [242, 136], ""),
    name([252, 158], "bite", "start"),
    label([20, 172], "wood", "start"),
  ],
};

export const cut: Picture = {
  title: "Kerf, depth and feed",
  desc: "A band in a log, seen from the end. Depth is the width of wood the band goes through, the kerf is the slot's height, the feed is how fast the saw goes along the log.",
  height: 190,
  parts: [
    circle([160, 95], 74, WOOD),
    box(87, 76, 146, 10, DARK),
    line([20, 81], [320, 81]),
    dimension([88, 112], [232, 112], "depth", "below"),
    dimension([262, 76], [262, 86], ""),
    name([274, 70], "kerf", "start"),
    label([170, 186], "feed runs along the log, away from you"),
  ],
};

/** One tooth, drawn from right to left: its back, its tip, and the gullet before it. */
function tooth(x: number): string {
  return `L${n(x + 80)} 90Q${x + 70} 92 ${x + 36} 122L${x + 32} 126L${x + 30} 104Q${x + 24} 90 ${x} 90`;
}
