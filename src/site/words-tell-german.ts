/** Units, and how figures in a tip explain themselves, in German. */
import type { FeatureKind } from "../course/types.ts";
import type { FigureWords } from "../tell/figure-words.ts";
import type { UnitWords } from "../tell/format.ts";

export const germanUnits: UnitWords = {
  yards: { symbol: "yd", one: "Yard", many: "Yards" },
  metres: { symbol: "m", one: "Meter", many: "Meter" },
  feet: { symbol: "ft", one: "Fuß", many: "Fuß" },
};

export const germanSides = { left: "links", right: "rechts" } as const;

/** What stands on the ground, as a heading or a row of a table names it. */
export const germanKinds = {
  bunker: "Bunker",
  "penalty-area-yellow": "Penalty Area (gelb)",
  "penalty-area-red": "Penalty Area (rot)",
  water: "Wasser",
  stream: "Bach",
  coastline: "Ufer",
  "out-of-bounds": "Aus",
  cliff: "Klippe",
  road: "Straße",
  scrub: "Ginster",
  wood: "Bäume",
  wall: "Mauer",
  fence: "Zaun",
  hedge: "Hecke",
  building: "Gebäude",
} as const satisfies Partial<Record<FeatureKind, string>>;

/** A feature's id is written in whatever language its author likes; what it is can be said in German. */
const unnamed: Readonly<Partial<Record<FeatureKind, string>>> = {
  ...germanKinds,
  "line-of-play": "Spiellinie",
  "tee-marker": "Abschlag",
  "teeing-ground": "Abschlag",
  fairway: "Fairway",
  rough: "Rough",
  green: "Grün",
  pin: "Fahne",
  path: "Weg",
  sand: "Sand",
  heath: "Heide",
  tree: "Baum",
  ridge: "Rücken",
  rock: "Felsen",
  grassland: "Wiese",
  "driving-range": "Driving Range",
  landmark: "Landmarke",
};

export const germanFigures: FigureWords = {
  units: germanUnits,
  unnamed: (id, kind) => unnamed[kind] ?? id.replaceAll("-", " "),
  up: (height) => `${height} bergauf`,
  down: (height) => `${height} bergab`,
  level: "eben",
  fromTee: (tee) => `vom Abschlag ${tee}`,
  byTee: "Von jedem Abschlag",
  meaning: {
    length: "Länge: vom Abschlag bis zur Mitte des Grüns entlang der Spiellinie",
    reach: (feature, corridor) => `Beginn (${feature}): bis zur nächsten Kante innerhalb von ${corridor} beiderseits der Spiellinie`,
    carry: (feature, corridor) => `Carry (${feature}): bis sicher dahinter, überall innerhalb von ${corridor} beiderseits der Spiellinie`,
    carryOnLine: (feature) => `Carry auf der Spiellinie (${feature}): bis dahinter`,
    leaves: (feature) => `Rest (${feature}): vom hinteren Ende bis zur Mitte des Grüns`,
    layup: (leave) => `Vorlegen: der Schlag, der ${leave} bis zur Mitte des Grüns übrig lässt`,
    layupAfter: (leave, drive) => `Vorlegen: der Schlag, der nach einem Drive von ${drive} noch ${leave} bis zur Mitte des Grüns übrig lässt`,
    fairway: (drive) => `Breite des Fairways dort, wo ein Drive von ${drive} herunterkommt`,
    left: (drive) => `Rest bis zur Mitte des Grüns entlang der Spiellinie nach einem Drive von ${drive}`,
    bend: (side, angle) => `Bis zum Knick: Dort biegt die Bahn um ${angle} nach ${germanSides[side]} ab`,
    span: (from, to) => `Abstand zwischen ${from} und ${to}, von Kante zu Kante`,
    front: "Bis zum Anfang des Grüns entlang der Spiellinie",
    middle: "Bis zur Mitte des Grüns entlang der Spiellinie",
    back: "Bis zum Ende des Grüns entlang der Spiellinie",
    depth: "Tiefe des Grüns, von vorn nach hinten in Anspielrichtung",
    width: "Breite des Grüns, quer zur Anspielrichtung",
    rise: "Höhe der Grünmitte gegenüber dem Abschlag",
    aimOnLine: (feature) => `${feature}: auf der Spiellinie`,
    aim: (feature, angle, side) => `${feature}: ${angle} ${germanSides[side]} der Spiellinie`,
  },
};
