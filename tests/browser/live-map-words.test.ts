/** Live map and flyover in a language of other letters: what they say is the dictionary's, all of it. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, expect, inject, onTestFinished, test } from "vitest";
import type { Browser, Page } from "playwright-core";
import type { FilmData } from "../../src/contract/film-data.ts";
import { words } from "../../src/site/language/words.ts";
import { readIslandWords } from "../../src/words/island-words.ts";
import type { CompiledGroup } from "../../src/words/compiled.ts";
import { foreign } from "../islands/speech.ts";
import { connect, watchedPage } from "../support/browser.ts";
import { slot, spoken, start } from "../support/live-map.ts";
import { pagesOf } from "../support/site.ts";

const { origin, base, folder } = inject("site");
/** Also of other languages, a folder deeper. */
const holes = pagesOf(folder).filter((page) => /^(?:[^/]+\/){1,2}\d+\/$/.test(page));
const hole = holes.find((page) => /^[^/]+\/\d+\/$/.test(page))!;
/** The first hole's page in each language. */
const inEachLanguage = holes.filter((page) => page.endsWith(hole));

let browser: Browser;
beforeAll(async () => {
  browser = await connect();
});
afterAll(() => browser.close());

/** A page whose islands are given words, and whose map is given names, without a Latin letter. */
async function open(path: string): Promise<Page> {
  const { page } = await watchedPage(browser, origin, {
    reducedMotion: "reduce",
    viewport: { width: 320, height: 480 },
  });
  onTestFinished(() => page.context().close());
  await page.route(/\/words-[\w-]+\.json$/, async (route) => {
    const response = await route.fetch();
    await route.fulfill({ response, json: foreign((await response.json()) as CompiledGroup) });
  });
  await page.route(/\/hole\.json$/, async (route) => {
    const response = await route.fetch();
    await route.fulfill({ response, body: (await response.text()).replaceAll(/"name":"[^"]*"/g, `"name":"Юю"`) });
  });
  await page.goto(`${origin}${base}${path}`);
  return page;
}

/** All that the map's elements show or are called. */
const said = (page: Page): Promise<string> =>
  page.locator(".live-map").evaluate((root) =>
    [root, ...root.querySelectorAll("*")]
      .flatMap((element) => [
        ...["aria-label", "title", "alt", "placeholder"].map((name) => element.getAttribute(name) ?? ""),
        ...[...element.childNodes]
          .filter(({ nodeType }) => nodeType === Node.TEXT_NODE)
          .map(({ textContent }) => textContent ?? ""),
      ])
      .filter((text) => text.trim() !== "")
      .join("\n"),
  );

const LATIN = /\p{Script=Latin}/u;

test("the map's buttons, hints, figures and what is spoken", async () => {
  const page = await open(hole);
  expect(await start(page)).toBe("ready");
  expect(await said(page)).not.toMatch(LATIN);
  await page.keyboard.press("Enter");
  // Once more when it is known how far it plays.
  await expect.poll(() => spoken(page).textContent()).toMatch(/±/);
  expect(await said(page)).not.toMatch(LATIN);
  const tools = await page.locator(".live-map-tools button").count();
  expect(tools).toBeGreaterThanOrEqual(3);
  for (const one of await page.locator(".live-map-tools button").all()) {
    await one.click();
    expect(await said(page)).not.toMatch(LATIN);
  }
});

test.each(inEachLanguage)("%s speaks its page's language", async (path) => {
  const { page } = await watchedPage(browser, origin, { reducedMotion: "reduce" });
  onTestFinished(() => page.context().close());
  await page.goto(`${origin}${base}${path}`);
  const language = (await page.locator("html").getAttribute("lang"))!;
  const own = readIslandWords(
    JSON.parse(readFileSync(join(folder, `words-${language}.json`), "utf8")) as { readonly locale: string },
  );
  expect(await slot(page).getAttribute("data-loading")).toBe(own.liveMap.loading);
  await page.locator(".open-map").click();
  await page.locator(".live-map-tools").waitFor();
  expect(await page.locator(".live-map-tools").getAttribute("aria-label")).toBe(own.liveMap.whatItDoes);
});

test("a map that cannot be drawn says why in the dictionary's words, one that cannot be loaded in its slot's", async () => {
  const page = await open(hole);
  const status = page.locator('.open-map + [role="status"]');
  await page.evaluate(() => {
    HTMLCanvasElement.prototype.getContext = () => null;
  });
  expect(await start(page)).toBe("failed");
  expect(await status.textContent()).toMatch(/^ж/);
  await page.reload();
  await page.route(/\/hole\.json$/, (route) => route.fulfill({ status: 404 }));
  await page.route(/\/words-[\w-]+\.json$/, (route) => route.fulfill({ status: 404 }));
  expect(await start(page)).toBe("failed");
  expect(await status.textContent()).toBe(await slot(page).getAttribute("data-not-loaded"));
  expect(await status.textContent()).not.toBe("");
});

test("the flyover's player, beside chapters in its page's language", async () => {
  const path = inEachLanguage.find((page) => page !== hole)!;
  const page = await open(`${path}flyover/`);
  await page.locator("[data-film-start]").click();
  await page.waitForFunction(() => document.querySelector<HTMLElement>("[data-film]")?.dataset["state"] === "ready");
  expect(await page.locator("[data-film-toggle]").textContent()).toMatch(/^ж+$/);
  expect(await page.locator("[data-film-place]").getAttribute("aria-valuetext")).toMatch(/^0:00 ж+ \d:\d\d, /);
  const {
    chapters: [first],
  } = JSON.parse(readFileSync(join(folder, path, "flyover.json"), "utf8")) as FilmData;
  await expect.poll(() => page.locator("[data-film]").innerText()).toContain(first!.title);
  const language = (await page.locator("html").getAttribute("lang"))!;
  expect(first!.title).toBe(words(language).film.chapters[first!.kind as "tee"]);
});
