import { escaped } from "./escaped";
import { Refused } from "./refused";

/** A tag of an XML text and where it stands, from its `<` to behind its `>`. */
export interface Tag {
  /** Without the namespace's prefix. */
  name: string;
  /** The prefix, colon included; usually none. */
  prefix: string;
  kind: "open" | "close" | "alone";
  attributes: string;
  start: number;
  end: number;
  /** How many elements are open round it. */
  depth: number;
}

/** A tag behind its `<`. No raw `<` may stand in it, so that a broken one ends the search at the next. */
const TAG = /(\/?)((?:[^\s/>!?<:]+:)?)([^\s/>!?<:]+)((?:"[^"<]*"|'[^'<]*'|[^<>"'])*)>/y;

/** What is passed over, from its first signs to its last. */
const PASSED_OVER: readonly [from: string, to: string][] = [
  ["<!--", "-->"],
  ["<![CDATA[", "]]>"],
  ["<?", "?>"],
];

/** The tags of an XML text in order; comments, instructions and CDATA are passed over. Each sign is looked at once. */
export function* tags(xml: string): Generator<Tag> {
  const open: string[] = [];
  for (let start = xml.indexOf("<"); start >= 0;) {
    const passed = PASSED_OVER.find(([from]) => xml.startsWith(from, start));
    if (passed) {
      const end = xml.indexOf(passed[1], start + passed[0].length);
      if (end < 0) throw broken("it ends within a comment");
      start = xml.indexOf("<", end);
      continue;
    }
    TAG.lastIndex = start + 1;
    const [all, slash, prefix = "", name = "", rest = ""] = TAG.exec(xml) ?? [];
    if (all === undefined) throw broken("a tag does not end");
    const end = start + 1 + all.length;
    const alone = rest.endsWith("/");
    if (slash && open.pop() !== prefix + name) throw broken("an element is closed that is not open");
    const kind = slash ? "close" : alone ? "alone" : "open";
    yield { name, prefix, kind, attributes: alone ? rest.slice(0, -1) : rest, start, end, depth: open.length };
    if (kind === "open") open.push(prefix + name);
    start = xml.indexOf("<", end);
  }
  if (open.length > 0) throw broken("it ends before its last element does");
}

function broken(how: string): Refused {
  return new Refused(`its XML is broken: ${how}`);
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
  for (const { prefix } of tags(xml)) return prefix;
  return "";
}

/** An attribute's value by its name without prefix; `xmlns:` declarations do not count. */
export function attribute(attributes: string, name: string): string | undefined {
  const found = patternOf(name).exec(attributes);
  const value = found?.[1] ?? found?.[2];
  return value === undefined ? undefined : unescaped(value);
}

const PATTERNS = new Map<string, RegExp>();

/** Made once for each name: they are asked for millions of times. */
function patternOf(name: string): RegExp {
  const pattern =
    PATTERNS.get(name) ?? new RegExp(`(?:^|\\s)(?!xmlns:)(?:[\\w.-]+:)?${name}\\s*=\\s*(?:"([^"]*)"|'([^']*)')`);
  PATTERNS.set(name, pattern);
  return pattern;
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

/**
 * What declares a document type may declare entities too; a workbook needs neither. Comments and instructions may stand
 * before it, as many as one likes: each is passed over once.
 */
export function declaresDocumentType(xml: string): boolean {
  for (let at = xml.search(/[^\s\uFEFF]/); at >= 0;) {
    const closing = xml.startsWith("<?", at) ? "?>" : xml.startsWith("<!--", at) ? "-->" : undefined;
    if (!closing) return xml.startsWith("<!", at);
    const end = xml.indexOf(closing, at);
    if (end < 0) return false;
    at = end + closing.length;
    while (/\s/.test(xml.charAt(at))) at++;
  }
  return false;
}
