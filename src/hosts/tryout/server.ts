import { existsSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { basename, join } from "node:path";
import { PAGE_FOLDER, ROOT } from "./build";
import { openFiles, type ServedWorkbook } from "./open-files";
import { bytesOf, mustBeFromOurPage, NotTaken } from "./requests";
import { savedFrom } from "./saving/asked";
import { SAID_HEADER } from "./saving/wire";

/** Only this machine can reach the page. */
const HOST = "127.0.0.1";

/** A page of somebody else's may have its own name lead here, and would read the workbook under that name. */
const OUR_NAMES = /^(?:localhost|127\.0\.0\.1)(?::\d+)?$/i;

const PORTS_TO_TRY = 20;
const LAST_PORT = 65_535;

const KINDS: Record<string, string> = {
  html: "text/html; charset=utf-8",
  css: "text/css; charset=utf-8",
  js: "text/javascript; charset=utf-8",
  json: "application/json; charset=utf-8",
  png: "image/png",
  txt: "text/plain; charset=utf-8",
  xlsx: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
  xlsm: "application/vnd.ms-excel.sheet.macroEnabled.12",
};

/** The page may load from here alone. The grid sets styles as it draws, so those may stand in the page. */
const POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self' data:",
  "connect-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join("; ");

const EVERY_ANSWER = {
  "Content-Security-Policy": POLICY,
  "Cross-Origin-Resource-Policy": "same-origin",
  "X-Content-Type-Options": "nosniff",
  "Cache-Control": "no-cache",
};

const FILES: Record<string, string> = {
  "/": "src/hosts/tryout/page/index.html",
  "/page.css": "src/hosts/tryout/page/page.css",
  "/theme.css": "src/hosts/pane/theme.css",
  "/pane.css": "src/hosts/pane/pane.css",
  "/answers.css": "src/hosts/pane/answers.css",
  "/grid.css": "node_modules/@univerjs/preset-sheets-core/lib/index.css",
  "/catalog.json": "src/catalog/catalog.json",
  "/icon.png": "assets/icons/bole-32.png",
};

export interface PageServer {
  port: number;
  address: string;
  close(): Promise<void>;
}

/** Serves the page with a workbook in it, on the wanted port or the next free one. */
export async function servePage(workbook: ServedWorkbook, wantedPort: number): Promise<PageServer> {
  const files = openFiles(workbook);
  const server = createServer((request, response) => {
    respond(request, response, files).catch((fault: unknown) => {
      const status = fault instanceof NotTaken ? fault.status : 500;
      refuse(response, status, fault instanceof Error ? fault.message : String(fault));
    });
  });
  const port = await listen(server, wantedPort);
  const close = () =>
    new Promise<void>((resolve) => {
      server.close(() => resolve());
      server.closeAllConnections();
    });
  return { port, address: `http://localhost:${port}/`, close };
}

async function respond(
  request: IncomingMessage,
  response: ServerResponse,
  files: ReturnType<typeof openFiles>,
): Promise<void> {
  if (!OUR_NAMES.test(request.headers.host ?? "")) throw new NotTaken(403, "This page answers to localhost only");
  const [path = "/", query = ""] = (request.url ?? "/").split("#")[0]!.split("?");
  const search = new URLSearchParams(query);
  if (request.method === "POST") return takeIn(path, search, request, response, files);
  if (request.method !== "GET" && request.method !== "HEAD") throw new NotTaken(405, "Only reading is possible");
  if (path === "/workbook.json") return answer(response, "json", JSON.stringify(files.at(search).snapshot));
  if (path === "/workbook.bytes") return answer(response, "bytes", Buffer.from(files.at(search).bytes));
  const file = FILES[path] ? join(ROOT, FILES[path]) : join(PAGE_FOLDER, basename(path));
  if (!existsSync(file)) throw new NotTaken(404, `There is no ${path} here`);
  const content = await readFile(file).catch(() => {
    throw new NotTaken(404, `${path} cannot be read`);
  });
  answer(response, file.split(".").pop() ?? "", content);
}

/** A workbook to be opened, or one to be saved with what was typed; nothing else is taken in. */
async function takeIn(
  path: string,
  search: URLSearchParams,
  request: IncomingMessage,
  response: ServerResponse,
  files: ReturnType<typeof openFiles>,
): Promise<void> {
  if (path !== "/open" && path !== "/save") throw new NotTaken(405, "Only reading is possible");
  mustBeFromOurPage(request);
  const sent = await bytesOf(request);
  if (path === "/open") return answer(response, "txt", files.open(sent, search.get("name") || "without a name"));
  const { bytes, summary, macros } = await savedFrom(sent, request.headers["content-type"] ?? "", new Date());
  const kind = macros ? "xlsm" : "xlsx";
  answer(response, kind, Buffer.from(bytes), { [SAID_HEADER]: encodeURIComponent(summary) });
}

function answer(
  response: ServerResponse,
  kind: string,
  content: string | Buffer,
  headers: Record<string, string> = {},
): void {
  const type = KINDS[kind] ?? "application/octet-stream";
  response.writeHead(200, { ...EVERY_ANSWER, "Content-Type": type, ...headers });
  response.end(content);
}

function refuse(response: ServerResponse, status: number, why: string): void {
  response.writeHead(status, { ...EVERY_ANSWER, "Content-Type": KINDS["txt"] });
  response.end(why);
}

/** Takes the wanted port, or the next one that nothing else uses. Port 0 lets the system choose. */
async function listen(server: Server, wanted: number): Promise<number> {
  for (let port = wanted; ; port++) {
    const fault = await new Promise<NodeJS.ErrnoException | undefined>((resolve) => {
      server.once("error", resolve);
      server.listen(port, HOST, () => {
        server.off("error", resolve);
        resolve(undefined);
      });
    });
    if (!fault) return (server.address() as AddressInfo).port;
    if (fault.code === "EADDRINUSE" && port < Math.min(wanted + PORTS_TO_TRY, LAST_PORT)) continue;
    const tried = port > wanted ? `Of the ports ${wanted} to ${port} none` : `Port ${port}`;
    throw new Error(`${tried} can be used (${fault.code ?? fault.message}). Set BOLE_PORT to another one.`);
  }
}
