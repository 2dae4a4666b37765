/** axe-core on a page: WCAG 2.2 A and AA and its best practices. */
import axe from "axe-core";
import type { AxeResults, RunOptions } from "axe-core";
import type { Page } from "playwright-core";

export interface Violation {
  readonly rule: string;
  readonly help: string;
  /** Selectors, and why, of the first few. */
  readonly where: readonly string[];
}

const OPTIONS: RunOptions = {
  runOnly: { type: "tag", values: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] },
  resultTypes: ["violations"],
};

export async function violations(page: Page): Promise<Violation[]> {
  // Evaluated by the browser's own tools, which the page's policy does not bind.
  if (!(await page.evaluate(() => "axe" in globalThis))) await page.evaluate(axe.source);
  const results = await page.evaluate<AxeResults>(`axe.run(document, ${JSON.stringify(OPTIONS)})`);
  return results.violations.map(({ id, help, nodes }) => ({
    rule: id,
    help,
    where: nodes.slice(0, 4).map(({ target, failureSummary }) => `${target.join(" ")}: ${failureSummary ?? ""}`),
  }));
}
