import { readFileSync } from "node:fs";
import { parse } from "csv-parse/sync";

/** The rows of one of the invented yard's lists, keyed by its headings: numbers as numbers, days as dates, nothing as null. */
export function yardRows(
  name: string,
  textColumns: readonly string[] = [],
): Record<string, string | number | Date | null>[] {
  const text = readFileSync(new URL(`${name}.csv`, import.meta.url), "utf8");
  const rows = parse(text, { columns: true, comment: "#", comment_no_infix: true }) as Record<string, string>[];
  return rows.map((row) =>
    Object.fromEntries(
      Object.entries(row).map(([key, value]) => [key, textColumns.includes(key) ? value || null : cellOf(value)]),
    ),
  );
}

function cellOf(text: string): string | number | Date | null {
  if (text === "") return null;
  if (/^\d{4}-\d{2}-\d{2}$/.test(text)) return new Date(`${text}T00:00:00Z`);
  return /^-?\d+(\.\d+)?$/.test(text) ? Number(text) : text;
}
