const BARK = "#4a2c17";
const SAPWOOD = "#f0d3a1";
const HEARTWOOD = "#c98a4b";
const RING = "#7d4a22";

/** The end of a log: bark, pale sapwood, dark heart, growth rings off the middle and one drying check. */
export function logEnd(size: number): string {
  const rings = size < 24 ? 1 : size < 40 ? 2 : 3;
  const line = size < 24 ? 5 : size < 40 ? 3.6 : 2.6;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${size}" height="${size}" viewBox="0 0 80 80" style="display:block">`,
    `<path d="${barkEdge()}" fill="${BARK}"/>`,
    `<ellipse cx="40" cy="40" rx="31" ry="30" fill="${SAPWOOD}"/>`,
    `<ellipse cx="38" cy="42" rx="20" ry="19" fill="${HEARTWOOD}"/>`,
    ...growthRings(rings, line),
    `<path d="M38 42 L66 27" stroke="${BARK}" stroke-width="${line}" stroke-linecap="round"/>`,
    `<circle cx="38" cy="42" r="${line}" fill="${BARK}"/>`,
    `</svg>`,
  ].join("\n");
}

function growthRings(count: number, line: number): string[] {
  return Array.from({ length: count }, (_, ring) => {
    const share = (ring + 1) / (count + 1);
    const [rx, ry] = [28 * share, 27 * share];
    return `<ellipse cx="${38 + share}" cy="${42 - share}" rx="${rx}" ry="${ry}" fill="none" stroke="${RING}" stroke-width="${line}"/>`;
  });
}

/** Bark is never a true circle: a closed curve through points that go in and out a little. */
function barkEdge(): string {
  const radii = [39, 37, 38.5, 36.5, 39, 38, 36.5, 39, 37.5, 38.5, 36.5, 38];
  const points = radii.map((radius, i) => {
    const turn = (2 * Math.PI * i) / radii.length;
    return [40 + radius * Math.cos(turn), 40 + radius * Math.sin(turn)] as const;
  });
  const middle = (i: number) => {
    const [a, b] = [points[i % points.length]!, points[(i + 1) % points.length]!];
    return `${((a[0] + b[0]) / 2).toFixed(1)} ${((a[1] + b[1]) / 2).toFixed(1)}`;
  };
  const curves = points.map((_, i) => {
    const corner = points[(i + 1) % points.length]!;
    return `Q${corner[0].toFixed(1)} ${corner[1].toFixed(1)} ${middle(i + 1)}`;
  });
  return `M${middle(0)} ${curves.join(" ")} Z`;
}
