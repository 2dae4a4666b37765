/**
 * What a matched feature changes on its page. Pure. Three versions are held together: as
 * it was brought last, as the page has it now, as the source has it now. What only the
 * source changed is taken over; what the club changed stays.
 */
import type { Position } from "geojson";
import { forEachPosition, type CheckedGeometry } from "../../course/schema/geometry.ts";
import type { Tags } from "../../course/schema/vocabulary.ts";
import type { Path } from "../../course/schema/finding.ts";
import { frameAt } from "../../geo/frame.ts";
import { cleaned } from "../normalise/clean.ts";
import { markOf, type LedgerEntry } from "../pages/ledger.ts";
import type { Match } from "./match.ts";
import type { Edit } from "../pages/yaml-edit.ts";

export interface Merged {
  readonly edits: readonly Edit[];
  /** What changes, in words. */
  readonly changes: readonly string[];
  /** What the source has otherwise and the page keeps. */
  readonly kept: readonly string[];
}

const hasHeights = (geometry: CheckedGeometry): boolean => {
  let some = false;
  forEachPosition(geometry, (position) => (some ||= position.length > 2));
  return some;
};

function withoutHeights(geometry: CheckedGeometry): CheckedGeometry {
  const flat = (value: unknown): unknown =>
    Array.isArray(value) ? (typeof value[0] === "number" ? value.slice(0, 2) : value.map(flat)) : value;
  // Only third numbers go, so the shape stays that of the type.
  return { type: geometry.type, coordinates: flat(geometry.coordinates) } as CheckedGeometry;
}

/** Equal where both speak: a source without heights says nothing against heights. */
function sameGround(page: CheckedGeometry, source: CheckedGeometry): boolean {
  if (markOf(page) === markOf(source)) return true;
  return !hasHeights(source) && markOf(withoutHeights(page)) === markOf(source);
}

/** How far the positions of one geometry lie from the nearest of another, at most. */
function moved(from: CheckedGeometry, to: CheckedGeometry): number {
  const positions = (geometry: CheckedGeometry): Position[] => {
    const all: Position[] = [];
    forEachPosition(geometry, (position) => all.push(position));
    return all;
  };
  const [before, after] = [positions(from), positions(to)];
  // Long outlines are compared at some of their positions: it is for a message.
  const some = (all: Position[]): Position[] => all.filter((_, i) => i % Math.ceil(all.length / 200) === 0);
  const frame = frameAt([before[0]![0]!, before[0]![1]!]);
  const point = ([x, y]: Position) => frame.toPlane([x!, y!]);
  const old = some(before).map(point);
  return Math.max(
    ...some(after)
      .map(point)
      .map(([x, y]) => Math.min(...old.map(([u, v]) => Math.hypot(x - u, y - v)))),
  );
}

/** What a page says of its own state, which is no source's to change. */
const MARKS = new Set(["placeholder", "proposed"]);

const sameValue = (a: unknown, b: unknown): boolean => String(a) === String(b);

function mergeGeometry(
  page: CheckedGeometry,
  source: CheckedGeometry,
  last: LedgerEntry | undefined,
): { take: boolean; words: string | undefined; kept: string | undefined } {
  const own = cleaned(page);
  if (sameGround(own, source)) return { take: false, words: undefined, kept: undefined };
  const edited = last !== undefined && markOf(own) !== last.geometry;
  if (edited) {
    const changed = markOf(source) !== last.geometry;
    return {
      take: false,
      words: undefined,
      kept: changed ? "its outline, which was edited on the page and has changed in the source too" : undefined,
    };
  }
  const metres = moved(own, source);
  const heights = hasHeights(own) && !hasHeights(source) ? "; its heights are lost, as the source has none" : "";
  return {
    take: true,
    words: `${source.type.endsWith("Point") ? "moved" : "outline changed"} by up to ${metres < 10 ? metres.toFixed(1) : metres.toFixed(0)} m${heights}`,
    kept: undefined,
  };
}

/** @param path of the feature on its page */
export function mergeFeature({ incoming, existing, last }: Match): Merged {
  const { feature } = existing!;
  const { geometry: source, tags } = incoming.candidate;
  const edits: Edit[] = [];
  const changes: string[] = [];
  const kept: string[] = [];
  const ground = mergeGeometry(feature.geometry, source, last);
  if (ground.take) {
    const at: Path = [...feature.path, "geometry"];
    if (source.type === feature.geometry.type)
      edits.push({ op: "replace", path: [...at, "coordinates"], value: source.coordinates });
    else edits.push({ op: "replace", path: at, value: { type: source.type, coordinates: source.coordinates } });
  }
  if (ground.words) changes.push(ground.words);
  if (ground.kept) kept.push(ground.kept);
  const properties: Path = [...feature.path, "properties"];
  for (const [key, value] of Object.entries(tags)) {
    if (MARKS.has(key)) continue;
    const [own, before] = [feature.tags[key], last?.tags[key]];
    if (own === undefined) {
      if (before !== undefined) {
        if (!sameValue(before, value)) kept.push(`without ${key}, which was taken off the page`);
        continue;
      }
      edits.push({ op: "add", path: properties, key, value });
      changes.push(`${key}: ${value} added`);
    } else if (!sameValue(own, value)) {
      if (before !== undefined && sameValue(own, before)) {
        edits.push({ op: "replace", path: [...properties, key], value });
        changes.push(`${key}: ${own} becomes ${value}`);
      } else if (before === undefined || !sameValue(before, value))
        kept.push(`${key}: ${own} (the source says ${value})`);
    }
  }
  for (const [key, before] of Object.entries(last?.tags ?? {})) {
    // A golf tag is the club's knowledge of its ground, and a source without it knows less.
    if (key === "golf" || MARKS.has(key) || tags[key] !== undefined || feature.tags[key] === undefined) continue;
    if (!sameValue(feature.tags[key], before)) continue;
    edits.push({ op: "remove", path: properties, key });
    changes.push(`${key}: ${before} removed`);
  }
  return { edits, changes, kept };
}

export const entryOf = (at: string, geometry: CheckedGeometry, tags: Tags): LedgerEntry => ({
  at,
  geometry: markOf(geometry),
  tags: Object.fromEntries(Object.entries(tags).filter(([key]) => !MARKS.has(key))),
});
