import { resolve } from "node:path";

/** npm starts a script in the project's folder and says in which folder the person stood. */
export function fromWhereTyped(path: string): string {
  return resolve(process.env["INIT_CWD"] ?? "", path);
}
