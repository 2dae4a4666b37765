/** Plain figures beside the tip, on the live map and beside a flight: one switch wherever more is shown. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, inject, onTestFinished, test } from "vitest";
import type { Browser, Locator, Page } from "playwright-core";
import type { HoleData } from "../../src/contract/hole-data.ts";
import { words as wordsOf } from "../../src/site/language/words.ts";
import { violations } from "../support/axe.ts";
import { connect, PHONE, watchedPage, type WatchedPage } from "../support/browser.ts";
import { reading, tap, tool } from "../support/live-map.ts";
import { pagesOf } from "../support/site.ts";

const { origin, base, folder } = inject("site");
const pages = pagesOf(folder);
const holePages = pages.filter((page) => /^(?:de\/)?[^/]+\/\d+\/$/.test(page));
const read = (path: string): string => readFileSync(join(folder, path), "utf8");
const dataOf = (path: string): HoleData => JSON.parse(read(`${path}hole.json`)) as HoleData;
const languageOf = (path: string): "en" | "de" => (path.startsWith("de/") ? "de" : "en");

/** What the Rules say of notes: Rule 4.3a(3), Rules of Golf 2023 (from memory). */
const RULE = "4.3a";
/** Least side of what a finger presses; WCAG 2.2, 2.5.5. */
const LEAST_PX = 44;

let browser: Browser;
beforeAll(async () => {
  browser = await connect();
});
afterAll(() => browser.close());

async function open(path: string): Promise<WatchedPage> {
  const watched = await watchedPage(browser, origin, { viewport: PHONE, reducedMotion: "reduce" });
  onTestFinished(() => watched.page.context().close());
  await watched.page.goto(`${origin}${base}${path}`);
  return watched;
}

const tip = (page: Page): Locator => page.locator("section[aria-labelledby=tip]");
const pressed = (button: Locator): Promise<string | null> => button.getAttribute("aria-pressed");

async function isLargeEnough(button: Locator): Promise<void> {
  const { width, height } = (await button.boundingBox())!;
  expect(Math.min(width, height)).toBeGreaterThanOrEqual(LEAST_PX);
}

/** Runs in the browser. */
function wordsOnTwoLines(button: Element): string[] {
  const text = button.firstChild!;
  return [...text.textContent!.matchAll(/\S+/g)]
    .filter((word) => {
      const range = document.createRange();
      range.setStart(text, word.index);
      range.setEnd(text, word.index + word[0].length);
      return range.getClientRects().length > 1;
    })
    .map(([word]) => word);
}

test("a tip that tells a rise has the switch; every tip says why it may stay, in its page's language", async () => {
  const rising = holePages.filter((path) =>
    /<section[^>]*aria-labelledby="tip".*?<\/section>/s
      .exec(read(`${path}index.html`))![0]
      .includes('data-figure="rise"'),
  );
  expect(new Set(rising.map(languageOf))).toEqual(new Set(["en", "de"]));
  const level = holePages.find((path) => !rising.includes(path))!;
  for (const path of [
    rising.find((one) => languageOf(one) === "en")!,
    rising.find((one) => languageOf(one) === "de")!,
    level,
  ]) {
    const { page, record } = await open(path);
    const { plain } = wordsOf(languageOf(path)).ground;
    expect(plain.tipNote).toContain(RULE);
    const note = tip(page).getByText(plain.tipNote);
    const own = tip(page).getByRole("button", { name: plain.turnOn });
    expect(await own.count()).toBe(path === level ? 0 : 1);
    expect(await note.isVisible()).toBe(false);
    await (path === level ? page.locator("[data-plain-switch]:visible").first() : own).click();
    expect(await note.isVisible()).toBe(true);
    if (path !== level) {
      await isLargeEnough(own);
      expect(await tip(page).locator('[data-figure="rise"]').first().isVisible()).toBe(true);
      const [title, button] = [
        await tip(page)
          .locator("h2")
          .evaluate((heading) => {
            const range = document.createRange();
            range.selectNodeContents(heading);
            const { right, bottom } = range.getBoundingClientRect();
            return { right, bottom };
          }),
        (await own.boundingBox())!,
      ];
      expect(title.right <= button.x || title.bottom <= button.y).toBe(true);
    }
    expect(await violations(page)).toEqual([]);
    expect(record).toEqual({ errors: [], foreign: [], missing: [] });
  }
});

test.each(["en", "de"] as const)(
  "the live map has the switch, in step with the page both ways: %s",
  async (language) => {
    const path = holePages.find((page) => languageOf(page) === language && dataOf(page).hole.par.men === 3)!;
    const data = dataOf(path);
    const words = wordsOf(language);
    const { page, record } = await open(path);
    await page.locator(".open-map").click();
    await page.waitForFunction(() => document.getElementById("live-map")?.dataset["state"] === "ready");
    await tap(page, data.tees.find(({ id }) => id === data.defaultTee)!.green.middle.position);
    const plays = words.liveMap.plays.still({ degrees: "°" }).split("°")[0]!;
    const told = (): Promise<string> => reading(page).innerText();
    await expect.poll(told).toContain(plays);

    const own = tool(page, words.ground.plain.turnOn);
    const pages = page.locator("[data-plain-switch]:visible").first();
    await isLargeEnough(own);
    expect(await pressed(own)).toBe("false");
    await own.click();
    await expect.poll(told).not.toContain(plays);
    expect([await pressed(own), await pressed(pages)]).toEqual(["true", "true"]);
    expect(await page.locator("[data-beyond-distance]:visible").count()).toBe(0);
    expect(await violations(page)).toEqual([]);

    await pages.click();
    await expect.poll(told).toContain(plays);
    expect(await pressed(own)).toBe("false");
    await pages.click();
    expect(await pressed(own)).toBe("true");
    await own.click();
    await expect.poll(told).toContain(plays);
    expect(await pressed(pages)).toBe("false");
    expect(await page.locator("[data-beyond-distance]:visible").count()).toBeGreaterThan(0);

    // On a narrow phone nothing sticks out of the tools, and no word of theirs is broken.
    for (const width of [320, 360]) {
      await page.setViewportSize({ width, height: 640 });
      for (const one of await page.locator(".live-map-tools button").all()) {
        await isLargeEnough(one);
        expect(await one.evaluate(({ scrollWidth, clientWidth }) => scrollWidth - clientWidth)).toBeLessThanOrEqual(0);
        expect(await one.evaluate(wordsOnTwoLines)).toEqual([]);
      }
      expect(
        await page.locator(".live-map-tools").evaluate(({ scrollWidth, clientWidth }) => scrollWidth - clientWidth),
      ).toBeLessThanOrEqual(0);
    }
    expect(record).toEqual({ errors: [], foreign: [], missing: [] });
  },
);

describe("a flight", () => {
  const flights = ["en", "de"].flatMap((language) =>
    [/\/\d+\/flyover\/$/, /\/tour\/$/].map((kind) =>
      pages.find((page) => languageOf(page) === language && kind.test(page))!,
    ),
  );
  test.each(flights)("%s has the switch by the player; on, it says so, and that captions are notes", async (path) => {
    const { plain } = wordsOf(languageOf(path)).ground;
    expect(plain.captionsNote).toContain(RULE);
    const { page, record } = await open(path);
    const own = page.getByRole("button", { name: plain.turnOn });
    const said = page.getByText(`${plain.state} ${plain.captionsNote}`);
    await isLargeEnough(own);
    expect([await pressed(own), await said.isVisible()]).toEqual(["false", false]);
    await own.click();
    expect([await pressed(own), await said.isVisible()]).toEqual(["true", true]);
    expect(await violations(page)).toEqual([]);

    // Kept: the next page of the guide is plain too.
    await page.goto(`${origin}${base}${holePages.find((one) => languageOf(one) === languageOf(path))!}`);
    await expect.poll(() => page.locator("[data-beyond-distance]:visible").count()).toBe(0);
    await page.goto(`${origin}${base}${path}`);
    await expect.poll(() => said.isVisible()).toBe(true);
    await own.click();
    expect([await pressed(own), await said.isVisible()]).toEqual(["false", false]);
    expect(record).toEqual({ errors: [], foreign: [], missing: [] });
  });
});
