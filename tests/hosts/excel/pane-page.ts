import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "playwright-core";

/** The narrowest a task pane gets. */
export const NARROW = { width: 320, height: 700 };

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** What the accessibility checker finds wrong with the page, or a part of it: contrast, names, roles, order. */
export async function axeComplaints(page: Page, part = "html"): Promise<string[]> {
  await page.evaluate(AXE);
  const { violations } = (await page.evaluate(`axe.run("${part}")`)) as {
    violations: { id: string; nodes: { html: string }[] }[];
  };
  return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
}

/** The same by day and by night. */
export async function axeByDayAndNight(page: Page): Promise<string[]> {
  const complaints: string[] = [];
  for (const colorScheme of ["dark", "light"] as const) {
    await page.emulateMedia({ colorScheme });
    complaints.push(...(await axeComplaints(page)).map((complaint) => `${colorScheme}: ${complaint}`));
  }
  return complaints;
}

/** How wide the page needs to be not to scroll sideways. */
export function widthNeeded(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth);
}

export type Part = "Formulas" | "This cell" | "Sheets" | "Cut plan";

/** Goes to a part of the pane. */
export async function goTo(page: Page, part: Part): Promise<void> {
  await page.getByRole("navigation").getByRole("button", { name: part }).click();
}

/** What the pane says was done. */
export function said(page: Page): Promise<string | null> {
  return page.locator("#said").textContent();
}
