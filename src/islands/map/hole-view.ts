/** What the live map of a hole shows and says, from how it stands. Pure. */
import type { Feature, FeatureCollection } from "geojson";
import type { HoleData, TeeData } from "../../contract/hole-data.ts";
import type { LonLat } from "../../contract/map-data.ts";
import { thirdPoint } from "../../measure/third.ts";
import { hazardsFromTee } from "./ahead.ts";
import { collection } from "./geojson.ts";
import type { Golfer } from "./golfer.ts";
import { chainDrawing, figuresIn, meDrawing, playDrawing, readingDrawing } from "./hole-drawing.ts";
import type { HoleEvent, HoleState } from "./hole-state.ts";
import type { Reading, TapMeasure } from "./measure-tap.ts";
import { ownLanding } from "./own-landing.ts";
import { featureWords, readOut, type ReadOut } from "./read-out.ts";
import { meOut, openingOut, shotsOut } from "./read-out-more.ts";
import { MOST_SHOTS, shotChain } from "./shots.ts";
import type { Speech } from "./words.ts";

/** What the golfer's drive and the longest stroke after it carry. */
export interface Strokes {
  readonly driveMetres: number;
  readonly nextMetres: number | undefined;
}

export interface HoleView {
  /** Line of play, tees, green, what the tee shot meets; and what is measured. */
  readonly play: FeatureCollection;
  readonly measure: FeatureCollection;
  readonly actions: readonly { readonly text: string; readonly event: HoleEvent }[];
  readonly pressed: Readonly<Record<"shots" | "whereAmI" | "plain", boolean>>;
  readonly told: ReadOut;
  /** The reading whose legs may be told with how they play. */
  readonly plays: Reading | undefined;
}

export interface HoleInView {
  readonly data: HoleData;
  readonly measure: TapMeasure;
  readonly speech: Speech;
}

/** The golfer's tee set, or where the hole does not use it, the hole's own. */
export const teeOf = (data: HoleData, { tee }: Golfer): TeeData =>
  data.tees.find(({ id }) => id === tee) ?? data.tees.find(({ id }) => id === data.defaultTee) ?? data.tees[0]!;

/** @param strokes the golfer's own; undefined where no length is given */
export function holeView(
  { data, measure, speech }: HoleInView,
  state: HoleState,
  strokes: Strokes | undefined,
): HoleView {
  const { golfer, tapped, laying, shots, place, plain } = state;
  const { units, third } = golfer;
  const { plane } = measure;
  const { say } = speech;
  const tee = teeOf(data, golfer);
  const figure = figuresIn(units, speech);
  const where = place.kind === "found" ? place.where : undefined;
  const mine = where?.state === "on-course" ? where.position : undefined;
  const reading = laying || tapped === undefined ? undefined : measure.read(tapped, tee.id, third, mine);
  const mineReading = mine && measure.read(mine, tee.id, third, mine);
  const chain = laying ? shotChain(plane, tee, third, shots) : undefined;
  const fresh = !laying && reading === undefined;
  const own = strokes && ownLanding(plane, tee, third, strokes.driveMetres, strokes.nextMetres);
  const ahead = fresh && mine === undefined ? hazardsFromTee(data, tee) : [];
  // The lines end in the mark, from wherever they come.
  const hole =
    reading?.legs[2] ?? chain?.left?.to ?? (fresh ? mineReading?.legs[2] : undefined) ?? fromTee(tee, third);
  const drawn: Feature[] = [
    ...(where === undefined ? [] : meDrawing(where, fresh ? mineReading : undefined, plane, figure)),
    ...(reading === undefined ? [] : readingDrawing(reading, figure)),
    ...(chain === undefined ? [] : chainDrawing(chain, figure)),
  ];

  function told(): ReadOut {
    const line = placeLine(state, speech);
    if (line !== undefined) return { figures: [], unit: "", lines: [line], spoken: line };
    if (chain !== undefined) {
      const last = shots[shots.length - 1];
      const under = last && measure.under(last);
      return shotsOut(
        { chain, tee, third, under: under && featureWords(under, say), full: shots.length >= MOST_SHOTS },
        units,
        speech,
      );
    }
    if (reading !== undefined) return readOut(reading, units, speech);
    return where === undefined
      ? openingOut(ahead, own, third, units, speech)
      : meOut(where, mineReading, isTurnedPlain(state), units, speech);
  }

  return {
    play: playDrawing(data, { tee, cut: third === "middle" ? undefined : hole, ahead, own }, figure, say),
    measure: collection(drawn),
    actions: actionsOf(state, speech),
    pressed: { shots: laying, whereAmI: place.kind !== "off", plain },
    told: told(),
    // From the golfer's own place in a round only distances may be told; and a tile fetched for it would tell where
    // that is.
    plays: plain || reading?.fromMe === true || placeLine(state, speech) !== undefined ? undefined : reading,
  };
}

/** Plain figures came on by themselves, and are on still. */
const isTurnedPlain = ({ turnedPlain, plain }: HoleState): boolean => turnedPlain && plain;

/** What stands in place of figures while the golfer's place is being asked for. */
function placeLine({ place }: HoleState, { say: { me } }: Speech): string | undefined {
  switch (place.kind) {
    case "explaining":
      return me.explain;
    case "asking":
      return me.asking;
    case "fault":
      return me.faults[place.fault];
    default:
      return undefined;
  }
}

function actionsOf(state: HoleState, { say }: Speech): HoleView["actions"] {
  const { laying, shots, tapped, place } = state;
  const { chain, me } = say;
  if (place.kind === "explaining")
    return [
      { text: me.agree, event: { kind: "place-agreed" } },
      { text: me.refuse, event: { kind: "place-refused" } },
    ];
  return [
    ...(laying && shots.length > 0
      ? ([
          { text: chain.undo, event: { kind: "shot-undone" } },
          { text: chain.clear, event: { kind: "shots-cleared" } },
        ] as const)
      : []),
    ...(!laying && tapped !== undefined ? ([{ text: say.clearTap, event: { kind: "tap-cleared" } }] as const) : []),
    ...(isTurnedPlain(state) ? ([{ text: me.allFigures, event: { kind: "all-figures" } }] as const) : []),
  ];
}

/** Where the hole is on the line of approach from a tee. */
const fromTee = ({ green: { front, middle, back } }: TeeData, third: Golfer["third"]): LonLat =>
  thirdPoint(third, { front: front.position, middle: middle.position, back: back.position });
