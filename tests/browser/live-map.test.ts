/** The live map on the built site: it opens, draws, measures, obeys the keyboard, and fails softly. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, inject, onTestFinished, test } from "vitest";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import sharp from "sharp";
import { PALETTE } from "../../src/draw/palette.ts";
import { yardsFromMetres } from "../../src/geo/units.ts";
import type { HoleData } from "../../src/contract/hole-data.ts";
import type { LonLat } from "../../src/contract/map-data.ts";
import { metresPerPixel } from "../../src/islands/map/camera.ts";
import { violations } from "../support/axe.ts";
import { connect, DESK, impatient, PHONE, watchedPage, type WatchedPage } from "../support/browser.ts";
import { cameraOf, figures, opener, slot, spoken, start, tap } from "../support/live-map.ts";
import { pixelOf } from "../support/mercator.ts";
import { pagesOf } from "../support/site.ts";

const { origin, base, folder } = inject("site");
const holePages = pagesOf(folder).filter((page) => /^[^/]+\/\d+\/$/.test(page));
const [course] = holePages[0]!.split("/");
const dataOf = (path: string): HoleData =>
  JSON.parse(readFileSync(join(folder, path, "hole.json"), "utf8")) as HoleData;

let browser: Browser;
beforeAll(async () => {
  browser = await connect();
});
afterAll(() => browser.close());

const open = async (path: string, options: BrowserContextOptions = {}): Promise<WatchedPage> => {
  const watched = await watchedPage(browser, origin, options);
  onTestFinished(() => watched.page.context().close());
  await watched.page.goto(`${origin}${base}${path}`);
  return watched;
};

describe("on a phone", () => {
  test("nothing of it is loaded before it is asked for; then all of it from the site's own address", async () => {
    const scripts: string[] = [];
    const { page, record } = await watchedPage(browser, origin);
    onTestFinished(() => page.context().close());
    page.context().on("request", (request) => scripts.push(new URL(request.url()).pathname));
    await page.goto(`${origin}${base}${holePages[0]}`, { waitUntil: "networkidle" });
    expect(scripts.filter((path) => /maplibre|hole-map|hole\.json/.test(path))).toEqual([]);
    expect(await start(page)).toBe("ready");
    expect(scripts.filter((path) => /worker/.test(path)).length).toBe(1);
    expect(scripts.filter((path) => path.endsWith("hole.json")).length).toBe(1);
    expect(scripts.every((path) => path.startsWith(base))).toBe(true);
    expect(record).toEqual({ errors: [], foreign: [], missing: [] });
  });

  test.each([
    ["light", PHONE],
    ["dark", DESK],
  ] as const)("draws the hole in the plate's %s colours", async (colorScheme, viewport) => {
    const { page } = await open(holePages[0]!, { colorScheme, viewport });
    expect(await start(page)).toBe("ready");
    const picture = await sharp(await page.locator(".live-map-view").screenshot())
      .removeAlpha()
      .raw()
      .toBuffer();
    const counted = new Map<string, number>();
    for (let i = 0; i < picture.length; i += 3) {
      const colour = `#${picture.subarray(i, i + 3).toString("hex")}`;
      counted.set(colour, (counted.get(colour) ?? 0) + 1);
    }
    for (const tint of ["fairway", "green"] as const)
      expect(counted.get(PALETTE[colorScheme][tint]) ?? 0, tint).toBeGreaterThan(50);
    const other = PALETTE[colorScheme === "light" ? "dark" : "light"];
    expect(counted.get(other.fairway) ?? 0).toBe(0);
  });

  test("a tap agrees with the build's figures", async () => {
    for (const path of [holePages[0]!, holePages[6]!]) {
      const data = dataOf(path);
      const tee = data.tees.find(({ id }) => id === data.defaultTee)!;
      const { page } = await open(path);
      expect(await start(page)).toBe("ready");
      const { zoom, center } = await cameraOf(page);
      // Half a yard of rounding on each side, and the pixel that a click can be off.
      const tolerance = 1 + yardsFromMetres(metresPerPixel(zoom, center[1])) * Math.SQRT2;
      const straight = (position: LonLat): number => {
        const { x, y } = pixelOf(position, { center: tee.marker, zoom, bearing: 0 }, { width: 0, height: 0 });
        return yardsFromMetres(Math.hypot(x, y) * metresPerPixel(zoom, tee.marker[1]));
      };

      const hazard = tee.hazards.find(({ inCorridor, carry }) => inCorridor && carry !== undefined)!;
      for (const { position, metres } of [hazard.carry!, hazard.reach]) {
        await tap(page, position);
        expect(Math.abs((await figures(page))[`${tee.name} tee`]! - yardsFromMetres(metres))).toBeLessThan(tolerance);
      }

      await tap(page, tee.green.middle.position);
      expect(Math.abs((await figures(page))[`${tee.name} tee`]! - straight(tee.green.middle.position))).toBeLessThan(
        tolerance,
      );
      expect((await figures(page))["Middle"]).toBeLessThan(tolerance);
      await expect.poll(() => spoken(page).textContent()).toContain("On the green");
    }
  });

  test("a tap on the tee gives a par 3's green as the page prints it", async () => {
    const path = holePages.find((page) => dataOf(page).hole.par.men === 3)!;
    const data = dataOf(path);
    const tee = data.tees.find(({ id }) => id === data.defaultTee)!;
    const { page } = await open(path);
    expect(await start(page)).toBe("ready");
    await tap(page, tee.marker);
    const { zoom, center } = await cameraOf(page);
    const tolerance = 1 + yardsFromMetres(metresPerPixel(zoom, center[1])) * Math.SQRT2;
    const read = await figures(page);
    expect(Math.abs(read["Front"]! - yardsFromMetres(tee.green.front.metres))).toBeLessThan(tolerance);
    expect(Math.abs(read["Middle"]! - yardsFromMetres(tee.green.middle.metres))).toBeLessThan(tolerance);
    expect(Math.abs(read["Back"]! - yardsFromMetres(tee.green.back.metres))).toBeLessThan(tolerance);
    expect(read[`${tee.name} tee`]).toBeLessThan(tolerance);
  });

  test("the keyboard alone opens, moves, measures and closes it", async () => {
    const { page } = await open(holePages[0]!);
    await opener(page).focus();
    await page.keyboard.press("Enter");
    await page.waitForFunction(() => document.getElementById("live-map")?.dataset["state"] === "ready");
    const map = page.getByRole("application", { name: /^Live map of hole 1/ });
    expect(await map.evaluate((one) => one === document.activeElement)).toBe(true);
    expect(await page.locator(".live-map-cross").evaluate((cross) => getComputedStyle(cross).opacity)).toBe("1");

    await page.keyboard.press("Enter");
    const first = await figures(page);
    // It is said with how far it plays, once that is worked out.
    await expect.poll(() => spoken(page).textContent()).toMatch(/plays/);
    const said = await spoken(page).textContent();
    expect(said).toMatch(/^From the .+ tee \d+ yards, \d+ metres\. To the green: front \d+ yards, \d+ metres;/);
    const before = await cameraOf(page);
    await page.keyboard.press("ArrowUp");
    await expect.poll(async () => (await cameraOf(page)).center[1]).not.toBe(before.center[1]);
    await page.keyboard.press("Enter");
    const second = await figures(page);
    // Up the hole: nearer to the green, further from the tee.
    expect(second["Middle"]).toBeLessThan(first["Middle"]!);
    await expect.poll(() => spoken(page).textContent()).not.toBe(said);

    await page.keyboard.press("Escape");
    expect(await slot(page).getAttribute("data-state")).toBeNull();
    expect(await page.locator(".live-map").count()).toBe(0);
    expect(await opener(page).evaluate((one) => one === document.activeElement)).toBe(true);
    expect(await slot(page).locator("svg").first().isVisible()).toBe(true);
  });
});

describe("closed", () => {
  /**
   * Counts, before any script of the page runs, what is listened to on document, window and media queries,
   * and positions followed.
   */
  const counted = (): void => {
    const on = new Map<string, number>();
    const count = (name: string, by: number): void => void on.set(name, (on.get(name) ?? 0) + by);
    const isShared = (target: unknown): boolean =>
      target === window || target === document || target instanceof MediaQueryList;
    const { addEventListener, removeEventListener } = EventTarget.prototype;
    EventTarget.prototype.addEventListener = function (
      this: EventTarget,
      type: string,
      ...rest: [EventListenerOrEventListenerObject | null, (AddEventListenerOptions | boolean)?]
    ): void {
      const options = rest[1];
      if (isShared(this ?? window)) {
        count(type, 1);
        if (typeof options === "object")
          addEventListener.call(options.signal ?? new AbortController().signal, "abort", () => count(type, -1));
      }
      addEventListener.call(this ?? window, type, ...rest);
    };
    EventTarget.prototype.removeEventListener = function (
      this: EventTarget,
      type: string,
      ...rest: [EventListenerOrEventListenerObject | null, (EventListenerOptions | boolean)?]
    ): void {
      if (isShared(this ?? window)) count(type, -1);
      removeEventListener.call(this ?? window, type, ...rest);
    };
    const { watchPosition, clearWatch } = Geolocation.prototype;
    Geolocation.prototype.watchPosition = function (
      this: Geolocation,
      ...given: Parameters<Geolocation["watchPosition"]>
    ): number {
      count("position", 1);
      return watchPosition.apply(this, given);
    };
    Geolocation.prototype.clearWatch = function (this: Geolocation, id: number): void {
      count("position", -1);
      clearWatch.call(this, id);
    };
    Object.assign(window, {
      listening: () =>
        Object.fromEntries(
          [...on].filter(
            ([type, count]) =>
              count !== 0 && ["position", "marram:plain", "marram:conditions", "change"].includes(type),
          ),
        ),
    });
  };
  const listening = (page: Page): Promise<Record<string, number>> =>
    page.evaluate(() => (window as unknown as { listening(): Record<string, number> }).listening());

  test("or closed before it was there, it leaves nothing behind, and opens again", async () => {
    const { page } = await watchedPage(browser, origin, {
      permissions: ["geolocation"],
      geolocation: { longitude: 0, latitude: 0 },
    });
    onTestFinished(() => page.context().close());
    await page.addInitScript(counted);
    await page.goto(`${origin}${base}${holePages[0]}`, { waitUntil: "networkidle" });
    const before = await listening(page);
    for (let i = 0; i < 2; i++) {
      expect(await start(page)).toBe("ready");
      await page.getByRole("button", { name: "Where I am" }).click();
      await page.locator(".live-map-actions button").first().click();
      expect((await listening(page))["position"]).toBe(1);
      expect((await listening(page))["marram:conditions"]).toBe((before["marram:conditions"] ?? 0) + 1);
      await page.keyboard.press("Escape");
      expect(await slot(page).getAttribute("data-state")).toBeNull();
      expect(await listening(page)).toEqual(before);
    }

    // Nothing but its data is asked for while it loads: closed then, they are not waited for.
    await page.route("**/hole.json", () => {});
    const ended = page.waitForEvent("requestfailed", (request) => request.url().endsWith("hole.json"));
    await opener(page).click();
    expect(await slot(page).getAttribute("data-state")).toBe("loading");
    await slot(page).dispatchEvent("keydown", { key: "Escape" });
    expect(await slot(page).getAttribute("data-state")).toBeNull();
    await ended;
    await page.unroute("**/hole.json");
    expect(await start(page)).toBe("ready");
    expect(await page.locator(".live-map").count()).toBe(1);
  });
});

describe("while it is open", () => {
  let page: Page;
  let record: WatchedPage["record"];
  beforeAll(async () => {
    ({ page, record } = await watchedPage(browser, origin));
    await page.goto(`${origin}${base}${holePages[0]}`);
    expect(await start(page)).toBe("ready");
  });
  afterAll(() => page.context().close());

  test("it has no violation, and the plate under it is out of reach", async () => {
    await page.keyboard.press("Enter");
    expect(await violations(page)).toEqual([]);
    expect(await slot(page).locator(":scope > :not(.live-map):not([inert])").count()).toBe(0);
  });

  test("it is in view and no taller than the screen", async () => {
    const reading = (await page.locator(".live-map-reading").boundingBox())!;
    const bar = (await page.locator("nav.bar").boundingBox())!;
    expect(reading.y).toBeGreaterThan(0);
    expect(reading.y + reading.height).toBeLessThanOrEqual(bar.y);
  });

  test("the wheel scrolls the page", async () => {
    const box = (await page.locator(".live-map-view").boundingBox())!;
    const zoom = (await cameraOf(page)).zoom;
    const before = await page.evaluate(() => scrollY);
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await page.mouse.wheel(0, 120);
    await expect.poll(() => page.evaluate(() => scrollY)).toBeGreaterThan(before + 60);
    expect((await cameraOf(page)).zoom).toBe(zoom);
  });

  test("it follows the golfer's tee and unit", async () => {
    const data = dataOf(holePages[0]!);
    const other = data.tees.find(({ id }) => id !== data.defaultTee)!;
    const yards = await figures(page);
    await page.evaluate((tee) => {
      for (const value of [tee, "metres"])
        document.querySelector<HTMLInputElement>(`input[data-setting][value="${value}"]`)!.click();
    }, other.id);
    const metres = await figures(page);
    expect(Object.keys(metres)[0]).toBe(`${other.name} tee`);
    // Each rounded to a whole number: half a yard and half a metre.
    expect(Math.abs(metres["Middle"]! - yards["Middle"]! * 0.9144)).toBeLessThanOrEqual(0.5 + 0.5 * 0.9144);
  });

  test("its buttons zoom in and show the whole hole again", async () => {
    const opening = await cameraOf(page);
    await page.getByRole("button", { name: "Zoom in" }).click();
    await expect.poll(async () => (await cameraOf(page)).zoom).toBeGreaterThan(opening.zoom + 0.9);
    await page.getByRole("button", { name: "Whole hole" }).click();
    await expect.poll(async () => (await cameraOf(page)).zoom).toBeCloseTo(opening.zoom, 5);
  });

  test("it turns its colours when the device does", async () => {
    await page.emulateMedia({ colorScheme: "dark" });
    const brightness = async (): Promise<number> => {
      const { channels } = await sharp(await page.locator(".live-map-view").screenshot()).stats();
      return channels[0]!.mean;
    };
    await expect.poll(brightness).toBeLessThan(110);
  });

  test("it closes, and nothing went wrong all the while", async () => {
    await page.getByRole("button", { name: "Close map" }).click();
    expect(await slot(page).getAttribute("data-state")).toBeNull();
    expect(await slot(page).locator(":scope > [inert]").count()).toBe(0);
    expect(record).toEqual({ errors: [], foreign: [], missing: [] });
  });
});

describe("the whole course", () => {
  test("opens, and a tap on a hole's line opens its page", async () => {
    const { page, record } = await open(`${course}/map/`);
    expect(await start(page)).toBe("ready");
    expect(record).toEqual({ errors: [], foreign: [], missing: [] });
    const { line } = dataOf(holePages[3]!).tees[0]!;
    const halfway: LonLat = [(line[0]![0] + line[1]![0]) / 2, (line[0]![1] + line[1]![1]) / 2];
    await tap(page, halfway);
    await page.waitForURL(`${origin}${base}${holePages[3]!}`);
  });
});

describe("when it cannot be", () => {
  const sorry = (page: Page) => page.getByRole("status").filter({ hasText: /live map/i });

  const staysWithPlate = async (page: Page, words: RegExp): Promise<void> => {
    expect(await slot(page).getAttribute("data-state")).toBe("failed");
    expect(await page.locator(".live-map").count()).toBe(0);
    expect(await slot(page).locator("svg").first().isVisible()).toBe(true);
    expect(await slot(page).locator("[inert]").count()).toBe(0);
    expect(await sorry(page).textContent()).toMatch(words);
    expect(await opener(page).isEnabled()).toBe(true);
  };

  test("without WebGL the plate stays and one line says so", async () => {
    const { page } = await watchedPage(browser, origin);
    onTestFinished(() => page.context().close());
    await page.addInitScript(() => {
      HTMLCanvasElement.prototype.getContext = () => null;
    });
    await page.goto(`${origin}${base}${holePages[0]}`);
    expect(await start(page)).toBe("failed");
    await staysWithPlate(page, /needs WebGL 2/);
  });

  test("with its data missing, cut off, of another version or damaged likewise; and it can be tried again", async () => {
    const { page } = await open(holePages[0]!);
    const data = dataOf(holePages[0]!);
    const answers = [
      { status: 404 },
      { body: JSON.stringify(data).slice(0, -100) },
      { json: { ...data, version: data.version + 1 } },
      { json: { ...data, tees: data.tees.map((tee) => ({ ...tee, green: { ...tee.green, front: null } })) } },
    ];
    for (const answer of answers) {
      await page.route("**/hole.json", (route) => route.fulfill(answer));
      expect(await start(page)).toBe("failed");
      await staysWithPlate(page, /could not be loaded/);
      await page.unroute("**/hole.json");
      await slot(page).evaluate((one) => delete one.dataset["state"]);
    }
    expect(await start(page)).toBe("ready");
  });

  test("with its worker blocked likewise, without waiting for ever", async () => {
    const { page } = await watchedPage(browser, origin);
    onTestFinished(() => page.context().close());
    await impatient(page);
    await page.context().route(/worker/, (route) => route.abort());
    await page.goto(`${origin}${base}${holePages[0]}`);
    expect(await start(page)).toBe("failed");
    await staysWithPlate(page, /could not be loaded/);
  });

  test("when the device takes its drawing memory back", async () => {
    const { page } = await open(holePages[0]!);
    expect(await start(page)).toBe("ready");
    await page.locator(".live-map-view canvas").evaluate((canvas) => {
      if (canvas instanceof HTMLCanvasElement)
        canvas.getContext("webgl2")!.getExtension("WEBGL_lose_context")!.loseContext();
    });
    await expect.poll(() => slot(page).getAttribute("data-state")).toBe("failed");
    await staysWithPlate(page, /stopped/);
  });
});
