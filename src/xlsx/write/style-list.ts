import { escaped } from "../escaped";
import { HEADING, MAIN } from "../namespaces";
import type { CellStyle } from "./book";

/** The looks of a workbook being written: each stands in the file once, and cells name it by its number. */
export interface StyleList {
  numberOf(style: CellStyle): number;
  /** A look that only says what differs, for a rule. */
  ruleNumberOf(style: CellStyle): number;
  xml(): string;
}

/** Numbers under this are kept for the formats that every program knows. */
export const FIRST_OWN_FORMAT = 164;
/** Text, which every program knows by its number. */
export const TEXT_FORMAT = 49;

/** The usual look comes first, and the file wants two fills before any other. */
export function styleList(usual: CellStyle): StyleList {
  const fonts = numbered(fontXml(usual));
  const fills = numbered(`<fill><patternFill patternType="none"/></fill>`);
  fills.numberOf(`<fill><patternFill patternType="gray125"/></fill>`);
  const borders = numbered(edgesXml({}));
  const formats = numbered();
  const looks = numbered();
  const rules = numbered();
  const formatNumber = (format?: string) =>
    !format || format === "General" ? 0 : format === "@" ? TEXT_FORMAT : FIRST_OWN_FORMAT + formats.numberOf(format);
  const numberOf = (style: CellStyle) =>
    looks.numberOf(
      lookXml(style, {
        format: formatNumber(style.numberFormat),
        font: fonts.numberOf(fontXml(style)),
        fill: style.fill ? fills.numberOf(solid(style.fill)) : 0,
        border: borders.numberOf(edgesXml(style)),
      }),
    );
  numberOf(usual);
  return {
    numberOf,
    ruleNumberOf: (style) => rules.numberOf(`<dxf>${fontXml(style)}${style.fill ? painted(style.fill) : ""}</dxf>`),
    xml: () =>
      `${HEADING}<styleSheet xmlns="${MAIN}">` +
      counted(
        "numFmts",
        formats.all.map((code, at) => `<numFmt numFmtId="${FIRST_OWN_FORMAT + at}" formatCode="${escaped(code)}"/>`),
      ) +
      counted("fonts", fonts.all) +
      counted("fills", fills.all) +
      counted("borders", borders.all) +
      `<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>` +
      counted("cellXfs", looks.all) +
      `<cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles>` +
      counted("dxfs", rules.all) +
      `</styleSheet>`,
  };
}

/** A look from the numbers of its pieces. */
export function lookXml(
  style: CellStyle,
  { format, font, fill, border }: { format: number; font: number; fill: number; border: number },
): string {
  const ids = `numFmtId="${format}" fontId="${font}" fillId="${fill}" borderId="${border}"`;
  const set = `applyNumberFormat="1" applyFont="1" applyFill="1" applyBorder="1" applyAlignment="1"`;
  return `<xf ${ids} xfId="0" ${set}>${alignmentXml(style)}</xf>`;
}

function numbered(...first: string[]) {
  const all: string[] = [];
  const known = new Map<string, number>();
  const numberOf = (text: string): number => {
    const number = known.get(text) ?? all.push(text) - 1;
    known.set(text, number);
    return number;
  };
  first.forEach(numberOf);
  return { all, numberOf };
}

function counted(list: string, items: readonly string[]): string {
  return items.length === 0 ? "" : `<${list} count="${items.length}">${items.join("")}</${list}>`;
}

export function fontXml({ font = {} }: CellStyle): string {
  const { name, size, bold, italic, underline, color } = font;
  const on = [bold && "<b/>", italic && "<i/>", underline && "<u/>"].filter(Boolean).join("");
  const sized = size ? `<sz val="${size}"/>` : "";
  return `<font>${on}${sized}${color ? rgb("color", color) : ""}${name ? `<name val="${escaped(name)}"/>` : ""}</font>`;
}

export function solid(color: string): string {
  return `<fill><patternFill patternType="solid">${rgb("fgColor", color)}<bgColor indexed="64"/></patternFill></fill>`;
}

/** A rule paints with the colour behind the pattern. */
function painted(color: string): string {
  return `<fill><patternFill patternType="solid">${rgb("bgColor", color)}</patternFill></fill>`;
}

export function edgesXml({ edges = {} }: CellStyle): string {
  const side = (name: "left" | "right" | "top" | "bottom") => {
    const edge = edges[name];
    return edge
      ? `<${name} style="${edge.style}">${edge.color ? rgb("color", edge.color) : ""}</${name}>`
      : `<${name}/>`;
  };
  return `<border>${side("left")}${side("right")}${side("top")}${side("bottom")}<diagonal/></border>`;
}

function alignmentXml({ across, upright, indent, wrap }: CellStyle): string {
  const said = [
    across && `horizontal="${across}"`,
    upright && `vertical="${upright}"`,
    wrap && `wrapText="1"`,
    indent && `indent="${indent}"`,
  ].filter(Boolean);
  return said.length > 0 ? `<alignment ${said.join(" ")}/>` : "";
}

/** Colours in a file begin with how opaque they are. */
function rgb(element: string, color: string): string {
  return `<${element} rgb="FF${color}"/>`;
}
