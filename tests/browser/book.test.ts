/** The pocket book's page on the built site: its figures are the hole pages' own, and it prints as it stands. */
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import type { Browser, Page } from "playwright-core";
import { connect, DESK, watchedPage, type WatchedPage } from "../support/browser.ts";

const { origin, base } = inject("site");
let browser: Browser;
let watched: WatchedPage;
let page: Page;

beforeAll(async () => {
  browser = await connect();
  watched = await watchedPage(browser, origin, { viewport: DESK });
  page = watched.page;
});
afterAll(() => browser.close());

interface Row {
  readonly tee: string;
  readonly values: readonly string[];
}

/** Rows of a table, the first column as it is named and the rest as numbers shown. */
const rowsOf = (at: Page, selector: string): Promise<Row[]> =>
  at.locator(selector).first().locator("tbody tr").evaluateAll((rows) =>
    rows.map((row) => ({
      tee: row.querySelector("th")?.textContent?.trim() ?? "",
      values: [...row.querySelectorAll("td")].map((cell) => (cell.querySelector("[data-value]") ?? cell).textContent?.trim() ?? ""),
    })),
  );

test("holds every hole on two facing pages, and no page runs over", async () => {
  await page.goto(`${origin}${base}tarvay/book/`);
  expect(await page.locator(".leaf.plate").count()).toBe(18);
  const leaves = await page.locator(".leaf").evaluateAll((all) => all.map((leaf) => {
    const inner = leaf.querySelector(".page")!;
    return { kind: leaf.className, over: Math.max(inner.scrollHeight - inner.clientHeight, inner.scrollWidth - inner.clientWidth) };
  }));
  for (const [i, { kind, over }] of leaves.entries()) {
    expect(over, `page ${i + 1}`).toBeLessThanOrEqual(1);
    if (kind.includes("plate")) expect([(i + 1) % 2, leaves[i + 1]!.kind.includes("figures")]).toEqual([0, true]);
  }
});

describe.each([1, 3, 7, 14, 17])("hole %i", (hole) => {
  test("has the figures of its page, from every tee", async () => {
    await page.goto(`${origin}${base}tarvay/book/`);
    const leaf = `.leaf.figures >> nth=${hole - 1} >> .book-tees`;
    const printed = await rowsOf(page, leaf);
    await page.goto(`${origin}${base}tarvay/${hole}/`);
    const shown = await rowsOf(page, "table.tees");
    expect(printed.length).toBe(4);
    // A carry is a column of both or of neither.
    expect(printed).toEqual(shown);
  });

  test("has its page's trouble, from the tee shown first", async () => {
    await page.goto(`${origin}${base}tarvay/book/`);
    const printed = await page.locator(`.leaf.figures >> nth=${hole - 1} >> .book-trouble tbody tr`).evaluateAll((rows) =>
      rows.map((row) => ({ name: row.querySelector("th")!.firstChild!.textContent!.trim(), figures: row.querySelector('td[data-tee="heather"]')?.textContent ?? "–" })),
    );
    await page.goto(`${origin}${base}tarvay/${hole}/`);
    const shown = new Map(await page.locator("table.trouble").first().locator("tbody tr").evaluateAll((rows) =>
      rows.map((row): [string, string] => {
        const [reach, carry] = [...row.querySelectorAll("[data-value]")].map((value) => value.textContent ?? "");
        return [row.querySelector("th")!.firstChild!.textContent!.trim(), carry === undefined || row.querySelectorAll("td")[1]?.textContent?.trim() === "–" ? `${reach}` : `${reach}–${carry}`];
      }),
    ));
    if (hole !== 14) expect(printed.length).toBeGreaterThan(0);
    for (const { name, figures } of printed) expect(figures, name).toBe(shown.get(name));
  });
});

test("prints on pages of its own size, one leaf to each", async () => {
  await page.goto(`${origin}${base}tarvay/book/`);
  const leaves = await page.locator(".leaf").count();
  const pdf = await page.pdf({ preferCSSPageSize: true });
  const text = pdf.toString("latin1");
  expect(text.match(/\/Type\s*\/Page\b/g)).toHaveLength(leaves);
  expect(new Set(text.match(/\/MediaBox\s*\[[^\]]*\]/g))).toEqual(new Set(["/MediaBox [0 0 306 504]"]));
  expect(watched.record).toEqual({ errors: [], foreign: [], missing: [] });
});
