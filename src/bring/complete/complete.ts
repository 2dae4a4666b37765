/**
 * What a hole still needs when its real line of play has come: its placeholders go, markers
 * are proposed on its tee grounds, and what a page cannot be without and the source does
 * not have is laid along the real line, as a placeholder still. Pure.
 */
import type { Position } from "geojson";
import { isPlaceholder } from "../../course/draft.ts";
import type { CheckedFeature } from "../../course/schema/features.ts";
import type { CheckedGeometry } from "../../course/schema/geometry.ts";
import type { Tags } from "../../course/schema/vocabulary.ts";
import type { FeatureKind } from "../../course/types.ts";
import type { Frame } from "../../geo/frame.ts";
import { directionAt, lineThrough, pointAt, type Line } from "../../geo/line.ts";
import { metresFromYards } from "../../geo/units.ts";
import { along, rightOf } from "../../geo/vector.ts";
import { playFrom } from "../../measure/line-of-play.ts";
import type { Change, FeatureValue } from "../merge/changes.ts";
import type { TeeSet } from "../normalise/candidate.ts";
import { nameFeatures } from "../pages/naming.ts";
import type { CoursePages, Page } from "../pages/pages.ts";
import type { LinesPlaced } from "../place/lines.ts";
import { positionAt, shapeOf } from "../place/shape.ts";
import { proposeMarkers, type MarkerPlace } from "./markers.ts";

export interface Completion {
  readonly hole: number;
  /** Markers worked out from tee grounds. */
  readonly proposed: readonly FeatureValue[];
  /** What is still invented, laid along the real line. */
  readonly placeholders: readonly FeatureValue[];
  /** Placeholders that leave the page. */
  readonly dropped: readonly CheckedFeature[];
  /** Metres from each marker to the middle of the green; none without a green. */
  readonly lengths: Readonly<Record<string, number>>;
}

export interface CompleteOptions {
  readonly markerPlace: MarkerPlace;
  /** By hole: printed lengths in yards that the source gives. */
  readonly cards: ReadonlyMap<number, Readonly<Record<string, number>>>;
}

/** A feature as it will be on its page. */
interface Standing {
  readonly kind: FeatureKind;
  readonly tags: Tags;
  readonly geometry: CheckedGeometry;
  readonly id: string;
}

/**
 * Half the length and width of a green that stands for one, and how much nearer each set is: the figures of
 * a page that begins.
 */
const GREEN = [13, 11] as const;
const STEP = 0.06;
const MOST_NEARER = 0.17;

/** For each hole that something came to and that has a real line. */
export function completeHoles(
  changes: readonly Change[],
  { holes }: LinesPlaced,
  pages: CoursePages,
  frame: Frame,
  options: CompleteOptions,
): Completion[] {
  const touched = new Set(changes.filter(({ what }) => what !== "taken-out").map(({ at }) => at));
  const shared = pages.course.ids;
  return holes
    .filter(({ number }) => touched.has(number))
    .map(({ number, line }) => {
      const page = pages.holes.find(({ at }) => at === number);
      const own = changes.filter(({ at }) => at === number);
      return completeHole(number, line, page, own, { tees: pages.tees, shared, frame, ...options });
    });
}

interface Context extends CompleteOptions {
  readonly tees: readonly TeeSet[];
  readonly shared: readonly string[];
  readonly frame: Frame;
}

function completeHole(
  hole: number,
  written: readonly Position[],
  page: Page | undefined,
  changes: readonly Change[],
  context: Context,
): Completion {
  const { tees, shared, frame } = context;
  const line = lineThrough(written.map(([x, y]) => frame.toPlane([x!, y!])));
  const invented = page?.features.filter(isPlaceholder) ?? [];
  const standing = standingOn(page, changes);
  const markerOf = (tee: string): Standing | undefined =>
    standing.find(({ kind, tags }) => kind === "tee-marker" && tags["tee"] === tee);
  // A page that has a marker of its own is the club's business: a set that is not on it is not played from there.
  const begun = page?.features.some((feature) => feature.kind === "tee-marker" && !isPlaceholder(feature)) ?? false;
  const open = begun ? [] : tees.filter(({ id }) => markerOf(id) === undefined);
  const grounds = standing
    .filter(({ kind }) => kind === "teeing-ground")
    .map(({ geometry, tags }) => ({
      shape: shapeOf(geometry, frame),
      tee: typeof tags["tee"] === "string" ? tags["tee"] : undefined,
    }));
  const card = context.cards.get(hole) ?? {};
  const wanted = open.map(({ id }) => ({
    tee: id,
    stationMetres: card[id] === undefined ? undefined : line.lengthMetres - metresFromYards(card[id]),
  }));
  const onGround = proposeMarkers(wanted, grounds, line, context.markerPlace);
  const onLine =
    onGround.length > 0
      ? []
      : open.filter(({ id }) => invented.some(({ kind, tags }) => kind === "tee-marker" && tags["tee"] === id));
  const fresh = (kind: FeatureKind, properties: Tags, geometry: CheckedGeometry): FeatureValue => {
    const taken = new Set([...shared, ...standing.map(({ id }) => id)]);
    const [id] = nameFeatures(
      [
        {
          kind,
          name: undefined,
          tee: typeof properties["tee"] === "string" ? properties["tee"] : undefined,
          id: undefined,
          lie: undefined,
        },
      ],
      taken,
    );
    return { type: "Feature", id: id!, properties, geometry };
  };
  const marker = (tee: string, coordinates: Position, mark: Tags): FeatureValue =>
    fresh("tee-marker", { golf: "tee", tee, ...mark }, { type: "Point", coordinates });
  const proposed = onGround.map(({ tee, point }) => marker(tee, positionAt(point, frame), { proposed: true }));
  const needsGreen = invented.some(({ kind }) => kind === "green") && !standing.some(({ kind }) => kind === "green");
  const placeholders = [
    ...onLine.map(({ id }) =>
      marker(id, positionAt(pointAt(line, nearer(tees, id) * line.lengthMetres), frame), { placeholder: true }),
    ),
    ...(needsGreen
      ? [
          fresh(
            "green",
            { golf: "green", placeholder: true },
            { type: "Polygon", coordinates: [greenAt(line, frame)] },
          ),
        ]
      : []),
  ];
  // One that lies there already stays as it is written.
  const stays = (feature: CheckedFeature): boolean =>
    placeholders.some(
      ({ id, geometry }) =>
        id === feature.id && JSON.stringify(geometry.coordinates) === JSON.stringify(feature.geometry.coordinates),
    );
  const kept = new Set(invented.filter(stays).map(({ id }) => id));
  const green = [
    ...standing,
    ...placeholders.map(({ id, properties, geometry }) => ({
      id,
      kind: "green" as const,
      tags: properties,
      geometry,
    })),
  ].find(({ kind, tags }) => kind === "green" && tags["golf"] === "green");
  const area = green === undefined ? undefined : shapeOf(green.geometry, frame).areas[0];
  const drawn = written.map(([x, y]) => frame.toPlane([x!, y!]));
  const markers = [
    ...standing
      .filter(({ kind }) => kind === "tee-marker")
      .map(({ tags, geometry }) => ({ tee: String(tags["tee"]), geometry })),
    ...[...proposed, ...placeholders]
      .filter(({ properties }) => properties["golf"] === "tee")
      .map(({ properties, geometry }) => ({ tee: String(properties["tee"]), geometry })),
  ];
  const lengths =
    area === undefined
      ? {}
      : Object.fromEntries(
          markers.flatMap(({ tee, geometry }) =>
            geometry.type === "Point"
              ? [
                  [
                    tee,
                    playFrom(frame.toPlane([geometry.coordinates[0]!, geometry.coordinates[1]!]), drawn, area).line
                      .lengthMetres,
                  ],
                ]
              : [],
          ),
        );
  return {
    hole,
    proposed,
    placeholders: placeholders.filter(({ id }) => !kept.has(id)),
    dropped: invented.filter(({ id }) => !kept.has(id)),
    lengths,
  };
}

/** The page's real features with what this run does to them, and what it adds. */
function standingOn(page: Page | undefined, changes: readonly Change[]): Standing[] {
  const real = page?.features.filter((feature) => !isPlaceholder(feature)) ?? [];
  const fresh = changes.flatMap(({ added, match }) =>
    added === undefined
      ? []
      : [{ id: added.id, kind: match.incoming.candidate.kind, tags: added.properties, geometry: added.geometry }],
  );
  return [...real, ...fresh];
}

const nearer = (tees: readonly TeeSet[], id: string): number =>
  Math.min(STEP, MOST_NEARER / Math.max(1, tees.length - 1)) * tees.findIndex((tee) => tee.id === id);

/** An oval about the end of the line, along it. */
function greenAt(line: Line, frame: Frame): Position[] {
  const forward = directionAt(line, line.lengthMetres);
  const ring = Array.from({ length: 16 }, (_, i): Position => {
    const angle = (2 * Math.PI * i) / 16;
    const end = pointAt(line, line.lengthMetres);
    return positionAt(
      along(along(end, rightOf(forward), GREEN[1] * Math.cos(angle)), forward, GREEN[0] * Math.sin(angle)),
      frame,
    );
  });
  return [...ring, ring[0]!];
}
