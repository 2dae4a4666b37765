/** Pages of the shared browser that keep a record of what went wrong on them. */
import { inject } from "vitest";
import { chromium, type Browser, type BrowserContextOptions, type Page } from "playwright-core";
import { WAIT_LIMIT_MS } from "./patience.ts";

/** The widths every page is looked at in. */
export const PHONE = { width: 390, height: 844 } as const;
export const DESK = { width: 1440, height: 900 } as const;

/** The shared browser; closing what this gives leaves the browser running for others. */
export const connect = (): Promise<Browser> => chromium.connect(inject("browser"), { timeout: WAIT_LIMIT_MS });

/** What a page did that it should not have. */
export interface Faults {
  /** Errors thrown or written to the console, refusals by the security policy among them. */
  readonly errors: string[];
  /** Requests to any address but the site's own. */
  readonly foreign: string[];
  /** Own addresses that answered 400 or above. */
  readonly missing: string[];
}

export interface WatchedPage {
  readonly page: Page;
  readonly record: Faults;
  /** Forgets what was recorded, for a page used again. */
  forget(): void;
}

/**
 * A page that is watched. A request that would leave the site is recorded and refused, so
 * a test fails instead of reaching out.
 *
 * @param origin the site's own origin, `http://127.0.0.1:1234`
 */
export async function watchedPage(
  browser: Browser,
  origin: string,
  options: BrowserContextOptions = {},
): Promise<WatchedPage> {
  const context = await browser.newContext({ viewport: PHONE, ...options });
  context.setDefaultTimeout(WAIT_LIMIT_MS);
  await context.addInitScript(limitsTimes, 20);
  const page = await context.newPage();
  const record: Faults = { errors: [], foreign: [], missing: [] };
  await context.route("**/*", async (route) => {
    const address = route.request().url();
    if (isOwn(address, origin)) return route.fallback();
    return route.abort();
  });
  context.on("request", (request) => {
    if (!isOwn(request.url(), origin)) record.foreign.push(request.url());
  });
  context.on("response", (response) => {
    if (response.status() >= 400) record.missing.push(`${response.status()} ${response.url()}`);
  });
  page.on("pageerror", (error) => record.errors.push(`thrown: ${error.message}`));
  page.on("console", (message) => {
    if (message.type() === "error") record.errors.push(`console: ${message.text()}`);
  });
  return {
    page,
    record,
    forget() {
      record.errors.length = 0;
      record.foreign.length = 0;
      record.missing.length = 0;
    },
  };
}

/**
 * Runs in the page: what the guide itself gives up on after twenty seconds or more, because
 * a picture does not come, it gives up on so many times later. On a busy machine it comes late.
 */
function limitsTimes(factor: number): void {
  const own = globalThis.setTimeout;
  const scaled = (handler: TimerHandler, milliseconds = 0, ...parts: unknown[]): number =>
    own(handler, milliseconds >= 20_000 ? milliseconds * factor : milliseconds, ...parts);
  globalThis.setTimeout = Object.assign(scaled, own);
}

/** Pages of this context opened from now on give up at once on what does not come. */
export const impatient = (page: Page): Promise<unknown> => page.addInitScript(limitsTimes, 0);

/** Waits until the page has drawn so many frames: whatever acts with the next one has acted. */
export const frames = (page: Page, count: number): Promise<void> =>
  page.evaluate(
    (wanted) =>
      new Promise<void>((done) => {
        const next = (left: number): void => void (left === 0 ? done() : requestAnimationFrame(() => next(left - 1)));
        next(wanted);
      }),
    count,
  );

/** Data and blob addresses never leave the page. */
const isOwn = (address: string, origin: string): boolean =>
  address === origin || address.startsWith(`${origin}/`) || /^(data|blob|about):/.test(address);

/** Waits for what a page loads by itself once it is there: its fonts, and at a desk the larger plate. */
export async function settled(page: Page): Promise<void> {
  await page.waitForFunction(() => {
    const plate = document.querySelector("[data-plate]");
    const awaited = plate !== null && matchMedia("(min-width: 56rem)").matches;
    return document.fonts.status === "loaded" && (!awaited || plate.classList.contains("has-desk"));
  });
}
