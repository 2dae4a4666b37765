/** Cut texts, nines and totals. */
import { expect, test } from "vitest";
import { firstParagraph, markdownHtml, shortened } from "../../src/components/markdown.ts";
import { nines } from "../../src/components/nines.ts";

test("a text is cut at a word, with no stop before the dots", () => {
  expect(shortened("short")).toBe("short");
  const cut = shortened("Across the gully, then up to the green.", 20);
  expect(cut).toBe("Across the gully…");
  expect(shortened("x".repeat(300)).length).toBeLessThanOrEqual(160);
});

test("a description's headings go under the page's own, and its HTML is shown, not obeyed", () => {
  expect(markdownHtml("# Ground")).toBe("<h3>Ground</h3>\n");
  expect(markdownHtml("<script>alert(1)</script>")).not.toContain("<script");
  expect(firstParagraph("# Ground\n\n*Dunes* and\nmachair.")).toBe("Ground");
  expect(firstParagraph("*Dunes* and\nmachair.\n\nMore.")).toBe("Dunes and machair.");
});

test("holes come in nines, the last part what is left", () => {
  expect(nines([1, 2, 3])).toEqual([[1, 2, 3]]);
  expect(nines(Array.from({ length: 18 }, (_, i) => i)).map(({ length }) => length)).toEqual([9, 9]);
});
