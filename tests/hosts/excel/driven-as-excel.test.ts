import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openBrowser } from "../../browser";
import { builtFolder } from "./build";
import { callInBatch, FILE_SETS, openAsExcel, tenThousandCalls, WITH_DATA_TYPES, WITH_ERRORS } from "./driven-as-excel";

/** office.js on the web asks the page round it for a conversation, which only Excel on the web has. */
const NO_CONVERSATION = /conversationId/;

let browser: Browser;
let folder: string;
beforeAll(async () => {
  folder = await builtFolder();
  browser = await openBrowser();
});
afterAll(() => browser.close());

describe.each(FILE_SETS)("the built add-in, driven as Excel drives it, with the files for $name", ({ info, file }) => {
  it("answers single cells, columns, blanks, errors and data types, within the page's policy", async () => {
    const { page, loaded, complaints, strayRequests } = await openAsExcel(browser, folder, info);
    expect(loaded).toContain(file);
    const answers = await callInBatch(page, [
      { name: "LOGSCALE", given: [[[20]], [[12]], [["Doyle"]], null] },
      { name: "LOGSCALE", given: [[[3]], [[12]], [["Doyle"]], null] },
      {
        name: "LOGSCALE",
        given: [[[20], [{ type: "CustomFunctionError", code: "#REF!" }], [null], [24]], [[12]], [["Doyle"]], null],
        flags: WITH_ERRORS,
      },
      {
        name: "LOGSCALE",
        given: [[[{ value: JSON.stringify({ type: "Double", basicValue: 20 }) }]], [[12]], [["Doyle"]], null],
        flags: WITH_DATA_TYPES,
      },
      { name: "KERFLOSS", given: [[[{ type: "CustomFunctionError", code: "#N/A" }]], [[0.125]]], flags: WITH_ERRORS },
      { name: "HEADHEIGHTS", given: [[[10]], [[2.125]], [[0.125]], [[1]], null, null] },
    ]);
    expect(answers.get(1)!.slice(1, 3)).toEqual([true, [[192]]]);
    // A single error is thrown: the runtime sends it as a call that failed, with its message.
    expect(answers.get(2)!.slice(1, 3)).toEqual([false, expect.stringMatching(/Doyle.*wanted 4.*got 3/)]);
    const [, went, cells] = answers.get(3)!;
    const column = cells as unknown[][];
    expect(went).toBe(true);
    expect(column.map(([cell]) => cell)).toEqual([
      192,
      expect.objectContaining({ basicValue: "#VALUE!", message: "diameter: the cell holds #REF!" }),
      0,
      300,
    ]);
    expect(answers.get(4)!.slice(1, 3)).toEqual([true, [[192]]]);
    expect(answers.get(5)!.slice(1, 3)).toEqual([false, "thickness: the cell holds #N/A"]);
    expect(answers.get(6)![1]).toBe(true);
    expect((answers.get(6)![2] as unknown[][])[0]![0]).toEqual(expect.any(String));
    expect(complaints.filter((complaint) => !NO_CONVERSATION.test(complaint))).toEqual([]);
    expect(strayRequests).toEqual([]);
    await page.close();
  });

  it("answers 10,000 single calls that come in one batch, each with its own answer", async () => {
    const { page } = await openAsExcel(browser, folder, info);
    const answers = await callInBatch(page, tenThousandCalls("KERFLOSS"));
    expect(answers.size).toBe(10_000);
    for (const at of [0, 4_999, 9_999]) {
      const [[answer]] = answers.get(at + 1)![2] as [[number]];
      expect(answer).toBeCloseTo(0.125 / (1.125 + at / 1000), 12);
    }
    await page.close();
  });
});
