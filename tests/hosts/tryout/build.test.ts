import type * as Files from "node:fs";
import { expect, it, vi } from "vitest";
import { buildPage, ROOT } from "../../../src/hosts/tryout/build";

/** A checkout in which nothing may be written, and where the page was never built. */
vi.mock("node:fs", async (original) => {
  const real = await original<typeof Files>();
  const refuse = () => {
    throw Object.assign(new Error("EROFS: read-only file system, mkdir"), { code: "EROFS" });
  };
  return { ...real, existsSync: () => false, mkdirSync: refuse, writeFileSync: refuse };
});

it("says in a sentence that a read-only checkout cannot build its page, and what to do", async () => {
  await expect(buildPage()).rejects.toThrow(
    new Error(
      `The page has to be built, and nothing can be written in ${ROOT} (EROFS). Copy the project to a folder of your own and start it there.`,
    ),
  );
});
