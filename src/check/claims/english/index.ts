/** The English lexicon. */
import type { ClaimPlace, SlopeWay } from "../claim.ts";
import { forThings, type Lexicon } from "../lexicon.ts";
import { ANCHORS } from "./anchors.ts";
import { GREEN_AND_TEE } from "./green.ts";
import { HOLE } from "./hole.ts";
import { advice, borrowed, denied, seeming, silent } from "./stance.ts";
import { THINGS, warned } from "./things.ts";
import { NUMBERS, PARTS, SIDES, spell } from "./words.ts";

const NEAR_GREEN = /\b(?:green|greenside|putting surface|flag)\b/;
const NEAR_FAIRWAY = /\bfairway\b|\bdriving distance\b|\blanding\b/;
const APPROACH = /\b(?:approach|second|third|pitch|shot to the green|wedge|way in)\b/;
const TEE_SHOT = /\b(?:tee shot|drive)\b/;
const IS = "(?: shot)?(?: (?:is|plays|goes|runs|then|also|and|,|[a-z]+ly))*$";
const APPROACH_IS = new RegExp(`\\b(?:approach|second|third|pitch|shot to the green|way in)${IS}`);
const TEE_SHOT_IS = new RegExp(`\\b(?:tee shot|drive)${IS}`);

export const ENGLISH: Lexicon = {
  language: "en",
  prepare: (markdown) => markdown,
  spell,
  nameWords: (words) => words,
  patterns: [...THINGS, ...HOLE, ...GREEN_AND_TEE],
  anchors: ANCHORS,
  mentions: forThings((kind) => new RegExp(`\\b(?:${PARTS[kind]!})\\b`)),
  sides: SIDES,
  numbers: NUMBERS,
  silent,
  advice,
  seeming,
  denied,
  borrowed,
  warned,
  place(before, match, after): ClaimPlace | undefined {
    // "Left of the fairway and short of the green" is of both.
    if (NEAR_GREEN.test(match) && NEAR_FAIRWAY.test(match)) return undefined;
    const behind = /^ (?:of|at|by|to|edge of|side of) (?:the )?(?:green|putting surface|flag)/.test(after);
    if (behind || NEAR_GREEN.test(match)) return "green";
    if (NEAR_FAIRWAY.test(match)) return "fairway";
    // Only what the words themselves are about: a drive named earlier is not what goes uphill.
    if (APPROACH.test(match) || APPROACH_IS.test(before)) return "approach";
    if (TEE_SHOT.test(match) || TEE_SHOT_IS.test(before)) return "tee-shot";
    return undefined;
  },
  /** The two ends of a slope, or what it falls toward. */
  way(words) {
    if (/^(?:you|the (?:front|fairway|tee|player)|uphill)$/.test(words)) return ["back-to-front"];
    if (/^rises?\b/.test(words)) return ["back-to-front"];
    if (/\baway from\b|^downhill$/.test(words)) return ["front-to-back"];
    const ends = [...words.matchAll(/\b(?:back|front|left|right|rear|you)\b/g)].map((match) =>
      match[0].replace("rear", "back").replace("you", "front"),
    );
    if (!/\bfrom\b|\bto\b.*\b(?:front|back|left|right)\b.*\bto\b|^(?:back|front|left|right) to\b/.test(words))
      return ends.flatMap((end) => TOWARD[end] ?? []);
    // "From back right to front left": what starts and what ends, a pair for each direction.
    const ways: SlopeWay[] = [];
    if (ends.includes("back") && ends.includes("front"))
      ways.push(ends.indexOf("back") < ends.indexOf("front") ? "back-to-front" : "front-to-back");
    if (ends.includes("left") && ends.includes("right"))
      ways.push(ends.indexOf("left") < ends.indexOf("right") ? "left-to-right" : "right-to-left");
    return ways;
  },
  compass: (words) => {
    const name = words.replace(" ", "-");
    return COMPASS.find((point) => point === name);
  },
};

const TOWARD: Readonly<Record<string, SlopeWay>> = {
  front: "back-to-front",
  back: "front-to-back",
  right: "left-to-right",
  left: "right-to-left",
};

const COMPASS = ["north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"] as const;
