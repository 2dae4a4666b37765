/** What the live map says. Patterns have {names} for what is filled in. */
import { FIRST_WORDS } from "./first-words.ts";
import type { FeatureKind } from "../../course/types.ts";

export const WORDS = {
  open: "Open live map",
  loading: FIRST_WORDS.loading,
  close: "Close map",
  zoomIn: "Zoom in",
  zoomOut: "Zoom out",
  reset: "Whole hole",
  resetCourse: "Whole course",
  controls: "Map controls",
  holeMap: (hole: number, name: string): string => `Live map of hole ${hole}, ${name}`,
  courseMap: (course: string): string => `Live map of ${course}`,
  holeKeys: "Arrow keys move the map, plus and minus zoom, Enter measures at the cross in the middle, Escape closes the map. With the ground in relief, Shift and arrow keys tilt and turn it.",
  courseKeys: "Arrow keys move the map, plus and minus zoom, Enter opens the hole at the cross in the middle, Escape closes the map.",
  holeHint: "Tap anywhere to measure from the tee and on to the green.",
  tools: "What the map does",
  relief: "Ground in relief",
  reliefNote: "Heights drawn × {times}",
  reliefOn: "Ground in relief: heights are drawn {times} times as high as they are.",
  reliefOff: "The map lies flat.",
  photo: "Photo from the air",
  photoOn: "The photo from the air lies over the ground; stakes, boundaries and figures stay.",
  photoOff: "The drawn ground shows again.",
  reading: "Measured on the map",
  clearTap: "Clear",
  shots: "My shots",
  whereAmI: "Where I am",
  courseHint: "Tap a hole to open its page.",
  noHole: "No hole there: move the cross onto a hole’s line.",
  wheel: (key: string): string => `Hold ${key} and scroll to zoom`,
  touch: "Two fingers move the map",
  read: {
    tee: "{tee} tee",
    fromMe: "From you",
    front: "Front",
    middle: "Middle",
    back: "Back",
    fromTeeSaid: "From the {tee} tee {length}.",
    fromMeSaid: "From you {length}.",
    greenSaid: "To the green: front {front}; middle {middle}; back {back}.",
    onGreenSaid: "On the green: {length} from its middle.",
    underHazard: "{what}: from the tee {figures}.",
    under: "{what}.",
    then: "; then ",
    reach: "{reach} to reach",
    reachCarry: "{reach} to reach, {carry} to carry",
    /** A hazard's name, and where there is none its kind with its side. */
    named: "{name} ({kind})",
    side: { left: "{kind} left", right: "{kind} right", across: "{kind}" },
    ahead: "Ahead: {hazards}.",
    aheadFromTee: "From the tee: {hazards}.",
    kinds: {
      bunker: "Bunker",
      "penalty-area-yellow": "Penalty area, yellow",
      "penalty-area-red": "Penalty area, red",
      water: "Water",
      "out-of-bounds": "Out of bounds",
      green: "Green",
      fairway: "Fairway",
    } satisfies Partial<Record<FeatureKind, string>> as Partial<Record<FeatureKind, string>>,
  },
  plays: {
    figure: "plays {length} ±{spread}",
    /** One leg: what the ground and the wind do to it. */
    leg: "{rise}, plays {length} ±{spread}{drift}",
    driftLeft: ", the wind takes it {length} left",
    driftRight: ", the wind takes it {length} right",
    up: "{height} up",
    down: "{height} down",
    level: "level",
    there: "There: {leg}.",
    on: "On to the middle: {leg}.",
    still: "In still air at {degrees} °C.",
    wind: "In the wind you set, at {degrees} °C.",
  },
  own: {
    /** On the map. */
    label: "{drive}: fairway {width}",
    labelOff: "{drive}: off the fairway",
    said: "Your drive of {drive}: the fairway is {width} wide there, {left} left to the middle.",
    saidOff: "Your drive of {drive} down the line of play is off the fairway, {left} left to the middle.",
  },
  chain: {
    hint: "Tap where each shot comes down, from the {tee} tee on. Kept on this device only.",
    shot: "Shot {number}",
    left: "Left",
    shotSaid: "Shot {number}: {length}.",
    leftSaid: "{length} left to the middle of the green.",
    onGreenSaid: "On the green.",
    most: "That is as many shots as can be laid.",
    undo: "Take back",
    clear: "Clear shots",
    cleared: "Shots cleared.",
  },
  me: {
    explain: "Your device works out where you are. The guide uses it on this page and nowhere else: it is not sent and not kept. On the course the guide turns to plain figures.",
    agree: "Show where I am",
    refuse: "Not now",
    stop: "Stop showing",
    asking: "Asking your device where you are…",
    accuracy: "Known to within {length}.",
    coarse: "Your position is known only to within {length}, which is too coarse for distances. In the open it gets better.",
    outside: "You are {length} beyond the edge of the course. Known to within {accuracy}.",
    faults: {
      denied: "This browser may not tell where you are. Allow it for this site in the browser’s settings, then try again.",
      unavailable: "Your device cannot tell where it is just now. Try again in the open.",
      unsupported: "This browser cannot tell where you are: it needs location switched on, and an address that begins with https.",
    },
    plain: "Plain figures are on: in a round, Rule 4.3a of the Rules of Golf lets a player measure distance and direction only. That is our reading; the Committee can overrule it.",
    allFigures: "Show all figures",
    allFiguresOn: "All figures are shown. Tap to measure from the tee.",
    kilometres: "{number} km",
    miles: "{number} miles",
  },
  failed: {
    data: FIRST_WORDS.notLoaded,
    webgl: "This browser cannot show the live map (it needs WebGL 2). The drawn sheet and the lists hold the same figures.",
    lost: "The live map stopped: the device took its drawing memory back. Open it again, or use the drawn sheet.",
  },
} as const;

/** A pattern with its {names} filled in. */
export const fill = (pattern: string, values: Readonly<Record<string, string | number>>): string =>
  pattern.replace(/\{(\w+)\}/g, (whole, name: string) => String(values[name] ?? whole));

export type Failure = keyof typeof WORDS.failed;

/** Why a map is not shown; its cause says the rest. */
export class MapFailure extends Error {
  readonly failure: Failure;

  constructor(failure: Failure, cause: unknown) {
    super(WORDS.failed[failure], { cause });
    this.name = "MapFailure";
    this.failure = failure;
  }
}
