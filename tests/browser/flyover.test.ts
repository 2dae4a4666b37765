/** Flyovers on the built site: stills for everyone, the film for who asks, and what is said in both. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { afterAll, beforeAll, describe, expect, inject, onTestFinished, test } from "vitest";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import type { FilmData } from "../../src/contract/film-data.ts";
import { cueAt } from "../../src/flyover/chapters.ts";
import { turn } from "../../src/flyover/path.ts";
import { flightOf } from "../../src/flyover/track.ts";
import { violations } from "../support/axe.ts";
import { connect, frames, watchedPage, type WatchedPage } from "../support/browser.ts";
import { pagesOf } from "../support/site.ts";

const { origin, base, folder } = inject("site");
const pages = pagesOf(folder);
const flyovers = pages.filter((page) => /^[^/]+\/\d+\/flyover\/$/.test(page));
const tour = pages.find((page) => /^[^/]+\/tour\/$/.test(page))!;
const hole = flyovers[6]!.replace("flyover/", "");
const read = (file: string): string => readFileSync(join(folder, file), "utf8");
const filmOf = (file: string): FilmData => JSON.parse(read(file)) as FilmData;
const film = filmOf(`${hole}flyover.json`);
const flight = flightOf(film.track);

/** Few pixels, quickly drawn. */
const SMALL = { width: 320, height: 480 } as const;

let browser: Browser;
beforeAll(async () => {
  browser = await connect();
});
afterAll(() => browser.close());

const open = async (path: string, options: BrowserContextOptions = {}): Promise<WatchedPage> => {
  const watched = await watchedPage(browser, origin, { viewport: SMALL, ...options });
  onTestFinished(() => watched.page.context().close());
  await watched.page.goto(`${origin}${base}${path}`);
  return watched;
};

const root = (page: Page) => page.locator("[data-film]");
const opener = (page: Page) => page.locator("[data-film-start]");
const place = (page: Page) => page.locator("[data-film-place]");

async function start(page: Page): Promise<string> {
  await opener(page).click();
  await page.waitForFunction(() =>
    ["ready", "failed"].includes(document.querySelector<HTMLElement>("[data-film]")?.dataset["state"] ?? ""),
  );
  return (await root(page).getAttribute("data-state")) ?? "";
}

/** Where the player's control says it is. */
const secondsOf = (page: Page): Promise<number> =>
  place(page).evaluate((input) => (input instanceof HTMLInputElement ? Number(input.value) : NaN));

async function scrub(page: Page, seconds: number): Promise<void> {
  await place(page).evaluate((input, to) => {
    if (!(input instanceof HTMLInputElement)) return;
    input.value = String(to);
    input.dispatchEvent(new Event("input", { bubbles: true }));
  }, seconds);
}

const camera = async (page: Page): Promise<{ bearing: number; pitch: number }> => {
  const [, , bearing, pitch] = (await page.locator("[data-film-view]").getAttribute("data-camera"))!
    .split(" ")
    .map(Number);
  return { bearing: bearing!, pitch: pitch! };
};

describe("without scripts", () => {
  test("a page shows the hole shot by shot, says the whole tip, and has nothing that does nothing", async () => {
    const { page } = await open(`${hole}flyover/`, { javaScriptEnabled: false });
    const stills = page.locator(".stills svg");
    expect(await stills.count()).toBe(film.chapters.length);
    for (const still of await stills.all()) {
      const box = (await still.boundingBox())!;
      expect(Math.min(box.width, box.height)).toBeGreaterThan(150);
    }
    const said = (await page.locator(".stills figcaption").allInnerTexts()).join(" ").replaceAll(/\s+/g, " ");
    for (const { text } of film.cues) expect(said).toContain(text.replaceAll(/\s+/g, " "));
    await page.locator(".transcript summary").click();
    expect(await page.locator(".transcript li:visible").count()).toBe(film.cues.length);
    expect(await page.locator("button:visible, input:visible").count()).toBe(0);
  });

  test("every still is a different part of one sheet, drawn once", () => {
    for (const path of flyovers) {
      const html = read(`${path}index.html`);
      const windows = [...html.matchAll(/class="plate plate-still" viewBox="([^"]+)"/g)].map(([, box]) => box!);
      expect(windows.length, path).toBeGreaterThanOrEqual(2);
      expect(new Set(windows).size, path).toBe(windows.length);
      expect(html.match(/id="stills-sheet"/g), path).toHaveLength(1);
      expect(html.match(/href="#stills-sheet"/g), path).toHaveLength(windows.length - 1);
    }
  });

  test("hole and map lead to their flyovers", async () => {
    const { page } = await open(hole, { javaScriptEnabled: false });
    await page.locator(`a[href$="${hole}flyover/"]:visible`).click();
    await page.waitForURL(`${origin}${base}${hole}flyover/`);
    await page.goto(`${origin}${base}${tour.replace("tour/", "map/")}`);
    await page.locator(`a[href$="${tour}"]:visible`).click();
    await page.waitForURL(`${origin}${base}${tour}`);
    expect(await page.locator(`.film-page a[href*="/flyover/"]`).count()).toBe(flyovers.length);
  });
});

describe("files", () => {
  test.each([
    ["a hole", `${hole}captions.vtt`, film],
    ["the round", `${tour.split("/")[0]}/tour.vtt`, filmOf(`${tour.split("/")[0]}/tour.json`)],
  ])("captions of %s are served as WebVTT, timed as in the film", async (_, file, own) => {
    const response = await fetch(`${origin}${base}${file}`);
    expect(response.headers.get("content-type")).toMatch(/^text\/vtt/);
    const [signature, ...blocks] = (await response.text()).trimEnd().split("\n\n");
    // W3C, WebVTT: the signature, then after a blank line cues with `MM:SS.mmm --> MM:SS.mmm`, hours from the first
    // hour on.
    expect(signature).toMatch(/^WEBVTT( [^\n]*)?$/);
    const seconds = (time: string): number => time.split(":").reduce((sum, part) => sum * 60 + Number(part), 0);
    const cues = blocks.map((block) => {
      const [, from, to, text] =
        /^\d+\n((?:\d{2,}:)?[0-5]\d:[0-5]\d\.\d{3}) --> ((?:\d{2,}:)?[0-5]\d:[0-5]\d\.\d{3})\n([^]+)$/.exec(block)!;
      return {
        startSeconds: seconds(from!),
        endSeconds: seconds(to!),
        text: text!.replaceAll("&amp;", "&").replaceAll("&lt;", "<").replaceAll("&gt;", ">"),
      };
    });
    expect(cues).toEqual(
      own.cues.map((cue) => ({
        ...cue,
        startSeconds: expect.closeTo(cue.startSeconds, 3),
        endSeconds: expect.closeTo(cue.endSeconds, 3),
      })),
    );
  });

  test("a hole's film is under 12 KB compressed, and its page no heavier than a hole's may be", () => {
    for (const path of flyovers) {
      expect(gzipSync(read(path.replace("flyover/", "flyover.json"))).length, path).toBeLessThan(12 * 1024);
      expect(gzipSync(read(`${path}index.html`)).length, path).toBeLessThan(45 * 1024);
    }
  });

  test("the round has a chapter for each hole, in order, and says each one's name as it begins", () => {
    const { chapters, cues, track } = filmOf(`${tour.split("/")[0]}/tour.json`);
    expect(chapters).toHaveLength(flyovers.length);
    chapters.forEach(({ title, seconds }, i) => {
      if (i > 0) expect(seconds).toBeGreaterThan(chapters[i - 1]!.seconds);
      expect(cues.find(({ startSeconds }) => startSeconds > seconds)!.text.replaceAll("\n", " ")).toContain(title);
    });
    expect(cues[cues.length - 1]!.endSeconds).toBeLessThan(flightOf(track).seconds);
  });
});

describe("the film, asked for by who wants stillness", () => {
  let page: Page;
  let record: WatchedPage["record"];
  const requests: string[] = [];
  beforeAll(async () => {
    ({ page, record } = await watchedPage(browser, origin, { viewport: SMALL, reducedMotion: "reduce" }));
    page.context().on("request", (request) => requests.push(new URL(request.url()).pathname));
    await page.goto(`${origin}${base}${hole}flyover/`, { waitUntil: "networkidle" });
  });
  afterAll(() => page.context().close());

  test("comes after the stills, and nothing of it is loaded before", async () => {
    const follows = await root(page).evaluate((player) => {
      const stills = document.querySelector("[data-film-stills]")!;
      return (stills.compareDocumentPosition(player) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0;
    });
    expect(follows).toBe(true);
    expect(await page.locator("[data-film-player]").isVisible()).toBe(false);
    expect(requests.filter((path) => /player|worker|flyover\.json|course\.json/.test(path))).toEqual([]);
  });

  test("opens standing at its start", async () => {
    expect(await start(page)).toBe("ready");
    expect(await root(page).getAttribute("data-playing")).toBe("false");
    expect(await secondsOf(page)).toBe(0);
    expect(await place(page).evaluate((one) => one === document.activeElement)).toBe(true);
    expect(requests.every((path) => path.startsWith(base))).toBe(true);
  });

  test("scrubbed anywhere, looks where the build said, and says what it said", async () => {
    const shown = new Set<string>();
    for (const share of [0, 0.3, 0.65, 1]) {
      const seconds = Math.round(flight.seconds * share * 10) / 10;
      await scrub(page, seconds);
      const at = await secondsOf(page);
      expect(Math.abs(at - seconds)).toBeLessThan(0.2);
      const pose = flight.poseAt(at);
      const { bearing, pitch } = await camera(page);
      expect(Math.abs(turn(bearing, pose.bearingDegrees))).toBeLessThan(1);
      expect(Math.abs(90 - pitch - pose.downDegrees)).toBeLessThan(1);
      const caption = await page.locator("[data-film-caption]").textContent();
      expect(caption).toBe(cueAt(film.cues, at)?.text ?? "");
      shown.add(caption!);
    }
    expect(shown.size).toBeGreaterThanOrEqual(3);
    // What the film command waits for before it takes a picture.
    await expect.poll(() => root(page).getAttribute("data-settled")).toBe(String(await secondsOf(page)));
  });

  test("obeys the keyboard: by time, by shot, to the ends", async () => {
    await place(page).focus();
    await page.keyboard.press("Home");
    expect(await secondsOf(page)).toBe(0);
    await page.keyboard.press("ArrowRight");
    expect(await secondsOf(page)).toBeCloseTo(2, 1);
    await page.keyboard.press("PageDown");
    expect(Math.abs((await secondsOf(page)) - film.chapters[1]!.seconds)).toBeLessThan(0.1);
    expect(await place(page).getAttribute("aria-valuetext")).toContain(film.chapters[1]!.title);
    await page.keyboard.press("PageUp");
    expect(await secondsOf(page)).toBe(0);
    await page.keyboard.press("End");
    expect(Math.abs((await secondsOf(page)) - flight.seconds)).toBeLessThan(0.2);
  });

  test("speaks captions only when asked to", async () => {
    const spoken = page.locator("[data-film-spoken]");
    const [one, other] = [film.cues[0]!, film.cues[1]!];
    await scrub(page, one.startSeconds + 0.5);
    expect(await spoken.textContent()).toBe("");
    await page.locator("[data-film-announce]").check();
    await scrub(page, other.startSeconds + 0.5);
    expect(await spoken.textContent()).toBe(other.text.replaceAll("\n", " "));
    await page.locator("[data-film-captions]").uncheck();
    expect(await page.locator("[data-film-caption]").isVisible()).toBe(false);
    await page.locator("[data-film-captions]").check();
    expect(await page.locator("[data-film-caption]").isVisible()).toBe(true);
  });

  test("plays, stands still again, and stops when nobody sees it", async () => {
    await place(page).focus();
    await page.keyboard.press("Home");
    await page.keyboard.press(" ");
    await expect.poll(() => secondsOf(page)).toBeGreaterThan(0.2);
    expect(await root(page).getAttribute("data-playing")).toBe("true");
    await page.evaluate(() => {
      Object.defineProperty(document, "hidden", { configurable: true, value: true });
      document.dispatchEvent(new Event("visibilitychange"));
    });
    expect(await root(page).getAttribute("data-playing")).toBe("false");
    const stopped = await secondsOf(page);
    // A film that plays moves with every frame.
    await frames(page, 10);
    expect(await secondsOf(page)).toBe(stopped);
  });

  test("has no violation, under the pointer neither, and closes leaving nothing wrong behind it", async () => {
    for (const control of ["toggle", "next", "close"]) {
      await page.locator(`[data-film-${control}]`).hover();
      expect(await violations(page), control).toEqual([]);
    }
    await page.keyboard.press("Escape");
    expect(await root(page).getAttribute("data-state")).toBeNull();
    expect(await page.locator("[data-film-player]").isVisible()).toBe(false);
    expect(await opener(page).evaluate((one) => one === document.activeElement)).toBe(true);
    expect(record).toEqual({ errors: [], foreign: [], missing: [] });
  });
});

describe("when it cannot be", () => {
  test("without WebGL one line says so, and there is no button", async () => {
    const { page } = await watchedPage(browser, origin, { viewport: SMALL });
    onTestFinished(() => page.context().close());
    await page.addInitScript(() => {
      HTMLCanvasElement.prototype.getContext = () => null;
    });
    await page.goto(`${origin}${base}${hole}flyover/`);
    await expect.poll(() => page.locator("[data-film-status]").textContent()).toMatch(/needs WebGL 2/);
    expect(await opener(page).isVisible()).toBe(false);
    expect(await page.locator(".stills svg:visible").count()).toBe(film.chapters.length);
  });

  test("with its data missing or of another version likewise, and it can be tried again; who wants motion has it first, and it plays once open", async () => {
    const { page } = await open(`${hole}flyover/`);
    expect(await page.locator(".film ~ section [data-film-stills]").count()).toBe(1);
    for (const answer of [{ status: 404 }, { json: { ...film, version: film.version + 1 } }]) {
      await page.route("**/flyover.json", (route) => route.fulfill(answer));
      expect(await start(page)).toBe("failed");
      expect(await page.locator("[data-film-status]").textContent()).toMatch(/could not be loaded/);
      expect(await page.locator("[data-film-player]").isVisible()).toBe(false);
      await page.unroute("**/flyover.json");
      await root(page).evaluate((one) => {
        if (one instanceof HTMLElement) delete one.dataset["state"];
      });
    }
    expect(await start(page)).toBe("ready");
    expect(await root(page).getAttribute("data-playing")).toBe("true");
  });
});
