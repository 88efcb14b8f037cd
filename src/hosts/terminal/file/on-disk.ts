import { randomBytes } from "node:crypto";
import {
  chmodSync,
  existsSync,
  linkSync,
  readdirSync,
  readFileSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
  type Stats,
} from "node:fs";
import { dirname, join } from "node:path";
import { Refused } from "../../../xlsx/refused";

/** What a disk says when it cannot do something, in words. */
const REASONS: Readonly<Record<string, string>> = {
  ENOENT: "there is no such file",
  EISDIR: "it is a folder",
  EACCES: "it may not be read",
  EPERM: "it may not be read",
  ENOTDIR: "there is no such file",
  ENAMETOOLONG: "the name is longer than the disk takes",
  ELOOP: "it is a link that leads back to itself",
  ERR_FS_FILE_TOO_LARGE: "it is larger than any workbook",
};

export function read(path: string): Uint8Array {
  try {
    return readFileSync(path);
  } catch (fault) {
    throw new Refused(REASONS[codeOf(fault)] ?? `it cannot be read (${codeOf(fault)})`);
  }
}

export function mustBeFree(wish: { from: string; to: string; overwrite: boolean; inPlace: boolean }): void {
  const { from, to, overwrite, inPlace } = wish;
  if (!looked(dirname(to))?.isDirectory()) throw new Refused(`the folder of ${to} is not there`);
  const there = looked(to);
  if (!there) return;
  if (there.isDirectory()) throw new Refused(`${to} is a folder`);
  const input = statSync(from);
  const itself = there.dev === input.dev && there.ino === input.ino;
  if (itself && !inPlace)
    throw new Refused("the copy would replace the workbook itself, and its formulas would be lost");
  if (!overwrite) throw new Refused(`${to} is there already; add --overwrite to replace it`);
}

function looked(path: string): Stats | undefined {
  try {
    return statSync(path, { throwIfNoEntry: false });
  } catch (fault) {
    throw new Refused(`${path}: ${REASONS[codeOf(fault)] ?? `it cannot be looked at (${codeOf(fault)})`}`);
  }
}

/**
 * Writes beside the final place and moves there whole, so that nobody ever sees half a workbook. What is replaced hands on
 * who may read and write it; a link stays, and what it leads to is replaced.
 */
export function write(path: string, bytes: Uint8Array, overwrite: boolean): void {
  const there = overwrite && existsSync(path);
  const home = there ? realpathSync(path) : path;
  clearHalves(dirname(home));
  const half = join(dirname(home), `.bole-${process.pid}-${randomBytes(4).toString("hex")}.part`);
  try {
    writeFileSync(half, bytes, { flag: "wx" });
    if (there) chmodSync(half, statSync(home).mode);
    if (overwrite) renameSync(half, home);
    else moveWhereNothingIs(half, home);
  } catch (fault) {
    if (fault instanceof Refused) throw fault;
    throw new Refused(`${path} cannot be written (${codeOf(fault)})`);
  } finally {
    rmSync(half, { force: true });
  }
}

const HALF = /^\.bole-(\d+)-[0-9a-f]{8}\.part$/;

/** Clears away what runs have left that were killed while they wrote; one that still runs keeps its own. */
function clearHalves(folder: string): void {
  for (const name of readdirSync(folder)) {
    const [, run] = HALF.exec(name) ?? [];
    if (run && !isRunning(Number(run))) rmSync(join(folder, name), { force: true });
  }
}

function isRunning(run: number): boolean {
  try {
    return process.kill(run, 0);
  } catch (fault) {
    return codeOf(fault) === "EPERM";
  }
}

/** Moving replaces what is there; linking does not, but not every disk can. */
function moveWhereNothingIs(from: string, to: string): void {
  try {
    linkSync(from, to);
  } catch (fault) {
    if (codeOf(fault) === "EEXIST" || existsSync(to))
      throw new Refused(`${to} is there already; add --overwrite to replace it`);
    renameSync(from, to);
  }
}

function codeOf(fault: unknown): string {
  return (fault as NodeJS.ErrnoException).code ?? String(fault);
}
