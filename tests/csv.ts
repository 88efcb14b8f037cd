import { readFileSync } from "node:fs";
import { parse } from "csv-parse/sync";

/** The rows of a check table in tests/data, keyed by its headings; the source lines that begin with # are passed over. */
export function rowsOf(file: string): Record<string, string>[] {
  const text = readFileSync(new URL(`data/${file}`, import.meta.url), "utf8");
  return parse(text, {
    columns: true,
    comment: "#",
    comment_no_infix: true,
    relax_quotes: true,
    skip_empty_lines: true,
  });
}
