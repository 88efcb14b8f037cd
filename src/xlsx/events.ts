import { SaxesParser } from "saxes";

/** What an XML text says, piece by piece, whatever its spelling: prefixes, quotes and entities are gone. */
export type XmlEvent =
  | { kind: "open"; name: string; attributes: Readonly<Record<string, string>> }
  | { kind: "close"; name: string }
  | { kind: "text"; text: string };

/** Hears an XML text from its first piece to its last. What is not well-formed throws, with the place. */
export function hearXml(xml: string, hear: (event: XmlEvent) => void): void {
  const parser = new SaxesParser();
  parser.on("error", (fault) => {
    throw fault;
  });
  parser.on("opentag", ({ name, attributes }) => hear({ kind: "open", name: local(name), attributes }));
  parser.on("closetag", ({ name }) => hear({ kind: "close", name: local(name) }));
  parser.on("text", (text) => hear({ kind: "text", text }));
  parser.on("cdata", (text) => hear({ kind: "text", text }));
  // A byte order mark is no piece of the text.
  parser.write(xml.replace(/^\uFEFF/, "")).close();
}

function local(name: string): string {
  return name.slice(name.indexOf(":") + 1);
}
