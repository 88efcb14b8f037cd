import { createHash } from "node:crypto";
import { ONLINE_FILE } from "../../online/name";
import { WORKER } from "./name";

/** What the worker keeps: each file of the built folder with the hash of its content. */
export interface OfflineList {
  version: string;
  /** By its path in the folder: `sha256-…`, as a browser checks it while it loads. */
  files: Record<string, string>;
}

/** The page at the add-in's address, for people who do not have the add-in yet. */
const FIRST_PAGE = ["index.html", "index.css", "index.js", "end-view.svg"];

/** Files that the browser keeps by itself, or that only Excel, the host or a person's disk asks for. */
const ASKED_BY_OTHERS = [
  WORKER,
  "_headers",
  "manifest.xml",
  "licences.txt",
  "install-windows.ps1",
  "install-mac.sh",
  ONLINE_FILE,
];

/** What needs a network to be of any use is not kept for a time without one. */
const NOT_KEPT = new Set([...FIRST_PAGE, ...ASKED_BY_OTHERS]);

/** The list for a built folder. Its version is a hash of it all, the worker too: any change is another version. */
export function offlineList(built: Readonly<Record<string, Uint8Array>>): OfflineList {
  const names = Object.keys(built).filter((name) => !NOT_KEPT.has(name));
  const files = Object.fromEntries(
    names.sort().map((name) => [name, `sha256-${sha256(built[name]!).toString("base64")}`]),
  );
  return {
    version: sha256(JSON.stringify([files, String(built[WORKER])]))
      .toString("hex")
      .slice(0, 16),
    files,
  };
}

/** The worker with its list in front of it: another list is another worker, which is how a browser sees an update. */
export function workerWith(list: OfflineList, worker: string): string {
  return `self.BOLE_OFFLINE=${JSON.stringify(list)};\n${worker}`;
}

function sha256(content: Uint8Array | string): Buffer {
  return createHash("sha256").update(content).digest();
}
