/** The watch kept on every page is itself tried: each kind of fault is planted and must be seen. */
import { afterAll, beforeAll, beforeEach, expect, inject, test } from "vitest";
import type { Browser } from "playwright-core";
import { connect, watchedPage, type WatchedPage } from "../support/browser.ts";
import { violations } from "../support/axe.ts";

const { origin, base } = inject("site");
let browser: Browser;
let watched: WatchedPage;

beforeAll(async () => {
  browser = await connect();
  watched = await watchedPage(browser, origin);
});
afterAll(() => browser.close());
beforeEach(async () => {
  await watched.page.goto(`${origin}${base}`);
  watched.forget();
});

test("a request to another address is seen and refused", async () => {
  // Without the page's own policy, which would refuse it first.
  const open = await watchedPage(browser, origin, { bypassCSP: true });
  await open.page.goto(`${origin}${base}`);
  expect(open.record.foreign).toEqual([]);
  await open.page.evaluate(() => fetch("http://planted.invalid/pixel.png").catch(() => undefined));
  expect(open.record.foreign).toEqual(["http://planted.invalid/pixel.png"]);
  await open.page.context().close();
});

test("a request from a worker to another address is seen", async () => {
  const open = await watchedPage(browser, origin, { bypassCSP: true });
  await open.page.goto(`${origin}${base}`);
  await open.page.evaluate(
    () =>
      new Promise((done) => {
        const code = `fetch("http://planted.invalid/from-worker").catch(() => undefined).then(() => postMessage("done"))`;
        new Worker(URL.createObjectURL(new Blob([code], { type: "text/javascript" }))).onmessage = done;
      }),
  );
  expect(open.record.foreign).toContain("http://planted.invalid/from-worker");
  await open.page.context().close();
});

test("the policy refuses another address, an inline script and an inline style, and that is seen", async () => {
  const { page, record } = watched;
  await page.evaluate(() => fetch("http://planted.invalid/").catch(() => undefined));
  await page.evaluate(() => {
    const script = document.createElement("script");
    script.textContent = "globalThis.planted = true";
    document.body.append(script);
    document.body.insertAdjacentHTML("beforeend", `<p style="color: red">planted</p>`);
  });
  await expect.poll(() => record.errors.length).toBeGreaterThanOrEqual(3);
  expect(record.errors.join("\n")).toMatch(/connect-src/);
  expect(record.errors.join("\n")).toMatch(/script-src/);
  expect(record.errors.join("\n")).toMatch(/style-src/);
  expect(await page.evaluate(() => "planted" in globalThis)).toBe(false);
});

test("a missing file of our own is seen", async () => {
  const { page, record } = watched;
  await page.evaluate((address) => fetch(address), `${base}no-such-file`);
  expect(record.missing).toEqual([`404 ${origin}${base}no-such-file`]);
});

test("an error thrown on the page is seen", async () => {
  await watched.page.evaluate(() => {
    setTimeout(() => {
      throw new Error("planted");
    });
  });
  await expect.poll(() => watched.record.errors).toContain("thrown: planted");
});

test("a picture without alternative text is found by the accessibility check", async () => {
  await watched.page.evaluate(() => document.querySelector("main")!.append(new Image()));
  expect((await violations(watched.page)).map(({ rule }) => rule)).toContain("image-alt");
});
