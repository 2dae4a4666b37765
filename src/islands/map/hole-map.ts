/** The live map of one hole: tap, and it says how far; lay shots; see where one is. */
import type { Feature } from "geojson";
import type { Golfer } from "./golfer.ts";
import { readHoleData, type HoleData, type TeeData } from "../../contract/hole-data.ts";
import type { LonLat } from "../../contract/map-data.ts";
import type { Action } from "./panel.ts";
import type { BaseMap } from "./base-map.ts";
import type { OpenMap, OpenMapInput } from "./open-map.ts";
import type { ReadOut } from "./read-out.ts";
import type { Reading } from "./measure-tap.ts";
import { CONDITIONS_EVENT, CONDITIONS_KEY, LENGTHS_KEY, readConditions, type Conditions } from "../conditions-store.ts";
import { isPlain, PLAIN_EVENT, setPlain } from "../plain.ts";
import { store, stored } from "../settings-store.ts";
import { hazardsFromTee } from "./ahead.ts";
import { openBaseMap } from "./base-map.ts";
import { holeCamera } from "./camera.ts";
import { collection } from "./geojson.ts";
import { chainDrawing, figuresIn, meDrawing, playDrawing, readingDrawing } from "./hole-drawing.ts";
import { tapMeasure } from "./measure-tap.ts";
import { myPlace } from "./my-place.ts";
import { longestAfter } from "../../measure/ladder.ts";
import { readLengths } from "../lengths-store.ts";
import { OwnDrives } from "./own-drives.ts";
import { ownLanding } from "./own-landing.ts";
import { panel as makePanel } from "./panel.ts";
import { photoTool, type PhotoState } from "./photo-tool.ts";
import { playsReader } from "./plays-reader.ts";
import { featureWords, readOut } from "./read-out.ts";
import { meOut, openingOut, shotsOut } from "./read-out-more.ts";
import { keepsRelief, reliefTool } from "./relief-tool.ts";
import { MOST_SHOTS, readShots, shotChain, shotsKey, writeShots } from "./shots.ts";
import { SOURCES } from "./sources.ts";
import { thirdPoint } from "../../measure/third.ts";
import { mapStyle } from "./style.ts";
import { tilesFrom } from "./tiles.ts";
import { whereabouts } from "./whereabouts.ts";
import type { Tool } from "./words.ts";

/** @throws UnreadableData for data of another version, or damaged */
export async function openHoleMap({ slot, data: written, address, golfer, speech, fonts, close, fail }: OpenMapInput): Promise<OpenMap> {
  const data = readHoleData(written);
  const { say } = speech;
  const measure = tapMeasure(data);
  const { plane } = measure;
  const ground = tilesFrom(data.ground, address);
  const photo = tilesFrom(data.photo, address);
  const air: PhotoState = { shown: false };
  const tools: Tool[] = [...(ground === undefined ? [] : ["relief" as const]), ...(photo === undefined ? [] : ["photo" as const]), "shots", "whereAmI", "plain"];
  const panel = makePanel(slot, say, { reset: say.reset, keys: say.holeKeys, hint: say.holeHint, tools });
  const plays = playsReader(ground, plane.frame);
  const key = shotsKey(data.course.id, data.hole.number);
  let current = golfer;
  let tapped: LonLat | undefined;
  let shots = readShots(stored(key));
  let laying = false;
  let opened: BaseMap | undefined;

  const me = myPlace({
    classify: (fix) => whereabouts(fix, data.courseBounds, plane.frame),
    changed(news) {
      panel.press("whereAmI", me.state.kind !== "off");
      show(news);
    },
  });
  const drives = new OwnDrives(() => show(false));
  const conditions = (): Conditions => readConditions(stored(CONDITIONS_KEY), Date.now());

  /** Draws and tells everything as it now is; `news` also speaks. */
  function show(news: boolean): void {
    if (opened === undefined) return;
    const tee = teeOf(data, current);
    const { units, third } = current;
    const figure = figuresIn(units, speech);
    const where = me.state.kind === "found" ? me.state.where : undefined;
    const mine = where?.state === "on-course" ? where.position : undefined;
    const reading = laying || tapped === undefined ? undefined : measure.read(tapped, tee.id, third, mine);
    const mineReading = mine && measure.read(mine, tee.id, third, mine);
    const carry = conditions().carryMetres;
    const driven = carry === undefined ? undefined : drives.now(tee.id, carry, longestAfter(carry, readLengths(stored(LENGTHS_KEY))), conditions(), isPlain());
    const own = driven && ownLanding(plane, tee, third, driven.driveMetres, driven.nextMetres);
    const fresh = !laying && reading === undefined;
    const teeAhead = fresh && mine === undefined ? hazardsFromTee(data, tee) : [];
    const chain = laying ? shotChain(plane, tee, third, shots) : undefined;
    const drawn: Feature[] = [
      ...(where === undefined ? [] : meDrawing(where, fresh ? mineReading : undefined, plane, figure)),
      ...(reading === undefined ? [] : readingDrawing(reading, figure)),
      ...(chain === undefined ? [] : chainDrawing(chain, figure)),
    ];
    // The lines end in the mark, from wherever they come.
    const hole = reading?.legs[2] ?? chain?.left?.to ?? (fresh ? mineReading?.legs[2] : undefined) ?? fromTee(tee, third);
    opened.setData(SOURCES.play, playDrawing(data, { tee, cut: third === "middle" ? undefined : hole, ahead: teeAhead, own }, figure, say));
    opened.setData(SOURCES.measure, collection(drawn));

    panel.press("plain", isPlain());
    panel.setActions(actions(), laying ? "shots" : "whereAmI");
    plays.forget();
    const line = meLine();
    if (line !== undefined) return tell({ figures: [], unit: "", lines: [line], spoken: line }, news);
    if (chain !== undefined) {
      const last = shots[shots.length - 1];
      const under = last && measure.under(last);
      return tell(shotsOut({ chain, tee, third, under: under && featureWords(under, say), full: shots.length >= MOST_SHOTS }, units, speech), news);
    }
    if (reading !== undefined) return tellReading(reading, news);
    if (where !== undefined) return tell(meOut(where, mineReading, me.plainTurned, units, speech), news);
    tell(openingOut(teeAhead, own, third, units, speech), news);
  }

  const tell = (out: ReadOut, news: boolean): void => panel.showReading(out, !news);

  /** Distances at once; how they play as soon as heights and flight code are there. */
  function tellReading(reading: Reading, news: boolean): void {
    const { units } = current;
    const distances = readOut(reading, units, speech);
    // From the golfer's own place in a round only distances may be told; and a tile fetched for it would tell where that is.
    if (isPlain() || reading.fromMe || !plays.possible) return tell(distances, news);
    panel.showReading(distances, true);
    plays.read(reading, conditions(), {
      late: () => news && panel.say(distances.spoken),
      done: (found, wasLate) => tell(readOut(reading, units, speech, found), news && !wasLate),
    });
  }

  /** What stands in place of figures while the golfer's place is being asked for. */
  function meLine(): string | undefined {
    switch (me.state.kind) {
      case "explaining": return say.me.explain;
      case "asking": return say.me.asking;
      case "fault": return say.me.faults[me.state.fault];
      default: return undefined;
    }
  }

  function actions(): readonly Action[] {
    const { chain, me: place } = say;
    if (me.state.kind === "explaining") {
      return [{ text: place.agree, run: () => me.agree() }, { text: place.refuse, run: () => me.stop() }];
    }
    return [
      ...(laying && shots.length > 0 ? [{ text: chain.undo, run: () => lay(shots.slice(0, -1)) }, { text: chain.clear, run: () => lay([]) }] : []),
      ...(!laying && tapped !== undefined ? [{ text: say.clearTap, run: () => choose(undefined) }] : []),
      ...(me.plainTurned ? [{ text: place.allFigures, run: () => me.allFigures() }] : []),
    ];
  }

  function lay(next: readonly LonLat[]): void {
    shots = next.slice(0, MOST_SHOTS);
    store(key, writeShots(shots));
    show(true);
    if (shots.length === 0) panel.say(say.chain.cleared);
  }

  function choose(position: LonLat | undefined): void {
    tapped = position;
    show(true);
  }

  panel.onTool("shots", () => {
    laying = !laying;
    panel.press("shots", laying);
    show(true);
  });
  panel.onTool("whereAmI", () => {
    me.press();
    if (me.state.kind === "explaining") panel.focusAction();
  });

  panel.onTool("plain", () => (isPlain() ? me.allFigures() : setPlain(true)));

  const listening = new AbortController();
  for (const event of [PLAIN_EVENT, CONDITIONS_EVENT]) document.addEventListener(event, () => show(false), listening);
  const remove = (): void => {
    listening.abort();
    me.stop();
    plays.forget();
    opened?.remove();
    opened = undefined;
    panel.remove();
  };

  try {
    const map = await openBaseMap({
      panel,
      title: say.holeMap({ hole: data.hole.number, name: data.hole.name }),
      words: say,
      playDegrees: data.bearingDegrees,
      camera: (view, pitch) => holeCamera(data, view, pitch),
      bounds: data.courseBounds,
      ground,
      relief: keepsRelief(),
      style: (colours) => mapStyle({ colours, features: data.features, origin: data.origin, line: data.tees[0]?.line, fonts, bunkersFromZoom: 0, ground, photo: photo && { tiles: photo, ...air } }),
      fill(base) {
        opened = base;
        show(false);
      },
      choose(position) {
        if (!laying) return choose(position);
        if (shots.length < MOST_SHOTS) lay([...shots, position]);
      },
      close,
      fail,
    });
    opened = map;
    reliefTool(panel, map, ground !== undefined, say);
    photoTool(panel, map, air, say);
    return {
      remove,
      setGolfer(next) {
        current = next;
        show(true);
      },
      focus: () => map.focus(),
    };
  } catch (cause) {
    remove();
    throw cause;
  }
}

/** Where the hole is on the line of approach from a tee. */
const fromTee = ({ green: { front, middle, back } }: TeeData, third: Golfer["third"]): LonLat =>
  thirdPoint(third, { front: front.position, middle: middle.position, back: back.position });

/** The golfer's tee set, or where the hole does not use it, the hole's own. */
const teeOf = (data: HoleData, { tee }: Golfer): TeeData =>
  data.tees.find(({ id }) => id === tee) ?? data.tees.find(({ id }) => id === data.defaultTee) ?? data.tees[0]!;
