import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { CHANGES_FIELD, SAID_HEADER, WORKBOOK_FIELD } from "../../../src/hosts/tryout/saving/wire";
import { servePage, type PageServer } from "../../../src/hosts/tryout/server";
import { cellsOf, partsOf, tiny } from "../terminal/file/tiny";

const LOGS = tiny({ sheets: { Logs: '<row r="1"><c r="A1"><v>20</v></c></row>' } });

let server: PageServer;
let ours: string;
beforeAll(async () => {
  server = await servePage({ snapshot: { id: "first" }, bytes: LOGS }, 0);
  ours = server.address.replace(/\/$/, "");
});
afterAll(() => server.close());

function send(path: string, body: BodyInit, headers: Record<string, string> = { origin: ours }): Promise<Response> {
  return fetch(server.address + path, { method: "POST", body, headers });
}

function formOf(workbook: Uint8Array, changes: unknown): FormData {
  const form = new FormData();
  form.append(WORKBOOK_FIELD, new Blob([new Uint8Array(workbook)]));
  form.append(CHANGES_FIELD, JSON.stringify(changes));
  return form;
}

const typed = { cells: [{ sheet: "Logs", cells: [{ row: 0, column: 0, value: 21 }] }], added: [], left: [] };

describe("what a page sends to the local server", () => {
  it.each([
    ["https://elsewhere.example", "https://elsewhere.example"],
    ["another port of this machine", "http://localhost:1"],
    ["a page without an address", "null"],
    ["our own address under another scheme", "https://localhost"],
    ["a sender who does not name himself", undefined],
  ])("is refused from %s, before anything is read", async (_, origin) => {
    for (const path of ["open?name=logs.xlsx", "save"]) {
      const answer = await send(path, "nonsense", origin === undefined ? {} : { origin });
      expect(answer.status).toBe(403);
      expect(await answer.text()).toMatch(/^This page takes nothing from /);
      expect(answer.headers.get("content-security-policy")).toContain("default-src 'none'");
    }
  });

  it("is opened at an address of its own, beside the workbook that was there first", async () => {
    const address = await (await send("open?name=my%20logs.xlsx", new Uint8Array(LOGS))).text();
    const search = new URL(address, server.address).search;
    const opened = (await (await fetch(`${server.address}workbook.json${search}`)).json()) as {
      name: string;
      sheets: Record<string, { name: string }>;
    };
    expect(opened.name).toBe("my logs.xlsx");
    expect(Object.values(opened.sheets).map(({ name }) => name)).toEqual(["Logs", "Free sheet"]);
    const bytes = await (await fetch(`${server.address}workbook.bytes${search}`)).arrayBuffer();
    expect(new Uint8Array(bytes)).toEqual(new Uint8Array(LOGS));
    expect(await (await fetch(`${server.address}workbook.json`)).json()).toEqual({ id: "first" });
  });

  it("is refused in the terminal's words where it is no workbook", async () => {
    const answer = await send("open?name=logs.xlsx", "a,b\n1,2");
    expect(answer.status).toBe(422);
    expect(await answer.text()).toBe(
      "The workbook logs.xlsx cannot be opened (it is not an .xlsx workbook, whatever its name says). Nothing was changed.",
    );
  });

  it("comes back with what was typed, and is told what was done", async () => {
    const answer = await send("save", formOf(LOGS, typed));
    expect(decodeURIComponent(answer.headers.get(SAID_HEADER)!)).toBe("1 cell of the workbook changed");
    const parts = partsOf(new Uint8Array(await answer.arrayBuffer()));
    expect(cellsOf(parts["xl/worksheets/sheet1.xml"]!)).toEqual({ A1: '<c r="A1"><v>21</v></c>' });
  });

  it.each([
    ["a field that is missing", () => "nonsense", 400, /^What was sent is not a workbook/],
    [
      "a sheet that is not there",
      () => formOf(LOGS, { ...typed, cells: [{ ...typed.cells[0], sheet: "x" }] }),
      422,
      /^Nothing was saved: it has no sheet x, /,
    ],
    [
      "bytes that are no workbook",
      () => formOf(new Uint8Array([1]), typed),
      422,
      /^Nothing was saved: it is not an \.xlsx workbook/,
    ],
  ])("is refused in words: %s", async (_, body, status, words) => {
    const answer = await send("save", body());
    expect(answer.status).toBe(status);
    expect(await answer.text()).toMatch(words);
  });

  it("finds no workbook at an address that nobody was given", async () => {
    const answer = await fetch(`${server.address}workbook.json?workbook=unknown`);
    expect(answer.status).toBe(404);
    expect(await answer.text()).toContain("open its file again");
  });
});
