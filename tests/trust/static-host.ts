import { existsSync, readFileSync, statSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { extname } from "node:path";

const KINDS: Record<string, string> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".png": "image/png",
};

export interface StaticHost {
  address: string;
  /** The paths asked for since the last look. */
  asked(): string[];
  close(): Promise<void>;
}

/** A plain host of files, as any that the add-in may be put on; what lies at a path may change while it runs. */
export async function staticHost(fileAt: (path: string) => string): Promise<StaticHost> {
  let asked: string[] = [];
  const server = createServer((request, response) => {
    const path = new URL(request.url ?? "/", "http://localhost").pathname.slice(1);
    asked.push(path);
    const file = fileAt(path);
    if (!existsSync(file) || !statSync(file).isFile()) return void response.writeHead(404).end();
    response.writeHead(200, { "Content-Type": KINDS[extname(file)] ?? "application/octet-stream" });
    response.end(readFileSync(file));
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  return {
    address: `http://localhost:${(server.address() as AddressInfo).port}`,
    asked: () => {
      const paths = asked;
      asked = [];
      return paths;
    },
    close: () =>
      new Promise<void>((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}
