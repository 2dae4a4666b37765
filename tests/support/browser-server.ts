/** The one browser of the browser tests. */
import { chromium, type BrowserServer } from "playwright-core";
import { BROWSER_VARIABLE, findBrowser } from "./find-browser.ts";

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

/** Starts a browser that several test files share. */
export async function startServer(): Promise<BrowserServer> {
  const executablePath = findBrowser();
  if (executablePath === undefined) {
    throw new Error(`No browser: run "node tests/support/ensure-browser.ts", or set ${BROWSER_VARIABLE}.`);
  }
  return chromium.launchServer({ executablePath, args: SWITCHES, host: "127.0.0.1" });
}
