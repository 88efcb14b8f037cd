import { createReadStream, existsSync, readFileSync } from "node:fs";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { join, resolve } from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { checkedAddress } from "../../../manifest/manifest";
import { openBrowser } from "../../browser";
import { builtFolder, TEST_ADDRESS } from "./build";

/* The workflow that publishes the add-in: what it runs is run here, with a server of this machine in the host's place. */
const WORKFLOW = readFileSync(resolve(import.meta.dirname, "../../../.github/workflows/publish.yml"), "utf8");
const SCRIPTS = Object.keys(
  (JSON.parse(readFileSync(resolve(import.meta.dirname, "../../../package.json"), "utf8")) as { scripts: object })
    .scripts,
);

let folder: string;
let browser: Browser;
const servers: Server[] = [];
beforeAll(async () => {
  folder = await builtFolder();
  browser = await openBrowser();
});
afterAll(async () => {
  await browser?.close();
  for (const server of servers) server.close();
});

/** A folder served as it is at a port of its own, which makes an origin of its own. */
async function served(headers: Record<string, string>): Promise<string> {
  const server = createServer((request, response) => {
    const file = join(folder, decodeURIComponent(new URL(request.url!, "http://here").pathname));
    if (!file.startsWith(folder) || !existsSync(file)) return void response.writeHead(404).end();
    response.writeHead(200, headers);
    createReadStream(file).pipe(response);
  });
  servers.push(server);
  await new Promise<void>((listening) => server.listen(0, "127.0.0.1", listening));
  return `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
}

describe("what is published", () => {
  it("is checked and built by commands that this project has, for an address the manifest takes", () => {
    const commands = [...WORKFLOW.matchAll(/^\s*- run: npm (?:run )?(\w+)/gm)].map(([, name]) => name!);
    expect(commands).toEqual(["test", "build"]);
    for (const name of commands) expect(SCRIPTS).toContain(name);
    expect(WORKFLOW).toContain("npm run build -- --env address=${{ steps.pages.outputs.base_url }}");
    expect(checkedAddress("https://ann-mill.github.io/bole")).toBe("https://ann-mill.github.io/bole");
  });

  it("holds every file of a release, made for the address it was built for", () => {
    const files = [...WORKFLOW.matchAll(/^\s+dist\/(\S+)$/gm)].map(([, name]) => name!);
    expect(files).toHaveLength(6);
    for (const name of files) expect(existsSync(join(folder, name)), name).toBe(true);
    for (const name of files.filter((one) => !one.endsWith(".xlsx")))
      expect(readFileSync(join(folder, name), "utf8")).toContain(TEST_ADDRESS);
  });

  it("lets a page of another origin read the list of functions, where the host sends the header it is asked for", async () => {
    const header = Object.fromEntries(
      [...readFileSync(join(folder, "_headers"), "utf8").matchAll(/^ {2}([\w-]+): (.*)$/gm)].map(([, name, value]) => [
        name!,
        value!,
      ]),
    );
    const reads = async (headers: Record<string, string>) => {
      const [host, elsewhere] = [await served(headers), await served({ "Content-Type": "text/html" })];
      const page = await browser.newPage();
      await page.goto(`${elsewhere}/_headers`);
      const names = await page.evaluate(
        (address) =>
          fetch(address).then(
            (answer) => answer.json() as Promise<{ functions: unknown[] }>,
            () => undefined,
          ),
        `${host}/functions.json`,
      );
      await page.close();
      return names?.functions.length ?? 0;
    };
    expect(await reads(header)).toBeGreaterThan(100);
    expect(await reads({})).toBe(0);
    expect(WORKFLOW).toMatch(/Origin: https:\/\/excel\.officeapps\.live\.com[\s\S]*access-control-allow-origin/);
  });
});
