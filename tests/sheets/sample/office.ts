import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";

/** Whether a program of Debian's is on the machine, by what asks it for its version. */
export interface DebianProgram {
  command: readonly [string, ...string[]];
  package: string;
}

export const LIBRE_OFFICE: DebianProgram = { command: ["soffice", "--version"], package: "libreoffice-calc" };
export const PDF_TOOLS: DebianProgram = { command: ["pdftohtml", "-v"], package: "poppler-utils" };

/** On a Debian system of one's own a program can be had; anywhere else it is left to the owner. */
export function atHand(program: DebianProgram): boolean {
  return isThere(program) || (installed(program) && isThere(program));
}

function isThere({ command: [name, ...words] }: DebianProgram): boolean {
  return spawnSync(name, words).status === 0;
}

function installed({ package: wanted }: DebianProgram): boolean {
  if (process.getuid?.() !== 0 || !existsSync("/etc/debian_version")) return false;
  const apt = (...words: string[]) => spawnSync("apt-get", words, { stdio: "ignore", timeout: 600_000 }).status === 0;
  return apt("update") && apt("install", "-y", "--no-install-recommends", wanted);
}
