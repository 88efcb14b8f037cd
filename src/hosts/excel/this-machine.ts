import { spawnSync } from "node:child_process";
import { copyFileSync, existsSync, mkdirSync, rmSync } from "node:fs";
import { dirname, posix } from "node:path";

/** A step by which the Excel of this machine learns of the add-in, or forgets it. */
export type Step =
  | { does: "run"; program: string; words: readonly string[] }
  | { does: "copy"; from: string; to: string }
  | { does: "remove"; path: string };

/** How the add-in gets into the Excel of this machine, and out of it again. */
export interface Placing {
  /** What is missing here, in one line; undefined when all is there. */
  missing?: string;
  putIn: readonly Step[];
  takeOut: readonly Step[];
  /** What a person does next. */
  next: string;
}

/** Where Excel on Windows looks for add-ins that are tried out: a value for each, named by its id, that holds its manifest's path. */
export const WINDOWS_KEY = String.raw`HKCU\SOFTWARE\Microsoft\Office\16.0\Wef\Developer`;

/** Where Excel on a Mac keeps what is its own, and within it the folder of add-ins that are tried out. */
export const MAC_EXCEL = "Library/Containers/com.microsoft.Excel";
export const MAC_FOLDER = "Data/Documents/wef";

const ELSEWHERE =
  "Excel runs on Windows and macOS only. Here: npm start for the try-out sheet, or npm run build for Excel on the web.";

/** The steps for a machine, without taking any of them. */
export function placingOn(
  machine: { platform: NodeJS.Platform; home: string; has: (path: string) => boolean },
  addIn: { id: string; manifest: string },
): Placing {
  if (machine.platform === "win32") return onWindows(addIn);
  if (machine.platform === "darwin") return onMac(machine, addIn);
  return { missing: ELSEWHERE, putIn: [], takeOut: [], next: "" };
}

function onWindows({ id, manifest }: { id: string; manifest: string }): Placing {
  return {
    putIn: [
      { does: "run", program: "reg", words: ["add", WINDOWS_KEY, "/v", id, "/t", "REG_SZ", "/d", manifest, "/f"] },
      { does: "run", program: "cmd", words: ["/c", "start", "", "excel"] },
    ],
    takeOut: [{ does: "run", program: "reg", words: ["delete", WINDOWS_KEY, "/v", id, "/f"] }],
    next: "In Excel: open a workbook, then Home, Add-ins, Bole. Was Excel open already? Close all of its windows and start it again.",
  };
}

function onMac(
  { home, has }: { home: string; has: (path: string) => boolean },
  { id, manifest }: { id: string; manifest: string },
): Placing {
  const excel = posix.join(home, MAC_EXCEL);
  const place = posix.join(excel, MAC_FOLDER, `${id}.manifest.xml`);
  return {
    ...(has(excel) ? {} : { missing: "Excel has not been started on this Mac yet. Start it once, then try again." }),
    putIn: [
      { does: "copy", from: manifest, to: place },
      { does: "run", program: "open", words: ["-a", "Microsoft Excel"] },
    ],
    takeOut: [{ does: "remove", path: place }],
    next: "In Excel: Home, Add-ins, Bole. Was Excel open already? Quit it and start it again.",
  };
}

/** Takes steps in turn and says each. Taking a step again, or taking out what is not there, does no harm. */
export function take(steps: readonly Step[], say: (line: string) => void): void {
  for (const step of steps) {
    if (step.does === "copy") {
      mkdirSync(dirname(step.to), { recursive: true });
      copyFileSync(step.from, step.to);
      say(`Wrote ${step.to}`);
    } else if (step.does === "remove") {
      say(existsSync(step.path) ? `Removed ${step.path}` : `There is no ${step.path}`);
      rmSync(step.path, { force: true });
    } else {
      say(`${step.program} ${step.words.join(" ")}`);
      spawnSync(step.program, step.words, { stdio: "ignore" });
    }
  }
}
