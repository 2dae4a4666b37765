/** The golfer's own lengths on the built pages: derived, typed over, taken back, and every figure after them. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, inject, onTestFinished, test } from "vitest";
import type { Browser, Page } from "playwright-core";
import type { GroundData } from "../../src/contract/ground-data.ts";
import { violations } from "../support/axe.ts";
import { connect, PHONE, watchedPage, type Faults } from "../support/browser.ts";
import { pagesOf } from "../support/site.ts";

const { origin, base, folder } = inject("site");
const holePages = pagesOf(folder).filter((page) => /^[^/]+\/\d+\/$/.test(page));
const holePage = (number: number): string => holePages.find((path) => path.endsWith(`/${number}/`))!;

let browser: Browser;
beforeAll(async () => {
  browser = await connect();
});
afterAll(() => browser.close());

async function openLadder(hole: number): Promise<{ page: Page; record: Faults; asked: string[] }> {
  const { page, record } = await watchedPage(browser, origin, { viewport: PHONE, reducedMotion: "reduce" });
  onTestFinished(() => page.context().close());
  const asked: string[] = [];
  page.on("request", (request) => asked.push(request.url()));
  await page.goto(`${origin}${base}${holePage(hole)}`);
  await page.locator("[data-conditions] > summary").click();
  await page.waitForFunction(() => document.querySelector("[data-conditions-now]")?.textContent?.includes(":"));
  expect(asked.filter((url) => /lengths-panel/.test(url))).toEqual([]);
  await page.locator("[data-lengths] > summary").click();
  await page.locator(".ladder").waitFor();
  return { page, record, asked };
}

const driver = (page: Page) => page.locator('[data-field="carry"]');
const rung = (page: Page, id: string) => page.locator(`[data-rung="${id}"] input`);
const lengths = (page: Page): Promise<string[]> =>
  page.locator(".ladder input").evaluateAll((inputs) => inputs.map((input) => (input as HTMLInputElement).value));
const told = (page: Page): Promise<string> => page.locator("[data-own-shots]").innerText();
/** The rows of the table that is shown, cells apart by tabs, as they are read. */
const rowsOf = (page: Page, selector: string): Promise<string[]> =>
  page.locator(`.plays:visible ${selector}`).evaluateAll((rows) =>
    rows
      .filter((row) => row.closest("[hidden]") === null)
      .map((row) =>
        [...(row as HTMLTableRowElement).cells]
          .filter((cell) => !cell.hidden)
          .map((cell) => cell.innerText.trim().replace(/\s+/g, " "))
          .join("\t"),
      ),
  );
const tableRows = (page: Page): Promise<string[]> => rowsOf(page, "tbody tr");
const chosenRow = (page: Page): Promise<string[]> => rowsOf(page, "tr.chosen");
const turnTo = (page: Page, units: string) =>
  page.locator(`input[data-setting="units"][value="${units}"]`).evaluate((input: HTMLInputElement) => input.click());

describe("the ladder", () => {
  test("follows the driver, keeps what is typed over through another driver, another unit and a reload, and gives it back", async () => {
    const { page, record } = await openLadder(13);
    expect(await lengths(page)).toEqual(Array.from({ length: 7 }, () => ""));
    await driver(page).fill("200");
    // Published shares of the tour: 236.5, 225, 207.5, 183, 154 and 136 of 269 yards; the sand wedge two fifths.
    await expect.poll(() => lengths(page)).toEqual(["176", "167", "154", "136", "114", "101", "80"]);

    await rung(page, "mid-iron").fill("140");
    await expect.poll(() => page.locator('[data-rung="mid-iron"] .ladder-own').isVisible()).toBe(true);
    await driver(page).fill("210");
    await expect.poll(() => lengths(page)).toEqual(["185", "176", "162", "140", "120", "106", "84"]);

    await turnTo(page, "metres");
    // 140 yards are 128.0 m exactly rounded.
    await expect.poll(() => rung(page, "mid-iron").inputValue()).toBe("128");
    await turnTo(page, "yards");
    await page.reload();
    await page.locator("[data-conditions] > summary").click();
    await page.locator("[data-lengths] > summary").click();
    await expect.poll(() => lengths(page)).toEqual(["185", "176", "162", "140", "120", "106", "84"]);

    await page.locator('[data-rung="mid-iron"] .ladder-back').click();
    await expect.poll(() => rung(page, "mid-iron").inputValue()).toBe("143");
    expect(await page.evaluate(() => localStorage.getItem("marram.lengths"))).toBeNull();
    expect(await rung(page, "mid-iron").evaluate((input) => input === document.activeElement)).toBe(true);
    expect(record).toEqual({ errors: [], foreign: [], missing: [] });
  });

  test("says so when the hole's data are missing, of another version or damaged, and has them with the next length", async () => {
    const { page } = await openLadder(13);
    const data = JSON.parse(readFileSync(join(folder, holePage(13), "ground.json"), "utf8")) as GroundData;
    const answers = [
      { status: 404 },
      { json: { ...data, version: data.version - 1 } },
      { json: { ...data, corridorMetres: "wide" } },
    ];
    for (const [i, answer] of answers.entries()) {
      await page.route("**/ground.json", (route) => route.fulfill(answer));
      await driver(page).fill(String(200 + i));
      await expect.poll(() => page.locator("[data-conditions-now]").innerText()).toMatch(/did not arrive/);
      expect(await page.locator("[data-own-shots]").isVisible()).toBe(false);
      await page.unroute("**/ground.json");
    }
    await driver(page).fill("205");
    await expect.poll(() => page.locator("[data-own-shots]").isVisible()).toBe(true);
    expect(await page.locator("[data-conditions-now]").innerText()).not.toMatch(/did not arrive/);
  });

  test("gives back all at once, by keyboard, and one by an emptied field", async () => {
    const { page } = await openLadder(13);
    await driver(page).fill("200");
    await rung(page, "hybrid").fill("170");
    await rung(page, "sand-wedge").fill("75");
    await rung(page, "hybrid").fill("");
    await rung(page, "hybrid").blur();
    await expect.poll(() => rung(page, "hybrid").inputValue()).toBe("167");
    await rung(page, "long-iron").fill("150");
    await page.locator("[data-ladder-all]").focus();
    await page.keyboard.press("Enter");
    await expect.poll(() => lengths(page)).toEqual(["176", "167", "154", "136", "114", "101", "80"]);
    expect(await page.locator("[data-ladder-all]").isVisible()).toBe(false);
  });

  test("tells what is out of order, and refuses what no stroke carries", async () => {
    const { page } = await openLadder(13);
    await driver(page).fill("200");
    await rung(page, "hybrid").fill("190");
    await expect.poll(() => page.locator("[data-ladder-told]").innerText()).toMatch(/Hybrid.*Fairway wood/);
    await rung(page, "hybrid").fill("165");
    await expect.poll(() => page.locator("[data-ladder-told]").innerText()).toBe("");
    for (const text of ["900", "-3", "far"]) {
      await rung(page, "hybrid").fill(text);
      expect(await rung(page, "hybrid").getAttribute("aria-invalid")).toBe("true");
      expect(await page.locator('[data-rung="hybrid"] .field-note').innerText()).toMatch(/40 to 340/);
    }
    const kept = JSON.parse((await page.evaluate(() => localStorage.getItem("marram.lengths")))!) as Record<
      string,
      number
    >;
    expect(kept["hybrid"]).toBeCloseTo(165 * 0.9144, 9);
  });

  test("has no fault of accessibility, by day or by night, nor with a length refused", async () => {
    const { page } = await openLadder(11);
    await driver(page).fill("200");
    await rung(page, "hybrid").fill("190");
    await rung(page, "mid-iron").fill("9000");
    expect(await violations(page)).toEqual([]);
    await page.emulateMedia({ colorScheme: "dark" });
    expect(await violations(page)).toEqual([]);
    await page.evaluate(() => document.documentElement.style.setProperty("font-size", "200%"));
    // A table may be wider than the phone, in a part that scrolls by itself; nothing else may.
    const wide = await page
      .locator(".plays-section *")
      .evaluateAll(
        (all, width) =>
          all
            .filter((one) => one.closest(".scroller") === null && one.getBoundingClientRect().right > width)
            .map((one) => one.outerHTML.slice(0, 80)),
        PHONE.width,
      );
    expect(wide).toEqual([]);
  });
});

describe("what the lengths do on a hole", () => {
  test("names the shot that carries and the one for the green, and follows length, wind and tee", async () => {
    const { page, record } = await openLadder(7);
    await driver(page).fill("200");
    await expect.poll(() => told(page)).toMatch(/Carry .*\n.+ or longer/);
    const calm = await told(page);
    await rung(page, "hybrid").fill("150");
    await rung(page, "long-iron").fill("145");
    await expect.poll(() => told(page)).not.toBe(calm);
    await page.locator("[data-ladder-all]").click();
    await expect.poll(() => told(page)).toBe(calm);
    await page.locator('[data-field="speed"]').fill("25");
    await page
      .locator('[data-field="from"]')
      .fill((await page.locator("[data-conditions]").getAttribute("data-bearing"))!);
    await expect.poll(() => told(page)).not.toBe(calm);
    await page.locator("[data-conditions-fields] [type=reset]").click();
    await page
      .locator('input[data-setting="tee"]:not(:checked)')
      .first()
      .evaluate((input: HTMLInputElement) => input.click());
    await expect.poll(() => told(page)).not.toBe(calm);
    expect(record).toEqual({ errors: [], foreign: [], missing: [] });
  });

  test("draws the drive on the plate as far as it carries today on this ground, and with plain figures as far as the golfer says", async () => {
    const { page } = await openLadder(13);
    expect(await page.locator("[data-own-arc]").count()).toBe(0);
    await driver(page).fill("200");
    const arc = page.locator("[data-own-arc]").first();
    const yards = async (): Promise<number> => Number(/(\d+)\s*yd/.exec((await arc.textContent()) ?? "")?.[1]);
    await expect.poll(yards).toBeGreaterThan(190);
    expect(await yards()).toBeLessThan(210);
    const radius = (await arc.locator(".own-arc-line").getAttribute("d"))!.split("A")[1]!.split(" ")[0]!;
    const scale = (await page.locator("svg[data-plane]").first().getAttribute("data-plane"))!
      .split(" ")
      .slice(0, 2)
      .map(Number);
    expect(Math.abs(Number(radius) / Math.hypot(...scale) / 0.9144 - (await yards()))).toBeLessThan(0.6);
    // The hole's bearing is the wind's where none is given: 20 mph in the face.
    await page.locator('[data-field="speed"]').fill("20");
    await expect.poll(yards).toBeLessThan(180);
    expect(await page.locator("[data-own-drive]").textContent()).toContain("200");
    await page.locator(".plays-section [data-plain-switch]").click();
    await expect.poll(yards).toBe(200);
    await page.locator(".plays-section [data-plain-switch]").click();
    await expect.poll(yards).toBeLessThan(180);
    await driver(page).fill("");
    await expect.poll(() => page.locator("[data-own-arc]").count()).toBe(0);
  });

  test("goes with plain figures, and comes back after them", async () => {
    const { page } = await openLadder(13);
    await driver(page).fill("200");
    await expect.poll(() => page.locator("[data-own-shots]").isVisible()).toBe(true);
    await page.locator(".plays-section [data-plain-switch]").click();
    expect(await page.locator("[data-own-shots]").isVisible()).toBe(false);
    expect(await page.locator(".ladder").isVisible()).toBe(false);
    await page.locator(".plays-section [data-plain-switch]").click();
    expect(await page.locator("[data-own-shots]").isVisible()).toBe(true);
  });
});

test("the third the hole is cut in is the one that is told of: in the glance, the line of the day and the golfer's own shots", async () => {
  const { page } = await openLadder(7);
  await driver(page).fill("200");
  for (const third of ["back", "front"] as const) {
    await page
      .locator(`input[data-setting="third"][value="${third}"]`)
      .evaluate((input: HTMLInputElement) => input.click());
    const name = third === "back" ? "Back third" : "Front third";
    const metres = await page.locator(".glance:visible .mid [data-value]").first().textContent();
    await expect.poll(() => told(page)).toContain(`${name} of the green, ${metres}\u00a0yd`);
    await expect.poll(() => page.locator("[data-conditions-now]").textContent()).toContain(`${name} ${metres}: plays`);
    await expect.poll(() => chosenRow(page)).toEqual([expect.stringMatching(`^${name}\t${metres}\t\\d+ ±\\d+`)]);
  }
});

test("the table has a row for the third in the middle's place with no wind or length given, and the middle's own again after it", async () => {
  const { page, record } = await watchedPage(browser, origin, { viewport: PHONE, reducedMotion: "reduce" });
  onTestFinished(() => page.context().close());
  await page.goto(`${origin}${base}${holePage(7)}`);
  const built = await tableRows(page);
  const cutIn = (third: string) =>
    page.locator(`input[data-setting="third"][value="${third}"]`).evaluate((input: HTMLInputElement) => input.click());
  await cutIn("back");
  await expect.poll(() => chosenRow(page)).toHaveLength(1);
  const metres = await page.locator(".glance:visible .mid [data-value]").first().textContent();
  const [, distance, plays] = (await chosenRow(page))[0]!.split("\t");
  expect(distance).toBe(metres);
  // A third lies between the green's middle and its back, and plays so.
  const [middle, back] = built.slice(-2).map((row) => row.split("\t").slice(1, 3).map(parseFloat)) as [
    number[],
    number[],
  ];
  expect(parseFloat(plays!)).toBeGreaterThan(middle[1]!);
  expect(parseFloat(plays!)).toBeLessThan(back[1]!);
  const now = page.locator("[data-conditions-now]");
  expect(await now.textContent()).toContain(`Back third ${metres}: plays ${parseFloat(plays!)}`);
  expect(await tableRows(page)).toHaveLength(built.length);

  // Kept: the page opens so, and turns its unit.
  await page.reload();
  await expect.poll(() => chosenRow(page)).toHaveLength(1);
  await turnTo(page, "metres");
  await expect
    .poll(async () => (await chosenRow(page))[0]!.split("\t")[1])
    .toBe(await page.locator(".glance:visible .mid [data-value]").first().textContent());
  await turnTo(page, "yards");
  await cutIn("middle");
  await expect.poll(() => tableRows(page)).toEqual(built);
  expect(await now.textContent()).toContain(`Middle ${middle[0]}: plays ${middle[1]}`);
  expect(record).toEqual({ errors: [], foreign: [], missing: [] });
});

test("after the golfer's own drive the table tells the third too, in the day's wind as well", async () => {
  const { page } = await openLadder(13);
  await page
    .locator('input[data-setting="third"][value="front"]')
    .evaluate((input: HTMLInputElement) => input.click());
  await driver(page).fill("200");
  await page.locator('[data-field="speed"]').fill("12");
  // One after the built drive, one after the golfer's own.
  await expect.poll(() => chosenRow(page)).toHaveLength(2);
  const distances = (await rowsOf(page, "[data-own] tr:not(.group)")).map((row) => Number(row.split("\t")[1]));
  expect(distances).toHaveLength(3);
  expect(distances[2]! - distances[0]!).toBeGreaterThan(10);
  // A sixth of the way from the front to the back; each in whole yards.
  expect(Math.abs(distances[1]! - (distances[0]! + (distances[2]! - distances[0]!) / 6))).toBeLessThanOrEqual(1);
  const today = page.locator(".plays:visible [data-own] .chosen td[data-today] b");
  await expect
    .poll(async () => page.locator("[data-conditions-now]").textContent())
    .toContain(`Front third ${distances[1]}: plays ${await today.textContent()}.`);
});
