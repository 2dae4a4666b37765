/** What a hole page promises: its figures, its settings, the keyboard, and all of it without scripts. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { afterAll, beforeAll, describe, expect, inject, onTestFinished, test } from "vitest";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { metresFromYards, yardsFromMetres } from "../../src/geo/units.ts";
import type { HoleData } from "../../src/contract/hole-data.ts";
import { connect, DESK, PHONE, watchedPage } from "../support/browser.ts";
import { focusStops, reachable } from "../support/keyboard.ts";
import { pagesOf } from "../support/site.ts";

const { origin, base, folder } = inject("site");
const holePages = pagesOf(folder).filter((page) => /^[^/]+\/\d+\/$/.test(page));
const dataOf = (path: string): HoleData =>
  JSON.parse(readFileSync(join(folder, path, "hole.json"), "utf8")) as HoleData;
const defaultTeeOf = (data: HoleData) => data.tees.find(({ id }) => id === data.defaultTee)!;

let browser: Browser;
beforeAll(async () => {
  browser = await connect();
});
afterAll(() => browser.close());

const open = async (path: string, options: BrowserContextOptions = {}): Promise<Page> => {
  const { page } = await watchedPage(browser, origin, options);
  onTestFinished(() => page.context().close());
  await page.goto(`${origin}${base}${path}`);
  return page;
};

/** Figures of the glance that is shown: length, then front, middle and back. */
const glance = (page: Page): Promise<number[]> =>
  page
    .locator(".glance:visible")
    .first()
    .locator(".length [data-value], .greens [data-value]")
    .evaluateAll((all) => all.map((one) => Number(one.textContent)));

const builtFigures = (data: HoleData, teeId: string): number[] => {
  const { lengthMetres, green } = data.tees.find(({ id }) => id === teeId)!;
  return [lengthMetres, green.front.metres, green.middle.metres, green.back.metres];
};

describe("figures", () => {
  test.each([
    ["every page as it was built", false, holePages],
    ["pages whose scripts have run", true, holePages.slice(0, 3)],
  ] as const)("of %s are those of hole.json", async (_, javaScriptEnabled, paths) => {
    const page = await open(paths[0]!, { javaScriptEnabled });
    let rowCount = 0;
    for (const path of paths) {
      const data = dataOf(path);
      await page.goto(`${origin}${base}${path}`);
      const built = builtFigures(data, data.defaultTee).map((metres) =>
        Math.round(data.units === "yards" ? yardsFromMetres(metres) : metres),
      );
      expect(await glance(page), path).toEqual(built);
      const rows = await page.locator("table.trouble:not(.all):not(.later) tbody tr").evaluateAll((all) =>
        // A boundary, or the sea all along, has no far side: a dash stands there.
        all.map((row) =>
          [...row.querySelectorAll("td")]
            .slice(0, 2)
            .map((cell) => (cell.querySelector("[data-value]") ?? cell).textContent.trim())
            .join(" to "),
        ),
      );
      const hazards = defaultTeeOf(data).hazards.map(({ reach, carry }) =>
        // Reach is rounded down, carry up, to the centimetre that figures are held to.
        [
          Math.floor(yardsFromMetres(reach.metres + 0.01)),
          carry === undefined ? "–" : Math.ceil(yardsFromMetres(carry.metres - 0.01)),
        ].join(" to "),
      );
      for (const row of rows) expect(hazards, path).toContain(row);
      rowCount += rows.length;
    }
    expect(rowCount).toBeGreaterThan(paths.length);
  });
});

describe("without scripts", () => {
  test.each([PHONE, DESK])(
    "the page has plate, figures and tip at $width pixels, and no button that does nothing",
    async (viewport) => {
      const page = await open(holePages[0]!, { javaScriptEnabled: false, viewport });
      const plate = page.locator("#live-map svg:visible").first();
      const box = (await plate.boundingBox())!;
      expect(box.width).toBeGreaterThan(250);
      expect(box.height).toBeGreaterThan(250);
      expect(await plate.locator("path").count()).toBeGreaterThan(10);
      expect((await page.locator(".tip").innerText()).split(/\s+/).length).toBeGreaterThan(20);
      expect(await glance(page)).toHaveLength(4);
      // Popovers work without scripts; the live map and the settings do not.
      expect(
        await page
          .locator("button:visible")
          .evaluateAll((all) => all.filter((one) => !one.hasAttribute("popovertarget")).length),
      ).toBe(0);
      expect(await page.locator("[popovertarget=settings]:visible").count()).toBe(0);
    },
  );

  test("a figure's meaning still opens", async () => {
    const page = await open(holePages[0]!, { javaScriptEnabled: false });
    await page.locator(".tip button.figure").first().click();
    expect(await page.locator(".figure-meaning:popover-open").count()).toBe(1);
  });
});

describe("a figure in the tip", () => {
  test("opens its meaning by keyboard, is read in both units, and closes", async () => {
    const page = await open(holePages[0]!);
    const figure = page.locator(`.tip button.figure[data-figure="length"]`).first();
    const shown = Number.parseInt(await figure.locator("[data-shown]").innerText(), 10);
    const read = /^(\d+) yards?, (\d+) metres?$/.exec((await figure.locator("[data-spoken]").textContent())!)!;
    expect(Number(read[1])).toBe(shown);
    expect(Math.abs(Number(read[2]) - metresFromYards(shown))).toBeLessThanOrEqual(0.5 + 0.4572);
    await figure.focus();
    await page.keyboard.press("Enter");
    const meaning = page.locator(".figure-meaning:popover-open");
    expect(await meaning.innerText()).toMatch(/[a-z]{4}/);
    // The meaning lists the same figure for every tee set of the hole.
    const data = dataOf(holePages[0]!);
    expect(await meaning.locator("[data-tee]").count()).toBe(data.tees.length);
    await page.keyboard.press("Escape");
    expect(await meaning.count()).toBe(0);
    expect(await figure.evaluate((one) => one === document.activeElement)).toBe(true);
  });
});

describe("tee and unit", () => {
  test("turn the page's figures, are told, and hold on the next page and after a reload", async () => {
    const data = dataOf(holePages[0]!);
    const other = data.tees.find(({ id }) => id !== data.defaultTee)!;
    const page = await open(holePages[0]!);
    await page.locator("[popovertarget=settings]:visible").first().click();
    await page.locator(`#settings label:has(input[value="${other.id}"])`).click();
    await page.locator(`#settings label:has(input[value="metres"])`).click();
    expect(await page.locator("#settings-status").textContent()).toMatch(new RegExp(`${other.name}.*metres`, "i"));
    await page.keyboard.press("Escape");
    const metres = (path: string): number[] => builtFigures(dataOf(path), other.id).map(Math.round);
    expect(await glance(page)).toEqual(metres(holePages[0]!));
    const spoken = await page.locator(`.tip button.figure[data-figure="length"] [data-spoken]`).first().textContent();
    expect(spoken).toMatch(/^\d+ metres?, \d+ yards?$/);

    await page.locator(`a[href$="/2/"]:visible`).first().click();
    await page.waitForURL(`${origin}${base}${holePages.find((path) => path.endsWith("/2/"))}`);
    expect(await glance(page)).toEqual(metres(holePages.find((path) => path.endsWith("/2/"))!));
    await page.reload();
    expect(await glance(page)).toEqual(metres(holePages.find((path) => path.endsWith("/2/"))!));
  });
});

describe("the keyboard", () => {
  test.each([
    ["a hole page on a phone", holePages[0]!, PHONE],
    ["a hole page at a desk", holePages[1]!, DESK],
    ["the cover", "", PHONE],
    ["the course map", `${holePages[0]!.split("/")[0]}/map/`, DESK],
  ] as const)("reaches everything on %s, visibly, and is never trapped", async (_, path, viewport) => {
    // With motion the browser would still be scrolling to an element when it is looked at.
    const page = await open(path, { viewport, reducedMotion: "reduce" });
    const wanted = await reachable(page);
    expect(wanted.length).toBeGreaterThan(5);
    const stops = await focusStops(page, wanted.length + 10);
    const reached = new Set(stops.map(({ id }) => id));
    expect(wanted.filter(({ id }) => !reached.has(id)).map(({ shown }) => shown)).toEqual([]);
    expect(stops.filter(({ marked }) => !marked).map(({ shown }) => shown)).toEqual([]);
    expect(stops.filter(({ covered }) => covered).map(({ shown }) => shown)).toEqual([]);
  });
});

describe("weight", () => {
  /** Compressed bytes of what a page loads, by kind; fonts and pictures are compressed already. */
  const weigh = async (
    path: string,
  ): Promise<Record<"page" | "styles" | "scripts" | "fonts" | "pictures", number>> => {
    const { page } = await watchedPage(browser, origin);
    onTestFinished(() => page.context().close());
    const weights = { page: 0, styles: 0, scripts: 0, fonts: 0, pictures: 0 };
    const seen: Promise<void>[] = [];
    const kinds = {
      document: "page",
      stylesheet: "styles",
      script: "scripts",
      font: "fonts",
      image: "pictures",
    } as const;
    page.on("response", (response) => {
      const type = response.request().resourceType();
      if (!(type in kinds)) return;
      const kind = kinds[type as keyof typeof kinds];
      seen.push(
        response.body().then((body) => {
          weights[kind] +=
            kind === "fonts" || (kind === "pictures" && !response.url().endsWith(".svg"))
              ? body.length
              : gzipSync(body).length;
        }),
      );
    });
    await page.goto(`${origin}${base}${path}`, { waitUntil: "networkidle" });
    await Promise.all(seen);
    return weights;
  };

  test("of the heaviest hole page is within 60 KB compressed without photos and live map, its scripts within 15 KB", async () => {
    const sizeOf = (path: string): number => gzipSync(readFileSync(join(folder, path, "index.html"))).length;
    // In every language: some need more letters than others.
    const all = pagesOf(folder).filter((page) => /^(?:de\/)?[^/]+\/\d+\/$/.test(page));
    expect(all).toHaveLength(2 * holePages.length);
    const heaviest = all.reduce((most, path) => (sizeOf(path) > sizeOf(most) ? path : most));
    const { page, styles, scripts } = await weigh(heaviest);
    expect(page).toBe(sizeOf(heaviest));
    expect(scripts).toBeGreaterThan(0);

    expect((page + styles + scripts) / 1024).toBeLessThanOrEqual(60);
    expect(scripts / 1024).toBeLessThanOrEqual(15);
  });
});
