import { readFileSync } from "node:fs";
import { relative } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildPage } from "../../src/hosts/tryout/build";
import { servePage, type PageServer } from "../../src/hosts/tryout/server";
import { openBrowser } from "../browser";
import { builtFolder, filesUnder } from "../hosts/excel/build";

/** Addresses that a policy may name: Microsoft's script for add-ins, which no add-in may bring itself. */
const MICROSOFT = ["https://officeapis.public.onecdn.static.microsoft", "https://appsforoffice.microsoft.com"];

interface ReadPage {
  name: string;
  html: string;
  policy: string;
}

let browser: Browser;
let reader: Page;
let server: PageServer;
let pages: ReadPage[];

beforeAll(async () => {
  await buildPage();
  browser = await openBrowser();
  reader = await browser.newPage();
  server = await servePage({ snapshot: {}, bytes: new Uint8Array() }, 0);
  const tryOut = await fetch(server.address);
  const folder = await builtFolder();
  const built = filesUnder(folder).filter((path) => path.endsWith(".html"));
  pages = [
    {
      name: "the try-out page",
      html: await tryOut.text(),
      policy: tryOut.headers.get("content-security-policy") ?? "",
    },
    ...built.map((path) => {
      const html = readFileSync(path, "utf8");
      return { name: relative(folder, path), html, policy: policyIn(html) };
    }),
  ];
});

afterAll(async () => {
  await browser.close();
  await server.close();
});

function policyIn(html: string): string {
  return /<meta\s+http-equiv="Content-Security-Policy"\s+content="([^"]*)"/.exec(html)?.[1] ?? "";
}

/** A policy's rules: what each kind of thing may come from. */
function rulesOf(policy: string): Record<string, string[]> {
  const rules = policy.split(";").map((rule) => rule.trim().split(/\s+/));
  return Object.fromEntries(rules.map(([name = "", ...from]) => [name, from]));
}

describe("every page", () => {
  it("is looked at: pane, help, a reference page for each function, the try-out sheet", () => {
    const names = pages.map(({ name }) => name);
    expect(names).toEqual(expect.arrayContaining(["the try-out page", "taskpane.html", "help.html"]));
    expect(names.length).toBeGreaterThan(100);
  });

  it("forbids by its policy all that it does not name, forms and a base of links besides", () => {
    const lacking = pages.filter(({ policy }) => {
      const rules = rulesOf(policy);
      return ["default-src", "form-action", "base-uri"].some((name) => rules[name]?.join(" ") !== "'none'");
    });
    expect(lacking.map(({ name, policy }) => `${name}: ${policy}`)).toEqual([]);
  });

  it("takes scripts and answers from itself and Microsoft only, never from its own text", () => {
    const wide = pages.flatMap(({ name, policy }) =>
      Object.entries(rulesOf(policy))
        .filter(([rule]) => !/^(?:default-src|form-action|base-uri|frame-ancestors)$/.test(rule))
        .flatMap(([rule, from]) => from.filter((one) => !mayName(rule, one)).map((one) => `${name}: ${rule} ${one}`)),
    );
    expect(wide).toEqual([]);
  });

  it("states its policy before anything that the policy is to hold for", () => {
    const late = pages.filter(({ html }) => /<(?:link|script|style|img)\b[\s\S]*Content-Security-Policy/.test(html));
    expect(late.map(({ name }) => name)).toEqual([]);
  });

  it("holds no script in its own text, no handler in an attribute, no script as a link, no form, no frame", async () => {
    const found = await reader.evaluate(
      (all) =>
        all.flatMap(({ name, html }) => {
          const page = new DOMParser().parseFromString(html, "text/html");
          const bad = [...page.querySelectorAll("*")].filter((element) => {
            const tag = element.localName;
            const handlers = [...element.attributes].filter(
              (one) =>
                one.name.startsWith("on") || /^\s*(?:javascript|data):/i.test(one.value) || one.name === "srcdoc",
            );
            const inline = tag === "script" && (!element.hasAttribute("src") || element.textContent !== "");
            return inline || handlers.length > 0 || /^(?:iframe|frame|object|embed|base|form)$/.test(tag);
          });
          return bad.map((element) => `${name}: ${element.outerHTML.slice(0, 80)}`);
        }),
      pages,
    );
    expect(found).toEqual([]);
  });

  it("leads to other addresses by links only that a person has to click", async () => {
    const loaded = await reader.evaluate(
      (all) =>
        all.flatMap(({ name, html }) => {
          const page = new DOMParser().parseFromString(html, "text/html");
          const from = [...page.querySelectorAll("[src], link[href], [srcset], [poster]")];
          return from.flatMap((element) => {
            const url = element.getAttribute("src") ?? element.getAttribute("href") ?? "";
            return /^(?:[a-z]+:)?\/\//i.test(url) ? [`${name}: ${url}`] : [];
          });
        }),
      pages,
    );
    expect(loaded).toEqual([`taskpane.html: ${MICROSOFT[0]}/1/office.js`]);
  });
});

function mayName(rule: string, from: string): boolean {
  if (["'none'", "'self'"].includes(from)) return true;
  if (/^(?:script|connect)-src$/.test(rule)) return MICROSOFT.includes(from);
  // Excel on the web and the grid set styles as they draw; pictures and letters of the page's own making.
  return (
    (rule === "style-src" && from === "'unsafe-inline'") ||
    (/^(?:img|font)-src$/.test(rule) && /^(?:data|blob):$/.test(from))
  );
}
