import { expect, it } from "vitest";
import { openPackage } from "../../src/xlsx/package";
import { readParts } from "../../src/xlsx/parts";
import { tiny } from "../hosts/terminal/file/tiny";

const MEGABYTE = 1024 * 1024;

it("sheets that are too large for memory are refused in words before they are read", async () => {
  const file = openPackage(await tiny({ sheets: { Logs: "", Prices: "" } }), new Date("2026-03-01"));
  const read = (megabytes: number) => () =>
    readParts({
      ...file,
      size: () => megabytes * MEGABYTE,
      text: (part) => {
        if (megabytes > 100 && part.includes("sheets/")) throw new Error("it was read");
        return file.text(part);
      },
    });
  expect(read(100)).not.toThrow();
  expect(read(105)).toThrow("its sheets unpack to 210 MB; the limit is 200 MB");
});
