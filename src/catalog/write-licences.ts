import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { licenceList, type Lock } from "./printing/licences";
import { ROOT } from "./read-catalog";

/** Writes the list of licences anew: npm run licences. */
const lock = JSON.parse(readFileSync(join(ROOT, "package-lock.json"), "utf8")) as Lock;
writeFileSync(join(ROOT, "assets/licences.txt"), licenceList(lock));
console.log("Wrote assets/licences.txt.");
