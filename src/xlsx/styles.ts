import { isOn } from "./parts";
import { attribute, elements, type Element } from "./xml";

/** How a cell looks. Colours are red, green and blue in six letters; what the file leaves open is left out. */
export interface CellLook {
  font?: { name?: string; size?: number; bold: boolean; italic: boolean; underline: boolean; color?: string };
  fill?: string;
  edges: Partial<Record<Side, { style: string; color?: string }>>;
  across?: string;
  upright?: string;
  indent: number;
  wrap: boolean;
  numberFormat: string;
}

export type Side = "top" | "right" | "bottom" | "left";
const SIDES: readonly Side[] = ["top", "right", "bottom", "left"];

/** The formats that a file names by their number alone (ECMA-376 part 1, 18.8.30). */
const KNOWN_FORMATS: Readonly<Record<number, string>> = {
  0: "General",
  ...{ 1: "0", 2: "0.00", 3: "#,##0", 4: "#,##0.00", 9: "0%", 10: "0.00%", 11: "0.00E+00", 12: "# ?/?", 13: "# ??/??" },
  ...{ 14: "mm-dd-yy", 15: "d-mmm-yy", 16: "d-mmm", 17: "mmm-yy", 18: "h:mm AM/PM", 19: "h:mm:ss AM/PM", 20: "h:mm" },
  ...{ 21: "h:mm:ss", 22: "m/d/yy h:mm", 37: "#,##0 ;(#,##0)", 38: "#,##0 ;[Red](#,##0)", 39: "#,##0.00;(#,##0.00)" },
  ...{ 40: "#,##0.00;[Red](#,##0.00)", 45: "mm:ss", 46: "[h]:mm:ss", 47: "mmss.0", 48: "##0.0E+0", 49: "@" },
};

/** The looks of a workbook, in the order in which its cells name them. */
export function readStyles(xml: string): CellLook[] {
  const inside = (list: string, name: string) =>
    elements(xml, list).flatMap((whole) => elements(whole.inside, name).filter(({ depth }) => depth === 0));
  const fonts = inside("fonts", "font").map(fontOf);
  const fills = inside("fills", "fill").map(fillOf);
  const borders = inside("borders", "border").map(edgesOf);
  const formats = new Map(
    elements(xml, "numFmt").map(({ attributes }) => [
      number(attributes, "numFmtId"),
      attribute(attributes, "formatCode"),
    ]),
  );
  return inside("cellXfs", "xf").map(({ attributes, inside: within }) => {
    const format = number(attributes, "numFmtId");
    const font = fonts[number(attributes, "fontId")];
    const fill = fills[number(attributes, "fillId")];
    const alignment = elements(within, "alignment")[0]?.attributes ?? "";
    const [across, upright] = [attribute(alignment, "horizontal"), attribute(alignment, "vertical")];
    return {
      ...(font ? { font } : {}),
      ...(fill ? { fill } : {}),
      edges: borders[number(attributes, "borderId")] ?? {},
      ...(across ? { across } : {}),
      ...(upright ? { upright } : {}),
      indent: number(alignment, "indent"),
      wrap: isOn(attribute(alignment, "wrapText")),
      numberFormat: formats.get(format) ?? KNOWN_FORMATS[format] ?? "General",
    };
  });
}

function fontOf({ inside }: Element): NonNullable<CellLook["font"]> {
  const first = (name: string) => elements(inside, name)[0];
  const has = (name: string) => {
    const found = first(name);
    return found !== undefined && !["0", "false", "none"].includes(attribute(found.attributes, "val") ?? "");
  };
  const [name, size] = ["name", "sz"].map((one) => attribute(first(one)?.attributes ?? "", "val"));
  const color = colorOf(first("color"));
  return {
    ...(name ? { name } : {}),
    ...(size ? { size: Number(size) } : {}),
    ...{ bold: has("b"), italic: has("i"), underline: has("u") },
    ...(color ? { color } : {}),
  };
}

function fillOf({ inside }: Element): string | undefined {
  const pattern = elements(inside, "patternFill")[0];
  return pattern && attribute(pattern.attributes, "patternType") === "solid"
    ? colorOf(elements(pattern.inside, "fgColor")[0])
    : undefined;
}

function edgesOf({ inside }: Element): CellLook["edges"] {
  const drawn = SIDES.flatMap((side) => {
    const edge = elements(inside, side)[0];
    const style = edge && attribute(edge.attributes, "style");
    if (!edge || !style || style === "none") return [];
    const color = colorOf(elements(edge.inside, "color")[0]);
    return [[side, { style, ...(color ? { color } : {}) }]];
  });
  return Object.fromEntries(drawn) as CellLook["edges"];
}

/** A colour written out, opacity first; one of the theme's is left to whoever shows the cell. */
function colorOf(element: Element | undefined): string | undefined {
  return element && attribute(element.attributes, "rgb")?.slice(-6);
}

function number(attributes: string, name: string): number {
  return Number(attribute(attributes, name) ?? 0);
}
