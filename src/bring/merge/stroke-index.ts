/** Placeholder stroke indexes that make room for real ones: each number is dealt once. Pure. */
import { valueAt } from "../../course/schema/issues.ts";
import type { Page } from "../pages/pages.ts";
import { isMarked } from "./card.ts";

const numbersOf = (value: unknown): number[] =>
  [value, valueAt(value, ["men"]), valueAt(value, ["women"])].filter((one) => typeof one === "number");

/**
 * New numbers for the placeholders that a real stroke index takes.
 *
 * @param said by hole: the stroke indexes that came in this run
 */
export function dealtAgain(pages: readonly Page[], said: ReadonlyMap<number, unknown>): ReadonlyMap<number, number> {
  const open = pages.filter(
    (page): page is Page & { at: number } =>
      typeof page.at === "number" && isMarked(page, "strokeIndex") && !said.has(page.at),
  );
  const fixed = pages
    .filter((page) => !open.some(({ at }) => at === page.at))
    .map(
      (page) => (typeof page.at === "number" ? said.get(page.at) : undefined) ?? valueAt(page.value, ["strokeIndex"]),
    );
  const taken = new Set([...fixed, ...said.values()].flatMap(numbersOf));
  const dealt = new Map<number, number>();
  const late: number[] = [];
  for (const { at, value } of open) {
    const own = numbersOf(valueAt(value, ["strokeIndex"]));
    if (own.every((number) => !taken.has(number))) own.forEach((number) => taken.add(number));
    else late.push(at);
  }
  let next = 1;
  for (const at of late) {
    while (taken.has(next)) next++;
    taken.add(next);
    dealt.set(at, next);
  }
  return dealt;
}
