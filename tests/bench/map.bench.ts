/**
 * From tap to map: the live map of a hole page beside a bare MapLibre page that draws the
 * same hole, alternating in one run, on a phone's screen. Aim: at most the bare page's time
 * and 15 %. Drawn in software here, so only the ratio counts.
 *
 * `MARRAM_BENCH_SITE` names a guide built for `/guides/links/`, `MARRAM_BENCH_PICTURES` a
 * folder for pictures of the two maps.
 */
import { spawnSync } from "node:child_process";
import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { chromium, type CDPSession, type Page } from "playwright-core";
import sharp from "sharp";
import { SWITCHES } from "../support/browser-server.ts";
import { findBrowser } from "../support/find-browser.ts";
import { bareSite, TINTS, type Shown } from "./bare-site.ts";
import { host, sumOf, type Host, type Network } from "./host.ts";
import { median, type BenchLine } from "./line.ts";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));
const BASE = "/guides/links/";
const BARE = "/bare/";
const HOLE = "tarvay/11/";
const PHONE = { width: 390, height: 844 } as const;
const ROUNDS = 7;

/** A page has come to rest by then: painted, and names no longer fading in. */
const AT_REST_MS = 1500;

/**
 * Lighthouse's phone preset, "slow 4G": 150 ms there and back, 1.6 Mbit/s (its documentation, "Network
 * throttling").
 */
const SLOW: Network = { delayMs: 150, bytesPerSecond: 1_638_400 / 8 };

const SIDES = ["live map", "bare page"] as const;
type Side = (typeof SIDES)[number];

/** From tap to ready. */
interface Visit {
  readonly milliseconds: number;
  /** From tap until frames have followed the one that shows what is ready: also what the screen's picture takes. */
  readonly shownMilliseconds: number;
  /** Processor time of all the browser's processes: pages, workers, drawing. */
  readonly processorSeconds: number;
  /** Processor time of the page's main thread. */
  readonly mainSeconds: number;
  readonly bytes: number;
  readonly files: number;
}

type Cache = "cold" | "warm" | "cold, slow network";

export async function mapBench(): Promise<BenchLine[]> {
  if (findBrowser() === undefined)
    return [{ name: "no browser found", value: 0, unit: "", note: "run npm run test:tools" }];
  const scratch = await mkdtemp(join(tmpdir(), "marram-map-"));
  const site = process.env["MARRAM_BENCH_SITE"] ?? join(scratch, "site");
  if (process.env["MARRAM_BENCH_SITE"] === undefined) {
    const { status, stderr } = spawnSync(
      process.execPath,
      [join(ROOT, "src/commands/build.ts"), "--out", site, "--base", BASE],
      { cwd: ROOT, encoding: "utf8", env: { ...process.env, NODE_ENV: "production" } },
    );
    if (status !== 0) throw new Error(stderr);
  }
  const bare = join(scratch, "bare");
  const served = await host({ [BASE]: site, [BARE]: bare });
  try {
    const address = { "live map": `${served.origin}${BASE}${HOLE}`, "bare page": `${served.origin}${BARE}` } as const;
    const { shown, picture } = await lookAtOurs(address["live map"]);
    await bareSite(
      bare,
      new URL(address["bare page"]),
      join(site, HOLE, "hole.json"),
      new URL("hole.json", address["live map"]),
      shown,
    );
    const samePicture = await compare(picture, await lookAtBare(address["bare page"]));
    const visits = new Map<string, Visit[]>();
    const take = (side: Side, cache: Cache, visit: Visit): void => {
      const key = `${cache} ${side}`;
      visits.set(key, [...(visits.get(key) ?? []), visit]);
    };
    for (let round = 0; round < ROUNDS; round++) {
      for (const side of round % 2 === 0 ? SIDES : [...SIDES].reverse()) {
        await inFreshBrowser(async (open) => {
          take(side, "cold", await visit(open, address[side], served));
          take(side, "warm", await visit(open, address[side], served));
        });
        served.slow(SLOW);
        await inFreshBrowser(async (open) =>
          take(side, "cold, slow network", await visit(open, address[side], served)),
        );
        served.slow(undefined);
      }
    }
    const of = (side: Side, cache: Cache): Visit[] => visits.get(`${cache} ${side}`)!;
    return [
      samePicture,
      ...(["cold", "warm", "cold, slow network"] as const).flatMap((cache) =>
        lines(cache, of("live map", cache), of("bare page", cache)),
      ),
    ];
  } finally {
    served.close();
    await rm(scratch, { recursive: true, force: true });
  }
}

function lines(cache: Cache, ours: readonly Visit[], bare: readonly Visit[]): BenchLine[] {
  const of = (visits: readonly Visit[], pick: (visit: Visit) => number): number => median(visits.map(pick));
  const ratio = (name: string, pick: (visit: Visit) => number, aim: string): BenchLine => {
    const pairs = ours.map((visit, i) => pick(visit) / pick(bare[i]!)).sort((a, b) => a - b);
    const quarter = (share: number): string => pairs[Math.round((pairs.length - 1) * share)]!.toFixed(2);
    return {
      name: `${cache}: ${name}, live map : bare`,
      value: of(ours, pick) / of(bare, pick),
      unit: "x",
      note: `${aim}of the middles of ${pairs.length} rounds; round by round ${quarter(0)} to ${quarter(1)}, middle half ${quarter(0.25)} to ${quarter(0.75)}`,
    };
  };
  const processor = (visits: readonly Visit[]): string =>
    `processor time ${of(visits, ({ processorSeconds }) => processorSeconds).toFixed(2)} s, of it the page's main thread ${of(visits, ({ mainSeconds }) => mainSeconds).toFixed(2)} s`;
  const side = (name: Side, visits: readonly Visit[]): BenchLine[] => [
    {
      name: `${cache}: tap to ready, ${name}`,
      value: of(visits, ({ milliseconds }) => milliseconds),
      unit: "ms",
      note: processor(visits),
    },
    {
      name: `${cache}: sent, ${name}`,
      value: of(visits, ({ bytes }) => bytes) / 1024,
      unit: "KB",
      note: `${of(visits, ({ files }) => files)} files between tap and ready, as on the wire`,
    },
  ];
  return [
    ...side("live map", ours),
    ...side("bare page", bare),
    ratio("time", ({ milliseconds }) => milliseconds, "aim at most 1.15; "),
    ratio("time until it is shown", ({ shownMilliseconds }) => shownMilliseconds, "aim at most 1.15; "),
    ratio("processor time", ({ processorSeconds }) => processorSeconds, ""),
  ];
}

interface Open {
  readonly page: Page;
  readonly onPage: CDPSession;
  readonly onBrowser: CDPSession;
}

/** A browser of its own, so that no cache, compiled script or compiled shader is left from before. */
async function inFreshBrowser<Result>(act: (open: Open) => Promise<Result>): Promise<Result> {
  const browser = await chromium.launch({ executablePath: findBrowser()!, args: [...SWITCHES] });
  try {
    const page = await browser.newPage({ viewport: PHONE });
    const onPage = await page.context().newCDPSession(page);
    await onPage.send("Performance.enable");
    return await act({ page, onPage, onBrowser: await browser.newBrowserCDPSession() });
  } finally {
    await browser.close();
  }
}

/** Opens a page, lets it come to rest, taps, and waits for the map. */
async function visit({ page, onPage, onBrowser }: Open, address: string, served: Host): Promise<Visit> {
  await arrive(page, address);
  const processor = async (): Promise<number> => {
    const { processInfo } = await onBrowser.send("SystemInfo.getProcessInfo");
    return processInfo.reduce((sum, { cpuTime }) => sum + cpuTime, 0);
  };
  const main = async (): Promise<number> => {
    const { metrics } = await onPage.send("Performance.getMetrics");
    return metrics.find(({ name }) => name === "TaskDuration")!.value;
  };
  served.forget();
  const before = { processor: await processor(), main: await main() };
  const { ready, shown } = await tap(page);
  const { sent } = served;
  return {
    milliseconds: ready,
    shownMilliseconds: shown,
    bytes: sumOf(sent),
    files: sent.length,
    processorSeconds: (await processor()) - before.processor,
    mainSeconds: (await main()) - before.main,
  };
}

async function arrive(page: Page, address: string): Promise<void> {
  await page.goto(address, { waitUntil: "networkidle" });
  const button = page.locator("[data-live-map-open]");
  await button.waitFor();
  // As a golfer has it before a tap: the button in sight, and what is around it painted.
  await button.evaluate((element) => {
    element.scrollIntoView({ block: "center", behavior: "instant" });
    return document.fonts.ready.then(() => undefined);
  });
  await page.waitForTimeout(AT_REST_MS);
}

/** Milliseconds from the press of the button to the slot's word that the map is there, and until that is shown. */
const tap = (page: Page): Promise<{ readonly ready: number; readonly shown: number }> =>
  page.evaluate(
    () =>
      new Promise((resolve, reject) => {
        const slot = document.getElementById("live-map")!;
        const button = document.querySelector<HTMLButtonElement>("[data-live-map-open]")!;
        const from = performance.now();
        new MutationObserver(() => {
          if (slot.dataset["state"] === "ready") {
            const ready = performance.now() - from;
            // The first of them makes the picture; another waits until it is taken.
            const frame = (left: number): unknown =>
              requestAnimationFrame(() =>
                left === 0 ? resolve({ ready, shown: performance.now() - from }) : frame(left - 1),
              );
            frame(2);
          }
          if (slot.dataset["state"] === "failed") reject(new Error("The map failed."));
        }).observe(slot, { attributes: true, attributeFilter: ["data-state"] });
        button.click();
      }),
  );

/** What our map shows, and a picture of it without the buttons that lie over it. */
const lookAtOurs = (address: string): Promise<{ readonly shown: Shown; readonly picture: Buffer }> =>
  inFreshBrowser(async ({ page }) => {
    await arrive(page, address);
    await tap(page);
    await page.waitForTimeout(AT_REST_MS);
    const view = page.locator(".live-map-view");
    const [longitude, latitude, zoom, bearing] = (await view.getAttribute("data-camera"))!.split(" ").map(Number);
    const seen = await view.evaluate(
      (element, tints) => {
        const style = getComputedStyle(element);
        return {
          tints: Object.fromEntries(tints.map((tint) => [tint, style.getPropertyValue(`--plate-${tint}`)])),
          font: style.fontFamily
            .split(",")[0]!
            .trim()
            .replace(/^["']|["']$/g, ""),
          width: element.clientWidth,
          height: element.clientHeight,
        };
      },
      [...TINTS],
    );
    // The page's policy forbids a style sheet from outside, not a property set by script.
    await page.evaluate(() => {
      if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
      for (const over of document.querySelectorAll<HTMLElement>(".live-map-frame > :not(.live-map-view), .bar"))
        over.style.visibility = "hidden";
    });
    const picture = await view.screenshot();
    await keepPicture("live-map.png", picture);
    return {
      shown: { ...seen, camera: { center: [longitude!, latitude!], zoom: zoom!, bearing: bearing! } },
      picture,
    };
  });

const lookAtBare = (address: string): Promise<Buffer> =>
  inFreshBrowser(async ({ page }) => {
    await arrive(page, address);
    await tap(page);
    await page.waitForTimeout(AT_REST_MS);
    const picture = await page.locator("#live-map").screenshot();
    await keepPicture("bare-page.png", picture);
    return picture;
  });

async function keepPicture(name: string, picture: Buffer): Promise<void> {
  const folder = process.env["MARRAM_BENCH_PICTURES"];
  if (folder === undefined) return;
  await mkdir(folder, { recursive: true });
  await writeFile(join(folder, name), picture);
}

/** Whether the two drew one and the same map. */
async function compare(ours: Buffer, bare: Buffer): Promise<BenchLine> {
  const [a, b] = await Promise.all(
    [ours, bare].map((picture) => sharp(picture).removeAlpha().raw().toBuffer({ resolveWithObject: true })),
  );
  const { width, channels } = a!.info;
  if (b!.info.width !== width) throw new Error(`The maps are not of one width: ${width} and ${b!.info.width} pixels.`);
  // A view that begins within a pixel is one row higher in a picture, and drawn at its foot.
  const height = Math.min(a!.info.height, b!.info.height);
  const [pixels, others] = [a!, b!].map(({ data, info }) => data.subarray((info.height - height) * width * channels));
  let differing = 0;
  for (let i = 0; i < width * height * channels; i += channels) {
    if ([0, 1, 2].some((c) => Math.abs(pixels![i + c]! - others![i + c]!) > 16)) differing++;
  }
  return {
    name: "pixels in which the two maps differ",
    value: (100 * differing) / (width * height),
    unit: "%",
    note: `of ${width} x ${height}, by more than 16 of 255 in a channel`,
  };
}
