import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";

/**
 * Whether node_modules holds what the lock file names, whoever put it there. npm writes down what it has installed as
 * the last thing it does, so a list that is not there means that it was stopped half-way.
 */
export function packagesAreThere(root) {
  const wanted = packagesIn(join(root, "package-lock.json"));
  const there = packagesIn(join(root, "node_modules/.package-lock.json"));
  return Object.entries(wanted).every(
    // Optional ones are for one system or another; "" is the project itself.
    ([path, one]) => path === "" || one.optional || one.devOptional || there[path]?.version === one.version,
  );
}

function packagesIn(lockFile) {
  return existsSync(lockFile) ? JSON.parse(readFileSync(lockFile, "utf8")).packages : {};
}
