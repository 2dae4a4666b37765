/** The one browser of the browser tests. */
import { chromium, type BrowserServer } from "playwright-core";
import { BROWSER_VARIABLE, findBrowser } from "./find-browser.ts";
import { WAIT_LIMIT_MS } from "./patience.ts";

/** Chromium drawing WebGL in software, and keeping itself off the network. */
export const SWITCHES = [
  "--no-sandbox",
  "--use-angle=swiftshader",
  "--enable-unsafe-swiftshader",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-default-apps",
  "--disable-domain-reliability",
  "--disable-sync",
  "--no-first-run",
  "--no-pings",
  "--metrics-recording-only",
  "--force-color-profile=srgb",
];

/**
 * Pages are painted and put together by the processor as they are; only WebGL goes through a
 * graphics card played in software. Debian's Chromium would send everything through it, for
 * half as much work again.
 */
const PLAIN_PAGES = ["--disable-gpu-rasterization", "--disable-gpu-compositing"];

/** Starts a browser that several test files share. */
export async function startServer(): Promise<BrowserServer> {
  const executablePath = findBrowser();
  if (executablePath === undefined) {
    throw new Error(`No browser: run "npm run test:tools", or set ${BROWSER_VARIABLE}.`);
  }
  return chromium.launchServer({
    executablePath,
    args: [...SWITCHES, ...PLAIN_PAGES],
    host: "127.0.0.1",
    timeout: WAIT_LIMIT_MS,
  });
}
