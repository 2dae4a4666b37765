/** How German speaks of a green, and of the tee. */
import type { ClaimKind } from "../claim.ts";
import type { ClaimPattern } from "../lexicon.ts";
import { phrase } from "../phrase.ts";
import { PARTS } from "./words.ts";

const make = (kind: ClaimKind, text: string, rest: Partial<ClaimPattern> = {}): ClaimPattern => ({
  kind,
  expression: phrase(text, PARTS),
  ...rest,
});

/** In the nominative or accusative: "vor dem Grün" and "der Rand des Grüns" speak of something else. */
const GREEN = "(?<!(?:dem|des|zu|von|vor|hinter) )(?:grün|puttfläche)";
const BESIDE =
  "(?:klein|winzig|groß|riesig|gewaltig|mächtig|großzügig|breit|schmal|flach|tief|lang|kurz|schnell|langsam|fest|hart|weich|geneigt|erhöht|zweistufig|dreistufig|rund|oval|eben|onduliert|onduliertes|ondulierte|wellig|welliges|offen|blind|alt|neu|schön|schwierig|tückisch|leicht|gut|verteidigt|wenig|quer|liegend|hängend|abfallend|ruhig|ruhiges|quer zu der spielrichtung)";
const BETWEEN = `(?: (?:,|und|aber|doch|sowie|sehr|recht|ziemlich|eher|${BESIDE}))*`;
const IS = "(?:ist|liegt|bleibt|wirkt nicht nur|präsentiert sich|zeigt sich)";
const NOT_PART =
  /(?:^| )(?:hinter dem|vor dem|rand des|hälfte des|seite des|teil des|neben dem|kante des|wenn das|falls das|als das|übungs-|putting-|mitte des)$/;
/** What an adjective behind the green may still be followed by when it is the green that is so. */
const ENDS = "(?= *$| ,| und| aber| genug| doch)";

/** "Ein schmales Grün", "das Grün ist breit und flach". */
function adjective(kind: ClaimKind, words: string, rest: Partial<ClaimPattern> = {}): ClaimPattern[] {
  return [
    make(
      kind,
      `(?:{not} |{no} )?(?:ein |das |dies |unser |auf |der |dem )*(?:(?:{degree}) )*(?:{strong} )?(?:${words})${BETWEEN} (?:grün|puttfläche)(?!-)`,
      { notAfter: /(?:^| )(?:gerade|mehr|weniger|zu|als ein|wie ein)$/, ...rest },
    ),
    make(
      kind,
      `${GREEN} (?:hier |selbst |dagegen |aber )?${IS}${BETWEEN} (?:auch |hier |dabei |zwar |jedoch |allerdings )?(?:{not} )?(?:{strong} )?(?:(?:{degree}) )*(?:{strong} )?(?:${words})${ENDS}`,
      { notAfter: NOT_PART, ...rest },
    ),
    make(kind, `(?:so |sehr |extrem )?(?:${words}) ist (?:hier )?(?:nur )?das grün(?! {not})`, {
      notAfter: /(?:^| )(?:nicht|kein|wie|so|zu)$/,
      ...rest,
    }),
  ];
}

const SIZE: readonly ClaimPattern[] = [
  ...adjective("green-shallow", "wenig tief|kaum tief|nicht tief|nicht sehr tief|nicht besonders tief"),
  make("green-shallow", `${GREEN} (?:hat|bietet|besitzt) (?:nur )?(?:{strong} )?(?:wenig|kaum|kein|nicht viel) tiefe`),
  make("green-shallow", `(?:{strong} )?(?:wenig|geringe|kaum) tiefe (?:des|auf dem|hat das) grün`),
  make("green-shallow", "grün mit (?:{strong} )?(?:wenig|geringer|kaum) tiefe"),
  ...adjective(
    "green-deep",
    "(?<!(?:wenig|kaum|nicht|nicht sehr|nicht besonders|als) )tief|von vorne bis hinten lang|tiefer als breit",
    { notAfter: /(?:^| )(?:nicht|kaum|wenig|nicht sehr|gerade|mehr|als|kein|nicht besonders|zu)$/ },
  ),
  make("green-deep", `${GREEN} (?:hat|bietet|besitzt) (?:{strong} )?(?:viel|reichlich|ein menge|große) tiefe`),
  ...adjective("green-deep", "lang(?= und schmal)|(?<=schmal und )lang"),
  make("green-deep", "grün mit (?:{strong} )?(?:viel|reichlich|großer) tiefe"),
  ...adjective("green-wide", "breit|quer zu der spielrichtung breit|breiter als tief"),
  make("green-wide", `${GREEN} ${IS}${BETWEEN} (?:(?:{degree}) )*breiter als (?:es )?tief`),
  ...adjective("green-narrow", "schmal", { unless: /\bquer\b/ }),
  ...adjective("green-large", "groß|riesig|gewaltig|mächtig|großzügig|weitläufig|weitläufiges|enorm|enormes"),
  ...adjective("green-small", "klein|winzig|kleinste"),
  ...adjective("green-flat", "eben|flach|bretteben", {
    notBefore: /^ (?:anspielen|an)/,
    unless: /(?<![a-zäöüß])quer(?![a-zäöüß])/,
  }),
];

const TO = "(?:vorne|hinten|links|rechts)";
const HOW = "(?: (?:{degree}|sich|klar|insgesamt|spürbar))*";
/** Which way: two ends, or the one it falls to. */
const WAY = `(?:von (?:${TO}|hinten links|hinten rechts) nach (?:vorne|hinten|links|rechts)(?: (?:links|rechts))?|(?:klar |leicht |stark )?(?:nach|zu) (?:vorne|hinten|links|rechts)(?: (?:links|rechts))?|zu (?:dem|der) (?:fairway|spieler|abschlag|bahn)|(?:in )?richtung (?:fairway|spieler|abschlag)|auf (?:den|das) (?:spieler|fairway) zu|von (?:dem|der) (?:spieler|fairway|bahn) weg|von ihnen weg|ihnen entgegen|zu ihnen hin)`;
const FALLS = "(?:fällt|neigt sich|hängt|kippt|läuft|senkt sich)";
const FALLEN = "(?:geneigt|abfallend|hängend|gekippt)";
const LAST = "(?:abfällt|geneigt ist|hängt|kippt|abfallend ist|wegfällt|sich neigt|wegkippt|wegläuft|geneigt)";
const TAIL = "(?! (?:links|rechts|hinten|vorne|(?:und )?(?:in|aus) (?:den|dem|das) (?:bunker|wasser|teich|bach)))";
const NOMINATIVE = "(?<!(?:dem|des|zu|von|der|vor|hinter) )";
const sloping = (what: string, kind: ClaimKind, first: number, rest: Partial<ClaimPattern> = {}): ClaimPattern[] => [
  make(kind, `${what} ${FALLS}(?: {not})?${HOW} (?<way_${first}>${WAY})(?: {not})?${TAIL}`, rest),
  make(
    kind,
    `${what} (?:ist|verläuft|liegt)(?: {not})?${HOW} (?<way_${first + 1}>${WAY})(?: hin)?${HOW} ${FALLEN}`,
    rest,
  ),
  make(
    kind,
    `${what}(?: ,)?(?: das| der| die)?${HOW} (?<way_${first + 2}>${WAY})(?: (?:hin|zu dem meer hin|zu dem meer|zu dem wasser))?${HOW} ${LAST}`,
    rest,
  ),
];

const SLOPE: readonly ClaimPattern[] = [
  ...sloping(`${NOMINATIVE}(?:grün|puttfläche|grünfläche|fläche)`, "green-slope", 950, {
    unless: /\bfairway (?:fällt|neigt|hängt|ist)\b/,
  }),
  make("green-slope", `${NOMINATIVE}grün [a-zäöüß ]{2,50} und ${FALLS}(?: {not})?${HOW} (?<way_960>${WAY})${TAIL}`),
  make(
    "green-slope",
    `grün (?:hat|besitzt|zeigt) (?:ein )?(?:(?:{degree}|spürbare|deutliche|leichte) )*(?:gefälle|hang)(?: {degree})? (?<way_961>${WAY})`,
  ),
  make("green-slope", `gefälle (?<way_966>von (?:vorne|hinten) nach (?:vorne|hinten))`, {
    unless: /(?<![a-zäöüß])(?:fairway|bahn|loch|gelände)(?![a-zäöüß])/,
  }),
  make("green-slope", `grün mit (?:(?:ein|{degree}|leichtem|starkem) )*gefälle (?<way_962>${WAY})`),
  // "Alles fällt von hinten nach vorne": only a green has a front and a back.
  make(
    "green-slope",
    `(?:es|alles|alle) ${FALLS}(?: {not})?${HOW} (?<way_967>von (?:vorne|hinten)(?: (?:links|rechts))? nach (?:vorne|hinten)(?: (?:links|rechts))?)`,
    { unless: /(?<![a-zäöüß])(?:fairway|bahn|loch|gelände)(?![a-zäöüß])/ },
  ),
  make(
    "green-slope",
    `${NOMINATIVE}(?:grün|fläche|puttfläche)(?: ,)? (?:das|die)${HOW} (?<way_968>(?:nach|zu) (?:hinten|vorne|links|rechts)(?: hin)? (?:(?:{degree}) )*ansteigt)`,
  ),
  make(
    "green-slope",
    `${NOMINATIVE}grün [a-zäöüß ]{2,60} und (?<way_969>steigt(?: (?:{degree}))* (?:nach|zu) (?:hinten|vorne|links|rechts))(?: hin)?(?: (?:{degree}))* an`,
  ),
  make(
    "green-slope",
    `${NOMINATIVE}(?:grün|fläche|puttfläche) (?<way_963>steigt(?: (?:{degree}))* (?:nach|zu) (?:hinten|vorne|links|rechts))(?: (?:hin|links|rechts))?(?: (?:{degree}))* an`,
  ),
  make("green-slope", `${FALLS} das grün(?: {not})?${HOW} (?<way_964>${WAY})${TAIL}`, {
    notAfter: /(?:^| )(?:links|rechts|(?:aus|out|von|hinter|vor|ab|bei|über|unter|neben|an) [^,]*)$/,
  }),
  ...sloping(`${NOMINATIVE}fairway`, "side-slope", 970, { unless: /\b(?:nach|zu) (?:vorne|hinten)\b/ }),
  make("side-slope", `${FALLS} (?:das|der) fairway(?: {not})?${HOW} (?<way_980>${WAY})`, {
    notAfter: /(?<![a-zäöüß])(?:vor|hinter|nach|neben|kurz|ab|bis)(?: [a-zäöüß_0-9]+){1,4}$/,
  }),
  make(
    "side-slope",
    `fairway (?:hat|besitzt) (?:ein )?(?:(?:{degree}|spürbare|deutliche|leichte) )*(?:gefälle|hang) (?<way_981>${WAY})`,
  ),
];

const ON_TOP =
  "(?:auf|an) (?:ein |sein )?(?:eigen |eigenen |natürlichen |klein |hoch )*(?:plateau|podest|kuppe|hügel|rücken|erhebung)";
/** Steps one walks on, and what lies in a fairway. */
const NOT_OF_GREEN = /(?<![a-zäöüß])(?:führen|führt|treppe|abschlag|weg|hinauf|fairway|clubhaus)(?![a-zäöüß])/;
const SHAPE: readonly ClaimPattern[] = [
  make("tiers", `(?:{no} )?(?:ein )?(?:(?:{degree}) )*(?:zweistufig|stufengrün)(?: (?:grün))?`, {
    number: 2,
    notAfter: /(?:^| )(?:nicht|kein|fast)$/,
  }),
  make("tiers", `grün ${IS} {not} (?:zweistufig|gestuft|geteilt)`, { number: 2 }),
  make(
    "tiers",
    `(?:{no} )?zwei (?:(?:{adjective}) ){0,2}(?:stufe|ebene|plateau|terrasse|niveau)(?! (?:hoch|tiefer|höher))`,
    { number: 2, unless: NOT_OF_GREEN, notAfter: /(?:^| )(?:oder|ein oder|bis)$/ },
  ),
  make("tiers", "(?:auf |die )?(?:ober|obere|oberen|unter|untere|unteren) (?:stufe|ebene|plateau|terrasse)", {
    number: 2,
    unless: /(?<![a-zäöüß])(?:fahne|steht|wenn|fairway|clubhaus|abschlag|parkplatz)(?![a-zäöüß])/,
  }),
  make("tiers", "einstufig grün|grün ist einstufig", { number: 2, denied: true }),
  make("tiers", "dreistufig|drei (?:stufe|ebene|plateau)", { number: 3 }),
  make("false-front", "(?:{no} (?:echt )?)(?:false|falsch|falsche) (?:front|vorderkante|vorderseit)", {
    inAdvice: true,
  }),
  make("false-front", "false front (?:hat|besitzt) (?:das grün|es) {not}"),
  make(
    "false-front",
    "(?:ein |die |mit ein |sein )?(?:(?:{adjective}) )?(?:false|falsch|falsche|falschen) (?:front|vorderkante)",
    { inAdvice: true, notAfter: /(?:^| )(?:kein|nicht|ohne)$/ },
  ),
  make(
    "green-raised",
    `(?:{not} |{no} )?(?:erhöht|aufgesetzt|hochgesetzt|erhöht liegend|hoch gelegen|überhöht)${BETWEEN} grün|plateaugrün`,
    { notAfter: /(?:^| )(?:nicht|kein|weniger|mehr|abschlag)$/ },
  ),
  make(
    "green-raised",
    `${GREEN} (?:ist|liegt|thront|sitzt|ruht|steht)(?: {not})? (?:(?:{degree}|hoch) )*(?:erhöht|hochgesetzt|aufgeschüttet|${ON_TOP})`,
    { notAfter: NOT_PART },
  ),
  make(
    "green-raised",
    `${GREEN} (?:ist|liegt)(?: {not})? (?:(?:{degree}) )*(?:höher als|über|oberhalb) (?:das |dem |des )?(?:fairway|umgebung|gelände|sein umgebung)`,
    { notAfter: NOT_PART },
  ),
  make("green-sunken", `(?:{not} |{no} )?(?:tief gelegen|versenkt|abgesenkt|eingesenkt)${BETWEEN} grün`),
  make(
    "green-sunken",
    `${GREEN} (?:ist|liegt|ruht|duckt sich|schmiegt sich|versteckt sich|sitzt)(?: {not})? (?:(?:{degree}|eingebettet|geschützt) )*in (?:ein |der |die )?(?:(?:{adjective}) ){0,2}(?:senke|mulde|kessel|grube|trichter)`,
    { notAfter: NOT_PART },
  ),
  make(
    "green-sunken",
    `${GREEN} (?:ist|liegt)(?: {not})? (?:(?:{degree}) )*(?:tief als|tiefer als|unterhalb|unter) (?:das |dem |des )?fairway`,
    { notAfter: NOT_PART },
  ),
  make(
    "tee-raised",
    "(?:{no} )?(?:von |auf )?(?:ein |der |dem |die |den )?(?:(?:{degree}) )*(?:erhöht|hoch|hoch gelegen|höher gelegen|erhöht liegend)(?: (?:,|und|gelegen|liegend|exponiert|exponierten))* abschlag(?!-)",
    { inAdvice: true, notAfter: /(?:^| )(?:nicht|kein|weniger|nächste)$/ },
  ),
  make(
    "tee-raised",
    "abschlag (?:ist|liegt|thront|steht|sitzt)(?: {not})? (?:(?:{degree}) )*(?:erhöht|hoch|exponiert)(?= *$| ,| und| über| auf| oben)",
  ),
  make(
    "tee-raised",
    "hoch (?:oben )?(?:über (?:dem|der|den) [a-zäöüß_0-9]+ |oben )?(?:liegt|thront|steht) (?:der|unser) abschlag",
  ),
];

export const GREEN_AND_TEE: readonly ClaimPattern[] = [...SHAPE, ...SLOPE, ...SIZE];
