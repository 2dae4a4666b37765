/** Features an earlier run brought from sources of which this run has others, but no longer these. Pure. */
import type { Candidate } from "../normalise/candidate.ts";
import { atOf } from "../pages/ledger.ts";
import { allPages, type CoursePages } from "../pages/pages.ts";
import type { Incoming } from "../place/incoming.ts";

/** The file a key is from; OpenStreetMap is one source whatever file it came in. */
const sourceOf = (key: string): string => key.slice(0, key.indexOf(key.startsWith("osm:") ? ":" : "#") + 1);

/** A sentence for each: it is kept, and the club decides. */
export function goneFromSources(
  incoming: readonly Incoming[],
  candidates: readonly Candidate[],
  pages: CoursePages,
): string[] {
  const present = new Set(candidates.flatMap(({ key }) => (key === undefined ? [] : sourceOf(key))));
  const seen = new Set(incoming.map(({ key }) => key));
  const written = new Set(allPages(pages).flatMap((page) => page.ids.map((id) => atOf(page.at, id))));
  return Object.entries(pages.ledger.features).flatMap(([key, { at }]) => {
    if (key.startsWith("=") || seen.has(key) || !present.has(sourceOf(key)) || !written.has(at)) return [];
    const [page, id] = [at.slice(0, at.indexOf("/")), at.slice(at.indexOf("/") + 1)];
    return [
      `${id} of ${page === "course" ? "the course" : `hole ${page}`} is no longer in the source (${key}). It was kept; delete it from the page if it is gone from the ground.`,
    ];
  });
}
