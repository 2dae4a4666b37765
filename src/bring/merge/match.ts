/**
 * Which feature of the pages an incoming one is. Pure. By what was brought before; by its
 * id, when it is our own export come back; by its role, of which a hole has one; by lying
 * in the same place.
 */
import { isPlaceholder } from "../../course/draft.ts";
import type { CheckedFeature } from "../../course/schema/features.ts";
import type { CheckedGeometry } from "../../course/schema/geometry.ts";
import type { Frame } from "../../geo/frame.ts";
import type { Point } from "../../geo/position.ts";
import { distanceMetres } from "../../geo/vector.ts";
import { cleaned } from "../normalise/clean.ts";
import { atOf, markOf, type LedgerEntry } from "../pages/ledger.ts";
import { allPages, type CoursePages, type PageAt } from "../pages/pages.ts";
import type { Incoming } from "../place/incoming.ts";
import { covers, middleOf, shapeOf, type Shape } from "../place/shape.ts";
import { alike, sameGround } from "./same-ground.ts";

/** A feature that is on a page. */
export interface Existing {
  readonly at: PageAt;
  readonly feature: CheckedFeature;
}

export interface Match {
  readonly incoming: Incoming;
  /** The feature it is; undefined for a new one. */
  readonly existing: Existing | undefined;
  /** As it was brought last. */
  readonly last: LedgerEntry | undefined;
  /** It was brought before, and the club has taken it out since. */
  readonly takenOut: boolean;
  /** It is another drawing of the feature, which keeps what it has. */
  readonly duplicate: boolean;
}

const ROLES = new Set(["line-of-play", "green", "pin"]);

/** Middles this near are one thing surveyed twice, whatever its size. */
const SAME_METRES = 5;

const family = ({ type }: CheckedGeometry): string => type.replace("Multi", "").replace("LineString", "Line");

export function matchFeatures(incoming: readonly Incoming[], pages: CoursePages, frame: Frame): Match[] {
  const { ledger } = pages;
  const existing = allPages(pages).flatMap((page): Existing[] =>
    page.features.filter((feature) => !isPlaceholder(feature)).map((feature) => ({ at: page.at, feature })),
  );
  const byAt = new Map(existing.map((one) => [atOf(one.at, one.feature.id), one]));
  const marks = new Map(existing.map((one) => [one, markOf(cleaned(one.feature.geometry))]));
  const listed = new Set(Object.values(ledger.features).map(({ at }) => at));
  const lastByAt = new Map(Object.values(ledger.features).map((entry) => [entry.at, entry]));
  const claimed = new Set<Existing>();
  const results = new Map<Incoming, Match>();
  const settle = (
    one: Incoming,
    found: Existing | undefined,
    last: LedgerEntry | undefined,
    takenOut = false,
  ): void => {
    if (found) claimed.add(found);
    results.set(one, { incoming: one, existing: found, last, takenOut, duplicate: false });
  };
  const free = (one: Existing | undefined): Existing | undefined => (one && !claimed.has(one) ? one : undefined);
  const open = (): Incoming[] => incoming.filter((one) => !results.has(one));

  for (const one of open()) {
    const last = one.key === undefined ? undefined : ledger.features[one.key];
    if (last === undefined) continue;
    const renamed = existing.find(
      (other) =>
        !claimed.has(other) && !listed.has(atOf(other.at, other.feature.id)) && marks.get(other) === last.geometry,
    );
    const found = free(byAt.get(last.at)) ?? renamed;
    settle(one, found, last, found === undefined);
  }
  const known = (one: Incoming, found: Existing | undefined): void => {
    if (found) settle(one, found, lastByAt.get(atOf(found.at, found.feature.id)));
  };
  for (const one of open()) {
    const { id, geometry } = one.candidate;
    const found = id === undefined ? undefined : free(byAt.get(atOf(one.at, id)));
    if (found && family(found.feature.geometry) === family(geometry)) known(one, found);
  }
  const fitting = (one: Incoming, other: Existing): boolean =>
    other.feature.kind === one.candidate.kind && family(other.feature.geometry) === family(one.candidate.geometry);
  const candidatesFor = (one: Incoming): Existing[] =>
    existing.filter((other) => !claimed.has(other) && other.at === one.at && fitting(one, other));
  for (const one of open()) {
    const mark = markOf(one.candidate.geometry);
    known(
      one,
      candidatesFor(one).find((other) => marks.get(other) === mark),
    );
  }
  for (const one of open()) {
    const { kind, tags } = one.candidate;
    if (ROLES.has(kind)) known(one, candidatesFor(one)[0]);
    else if (kind === "tee-marker")
      known(
        one,
        candidatesFor(one).find(({ feature }) => feature.tee === tags["tee"]),
      );
  }
  const lain = new Map<CheckedGeometry, Lain>();
  const lay = (geometry: CheckedGeometry): Lain => {
    const before = lain.get(geometry);
    if (before) return before;
    const shape = shapeOf(geometry, frame);
    const own = { shape, middle: middleOf(shape) };
    lain.set(geometry, own);
    return own;
  };
  const pairs = open().flatMap((one) =>
    candidatesFor(one).flatMap((other) => {
      const distance = nearness(lay(one.candidate.geometry), lay(other.feature.geometry));
      return distance === undefined ? [] : [{ one, other, distance }];
    }),
  );
  pairs.sort((a, b) => a.distance - b.distance);
  for (const { one, other } of pairs) if (!results.has(one) && !claimed.has(other)) known(one, other);
  // Called otherwise, or on another page: one thing all the same where both cover the same ground.
  for (const one of open()) {
    const { geometry } = one.candidate;
    if (family(geometry) !== "Polygon") continue;
    const over = existing.find(
      (other) =>
        alike(one.candidate, other.feature) &&
        family(other.feature.geometry) === "Polygon" &&
        sameGround(lay(geometry).shape, lay(other.feature.geometry).shape),
    );
    if (over === undefined) continue;
    // The same thing drawn twice in what was brought, or called by a poorer word than the page's, changes nothing.
    const richer = one.candidate.tags["golf"] !== undefined && over.feature.tags["golf"] === undefined;
    if (richer && !claimed.has(over)) known(one, over);
    else results.set(one, { incoming: one, existing: over, last: undefined, takenOut: false, duplicate: true });
  }
  for (const one of open()) {
    // Without a key, a feature taken out by the club is known by its shape alone.
    const mark = markOf(one.candidate.geometry);
    const last = Object.entries(ledger.features).find(
      ([key, entry]) => key.startsWith("=") && entry.geometry === mark && !byAt.has(entry.at),
    )?.[1];
    settle(one, undefined, last, last !== undefined);
  }
  return incoming.map((one) => results.get(one)!);
}

interface Lain {
  readonly shape: Shape;
  readonly middle: Point;
}

/** Distance of the middles of two that may be one: near each other, or the middle of one within the other. */
function nearness(a: Lain, b: Lain): number | undefined {
  const distance = distanceMetres(a.middle, b.middle);
  return distance <= SAME_METRES || covers(a.shape, b.middle) || covers(b.shape, a.middle) ? distance : undefined;
}
