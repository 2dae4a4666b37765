/** The live map's ground in relief: lifted, tapped, bounded, and doing without what does not come. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, expect, inject, onTestFinished, test } from "vitest";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import sharp from "sharp";
import type { HoleData } from "../../src/contract/hole-data.ts";
import type { LonLat } from "../../src/contract/map-data.ts";
import { heightsOf } from "../../src/islands/map/heights.ts";
import { connect, watchedPage, type WatchedPage } from "../support/browser.ts";
import { cameraOf, figures, spoken, start, tool, view } from "../support/live-map.ts";
import { tiltedPixelOf } from "../support/pinhole.ts";
import { pagesOf } from "../support/site.ts";

const { origin, base, folder } = inject("site");
const holePages = pagesOf(folder).filter((page) => /^[^/]+\/\d+\/$/.test(page));
const dataOf = (path: string): HoleData =>
  JSON.parse(readFileSync(join(folder, path, "hole.json"), "utf8")) as HoleData;

let browser: Browser;
beforeAll(async () => {
  browser = await connect();
});
afterAll(() => browser.close());

const RELIEF = { "marram.relief": "yes" };

const open = async (
  path: string,
  options: BrowserContextOptions = {},
  kept: Readonly<Record<string, string>> = {},
  route?: (page: Page) => Promise<unknown>,
): Promise<WatchedPage> => {
  const watched = await watchedPage(browser, origin, { reducedMotion: "reduce", ...options });
  onTestFinished(() => watched.page.context().close());
  await watched.page.addInitScript((entries) => {
    for (const [key, value] of Object.entries(entries)) localStorage.setItem(key, value);
  }, kept);
  await route?.(watched.page);
  await watched.page.goto(`${origin}${base}${path}`);
  expect(await start(watched.page)).toBe("ready");
  return watched;
};

const relief = (page: Page): Promise<string | null> => view(page).getAttribute("data-relief");

/** Heights read from the built tiles by this machine, not by a browser. */
const heightsIn = (path: string, data: HoleData) =>
  heightsOf(
    { ...data.ground!, tiles: join(folder, path, data.ground!.tiles) },
    async (file) => new Uint8ClampedArray(await sharp(file).ensureAlpha().raw().toBuffer()),
  );

test("the button tilts the map, says how heights are drawn, and a tap finds the place under it", async () => {
  // The hole with the most rise from tee to green: a tap that took the ground for flat would miss.
  const rises = await Promise.all(
    holePages.map(async (path) => {
      const data = dataOf(path);
      const heights = heightsIn(path, data);
      const [from, to] = await Promise.all([
        heights.at(data.tees[0]!.marker),
        heights.at(data.tees[0]!.green.middle.position),
      ]);
      return { path, rise: Math.abs(to! - from!) };
    }),
  );
  const { path, rise } = rises.reduce((most, one) => (one.rise > most.rise ? one : most));
  expect(rise).toBeGreaterThan(8);
  const data = dataOf(path);
  const tee = data.tees.find(({ id }) => id === data.defaultTee)!;
  const { page, record } = await open(path);
  expect(await relief(page)).toBe("off");
  await tool(page, "Ground in relief").click();
  await expect.poll(async () => (await cameraOf(page)).pitch).toBeGreaterThan(40);
  expect(await relief(page)).toBe("on");
  const times = Number(/Heights drawn × ([\d.]+)/.exec(await page.locator(".live-map-note").innerText())![1]);
  expect(await spoken(page).textContent()).toContain(`heights are drawn ${times} times as high`);
  await page.waitForLoadState("networkidle");

  const heights = heightsIn(path, data);
  const place = async (position: LonLat): Promise<void> => {
    const camera = await cameraOf(page);
    const box = (await view(page).boundingBox())!;
    const [middle, height] = await Promise.all([
      heights.at([camera.center[0], camera.center[1]]),
      heights.at(position),
    ]);
    const { x, y } = tiltedPixelOf(position, (height! - middle!) * times, camera, box);
    await page.mouse.click(box.x + x, box.y + y);
  };
  // A pixel up a slanted view is a few yards of ground; the rise would put a flat reading off by more.
  const close = 5;
  // The ground may still be coming: tapped until it is there.
  await expect
    .poll(async () => {
      await place(tee.green.middle.position);
      return (await figures(page))["Middle"];
    })
    .toBeLessThanOrEqual(close);
  await expect
    .poll(async () => {
      await place(tee.marker);
      return (await figures(page))[`${tee.name} tee`];
    })
    .toBeLessThanOrEqual(close);
  expect(record).toEqual({ errors: [], foreign: [], missing: [] });

  await tool(page, "Ground in relief").click();
  await expect.poll(async () => (await cameraOf(page)).pitch).toBe(0);
  expect(await page.locator(".live-map-note").isVisible()).toBe(false);
});

test("keys tilt and turn it in relief only, never past the horizon; the whole hole comes back", async () => {
  const { page } = await open(holePages[0]!);
  const map = page.getByRole("application");
  await map.press("Shift+ArrowUp");
  expect((await cameraOf(page)).pitch).toBe(0);
  await tool(page, "Ground in relief").click();
  await expect.poll(async () => (await cameraOf(page)).pitch).toBeGreaterThan(40);
  const opened = await cameraOf(page);
  await map.press("Shift+ArrowUp");
  await expect.poll(async () => (await cameraOf(page)).pitch).toBeGreaterThan(opened.pitch);
  await map.press("Shift+ArrowUp");
  await map.press("Shift+ArrowRight");
  await expect.poll(async () => Math.abs((await cameraOf(page)).bearing - opened.bearing)).toBeGreaterThan(5);
  expect((await cameraOf(page)).pitch).toBeLessThanOrEqual(60);
  await page.getByRole("button", { name: "Whole hole" }).click();
  await expect.poll(async () => (await cameraOf(page)).pitch).toBeCloseTo(opened.pitch, 3);
});

test("it opens lifted for a golfer who had it so, but flat where motion is unwelcome", async () => {
  const { page: still } = await open(holePages[0]!, {}, RELIEF);
  expect(await relief(still)).toBe("off");
  const { page: moved } = await open(holePages[0]!, { reducedMotion: "no-preference" }, RELIEF);
  expect(await relief(moved)).toBe("on");
  expect((await cameraOf(moved)).pitch).toBeGreaterThan(40);
  expect(await tool(moved, "Ground in relief").getAttribute("aria-pressed")).toBe("true");
});

test("without its tiles the map still opens, tilts and measures", async () => {
  const { page } = await open(holePages[0]!, { reducedMotion: "no-preference" }, RELIEF, (one) =>
    one.route("**/ground/**", (route) => route.abort()),
  );
  expect(await relief(page)).toBe("on");
  await page.getByRole("application").press("Enter");
  expect(Object.keys(await figures(page))).toContain("Middle");
});

test("the middle of the view stays on the course, however far it is pushed", async () => {
  const data = dataOf(holePages[0]!);
  const { page } = await open(holePages[0]!);
  const map = page.getByRole("application");
  for (let i = 0; i < 40; i++) await map.press("ArrowLeft");
  const [west, south, east, north] = data.courseBounds;
  await expect
    .poll(async () => {
      const {
        center: [longitude, latitude],
      } = await cameraOf(page);
      return (
        longitude >= west - 1e-9 && longitude <= east + 1e-9 && latitude >= south - 1e-9 && latitude <= north + 1e-9
      );
    })
    .toBe(true);
});
