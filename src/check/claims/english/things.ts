/** How English says where a bunker, water, out of bounds and the like are. */
import type { ClaimKind } from "../claim.ts";
import type { ClaimPattern } from "../lexicon.ts";
import type { ThingClass } from "../../../course/kinds.ts";
import { phrase } from "../phrase.ts";
import { PARTS } from "./words.ts";

/** What a side may be said of: "left of the bunker" is no place of the hole. */
const OF_HOLE =
  "(?:the |this |its |your |a |that )?(?:first |front of the |entrance to the |whole |middle of the )?(?:green|putting|fairway|line|hole|flag|pin|landing|approach|target|surface|corridor|second|drive|tee shot|entrance|mouth|way in|front|short grass)";

/** Side words end a phrase, or something follows that they can be said of. */
const NOT_OF_ELSE = `(?! of (?!${OF_HOLE}))`;
/** After "behind" and "in front" what follows may come without "of". */
const NOT_BY_ELSE = `(?! (?:of )?(?:the|a|an|this|that|these|those|your|it|our|its|which|you|us|them|where)(?<! it) (?!${OF_HOLE})(?!(?:very |far )?(?:left|right|back|front)))`;

const BARE_END = `(?= *$| ,| of | and| or| but| all | as far| at | in | for | from | right up| with | is| are| waits?| guards?| catch| gather| swallow| take| collect| wait| lie| make| narrow| punish| protect| threaten| run| come| to (?:the green|catch|swallow|gather|punish|worry|think)| that| which| (?:side|edge|flank)| named_)`;

const SIDE_NOUN = "(?: hand)?(?: side| edge| flank| half| corner| part| portion| hand side| boundary)?";
const LAT_PHRASE = `(?:(?:for )?(?:the|its) (?:full|whole|entire) length of|to|on|down|along|up|at|over|in from|in on|from|in|off|by|towards|all down|all along|all up) (?:(?:the|its|your|that) )(?:(?:far|near|immediate|whole|entire|inside|outside|extreme|wrong) )*{lat}${SIDE_NOUN}(?! of (?!${OF_HOLE}|it(?:$| ,)))`;
const LAT_BARE = `(?:to )?{lat}(?: hand side)?${BARE_END}${NOT_OF_ELSE}`;
const BOTH_PHRASE = `(?:on|down|along|to|at|up) {both} (?:sides?|flanks?|edges?|hands?)${NOT_OF_ELSE}`;
const DEP_PHRASE = `(?:at|near|over|through|off|to|on|by|across|along) (?:the|its) (?:very )?{dep}(?: edge| half| side| part| portion| fringe| lip)?${NOT_OF_ELSE}`;
const DEP_BARE = `{dep}(?: of it)?${BARE_END.replace(" of ", " of| the| it| a ")}${NOT_BY_ELSE}`;
const COMBO = `(?:(?:at|on|to|near|by) (?:the|its) )?(?:{cdep}(?: and| ,)? (?:to the )?{clat}|{cdep} of the green ,? ?(?:on|to) the {clat}|{clat} ,? ?{cdep}(?! (?:you|it|them|us|the (?!green|flag))))(?: hand)?(?: side| corner| edge| half)?${NOT_OF_ELSE}`;
const SIDE = `(?:${COMBO}|${BOTH_PHRASE}|${LAT_PHRASE}|${DEP_PHRASE}|${LAT_BARE}|${DEP_BARE})`;
const SIDES = `${SIDE}(?:(?: of (?:the |this )?(?:fairway|green|hole|line))? (?:, )?(?:and|or|nor|,) (?:both )?${SIDE})?`;

/** The side as an object: "guards the left". */
const SIDE_OBJECT = `(?:(?:the|its) (?:whole |entire |far )?(?:{cdep} (?:and )?{clat}|{clat}(?: hand)? {cdep}|{lat}|{dep})${SIDE_NOUN}|{both} sides?)${NOT_OF_ELSE}`;

const KINDS: readonly (ThingClass & ClaimKind)[] = [
  "bunker",
  "water",
  "out-of-bounds",
  "trees",
  "gorse",
  "wall",
  "road",
];

const noun = (kind: string): string => `(?:{no} )?(?:{det} )?(?:{num} )?(?:of )?(?:(?:{adjective}) ){0,4}{${kind}}`;

/** Words before a thing that make its side a way to play, not where it lies. */
const ROUTE =
  /(?:^| )(?:left of|right of|short of|long of|clear of|wide of|outside|inside|from|over|past|beyond|around|round|carry|carrying|clears?|towards?|toward|at|into|in|reach|reaching|reaches|find|finding|flirt(?:ing)? with|challenge|challenging|take on|taking on|miss|missing|leave|leaves|leaving|keep|keeps|keeping|put|puts|putting|like|unlike|as|(?:not|never|nor|nothing|nobody|no one)(?: [a-z]+){0,2})(?: (?:the|a|an|those|these|that|any|another|your|one|two|three|first|second))*$/;

const WARNED =
  /(?:^| )(?:avoid|avoiding|beware|beware of|mind|watch for|watch out for|respect|away from|clear of|note|remember|ignore|forget|avoids) (?:the |a |those |these |that |any |two |three )*$/;

/** Whether the words before a thing let its side count, and whether they do so even within advice. */
export const warned = (before: string): boolean => WARNED.test(`${before} `.replace(/ +$/, " "));

function patternsOf(kind: ThingClass & ClaimKind): ClaimPattern[] {
  const make = (text: string, rest: Partial<ClaimPattern> = {}): ClaimPattern => ({
    kind,
    expression: phrase(text, PARTS),
    notAfter: ROUTE,
    ...rest,
  });
  const thing = noun(kind);
  const patterns = [
    // "guarded by a bunker on the left", "bunkers left and right", "the pond is not on the left"
    make(`${thing}(?: {link}(?: {not})?)?(?: (?:{adverb})){0,4} ${SIDES}`),
    make(`${thing}(?: (?:{adverb})){0,2} {guards}(?: (?:{adverb})){0,2} ${SIDE_OBJECT}(?: (?:and|,) ${SIDE_OBJECT})?`),
    make(
      `(?:the )?${SIDE_OBJECT.replace("(?:the|its) ", "(?:(?:the|its) )?")}(?: of the (?:green|fairway|hole))? (?:is|are) (?:(?:{adverb}|{degree}) ){0,2}{guarded} by ${thing}`,
      { notAfter: /x^/ },
    ),
    make(`{guarded} (?:(?:{adverb}) ){0,2}${SIDES} by ${thing}`, { notAfter: /x^/, place: "green" }),
    make(
      `(?:anything|everything|any ball|a ball|a shot) (?:hit |going |pushed |pulled |that drifts |that goes )?${SIDES}(?: of the (?:green|fairway|line|flag))?(?: of (?:the|that) [a-z_0-9]+)? (?:is |ends |finishes |goes |runs |will be |is lost )?(?:finds?|in|into|through|meets?|gone in|lost in|swallowed by|wet in)? ?${thing}`,
      { notAfter: /x^/ },
    ),
    make(
      `(?:on|to|down|along|up|at) (?:the|its) (?:{lat}|{dep})(?: hand)?(?: side| edge)?(?: of the (?:green|fairway|hole))? (?:, )?(?:there )?(?:is|are|lies|lie|runs|run|sits|sit|waits|wait|stands|stand|comes|come|you have) ${thing}`,
      { notAfter: /x^/ },
    ),
    make(
      `(?:on|to|down|along|up|at) (?:the|its) (?:far )?(?:{lat}|{dep})(?: hand)?(?: side| edge)?(?: of the (?:green|fairway|hole))? ,? ?(?:just |only )?${thing}(?= (?:is|are|lies|lie|runs|run|sits|sit|waits|wait|stands|stand|catches|gathers|guards|will|and|at|with|that|which)| *$| ,)`,
      { notAfter: /(?:of|from|keep|stay|aim|miss|go|play)$/ },
    ),
    make(`${thing} , (?:${LAT_PHRASE}|${DEP_PHRASE})(?= ,| *$)`),
    make(
      `{dep} (?:the green |it |the putting surface )?(?:there )?(?:is|are|lies|lie|runs|run|sits|sit|waits|wait|stands|stand) ${thing}`,
      { notAfter: /x^/ },
    ),
    make(
      `(?:^|(?<=, )|(?<=and )|the |it is |with ){lat}(?: hand)?(?: side)?(?: of the (?:fairway|hole|green|wall|fence|road|path))? (?:is|are) (?:all |also )?${thing}`,
      { notAfter: /(?:of|from|to|than|keep|go|miss)(?: the)?$/ },
    ),
  ];
  return patterns;
}

/** Where a thing that is not there is not: the end of the words, or the hole at large. */
const AT_ALL =
  "(?= *$| ,| and (?!left|right)| or | on (?:this|the) hole| here| at all| anywhere| to (?:worry|trouble|find|carry|clear|catch|fear|think|speak)| in (?:sight|play|the way|reach)| greenside| on it| from| but| within| to be (?:seen|found))";

const none = (kind: string): string => (kind === "water" ? "any-water" : kind);

const NONE: readonly ClaimPattern[] = (["bunker", "water", "out-of-bounds"] as const).flatMap(
  (kind): ClaimPattern[] => [
    { kind, expression: phrase(`{no} (?:(?:{adjective}|fairway|greenside) ){0,3}{${none(kind)}}${AT_ALL}`, PARTS) },
    {
      kind,
      expression: phrase(`(?:there )?(?:is|are) {no} (?:(?:{adjective}) ){0,2}{${none(kind)}}${AT_ALL}`, PARTS),
    },
  ],
);

const ONLY: readonly ClaimPattern[] = [
  {
    kind: "bunker-count",
    number: 1,
    expression: phrase(
      "(?:only|lone|single|solitary|one and only|just one|just a single) (?:(?:{adjective}) ){0,2}bunker(?! (?:on|at|to) (?:the|that) (?:left|right|back|front))(?! (?:left|right|short|behind|long))(?! by)(?! that)",
      PARTS,
    ),
    notAfter: /(?:not|every|not a)(?: the| a)?$/,
    unless: /only bunker (?:on|left|right|short|behind|at|by)/,
  },
];

const WATER: readonly ClaimPattern[] = [
  {
    kind: "water",
    side: "across",
    expression: phrase(
      `(?:{no} )?(?:{det} )?(?:(?:{adjective}) ){0,3}{water} (?:(?:that|which) )?(?:(?:{adverb}|{degree}|then|again|diagonally|down and) ){0,2}(?:cross(?:es|ing)?|cuts? across|cutting across|cuts through|runs? across|running across|winds? across|snakes? across|flows? across|meanders? across|bisects?|traverses?|comes across|slices across|goes across|lies across|is across)(?: (?:the|this) (?:hole|fairway|line|green|line of play|approach))?(?: (?<num_900>twice|three times|thrice))?`,
      PARTS,
    ),
    notAfter: /(?:where|until|before|after|when|like|as)(?: the| a)?$/,
    notBefore: /^ (?:the|a|this) (?:road|path|track|\d|first|second (?:hole|fairway)|practice|next|previous)/,
  },
  {
    kind: "water",
    side: "across",
    expression: phrase(
      "(?:crossed|bisected|cut|cut in two|cut in half|divided) (?:(?<num_901>twice|three times) )?by (?:{det} )?(?:(?:{adjective}) ){0,3}{water}",
      PARTS,
    ),
  },
  {
    kind: "island-green",
    expression: phrase(
      "island green|(?:green|target) (?:is )?(?:almost |nearly )?(?:entirely |completely )?(?:surrounded|ringed|encircled) by (?:{det} )?(?:water|sea|penalty area)",
      PARTS,
    ),
    notAfter: /(?:like an?|almost an?|nearly an?|not an?|feels like an?)$/,
    unless: /almost|nearly|as good as/,
  },
];

const DISTANCE: readonly ClaimPattern[] = (
  ["bunker", "water", "out-of-bounds", "gorse", "wall", "trees"] as const
).map((kind): ClaimPattern => ({
  kind: "hazard-distance",
  thing: kind,
  expression: phrase(
    `{${kind}}(?: ${SIDE})?(?: of the (?:fairway|hole|line))?(?: (?:that )?(?:is|are|lies?|sits?|starts?|begins?|comes? into play|waits?|stands?|crosses|crosses the fairway|cuts in|pinches in))?(?: (?:{adverb})){0,2} (?:at |only |just |about |around |some |roughly |nearly )*(?<num_902>\\d{2,3}) {unit}(?: (?:away |out )?(?:from|off) (?:the|your) (?:{adjective} )?(?:back |medal |forward |white |yellow |red |blue |black )?tee| out|(?= *$| ,| and))`,
    PARTS,
  ),
  notAfter: ROUTE,
  notBefore: /^ (?:short|long|wide|deep|across|before|behind|beyond|from the (?:green|flag|pin|middle)|of|to)/,
}));

/** "A bunker short and another behind": the thing is the one named last. */
const ANOTHER: readonly ClaimPattern[] = (["bunker", "water"] as const).map((kind): ClaimPattern => {
  const own = PARTS[kind]!;
  const other = PARTS[kind === "bunker" ? "water" : "bunker"]!;
  return {
    kind,
    expression: phrase(
      `(?:another|one|one more|two more|two others|a second)(?: (?:{link}))?(?: (?:{adverb})){0,2} ${SIDES}`,
      PARTS,
    ),
    needsBefore: new RegExp(`\\b(?:${own})\\b(?!.*\\b(?:${other}|tree|wall|tier|hole|tee|player|line|shot)\\b)`),
  };
});

export const THINGS: readonly ClaimPattern[] = [
  ...DISTANCE,
  ...WATER,
  ...KINDS.flatMap(patternsOf),
  ...ANOTHER,
  ...NONE,
  ...ONLY,
];
