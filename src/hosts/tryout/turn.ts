import { readFileSync, rmSync, statSync, writeFileSync } from "node:fs";

/** What takes longer never ends. */
const LONGEST_MS = 180_000;
const LOOK_AGAIN_MS = 200;

/**
 * Waits until nobody else holds the file at `path`, holds it, and answers how to give it back. Whoever was stopped
 * half-way no longer holds it.
 */
export async function takeTurn(path: string): Promise<() => void> {
  for (;;) {
    try {
      writeFileSync(path, String(process.pid), { flag: "wx" });
      return () => rmSync(path, { force: true });
    } catch (fault) {
      if ((fault as NodeJS.ErrnoException).code !== "EEXIST") throw fault;
      if (isGivenUp(path)) rmSync(path, { recursive: true, force: true });
      else await new Promise((resolve) => setTimeout(resolve, LOOK_AGAIN_MS));
    }
  }
}

function isGivenUp(path: string): boolean {
  const held = statSync(path, { throwIfNoEntry: false });
  if (!held) return false;
  if (!held.isFile() || Date.now() - held.mtimeMs > LONGEST_MS) return true;
  return !isRunning(Number(readFileSync(path, "utf8")));
}

function isRunning(program: number): boolean {
  try {
    return process.kill(program, 0);
  } catch (fault) {
    return (fault as NodeJS.ErrnoException).code !== "ESRCH";
  }
}
