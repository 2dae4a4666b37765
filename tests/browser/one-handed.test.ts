/** A hole page in one hand: swipes, where the hole is cut, large text and more contrast. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, inject, onTestFinished, test } from "vitest";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { yardsFromMetres } from "../../src/geo/units.ts";
import type { HoleData } from "../../src/contract/hole-data.ts";
import { connect, DESK, frames, PHONE, settled, watchedPage } from "../support/browser.ts";
import { violations } from "../support/axe.ts";
import { pagesOf } from "../support/site.ts";

const { origin, base, folder } = inject("site");
const holePages = pagesOf(folder).filter((page) => /^[^/]+\/\d+\/$/.test(page));
const hole = (number: number): string => holePages.find((path) => path.endsWith(`/${number}/`))!;

let browser: Browser;
beforeAll(async () => {
  browser = await connect();
});
afterAll(() => browser.close());

const open = async (path: string, options: BrowserContextOptions = {}): Promise<Page> => {
  const { page } = await watchedPage(browser, origin, options);
  onTestFinished(() => page.context().close());
  await page.goto(`${origin}${base}${path}`);
  await settled(page);
  return page;
};

/** Pages that are set out for from now on. */
function departures(page: Page): string[] {
  const left: string[] = [];
  page.on("request", (request) => {
    if (request.isNavigationRequest()) left.push(request.url());
  });
  return left;
}

/** A finger's way over the page, as the browser's input pipeline sees it. */
async function drag(
  page: Page,
  [fromX, fromY]: readonly [number, number],
  [toX, toY]: readonly [number, number],
): Promise<void> {
  const session = await page.context().newCDPSession(page);
  const steps = 5;
  // A finger's own pace, however busy the machine that tests.
  const started = Date.now() / 1000;
  const touch = (type: "touchStart" | "touchMove" | "touchEnd", step: number) =>
    session.send("Input.dispatchTouchEvent", {
      type,
      touchPoints:
        type === "touchEnd"
          ? []
          : [{ x: fromX + ((toX - fromX) * step) / steps, y: fromY + ((toY - fromY) * step) / steps }],
      timestamp: started + step * 0.04,
    });
  await touch("touchStart", 0);
  for (let step = 1; step <= steps; step++) await touch("touchMove", step);
  await touch("touchEnd", steps);
}

describe("a swipe", () => {
  const touch = { hasTouch: true, isMobile: true, viewport: PHONE };

  test("to the left turns to the next hole, to the right to the one before, down the page to none", async () => {
    const page = await open(hole(2), touch);
    const left = departures(page);
    await drag(page, [200, 500], [210, 300]);
    await frames(page, 2);
    expect(left).toEqual([]);
    await page.evaluate(() => scrollTo(0, 0));
    await drag(page, [320, 300], [120, 310]);
    await page.waitForURL(`${origin}${base}${hole(3)}`);
    await drag(page, [100, 300], [300, 310]);
    await page.waitForURL(`${origin}${base}${hole(2)}`);
  });

  test("over what moves sideways itself is left to it", async () => {
    const page = await open(hole(2), touch);
    const table = page.locator(".scroller:visible").first();
    await table.scrollIntoViewIfNeeded();
    const { x, y, height, width } = (await table.boundingBox())!;
    const left = departures(page);
    await drag(page, [x + width - 60, y + height / 2], [x + 60, y + height / 2]);
    await frames(page, 2);
    expect(left).toEqual([]);
  });
});

test("the third the hole is cut in turns the green's figure, is told, and holds on the next hole", async () => {
  const page = await open(hole(1));
  const middle = () => page.locator(".glance:visible .mid");
  const wanted = (path: string): number => {
    const data = JSON.parse(readFileSync(join(folder, path, "hole.json"), "utf8")) as HoleData;
    const { front, back } = data.tees.find(({ id }) => id === data.defaultTee)!.green;
    return Math.round(yardsFromMetres(front.metres + ((back.metres - front.metres) * 5) / 6));
  };
  const before = await middle().locator("[data-value]").textContent();
  await page.locator("[popovertarget=settings]:visible").first().click();
  await page.locator(`#settings label:has(input[value="back"])`).click();
  expect(await page.locator("#settings-status").textContent()).toMatch(/back third/i);
  await page.keyboard.press("Escape");
  expect(Number(await middle().locator("[data-value]").textContent())).toBe(wanted(hole(1)));
  expect(await middle().locator("dt").textContent()).toMatch(/back third/i);
  await page.goto(`${origin}${base}${hole(2)}`);
  expect(Number(await middle().locator("[data-value]").textContent())).toBe(wanted(hole(2)));

  // And back again, to the figure the page was built with.
  await page.goto(`${origin}${base}${hole(1)}`);
  await page.locator("[popovertarget=settings]:visible").first().click();
  await page.locator(`#settings label:has(input[value="middle"])`).click();
  expect(await middle().locator("[data-value]").textContent()).toBe(before);
  expect(await middle().locator("dt").textContent()).toBe("Middle");
});

describe.each([
  { name: "text at 200 %", viewport: PHONE, text: 2 },
  { name: "a page at 200 % of a small desk", viewport: { width: 640, height: 400 }, text: 1 },
  // WCAG 2.2, 1.4.10 Reflow: 320 CSS pixels.
  { name: "320 pixels", viewport: { width: 320, height: 640 }, text: 1 },
])("$name", ({ viewport, text }) => {
  test.each([
    ["a hole", hole(11)],
    ["the cover", ""],
    ["the card", `${hole(1).split("/")[0]}/card/`],
    ["a German hole", `de/${hole(11)}`],
    ["the German cover", "de/"],
  ])("%s keeps within its width, nothing cut off", async (_, path) => {
    const page = await open(path, { viewport });
    // As a reader's own setting for text does, which style sheets see too.
    await (await page.context().newCDPSession(page)).send("Page.setFontSizes", { fontSizes: { standard: 16 * text } });
    const { overflow, cut } = await page.evaluate(() => {
      const hidden = (one: Element): boolean =>
        one.closest(".visually-hidden, .scroller, svg, [popover], .bar small, .masthead") !== null;
      return {
        overflow: document.documentElement.scrollWidth - document.documentElement.clientWidth,
        cut: [...document.querySelectorAll<HTMLElement>("main *")]
          .filter(
            (one) =>
              !hidden(one) &&
              one.clientWidth > 0 &&
              getComputedStyle(one).overflowX !== "visible" &&
              one.scrollWidth > one.clientWidth + 1,
          )
          .map((one) => one.className),
      };
    });
    expect({ overflow, cut }).toEqual({ overflow: 0, cut: [] });
  });
});

test("readers who ask for more contrast get it, by day and by night", async () => {
  for (const colorScheme of ["light", "dark"] as const) {
    const page = await open(hole(1), { colorScheme, contrast: "more" });
    const [ink, paper] = await page.evaluate(() => {
      const style = getComputedStyle(document.body);
      return [style.color, style.backgroundColor];
    });
    expect([ink, paper].sort()).toEqual(["rgb(0, 0, 0)", "rgb(255, 255, 255)"]);
    expect(await violations(page)).toEqual([]);
  }
});

test("the flags of the drawings stand in the third the hole is cut in, the desk's plate too, which comes later", async () => {
  const page = await open(hole(1), { viewport: DESK });
  await page.evaluate(() => localStorage.setItem("marram.third", "back"));
  await page.reload();
  await page.locator(".has-desk").waitFor();
  const flags = await page.locator("main [data-flag]").evaluateAll((all) =>
    all.map((flag) => {
      const [fx = 0, fy = 0, mx = 0, my = 0, bx = 0, by = 0] = flag.getAttribute("data-flag")!.split(" ").map(Number);
      const [x = 0, y = 0] = flag
        .getAttribute("transform")!
        .match(/-?[\d.]+/g)!
        .map(Number);
      // Play runs up the sheet: the back of the green lies above its front.
      return {
        upright: by < my && my < fy,
        off: Math.hypot(x - (fx + ((bx - fx) * 5) / 6), y - (fy + ((by - fy) * 5) / 6)),
        moved: Math.hypot(x - mx, y - my),
      };
    }),
  );
  // The phone's plate, the desk's, and the green's own drawing.
  expect(flags).toHaveLength(3);
  for (const { upright, off, moved } of flags) {
    expect(upright).toBe(true);
    expect(off).toBeLessThan(0.01);
    expect(moved).toBeGreaterThan(3);
  }
});
