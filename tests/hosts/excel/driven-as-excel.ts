import type { Browser, Page } from "playwright-core";
import { TEST_ADDRESS } from "./build";
import { emptyPage, type Visit } from "./browser-page";

/** The three sets of files that office.js loads, by the host's information in the page's address. */
export const FILE_SETS = [
  { name: "Windows", info: "Excel$Win32$16.01$en-US$$$$0", file: "excel-win32-16.01.js" },
  { name: "Mac", info: "Excel$Mac$16.00$en-US$$$$0", file: "excel-mac-16.00.js" },
  { name: "the web", info: "Excel$Web$16.00$en-US$$$$0", file: "excel-web-16.00.js" },
] as const;

/** What a call's flags say: errors come as objects, data-type cells as text of their JSON. */
export const WITH_ERRORS = 4;
export const WITH_DATA_TYPES = 8;

export interface Call {
  name: string;
  given: unknown[];
  flags?: number;
}

/** What the runtime sends back for a call: whether it went well, then the cells, or the message and the error's number. */
export type Sent = [id: number, wentWell: boolean, value: unknown, errorOrTimes: unknown];

/** The pane's page as Excel opens it, with the files office.js loads for one of its systems. */
export async function openAsExcel(
  browser: Browser,
  folder: string,
  info: string,
): Promise<Visit & { loaded: string[] }> {
  const visited = await emptyPage(browser, folder);
  const loaded: string[] = [];
  visited.page.on("request", (request) => loaded.push(request.url().split("/").at(-1)!));
  await visited.page.goto(`${TEST_ADDRESS}/taskpane.html?_host_Info=${info}`);
  await visited.page.waitForFunction("typeof OfficeExtension === 'object' && OfficeExtension.HostBridge !== undefined");
  return { ...visited, loaded };
}

/**
 * Calls functions in one batch as Excel does: a message of type 3 over the host's bridge, whose entries are invocations,
 * and answers the runtime's answers by the number of the call.
 */
export async function callInBatch(page: Page, calls: readonly Call[]): Promise<Map<number, Sent>> {
  const entries = calls.map(({ name, given, flags = 0 }, at) => [1, 1000, "", [at + 1, name, given, null, flags], at]);
  const message = JSON.stringify({ id: 1, type: 3, flags: 0, message: { entries } });
  // Text, because a test's compiler adds helpers to a function that the page does not have.
  const answers = (await page.evaluate(`new Promise((done) => {
    const answers = [];
    const bridge = {
      sendMessageToHost: (text) => {
        for (const action of JSON.parse(text).message.body.Actions)
          if (action.Name === "SetInvocationArrayResults") answers.push(...action.ArgumentInfo.Arguments[0]);
        if (answers.length >= ${calls.length}) done(answers);
        bridge.onMessageFromHost(JSON.stringify({ id: JSON.parse(text).id, type: 2, flags: 0,
          message: { statusCode: 200, headers: {}, body: { Results: [] } } }));
      },
    };
    OfficeExtension.HostBridge.init(bridge);
    bridge.onMessageFromHost(${JSON.stringify(message)});
  })`)) as Sent[];
  return new Map(answers.map((answer) => [answer[0], answer]));
}

/** As many single calls as a long log book holds, for a board from 1 in to nearly 11 in and a kerf of 1/8 in. */
export function tenThousandCalls(name: string): Call[] {
  return Array.from({ length: 10_000 }, (_, at) => ({ name, given: [[[1 + at / 1000]], [[0.125]]] }));
}
