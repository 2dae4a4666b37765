/** What stands on the drawings, in German. */
import type { GroundDrawingWords } from "../draw/profile-words.ts";
import type { PlateWords } from "../draw/words.ts";
import type { PlayerId } from "../measure/players.ts";
import { longDate } from "../tell/dates.ts";
import { germanSides } from "./words-tell-german.ts";

/** Short enough for the labels of a drawing; "Herren" and "Damen" as on scorecards. */
export const germanPlayers: Readonly<Record<PlayerId, string>> = {
  "scratch-men": "Scratch Herren",
  "bogey-men": "Bogey Herren",
  "scratch-women": "Scratch Damen",
  "bogey-women": "Bogey Damen",
};

export const germanPlate: PlateWords = {
  north: "N",
  par: "Par",
  strokeIndex: "HCP",
  outOfBounds: "Aus",
  surveyed: (isoDate) => `Vermessen am ${longDate(isoDate, "de-DE")}`,
  legend: { arcs: "ab Abschlag", left: "bis Grünmitte", hazard: "Beginn–Carry", bend: "Knick" },
  plateTitle: (hole, name) => `Loch ${hole}, ${name}: Plan`,
  plateDescription: "Plan der Bahn. Alle Zahlen darauf stehen auf dieser Seite auch in Worten und Tabellen.",
  courseTitle: (course) => `${course}: Platzplan`,
};

export const germanGroundDrawing: GroundDrawingWords = {
  profileTitle: (hole, tee) => `Längsschnitt von Loch ${hole} entlang der Spiellinie vom Abschlag ${tee}`,
  profileDescription: "Links der Abschlag, rechts das Grün. Die Höhen stehen darunter in Worten.",
  tee: "Abschlag",
  drive: (length) => `Drive ${length}`,
  unseen: "vom Abschlag nicht zu sehen",
  sides: germanSides,
  greenTitle: (hole) => `Grün von Loch ${hole}`,
  greenDescription: "Angespielt wird das Grün von unten. Größe und Neigung stehen daneben in Worten.",
  front: "Anfang",
  middle: "Mitte",
  back: "Ende",
  falseFront: "False Front",
  upperTier: "oben",
  lowerTier: "unten",
  landingTitle: (hole) => `Wo die Drives an Loch ${hole} liegen bleiben`,
  landingDescription: "Das Fairway, gerade gezogen, gespielt wird nach oben. Breiten und Hindernisse stehen in der Tabelle danach.",
  left: (length) => `${length} Rest`,
  wide: (length) => `${length} breit`,
  players: germanPlayers,
  yours: "Ihr Drive",
};
