import { readFileSync, writeFileSync } from "node:fs";
import { join, relative } from "node:path";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { offlineList } from "../../src/hosts/excel/offline/list";
import { builtFolder, filesUnder } from "../hosts/excel/build";
import { answerInCell, cachesHeld, lookForUpdate, offlineAddIn } from "./offline-add-in";

const addIn = offlineAddIn();

/** The first page and what only Excel, the host or a person's disk asks for. */
const NOT_KEPT = [
  ...["_headers", "manifest.xml", "offline.js", "licences.txt", "install-windows.ps1", "install-mac.sh"],
  ...["bole-online.gs", "index.html", "index.css", "index.js", "end-view.svg"],
];

const titled = (title: string) => ({
  "taskpane.html": (html: string) => html.replace(/<title>.*<\/title>/, `<title>${title}</title>`),
});

describe("without a network, after one visit", () => {
  it("the pane opens and a function answers", async () => {
    await addIn.openPane();
    await expect
      .poll(() =>
        addIn.page.evaluate(async (url) => Boolean(await caches.match(url)), `${addIn.office.address}/1/office.js`),
      )
      .toBe(true);
    await addIn.withoutNetwork();
    await addIn.page.reload();
    expect(await addIn.page.title()).toBe("Bole: timber formulas");
    expect(await addIn.page.locator("details.entry").count()).toBeGreaterThan(80);
    expect(await answerInCell(addIn.page)).toBe(192);
  });

  it("reference pages, help, their style and the sample workbook open", async () => {
    await addIn.openPane();
    await addIn.withoutNetwork();
    for (const [path, title] of [
      ["reference/index.html", "All functions · Bole"],
      ["reference/LOGWEIGHT.html", "LOGWEIGHT · Bole"],
      ["help.html", "Help and setting up · Bole"],
    ]) {
      await addIn.page.goto(`${addIn.host.address}/${path}`);
      expect(await addIn.page.title()).toBe(title);
      expect(await addIn.page.evaluate(() => document.styleSheets[0]!.cssRules.length)).toBeGreaterThan(5);
    }
    await addIn.page.goto(`${addIn.host.address}/taskpane.html`);
    const bytes = await addIn.page.evaluate(
      async () => (await (await fetch("bole-sample.xlsx")).arrayBuffer()).byteLength,
    );
    expect(bytes).toBe(readFileSync(join(addIn.served, "bole-sample.xlsx")).length);
  });

  it("the list of functions is there even if Microsoft's script was never kept", async () => {
    await addIn.openPane();
    await addIn.page.evaluate(async () => {
      for (const name of await caches.keys()) if (name.endsWith("office.js")) await caches.delete(name);
    });
    await addIn.withoutNetwork();
    const other = await addIn.context.newPage();
    await other.goto(`${addIn.host.address}/taskpane.html`);
    expect(await other.locator("details.entry").count()).toBeGreaterThan(80);
  });
});

describe("on a slow network", () => {
  it("the second start asks the host for nothing but whether there is another version", async () => {
    await addIn.openPaneAgain();
    addIn.host.asked();
    await addIn.page.reload();
    await expect.poll(() => addIn.page.locator("details.entry").count()).toBeGreaterThan(80);
    expect(addIn.host.asked().filter((path) => path !== "offline.js")).toEqual([]);
  });

  it("an update loads only what has changed", async () => {
    await addIn.openPaneAgain();
    await addIn.serve("second", titled("Second"));
    addIn.host.asked();
    expect(await lookForUpdate(addIn.page)).toBe("installed");
    expect(addIn.host.asked().filter((path) => path !== "offline.js")).toEqual(["taskpane.html"]);
  });
});

describe("two versions", () => {
  it("never meet: the old one stays whole while it is open, the next start is the new one, and the old is thrown away", async () => {
    await addIn.openPaneAgain();
    const before = await cachesHeld(addIn.page);
    const marked = (mark: string) => ({
      ...titled(mark),
      "taskpane.css": (css: string) => `${css}\n:root { --mark: ${mark} }`,
    });
    const markIn = (on: Page) =>
      on.evaluate(() => getComputedStyle(document.documentElement).getPropertyValue("--mark").trim());
    await addIn.serve("second", marked("Second"));
    expect(await lookForUpdate(addIn.page)).toBe("installed");
    await addIn.page.reload();
    expect([await addIn.page.title(), await markIn(addIn.page)]).toEqual(["Bole: timber formulas", ""]);

    await addIn.page.goto("about:blank");
    const next = await addIn.context.newPage();
    await addIn.page.close();
    await expect
      .poll(async () => {
        await next.goto(`${addIn.host.address}/taskpane.html`);
        const seen = [await next.title(), await markIn(next)];
        await next.goto("about:blank");
        return seen;
      })
      .toEqual(["Second", "Second"]);
    await next.goto(`${addIn.host.address}/taskpane.html`);
    const after = await cachesHeld(next);
    expect(after.filter((name) => name.endsWith("office.js"))).toEqual(
      before.filter((name) => name.endsWith("office.js")),
    );
    expect(after.length).toBe(before.length);
    expect(after).not.toEqual(before);
  });

  it("do not mix while the host is only half filled: the old one serves until the new one is all there", async () => {
    await addIn.openPaneAgain();
    await addIn.serve("half", titled("Half"));
    const whole = readFileSync(join(addIn.served, "functions.js"));
    writeFileSync(join(addIn.served, "functions.js"), "throw new Error('of another version');");
    // The list names a hash that the file on the host has not.
    const list = readFileSync(join(addIn.served, "offline.js"), "utf8");
    writeFileSync(
      join(addIn.served, "offline.js"),
      list.replace(/"functions\.js":"sha256-[^"]+"/, `"functions.js":"sha256-${"A".repeat(43)}="`),
    );
    expect(await lookForUpdate(addIn.page)).toBe("redundant");
    await addIn.page.reload();
    expect(await addIn.page.title()).toBe("Bole: timber formulas");
    expect(await answerInCell(addIn.page)).toBe(192);
    writeFileSync(join(addIn.served, "functions.js"), whole);
    writeFileSync(join(addIn.served, "offline.js"), list);
    expect(await lookForUpdate(addIn.page)).toBe("installed");
  });
});

describe("the list of what is kept", () => {
  it("names every file of the built folder but what no page asks for, each by the hash of its content", async () => {
    const folder = await builtFolder();
    const line = readFileSync(join(folder, "offline.js"), "utf8").split("\n")[0]!;
    const { files } = JSON.parse(line.slice(line.indexOf("{"), -1)) as { files: Record<string, string> };
    const built = filesUnder(folder).map((path) => relative(folder, path).replaceAll("\\", "/"));
    expect(Object.keys(files).sort()).toEqual(built.filter((name) => !NOT_KEPT.includes(name)).sort());
    for (const [name, hash] of Object.entries(files))
      expect(offlineList({ [name]: readFileSync(join(folder, name)) }).files[name], name).toBe(hash);
  });
});
