import { SOURCES } from "../../math/sources";
import { escaped } from "../../xlsx/escaped";
import { slug } from "./html";

/** The document of the bibliography that a `@source` line begins with, by its key. */
export function documentOf(source: string): string | undefined {
  return Object.keys(SOURCES)
    .filter((key) => source.startsWith(key))
    .sort((a, b) => b.length - a.length)[0];
}

/** A `@source` line whose document leads to the bibliography. */
export function sourceLink(source: string): string {
  const key = documentOf(source);
  return key
    ? `<a href="grades.html#${slug(key)}">${escaped(key)}</a>${escaped(source.slice(key.length))}`
    : escaped(source);
}

/** A grade that leads to what it means. */
export function gradeLink(grade: string): string {
  return `<a href="grades.html#grades"><strong>${escaped(grade)}</strong></a>`;
}
