/** Every page of the built demo, on a phone by day and at a desk by night. */
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import type { Browser } from "playwright-core";
import { connect, DESK, PHONE, settled, watchedPage, type WatchedPage } from "../support/browser.ts";
import { violations } from "../support/axe.ts";
import { pagesOf } from "../support/site.ts";

const { origin, base, folder } = inject("site");
const pages = pagesOf(folder);
let browser: Browser;

beforeAll(async () => {
  browser = await connect();
});
afterAll(() => browser.close());

test("the site has its pages", () => {
  expect(pages.filter((page) => /^[^/]+\/\d+\/$/.test(page)).length).toBeGreaterThanOrEqual(18);
  for (const page of ["", "404.html"]) expect(pages).toContain(page);
});

describe.each([
  { name: "a phone by day", viewport: PHONE, colorScheme: "light" as const },
  { name: "a desk by night", viewport: DESK, colorScheme: "dark" as const },
])("on $name", ({ viewport, colorScheme }) => {
  let watched: WatchedPage;
  beforeAll(async () => {
    watched = await watchedPage(browser, origin, { viewport, colorScheme });
  });

  test.each(pages)("/%s is clean, fits, keeps its policy and is accessible", async (path) => {
    const { page, record } = watched;
    watched.forget();
    await page.goto(`${origin}${base}${path}`);
    await settled(page);
    const policy = await page.locator(`meta[http-equiv="Content-Security-Policy"]`).getAttribute("content");
    expect(policy).toMatch(/script-src 'self'/);
    expect(policy).not.toMatch(/unsafe-|https?:|\*/);
    const { overflow, widest } = await page.evaluate(() => {
      const width = document.documentElement.clientWidth;
      const past = [...document.querySelectorAll("body *")].filter(
        (one) => one.getBoundingClientRect().right > width + 0.5,
      );
      return {
        overflow: document.documentElement.scrollWidth - width,
        widest: past.slice(0, 3).map((one) => `${one.tagName} ${one.getAttribute("class") ?? ""}`),
      };
    });
    expect({ overflow, widest: overflow > 0 ? widest : [] }).toEqual({ overflow: 0, widest: [] });
    expect(record).toEqual({ errors: [], foreign: [], missing: [] });
    expect(await violations(page)).toEqual([]);
  });
});
