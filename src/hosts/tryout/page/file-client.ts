import type { IWorkbookData } from "@univerjs/core";
import type { Changes } from "../saving/changes";
import { SAID_HEADER, WORKBOOK_FIELD, CHANGES_FIELD } from "../saving/wire";

/** The file behind the page: what the grid shows of it, and its bytes, on which a copy is built. */
export interface OpenedFile {
  workbook: IWorkbookData;
  bytes: Blob;
}

/** Fetches the workbook that this page's address names. */
export async function loadFile(): Promise<OpenedFile> {
  const [workbook, file] = await Promise.all(
    ["workbook.json", "workbook.bytes"].map((path) => asked(fetch(path + window.location.search))),
  );
  return { workbook: (await workbook!.json()) as IWorkbookData, bytes: await file!.blob() };
}

export interface SavedFile {
  bytes: Blob;
  said: string;
  macros: boolean;
}

/** Has the copy made. The base goes along, so that it can be no other workbook that was opened since. */
export async function savedCopy({ bytes }: OpenedFile, changes: Changes): Promise<SavedFile> {
  const form = new FormData();
  form.append(WORKBOOK_FIELD, bytes);
  form.append(CHANGES_FIELD, JSON.stringify(changes));
  const answer = await asked(fetch("save", { method: "POST", body: form }));
  const said = decodeURIComponent(answer.headers.get(SAID_HEADER) ?? "");
  const made = await answer.blob();
  return { bytes: made, said, macros: made.type.includes("macro") };
}

/** Has a file looked at and kept ready; answers where the page with it is. */
export async function readied(file: File): Promise<string> {
  const answer = await asked(fetch(`open?name=${encodeURIComponent(file.name)}`, { method: "POST", body: file }));
  return answer.text();
}

/** The answer, or the reason for there being none as a sentence. */
async function asked(asking: Promise<Response>): Promise<Response> {
  const answer = await asking.catch(() => {
    throw new Error(
      "The program behind this page has stopped. Leave the page open, run npm start again and then try once more.",
    );
  });
  if (!answer.ok) throw new Error(await answer.text());
  return answer;
}
