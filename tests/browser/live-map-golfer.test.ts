/** The golfer on the live map: how far it plays, own shots and drive, and where one is. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, inject, onTestFinished, test } from "vitest";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { yardsFromMetres } from "../../src/geo/units.ts";
import type { HoleData, TeeData } from "../../src/contract/hole-data.ts";
import type { LonLat } from "../../src/contract/map-data.ts";
import { metresPerPixel } from "../../src/islands/map/camera.ts";
import { violations } from "../support/axe.ts";
import { connect, watchedPage, type WatchedPage } from "../support/browser.ts";
import { action, cameraOf, figures, reading, spoken, start, tap, tool } from "../support/live-map.ts";
import { pagesOf } from "../support/site.ts";

const { origin, base, folder } = inject("site");
const holePages = pagesOf(folder).filter((page) => /^[^/]+\/\d+\/$/.test(page));
const dataOf = (path: string): HoleData =>
  JSON.parse(readFileSync(join(folder, path, "hole.json"), "utf8")) as HoleData;
const teeOf = (data: HoleData): TeeData => data.tees.find(({ id }) => id === data.defaultTee)!;
const parThree = holePages.find((page) => dataOf(page).hole.par.men === 3)!;
const longHole = holePages.find((page) => dataOf(page).hole.par.men === 5)!;

let browser: Browser;
beforeAll(async () => {
  browser = await connect();
});
afterAll(() => browser.close());

const open = async (
  path: string,
  options: BrowserContextOptions = {},
  kept: Readonly<Record<string, string>> = {},
): Promise<WatchedPage> => {
  const watched = await watchedPage(browser, origin, { reducedMotion: "reduce", ...options });
  onTestFinished(() => watched.page.context().close());
  await watched.page.addInitScript((entries) => {
    for (const [key, value] of Object.entries(entries))
      if (localStorage.getItem(key) === null) localStorage.setItem(key, value);
  }, kept);
  await watched.page.goto(`${origin}${base}${path}`);
  expect(await start(watched.page)).toBe("ready");
  return watched;
};

/** What a click can be off by: half a yard of rounding on each side, and a pixel. */
async function tolerance(page: Page): Promise<number> {
  const { zoom, center } = await cameraOf(page);
  return 1 + yardsFromMetres(metresPerPixel(zoom, center[1])) * Math.SQRT2;
}

const halfway = ({ line: [from, to] }: TeeData): LonLat => [(from![0] + to![0]) / 2, (from![1] + to![1]) / 2];
const text = async (page: Page): Promise<string> => (await reading(page).innerText()).replaceAll("\u00a0", " ");

describe("how far it plays", () => {
  test("to a par 3's green agrees with the page, follows the wind, and goes with plain figures", async () => {
    const tee = teeOf(dataOf(parThree));
    const { page, record } = await open(parThree);
    await tap(page, tee.green.middle.position);
    const played = async (): Promise<number> => Number(/plays (\d+)/.exec(await text(page))?.[1]);
    await expect.poll(played).toBeGreaterThan(0);
    const row = page.locator(".plays:visible tr[data-middle]");
    const printed = Number(await row.locator(".plays-figure [data-value]").innerText());
    expect(Math.abs((await played()) - printed)).toBeLessThanOrEqual(1 + (await tolerance(page)));
    expect(await text(page)).toContain("In still air at 15 °C.");

    const still = await played();
    await page.evaluate(() => document.querySelector<HTMLElement>("[data-conditions] summary")!.click());
    await page.waitForFunction(() => document.querySelector("[data-conditions-now]")?.textContent?.includes(":"));
    const bearing = Math.round(dataOf(parThree).bearingDegrees);
    await page.locator('[data-field="speed"]').fill("20");
    await page.locator('[data-field="from"]').fill(String(bearing));
    await expect.poll(played).toBeGreaterThan(still + 5);
    expect(await text(page)).toContain("In the wind you set");
    await expect
      .poll(async () => Math.abs((await played()) - Number(await row.locator("td[data-today] b").innerText())))
      .toBeLessThanOrEqual(1 + (await tolerance(page)));

    await page.locator("[data-plain-switch]:visible").first().click();
    await expect.poll(() => text(page)).not.toMatch(/plays|wind/);
    expect((await figures(page))[`${tee.name} tee`]).toBeGreaterThan(50);
    expect(record).toEqual({ errors: [], foreign: [], missing: [] });
  });

  test("is left out where no heights come, and distances stand", async () => {
    const { page } = await watchedPage(browser, origin);
    onTestFinished(() => page.context().close());
    await page.route("**/ground/**", (route) => route.fulfill({ status: 404 }));
    await page.goto(`${origin}${base}${parThree}`);
    expect(await start(page)).toBe("ready");
    await tap(page, teeOf(dataOf(parThree)).green.front.position);
    await expect.poll(() => spoken(page).textContent()).toMatch(/^From the/);
    expect(await text(page)).not.toContain("plays");
  });
});

describe("ahead", () => {
  test("of a tapped point are the hazards of the way still to play, none behind", async () => {
    const { page } = await open(longHole);
    const data = dataOf(longHole);
    expect(await text(page)).toMatch(/From the tee: .+ to reach/);
    const nearest = teeOf(data).hazards.find(({ inCorridor }) => inCorridor)!;
    // The last turning point: the first hazard is behind it.
    const corner = teeOf(data).line.at(-2)!;
    await tap(page, corner);
    await expect.poll(() => text(page)).toMatch(/Ahead: .+ to reach/);
    const behind = data.features.features.find(({ properties }) => properties.id === nearest.id)!.properties.name!;
    expect(nearest.carry!.metres).toBeLessThan((await figures(page))[`${teeOf(data).name} tee`]! * 0.9144 - 25);
    expect(await text(page)).not.toContain(behind);
    await action(page, "Clear").click();
    expect(await text(page)).toContain(behind);
  });

  test("the golfer's own drive is told with the fairway there, as far as the page has it today on this ground", async () => {
    const { page } = await open(longHole, {}, { "marram.conditions": JSON.stringify({ carryMetres: 182.88, at: 0 }) });
    const drive = async (): Promise<string | undefined> =>
      /Your drive of (\d+) yd: the fairway is \d+ yd wide there, \d+ yd left/.exec(await text(page))?.[1];
    const onPage = async (): Promise<string | undefined> =>
      /^\d+/.exec((await page.locator("[data-own-drive]").textContent()) ?? "")?.[0];
    await expect.poll(async () => (await drive()) !== undefined && (await drive()) === (await onPage())).toBe(true);
    // 182.88 m are 200 yd, which is what plain figures tell.
    await page
      .locator("[data-plain-switch]")
      .first()
      .evaluate((button: HTMLElement) => button.click());
    await expect.poll(drive).toBe("200");
  });
});

describe("own shots", () => {
  test("are laid tap by tap, taken back, kept on this device for this hole, and cleared", async () => {
    const data = dataOf(longHole);
    const tee = teeOf(data);
    const { page, record } = await open(longHole);
    await tool(page, "My shots").click();
    expect(await text(page)).toContain("Kept on this device only.");
    const [first, second] = [halfway(tee), tee.green.front.position] as const;
    await tap(page, first);
    const off = await tolerance(page);
    const one = await figures(page);
    expect(Object.keys(one)).toEqual(["Shot 1", "Left"]);
    await tap(page, second);
    const two = await figures(page);
    expect(two["Shot 1"]).toBe(one["Shot 1"]);
    expect(
      Math.abs(two["Shot 2"]! + yardsFromMetres(tee.green.middle.metres - tee.green.front.metres) - one["Left"]!),
    ).toBeLessThan(2 * off);
    await expect.poll(() => spoken(page).textContent()).toMatch(/^Shot 2: \d+ yards, \d+ metres\./);

    await page.reload();
    expect(await start(page)).toBe("ready");
    await tool(page, "My shots").click();
    expect(await figures(page)).toEqual(two);
    await action(page, "Take back").click();
    expect(await figures(page)).toEqual(one);
    await action(page, "Clear shots").click();
    expect(await figures(page)).toEqual({});
    expect(await spoken(page).textContent()).toBe("Shots cleared.");
    expect(
      await page.evaluate(() => Object.keys(localStorage).filter((key) => key.startsWith("marram.shots"))),
    ).toEqual([]);
    expect(record).toEqual({ errors: [], foreign: [], missing: [] });
  });

  test("by keyboard alone", async () => {
    const { page } = await open(longHole);
    await tool(page, "My shots").press("Enter");
    await page.getByRole("application").focus();
    await page.keyboard.press("Enter");
    expect(Object.keys(await figures(page))).toContain("Shot 1");
    await action(page, "Take back").press("Enter");
    expect(await figures(page)).toEqual({});
    // Its button is gone; the keyboard is not lost.
    expect(await tool(page, "My shots").evaluate((one) => one === document.activeElement)).toBe(true);
  });
});

const at = ([longitude, latitude]: LonLat, accuracy = 7): BrowserContextOptions => ({
  permissions: ["geolocation"],
  geolocation: { longitude, latitude, accuracy },
});

describe("where I am", () => {
  test("is asked only after it is explained and agreed to, and nothing is sent", async () => {
    const tee = teeOf(dataOf(parThree));
    const { page, record } = await watchedPage(browser, origin, { ...at(tee.marker), reducedMotion: "reduce" });
    onTestFinished(() => page.context().close());
    await page.addInitScript(() => {
      const watch = navigator.geolocation.watchPosition.bind(navigator.geolocation);
      const count = (): void =>
        void (document.documentElement.dataset["asked"] = String(
          Number(document.documentElement.dataset["asked"] ?? 0) + 1,
        ));
      navigator.geolocation.watchPosition = (...rest) => (count(), watch(...rest));
      navigator.geolocation.getCurrentPosition = count;
    });
    await page.goto(`${origin}${base}${parThree}`);
    expect(await start(page)).toBe("ready");
    const asked = (): Promise<string | null> => page.locator("html").getAttribute("data-asked");
    await tool(page, "Where I am").click();
    expect(await text(page)).toMatch(/not sent and not kept/);
    expect(await action(page, "Show where I am").evaluate((one) => one === document.activeElement)).toBe(true);
    expect(await asked()).toBeNull();
    await action(page, "Not now").click();
    expect(await asked()).toBeNull();
    expect(await tool(page, "Where I am").getAttribute("aria-pressed")).toBe("false");

    await page.waitForLoadState("networkidle");
    const requests: string[] = [];
    page.context().on("request", (request) => requests.push(request.url()));
    await tool(page, "Where I am").click();
    await action(page, "Show where I am").click();
    await expect.poll(() => figures(page)).toHaveProperty("Middle");
    expect(await asked()).toBe("1");
    // At the tee of a par 3 they are the page's own figures.
    const read = await figures(page);
    for (const [label, { metres }] of [
      ["Front", tee.green.front],
      ["Middle", tee.green.middle],
      ["Back", tee.green.back],
    ] as const) {
      expect(Math.abs(read[label]! - yardsFromMetres(metres)), label).toBeLessThanOrEqual(0.52);
    }
    expect(await text(page)).toContain("Known to within 8 yd.");
    expect(await spoken(page).textContent()).toMatch(/To the green: front \d+ yards.*Known to within 8 yards\./);

    // Walking half way changes the figures, and still nothing leaves the page.
    const [longitude, latitude] = halfway(tee);
    await page.context().setGeolocation({ longitude, latitude, accuracy: 7 });
    await expect.poll(async () => (await figures(page))["Middle"]).toBeLessThan(read["Middle"]! * 0.6);
    await tap(page, tee.green.middle.position);
    await expect.poll(() => figures(page)).toHaveProperty("From you");
    expect(await text(page)).not.toContain("plays");
    expect(await violations(page)).toEqual([]);
    expect(requests).toEqual([]);
    expect(await page.evaluate(() => JSON.stringify({ ...localStorage }))).not.toContain(
      String(longitude).slice(0, 7),
    );
    expect(record.errors).toEqual([]);
  });

  test("turns the page to plain figures on the course, says why, and can be switched back", async () => {
    const { page } = await open(parThree, at(teeOf(dataOf(parThree)).marker));
    expect(await page.locator("[data-beyond-distance]:visible").count()).toBeGreaterThan(3);
    await tool(page, "Where I am").click();
    await action(page, "Show where I am").click();
    await expect.poll(() => text(page)).toMatch(/4\.3a.*our reading; the Committee can overrule/);
    expect(await page.locator("[data-beyond-distance]:visible").count()).toBe(0);
    await action(page, "Show all figures").click();
    expect(await page.locator("[data-beyond-distance]:visible").count()).toBeGreaterThan(3);
    expect(await text(page)).not.toContain("4.3a");
    // The next position does not turn it again.
    const [longitude, latitude] = halfway(teeOf(dataOf(parThree)));
    const before = await figures(page);
    await page.context().setGeolocation({ longitude, latitude, accuracy: 7 });
    await expect.poll(() => figures(page)).not.toEqual(before);
    expect(await page.locator("[data-beyond-distance]:visible").count()).toBeGreaterThan(3);
  });

  test("off the course says how far, gives no figures and leaves the page as it is", async () => {
    const [longitude, , , north] = dataOf(parThree).courseBounds;
    // A hundredth of a degree of latitude is 1,113 m here (111,341.828 m to the degree at 56° N, computed), or 1,218
    // yd.
    const { page } = await open(parThree, at([longitude, north + 0.01]));
    await tool(page, "Where I am").click();
    await action(page, "Show where I am").click();
    await expect.poll(() => text(page)).toMatch(/You are 12(17|18|19) yd beyond the edge of the course/);
    expect(await figures(page)).toEqual({});
    expect(await page.locator("html[data-plain]").count()).toBe(0);
    await tool(page, "Where I am").click();
    expect(await text(page)).toContain("Tap anywhere");
  });

  test("known too coarsely gives no figures and says so", async () => {
    const { page } = await open(parThree, at(teeOf(dataOf(parThree)).marker, 140));
    await tool(page, "Where I am").click();
    await action(page, "Show where I am").click();
    await expect.poll(() => text(page)).toMatch(/only to within 153 yd, which is too coarse/);
    expect(await figures(page)).toEqual({});
  });

  test("refused by the browser, or not there at all, says so", async () => {
    const { page } = await open(parThree);
    await page.evaluate(() => {
      navigator.geolocation.watchPosition = (_found, failed) => {
        failed?.({ code: 1, message: "", PERMISSION_DENIED: 1, POSITION_UNAVAILABLE: 2, TIMEOUT: 3 });
        return 1;
      };
    });
    await tool(page, "Where I am").click();
    await action(page, "Show where I am").click();
    expect(await text(page)).toMatch(/may not tell where you are/);
    await tool(page, "Where I am").click();
    await page.evaluate(() => Object.defineProperty(window, "isSecureContext", { value: false }));
    await tool(page, "Where I am").click();
    await action(page, "Show where I am").click();
    expect(await text(page)).toMatch(/begins with https/);
  });
});
