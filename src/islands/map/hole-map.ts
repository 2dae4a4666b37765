/**
 * The live map of one hole: tap, and it says how far; lay shots; see where one is. All that it does beyond
 * showing is here.
 */
import { readHoleData } from "../../contract/hole-data.ts";
import { longestAfter } from "../../measure/ladder.ts";
import {
  CONDITIONS_EVENT,
  CONDITIONS_KEY,
  LENGTHS_KEY,
  readConditions,
  type Conditions,
} from "../conditions-store.ts";
import { readLengths } from "../lengths-store.ts";
import { isPlain, PLAIN_EVENT, setPlain } from "../plain.ts";
import { store, stored } from "../settings-store.ts";
import { openBaseMap, type BaseMap } from "./base-map.ts";
import { holeCamera } from "./camera.ts";
import { isFollowing, nextHole, openingState, type HoleEvent, type HoleState } from "./hole-state.ts";
import { holeView, teeOf, type HoleView, type Strokes } from "./hole-view.ts";
import { follow } from "./locate.ts";
import { tapMeasure, type Reading } from "./measure-tap.ts";
import type { OpenMap, OpenMapInput } from "./open-map.ts";
import { OwnDrives } from "./own-drives.ts";
import { panel as makePanel } from "./panel.ts";
import { photoTool, type PhotoState } from "./photo-tool.ts";
import { playsReader } from "./plays-reader.ts";
import { readOut } from "./read-out.ts";
import { keepsRelief, reliefTool } from "./relief-tool.ts";
import { readShots, shotsKey, writeShots } from "./shots.ts";
import { SOURCES } from "./sources.ts";
import { mapStyle } from "./style.ts";
import { tilesFrom } from "./tiles.ts";
import { whereabouts } from "./whereabouts.ts";
import type { Tool } from "./words.ts";

/** @throws UnreadableData for data of another version, or damaged */
export async function openHoleMap({
  slot,
  data: written,
  address,
  golfer,
  speech,
  fonts,
  signal,
  close,
  fail,
}: OpenMapInput): Promise<OpenMap> {
  signal.throwIfAborted();
  const data = readHoleData(written);
  const { say } = speech;
  const measure = tapMeasure(data);
  const { frame } = measure.plane;
  const ground = tilesFrom(data.ground, address);
  const photo = tilesFrom(data.photo, address);
  const air: PhotoState = { shown: false };
  const tools: Tool[] = [
    ...(ground === undefined ? [] : ["relief" as const]),
    ...(photo === undefined ? [] : ["photo" as const]),
    "shots",
    "whereAmI",
    "plain",
  ];
  const panel = makePanel(slot, say, { reset: say.reset, keys: say.holeKeys, hint: say.holeHint, tools });
  const plays = playsReader(ground, frame);
  const drives = new OwnDrives(() => refresh(), signal);
  const key = shotsKey(data.course.id, data.hole.number);
  let state = openingState(golfer, readShots(stored(key)), isPlain());
  let map: BaseMap | undefined;
  let letGo: (() => void) | undefined;

  const conditions = (): Conditions => readConditions(stored(CONDITIONS_KEY), Date.now());

  function strokes(): Strokes | undefined {
    const now = conditions();
    const carry = now.carryMetres;
    return carry === undefined
      ? undefined
      : drives.now(
          teeOf(data, state.golfer).id,
          carry,
          longestAfter(carry, readLengths(stored(LENGTHS_KEY))),
          now,
          state.plain,
        );
  }

  function happen(event: HoleEvent): void {
    const before = state;
    state = nextHole(before, event);
    if (state === before || signal.aborted) return;
    follows(before);
    // Turning the page tells the map in turn, which by then stands so already.
    if (state.plain !== isPlain()) setPlain(state.plain);
    if (state.shots !== before.shots) store(key, writeShots(state.shots));
    show();
    if (before.shots.length > 0 && state.shots.length === 0) panel.say(say.chain.cleared);
    if (state.place.kind === "explaining" && before.place.kind !== "explaining") panel.focusAction();
  }

  /** Begins to follow the device's position, or lets go of it. */
  function follows(before: HoleState): void {
    if (isFollowing(state) === isFollowing(before)) return;
    letGo?.();
    letGo = isFollowing(state)
      ? follow(
          (fix) => happen({ kind: "place-found", where: whereabouts(fix, data.courseBounds, frame), at: Date.now() }),
          (fault) => happen({ kind: "place-lost", fault }),
        )
      : undefined;
  }

  /** The day has changed, or what was missing is there. */
  function refresh(): void {
    state = { ...state, news: false };
    show();
  }

  function show(): void {
    if (map === undefined || signal.aborted) return;
    const view = holeView({ data, measure, speech }, state, strokes());
    map.setData(SOURCES.play, view.play);
    map.setData(SOURCES.measure, view.measure);
    for (const tool of ["shots", "whereAmI", "plain"] as const) panel.press(tool, view.pressed[tool]);
    panel.setActions(
      view.actions.map(({ text, event }) => ({ text, run: () => happen(event) })),
      state.laying ? "shots" : "whereAmI",
    );
    tell(view, state.news);
  }

  /** Distances at once; how they play as soon as heights and flight code are there. */
  function tell({ told, plays: reading }: HoleView, news: boolean): void {
    plays.forget();
    const waits = reading !== undefined && plays.possible;
    panel.showReading(told, waits || !news);
    if (waits) withPlays(reading, told.spoken, news);
  }

  function withPlays(reading: Reading, spoken: string, news: boolean): void {
    const { units } = state.golfer;
    plays.read(reading, conditions(), {
      late: () => news && panel.say(spoken),
      done: (found, wasLate) => panel.showReading(readOut(reading, units, speech, found), !news || wasLate),
    });
  }

  panel.onTool("shots", () => happen({ kind: "laying-pressed" }));
  panel.onTool("whereAmI", () => happen({ kind: "place-pressed" }));
  panel.onTool("plain", () => happen({ kind: "plain-pressed" }));
  document.addEventListener(PLAIN_EVENT, () => happen({ kind: "plain-turned", plain: isPlain() }), { signal });
  document.addEventListener(CONDITIONS_EVENT, refresh, { signal });

  signal.addEventListener("abort", () => {
    letGo?.();
    plays.forget();
    panel.remove();
  });

  const opened = await openBaseMap({
    panel,
    title: say.holeMap({ hole: data.hole.number, name: data.hole.name }),
    words: say,
    playDegrees: data.bearingDegrees,
    camera: (view, pitch) => holeCamera(data, view, pitch),
    bounds: data.courseBounds,
    ground,
    relief: keepsRelief(),
    style: (colours) =>
      mapStyle({
        colours,
        features: data.features,
        origin: data.origin,
        line: data.tees[0]?.line,
        fonts,
        bunkersFromZoom: 0,
        ground,
        photo: photo && { tiles: photo, ...air },
      }),
    fill(base) {
      map = base;
      show();
    },
    choose: (position) => happen({ kind: "chosen", position }),
    signal,
    close,
    fail,
  });
  reliefTool(panel, opened, ground !== undefined, say);
  photoTool(panel, opened, air, say);
  return { setGolfer: (next) => happen({ kind: "golfer", golfer: next }), focus: opened.focus };
}
