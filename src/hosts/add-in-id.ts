import { readFileSync } from "node:fs";
import { join } from "node:path";
import { ROOT } from "../catalog/read-catalog";

/** The manifest, which holds a mark in the place of the address. */
const MANIFEST = join(ROOT, "manifest/manifest.xml");

/** The number by which Excel knows the add-in. */
export function addInId(): string {
  return /<Id>([^<]+)<\/Id>/.exec(readFileSync(MANIFEST, "utf8"))?.[1] ?? "";
}
