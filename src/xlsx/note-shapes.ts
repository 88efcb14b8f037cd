import { LAST_COLUMN, LAST_ROW } from "../formula/addresses";
import { Refused } from "./refused";
import { attribute, elements, patched, tags, type Patch, type Tag } from "./xml";

/** Spreadsheets draw a note as a shape of an older drawing language (VML), its numbers shared out in thousands. */
const IDS_IN_A_BLOCK = 1024;
const NAMESPACES: [string, string][] = [
  ["v", "urn:schemas-microsoft-com:vml"],
  ["o", "urn:schemas-microsoft-com:office:office"],
  ["x", "urn:schemas-microsoft-com:office:excel"],
];
const SHAPE_TYPE =
  '<v:shapetype id="_x0000_t202" coordsize="21600,21600" o:spt="202" path="m,l,21600r21600,l21600,xe">' +
  '<v:stroke joinstyle="miter"/><v:path gradientshapeok="t" o:connecttype="rect"/></v:shapetype>';

/** The cell that a note hangs on. */
interface Place {
  row: number;
  column: number;
}

/** The drawing of a sheet's notes with a hidden shape for each new note; `others` are all the drawings of the file. */
export function withNoteShapes(drawing: string | undefined, notes: readonly Place[], others: readonly string[]) {
  const first = freeBlock(others);
  const blocks = Math.ceil(notes.length / (IDS_IN_A_BLOCK - 1));
  const numbers = Array.from({ length: blocks }, (_, at) => first + at).join(",");
  const known = drawing ?? `<xml${declared(NAMESPACES)}></xml>`;
  const [root] = elements(known, "xml");
  if (root?.kind !== "open") throw new Refused("the drawing of its notes is broken");
  // Our elements declare the prefixes that the drawing does not, or uses for something else.
  const missing = declared(NAMESPACES.filter((namespace) => !isDeclared(known, namespace)));
  const [layout] = elements(known, "idmap");
  const heading = `<o:shapelayout${missing} v:ext="edit"><o:idmap v:ext="edit" data="${numbers}"/></o:shapelayout>`;
  const type = known.includes('id="_x0000_t202"') ? "" : SHAPE_TYPE.replace(">", `${missing}>`);
  const shapes = notes.map((note, at) => shape(note, idAt(first, at), missing)).join("");
  const end = root.insideStart + root.inside.length;
  return patched(known, [
    { start: root.insideStart, end: root.insideStart, text: `${layout ? "" : heading}${type}` },
    ...(layout ? [withNumbers(known, layout, numbers)] : []),
    { start: end, end, text: shapes },
  ]);
}

/** The list of used thousands with more of them. */
function withNumbers(xml: string, { start, end }: Tag, numbers: string): Patch {
  const tag = xml.slice(start, end);
  const text = tag.replace(/(\bdata\s*=\s*["'])([\d,\s]*)/, (_, before: string, used: string) =>
    [before + used.trim(), numbers].join(used.trim() ? "," : ""),
  );
  return { start, end, text };
}

/** Whether a prefix stands for its namespace from the beginning of the drawing on. */
function isDeclared(xml: string, [prefix, address]: readonly [string, string]): boolean {
  const [root] = tags(xml);
  const declaration = new RegExp(`\\sxmlns:${prefix}\\s*=\\s*(?:"${address}"|'${address}')`);
  return root !== undefined && declaration.test(root.attributes);
}

function declared(namespaces: readonly [string, string][]): string {
  return namespaces.map(([prefix, address]) => ` xmlns:${prefix}="${address}"`).join("");
}

/** Shape numbers must not meet in a file: the first thousand that no drawing uses. */
function freeBlock(drawings: readonly string[]): number {
  const used = drawings.flatMap((xml) => [
    ...[...xml.matchAll(/_x0000_s(\d+)/g)].map(([, id]) => Math.floor(Number(id) / IDS_IN_A_BLOCK)),
    ...elements(xml, "idmap").flatMap(({ attributes }) =>
      (attribute(attributes, "data")?.match(/\d+/g) ?? []).map(Number),
    ),
  ]);
  return used.reduce((most, one) => Math.max(most, one), 0) + 1;
}

function idAt(firstBlock: number, at: number): number {
  const perBlock = IDS_IN_A_BLOCK - 1;
  return (firstBlock + Math.floor(at / perBlock)) * IDS_IN_A_BLOCK + 1 + (at % perBlock);
}

function shape({ row, column }: Place, id: number, namespaces: string): string {
  const [left, top] = [Math.min(column + 1, LAST_COLUMN - 4), Math.min(Math.max(row - 1, 0), LAST_ROW - 6)];
  const anchor = [left, 15, top, 10, left + 4, 15, top + 5, 4].join(", ");
  const style = "position:absolute;margin-left:60pt;margin-top:2pt;width:260pt;height:80pt;z-index:1;visibility:hidden";
  return (
    `<v:shape${namespaces} id="_x0000_s${id}" type="#_x0000_t202" style="${style}" fillcolor="#ffffe1" o:insetmode="auto">` +
    '<v:fill color2="#ffffe1"/><v:shadow on="t" color="black" obscured="t"/><v:path o:connecttype="none"/>' +
    '<v:textbox style="mso-direction-alt:auto"><div style="text-align:left"></div></v:textbox>' +
    '<x:ClientData ObjectType="Note"><x:MoveWithCells/><x:SizeWithCells/>' +
    `<x:Anchor>${anchor}</x:Anchor><x:AutoFill>False</x:AutoFill><x:Row>${row}</x:Row><x:Column>${column}</x:Column>` +
    "</x:ClientData></v:shape>"
  );
}
