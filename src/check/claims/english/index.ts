/** The English lexicon. */
import type { ClaimPlace } from "../claim.ts";
import type { Lexicon } from "../lexicon.ts";
import { GREEN_AND_TEE } from "./green.ts";
import { HOLE } from "./hole.ts";
import { advice, seeming, silent } from "./stance.ts";
import { THINGS, warned } from "./things.ts";
import type { ThingClass } from "../../facts.ts";
import { NUMBERS, PARTS, SIDES, spell } from "./words.ts";

const NEAR_GREEN = /\b(?:green|greenside|putting surface|flag)\b/;
const NEAR_FAIRWAY = /\bfairway\b|\bdriving distance\b|\blanding\b/;
const APPROACH = /\b(?:approach|second|third|pitch|shot to the green|wedge|way in)\b/;
const TEE_SHOT = /\b(?:tee shot|drive|from the tee|off the tee)\b/;

export const ENGLISH: Lexicon = {
  language: "en",
  spell,
  patterns: [...THINGS, ...HOLE, ...GREEN_AND_TEE],
  sides: SIDES,
  numbers: NUMBERS,
  silent,
  advice,
  seeming,
  warned,
  place(before, match, after): ClaimPlace | undefined {
    const behind = /^ (?:of|at|by|to|edge of|side of) (?:the )?(?:green|putting surface|flag)/.test(after);
    if (behind || NEAR_GREEN.test(match)) return "green";
    if (NEAR_FAIRWAY.test(match)) return "fairway";
    if (APPROACH.test(match) || APPROACH.test(before)) return "approach";
    if (TEE_SHOT.test(match) || (TEE_SHOT.test(before + after) && !/to the green/.test(after))) return "tee-shot";
    return undefined;
  },
  /** The two ends of a slope, or what it falls toward. */
  way(words) {
    if (/^(?:you|the (?:front|fairway|tee|player))$/.test(words)) return "back-to-front";
    if (/\baway\b|to the back$|towards the back$/.test(words)) return "front-to-back";
    if (words === "left") return "right-to-left";
    if (words === "right") return "left-to-right";
    if (words === "uphill") return "back-to-front";
    if (words === "downhill") return "front-to-back";
    const ends = [...words.matchAll(/\b(?:back|front|left|right|rear)\b/g)].map((match) => match[0].replace("rear", "back"));
    switch (ends.join(" ")) {
      case "back front":
        return "back-to-front";
      case "front back":
        return "front-to-back";
      case "left right":
        return "left-to-right";
      case "right left":
        return "right-to-left";
      default:
        return undefined;
    }
  },
  compass: (words) => {
    const name = words.replace(" ", "-");
    return COMPASS.find((point) => point === name);
  },
};

const COMPASS = ["north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"] as const;

/** Whether a text mentions a class of thing at all. */
export const ENGLISH_THINGS = Object.fromEntries(
  (["bunker", "water", "out-of-bounds", "trees", "gorse", "wall", "road"] as const).map((kind) => [kind, new RegExp(`\\b(?:${PARTS[kind]!})\\b`)]),
) as Readonly<Record<ThingClass, RegExp>>;
