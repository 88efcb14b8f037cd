import { SOURCES } from "../../math/sources";
import { safe, slug } from "./html";

/** The document of the bibliography that a `@source` line begins with, by its key. */
export function documentOf(source: string): string | undefined {
  return Object.keys(SOURCES)
    .filter((key) => source.startsWith(key))
    .sort((a, b) => b.length - a.length)[0];
}

/** A `@source` line whose document leads to the bibliography. */
export function sourceLink(source: string): string {
  const key = documentOf(source);
  return key ? `<a href="grades.html#${slug(key)}">${safe(key)}</a>${safe(source.slice(key.length))}` : safe(source);
}

/** A grade that leads to what it means. */
export function gradeLink(grade: string): string {
  return `<a href="grades.html#grades"><strong>${safe(grade)}</strong></a>`;
}
