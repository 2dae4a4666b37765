/** English words the patterns are made of. */

export const NUMBERS: Readonly<Record<string, number>> = {
  half: 0.5,
  "half a": 0.5,
  "a half": 0.5,
  a: 1,
  an: 1,
  one: 1,
  single: 1,
  "a good": 1,
  "a full": 1,
  "a whole": 1,
  "an extra": 1,
  "a pair of": 2,
  "a couple of": 2,
  two: 2,
  twin: 2,
  three: 3,
  "a trio of": 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
  twice: 2,
  thrice: 3,
  "three times": 3,
};

export const SIDES: Readonly<Record<string, "left" | "right" | "short" | "long">> = {
  left: "left",
  right: "right",
  short: "short",
  front: "short",
  "in front": "short",
  entrance: "short",
  mouth: "short",
  back: "long",
  rear: "long",
  long: "long",
  behind: "long",
  beyond: "long",
  "over the back": "long",
  "through the back": "long",
  "through the green": "long",
};

const SHORT_FORMS: Readonly<Record<string, readonly string[]>> = {
  "can't": ["can", "not"],
  cannot: ["can", "not"],
  "won't": ["will", "not"],
  "shan't": ["shall", "not"],
  "it's": ["it", "is"],
  "there's": ["there", "is"],
  "that's": ["that", "is"],
  "what's": ["what", "is"],
  "here's": ["here", "is"],
  "you'll": ["you", "will"],
  "you're": ["you", "are"],
  "you've": ["you", "have"],
  "they're": ["they", "are"],
  yds: ["yards"],
  yd: ["yards"],
  yard: ["yards"],
  m: ["metres"],
  metre: ["metres"],
  meter: ["metres"],
  meters: ["metres"],
  greenside: ["greenside"],
  green: ["green"],
  doglegs: ["doglegs"],
  northeast: ["north", "east"],
  northwest: ["north", "west"],
  southeast: ["south", "east"],
  southwest: ["south", "west"],
};

export function spell(written: string): readonly string[] {
  const word = written.toLowerCase();
  const short = SHORT_FORMS[word];
  if (short) return short;
  if (word.endsWith("n't")) return [word.slice(0, -3), "not"];
  return [word.endsWith("'s") ? word.slice(0, -2) : word];
}

const ADJECTIVE =
  "deep|deepest|steep|big|bigger|large|largest|huge|vast|small|smaller|little|tiny|cavernous|nasty|cruel|awkward|sandy|pot|cross|" +
  "greenside|green side|fairway|grass|grassy|old|new|first|last|main|dangerous|hungry|round|long|narrow|wide|broad|shallow|" +
  "open|cold|salt|standing|running|tidal|allan|well placed|strategic|revetted|riveted|turf walled|drystone|dry stone|stone|low|high|public|dense|thick|tall|" +
  "mature|close|nearby|further|other|another|more|pair of|row of|line of|string of|cluster of|nest of|belt of|bank of|lots of|plenty of|extra";

const ADVERB =
  "just|close|tight|hard|well|all the way|all|right|still|also|only|immediately|directly|a little|slightly|a touch|a few|some|yards?|metres|paces|" +
  "waiting|lurking|set|cut|placed|positioned|sited|tucked|hidden|running|lying|sitting|standing|both|away|further|about|around|greenside|green side|" +
  "in play|in wait|ready|deep|dangerously|closely|tightly|hidden away|at driving distance|at drive length|in the landing area|the whole way|the whole length|" +
  "a long way off|far off|well away|some way off|the length of the hole|the entire length|twenty|thirty|forty|fifty|sixty|ten|there|here|once|\\d+";

const LINK =
  "(?:that |which |who )?(?:is|are|lies|lie|sits|sit|stands|stand|waits|wait|awaits|lurks|lurk|runs|run|follows|follow|continues|continue|extends|extend|" +
  "stretches|stretch|comes|come|comes in|come in|cuts in|cut in|eats in|bites in|keeps|threatens|threaten|catches|gathers|starts|start|begins|begin|remains|remain|is found|are found|" +
  "comes into play|come into play|looms|beckons|goes|stays|appears)";

const GUARDS =
  "(?:that |which )?(?:is |are )?(?:guards?|guarding|protects?|protecting|defends?|defending|covers?|lines?|lining|hugs?|hugging|skirts?|skirting|borders?|bordering|flanks?|flanking|" +
  "crowds?|crowding|pinch(?:es|ing)?|threatens?|follows?|following|edges?|edging|hems?|hemming|frames?|framing|fringes?|fringing|watch(?:es)? over|patrols?|eats? into|eating into|" +
  "cuts? into|cutting into|bites? into|biting into|squeezes?|narrows?|shields?|cradles?|wraps? around|wrapping around|occup(?:y|ies)|swallows?|seals?|closes? off)";

const GUARDED =
  "guarded|protected|defended|covered|flanked|bordered|lined|hemmed in|framed|fringed|skirted|hugged|pinched|closed off|squeezed";

/** Parts for {@link phrase}. Those that carry a particular are captured. */
export const PARTS: Readonly<Record<string, string>> = {
  // What is captured.
  no: "no|not a|not a single|not any|without|without a|without any|never a|nor|nor a|nor any|neither|free of",
  not: "not|never|nowhere",
  lat: "left|right",
  dep: "short|front|in front|back|rear|long|behind|beyond|over the back|through the back",
  clat: "left|right",
  cdep: "short|front|in front|back|rear|long|behind|beyond",
  both: "both|either",
  num: "\\d+|half a|a half|half|an extra|a good|a full|a whole|a pair of|a couple of|a trio of|one|single|two|twin|three|four|five|six|seven|eight|nine|ten",
  name: "named_[a-z]+_\\d+",
  strong: "very|extremely|really|exceptionally|unusually|so|alarmingly",
  // What is not.
  det: "the|a|an|its|some|any|another|more|that|this|those|these",
  adjective: ADJECTIVE,
  adverb: ADVERB,
  link: LINK,
  guards: GUARDS,
  guarded: GUARDED,
  green: "green|putting surface|target",
  hole: "hole|it|this|this one|par [345]|par three|par four|par five|short hole|one shotter|two shotter|line of play",
  degree:
    "very|really|quite|rather|fairly|a little|a bit|slightly|gently|gradually|steadily|sharply|steeply|steep|all|always|pretty|so|too|both|long and|dead|pan|absolutely|mostly|largely|generally|well|also|just|only|extremely|exceptionally|unusually|hard|right|straight|distinctly|markedly|noticeably|a touch|relatively|surprisingly|wonderfully|alarmingly|gentle|slight|strongly|heavily|clearly|much|far|nicely|deliberately|obviously|still",
  compass: "north east|north west|south east|south west|north|east|south|west",
  unit: "yards|metres",
  bunker: "bunkers?|traps?|pots?|sand(?! (?:dune|dunes|hill|hills|iron|wedge|shot))|named_bunker_\\d+",
  water:
    "water|water hazards?|penalty areas?|ponds?|lakes?|burns?|streams?|brooks?|ditch(?:es)?|gull(?:y|ies)|inlets?|sea|ocean|bay|beach|shore|shoreline|strand|foreshore|loch|lochan|river|creek|canal|marsh|lagoon|estuary|named_water_\\d+",
  // What there is none of when there is no water at all; a hole without a burn may have a pond.
  "any-water": "water|water hazards?|penalty areas?",
  sea: "sea|ocean|bay|beach|shore|shoreline|strand|foreshore|coast|coastline|loch|water|cliffs?|cliff top|clifftop|water edge|sea wall",
  "out-of-bounds":
    "out of bounds(?: stakes| posts| fence| wall| line)?|oob|ob|(?:the )?boundary(?: wall| fence| line| hedge| stakes?| posts?| road)?|white (?:stakes|posts)|named_boundary_\\d+",
  trees: "trees?|woods?|woodland|pines?|firs?|shelter belt|copse|spinney|forest|plantation|named_trees_\\d+",
  gorse: "gorse|gorse bushes|whins?|heather|heath|scrub|bushes|broom|bracken|named_gorse_\\d+",
  wall: "(?<!boundary )(?:walls?|dyke|fences?|hedges?)|named_wall_\\d+",
  road: "(?<!boundary )(?:roads?|lane|farm track|public road)|named_road_\\d+",
};
