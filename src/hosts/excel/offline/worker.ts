import type { OfflineList } from "./list";

/**
 * Keeps the hosted files on this machine, so that pane, pages and functions open without a network. A version is kept
 * whole or not at all, and every file is asked for by the hash of its content: files of two versions never meet. A new
 * version waits until the last page of the old one is closed; then it serves the next start.
 */
interface Lasting {
  waitUntil(work: Promise<unknown>): void;
}
interface Asked {
  request: Request;
  respondWith(answer: Promise<Response>): void;
}
interface Told extends Lasting {
  data: readonly string[];
}
interface Worker {
  BOLE_OFFLINE: OfflineList;
  registration: { scope: string };
  addEventListener(name: "install" | "activate", listener: (event: Lasting) => void): void;
  addEventListener(name: "fetch", listener: (event: Asked) => void): void;
  addEventListener(name: "message", listener: (event: Told) => void): void;
}

const worker = self as unknown as Worker;
const { version, files } = worker.BOLE_OFFLINE;
const { scope } = worker.registration;

/** All pages of an address share one store; the scope keeps two folders of one host apart. */
const OURS = `bole ${scope} `;
const FILES = `${OURS}${version}`;
const MICROSOFT = `${OURS}office.js`;
const MICROSOFT_ADDRESSES = [
  "https://officeapis.public.onecdn.static.microsoft/",
  "https://appsforoffice.microsoft.com/",
];

worker.addEventListener("install", (event) => event.waitUntil(keepAll()));
worker.addEventListener("activate", (event) => event.waitUntil(dropOldVersions()));
worker.addEventListener("fetch", (event) => {
  const { method, url } = event.request;
  if (method !== "GET") return;
  const file = fileAt(url);
  if (file !== undefined) event.respondWith(kept(file).then((answer) => answer ?? fetch(event.request)));
  else if (isMicrosofts(url)) event.respondWith(freshIfPossible(event.request));
});
worker.addEventListener("message", (event) => event.waitUntil(keepMicrosofts(event.data)));

/**
 * Every file, or the install fails and is tried again later: one may be missing or of another version while the host is
 * being filled. What has come so far is kept for that next time.
 */
async function keepAll(): Promise<void> {
  const cache = await caches.open(FILES);
  for (const [file, hash] of Object.entries(files)) {
    const key = keyOf(file, hash);
    await cache.put(key, (await keptBefore(key)) ?? (await loaded(file, hash)));
  }
}

/** A file that has not changed since an older version is not loaded again. */
async function keptBefore(key: string): Promise<Response | undefined> {
  for (const name of await ourCaches()) {
    const response = await (await caches.open(name)).match(key);
    if (response) return response;
  }
  return undefined;
}

/** The browser refuses an answer whose content has not this hash. */
async function loaded(file: string, hash: string): Promise<Response> {
  const response = await fetch(scope + file, { cache: "no-cache", integrity: hash });
  if (!response.ok) throw new Error(`${file}: ${response.status}`);
  // A browser takes no answer for a page that came by way of another address.
  return response.redirected ? new Response(await response.blob(), { headers: response.headers }) : response;
}

async function dropOldVersions(): Promise<void> {
  const old = (await ourCaches()).filter((name) => name !== FILES && name !== MICROSOFT);
  await Promise.all(old.map((name) => caches.delete(name)));
}

async function ourCaches(): Promise<string[]> {
  return (await caches.keys()).filter((name) => name.startsWith(OURS));
}

/** The file of ours that an address names; Excel adds questions of its own behind a page's name. */
function fileAt(url: string): string | undefined {
  if (!url.startsWith(scope)) return undefined;
  const file = url.slice(scope.length).replace(/[?#].*$/, "");
  return Object.hasOwn(files, file) ? file : undefined;
}

async function kept(file: string): Promise<Response | undefined> {
  return (await caches.open(FILES)).match(keyOf(file, files[file]!));
}

function keyOf(file: string, hash: string): string {
  return `${scope}${file}?${encodeURIComponent(hash)}`;
}

function isMicrosofts(url: string): boolean {
  return MICROSOFT_ADDRESSES.some((address) => url.startsWith(address)) && /\.js(?:[?#]|$)/.test(url);
}

/** Microsoft's script changes when Microsoft likes, so the network comes first and the last copy serves without one. */
async function freshIfPossible(request: Request): Promise<Response> {
  const cache = await caches.open(MICROSOFT);
  try {
    const response = await fetch(request);
    // Of another address's script a browser tells no worker whether it came well; the next good one takes its place.
    if (response.ok || response.type === "opaque") await cache.put(request.url, response.clone());
    return response;
  } catch (fault) {
    const copy = await cache.match(request.url);
    if (copy) return copy;
    throw fault;
  }
}

/** What the first page loaded of Microsoft's before this worker was there; the browser mostly has it at hand. */
async function keepMicrosofts(urls: readonly string[]): Promise<void> {
  await Promise.all(urls.filter(isMicrosofts).map((url) => freshIfPossible(new Request(url, { mode: "no-cors" }))));
}
