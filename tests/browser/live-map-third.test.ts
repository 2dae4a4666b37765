/** The live map goes where the golfer says the hole is cut, as the page's glance does. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, expect, inject, onTestFinished, test } from "vitest";
import type { Browser, Page } from "playwright-core";
import sharp from "sharp";
import { PALETTE } from "../../src/draw/palette.ts";
import { yardsFromMetres } from "../../src/geo/units.ts";
import type { HoleData } from "../../src/contract/hole-data.ts";
import type { LonLat } from "../../src/contract/map-data.ts";
import { metresPerPixel } from "../../src/islands/map/camera.ts";
import { thirdPoint } from "../../src/measure/third.ts";
import { connect, watchedPage } from "../support/browser.ts";
import { action, cameraOf, figures, spoken, start, tap, view } from "../support/live-map.ts";
import { pixelOf } from "../support/mercator.ts";
import { pagesOf } from "../support/site.ts";

const { origin, base, folder } = inject("site");
const dataOf = (path: string): HoleData =>
  JSON.parse(readFileSync(join(folder, path, "hole.json"), "utf8")) as HoleData;
const parThree = pagesOf(folder)
  .filter((page) => /^[^/]+\/\d+\/$/.test(page))
  .find((page) => dataOf(page).hole.par.men === 3)!;
const data = dataOf(parThree);
const tee = data.tees.find(({ id }) => id === data.defaultTee)!;
const { front, middle, back } = tee.green;
const cutAt = (third: "front" | "middle" | "back"): LonLat =>
  thirdPoint(third, { front: front.position, middle: middle.position, back: back.position });

let browser: Browser;
beforeAll(async () => {
  browser = await connect();
});
afterAll(() => browser.close());

const choose = (page: Page, third: string): Promise<void> =>
  page.evaluate(
    (value) => document.querySelector<HTMLInputElement>(`input[data-setting="third"][value="${value}"]`)!.click(),
    third,
  );

/** The map's colour at a position. */
async function colourAt(page: Page, position: LonLat): Promise<string> {
  const { data: pixels, info } = await sharp(await view(page).screenshot())
    .removeAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  const { x, y } = pixelOf(position, await cameraOf(page), info);
  const i = 3 * (Math.floor(y) * info.width + Math.floor(x));
  return `#${pixels.subarray(i, i + 3).toString("hex")}`;
}

test("figures, their mark among the three, and the mark on the green follow the third, from the glance's own point", async () => {
  const { page, record } = await watchedPage(browser, origin, { reducedMotion: "reduce" });
  onTestFinished(() => page.context().close());
  await page.goto(`${origin}${base}${parThree}`);
  expect(await start(page)).toBe("ready");
  for (const third of ["front", "back"] as const)
    expect(await colourAt(page, cutAt(third)), third).not.toBe(PALETTE.light.flag);

  const { zoom, center } = await cameraOf(page);
  // Half a yard of rounding on each side, and the pixel that a click can be off.
  const tolerance = 1 + yardsFromMetres(metresPerPixel(zoom, center[1])) * Math.SQRT2;
  const counts = page.locator(".live-map-counts");
  const glance = page.locator(".glance:visible .mid");
  await tap(page, tee.marker);
  const inMiddle = await figures(page);
  expect(await counts.locator("dt").allTextContents()).toEqual(["Middle"]);

  for (const third of ["front", "back"] as const) {
    await choose(page, third);
    const label = (await glance.locator("dt").textContent())!;
    await expect.poll(() => counts.locator("dt").allTextContents()).toEqual([label]);
    const read = await figures(page);
    expect(Math.abs(read[label]! - Number(await glance.locator("[data-value]").textContent()))).toBeLessThan(
      tolerance,
    );
    expect([read["Front"], read["Back"]]).toEqual([inMiddle["Front"], inMiddle["Back"]]);
    expect(read["Middle"]).toBeUndefined();
    await expect.poll(() => spoken(page).textContent()).toContain(`hole in the ${third} third ${read[label]} yards`);
    await action(page, "Clear").click();
    await expect.poll(() => colourAt(page, cutAt(third))).toBe(PALETTE.light.flag);
    expect(await colourAt(page, cutAt(third === "front" ? "back" : "front"))).not.toBe(PALETTE.light.flag);
    await tap(page, tee.marker);
  }
  expect(record).toEqual({ errors: [], foreign: [], missing: [] });
});
