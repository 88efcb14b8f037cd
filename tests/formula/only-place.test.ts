import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";

const SRC = join(import.meta.dirname, "../../src");

/** A pattern for the letters of a column, or the name under which a file stores an add-in's function. */
const TAKES_APART = /\[A-Z(?:a-z)?\](?:\{1,3\}|\+)\)?\\?\$?\??\(?\\d|_xldudf_/;

it("only the formula folder takes addresses of cells and stored functions apart", () => {
  const files = readdirSync(SRC, { recursive: true, encoding: "utf8" })
    .map((file) => file.replaceAll("\\", "/"))
    .filter((file) => file.endsWith(".ts"));
  const apart = files.filter((file) => TAKES_APART.test(readFileSync(join(SRC, file), "utf8")));
  expect(apart.filter((file) => !file.startsWith("formula/"))).toEqual([]);
  expect(apart.length).toBeGreaterThan(0);
});
