/** How English speaks of a green, and of the tee. */
import type { ClaimKind } from "../claim.ts";
import type { ClaimPattern } from "../lexicon.ts";
import { phrase } from "../phrase.ts";
import { PARTS } from "./words.ts";

const make = (kind: ClaimKind, text: string, rest: Partial<ClaimPattern> = {}): ClaimPattern => ({
  kind,
  expression: phrase(text, PARTS),
  ...rest,
});

const GREEN = "(?:green|putting surface)";
/** Words that stand beside another in "a wide, shallow green". */
const BESIDE =
  "(?:small|tiny|large|big|huge|generous|wide|broad|narrow|slim|thin|shallow|deep|long|quick|fast|slow|firm|hard|soft|sloping|tilted|raised|perched|elevated|sunken|two tiered|tiered|kidney shaped|round|oval|flat|level|undulating|rolling|well guarded|open|crowned|domed|blind|old|new|lovely|fine|tricky|difficult|devilish|awkward)";
const BETWEEN = `(?: (?:,|and|but|yet|very|quite|rather|fairly|${BESIDE}))*`;
const IS = "(?:is|lies|sits|stands|plays|remains)";

/** "A shallow green", "the green is wide and shallow". */
function adjective(kind: ClaimKind, words: string, rest: Partial<ClaimPattern> = {}): ClaimPattern[] {
  return [
    make(
      kind,
      `(?:{not} |{no} )?(?:a |an |the |its )?(?:{strong} )?(?:(?:{degree}) )*(?:${words})${BETWEEN} ${GREEN}(?! (?:complex|keeper|side))`,
      rest,
    ),
    make(
      kind,
      `${GREEN} (?:here |itself )?${IS}${BETWEEN} (?:{not} )?(?:{strong} )?(?:(?:{degree}) )*(?:${words})(?! (?:at|in the|near|end|on the|neck|entrance|where|enough|for|of|hollow|bank|with|to (?:read|putt)))`,
      {
        ...rest,
        notAfter:
          /\b(?:front of the|back of the|side of the|part of the|half of the|end of the|edge of the|behind the|approach to the|if the|when the|practice|tier of the|short of the|left of the|right of the|than the)$/,
      },
    ),
  ];
}

const SIZE: readonly ClaimPattern[] = [
  ...adjective("green-shallow", "shallow|not deep"),
  make(
    "green-shallow",
    `${GREEN} (?:has|offers|gives) (?:very )?(?:little|no|not much|hardly any|precious little) depth`,
  ),
  make("green-deep", `${GREEN} is as deep as any`),
  make("green-shallow", `(?:little|not much|hardly any|precious little) depth (?:to|in|on) the green`),
  ...adjective("green-deep", "deep|deepest"),
  make("green-deep", `(?:{strong} )?deep from front to back`),
  make("green-deep", `(?:{no} )?(?:plenty|lots|a lot) of depth (?:to|in|on) the green`),
  make("green-deep", `${GREEN} (?:has|offers) (?:plenty|lots|a lot) of depth`),
  make("green-deep", `${GREEN} is (?:a )?(?:{strong} )?long (?:one|from front to back)`),
  make("green-shallow", `(?:{strong} )?shallow from front to back`),
  ...adjective("green-wide", "wide|broad|wider than it is deep"),
  ...adjective("green-narrow", "narrow|thin|slender|slim"),
  make("green-wide", `${GREEN} wider than it is deep`),
  make("green-narrow", `${GREEN} deeper than it is wide`),
  make("green-deep", `${GREEN} is long and (?:narrow|thin|slender)`),
  make("green-shallow", "a (?:{strong} )?shallow one", { needsBefore: /\bgreen\b/ }),
  make("green-large", `${GREEN} is a (?:{strong} )?(?:big|large|huge) one`),
  make("green-small", `${GREEN} is a (?:{strong} )?(?:small|tiny|little) one`),
  ...adjective("green-large", "large|big|huge|vast|enormous|massive|generous|ample"),
  ...adjective("green-small", "small|tiny|little|smallest|diminutive|minute"),
  make("green-small", "(?:small|tiny|little|smallest) target", { notAfter: /(?:makes it a|only a|leaves a)$/ }),
  ...adjective("green-flat", "flat|level"),
];

const SLOPES =
  "(?:slopes?|sloping|tilts?|tilting|falls?|falling|runs?|running|leans?|leaning|feeds?|feeding|pitche[sd]|pitched|pitching|cants?|canted|sloped|tilted|drains?|tips?)";
/** Verbs by which a green takes a ball to a side. */
const DRIFTS = "(?:slopes?|tilts?|leans?|falls?|runs?|drifts?|slides?|slips?|feeds?|tips?)";
/** A part of the green, not the green. */
const HALF = /(?:front|back|half|side|end|edge|part|quarter|portion|corner) (?:of|half of) the$/;
const HOW = "(?: (?:{degree}|away|down|severely|noticeably|hard))*";
const END = "(?:the )?(?:back|front|left|right|rear)";
const WAY = `(?:from )?(?:${END})(?: left| right)? (?:down )?to (?:the )?(?:back|front|left|right)(?: left| right)?`;

/** The way is read off the words by the matcher: two ends in order. */
const SLOPE: readonly ClaimPattern[] = [
  make(
    "green-slope",
    `(?:green|surface|everything|all of it|whole green|it|which|putting surface) (?:that )?(?:also |here |itself )?(?:(?:is|does) )?(?:{not} )?(?:(?:{degree}|all) )*${SLOPES}${HOW} (?<way_950>${WAY})`,
    { notAfter: /\b(?:fairway|short of the|front of the)$/ },
  ),
  make(
    "green-slope",
    `(?:a |the )?(?<way_951>(?:back to front|front to back|left to right|right to left)) (?:slope|tilt|fall|sloping|tilted|pitch)`,
    { unless: /\bfairway\b/ },
  ),
  make(
    "green-slope",
    `(?:slope|tilt|fall|pitch)(?: is| runs)?${HOW} (?<way_952>from ${END} to (?:the )?(?:back|front|left|right))`,
    { unless: /\bfairway\b/ },
  ),
  make(
    "green-slope",
    `${GREEN} (?:{not} )?(?:(?:{degree}) )*(?:slopes?|tilts?|leans?|falls?|runs?|pitches|(?:is )?(?:tilted|pitched|sloped|canted|sloping|tilting|falling|leaning))${HOW} (?:towards?|to) (?<way_953>you|the (?:front|fairway|tee|player))`,
    { notAfter: /(?:front of the|back of the)$/ },
  ),
  make(
    "green-slope",
    `${GREEN} (?:{not} )?(?:(?:{degree}) )*(?:slopes?|tilts?|leans?|falls?|runs?)${HOW.replace("|away|", "|")} (?<way_954>away from (?:you|the (?:player|tee|fairway|shot|front))|(?:away )?(?:to|towards) the back(?: left| right)?)`,
    { notAfter: /(?:back of the|end of the|half of the)$/ },
  ),
  make(
    "green-slope",
    `${GREEN} (?:{not} )?(?:(?:{degree}) )*(?:slopes?|tilts?|leans?|falls?|runs?)${HOW} (?:to|towards|down to) the (?<way_955>left|right)(?! (?:at|of|half|side|edge|bunker|where|hand))`,
    { notAfter: /(?:back of the|front of the|half of the|side of the)$/ },
  ),
  make(
    "green-slope",
    `(?:green|surface)(?: that| which)? (?:{not} )?(?:(?:{degree}) )*(?<way_970>rises?|tilts? up|slopes? up|banks up|climbs)(?: (?:{degree}))* (?:to|towards) (?:the|its) back`,
    { notAfter: HALF },
  ),
  make(
    "green-slope",
    `(?:green|surface)(?: that| which)? (?:{not} )?(?:(?:{degree}) )*${DRIFTS}(?: (?:{degree}|away|a shade|a touch|a bit))* (?:to (?:the )?|towards the )?(?<way_971>(?:back |front )?(?:left|right))(?! (?:of|at|half|side|edge|bunker|where|hand|to))`,
    { notAfter: HALF },
  ),
  make(
    "green-slope",
    `(?:(?<=\\b(?:green|surface)\\b[a-z# ]{0,60} and )|(?<=\\b(?:green|surface)\\b[a-z# ]{0,60} , ))(?:then )?${DRIFTS}(?: (?:{degree}|away|a shade|a touch|a bit))* (?:to (?:the )?|towards the )?(?<way_972>(?:back |front )?(?:left|right))(?! (?:of|at|half|side|edge|bunker|where|hand|to))`,
  ),
  make("green-slope", `(?<way_956>uphill|downhill) from front to back`),
  make(
    "side-slope",
    `fairway (?:also |here |itself )?(?:(?:is|does) )?(?:{not} )?(?:(?:{degree}|all) )*${SLOPES}${HOW} (?<way_957>from (?:the )?(?:left|right) to (?:the )?(?:left|right)|(?:left|right) to (?:left|right))`,
  ),
  make(
    "side-slope",
    `fairway (?:(?:is|does) )?(?:{not} )?(?:(?:{degree}|all) )*(?:slopes?|tilts?|leans?|falls?|tips?|cants?|sloping|falling)${HOW} (?:to|towards) the (?<way_958>left|right)(?! (?:hand|at|of))`,
  ),
  make(
    "side-slope",
    `(?:fairway|ground|landing ground|landing area|everything on the fairway) (?:(?:is|does) )?(?:{not} )?(?:(?:{degree}|all) )*${SLOPES}${HOW} (?<way_959>from (?:the )?(?:left|right) to (?:the )?(?:left|right)|(?:left|right) to (?:left|right))`,
  ),
  make("side-slope", `(?<way_960>left to right|right to left) (?:side )?slope (?:of|on|in) the fairway`),
];

const SHAPE: readonly ClaimPattern[] = [
  make(
    "tiers",
    "(?:{no} |{not} )?(?:a )?(?:<num>)?two (?:(?:clear|distinct|marked|separate|big) )?(?:tiers|tier|tiered|levels|plateaus|plateaux|shelves|decks)".replace(
      "(?:<num>)?",
      "",
    ),
    { number: 2, notAfter: /(?:three or|one or|of the)$/ },
  ),
  make("tiers", "(?:double|split) (?:tier|tiered|level)(?: green)?", { number: 2 }),
  make("tiers", "(?:an |the )?upper and (?:a |the )?lower (?:tier|level|shelf|plateau|deck)", { number: 2 }),
  make("tiers", "(?:upper|lower|top|bottom) tier", { number: 2, unless: /\b(?:flag|pin|hole is|when|if)\b/ }),
  make("tiers", "(?:single|one) tier(?:ed)?(?: green)?|no tiers", { number: 2, denied: true }),
  make("tiers", "(?:three|3) (?:tiers|tier|tiered|levels)", { number: 3 }),
  make("false-front", "(?:{no} |{not} (?:a )?)?(?:a |the )?false front", { inAdvice: true }),
  make(
    "green-raised",
    `(?:{not} )?(?:perched|raised|elevated|plateau|upturned|domed|crowned|pedestal|table top|tabletop)${BETWEEN} ${GREEN}`,
    { notAfter: /(?:less|more)$/ },
  ),
  make(
    "green-raised",
    `${GREEN} ${IS}? ?(?:{not} )?(?:(?:{degree}|high) )*(?:perched|raised|elevated|up above|on (?:a|its own|top of a) (?:plateau|knoll|ridge|mound|hill|hilltop|crest|pedestal|platform))`,
    { notAfter: /(?:front of the|back of the|side of the|behind the)$/ },
  ),
  make(
    "green-raised",
    `${GREEN} ${IS} (?:{not} )?(?:(?:{degree}|high) )*above (?:the fairway|its surroundings|the ground|everything)`,
  ),
  make("green-sunken", `(?:{not} )?(?:sunken|punch ?bowl|punch bowl|sunk)${BETWEEN} ${GREEN}`),
  make(
    "green-sunken",
    `${GREEN} (?:that )?(?:${IS}|is set|nestles|is tucked|is cut)? ?(?:{not} )?(?:(?:{degree}|down) )*(?:in|into) (?:a|its own|the) (?:(?:little|small|deep|natural|shallow|grassy) )*(?:hollow|bowl|dell|punchbowl|punch bowl|amphitheatre|saucer|dip)`,
    { notAfter: /(?:front of the|back of the|side of the|behind the|short of the)$/ },
  ),
  make(
    "green-sunken",
    `${GREEN} ${IS} (?:{not} )?(?:(?:{degree}) )*(?:sunken|sunk|below the (?:fairway|level of the fairway))`,
  ),
  make(
    "tee-raised",
    "(?:{not} )?(?:from |on )?(?:a |an |the )?(?:(?:{degree}) )*(?:elevated|raised|high|perched|lofty|hilltop|clifftop) (?:(?:back|medal|championship) )?tees?(?! shots?)",
    { inAdvice: true, notAfter: /(?:less|more|than the)$/ },
  ),
  make(
    "tee-raised",
    "(?:tees?|teeing ground) (?:is|are|sits?|stands?|lies) (?:{not} )?(?:(?:{degree}|up) )*(?:perched|raised|elevated|high|up high|high up)(?: (?:up|above|on))?",
  ),
];

export const GREEN_AND_TEE: readonly ClaimPattern[] = [...SHAPE, ...SLOPE, ...SIZE];
