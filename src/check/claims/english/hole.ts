/** How English speaks of a hole's way: up and down, bends, lengths, how it plays, what is seen. */
import type { ClaimKind } from "../claim.ts";
import type { ClaimPattern } from "../lexicon.ts";
import { phrase } from "../phrase.ts";
import { PARTS } from "./words.ts";

const make = (kind: ClaimKind, text: string, rest: Partial<ClaimPattern> = {}): ClaimPattern => ({
  kind,
  expression: phrase(text, PARTS),
  ...rest,
});

const SMALL_GAME =
  /\b(?:putts?|putting|chips?|chipping|below the hole|above the hole|borrow|lie|stance|recovery|bunker shot)\b/;
const NO_STROKE = "(?! (?:putts?|chips?|lie|lies|stance|pitch|breaker|roll|half|side|end|ones?|slope|from there))";
const SUBJECT =
  "(?:the )?(?:hole|it|this one|this|fairway|line|way|par [345]|second shot|approach|last \\d+ {unit}|tee shot|drive|second|which|that)";
const APPROACH = "approach(?: shot)?|second(?: shot)?|third(?: shot)?|shot to the green|pitch|way in|shot in";
const DRIVE = "tee shot|drive|opening shot";
const MAY_BE = "(?:is|plays|runs|goes|turns|feels|comes|sits|lies|are)";

const NOT_MOUND =
  "(?! (?:at the back|at the front|behind|from the front|from left|from right|from back|away|off|towards?|to the (?:left|right|sea|water|burn|bunker|pond|back|front)|left|right|sharply left|sharply right|short|into|in (?:short|long)|in the|gently to|away to))";

const HEIGHT: readonly ClaimPattern[] = [
  make("uphill", `(?:{not} )?(?:a bit |(?:{degree}) ){0,2}(?:uphill|up hill)${NO_STROKE}`, {
    unless: SMALL_GAME,
    notAfter:
      /(?:less|more|from|an? (?:few|short|little)|any|the|leaves? an?|leaving an?|left with an?|your|if|neither|nor|appear|look) *$/,
    notBefore: /^ (?:and|or|nor) downhill/,
  }),
  make(
    "uphill",
    `${SUBJECT} (?:then |now |also )?(?:{not} )?(?:(?:{degree}) ){0,2}(?:climbs|rises|climbing|rising)${NOT_MOUND}`,
  ),
  make("uphill", "(?:^|(?<=, ))up the (?:hill|slope|scarp|bank)(?! (?:from|behind|beside))"),
  make("downhill", "(?:^|(?<=, ))down the (?:hill|slope|scarp|bank)(?! (?:from|behind|beside))"),
  make(
    "uphill",
    "(?:a |the )(?:(?:{degree}|stiff|long|short|steady|good|real|final) )*(?:climb|rise) (?:of [a-z0-9# ]+ )?(?:(?:to|up to) the green|from the tee(?: to (?:a|the) green)?)",
    { notAfter: /(?:after|walk|no|not)$/ },
  ),
  make(
    "uphill",
    "green (?:is|sits|stands|lies) (?:(?:{degree}|high|\\d+ feet|\\d+ metres) )*above (?:the tee|you|tee level)",
  ),
  make(
    "uphill",
    `(?:up|climbs|rises) (?:the )?(?:hill|scarp|slope|bank) (?:to the green|from tee to green|all the way)`,
    { notAfter: /(?:walk|run|roll|putt|bounce|kick)s?$/ },
  ),
  make("downhill", `(?:{not} )?(?:a bit |(?:{degree}) ){0,2}(?:downhill|down hill)${NO_STROKE}`, {
    unless: SMALL_GAME,
    notAfter:
      /(?:less|more|from|an? (?:few|short|little)|any|the|leaves? an?|leaving an?|left with an?|your|if|neither|nor|uphill or|uphill and|appear|look) *$/,
  }),
  make(
    "downhill",
    `(?:the )?(?:hole|it|this one|this|par [345]|approach|second|tee shot|which) (?:then |now |also )?(?:{not} )?(?:(?:{degree}|away) ){0,2}(?:drops|falls|descends|plunges|tumbles)(?! (?:away|short|off|from|left|right|in(?:to)?|a shot|shots|at|on|towards?|to the (?:left|right|sea|water|back)))`,
  ),
  make(
    "downhill",
    "(?:hole|it|this|ground) (?:drops|falls|descends|plunges|tumbles) from (?:the )?tee to (?:the )?green",
  ),
  make(
    "downhill",
    "green (?:is|sits|stands|lies) (?:(?:{degree}|\\d+ feet|\\d+ metres) )*below (?:the tee|you|tee level)",
  ),
  make("level", `(?:over|across|on) (?:(?:{degree}) )*(?:level|flat) ground`),
  make(
    "level",
    `(?:hole|it|this|this one|ground|whole hole|ground here|approach|second|tee shot) (?:${MAY_BE}) (?:{not} )?(?:(?:{degree}) ){0,2}(?:level|flat)(?! (?:at|on|behind|again|with|enough))`,
  ),
  make(
    "level",
    `(?:{not} )?(?:(?:{degree}) )*(?:level|flat) (?:all the way|from tee to green|throughout|from start to finish|the whole way)`,
  ),
  make("level", `(?:^|(?<=, )|(?<=and ))(?:{no} )?(?:(?:{degree}|table|pancake) )*(?:level|flat)(?= *$| ,| and)`, {
    unless: /\b(?:green|putt|lie|stance|surface)\b/,
  }),
  make("level", "tee (?:is )?(?:and green are )?(?:about |on a )?level (?:with the green|with one another)"),
  make("level", "(?:flat|level) as (?:a|an) [a-z]+", { unless: /\bgreen\b/ }),
  make(
    "level",
    "(?:a|this) (?:(?:{degree}) )?(?:flat|level) (?:hole|par [345]|par four|par five|par three|(?:approach|second)(?: shot)?)",
  ),
];

const TURN =
  "bends?|turns?|doglegs?|swings?|sweeps?|curves?|veers?|elbows?|bears?|swerves?|angles|kinks?|breaks(?= (?:sharply )?(?:to the )?(?:left|right) (?:at|after|round|around))";
/** Things that bend beside a hole: theirs is not the hole's bend. */
const OTHER_BENDS =
  /\b(?:burn|stream|road|path|track|wall|shore|coast|coastline|river|ditch|sea|putts?|ball|draw|fade|wind|fence|beach|railway|lane|break|green|borrow|dune|ridge|gully|valley)(?: [a-z]+)?$/;

/** A verb of turning counts for the hole at the start of a clause or behind a word for the hole. */
const AFTER_SUBJECT =
  "(?:^|(?<=(?:,|and|then|hole|it|fairway|par [345]|par four|par five|this|one|play|which|that|way|here|line) ))";

const BENDS: readonly ClaimPattern[] = [
  make(
    "two-bends",
    "double dog ?leg|double dog leg|s shaped|(?:two|2) (?:(?:{adjective}|gentle|sharp|easy) )?(?:bends|turns|doglegs|dog legs|turning points|elbows)|(?:bends|turns|doglegs|swings) (?:twice|both ways|first one way and then the other|(?:first )?one way (?:, |and |then |and then )*the other)|(?:bends|turns|doglegs|swings) (?:first )?(?:left|right) (?:, |and |then )+(?:left|right)",
  ),
  make(
    "bends",
    `${AFTER_SUBJECT}(?:{not} )?(?:(?:{degree}|then|first|round|back) ){0,2}(?:${TURN})(?: (?:{degree}|away|back|round|off|first|then))* (?:to )?(?:the )?{lat}(?! (?:of|to))`,
    { notAfter: OTHER_BENDS },
  ),
  make(
    "bends",
    "(?:{no} )?(?:(?:{degree}|sharp|gentle|slight) )*(?:dog ?legs?|dog leg)(?: hole| par [345])?(?: is)?(?:(?: (?:a |{degree}|sharp|gentle|slight|mild|round|away|one))*) (?:, )?(?:to )?(?:the )?{lat}(?! (?:of|side|half|hand side))",
  ),
  make("bends", "(?:{no} )?{lat}(?: hand(?:ed|er)?)? (?:dog ?leg|dog leg|bend|turn|elbow|curve)", {
    notAfter: OTHER_BENDS,
  }),
  make("bends", "(?:{no} )?(?:bend|turn|elbow|curve|kink) (?:is |comes )?to (?:the )?{lat}", {
    notAfter: OTHER_BENDS,
  }),
  make(
    "straight",
    "(?:{no} )?(?:(?:{degree}|arrow|ruler|perfectly|dead|long) )*straight(?:away)? (?:hole|par [3456]|par three|par four|par five|four|five|away|ahead|from tee to green|all the way)",
  ),
  make(
    "straight",
    `(?:hole|it|fairway|this|this one|line|way) (?:is|runs|plays|goes|lies) (?:{not} )?(?:(?:{degree}|arrow|perfectly) )*straight(?! (?:into|at|for|over|out|up|back|down|through|towards?|to|along|across|forward|after|away from|uphill|downhill))`,
  ),
  make(
    "straight",
    "(?:^|(?<=, )|(?<=and ))(?:dead|arrow|ruler|perfectly|absolutely|quite) straight(?= *$| ,| and| as| from)",
  ),
  make("straight", "straight as (?:a|an) [a-z]+"),
  make("straight", "(?:no|not a|without a|hardly any) (?:bends?|turns?|dog ?legs?|kinks?)(?! (?:left|right|to))"),
];

const ORDERS =
  "(?:on the (?:course|card|links|scorecard)|of the (?:round|course|day|eighteen|nine|lot)|of all|in the round|we have|here)";
/** What the longest is the longest of: all holes, or those of a par. */
const RANKED: readonly (readonly [par: number | undefined, words: string])[] = [
  [
    undefined,
    `(?:hole|of the (?:round|course|eighteen|eighteen holes|lot|holes))(?! (?:of|on) the (?:front|back|outward|inward|first|second|way))(?: ${ORDERS})?`,
  ],
  [3, `(?:(?:of the )?(?:par 3s?|par 3 holes|par threes?|one shotters?|short holes?))(?: ${ORDERS})?`],
  [4, `(?:(?:of the )?(?:par 4s?|par fours?|two shotters?|two shot holes?))(?: ${ORDERS})?`],
  [5, `(?:(?:of the )?(?:par 5s?|par fives?|three shotters?))(?: ${ORDERS})?`],
];
const ELSEWHERE =
  /\b(?:one of|among|amongst|perhaps|probably|second|third|next|arguably|county|country|district|land|world|island|isle|almost|nearly|carry|drive|walk|possible|would be|for many|nine|half|way out|way home)\b/;

const WEATHER =
  /\b(?:wind|winds|breeze|westerly|easterly|southerly|northerly|gale|wet|dry|winter|summer|cold|warm|soft|firm|rain|downwind|tide|air|weather|frost)\b/;
const PIN = /\b(?:flag|pin|hole position|position|flags|pins|tier|tiers|front|back one|looks?)\b|\bat the back\b/;
const PLAYS_NOT = new RegExp(`${WEATHER.source}|${PIN.source}`);
const CLUB_NUMBER = "(?<num_910>half a|a half|half|a good|a full|a whole|an extra|one|two|three|four|1|2|3|a)";

const LENGTH: readonly ClaimPattern[] = [
  ...RANKED.flatMap(([par, words]) =>
    (["longest", "shortest"] as const).map((kind) =>
      make(kind, `${kind} ${words}`, { unless: ELSEWHERE, ...(par === undefined ? {} : { number: par }) }),
    ),
  ),
  make(
    "par",
    "(?:^|(?<=a )|(?<=this )|(?<=the )|(?<=an )|(?<=short )|(?<=long )|(?<=fine )|(?<=straight )|(?<=uphill )|(?<=downhill )|(?<=yards )|(?<=metres )|(?<=strong )|(?<=little )|(?<=testing )|(?<=good )|(?<=great )|(?<=drivable )|(?<=reachable )|(?<=tough ))par (?<num_920>[3456]|three|four|five|six)(?! (?:s|is a good|here is|at|for (?:the )?(?:men|women|ladies|most|many|some)|or|and))",
    {
      unless:
        /\bpar (\w+)\b.*\bpar (?!\1)|\b(?:longest|shortest|hardest|easiest|first|last|only|next|another|any|every|few|like|once|would|could|almost|nearly|net|bogey|card says|really|more of|play it as|treat it as|think of it as|as a|make|making|save|score|other|most|than|county|best|worst|of the)\b/,
    },
  ),
  make("stroke-index", "stroke index (?:of |is |number )?(?<num_921>\\d{1,2})"),
  make(
    "length",
    "(?<num_922>\\d{3}) {unit} (?:(?:long|short|uphill|downhill|straight|testing|little) )?(?:hole|par [345]|par three|par four|par five|one shotter|two shotter|three shotter)",
    { notAfter: /(?:than|last|first|final|over|under|about|nearly|almost)$/ },
  ),
  make(
    "length",
    "(?:hole|it|this one|this) (?:measures|is|stretches to|runs to|plays)(?: only| just| some| about| all of| a full)? (?<num_923>\\d{3}) {unit}(?! (?:to|from|over|of|for|short|past|beyond|wide|away|on|uphill|further|longer|shorter|the|in the|with))",
    { unless: /\b(?:carry|carries|drive|lay|left|bunker|burn|pond)\b/ },
  ),
  make("length", "(?:^|(?<=, ))at (?:only |just |a full )?(?<num_924>\\d{3}) {unit} (?:, )?(?:this|it) (?:is|plays)", {
    unless: /\b(?:bunker|fairway|bend|corner|burn)\b/,
  }),
  make(
    "plays-longer",
    "plays? (?:{not} )?(?:(?:{degree}|somewhat|considerably) )*longer(?! (?:than it looks|than you think|on|for))",
    { unless: PLAYS_NOT },
  ),
  make(
    "plays-longer",
    "longer than (?:the (?:card|yardage|figure|number|scorecard)|its (?:yardage|figure|number|length)|it measures)",
    { unless: PLAYS_NOT, notAfter: /\bclubs?$/ },
  ),
  make(
    "plays-shorter",
    "plays? (?:{not} )?(?:(?:{degree}|somewhat|considerably) )*shorter(?! (?:than it looks|than you think|on|for))",
    { unless: PLAYS_NOT },
  ),
  make(
    "plays-shorter",
    "shorter than (?:the (?:card|yardage|figure|number|scorecard)|its (?:yardage|figure|number|length)|it measures)",
    { unless: PLAYS_NOT, notAfter: /\bclubs?$/ },
  ),
  make(
    "clubs-more",
    `(?:${CLUB_NUMBER} (?:extra |more )?clubs? (?:more|extra|longer)|${CLUB_NUMBER.replace("910", "911")} (?:more|extra) clubs?|an extra club|adds (?:on )?${CLUB_NUMBER.replace("910", "912")} clubs?|${CLUB_NUMBER.replace("910", "913")} clubs? longer)`,
    {
      unless: PLAYS_NOT,
      notAfter: /(?:worth|least|gives?|needs?|costs?|up to)(?: the)?$/,
      notBefore:
        /^ (?:than (?:at|for|to|the (?!card|yardage|figure|number|scorecard)|from|you|on|in)|to (?:clear|carry|get over|be safe|reach|make))/,
    },
  ),
  make(
    "clubs-more",
    `${CLUB_NUMBER} (?:(?:extra |more )?clubs? (?:more|extra|longer)|(?:more|extra) clubs?) than (?:the|its) (?:card|yardage|figure|number|distance)`,
    { unless: WEATHER, inAdvice: true },
  ),
  make(
    "clubs-less",
    `(?:${CLUB_NUMBER} clubs? (?:less|fewer|shorter)|${CLUB_NUMBER.replace("910", "911")} (?:less|fewer) clubs?|takes ${CLUB_NUMBER.replace("910", "912")} clubs? off)`,
    {
      unless: PLAYS_NOT,
      inAdvice: true,
      notBefore:
        /^ (?:than (?:at|for|to|the (?!card|yardage|figure)|from|you|on|in)|to (?:clear|carry|stay|be safe|lay))/,
    },
  ),
  make(
    "three-shots",
    "(?:{no} )?(?:(?:true|genuine|real|proper) )*three (?:shot|shotter|shots|stroke)(?: hole| par 5| par five)?(?= *$| ,| for| hole| par| and| to (?:reach|the green|get))",
    { notAfter: /(?:cost|costs|costing|drop|dropped|last|play it as a|lose)$/ },
  ),
  make(
    "reachable-in-two",
    "(?:(?<not_930>not|never|no one|nobody|few|out of|beyond|hardly|can not|will not|not be) )?(?:be )?(?:reachable|within reach|reached|reach|unreachable|get home|get up|get there|home|up) (?:for (?:a |the )?(?:long|longer|big|strong)(?:er)? (?:hitters?|players?|drivers?) )?in two(?! (?:tiers|parts|places|halves|minds|directions))",
    { unless: /\b(?:wind|if|downwind|breeze|tempt|tempting|tries|hope|dream)\b/ },
  ),
  make(
    "reachable-in-two",
    "(?:nobody|no one|hardly anyone|few)(?: will| can| ever)? (?:reach|reaches|gets home|get home|gets up|gets there|get there|is home|is up)(?: it| this| the green)?(?: (?:here|home))? in two",
    { denied: true },
  ),
  make(
    "drivable",
    "(?:{not} )?(?:driv(?:e)?able|reachable (?:from the tee|with (?:a|the|one) (?:drive|driver)|off the tee)|within reach (?:of the|from the) tee|within (?:a|one) (?:good |long |big )?drive)",
    { unless: /\b(?:wind|downwind|bunker|burn|pond|ditch)\b/ },
  ),
];

const SEE = "(?:see|see all of|see most of|see the whole of|view)";
const FROM_TEE = "(?:from|off) (?:the|any|every) (?:back |forward )?tees?";
const FROM_FAIRWAY =
  "(?:from the (?:fairway|landing ground|landing area|corner|drive)|for the (?:second|approach)(?: shot)?|for your second|from down there|from the middle of the fairway)";
const TARGET = "(?:(?:the |its )?(?:green|flag|pin|putting surface))";
const LANDING =
  "(?:(?:the |its )?(?:whole |entire )?(?:fairway|landing ground|landing area|landing zone)|where (?:the|your) (?:ball|drive) (?:lands|comes down|finishes|will land|pitches))";
const HIDDEN = "(?:hidden|blind|out of sight|not visible|not in view|invisible|concealed|unseen|obscured)";
const PARTLY =
  /\b(?:partly|partially|half|semi|almost|nearly|part of|only the top|top of|most of|half of|much of|all but|may be|bottom of|foot of|base of|one side)\b/;
const VISIBLE =
  "(?:(?:clearly |plainly |fully |all )?(?:visible|in (?:plain |clear |full )?view|in sight|in full view|on view|laid out|there to see|open to view|in front of you))";

const SIGHT: readonly ClaimPattern[] = [
  make("blind-tee-shot", "(?:{no} |{not} )?(?:a |an )?blind (?:tee shot|drive|opening shot)", {
    unless: PARTLY,
    inAdvice: true,
  }),
  make("blind-tee-shot", "(?:you|one) drives? blind", { unless: PARTLY }),
  make("blind-tee-shot", `(?:can )(?<!not )see ${LANDING}`, {
    denied: true,
    unless: PARTLY,
    notAfter: /(?:not|never|hardly|nor|to)(?: can)?$/,
  }),
  make("blind-approach", `${TARGET} can not be seen ${FROM_FAIRWAY}`, { unless: PARTLY }),
  make("blind-tee-shot", `${TARGET} can not be seen ${FROM_TEE}`, { unless: PARTLY, place: "green" }),
  make("blind-tee-shot", `(?:${DRIVE}) (?:is|plays) (?:{not} )?(?:(?:{degree}|completely|totally) )*blind`, {
    unless: PARTLY,
  }),
  make("blind-tee-shot", `(?:{not} )?(?:(?:{degree}|completely|totally) )*blind ${FROM_TEE}`, { unless: PARTLY }),
  make("blind-tee-shot", `(?:can|could|do|will) not ${SEE} (?:${LANDING}|${TARGET}) ${FROM_TEE}`, {
    unless: PARTLY,
    place: "tee-shot",
  }),
  make("blind-tee-shot", `(?:can|could|do|will) not ${SEE} ${LANDING}`, { unless: PARTLY, place: "tee-shot" }),
  make("blind-tee-shot", `(?:${LANDING}) (?:is|lies) (?:{not} )?(?:(?:{degree}|completely|totally) )*${HIDDEN}`, {
    unless: PARTLY,
  }),
  make(
    "blind-tee-shot",
    `${TARGET} (?:is|lies) (?:{not} )?(?:(?:{degree}|completely|totally) )*${HIDDEN} ${FROM_TEE}`,
    { unless: PARTLY, place: "green" },
  ),
  make(
    "blind-tee-shot",
    `(?:can )?(?<!not )${SEE} (?:everything|the whole hole|all of the hole|${LANDING}) ${FROM_TEE}`,
    { denied: true, unless: PARTLY, notAfter: /(?:not|never|hardly|nor)(?: can)?$/ },
  ),
  make("blind-tee-shot", `(?:can )?(?<!not )${SEE} ${TARGET} ${FROM_TEE}`, {
    denied: true,
    unless: PARTLY,
    place: "green",
    notAfter: /(?:not|never|hardly|nor)(?: can)?$/,
  }),
  make("blind-tee-shot", `(?:everything|whole hole|${LANDING}) is (?:{not} )?${VISIBLE} ${FROM_TEE}`, {
    denied: true,
    unless: PARTLY,
  }),
  make("blind-tee-shot", `${FROM_TEE} (?:, )?(?:everything|the whole hole|all|${LANDING}) is ${VISIBLE}`, {
    denied: true,
    unless: PARTLY,
  }),
  make("blind-tee-shot", `${TARGET} is ${VISIBLE} ${FROM_TEE}`, { denied: true, unless: PARTLY, place: "green" }),
  make(
    "blind-approach",
    "(?:{no} )?(?:a |an )?blind (?:approach|second|third|pitch|shot to the green|green)(?: shot)?",
    { unless: PARTLY },
  ),
  make("blind-approach", `(?:${APPROACH}) (?:is|plays) (?:{not} )?(?:(?:{degree}|completely|totally) )*blind`, {
    unless: PARTLY,
  }),
  make(
    "blind-approach",
    `${TARGET} (?:is|lies) (?:{not} )?(?:(?:{degree}|completely|totally) )*${HIDDEN}(?: ${FROM_FAIRWAY})?(?! ${FROM_TEE})`,
    { unless: PARTLY },
  ),
  make("blind-approach", `(?:can|could|do|will) not ${SEE} ${TARGET} ${FROM_FAIRWAY}`, { unless: PARTLY }),
  make("blind-approach", `(?:can )?(?<!not )${SEE} ${TARGET} ${FROM_FAIRWAY}`, {
    denied: true,
    unless: PARTLY,
    notAfter: /(?:not|never|hardly|nor)(?: can)?$/,
  }),
  make("blind-approach", `(?:can )?see (?:all|most|the whole|everything) of ${TARGET} ${FROM_FAIRWAY}`, {
    denied: true,
    unless: PARTLY,
    notAfter: /(?:not|never|hardly|nor)(?: can)?$/,
  }),
  make("blind-approach", `${TARGET} is ${VISIBLE} ${FROM_FAIRWAY}`, { denied: true, unless: PARTLY }),
  make("blind-tee-shot", "(?:^|(?<=, )|it is |this is ){not} blind(?! (?:from|second|approach))", { unless: PARTLY }),
];

const FAIRWAY_NOUN = "(?:fairway|landing area|landing ground|landing zone|driving area)";
const TIGHT = "narrow|narrowest|tight|tightest|slim|thin|slender|pinched";
const OPEN = "wide|widest|wide open|broad|broadest|generous|ample|roomy|spacious|very generous";

const FAIRWAY: readonly ClaimPattern[] = [
  make(
    "fairway-split",
    "(?:{no} )?(?:split|divided|double|twin|forked) fairways?|fairway (?:is )?(?:split|splits|divided|divides|forks)(?: in two| in half)?",
  ),
  make(
    "fairway-narrow",
    `(?:{not} )?(?:a |the )?(?:(?:{degree}) )*(?:${TIGHT})(?: (?:, |and |but )?(?:${TIGHT}|undulating|rolling|humpy|sloping|level|straight))* ${FAIRWAY_NOUN}(?! bunkers?)`,
    { notAfter: /(?:where the|part of the|more|less|than the)$/ },
  ),
  make(
    "fairway-narrow",
    `${FAIRWAY_NOUN} (?:here )?(?:is|runs|lies) (?:{not} )?(?:(?:{degree}) )*(?:${TIGHT})(?!(?:er|est))(?! (?:at|only|after|beyond|near|by|where|from))`,
  ),
  make(
    "fairway-wide",
    `(?:{not} )?(?:a |the )?(?:(?:{degree}) )*(?:${OPEN})(?: (?:, |and |but )?(?:${OPEN}|undulating|rolling|humpy|sloping|level|straight|open))* ${FAIRWAY_NOUN}(?! bunkers?)`,
    { notAfter: /(?:where the|part of the|more|less|than the)$/ },
  ),
  make(
    "fairway-wide",
    `${FAIRWAY_NOUN} (?:here )?(?:is|runs|lies) (?:{not} )?(?:(?:{degree}) )*(?:${OPEN})(?! (?:at|only|after|beyond|near|by|where|from|enough for))`,
  ),
  make("fairway-wide", `${FAIRWAY_NOUN} is as wide as any`),
  make(
    "fairway-wide",
    "(?:{no} )?(?:plenty of|ample|lots of|acres of|all the|masses of) (?:room|space|fairway) (?:off|from) the tee",
  ),
];

const CARRY_OVER = "(?:{water}|{gorse}|{bunker}|valley|chasm|rough|quarry|wasteland|ravine)";
const CARRY: readonly ClaimPattern[] = [
  make("forced-carry", "(?:{no} )?(?:(?:all|forced|full|long forced|heroic) )+carry", {
    inAdvice: true,
    notAfter: /(?:not|is it)$/,
  }),
  make(
    "forced-carry",
    "no (?:real |great )?carry (?:is (?:needed|required|asked)|to (?:make|worry|speak)|needed|required|from)",
    { denied: true },
  ),
  make(
    "forced-carry",
    `(?:tee shot|drive|ball|it|you) (?:must|has to|have to|needs to) (?:carry|clear|be carried over) (?:the |a |all of the )?(?:(?:{adjective}) ){0,2}${CARRY_OVER}`,
    { inAdvice: true, unless: /\b(?:second|approach|third|lay)\b/ },
  ),
  make("forced-carry", `(?:nothing but|only) {water} between (?:you|the tee|tee) and (?:the )?(?:green|fairway|flag)`),
];

const POINTS = "{compass}(?! (?:wind|winds|wester|easter|souther|norther|breeze|gale|side|corner|end|of))";
const WAY: readonly ClaimPattern[] = [
  make(
    "runs",
    `(?:hole|it|this|this one|par [345]|^|(?<=, ))(?: (?:then|now))?(?: )?(?:plays|runs|heads|goes|faces|points|playing|running|heading|facing)(?: (?:back|away|out|home))? (?:(?:due|roughly|almost|nearly|straight|about|broadly|mainly) )*(?:to the )?${POINTS}`,
    { notAfter: /\b(?:green|wind|burn|road|wall|shore|ridge|slope|coast|bank)$/ },
  ),
  make("runs", "(?:^|(?<=, ))due {compass}(?= *$| ,| and)", {
    needsBefore: /\b(?:plays|runs|heads|goes|points|turns back)\b/,
  }),
  make(
    "along-sea",
    "(?:along|beside|alongside|by|above|skirts|skirting|hugs|hugging|follows|following|borders|bordering) (?:the )?(?:edge of the )?{sea}(?! (?:road|wall|path|fence))",
    {
      notAfter:
        /(?:wall|road|path|fence|walk|burn|wind|breeze|bunkers?|gorse|ridge|dunes?)(?: (?:runs|lies|is|stands|goes))?$/,
      unless: /\b(?:bunker|path|walk|walkers|road|burn|pond)\b/,
    },
  ),
];

export const HOLE: readonly ClaimPattern[] = [...BENDS, ...LENGTH, ...SIGHT, ...FAIRWAY, ...CARRY, ...WAY, ...HEIGHT];
