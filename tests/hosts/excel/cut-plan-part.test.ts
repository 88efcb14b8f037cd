import { describe, expect, it } from "vitest";
import { CUTPLAN } from "../../../src/functions";
import { paneBeside } from "./open-pane";
import { axeByDayAndNight, NARROW, said, widthNeeded } from "./pane-page";
import { choose, contents, plainCells, sheetNamed } from "./stand-in";

const pane = paneBeside(
  { active: "Logs", chosen: "D2", sheets: { Logs: { cells: plainCells({ A2: 20, B2: "8-6" }) } } },
  "Cut plan",
);

const plan = () => pane.page.locator(".plan");

async function fill(values: Record<string, string>): Promise<void> {
  for (const [label, value] of Object.entries(values)) await pane.page.getByLabel(label, { exact: true }).fill(value);
}
const LOG = { "Diameter of the small end": "20", Length: "8-6", "Thicknesses wanted": "5/4, 8/4", Kerf: "1/8" };
const total = CUTPLAN([[20]], [["8-6"]], [["5/4"], ["8/4"]], [["1/8"]]).find(
  ([pass]) => pass === "total",
)![5] as number;

async function show(values: Record<string, string> = LOG): Promise<void> {
  await fill(values);
  await pane.page.getByRole("button", { name: "Show the plan" }).click();
}

describe("a log planned in the pane", () => {
  it("shows the total, the settings of the head and the end of the log", async () => {
    await show();
    await expect.poll(() => said(pane.page)).toMatch(/board feet in \d+ passes$/);
    expect(total).toBeGreaterThan(100);
    const shown = Number(/^([\d.,]+) board feet/.exec((await said(pane.page))!)![1]!.replaceAll(",", ""));
    expect(shown).toBeCloseTo(total, 2);
    const passes = Number(/in (\d+) passes/.exec((await said(pane.page))!)![1]);
    expect(await plan().locator("tr").count()).toBe(passes + 1);
    expect(await plan().locator("tr").first().textContent()).toContain("blade height");
    expect(await plan().locator("tr").nth(1).textContent()).toMatch(/^1\d+-\d+\/\d+first cut$/);
    expect(await plan().locator("tr").nth(2).textContent()).toMatch(/^2\d+-\d+\/\d+5\/4 × \d+ in × \d+ ft$/);
    const drawing = plan().getByRole("img", { name: /20 in log, 8 ft 6 in long, sawn live/ });
    expect(await drawing.locator("rect").count()).toBeGreaterThan(passes - 2);
  });

  it("takes a cell for a number, and names it in the formula without its own sheet", async () => {
    await show({ ...LOG, "Diameter of the small end": "Logs!A2", Length: "B2" });
    await expect.poll(() => said(pane.page)).toMatch(/board feet/);
    await choose(pane.page, "F5");
    await pane.page.getByRole("button", { name: "Put the formula into the chosen cell" }).click();
    await expect.poll(() => said(pane.page)).toBe('Logs!F5 now holds =BOLE.CUTPLAN(A2, B2, {"5/4";"8/4"}, "1/8")');
    expect((await contents(pane.page, "Logs"))["F5"]).toBe('=BOLE.CUTPLAN(A2, B2, {"5/4";"8/4"}, "1/8")');
  });

  it("asks for the bed clearance and the large end before the rest, and writes a zero so that it is no blank", async () => {
    const labels = await pane.page.locator("form[aria-label='A log to cut'] label:visible").allTextContents();
    expect(labels.slice(4)).toEqual(["Bed clearance", "Diameter of the large end", "Pattern"]);
    await pane.page.getByText("More about the log and the mill").click();
    await show({ ...LOG, "Bed clearance": "1", Taper: "0" });
    await expect.poll(() => said(pane.page)).toMatch(/board feet in/);
    await choose(pane.page, "F6");
    await pane.page.getByRole("button", { name: "Put the formula into the chosen cell" }).click();
    await expect
      .poll(() => said(pane.page))
      .toBe('Logs!F6 now holds =BOLE.CUTPLAN(20, "8-6", {"5/4";"8/4"}, "1/8", , {"bed clearance",1;"taper","0"})');
  });

  it("puts pattern and settings into the formula, and asks for the widths of a cant", async () => {
    await pane.page.getByLabel("Pattern").selectOption("cant");
    await show();
    await expect.poll(() => plan().textContent()).toMatch(/#N\/A: cant widths/);
    await show({ ...LOG, "Cant widths": "6, 8", Trim: "4" });
    await expect.poll(() => plan().locator("svg").count()).toBe(1);
    await pane.page.getByRole("button", { name: "Put the formula into the chosen cell" }).click();
    await expect
      .poll(() => said(pane.page))
      .toBe(
        'Logs!D2 now holds =BOLE.CUTPLAN(20, "8-6", {"5/4";"8/4"}, "1/8", "cant", {"trim",4;"cant widths","6, 8"})',
      );
  });

  it("places the end view at the chosen cell as a picture with words for it", async () => {
    await show();
    await plan().locator("svg").waitFor();
    await choose(pane.page, "C3");
    await pane.page.getByRole("button", { name: "Place the picture on the sheet" }).click();
    await expect.poll(() => said(pane.page)).toBe("The end view stands at Logs!C3");
    const [picture] = (await sheetNamed(pane.page, "Logs")).pictures!;
    expect([picture!.left, picture!.top]).toEqual([96, 30]);
    expect(picture!.altTextDescription).toMatch(/^End of the log: .* board feet in \d+ passes$/);
    const png = Buffer.from(picture!.base64, "base64");
    expect(png.subarray(1, 4).toString()).toBe("PNG");
    expect(png.readUInt32BE(16)).toBeGreaterThan(1000);
    expect(pane.complaints).toEqual([]);
  });

  it("says in words what is missing or cannot be", async () => {
    await show({ ...LOG, Kerf: "" });
    await expect.poll(() => plan().textContent()).toMatch(/#VALUE!: kerf/);
    await show({ ...LOG, "Diameter of the small end": "wide" });
    await expect.poll(() => plan().textContent()).toMatch(/#VALUE!: diameter: wanted .*"wide"/);
    expect(await plan().locator("svg").count()).toBe(0);
  });

  it("leaves a calculation to the sheet, and still puts the formula there", async () => {
    await show({ ...LOG, Kerf: "=1/8" });
    await expect.poll(() => plan().textContent()).toContain("The sheet has to work this one out");
    await pane.page.getByRole("button", { name: "Put the formula into the chosen cell" }).click();
    await expect.poll(() => said(pane.page)).toBe('Logs!D2 now holds =BOLE.CUTPLAN(20, "8-6", {"5/4";"8/4"}, 1/8)');
  });

  it("shows a setting of the head as it is read off the scale, and exactly", async () => {
    await show();
    const first = CUTPLAN([[20]], [["8-6"]], [["5/4"], ["8/4"]], [["1/8"]]).find(([row]) => row === "first cut")!;
    await expect.poll(() => plan().textContent()).toMatch(/first cut: \d+-\d+\/\d+: /);
    const [, whole, top, bottom] = /first cut: (\d+)-(\d+)\/(\d+): /.exec((await plan().textContent())!)!;
    expect(Number(whole) + Number(top) / Number(bottom)).toBe(first[1]);
  });

  it("asks for numbers while there are none", async () => {
    await pane.page.getByRole("button", { name: "Show the plan" }).click();
    await expect.poll(() => plan().textContent()).toMatch(/Fill in/);
  });
});

describe("the part Cut plan", () => {
  const reached = () =>
    pane.page.evaluate(
      () => document.activeElement!.getAttribute("aria-label") ?? document.activeElement!.textContent!,
    );

  it("is worked by keyboard alone", async () => {
    await pane.page.getByRole("navigation").getByRole("button", { name: "Cut plan" }).focus();
    await pane.page.keyboard.press("Tab");
    expect(await reached()).toBe("The log and the mill");
    for (const value of Object.values(LOG)) {
      await pane.page.keyboard.press("Tab");
      await pane.page.keyboard.type(value);
    }
    // bed clearance, large end, pattern, the folded settings, the button
    for (let i = 0; i < 5; i++) await pane.page.keyboard.press("Tab");
    expect(await reached()).toBe("Show the plan");
    await pane.page.keyboard.press("Enter");
    await plan().locator("svg").waitFor();
    expect(await reached()).toMatch(/board feet in \d+ passes$/);
    for (const wanted of [
      "Settings of the saw head",
      "See it large",
      "Copy the picture",
      "Put the formula into the chosen cell",
      "Place the picture on the sheet",
    ]) {
      await pane.page.keyboard.press("Tab");
      expect(await reached()).toBe(wanted);
    }
  });

  it("folds the form once there is a plan, and keeps it open while something is wrong", async () => {
    const diameter = pane.page.getByLabel("Diameter of the small end");
    await show({ ...LOG, Kerf: "thin" });
    await expect.poll(() => plan().textContent()).toMatch(/#VALUE!: kerf/);
    expect(await diameter.isVisible()).toBe(true);
    await show();
    await plan().locator("svg").waitFor();
    expect(await diameter.isVisible()).toBe(false);
    await pane.page.getByText("The log and the mill", { exact: true }).click();
    expect(await diameter.inputValue()).toBe("20");
  });

  it("shows the end view as wide as the pane, all of it large, and its letters at full size, by keyboard", async () => {
    await show();
    const small = plan().locator("svg");
    expect((await small.boundingBox())!.width).toBeLessThan(NARROW.width);
    const open = pane.page.getByRole("button", { name: "See it large" });
    await open.focus();
    await pane.page.keyboard.press("Enter");
    const dialog = pane.page.getByRole("dialog", { name: "The end view, large" });
    const drawing = dialog.getByRole("img", { name: /20 in log/ });
    const drawn = Number(await drawing.getAttribute("width"));
    expect((await drawing.boundingBox())!.width).toBeLessThan(NARROW.width);
    await dialog.getByRole("button", { name: "Full size" }).press("Enter");
    expect((await drawing.boundingBox())!.width).toBeCloseTo(drawn, 0);
    expect((await dialog.boundingBox())!.width).toBeLessThanOrEqual(NARROW.width);
    expect(await axeByDayAndNight(pane.page)).toEqual([]);
    await pane.page.keyboard.press("Escape");
    await expect.poll(() => pane.page.locator("dialog").count()).toBe(0);
    expect(await open.evaluate((button) => button === document.activeElement)).toBe(true);
    await open.click();
    await dialog.getByRole("button", { name: "Close" }).click();
    await expect.poll(() => pane.page.locator("dialog").count()).toBe(0);
  });

  it("is sound by axe by day and by night, and fits into 320 pixels", async () => {
    await pane.page.getByText("More about the log and the mill").click();
    expect(await axeByDayAndNight(pane.page)).toEqual([]);
    expect(await widthNeeded(pane.page)).toBe(NARROW.width);
    await show();
    await plan().locator("svg").waitFor();
    expect(await axeByDayAndNight(pane.page)).toEqual([]);
    expect(await widthNeeded(pane.page)).toBe(NARROW.width);
  });
});
