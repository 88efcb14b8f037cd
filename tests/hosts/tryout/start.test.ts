import { spawn, spawnSync, type ChildProcess } from "node:child_process";
import { copyFileSync, existsSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { request, type IncomingMessage } from "node:http";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { IWorkbookData } from "@univerjs/core";
import { afterEach, describe, expect, it } from "vitest";
import { buildPage } from "../../../src/hosts/tryout/build";
import type { Engine } from "../../../src/engine/engine";
import { withFreeSheet } from "../../../src/hosts/tryout/free-sheet";
import { openWorkbook, SAMPLE } from "../../../src/hosts/terminal/sample";
import { tiny } from "../terminal/file/tiny";
import { opener } from "../../../src/hosts/tryout/desktop";
import { servePage } from "../../../src/hosts/tryout/server";
import { takeTurn } from "../../../src/hosts/tryout/turn";

/** A page without a workbook, where only the server matters. */
const NOTHING = { snapshot: {}, bytes: new Uint8Array() };

const children: ChildProcess[] = [];
afterEach(() => children.splice(0).forEach((child) => child.kill("SIGKILL")));

/** Starts `npm start`'s program; gives what it wrote once it says `until` or ends. */
function start(environment: Record<string, string>, until = "\n\n\n") {
  const child = spawn(process.execPath, ["--import", "tsx", "src/hosts/tryout/start.ts"], {
    env: { ...process.env, CI: "true", ...environment },
  });
  children.push(child);
  let written = "";
  const ended = new Promise<number | null>((resolve) => child.on("close", resolve));
  const said = new Promise<string>((resolve) => {
    const hear = (chunk: Buffer) => {
      written += chunk.toString("utf8");
      if (written.includes(until)) resolve(written);
    };
    child.stdout.on("data", hear);
    child.stderr.on("data", hear);
    void ended.then(() => resolve(written));
  });
  return { child, said, ended };
}

describe("npm start", () => {
  it("prints the key results and the page's address, serves the page and stops on Ctrl+C", async () => {
    await buildPage();
    const { child, said, ended } = start({ BOLE_PORT: "0" }, "Ctrl+C");
    const text = await said;
    expect(text).toMatch(/Net board feet in the log book +[\d,]+ bf/);
    expect(text).toMatch(/Band speed +[\d,]+ ft\/min/);
    const address = /http:\/\/localhost:\d+\//.exec(text)?.[0] ?? "";
    const page = await fetch(address);
    expect(await page.text()).toContain("<title>Bole, to try out</title>");
    expect(page.headers.get("content-security-policy")).toContain("default-src 'none'");
    child.kill("SIGINT");
    expect(await ended).toBe(0);
  });

  it("shows a workbook of one's own, named from the folder where one stands, and says so", async () => {
    await buildPage();
    const folder = mkdtempSync(join(tmpdir(), "bole-"));
    copyFileSync("tests/hosts/terminal/file/made-by-libreoffice.xlsx", join(folder, "my logs.xlsx"));
    const { said } = start({ BOLE_PORT: "0", BOLE_WORKBOOK: "my logs.xlsx", INIT_CWD: folder }, "Ctrl+C");
    const text = await said;
    expect(text).toContain(`${join(folder, "my logs.xlsx")}, recalculated:`);
    expect(text).toContain("No cell of it shows a name that begins with Key_.");
    expect(text).not.toContain("sample workbook");
  });

  it("says that a workbook is missing", async () => {
    const { said, ended } = start({ BOLE_WORKBOOK: join(tmpdir(), "no such folder", "logs.xlsx") });
    expect(await ended).toBe(1);
    expect(await said).toMatch(/^The workbook .*logs\.xlsx is not there\.\n$/);
  });

  it("says why a workbook cannot be opened and leaves it as it is", async () => {
    const broken = join(mkdtempSync(join(tmpdir(), "bole-")), "broken.xlsx");
    writeFileSync(broken, "PK, and then nonsense");
    const { said, ended } = start({ BOLE_WORKBOOK: broken });
    expect(await ended).toBe(1);
    expect(await said).toMatch(/^The workbook .* cannot be opened \(it is damaged .*\)\. Nothing was changed\.\n$/);
  });

  it("says how to make the sample workbook again", async () => {
    const refusing = { calculate: () => Promise.reject(new Error("it is damaged")) } as unknown as Engine;
    await expect(openWorkbook(refusing, SAMPLE)).rejects.toThrow(/^The sample workbook .*npm run sample$/);
  });

  it("says before it calculates a large workbook that this takes long", async () => {
    const path = join(mkdtempSync(join(tmpdir(), "bole-")), "long.xlsx");
    const rows = Array.from({ length: 20_001 }, (_, at) => `<row r="${at + 1}"><c r="A${at + 1}"><f>1+1</f></c></row>`);
    writeFileSync(path, tiny({ sheets: { Logs: rows.join("") } }));
    const told: string[] = [];
    const busy = { calculate: () => Promise.resolve({ told: [...told] }) } as unknown as Engine;
    expect(await openWorkbook(busy, path, (line) => told.push(line))).toEqual({
      told: ["The workbook holds 20,001 formulas: calculating them takes half a minute to some minutes."],
    });
  });

  it("names its free sheet otherwise when the workbook has one", () => {
    const book = { sheetOrder: ["s0"], sheets: { s0: { id: "s0", name: "free sheet" } } } as unknown as IWorkbookData;
    expect(withFreeSheet(book).sheets["free"]?.name).toBe("Free sheet 2");
  });
});

describe("npm start's port", () => {
  it.each(["abc", "-1", "70000", "4780.5"])("is not %s", async (port) => {
    const { said, ended } = start({ BOLE_PORT: port });
    expect(await ended).toBe(1);
    expect(await said).toBe(`BOLE_PORT must be a whole number from 0 to 65535, not "${port}".\n`);
  });
});

describe("the turn to build the page", () => {
  const path = () => join(mkdtempSync(join(tmpdir(), "bole turn-")), "building");
  it("is taken over at once from a program that was stopped half-way", async () => {
    const held = path();
    const { pid } = spawnSync(process.execPath, ["--version"]);
    writeFileSync(held, String(pid));
    const release = await takeTurn(held);
    expect(readFileSync(held, "utf8")).toBe(String(process.pid));
    release();
    expect(existsSync(held)).toBe(false);
  });
  it("is waited for while it is held", async () => {
    const held = path();
    const release = await takeTurn(held);
    let mine = false;
    const second = takeTurn(held).then((giveBack) => {
      mine = true;
      giveBack();
    });
    await new Promise((resolve) => setTimeout(resolve, 500));
    expect(mine).toBe(false);
    release();
    await second;
    expect(mine).toBe(true);
  });
});

describe("the page's server", () => {
  it("takes the next port when the wanted one is taken", async () => {
    const other = createServer();
    const taken = await new Promise<number>((resolve) => {
      other.listen(0, "127.0.0.1", () => resolve((other.address() as { port: number }).port));
    });
    const server = await servePage(NOTHING, taken);
    expect(server.port).toBeGreaterThan(taken);
    expect((await fetch(`${server.address}workbook.json`)).status).toBe(200);
    await server.close();
    other.close();
  });

  it("says which ports it tried in vain", async () => {
    const others = [];
    for (let port = 65_534; port <= 65_535; port++) {
      const other = createServer();
      others.push(other);
      // Taken by us or by another program: taken it is.
      await new Promise<void>((resolve) => other.once("error", () => resolve()).listen(port, "127.0.0.1", resolve));
    }
    await expect(servePage(NOTHING, 65_534)).rejects.toThrow(
      "Of the ports 65534 to 65535 none can be used (EADDRINUSE). Set BOLE_PORT to another one.",
    );
    others.forEach((other) => other.close());
  });

  it("gives away no file but the page's own, and takes nothing in", async () => {
    const server = await servePage({ ...NOTHING, snapshot: { id: "bole" } }, 0);
    expect(await (await fetch(`${server.address}workbook.json`)).json()).toEqual({ id: "bole" });
    for (const path of [
      "package.json",
      "../package.json",
      "%2e%2e/%2e%2e/package.json",
      "src/catalog/catalog.json",
      "x",
    ])
      expect((await fetch(`${server.address}${path}`)).status, path).toBe(404);
    expect((await fetch(server.address, { method: "POST" })).status).toBe(405);
    await server.close();
  });

  it.each([
    ["localhost", 200],
    ["127.0.0.1:4780", 200],
    ["elsewhere.example", 403],
    ["localhost.elsewhere.example:4780", 403],
  ])("asked under the name %s answers %i, so that no other page can read the workbook", async (host, status) => {
    const server = await servePage({ ...NOTHING, snapshot: { id: "bole" } }, 0);
    const asked = request({ port: server.port, host: "127.0.0.1", path: "/workbook.json", headers: { host } });
    const answer = new Promise<IncomingMessage>((resolve) => asked.once("response", resolve).end());
    const { statusCode, headers } = await answer;
    expect(statusCode).toBe(status);
    expect(headers["content-security-policy"]).toContain("default-src 'none'");
    expect(headers["cross-origin-resource-policy"]).toBe("same-origin");
    await server.close();
  });
});

describe("the browser", () => {
  it.each([
    [{ DISPLAY: ":0" }, "linux", ["xdg-open"]],
    [{ WAYLAND_DISPLAY: "wayland-0" }, "linux", ["xdg-open"]],
    [{}, "linux", undefined],
    [{ DISPLAY: ":0", CI: "true" }, "linux", undefined],
    [{}, "darwin", ["open"]],
    [{}, "win32", ["cmd", "/c", "start", ""]],
  ])("with %o on %s is opened by %o", (environment, platform, expected) => {
    expect(opener(environment, platform)).toEqual(expected);
  });
});
