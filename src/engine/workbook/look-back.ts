import type { IBorderStyleData, IStyleData, Nullable } from "@univerjs/core";
import type { Side } from "../../xlsx/styles";
import type { CellStyle } from "../../xlsx/write/book";
import { ACROSS, BORDERS, SIDES, UPRIGHT, WRAP } from "./looks";

/** How a cell looks in the engine, in the words in which a file is written. */
export function lookBack({ ff, fs, bl, it, ul, cl, bg, ht, vt, tb, bd, n }: IStyleData): CellStyle {
  // The engine names fonts to fall back upon behind the one that is meant.
  const name = ff?.split(",")[0]?.trim();
  const [ink, fill] = [colorOf(cl?.rgb), colorOf(bg?.rgb)];
  const across = wordFor(ACROSS, ht) as CellStyle["across"];
  const upright = wordFor(UPRIGHT, vt) as CellStyle["upright"];
  const edges = bd ? edgesOf(bd as Record<string, IBorderStyleData | null>) : {};
  const pattern = n?.pattern;
  return {
    font: {
      ...(name && { name }),
      ...(fs && { size: fs }),
      ...(bl && { bold: true }),
      ...(it && { italic: true }),
      ...(ul?.s && { underline: true }),
      ...(ink && { color: ink }),
    },
    ...(fill && { fill }),
    ...(across && { across }),
    ...(upright && { upright }),
    ...(tb === WRAP && { wrap: true }),
    ...(Object.keys(edges).length > 0 && { edges }),
    ...(pattern && { numberFormat: formatBack(pattern) }),
  };
}

/** The engine's format for text is the file's sign for it, three times. */
export function formatBack(pattern: string): string {
  return pattern === "@@@" ? "@" : pattern;
}

function edgesOf(drawn: Record<string, IBorderStyleData | null>): NonNullable<CellStyle["edges"]> {
  const edges = Object.entries(SIDES).flatMap(([side, letter]) => {
    const edge = drawn[letter];
    const style = edge && wordFor(BORDERS, edge.s);
    const color = colorOf(edge?.cl?.rgb);
    return style ? [[side as Side, { style, ...(color && { color }) }] as const] : [];
  });
  return Object.fromEntries(edges);
}

function wordFor(codes: Readonly<Record<string, number>>, code: Nullable<number>): string | undefined {
  return Object.entries(codes).find(([, one]) => one === code)?.[0];
}

const SIX_LETTERS = /^#?([0-9a-f]{6})$/i;
const OF_THREE = /^rgba?\(\s*(\d+)\s*,\s*(\d+)\s*,\s*(\d+)/i;

/** `#6b3a16` or `rgb(107, 58, 22)` as a file writes it. */
function colorOf(color: Nullable<string>): string | undefined {
  const letters = SIX_LETTERS.exec(color || "")?.[1];
  if (letters) return letters.toUpperCase();
  const [, ...parts] = OF_THREE.exec(color || "") ?? [];
  return parts.length === 3
    ? parts.map((part) => Number(part).toString(16).padStart(2, "0").toUpperCase()).join("")
    : undefined;
}
