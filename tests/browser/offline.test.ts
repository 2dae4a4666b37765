/**
 * A kept guide: nothing before it is asked for, all of it afterwards without a network,
 * never two editions on one page, and gone when removed.
 */
import { cp, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { createServer, type Server } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, inject, test } from "vitest";
import type { Browser, Page } from "playwright-core";
import { guideListener } from "../../src/commands/guide-server.ts";
import { EDITION_FILE, readEdition, type Edition } from "../../src/contract/edition.ts";
import { writeEdition } from "../../src/site/build/edition.ts";
import { connect, watchedPage } from "../support/browser.ts";
import { pagesOf } from "../support/site.ts";

const { base, folder } = inject("site");
const holePages = pagesOf(folder).filter((page) => /^[^/]+\/\d+\/$/.test(page));
const course = holePages[0]!.split("/")[0]!;

/** A server whose folder can be changed, as a host's is when a club publishes; and which can be switched off. */
interface Host {
  readonly origin: string;
  publish(folder: string): void;
  /** Addresses asked for since the last call. */
  asked(): string[];
  /** Answers a path with something else, as a host or a proxy that changes files does. */
  spoil(path: string): void;
  /** Drops every connection after so many more answers; Infinity for none. */
  dropAfter(answers: number): void;
  off(): Promise<void>;
}

async function host(first: string): Promise<Host> {
  let answer = guideListener({ folder: first, base });
  const asked: string[] = [];
  let spoilt: string | undefined;
  let left = Infinity;
  const server: Server = createServer((request, response) => {
    const address = request.url ?? "/";
    if (left-- <= 0) return void request.socket.destroy();
    asked.push(address);
    if (spoilt !== undefined && address.split("?")[0] === base + spoilt) return void response.end("Something else");
    answer(request, response);
  });
  await new Promise<void>((done) => server.listen(0, "127.0.0.1", done));
  const address = server.address();
  if (address === null || typeof address === "string") throw new Error("The test server has no port.");
  return {
    origin: `http://127.0.0.1:${address.port}`,
    publish: (next) => void (answer = guideListener({ folder: next, base })),
    asked: () => asked.splice(0),
    spoil: (path) => void (spoilt = path),
    dropAfter: (answers) => void (left = answers),
    off: () =>
      new Promise((done) => {
        server.closeAllConnections();
        server.close(() => done());
      }),
  };
}

let browser: Browser;
let scratch: string;
let second: string;
let editions: readonly [Edition, Edition];
const MARK = "second-edition-mark";

beforeAll(async () => {
  browser = await connect();
  scratch = await mkdtemp(join(tmpdir(), "marram-editions-"));
  second = join(scratch, "second");
  await cp(folder, second, { recursive: true });
  // Every hole page and every hole's data of the second edition carry a mark.
  for (const path of holePages) {
    const page = join(second, path, "index.html");
    await writeFile(page, (await readFile(page, "utf8")).replace("</main>", `<p id="${MARK}">Changed</p></main>`));
    const data = join(second, path, "hole.json");
    await writeFile(data, JSON.stringify({ ...JSON.parse(await readFile(data, "utf8")), mark: MARK }));
  }
  const listed = readEdition(JSON.parse(await readFile(join(folder, EDITION_FILE), "utf8")))!;
  editions = [listed, await writeEdition(second)];
});
afterAll(async () => {
  await browser.close();
  await rm(scratch, { recursive: true, force: true });
});

let club: Host;
let page: Page;
let on: boolean;

beforeEach(async () => {
  club = await host(folder);
  on = true;
  ({ page } = await watchedPage(browser, club.origin));
});
afterEach(async () => {
  await page.context().close();
  if (on) await club.off();
});

const switchOff = async (): Promise<void> => {
  await club.off();
  on = false;
};
const go = (path: string, where = page) => where.goto(`${club.origin}${base}${path}`);
const keepButton = (where = page) => where.locator(".cartouche .keep button").first();
const status = (where = page) => where.locator(".cartouche .keep [role=status]");
const cacheNames = (where = page) => where.evaluate(() => caches.keys());
const keptEdition = (where = page) =>
  where.evaluate(async (scope) => {
    for (const name of await caches.keys()) {
      const found = name.endsWith(" record") ? await (await caches.open(name)).match(`${scope}current`) : undefined;
      if (found) return found.text();
    }
    return undefined;
  }, base);

async function keep(): Promise<void> {
  await go("");
  await keepButton().click();
  await expect.poll(() => keptEdition()).toBe(editions[0].edition);
  await expect.poll(() => status().textContent()).toContain("kept on this device");
}

test("the list of an edition holds every file that pages use, and its own size", () => {
  const [first] = editions;
  const files = Object.values(first.files);
  expect(files.reduce((sum, { bytes }) => sum + bytes, 0)).toBe(first.bytes);
  for (const path of [
    ...holePages.map((hole) => `${hole}index.html`),
    "index.html",
    "404.html",
    "manifest.webmanifest",
  ])
    expect(first.files).toHaveProperty([path]);
  expect(editions[1].edition).not.toBe(first.edition);
});

test("nothing is kept, and no worker registered, before the golfer asks; the size is said first", async () => {
  await go("");
  await expect.poll(() => status().textContent()).toMatch(/^Takes \d+\.\d MB\./);
  const said = Number(/[\d.]+/.exec((await status().textContent())!)![0]);
  expect(Math.abs(said - editions[0].bytes / 1e6)).toBeLessThanOrEqual(0.051);
  await go(holePages[0]!);
  await page.locator("[popovertarget=settings]:visible").first().click();
  await expect.poll(() => page.locator("#settings .keep button").count()).toBe(1);
  expect(await cacheNames()).toEqual([]);
  expect(await page.evaluate(async () => (await navigator.serviceWorker.getRegistrations()).length)).toBe(0);
});

test("once kept, every hole, the card and the live map open with the server gone", async () => {
  await keep();
  await switchOff();
  for (const path of [...holePages, "", `${course}/card/`, `${course}/map/`, `${course}/figures/`]) {
    const response = await go(path);
    expect(response?.status(), path).toBe(200);
    expect(await page.locator("h1").first().isVisible(), path).toBe(true);
    expect(
      await page.evaluate(() =>
        [...document.images].every(({ loading, naturalWidth }) => loading === "lazy" || naturalWidth > 0),
      ),
      path,
    ).toBe(true);
  }
  await go(holePages[1]!);
  await page.locator(".open-map").click();
  await expect.poll(() => page.locator("#live-map").getAttribute("data-state")).toBe("ready");
  // Styles, fonts and the phone's plate are there too.
  expect(
    await page.evaluate(
      () => document.fonts.check("600 20px 'Sheet Serif'") && getComputedStyle(document.body).display,
    ),
  ).toBe("flex");
  // An address without its last slash, with a query, or of nothing.
  await go(`${course}/3?from=club`);
  expect(new URL(page.url()).pathname).toBe(`${base}${course}/3/`);
  expect((await go("no/such/page/"))?.status()).toBe(404);
  expect(await page.locator(".lost").count()).toBe(1);
});

test("every file of the edition is answered with its own bytes, offline", async () => {
  await keep();
  await go(holePages[0]!);
  await switchOff();
  const wrong = await page.evaluate(
    async ({ files, scope }) => {
      const found: string[] = [];
      for (const [path, { sha256 }] of Object.entries(files)) {
        const bytes = await (await fetch(scope + path)).arrayBuffer().catch(() => new ArrayBuffer(0));
        const hash = [...new Uint8Array(await crypto.subtle.digest("SHA-256", bytes))]
          .map((byte) => byte.toString(16).padStart(2, "0"))
          .join("");
        if (hash !== sha256) found.push(path);
      }
      return found;
    },
    { files: editions[0].files, scope: base },
  );
  expect(wrong).toEqual([]);
});

describe("an update", () => {
  const mark = (where = page) => where.locator(`#${MARK}`).count();
  const dataMark = (where: Page, path: string) =>
    where.evaluate(
      async (address) => ((await (await fetch(address)).json()) as { mark?: string }).mark ?? "",
      `${base}${path}hole.json`,
    );

  test("is offered, fetched whole, switched at once; an open page stays with its own edition", async () => {
    await keep();
    const { page: old } = { page: await page.context().newPage() };
    await go(holePages[4]!, old);
    club.publish(second);
    // Published, not fetched: all stays as it was kept.
    await go(holePages[0]!);
    expect([await mark(), await dataMark(page, holePages[1]!)]).toEqual([0, ""]);

    await go("");
    await expect.poll(() => status().textContent()).toContain("changed its guide");
    club.asked();
    await keepButton().click();
    await expect.poll(() => keptEdition()).toBe(editions[1].edition);
    // Only what changed came over the network.
    const fetched = club.asked().filter((address) => !/edition\.json|sw\.js$/.test(address));
    expect(fetched.length).toBeGreaterThanOrEqual(2 * holePages.length);
    expect(fetched.filter((address) => /\.(?:webp|jpg|woff2|js)$/.test(address))).toEqual([]);
    // Pages that say the same but for their edition's name are not fetched, and carry the new name all the same.
    expect(fetched.filter((address) => /\/(?:card|figures|map|tour|book|flyover|de)\//.test(address))).toEqual([]);

    // The page that was open before asks for more, and gets its own.
    expect(await old.evaluate(() => document.documentElement.dataset["edition"])).toBe(editions[0].edition);
    for (const path of holePages.slice(0, 6)) expect(await dataMark(old, path), path).toBe("");
    await switchOff();
    for (const path of holePages.slice(0, 6)) {
      await go(path);
      expect([await mark(), await dataMark(page, path)], path).toEqual([1, MARK]);
      expect(await dataMark(old, path), path).toBe("");
    }
    await go(`${holePages[0]!.split("/")[0]}/card/`);
    expect(await page.evaluate(() => document.documentElement.dataset["edition"])).toBe(editions[1].edition);
    await old.reload();
    expect([await mark(old), await dataMark(old, holePages[1]!)]).toEqual([1, MARK]);
  });

  test("whose file is not what it lists is refused, and the kept edition stays whole", async () => {
    await keep();
    club.publish(second);
    club.spoil(`${holePages[2]!}hole.json`);
    await go("");
    await expect.poll(() => status().textContent()).toContain("changed its guide");
    await keepButton().click();
    await expect.poll(() => status().textContent()).toContain("not the guide as the club made it");
    expect(await keptEdition()).toBe(editions[0].edition);
    await switchOff();
    for (const path of holePages.slice(0, 6)) {
      await go(path);
      expect([await mark(), await dataMark(page, path)], path).toEqual([0, ""]);
    }
  });

  test("cut off half way leaves the kept edition, and goes on when the network is back", async () => {
    await keep();
    club.publish(second);
    await go("");
    await expect.poll(() => status().textContent()).toContain("changed its guide");
    const half = holePages.length;
    club.dropAfter(half);
    await keepButton().click();
    await expect.poll(() => status().textContent()).toContain("network gave out");
    expect(await keptEdition()).toBe(editions[0].edition);
    await go(holePages[0]!);
    expect(await mark()).toBe(0);

    club.dropAfter(Infinity);
    await go("");
    await expect.poll(() => status().textContent()).toContain("changed its guide");
    club.asked();
    await keepButton().click();
    await expect.poll(() => keptEdition()).toBe(editions[1].edition);
    // What had come was not fetched again.
    expect(club.asked().filter((address) => /hole\.json$|\/\d+\/$/.test(address)).length).toBeLessThan(
      2 * holePages.length,
    );
  });
});

test("removed, nothing of it is left and pages come from the network again", async () => {
  await keep();
  await page.reload();
  await page.locator(".cartouche .keep button", { hasText: "Remove" }).click();
  await expect.poll(() => status().textContent()).toContain("Removed");
  await expect.poll(() => cacheNames()).toEqual([]);
  expect(await page.evaluate(async () => (await navigator.serviceWorker.getRegistrations()).length)).toBe(0);
  club.asked();
  await go(holePages[0]!);
  expect(club.asked()).toContain(`${base}${holePages[0]!}`);
});

describe("a device that does not let it", () => {
  test("have the room is told so, before anything is fetched", async () => {
    await page.addInitScript(() => {
      navigator.storage.estimate = () => Promise.resolve({ quota: 5_000_000, usage: 4_000_000 });
    });
    await go("");
    await keepButton().click();
    await expect.poll(() => status().textContent()).toContain("not enough room");
    expect(await keptEdition()).toBeUndefined();
  });

  test("store anything is told so", async () => {
    await page.addInitScript(() => {
      ServiceWorkerContainer.prototype.register = () => Promise.reject(new DOMException("refused", "SecurityError"));
    });
    await go("");
    await keepButton().click();
    await expect.poll(() => status().textContent()).toContain("lets the guide keep nothing");
    expect(await cacheNames()).toEqual([]);
  });

  test("work without https is told so", async () => {
    await page.addInitScript(() => {
      Reflect.deleteProperty(Navigator.prototype, "serviceWorker");
    });
    await go("");
    await expect.poll(() => status().textContent()).toContain("cannot keep a guide");
    expect(await page.locator(".cartouche .keep button").count()).toBe(0);
  });
});

test("the guide can be put on a home screen: manifest, icons of their sizes, all within the guide", async () => {
  await go(holePages[0]!);
  const address = await page.locator("link[rel=manifest]").getAttribute("href");
  const manifest = (await page.evaluate(async (from) => (await fetch(from)).json(), address!)) as {
    start_url: string;
    scope: string;
    display: string;
    name: string;
    icons: { src: string; sizes: string; purpose: string }[];
  };
  expect(manifest).toMatchObject({ start_url: base, scope: base, display: "standalone" });
  expect(manifest.icons.map(({ sizes, purpose }) => `${sizes} ${purpose}`)).toEqual([
    "192x192 any",
    "512x512 any",
    "512x512 maskable",
  ]);
  for (const { src, sizes } of manifest.icons) {
    expect(src.startsWith(base)).toBe(true);
    expect(
      await page.evaluate(async (from) => {
        const image = await createImageBitmap(await (await fetch(from)).blob());
        return `${image.width}x${image.height}`;
      }, src),
    ).toBe(sizes);
  }
});
