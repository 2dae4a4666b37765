/** The pocket book's page on the built site: its figures are the hole pages' own, and it prints as it stands. */
import { afterAll, beforeAll, expect, inject, test } from "vitest";
import type { Browser, Page } from "playwright-core";
import { connect, DESK, watchedPage, type WatchedPage } from "../support/browser.ts";

const { origin, base } = inject("site");
let browser: Browser;
let watched: WatchedPage;
/** For hole pages, beside the book. */
let other: WatchedPage;
let page: Page;

beforeAll(async () => {
  browser = await connect();
  watched = await watchedPage(browser, origin, { viewport: DESK });
  other = await watchedPage(browser, origin, { viewport: DESK });
  page = watched.page;
  await page.goto(`${origin}${base}tarvay/book/`);
});
afterAll(() => browser.close());

interface Row {
  readonly name: string;
  readonly values: readonly string[];
}

/** A table's rows: what each is of, and the numbers shown in it, a dash where there is none. */
const rowsOf = (at: Page, selector: string): Promise<Row[]> =>
  at
    .locator(selector)
    .first()
    .locator("tbody tr")
    .evaluateAll((rows) =>
      rows.map((row) => ({
        name: [...row.querySelector("th")!.childNodes]
          .filter((node) => node.nodeType === Node.TEXT_NODE)
          .map((node) => node.textContent)
          .join("")
          .trim(),
        values: [...row.querySelectorAll("td")].map(
          (cell) => (cell.querySelector("[data-value]") ?? cell).textContent?.trim() ?? "",
        ),
      })),
    );

test("holds every hole on two facing pages, and no page runs over", async () => {
  expect(await page.locator(".leaf.plate").count()).toBe(18);
  const leaves = await page.locator(".leaf").evaluateAll((all) =>
    all.map((leaf) => {
      const inner = leaf.querySelector(".page")!;
      return {
        kind: leaf.getAttribute("class") ?? "",
        over: Math.max(inner.scrollHeight - inner.clientHeight, inner.scrollWidth - inner.clientWidth),
      };
    }),
  );
  for (const [i, { kind, over }] of leaves.entries()) {
    expect(over, `page ${i + 1}`).toBeLessThanOrEqual(1);
    if (kind.includes("plate")) expect([(i + 1) % 2, leaves[i + 1]!.kind.includes("figures")]).toEqual([0, true]);
  }
});

test.each([1, 3, 7, 11, 14, 17])(
  "hole %i has the figures of its page, from every tee, and its trouble",
  async (hole) => {
    const leaf = `.leaf.figures >> nth=${hole - 1}`;
    const tees = await rowsOf(page, `${leaf} >> .book-tees`);
    const trouble = await page.locator(`${leaf} >> .book-trouble tbody tr`).evaluateAll((rows) =>
      rows.map((row) => ({
        name: row.querySelector("th")!.firstChild!.textContent!.trim(),
        // The default tee set's column, found by its heading.
        figures:
          row.querySelectorAll("td")[
            [...row.closest("table")!.querySelectorAll("thead th")].findIndex((head) =>
              head.textContent.includes("Heather"),
            ) - 1
          ]?.textContent ?? "–",
      })),
    );
    await other.page.goto(`${origin}${base}tarvay/${hole}/`);
    expect(tees).toHaveLength(4);
    // A carry is a column of both or of neither.
    expect(tees).toEqual(await rowsOf(other.page, "table.tees"));
    const shown = new Map(
      (await rowsOf(other.page, "table.trouble:not(.later)")).map(({ name, values: [reach, carry] }) => [
        name,
        carry === "–" ? reach : `${reach}–${carry}`,
      ]),
    );
    if (hole !== 14) expect(trouble.length).toBeGreaterThan(0);
    for (const { name, figures } of trouble) expect(figures, name).toBe(shown.get(name));
  },
);

test("prints on pages of its own size, one leaf to each", async () => {
  const leaves = await page.locator(".leaf").count();
  const pdf = await page.pdf({ preferCSSPageSize: true });
  const text = pdf.toString("latin1");
  expect(text.match(/\/Type\s*\/Page\b/g)).toHaveLength(leaves);
  expect(new Set(text.match(/\/MediaBox\s*\[[^\]]*\]/g))).toEqual(new Set(["/MediaBox [0 0 306 504]"]));
  expect(watched.record).toEqual({ errors: [], foreign: [], missing: [] });
});
