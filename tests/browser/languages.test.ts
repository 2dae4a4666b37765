/**
 * The guide in each of its languages: the same figures, a way from one to the other, and every text marked
 * with its language.
 */
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, inject, onTestFinished, test } from "vitest";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import type { FilmData } from "../../src/contract/film-data.ts";
import { words } from "../../src/site/language/words.ts";
import { connect, settled, watchedPage } from "../support/browser.ts";
import { pagesOf } from "../support/site.ts";

const { origin, base, folder } = inject("site");
const pages = pagesOf(folder).filter((page) => page !== "404.html");
const german = pages.filter((page) => page.startsWith("de/"));
const english = pages.filter((page) => !page.startsWith("de/"));
const holePages = english
  .filter((page) => /^[^/]+\/\d+\/$/.test(page))
  .sort((a, b) => Number(a.split("/")[1]) - Number(b.split("/")[1]));
const courseOf = holePages[0]!.split("/")[0]!;

let browser: Browser;
beforeAll(async () => {
  browser = await connect();
});
afterAll(() => browser.close());

const open = async (path: string, options: BrowserContextOptions = {}): Promise<Page> => {
  const { page } = await watchedPage(browser, origin, options);
  onTestFinished(() => page.context().close());
  await page.goto(`${origin}${base}${path}`);
  if (options.javaScriptEnabled ?? true) await settled(page);
  return page;
};

/** Every figure as it stands in the page, in its order. */
const figures = (page: Page): Promise<string[]> =>
  page
    .locator("main [data-value], main [data-shown]")
    .evaluateAll((all) => all.map((one) => one.textContent.replace(/[^\d]/g, "")));

test("every page stands in both, at the same address below the language's folder", () => {
  expect(holePages).toHaveLength(18);
  expect(german).toEqual(english.map((page) => `de/${page}`));
});

test("a page says its language, in its head and its navigation, and its words are that language's", async () => {
  const page = await open(`de/${holePages[6]!}`, { javaScriptEnabled: false });
  expect(await page.locator("html").getAttribute("lang")).toBe("de");
  expect(await page.locator('meta[property="og:locale"]').getAttribute("content")).toBe("de_DE");
  const say = words("de").holePage;
  for (const text of [say.howFar, say.howToPlay, say.hazards])
    expect(await page.locator("h2", { hasText: text }).first().isVisible(), text).toBe(true);
  expect(await page.locator("main").innerText()).not.toMatch(/\b(?:the|from|of|and|to)\b/);
});

test.each([holePages[0]!, holePages[10]!, `${courseOf}/card/`, ""])(
  "the figures of /%s are the same in both",
  async (path) => {
    const numbers = await figures(await open(path, { javaScriptEnabled: false }));
    expect(numbers.length).toBeGreaterThan(20);
    const other = await figures(await open(`de/${path}`, { javaScriptEnabled: false }));
    // A tip in another language may hold its figures in another order.
    expect([...other].sort()).toEqual([...numbers].sort());
  },
);

test("a link in the masthead leads to the same page in the other language and back", async () => {
  const path = `${courseOf}/card/`;
  const page = await open(path, { javaScriptEnabled: false });
  const there = page.getByRole("link", { name: "Deutsch" });
  expect(await there.getAttribute("hreflang")).toBe("de");
  expect(await there.getAttribute("lang")).toBe("de");
  const size = (await there.boundingBox())!;
  expect(Math.min(size.width, size.height)).toBeGreaterThanOrEqual(44);
  await there.click();
  expect(new URL(page.url()).pathname).toBe(`${base}de/${path}`);
  await page.getByRole("link", { name: "English" }).click();
  expect(new URL(page.url()).pathname).toBe(`${base}${path}`);
});

test("no link of a page leads out of its language but that one, and pictures are shared", () => {
  for (const path of german) {
    const html = readFileSync(join(folder, path, "index.html"), "utf8");
    const foreign = [...html.matchAll(/<a\b[^>]*href="([^"]+)"[^>]*>/g)].filter(
      ([tag, address]) => address!.startsWith(base) && !address!.startsWith(`${base}de/`) && !tag.includes("hreflang"),
    );
    expect(
      foreign.map(([, address]) => address),
      path,
    ).toEqual([]);
    expect(html, path).not.toMatch(/\/de\/[^"]*\.(?:webp|avif|png)/);
  }
});

describe("what nobody has translated", () => {
  test("stands in the first language and is marked: a tip, and its captions", async () => {
    const page = await open(`de/${holePages[10]!}`);
    const tip = page.locator(".tip");
    expect(await tip.getAttribute("lang")).toBe("en");
    // Its figures speak the tip's language, so that one voice can read it through.
    await tip.locator("button.figure").first().click();
    expect(await tip.locator("[popover]:popover-open").innerText()).toMatch(/from the .+ tee/);
    const flown = await open(`de/${holePages[10]!}flyover/`, { javaScriptEnabled: false });
    await flown.locator("details.transcript summary").click();
    const lines = flown.locator(".transcript li span");
    expect(await lines.count()).toBeGreaterThan(3);
    expect(new Set(await lines.evaluateAll((all) => all.map((one) => one.getAttribute("lang"))))).toEqual(
      new Set(["en"]),
    );
  });

  test("what somebody has is not marked", async () => {
    const page = await open(`de/${holePages[0]!}`, { javaScriptEnabled: false });
    expect(await page.locator(".tip").getAttribute("lang")).toBeNull();
    expect(await page.locator(".tip").innerText()).toMatch(/Leuchtturm/);
    expect(await page.locator(".photos img").first().getAttribute("lang")).toBeNull();
    expect(await (await open("de/", { javaScriptEnabled: false })).locator("main [lang]").count()).toBe(0);
  });

  test("keeps its voice when figures are turned to another unit", async () => {
    const page = await open(`de/${holePages[10]!}`);
    await page.locator('button[popovertarget="settings"]').first().click();
    await page.locator('[data-unit-choice="metres"]').first().click();
    await expect
      .poll(() => page.locator(".tip [data-spoken]").first().textContent())
      .toMatch(/^\d+ metres, \d+ yards$/);
    expect(await page.locator(".glance:visible [data-spoken-unit]").first().textContent()).toContain("Meter");
  });
});

test("settings hold in both languages", async () => {
  const page = await open(holePages[0]!);
  await page.locator('button[popovertarget="settings"]').first().click();
  await page.locator('[data-unit-choice="metres"]').first().click();
  await page.goto(`${origin}${base}de/${holePages[0]!}`);
  await expect.poll(() => page.locator(".glance:visible .unit").first().textContent()).toBe("m");
});

test("the live map opens on a page below, with its tiles from where they are shared", async () => {
  const { page, record } = await watchedPage(browser, origin, { viewport: { width: 390, height: 500 } });
  onTestFinished(() => page.context().close());
  await page.goto(`${origin}${base}de/${holePages[6]!}`);
  const tiles: string[] = [];
  page.on("response", (response) => {
    if (/\/ground\/\d/.test(response.url())) tiles.push(new URL(response.url()).pathname);
  });
  await page.locator("[data-live-map-open]").click();
  await expect.poll(() => page.locator("#live-map").getAttribute("data-state")).toBe("ready");
  expect(await page.locator("[role=application]").getAttribute("aria-label")).toMatch(/^Live-Karte/);
  await page.getByRole("button", { name: words("de").liveMap.tools.relief, exact: true }).click();
  await expect.poll(() => tiles.length).toBeGreaterThan(0);
  for (const tile of tiles) expect(tile).toMatch(new RegExp(`^${base}${courseOf}/ground/`));
  expect(record).toEqual({ errors: [], foreign: [], missing: [] });
});

test("a flyover's file of captions is its page's language's", async () => {
  const page = await open(`de/${holePages[6]!}flyover/`, { javaScriptEnabled: false });
  expect(await page.locator('a[type="text/vtt"]').getAttribute("href")).toBe(`${base}de/${holePages[6]!}captions.vtt`);
  const film = JSON.parse(readFileSync(join(folder, "de", holePages[6]!, "flyover.json"), "utf8")) as FilmData;
  const captions = readFileSync(join(folder, "de", holePages[6]!, "captions.vtt"), "utf8").replaceAll(/\s+/g, " ");
  for (const { text } of film.cues) expect(captions).toContain(text.replaceAll(/\s+/g, " ").replaceAll("&", "&amp;"));
});

test("what a page fetches when asked is its own language's", () => {
  for (const path of german) {
    const html = readFileSync(join(folder, path, "index.html"), "utf8");
    for (const [, address] of html.matchAll(/="(\/[^"]*\.(?:json|vtt|webmanifest))"/g))
      expect(address, path).toMatch(new RegExp(`^${base}de/`));
  }
});

test("search engines are told of both where the guide knows its address", () => {
  const file = join(folder, holePages[0]!, "index.html");
  expect(existsSync(file)).toBe(true);
  // This build has no address of its own, so nothing can be given in full.
  expect(readFileSync(file, "utf8")).not.toMatch(/rel="alternate"/);
});
