import { escaped } from "./escaped";
import { Refused } from "./refused";

/** A tag of an XML text and where it stands, from its `<` to behind its `>`. */
export interface Tag {
  /** Without the namespace's prefix. */
  name: string;
  kind: "open" | "close" | "alone";
  attributes: string;
  start: number;
  end: number;
  /** How many elements are open round it. */
  depth: number;
}

const TAG =
  /<(?:!--[\s\S]*?-->|!\[CDATA\[[\s\S]*?\]\]>|\?[\s\S]*?\?>|(\/?)([^\s/>!?]+)((?:"[^"]*"|'[^']*'|[^>"'])*)>)/g;

/** The tags of an XML text in order; comments, instructions and CDATA are passed over. */
export function* tags(xml: string): Generator<Tag> {
  const open: string[] = [];
  for (const found of xml.matchAll(TAG)) {
    const [all, slash, fullName, rest = ""] = found;
    if (!fullName) continue;
    const alone = rest.endsWith("/");
    if (slash && open.pop() !== fullName) throw new Refused("its XML is broken: an element is closed that is not open");
    yield {
      name: fullName.slice(fullName.indexOf(":") + 1),
      kind: slash ? "close" : alone ? "alone" : "open",
      attributes: alone ? rest.slice(0, -1) : rest,
      start: found.index,
      end: found.index + all.length,
      depth: open.length,
    };
    if (!slash && !alone) open.push(fullName);
  }
  if (open.length > 0) throw new Refused("its XML is broken: it ends before its last element does");
}

/** An element with what stands in it. */
export interface Element extends Tag {
  /** From behind the opening tag to the closing one. */
  inside: string;
  insideStart: number;
  /** Behind the closing tag. */
  after: number;
}

/** The elements of a name, in the order in which they end. */
export function elements(xml: string, name: string): Element[] {
  const open: Tag[] = [];
  const found: Element[] = [];
  for (const tag of tags(xml)) {
    if (tag.name !== name) continue;
    if (tag.kind === "open") open.push(tag);
    if (tag.kind === "alone") found.push({ ...tag, inside: "", insideStart: tag.end, after: tag.end });
    const opened = tag.kind === "close" ? open.pop() : undefined;
    if (opened)
      found.push({ ...opened, inside: xml.slice(opened.end, tag.start), insideStart: opened.end, after: tag.end });
  }
  return found;
}

/** The prefix, colon included, that a text writes before the names of its own elements: usually none. */
export function prefixOf(xml: string): string {
  for (const { 1: slash, 2: name } of xml.matchAll(TAG)) if (name && !slash) return /^.*:/.exec(name)?.[0] ?? "";
  return "";
}

/** An attribute's value by its name without prefix; `xmlns:` declarations do not count. */
export function attribute(attributes: string, name: string): string | undefined {
  const found = new RegExp(`(?:^|\\s)(?!xmlns:)(?:[\\w.-]+:)?${name}\\s*=\\s*(?:"([^"]*)"|'([^']*)')`).exec(attributes);
  const value = found?.[1] ?? found?.[2];
  return value === undefined ? undefined : unescaped(value);
}

export function withoutAttribute(attributes: string, name: string): string {
  return attributes.replace(new RegExp(`\\s+${name}\\s*=\\s*(?:"[^"]*"|'[^']*')`), "");
}

const ENTITIES: Record<string, string> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };

/** The text that XML spells with entities and CDATA. */
export function unescaped(xml: string): string {
  if (!/[&<]/.test(xml)) return xml;
  return xml.replace(
    /<!\[CDATA\[([\s\S]*?)\]\]>|<!--[\s\S]*?-->|&(?:#(\d+)|#x([0-9a-f]+)|(\w+));/gi,
    (all, literal?: string, decimal?: string, hex?: string, entity = "") => {
      if (literal !== undefined) return literal;
      if (decimal) return String.fromCodePoint(Number(decimal));
      if (hex) return String.fromCodePoint(Number.parseInt(hex, 16));
      return all.startsWith("<!--") ? "" : (ENTITIES[entity as string] ?? all);
    },
  );
}

export { escaped };

/** In the cells of a workbook a sign that XML cannot hold is `_x000D_`. */
export function cellText(xml: string): string {
  return unescaped(xml).replace(/_x([0-9A-F]{4})_/gi, (_, hex: string) =>
    String.fromCharCode(Number.parseInt(hex, 16)),
  );
}

export function escapedCellText(text: string): string {
  const kept = text.replace(/_x[0-9A-F]{4}_/gi, (spelled) => `_x005F${spelled}`);

  const held = kept.replace(/[\u0000-\u0008\u000B-\u001F\uFFFE\uFFFF]/g, (sign) => {
    return `_x${sign.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}_`;
  });
  return escaped(held);
}

/** Puts texts in the place of stretches of another text; stretches do not overlap. */
export interface Patch {
  start: number;
  end: number;
  text: string;
}

export function patched(text: string, patches: readonly Patch[]): string {
  const parts: string[] = [];
  let at = 0;
  for (const patch of [...patches].sort((a, b) => a.start - b.start || a.end - b.end)) {
    parts.push(text.slice(at, patch.start), patch.text);
    at = patch.end;
  }
  return parts.join("") + text.slice(at);
}

/** What declares a document type may declare entities too; a workbook needs neither. */
export function declaresDocumentType(xml: string): boolean {
  return /^\uFEFF?(?:\s|<\?[\s\S]*?\?>|<!--[\s\S]*?-->)*<!/.test(xml);
}
