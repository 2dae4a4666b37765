import { at, perHole } from "../rule.ts";
import { perTip } from "../tips.ts";

/** `[words](target "title")`, figures' own brackets left out: they have no round ones behind them. */
const LINK = /\[[^\]\n]*\]\(\s*<?([^)\s>]+)>?[^)\n]*\)/g;

/** A target that leaves the guide, or stays on the page. */
const ELSEWHERE = /^(?:[a-z][a-z0-9+.-]*:|#|$)/i;

/** Where a link on a hole's page leads, as the guide names its pages: `tarvay/card/`. */
function pageOf(target: string, courseId: string, hole: number): string {
  const { pathname } = new URL(target, `https://guide.invalid/${courseId}/${hole}/`);
  const path = decodeURI(pathname)
    .replace(/^\//, "")
    .replace(/index\.html$/, "");
  return path === "" || path.endsWith("/") ? path : `${path}/`;
}

export const deadLink = perHole({
  name: "dead-link",
  severity: "warning",
  about: "A link in a tip leads to a page the guide does not have, or past the guide's own folder.",
  // A translated tip stands in a folder of its language, which is like the guide's own: its links lead the same way.
  look: perTip(({ tip }, { course, hole: { number } }, { pages }) => {
    if (!pages) return [];
    return tip.markdown.split("\n").flatMap((text, i) =>
      [...text.matchAll(LINK)].flatMap(({ 0: whole, 1: target, index }) => {
        if (ELSEWHERE.test(target!)) return [];
        const place = { ...tip.place, line: tip.place.line + i, column: (i === 0 ? tip.place.column : 1) + index };
        if (target!.startsWith("/")) {
          return [
            at(
              place,
              `${whole} starts at the address's root, which may not be the guide's. Write it from this page, such as ../card/ for the scorecard.`,
            ),
          ];
        }
        if (pages.has(pageOf(target!, course.id, number))) return [];
        return [
          at(
            place,
            `${whole} leads to no page of the guide. From here another hole is ../7/, the scorecard ../card/, the map ../map/.`,
          ),
        ];
      }),
    );
  }),
});
