/** The German lexicon. */
import type { ClaimPlace, Compass, SlopeWay } from "../claim.ts";
import { forThings, type Lexicon } from "../lexicon.ts";
import { ANCHORS } from "./anchors.ts";
import { GREEN_AND_TEE } from "./green.ts";
import { HOLE } from "./hole.ts";
import { nameWords, prepare, speller } from "./spell.ts";
import { advice, borrowed, denied, seeming, silent, STANCE_WORDS } from "./stance.ts";
import { THINGS, warned } from "./things.ts";
import { NUMBERS, PARTS, SIDES } from "./words.ts";

const PATTERNS = [...THINGS, ...HOLE, ...GREEN_AND_TEE];

/** Words the patterns know keep their form; what else begins with a capital may be a name, and loses its ending. */
const VOCABULARY: ReadonlySet<string> = new Set(
  [
    ...PATTERNS.flatMap(({ expression, unless, notAfter, notBefore }) => [
      expression.source,
      unless?.source ?? "",
      notAfter?.source ?? "",
      notBefore?.source ?? "",
    ]),
    ...STANCE_WORDS,
  ].flatMap((source) => source.replace(/\(\?<[a-z]+_\d+>/g, "(").match(/[a-zäöüß]{2,}/g) ?? []),
);

const word = (words: string): RegExp => new RegExp(`(?<![a-zäöüß])(?:${words})(?![a-zäöüß])`);
const NEAR_GREEN = word("grün|fahne|puttfläche|eingang");
const NEAR_FAIRWAY = word("fairway|landezone|drivelänge");
const APPROACH = word("annäherung|zweite schlag|zweite|dritte|schlag (?:in|auf|zu) (?:das|dem) grün");
const TEE_SHOT = word("drive");
const IS = "(?: (?:ist|geht|spielt sich|verläuft|führt|und|,|auch|dann|hier|es|deutlich|leicht|steil))*$";
const APPROACH_IS = new RegExp(
  `(?<![a-zäöüß])(?:annäherung|zweite schlag|zweite|dritte|schlag (?:in|auf|zu) (?:das|dem) grün)${IS}`,
);
const TEE_SHOT_IS = new RegExp(`(?<![a-zäöüß])(?<!von dem )(?:drive|abschlag)${IS}`);

const COMPASS: Readonly<Record<string, Compass>> = {
  norden: "north",
  nordosten: "north-east",
  osten: "east",
  südosten: "south-east",
  süden: "south",
  südwesten: "south-west",
  westen: "west",
  nordwesten: "north-west",
};

const TOWARD: Readonly<Record<string, SlopeWay>> = {
  vorne: "back-to-front",
  hinten: "front-to-back",
  rechts: "left-to-right",
  links: "right-to-left",
};
const OPPOSITE: Readonly<Record<SlopeWay, SlopeWay>> = {
  "back-to-front": "front-to-back",
  "front-to-back": "back-to-front",
  "left-to-right": "right-to-left",
  "right-to-left": "left-to-right",
};

export const GERMAN: Lexicon = {
  language: "de",
  prepare,
  spell: speller(VOCABULARY),
  nameWords,
  patterns: PATTERNS,
  anchors: ANCHORS,
  mentions: forThings((kind) => word(PARTS[kind]!)),
  sides: SIDES,
  numbers: NUMBERS,
  silent,
  advice,
  seeming,
  denied,
  borrowed,
  warned,
  place(before, match, after): ClaimPlace | undefined {
    const green = NEAR_GREEN.test(match) || /(?<![a-zäöüß])grün-/.test(match);
    const fairway = NEAR_FAIRWAY.test(match) || /(?<![a-zäöüß])fairway-/.test(match);
    if (green && fairway) return undefined;
    if (green || /^ (?:(?:an|von|neben|bei) dem|des) (?:grün|fahne)/.test(after)) return "green";
    if (fairway) return "fairway";
    if (APPROACH.test(match) || APPROACH_IS.test(before)) return "approach";
    if (TEE_SHOT.test(match) || TEE_SHOT_IS.test(before)) return "tee-shot";
    return undefined;
  },
  way(words) {
    if (/(?:^zu (?:dem|der)|richtung|auf (?:den|das)) (?:fairway|spieler|abschlag|bahn)/.test(words))
      return ["back-to-front"];
    if (/^ihnen entgegen|^zu ihnen/.test(words)) return ["back-to-front"];
    if (/^von (?:(?:dem|der) (?:spieler|fairway|bahn)|ihnen) weg/.test(words)) return ["front-to-back"];
    const toward = /(?:nach|zu) (vorne|hinten|links|rechts)(?: (links|rechts))?/.exec(words);
    const ways = [toward?.[1], toward?.[2]].flatMap((end) => (end === undefined ? [] : (TOWARD[end] ?? [])));
    // What rises to the back falls to the front.
    return /^steigt|ansteigt$/.test(words) ? ways.map((way) => OPPOSITE[way]) : ways;
  },
  compass: (words) => COMPASS[words],
};
