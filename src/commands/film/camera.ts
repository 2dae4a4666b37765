/** The built guide's own player, in a browser nobody sees, one complete picture at a time. */
import * as attr from "../../contract/attributes.ts";
import type { Server } from "node:http";
import { chromium, type Browser, type Page } from "playwright-core";
import { guideServer } from "../guide-server.ts";
import { CommandError } from "../options.ts";

/** Drawn by the graphics card where there is one, in software where not. */
const SWITCHES = [
  "--enable-unsafe-swiftshader",
  "--ignore-gpu-blocklist",
  "--force-color-profile=srgb",
  "--hide-scrollbars",
  "--disable-background-networking",
  "--no-first-run",
];

/** Software may take minutes over the first picture of a whole course. */
const PATIENCE_MS = 300_000;

/** Nothing in the frame but the picture. */
const BARE = `
  .film-player { border: 0 !important; }
  .film-frame { position: fixed !important; inset: 0; z-index: 1000; width: 100vw !important; height: 100vh !important; max-height: none !important; aspect-ratio: auto !important; }
  .film-chapter, .film-caption { display: none !important; }
`;

export interface CameraInput {
  readonly browser: string;
  /** Folder of the built guide, and the path it is served from. */
  readonly folder: string;
  readonly base: string;
  /** Address of the flyover's page within the guide. */
  readonly path: string;
  readonly width: number;
  readonly height: number;
}

export interface Camera {
  /** A PNG of a moment of the film, all of it drawn. */
  picture(seconds: number): Promise<Uint8Array>;
  close(): Promise<void>;
}

/** @throws CommandError when the player cannot fly */
export async function openCamera({
  browser: executablePath,
  folder,
  base,
  path,
  width,
  height,
}: CameraInput): Promise<Camera> {
  const { server, origin } = await serve(folder, base);
  let browser: Browser | undefined;
  const close = async (): Promise<void> => {
    await browser?.close();
    server.close();
    server.closeAllConnections();
  };
  try {
    const sandbox = process.getuid?.() === 0 ? ["--no-sandbox"] : [];
    browser = await chromium.launch({ executablePath, args: [...SWITCHES, ...sandbox] });
    // Opened standing, as for who asked for less motion: time is ours. The page's policy would refuse our styles.
    const context = await browser.newContext({
      viewport: { width, height },
      deviceScaleFactor: 1,
      reducedMotion: "reduce",
      bypassCSP: true,
    });
    const page = await context.newPage();
    page.setDefaultTimeout(PATIENCE_MS);
    await page.goto(`${origin}${base}${path}`);
    await page.addStyleTag({ content: BARE });
    await start(page);
    return { picture: (seconds) => picture(page, seconds), close };
  } catch (error) {
    await close();
    throw error;
  }
}

async function start(page: Page): Promise<void> {
  await page.locator(`[${attr.filmStart}]`).evaluate((button) => {
    if (button instanceof HTMLElement) button.click();
  });
  const root = page.locator(`[${attr.film}]`);
  await page
    .locator(["ready", "failed"].map((state) => `[${attr.film}][${attr.state}="${state}"]`).join())
    .waitFor({ state: "attached" });
  if ((await root.getAttribute(attr.state)) === "ready") return;
  throw new CommandError(
    `The flight does not open in this browser: ${await page.locator(`[${attr.filmStatus}]`).textContent()}`,
  );
}

async function picture(page: Page, seconds: number): Promise<Uint8Array> {
  await page.locator(`[${attr.filmPlace}]`).evaluate((place, to) => {
    if (!(place instanceof HTMLInputElement)) return;
    // Between the stops that a finger needs.
    place.step = "any";
    place.value = String(to);
    place.dispatchEvent(new Event("input", { bubbles: true }));
  }, seconds);
  await page.waitForFunction(
    ({ film, settled, to }) => {
      const at = document.querySelector(`[${film}]`)?.getAttribute(settled);
      return typeof at === "string" && Math.abs(Number(at) - to) < 0.001;
    },
    { film: attr.film, settled: attr.settled, to: seconds },
  );
  return page.screenshot({ type: "png", timeout: PATIENCE_MS });
}

/** Serves the guide to this machine alone. */
async function serve(folder: string, base: string): Promise<{ server: Server; origin: string }> {
  const server = guideServer({ folder, base });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const address = server.address();
  if (address === null || typeof address === "string")
    throw new Error("The guide could not be served to the browser.");
  return { server, origin: `http://127.0.0.1:${address.port}` };
}
