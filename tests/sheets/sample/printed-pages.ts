import { execFileSync } from "node:child_process";
import { join } from "node:path";
import { pathToFileURL } from "node:url";

/** A word on a page, with its box in points from the upper left corner. */
export interface Word {
  text: string;
  left: number;
  right: number;
  top: number;
  bottom: number;
}

export interface PrintedPage {
  width: number;
  height: number;
  words: Word[];
}

/** Prints a workbook through LibreOffice into a folder of the test's, and reads what stands on each page. */
export function printedPages(workbook: string, folder: string): PrintedPage[] {
  const profile = pathToFileURL(join(folder, "profile")).href;
  const convert = [`-env:UserInstallation=${profile}`, "--headless", "--convert-to", "pdf", "--outdir", folder];
  execFileSync("soffice", [...convert, workbook], { stdio: "pipe", timeout: 300_000 });
  const pdf = join(
    folder,
    `${workbook
      .split("/")
      .at(-1)!
      .replace(/\.xlsx$/, "")}.pdf`,
  );
  const boxes = execFileSync("pdftotext", ["-bbox", pdf, "-"], { encoding: "utf8", maxBuffer: 1e9 });
  return boxes
    .split("<page ")
    .slice(1)
    .map((page) => ({
      ...{ width: numberIn(page, "width"), height: numberIn(page, "height") },
      words: [...page.matchAll(/<word ([^>]*)>(.*?)<\/word>/gs)].map(([, box = "", text = ""]) => ({
        text: text
          .replace(/&apos;/g, "'")
          .replace(/&quot;/g, '"')
          .replace(/&lt;/g, "<")
          .replace(/&amp;/g, "&"),
        ...{ left: numberIn(box, "xMin"), right: numberIn(box, "xMax") },
        ...{ top: numberIn(box, "yMin"), bottom: numberIn(box, "yMax") },
      })),
    }));
}

function numberIn(attributes: string, name: string): number {
  return Number(new RegExp(`${name}="([^"]*)"`).exec(attributes)![1]);
}

/** The sheet of a page stands in the middle of its foot. */
export function sheetOf({ words, width, height }: PrintedPage): string {
  const foot = words.filter(({ bottom }) => bottom > height - 36);
  return foot
    .filter(({ left, right }) => Math.abs((left + right) / 2 - width / 2) < width / 8)
    .map(({ text }) => text)
    .join(" ");
}
