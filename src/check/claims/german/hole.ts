/** How German speaks of a hole's way: up and down, bends, lengths, how it plays, what is seen. */
import type { ClaimKind } from "../claim.ts";
import type { ClaimPattern } from "../lexicon.ts";
import { phrase } from "../phrase.ts";
import { PARTS } from "./words.ts";

const make = (kind: ClaimKind, text: string, rest: Partial<ClaimPattern> = {}): ClaimPattern => ({
  kind,
  expression: phrase(text, PARTS),
  ...rest,
});

/** A few words of a clause: no comma, no denial. */
const SOME = (n: number): string =>
  `(?: (?!(?:nicht|kein|kaum|nie|links|rechts|seitlich|und|aber|ob)(?: |$))[a-zäöüß0-9_#-]+){0,${n}}?`;
const SMALL_GAME =
  /(?<![a-zäöüß])(?:putt|putten|puttet|putts|weg|rückweg|heimweg|fußweg|pfad|treppe|stufen|straße|feldweg|chip|chippen|chippt|lage|lie|stand|unterhalb der fahne|oberhalb der fahne|rollt|läuft der ball|ball (?:rollt|läuft))(?![a-zäöüß])/;
const SUBJECT =
  "(?:bahn|loch|par [345]|es|sie|fairway|gelände|annäherung|zweite schlag|zweite|dritte|schlag(?: in das grün| zu dem grün)?|drive|abschlag|weg|der boden)";
const NO_SIDE =
  "(?!.*(?:nach|von|zur) (?:links|rechts|hinten|vorne)|.*zu dem (?:meer|wasser|bach|teich|see)|.*zu der (?:see|bucht|seite|küste))";
const UP = "bergauf|bergan|aufwärts|hangaufwärts|hügelaufwärts|bergaufwärts";
/** "Bergab ist alles schnell" is of putts. */
const OTHER_WAY =
  /^ (?:ist|sind|wird|läuft|rollt|wirkt)(?![a-zäöüß])|^ (?:und|oder|noch|wie|als|oder auch|und dann|und wieder) (?:bergab|bergauf|abwärts|aufwärts|hinunter|hinauf|wieder)/;
const NO_SUBJECT =
  /(?:^| )(?:der|die|das|weder|ob|noch|mal|teils|schuss|blick|blickt man|sieht man|schaut man|hinauf und|auf und|ball|rollt|rollt es|läuft|kullert|putt|weiter|weg|pfad|wieder)$/;

const HEIGHT: readonly ClaimPattern[] = [
  make("uphill", `(?:{not} )?(?:(?:{degree}) ){0,2}(?:${UP})(?! (?:putt|liegend|bleiben|lassen))`, {
    unless: SMALL_GAME,
    notAfter: NO_SUBJECT,
    notBefore: OTHER_WAY,
  }),
  make("uphill", `(?<!(?:dem|des|den) )${SUBJECT} (?:steigt|steigen)${NO_SIDE}${SOME(6)} an(?= *$| ,| und)`, {
    unless: SMALL_GAME,
  }),
  make("uphill", "{subject} klettert", { unless: SMALL_GAME }),
  make(
    "uphill",
    `steigt (?:die|das|der|es)(?: (?:bahn|loch|fairway|gelände))?${NO_SIDE}${SOME(7)} an(?= *$| ,| und)`,
    {
      unless: /steigt das grün|\bputt/,
      notAfter:
        /(?:hinter (?:dem|der|den) [a-zäöüß_0-9]+|dahinter|davor|links|rechts|(?:links|rechts) (?:von|neben) (?:dem|der) [a-zäöüß_0-9]+|daneben|seite|rand|beidseits)$/,
    },
  ),
  make("uphill", `${SUBJECT}${SOME(5)} ansteigt`, { unless: SMALL_GAME }),
  make(
    "uphill",
    "geht(?: es| die bahn| das loch)?(?: (?:{degree}|\\d+ metres|ein paar metres|zehn metres|zwölf metres))* (?:hinauf|nach oben|den hang hinauf|den hügel hinauf)",
    { unless: SMALL_GAME },
  ),
  make(
    "uphill",
    "(?:grün|fahne) (?:liegt|ist) (?:(?:{degree}|ein gut stück|ein stück|hoch|\\d+ metres|zehn metres) )*(?:oberhalb|über|höher als) (?:des |dem |der |von dem )?abschlag",
  ),
  make("uphill", "(?:ansteigend|stetig ansteigend) (?:bahn|loch|par [345])", { notAfter: /(?:^| )(?:nicht|kein)$/ }),
  make(
    "downhill",
    `(?:{not} )?(?:(?:{degree}) ){0,2}(?:bergab|abwärts|hangabwärts|talwärts|bergabwärts)(?! (?:putt|liegend|bleiben|lassen))`,
    { unless: SMALL_GAME, notAfter: NO_SUBJECT, notBefore: OTHER_WAY },
  ),
  make(
    "downhill",
    "geht(?: es| die bahn| das loch)?(?: (?:{degree}|\\d+ metres|ein paar metres|zehn metres|zwölf metres|von dem abschlag))* (?:hinunter|hinab|nach unten|den hang hinunter)",
    { unless: SMALL_GAME },
  ),
  make(
    "downhill",
    `(?<!(?:dem|des|den) )(?:bahn|loch|par [345]|annäherung|zweite schlag|zweite|schlag(?: in das grün| zu dem grün)?) (?:fällt|senkt sich)${NO_SIDE}${SOME(6)} ab(?= *$| ,| und)`,
    { unless: SMALL_GAME },
  ),
  make(
    "downhill",
    "(?:grün|fahne) (?:liegt|ist) (?:(?:{degree}|\\d+ metres|zehn metres|tief) )*(?:unterhalb|unter|tief als|tiefer als) (?:des |dem |der |von dem )?abschlag",
  ),
  make("downhill", "(?:abfallend|stetig abfallend) (?:bahn|loch|par [345])", { notAfter: /(?:^| )(?:nicht|kein)$/ }),
  make("level", "(?:über|auf|durch|in) (?:(?:{degree}) )*(?:eben|flach) (?:gelände|boden|land|grund)"),
  make(
    "level",
    `{subject} (?:ist|verläuft|liegt|bleibt|spielt sich)(?: (?:hier|auch|dabei|fast|nahezu))*(?: {not})? (?:(?:{degree}) )*(?:eben|flach)(?= *$| ,| und| wie ein)(?! , (?:wie|weil|dass|was|wo|als))`,
    { unless: /\b(?:grün|lage|fast)\b/ },
  ),
  make(
    "level",
    "(?:{not} )?(?:durchgehend|völlig|komplett|durchweg|ganz|vollkommen|absolut|von anfang bis ende|von dem abschlag bis zu dem grün) (?:eben|flach)(?= *$| ,| und)",
    { unless: /\bgrün (?:ist|liegt)\b|\b(?:lage|fairway)\b/, notAfter: /(?:^| )(?:nicht|grün ist)$/ },
  ),
  make(
    "level",
    "(?:ein |dies |die |das )?(?:(?:{degree}) )*(?:eben|flach)(?: (?:und|,) (?:gerade|schnurgerade|kurz|lang|breit))* (?:bahn|loch|par [345]|annäherung|spielbahn|zweite schlag)",
    { notAfter: /(?:^| )(?:nicht|kein|fast)$/ },
  ),
  make("level", "(?:^|(?<=, ))(?:eben|flach) wie ein", { unless: /\bgrün\b/ }),
  make("level", "eben und (?:gerade|schnurgerade) (?:liegt|verläuft|ist|führt) (?:die|das)"),
  make(
    "level",
    "(?:ohne|kein) (?:nennenswert |nennenswerten |nennenswerte |groß |jeden |jed )?(?:höhenunterschied|anstieg)(?= *$| ,| und)",
  ),
];

const TURNS = "(?:biegt|knickt|dreht|schwenkt|kurvt|schwingt|krümmt sich|windet sich|wendet sich)";
const AROUND = "(?: (?:ab|weg|herum|um|ein))?";
const NOUN_TURN = "(?:dogleg|knick|bogen|kurve|biegung)";
/** What else turns: its bend is not the hole's. */
const OTHER_BENDS =
  /(?:^| )(?:bach|weg|straße|feldweg|graben|mauer|ufer|küste|wind|ball|putt|zaun|grenze|ausgrenze|fluss|grün|strand|drive|draw|fade|pfad)(?: [a-zäöüß]+){0,4}$/;
const BALL = /(?<![a-zäöüß])(?:ball|fade|draw|slice|hook|putt|wind|spieler|weg|pfad|feldweg|straße|bach)(?![a-zäöüß])/;

const BENDS: readonly ClaimPattern[] = [
  make(
    "two-bends",
    `doppeldogleg|doppelt dogleg|zweifach dogleg|s- kurve|s kurve|zwei (?:(?:{adjective}) ){0,2}${NOUN_TURN}|zweimal (?:die richtung|ab|nach)|(?:wechselt|ändert) zweimal`,
    { notAfter: /(?:^| )(?:kein|nicht|fast|ball)$/ },
  ),
  make(
    "two-bends",
    `(?:erst|zuerst|zunächst)(?: [a-zäöüß]+){0,3} (?:nach )?(?:links|rechts)(?: [a-zäöüß]+){0,3} ?,? (?:und )?(?:dann|danach|später|anschließend)(?: (?:wieder|wiederum|noch))? (?:nach )?(?:links|rechts)`,
    { unless: BALL },
  ),
  make(
    "bends",
    `{subject}(?: (?:hier|dann|da|also|sich))*(?: {not})? ${TURNS}(?: {not})?${SOME(6)} (?:nach )?{lat}${AROUND}`,
    { unless: /\b(?:ball|putt|wind)\b/, notAfter: OTHER_BENDS },
  ),
  make("bends", `(?<!(?:dem|des) )fairway ${TURNS}${SOME(5)} (?:nach )?{lat}${AROUND}`, {
    unless: /\b(?:ball|putt|wind)\b/,
  }),
  make("bends", `${TURNS} (?:die|das|dies|sie|es)(?: (?:bahn|loch|fairway))?${SOME(5)} (?:nach )?{lat}${AROUND}`, {
    notAfter: /(?:^| )(?:bach|weg|straße|ball)$/,
  }),
  make(
    "bends",
    `(?:{no} )?(?:(?:{adjective}|{degree}) ){0,2}${NOUN_TURN} (?:nach |nach der |geht nach |führt nach |führt |verläuft nach |geht )?{lat}(?! (?:ist|liegt|lauert|wartet|steht|von|des|neben|vor|hinter|vorbei|abkürzen|halten|anspielen))`,
    { unless: BALL, notAfter: OTHER_BENDS },
  ),
  make("bends", `(?:{no} )?(?:(?:{adjective}|{degree}) ){0,2}{lat} ${NOUN_TURN}`, {
    unless: BALL,
    notAfter: /(?:^| )(?:bach|weg|straße|ball|von|in dem|an dem|nach dem|hinter dem)$/,
  }),
  make("bends", `(?:macht|beschreibt|vollzieht|nimmt)${SOME(4)} (?:bogen|knick|kurve|biegung|schwenk) nach {lat}`, {
    unless: BALL,
    notAfter: OTHER_BENDS,
  }),
  make(
    "bends",
    "(?:geht|führt) (?:es )?(?:(?:{degree}|erst|zunächst|dann) )*(?:nach )?{lat} (?:herum|um (?:den|die|das|ein))",
    { unless: BALL, notAfter: OTHER_BENDS },
  ),
  make("bends", `{subject} (?:geht|führt|verläuft|zieht sich)${SOME(3)} (?:nach )?{lat} (?:um|herum)`, {
    unless: BALL,
  }),
  make(
    "straight",
    "(?:{no} |{not} )?(?:ein |dies |die |das |eine )?(?:(?:{degree}|lang|kurz|eben|flach|,|und|schön|klassisch|einfach|ehrlich) )*(?:gerade|schnurgerade) (?:(?:,|und|lang|kurz|eben|flach|ehrlich) )*(?:loch|bahn|par [345]|angelegenheit|spielbahn|vierer)",
    { notAfter: /(?:^| )(?:nicht|kein|fast|nahezu)$/ },
  ),
  make(
    "straight",
    "{subject} (?:ist|verläuft|liegt|führt|geht|läuft|zieht sich)(?: (?:hier|fast nicht|vor uns))*(?: {not})?(?: (?:{degree}|eben und|topfeben und|flach und))* (?:gerade(?= *$| ,| und(?! (?:jetzt|hier|deshalb|darum|bei|dann|wenn)))|(?:schnurgerade|geradeaus)(?= *$| ,| und| auf| zu| bis| von))(?! , (?:wenn|weil|wo|was|bei|gegen|im))",
    { unless: /\bfast\b/ },
  ),
  make(
    "straight",
    "(?:gerade|schnurgerade) (?:ist|verläuft|liegt|führt) (?:sie|es|die bahn|das loch|die [a-zäöüß]+-? bahn)(?: {not})?",
  ),
  make("straight", "{no} (?:dogleg|knick|kurve|biegung)(?= *$| ,| und)"),
  make("straight", "(?:schnurgerade|geradeaus)(?= *$| ,| und (?:eben|flach))", {
    unless: BALL,
    notAfter:
      /(?:^| )(?:nicht|fast|nahezu|drive|schlag|spielen sie|mauer|weg|grenze|ausgrenze|verläuft|läuft|grün|zielen|blick|grün zu|spielt)$/,
  }),
];

const WEATHER = /(?<![a-zäöüß])(?:fahne|wind|böe|regen|nass|nasse|kälte|winter|sommer|trocken|trockene)(?![a-zäöüß])/;
const CLUB_NUMBER = "(?<num_910>ein halb|halb|anderthalb|ein ganz|ein gut|ein|zwei|drei)";
const EXACT = "(?:nur |genau |stolz |volle |voll |gut |rund |etwa |knapp |lediglich |immerhin )*";

const LENGTH: readonly ClaimPattern[] = [
  make("longest", "(?:das |die |unser |dies )längste (?:loch|bahn|par (?<num_900>[345])|spielbahn)(?: {not})?", {
    notAfter: /(?:^| )(?:nicht|ein|zu|neben|nach|als|wie|fast|zweite|dritte|nur|einst)$/,
    unless: /\b(?:ein der|zu den|zweit|nach)\b/,
  }),
  make(
    "longest",
    "längste (?:loch|bahn)(?: (?:des platz|auf dem platz|der runde))? ist (?:es|sie|dies)(?: bahn| loch)? {not}",
    { unless: /\b(?:ein der|zu den|zweit)\b/ },
  ),
  make("longest", "(?:das |die )längste der par (?<num_902>[345])", {
    notAfter: /(?:^| )(?:nicht|ein|zu|neben|nach|als|wie|fast|zweite|dritte|nur|einst)$/,
  }),
  make("shortest", "(?:das |die )kürzeste der par (?<num_903>[345])", {
    notAfter: /(?:^| )(?:nicht|ein|zu|neben|nach|als|wie|fast|zweite|dritte|nur|einst)$/,
  }),
  make("shortest", "(?:das |die |unser |dies )kürzeste (?:loch|bahn|par (?<num_901>[345])|spielbahn)(?: {not})?", {
    notAfter: /(?:^| )(?:nicht|ein|zu|neben|nach|als|wie|fast|zweite|dritte|nur|einst)$/,
    unless: /\b(?:ein der|zu den|zweit|nach)\b/,
  }),
  make(
    "par",
    "(?:^|(?<=(?:ein|dies|,|das) ))(?:(?!als |wie |längste |kürzeste |schwerste |leichteste |einzig |erste |letzte |ander )(?:{adjective}) )*(?:\\d+ metres lang )?(?:(?:{adjective}) )?par {num}(?! (?:und|oder) par| spielen| retten| sichern| machen|s| davor| danach| zuvor| vorher| nebenan| dahinter| loch (?:wie|sind|haben)| (?:wechseln|sind|haben))",
    {
      unless:
        /(?<![a-zäöüß])(?:wie ein|fast ein|eher ein|beinahe|als par|als ein|längste|kürzeste|schwerste|schwierigste|leichteste|einzig|erste|letzte|nächste|ander|wäre|retten|rettet|zu dem par|von den|all|die par|der par|den par|netto|sichert|sichern|zufrieden|gut für|für ein|schlag über|jed|beide)(?![a-zäöüß])/,
    },
  ),
  make(
    "stroke-index",
    "(?:vorgabe|stroke index|handicap|index)(?: (?:ist|nummer|von))? (?<num_921>\\d{1,2})(?!\\.| bis| und| oder)",
    { notAfter: /(?:^| )(?:mit|ab|bis|für|unter|über|spieler|golfer|von|stroke|wer|einem)$/ },
  ),
  make("stroke-index", "(?:loch|bahn)(?: [a-zäöüß]+){0,3} mit (?:vorgabe|stroke index|handicap) (?<num_922>\\d{1,2})"),
  make("length", "(?<num_923>\\d{3}) {unit} lang (?:(?:{adjective}) ){0,2}(?:loch|bahn|par [345]|spielbahn)", {
    notAfter: /(?:^| )(?:über|unter|als|fast|knapp)$/,
  }),
  make(
    "length",
    `{subject} (?:ist|misst|hat|zählt|bringt es auf)(?: (?:hier|von hinten|von weiß|von gelb))* ${EXACT}(?<num_924>\\d{3}) {unit}(?: lang| länge)?(?! (?:bis|vor|hinter|von|breit|tief|über|unter|entfernt|zu|nach|carry|höher|weg|weiter|länger|kürzer|in das|auf das))`,
    { unless: /\b(?:drive|bleiben|bleibt|noch|bunker|bach|teich)\b/ },
  ),
  make(
    "length",
    `mit (?:(?:ihr|sein|nur|stolz|ganz) )*(?<num_925>\\d{3}) {unit}(?: länge)? (?:ist|gehört|zählt|bleibt) (?:es|sie|die bahn|das loch|dies)`,
  ),
  make(
    "length",
    "par [345](?: (?:von|mit|über|,))+ (?:nur |genau |rund )?(?<num_926>\\d{3}) {unit}(?= *$| ,| und| länge)",
  ),
  make(
    "plays-longer",
    "(?:spielt (?:es |sie )?sich|spielen sich)(?: {not})?(?: (?:{degree}))* länger(?! (?:als (?:es|sie|man|gedacht|er)|auf|für))",
    { unless: WEATHER },
  ),
  make(
    "plays-longer",
    "spielt (?:es |sie )?sich(?: {not})?(?: (?:{degree}))* länger ,? als (?:die|auf der|es auf der) (?:scorekarte|karte|zahl)",
    { unless: WEATHER },
  ),
  make(
    "plays-shorter",
    "(?:spielt (?:es |sie )?sich|spielen sich)(?: {not})?(?: (?:{degree}))* kürzer(?! (?:als (?:es|sie|man|gedacht|er)|auf|für))",
    { unless: WEATHER },
  ),
  make(
    "clubs-more",
    `${CLUB_NUMBER} schläger (?:mehr|länger)(?! (?:oder|als (?:zu|bei|an|auf|von|für|nach|die|der|in)|um|zu der|nach hinten))`,
    { unless: WEATHER, notAfter: /(?:^| )(?:bis zu|lieber|mindestens|oft|besser)$/ },
  ),
  make(
    "clubs-more",
    `${CLUB_NUMBER.replace("910", "912")} schläger (?:mehr|länger) als (?:auf der (?:karte|scorekarte)|die (?:karte|scorekarte|zahl)|angegeben)`,
    { unless: WEATHER, inAdvice: true },
  ),
  make(
    "clubs-less",
    `${CLUB_NUMBER.replace("910", "911")} schläger (?:weniger|kürzer)(?! (?:oder|als (?:zu|bei|an|auf (?!der (?:karte|scorekarte))|von|für|nach|die|der|in)|um))`,
    { unless: WEATHER, inAdvice: true, notAfter: /(?:^| )(?:bis zu|lieber)$/ },
  ),
  make("three-shots", "(?:(?:{no}|{not}) )?(?:ein )?(?:echt |wahr |richtig )*drei schlag loch"),
  make("three-shots", "drei (?:gut )?schlag (?:braucht|brauchen|benötigt|verlangt|sind nötig|bis zu dem grün)"),
  make(
    "reachable-in-two",
    "(?:{not} )?(?:mit|in) (?:(?:zwei|2) (?:(?:{adjective}) ){0,2}schlag|zwei|dem zweite (?:schlag)?) ?(?:gut |durchaus |sicher |leicht )?(?:{not} )?(?:erreichbar|zu erreichen|anzugreifen|zu schaffen)",
    { unless: /\b(?:bunker|bach|teich|rückenwind|wind|verlockt|versucht)\b/ },
  ),
  make(
    "reachable-in-two",
    "(?:niemand|keiner|kaum jemand|kaum einer) (?:erreicht|schafft)(?: [a-zäöüß]+){0,2} (?:mit|in) (?:zwei|2)(?: schlag)?",
    { denied: true, unless: /\bwind\b/ },
  ),
  make(
    "reachable-in-two",
    "mit (?:zwei|2) (?:(?:{adjective}) ){0,2}schlag (?:ist man|sind sie|liegt man|kommt man|erreicht man)(?: {not})? (?:auf (?:dem|das)|das|da|an dem) ?grün",
    { unless: /\bwind\b/ },
  ),
  make(
    "drivable",
    "(?:{not} )?(?:driveable|drivebar)(?:s|e|es)?|(?:mit (?:dem|ein) (?:(?:{adjective}) )?drive|von dem abschlag(?: aus)?|mit dem abschlag|mit ein schlag) (?:{not} )?(?:erreichbar|zu erreichen)",
    { unless: /\b(?:bunker|bach|teich|wasser|graben|rückenwind|wind)\b/ },
  ),
];

const FROM_TEE = "(?:von (?:dem|jed|all|kein) abschlag(?: aus)?)";
const FROM_FAIRWAY =
  "(?:(?:von|auf) (?:dem|der) (?:fairway|landezone|mitte)(?: aus)?|bei (?:dem|der) (?:zweite schlag|annäherung|zweite)|für (?:den|die) (?:zweite schlag|annäherung))";
const TARGET = "(?:(?:das |die )?(?:ganz |gesamt )?(?:grün|fahne|puttfläche))";
const LANDING = "(?:(?:die |das |der |den )?(?:ganz |gesamt )?(?:fairway|landezone|bahn|loch))";
const HIDDEN =
  "(?:nicht (?:zu sehen|einsehbar|sichtbar|zu erkennen|einzusehen)|verdeckt|verborgen|versteckt|unsichtbar|blind)";
const VISIBLE =
  "(?:(?:gut|vollständig|voll|komplett|ganz|klar|frei|bestens|deutlich|offen) )?(?:zu sehen|einsehbar|sichtbar|zu erkennen|in dem blick|in sicht)";
const PARTLY =
  /(?<![a-zäöüß])(?:teilweise|halb|teil|teils|nur|oberste|spitze|hälfte|fast|kaum|größtenteils|rand|nahezu|hinter|teil des)(?![a-zäöüß])/;
const IS = "(?:ist|liegt|bleibt|sind)";
const SEES = "(?:sieht man|sehen sie|sieht|überblickt man|überblicken sie|hat man)";
const DEGREES = "(?: (?:{degree}))*";

const seen = (
  kind: ClaimKind,
  what: string,
  from: string,
  place: ClaimPattern["place"],
  needsFrom: boolean,
): ClaimPattern[] => {
  const optional = needsFrom ? ` ${from}` : `(?: ${from})?`;
  const rest = { unless: PARTLY, ...(place === undefined ? {} : { place }) };
  return [
    make(kind, `${what} ${IS}${optional}${DEGREES} ${HIDDEN}`, rest),
    make(kind, `${what} ${IS} (?:{degree} )?${HIDDEN} ${from}`, rest),
    make(kind, `${from} ${IS} ${what}${DEGREES} ${HIDDEN}`, rest),
    make(kind, `${what} ${IS}${optional}${DEGREES} ${VISIBLE}`, { ...rest, denied: true }),
    make(kind, `${from} ${IS} ${what}${DEGREES} ${VISIBLE}`, { ...rest, denied: true }),
    make(kind, `${what} ${SEES}(?: ${from})? nicht(?= *$| ,)`, { ...rest, unless: PARTLY }),
    make(kind, `${from} ${SEES} ${what} nicht`, rest),
    make(kind, `${SEES} ${what} ${from} nicht`, rest),
    make(kind, `${from} ${SEES} ${what}(?= *$| ,| und)`, { ...rest, denied: true }),
  ];
};

const SIGHT: readonly ClaimPattern[] = [
  make("blind-tee-shot", "(?:{no} |{not} )?(?:ein |der |den )?(?:(?:{degree}) )*blind (?:abschlag|drive)", {
    unless: PARTLY,
    inAdvice: true,
  }),
  make(
    "blind-tee-shot",
    `(?<!von dem )(?:abschlag|drive) (?:ist|erfolgt|bleibt|spielt sich|geht)(?: {not})?${DEGREES} blind`,
    { unless: PARTLY },
  ),
  make("blind-tee-shot", "blind (?:ist|erfolgt) (?:der |unser )?(?:abschlag|drive)(?: {not})?", { unless: PARTLY }),
  make("blind-tee-shot", `{subject} ist ${FROM_TEE}(?: {not})?${DEGREES} blind`, { unless: PARTLY }),
  make("blind-tee-shot", `(?:{not} )?blind ${FROM_TEE}|${FROM_TEE}(?: {not})? blind`, { unless: PARTLY }),
  make("blind-tee-shot", `(?:landezone|landefläche) ${IS}${DEGREES} ${HIDDEN}`, { unless: PARTLY, place: "tee-shot" }),
  ...seen("blind-tee-shot", LANDING, FROM_TEE, "tee-shot", true),
  ...seen("blind-tee-shot", TARGET, FROM_TEE, "green", true),
  make(
    "blind-tee-shot",
    `(?:verdeckt|verbirgt|versteckt|verdecken|verbergen) (?:das |die |den )?(?:grün|landezone|fairway) ${FROM_TEE}|${FROM_TEE}(?: aus)? (?:verdeckt|verbirgt|verdecken)(?: ein| der| die| das)?(?: [a-zäöüß]+){1,2} (?:das|die|den) (?:ganz )?(?:grün|landezone|fairway)(?= *$| ,| und)`,
    { unless: PARTLY },
  ),
  make(
    "blind-approach",
    "(?:{no} |{not} )?(?:ein |der |die |den )?blind (?:annäherung|zweite(?: schlag)?|dritte(?: schlag)?|schlag (?:in|auf|zu) (?:das|dem) grün|grün)",
    { unless: PARTLY },
  ),
  make(
    "blind-approach",
    `(?:annäherung|zweite schlag|zweite|schlag in das grün|schlag zu dem grün|schlag auf das grün) (?:ist|erfolgt|bleibt|geht|spielt sich)(?: {not})?${DEGREES} blind`,
    { unless: PARTLY },
  ),
  ...seen("blind-approach", TARGET, FROM_FAIRWAY, undefined, true),
];

const FAIRWAY_NOUN = "(?:fairway|landezone)";
const TIGHT = "(?:eng|schmal|engste|schmalste)";
const OPEN = "(?:breit|weit|großzügig|geräumig|breitest)";
const fairwayIs = `(?<!(?:dem|des|wo das) )${FAIRWAY_NOUN} (?:hier |selbst )?(?:ist|verläuft|präsentiert sich)(?: {not})?(?: (?:hier|auch|dabei))?${DEGREES}`;
const FAIRWAY: readonly ClaimPattern[] = [
  make(
    "fairway-split",
    "(?:{no} )?(?:ein )?(?:geteilt|doppelt) fairway|doppelfairway|fairway (?:ist|wird) (?:in zwei (?:hälfte|teile|teil) )?geteilt|fairway teilt sich",
  ),
  make(
    "fairway-narrow",
    `(?:{not} |{no} )?(?:ein |das |der |den |dem )?(?:(?:{degree}) )*${TIGHT}(?: (?:,|und|hügelig|hügelige|wellig|geneigt))* (?:fairway|landezone)(?! bunker)(?!-)`,
    { notAfter: /(?:^| )(?:zu|mehr|weniger|als ein|wo)$/ },
  ),
  make("fairway-narrow", `${fairwayIs} ${TIGHT}(?= *$| ,| und)(?! , (?:wo|bis|bevor|ehe|solange|aber nur|aber erst))`),
  make(
    "fairway-wide",
    `(?:{not} |{no} )?(?:ein |das |der |den |dem )?(?:(?:{degree}) )*${OPEN}(?: (?:,|und|hügelig|hügelige|wellig|geneigt))* (?:fairway|landezone)(?! bunker)(?!-)`,
    { notAfter: /(?:^| )(?:zu|mehr|weniger|als ein|wo|nicht gerade)$/ },
  ),
  make("fairway-wide", `${fairwayIs} ${OPEN}(?= *$| ,| und)(?! , (?:wo|bis|bevor|ehe|solange|aber nur|aber erst))`),
  make("fairway-wide", "von dem abschlag (?:ist|gibt es|hat man|haben sie) (?:reichlich|viel) platz"),
  make(
    "fairway-wide",
    "(?<!(?:dem|des) )fairway (?:bietet|hat|lässt) (?:viel|reichlich|ein menge|ausreichend viel) (?:platz|breite|raum)",
  ),
];

const CARRIED = "(?:[a-zäöüß]+- )?(?:{water}|{gorse}|{bunker}|schlucht|rough)";
const CARRY: readonly ClaimPattern[] = [
  make(
    "forced-carry",
    `(?:abschlag|drive|ball von dem abschlag) muss(?: (?:hier|immer|in jed fall))? (?:über )?(?:das |den |die |der |ein )${CARRIED}(?: [a-zäöüß]+){0,2} (?:getragen|fliegen|geschlagen|überfliegen|überspielen|tragen|gespielt|überwinden|hinweg)`,
    { inAdvice: true },
  ),
  make(
    "forced-carry",
    "(?:die|das|der) {water} muss (?:(?:hier|immer|von jed abschlag|von all abschlag|auf jed fall|in jed fall|ganz) )?(?:getragen|überflogen|überspielt) werden",
    { unless: /(?<![a-zäöüß])(?:zweite|annäherung|grün|dritte|vorlegen)(?![a-zäöüß])/ },
  ),
  make("forced-carry", "{no} carry(?= *$| ,| und| ist| von| nötig)", { inAdvice: true }),
  make("forced-carry", "carry ist (?:von |hier )?(?:(?:kein abschlag|{not}) )(?:nötig|verlangt|erforderlich)", {
    denied: true,
  }),
  make(
    "forced-carry",
    "zwischen (?:dem )?abschlag und (?:dem )?(?:grün|fairway) (?:liegt|ist|gibt es) (?:nichts als|nur) {water}",
  ),
];

const WAY: readonly ClaimPattern[] = [
  make(
    "runs",
    "{subject} (?:verläuft|führt|spielt|spielt sich|zeigt|geht|läuft|zieht sich|weist)(?: (?:genau|exakt|fast|direkt|etwa|ungefähr|stur|wieder|zurück|immer|gerade|schnurgerade))* (?:nach|richtung|in richtung|gen) {compass}(?! wind)",
  ),
  make("runs", "(?<=, )(?:genau|exakt) nach {compass}(?= *$| ,)", {
    needsBefore: /(?<![a-zäöüß])(?:bahn|loch)(?: sich)? (?:verläuft|führt|zeigt|spielt|geht|läuft)(?![a-zäöüß])/,
  }),
  make(
    "along-sea",
    "(?:an (?:der|dem) {sea} entlang|entlang (?:der|des|an der|an dem) {sea}|(?:dem|der|das|die) {sea} entlang|längs (?:der|des) {sea}|direkt an (?:der|dem) {sea})",
    {
      notAfter: /(?:^| )(?:weg|pfad|straße|feldweg|mauer|zaun|bunker|dünen|ginster)(?: [a-zäöüß]+){0,2}$/,
      unless: /(?<![a-zäöüß])(?:bunker|weg|pfad|straße|feldweg|zaun|mauer|wanderer|teich|wind)(?![a-zäöüß])/,
    },
  ),
];

export const HOLE: readonly ClaimPattern[] = [...BENDS, ...LENGTH, ...SIGHT, ...FAIRWAY, ...CARRY, ...WAY, ...HEIGHT];
