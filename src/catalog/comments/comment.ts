import ts from "typescript";

/** A JSDoc comment, taken apart. */
export interface Comment {
  summary: string;
  remarks: string[];
  /** Every tag's texts, in the order they stand. A parameter's text begins with its name. */
  tags: Map<string, string[]>;
}

/** The comment that stands before a declaration, or undefined. */
export function commentOf(node: ts.Node, file: ts.SourceFile): Comment | undefined {
  const ranges = ts.getLeadingCommentRanges(file.text, node.getFullStart()) ?? [];
  const texts = ranges.map(({ pos, end }) => file.text.slice(pos, end));
  const last = texts.filter((text) => text.startsWith("/**")).at(-1);
  return last === undefined ? undefined : takenApart(last);
}

function takenApart(raw: string): Comment {
  const lines = raw
    .replace(/^\/\*\*|\*\/$/g, "")
    .split("\n")
    .map((line) => line.replace(/^\s*\* ?/, "").trimEnd());
  const firstTag = lines.findIndex((line) => line.startsWith("@"));
  const prose = (firstTag < 0 ? lines : lines.slice(0, firstTag)).join("\n").trim();
  const [summary = "", ...remarks] = prose.split(/\n\s*\n/).map(oneLine);
  return { summary, remarks, tags: firstTag < 0 ? new Map() : tagsIn(lines.slice(firstTag)) };
}

function tagsIn(lines: string[]): Map<string, string[]> {
  const tags = new Map<string, string[]>();
  const blocks = lines.join("\n").split(/\n(?=@)/);
  for (const block of blocks) {
    const [, tag = "", text = ""] = /^@(\w+)\s*([\s\S]*)$/.exec(block) ?? [];
    tags.set(tag, [...(tags.get(tag) ?? []), oneLine(text)]);
  }
  return tags;
}

function oneLine(text: string): string {
  return text.replace(/\s+/g, " ").trim();
}
