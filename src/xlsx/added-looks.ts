import { withLast } from "./relations";
import { readStyles, type CellLook } from "./styles";
import type { CellStyle } from "./write/book";
import { edgesXml, FIRST_OWN_FORMAT, fontXml, lookXml, solid, TEXT_FORMAT } from "./write/style-list";
import { attribute, elements, escaped, patched, prefixOf, withoutAttribute } from "./xml";

/** Looks that are added behind those that a workbook has. */
export interface AddedLooks {
  /** The number of a look that is written out whole. */
  numberOf(style: CellStyle): number;
  /** The number of a look that is another one's but for how it shows numbers. */
  withFormat(look: number, numberFormat: string): number;
  /** The styles with the looks added; nothing where there are none. */
  xml(): string | undefined;
}

/** Adds to a workbook's styles. Nothing that stands there moves, since cells name looks by their place. */
export function addedLooks(stylesXml: string): AddedLooks {
  let xml = stylesXml;
  const known = new Map<string, number>();
  const usual = readStyles(stylesXml)[0]?.font;

  /** The place of an element in its list, behind the last one unless it was added before. */
  function placed(list: string, element: string, child: string): number {
    const key = `${list} ${child}`;
    const at = known.get(key) ?? childrenOf(xml, list, element).length;
    if (!known.has(key)) xml = counting(withLast(xml, list, prefixed(child, prefixOf(xml))), list, at + 1);
    known.set(key, at);
    return at;
  }

  function formatNumber(code?: string): number {
    if (!code || code === "General") return 0;
    if (code === "@") return TEXT_FORMAT;
    const formats = childrenOf(xml, "numFmts", "numFmt").map(({ attributes }) => ({
      number: Number(attribute(attributes, "numFmtId")),
      code: attribute(attributes, "formatCode"),
    }));
    const there = formats.find((one) => one.code === code);
    if (there) return there.number;
    const number = Math.max(FIRST_OWN_FORMAT - 1, ...formats.map((one) => one.number)) + 1;
    xml = withFormatList(xml);
    placed("numFmts", "numFmt", `<numFmt numFmtId="${number}" formatCode="${escaped(code)}"/>`);
    return number;
  }

  const numberOf = (given: CellStyle) => {
    // What a look leaves open is as in the rest of the workbook.
    const style = { ...given, font: { ...usualOf(usual), ...given.font } };
    const pieces = {
      format: formatNumber(style.numberFormat),
      font: placed("fonts", "font", fontXml(style)),
      fill: style.fill ? placed("fills", "fill", solid(style.fill)) : 0,
      border: placed("borders", "border", edgesXml(style)),
    };
    return placed("cellXfs", "xf", lookXml(style, pieces));
  };

  const withFormat = (look: number, numberFormat: string) => {
    const format = formatNumber(numberFormat);
    const own = childrenOf(xml, "cellXfs", "xf")[look];
    if (!own) return numberOf({ numberFormat });
    const attributes = ["numFmtId", "applyNumberFormat"].reduce(withoutAttribute, own.attributes.trimEnd());
    return placed("cellXfs", "xf", `<xf numFmtId="${format}" applyNumberFormat="1"${attributes}>${own.inside}</xf>`);
  };

  return { numberOf, withFormat, xml: () => (xml === stylesXml ? undefined : xml) };
}

function usualOf(font: CellLook["font"]): CellStyle["font"] {
  return { ...(font?.name && { name: font.name }), ...(font?.size && { size: font.size }) };
}

function childrenOf(xml: string, list: string, child: string) {
  const whole = elements(xml, list)[0];
  return whole ? elements(whole.inside, child).filter(({ depth }) => depth === 0) : [];
}

/** A list that says how many it holds says it still. */
function counting(xml: string, list: string, count: number): string {
  const whole = elements(xml, list)[0];
  if (!whole || attribute(whole.attributes, "count") === undefined) return xml;
  const opened = xml.slice(whole.start, whole.end).replace(/(\scount\s*=\s*)(?:"[^"]*"|'[^']*')/, `$1"${count}"`);
  return patched(xml, [{ start: whole.start, end: whole.end, text: opened }]);
}

/** Own number formats stand first of all; a workbook without any has no list for them. */
function withFormatList(xml: string): string {
  if (elements(xml, "numFmts").length > 0) return xml;
  const root = elements(xml, "styleSheet")[0];
  if (!root) return xml;
  const prefix = prefixOf(xml);
  const list = `<${prefix}numFmts count="0"></${prefix}numFmts>`;
  return patched(xml, [{ start: root.end, end: root.end, text: list }]);
}

/** Elements as a workbook writes them that puts a prefix before its own. */
function prefixed(xml: string, prefix: string): string {
  return prefix === "" ? xml : xml.replace(/<(\/?)(?![\w.-]+:)(\w)/g, `<$1${prefix}$2`);
}
