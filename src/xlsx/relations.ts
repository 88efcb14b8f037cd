import type { Package } from "./package";
import { attribute, elements, escaped, patched } from "./xml";
import { HEADING, wordsOf } from "./namespaces";

/** What one part of the file says about another. */
export interface Relation {
  id: string;
  /** The last word of the relation's address: worksheet, comments, table. */
  type: string;
  /** The other part's name; an address where it lies outside the file. */
  target: string;
  outside: boolean;
}

const NAMESPACE = "http://schemas.openxmlformats.org/package/2006/relationships";
const CONTENT_TYPES = "[Content_Types].xml";

export function relationsOf(file: Package, part: string): Relation[] {
  const home = relationsPart(part);
  if (!file.has(home)) return [];
  return elements(file.text(home), "Relationship").map(({ attributes }) => {
    const target = attribute(attributes, "Target") ?? "";
    const outside = attribute(attributes, "TargetMode") === "External";
    return {
      id: attribute(attributes, "Id") ?? "",
      type: (attribute(attributes, "Type") ?? "").split("/").at(-1) ?? "",
      target: outside ? target : resolved(part, target),
      outside,
    };
  });
}

/** Says that a part uses another, and answers the relation's id. */
export function relate(file: Package, part: string, type: string, target: string): string {
  const home = relationsPart(part);
  const xml = file.has(home) ? file.text(home) : `${HEADING}<Relationships xmlns="${NAMESPACE}"></Relationships>`;
  const used = new Set(relationsOf(file, part).map(({ id }) => id));
  let number = used.size + 1;
  while (used.has(`rId${number}`)) number++;
  const relation = `<Relationship Id="rId${number}" Type="${wordsOf(file).office}/${type}" Target="${escaped(relative(part, target))}"/>`;
  file.put(home, withLast(xml, "Relationships", relation));
  return `rId${number}`;
}

/** Takes a part out of the file with everything that mentions it. */
export function removePart(file: Package, part: string, mentionedBy: string): void {
  const home = relationsPart(mentionedBy);
  const cut = (xml: string, name: string, isIt: (attributes: string) => boolean) =>
    patched(
      xml,
      elements(xml, name)
        .filter(({ attributes }) => isIt(attributes))
        .map(({ start, after }) => ({ start, end: after, text: "" })),
    );
  const targets = (attributes: string) => resolved(mentionedBy, attribute(attributes, "Target") ?? "") === part;
  const names = (attributes: string) => attribute(attributes, "PartName") === `/${part}`;
  file.put(home, cut(file.text(home), "Relationship", targets));
  file.put(CONTENT_TYPES, cut(file.text(CONTENT_TYPES), "Override", names));
  file.remove(part);
}

/** What a part holds: said of the part itself, or of all with its ending. */
export function contentTypeOf(file: Package, part: string): string | undefined {
  const xml = file.text(CONTENT_TYPES);
  const said = (element: string, key: string, wanted: string) => {
    const found = elements(xml, element).find(
      ({ attributes }) => attribute(attributes, key)?.toLowerCase() === wanted.toLowerCase(),
    );
    return found && attribute(found.attributes, "ContentType");
  };
  return (
    said("Override", "PartName", `/${part}`) ?? said("Default", "Extension", part.slice(part.lastIndexOf(".") + 1))
  );
}

export function declarePart(file: Package, part: string, contentType: string): void {
  const override = `<Override PartName="/${escaped(part)}" ContentType="${contentType}"/>`;
  file.put(CONTENT_TYPES, withLast(file.text(CONTENT_TYPES), "Types", override));
}

/** Declares what files with an ending hold, unless the file says so already. */
export function declareEnding(file: Package, ending: string, contentType: string): void {
  const xml = file.text(CONTENT_TYPES);
  const known = elements(xml, "Default").map(({ attributes }) => attribute(attributes, "Extension")?.toLowerCase());
  if (known.includes(ending)) return;
  file.put(CONTENT_TYPES, withLast(xml, "Types", `<Default Extension="${ending}" ContentType="${contentType}"/>`));
}

/** A part name that is still free: `xl/comments` and `.xml` to xl/comments3.xml. */
export function freePart(file: Package, before: string, after: string): string {
  let number = 1;
  while (file.has(`${before}${number}${after}`)) number++;
  return `${before}${number}${after}`;
}

/** The text with an element put last into another. */
export function withLast(xml: string, parent: string, child: string): string {
  const found = elements(xml, parent).at(-1);
  if (!found) return xml;
  if (found.kind === "open")
    return patched(xml, [
      { start: found.insideStart + found.inside.length, end: found.insideStart + found.inside.length, text: child },
    ]);
  const opened = xml.slice(found.start, found.end).replace(/\s*\/>$/, ">");
  const name = /^<([^\s/>]+)/.exec(opened)?.[1] ?? parent;
  return patched(xml, [{ start: found.start, end: found.end, text: `${opened}${child}</${name}>` }]);
}

/** Where a part's relations stand. */
export function relationsPart(part: string): string {
  const slash = part.lastIndexOf("/") + 1;
  return `${part.slice(0, slash)}_rels/${part.slice(slash)}.rels`;
}

/** `../tables/table1.xml`, said by a sheet, to xl/tables/table1.xml. */
function resolved(part: string, target: string): string {
  if (target.startsWith("/")) return target.slice(1);
  const path = part.split("/").slice(0, -1);
  for (const step of target.split("/")) {
    if (step === "..") path.pop();
    else if (step !== ".") path.push(step);
  }
  return path.join("/");
}

function relative(part: string, target: string): string {
  const [from, to] = [part.split("/").slice(0, -1), target.split("/")];
  let same = 0;
  while (same < from.length && from[same] === to[same]) same++;
  return [...from.slice(same).map(() => ".."), ...to.slice(same)].join("/");
}
