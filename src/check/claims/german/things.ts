/** How German says where a bunker, water, out of bounds and the like are. */
import type { ThingClass } from "../../../course/kinds.ts";
import type { ClaimKind } from "../claim.ts";
import type { ClaimPattern } from "../lexicon.ts";
import { phrase } from "../phrase.ts";
import { PARTS } from "./words.ts";

/** What of the hole a side may be said of; "links vom Bunker" is no place of the hole. */
const OF_HOLE =
  "(?:ganz |gesamt |vordere |hintere )?(?:grün|fairway|bahn|loch|linie|abschlag|fahne|landezone|eingang|spielbahn)";
const OF = ` (?:(?:von|neben|bei) (?:dem|der|den)|an (?:dem|der)|des|der|neben das) ${OF_HOLE}`;
/** Nor is it a place where something else follows that it can be said of. */
const NOT_OF_ELSE = `(?! (?:von|neben|des|der|an|bei|um|vorbei|herum|halten|bleiben|zu(?! (?:lang|kurz|weit)))\\b(?! (?:dem |der |den |das )?${OF_HOLE}))`;
const NEAR = "(?:(?:dicht|direkt|unmittelbar|knapp|kurz|gleich|weit|etwas|ganz|nah|nahe|leicht) )?";

/** "Links vor dem Grün", "hinter dem Grün rechts". */
const ABOUT_GREEN = [
  `${NEAR}(?<cdep_800>vor|hinter) (?:dem|das) grün(?: ,)? ${NEAR}(?<clat_800>links|rechts)`,
  `(?<clat_804>links|rechts)(?: ,)? ${NEAR}(?<cdep_804>vor|hinter) (?:dem|das) grün`,
  "(?<dep_824>vor|hinter) und (?<lat_824>links|rechts) (?:neben|von) dem grün",
  "(?<lat_825>links|rechts) und (?<dep_825>vor|hinter) dem grün",
].join("|");
/** A side that may be said of something: of the hole, or it is none. */
const OF_SOMETHING = [
  "(?<cdep_801>vorne(?!.* metres)(?<! metres .*)|hinten|kurz und|lang und|kurz|lang) (?<clat_801>links|rechts)",
  "(?<clat_802>links|rechts) (?<cdep_802>vorne|hinten|kurz|lang)(?! (?:vor|hinter)\\b)",
  "an (?:der|dem) (?<cdep_803>vordere|hintere) (?<clat_803>linke|rechte) (?:ecke|seite|rand|kante|flanke)",
  "(?:auf |zu |an )?{both}",
  "(?<lat_810>links|rechts)",
  "(?:auf|an|von|zu|entlang|in) (?:der|die|ihr|unser|dem) (?:ganz |gesamt )?(?<lat_811>linke|rechte) (?:seite|flanke|hälfte|rand|kante)",
  "zu (?:der |ihr |unser )(?<lat_812>linke|rechte)(?! (?:seite|hand))",
  "(?:zu )?(?<lat_813>linke|rechte) hand",
].join("|");
const LATERAL = `${NEAR.replace("kurz|", "")}(?:${OF_SOMETHING})(?:${OF}| davon(?= *$| ,| ist| liegt| und))?${NOT_OF_ELSE}`;
const DEP = [
  `${NEAR}(?<!metres )(?<dep_820>vor|hinter) (?:dem |das |des )?grün(?! (?:liegend|gelegen) (?:rough|gelände|hang))(?!-)`,
  "(?<dep_821>vorne(?:(?=.*(?:grün|hinten))|(?<=(?:grün|hinten).*))|hinten)(?: an dem grün)?(?= *$| ,| und| oder| liegt| lauert| wartet| ist| fängt| sammelt| ein\\b)",
  "an dem (?<dep_822>eingang)",
  "über das grün (?<dep_826>hinaus)",
  "jenseits des (?<dep_827>grün)",
  "(?<!(?:ist|sind|bleibt|wirkt|ganz|noch|auch|schon|etwas|weit|sehr|zu) )(?<dep_823>kurz|lang)(?= *$| ,)",
].join("|");
const RAW_SIDE = `(?:${ABOUT_GREEN}|${LATERAL}|${DEP})`;

/** Groups with numbers of their own may stand but once in an expression: each use gets further ones. */
let uses = 0;
function again(source: string): string {
  uses += 1;
  return source.replace(
    /\(\?<([a-z]+)_(\d+)>/g,
    (_, name: string, number: string) => `(?<${name}_${Number(number) + 100 * uses}>`,
  );
}
const side = (): string => again(RAW_SIDE);
/** Where "von" follows, by which something is guarded: "rechts von einem Bunker bewacht". */
const GUARDED_SIDE = `(?:(?<cdep_830>vorne|hinten) (?<clat_830>links|rechts)|(?<clat_831>links|rechts) (?<cdep_831>vorne|hinten)|{lat}(?: und {lat})?|(?<dep_832>vorne|hinten)|{both}|auf {both})`;
/** A second side, joined to the first. */
const ALSO = `(?:(?<cdep_840>vorne|hinten|kurz|lang) (?<clat_840>links|rechts)|(?<clat_841>links|rechts) (?<cdep_841>vorne|hinten)|(?<clat_842>links|rechts) (?<cdep_842>vor|hinter) dem grün|(?:auf der )?(?<lat_840>links|rechts|linke|rechte)(?: seite)?|(?<dep_840>vorne|hinten|kurz|lang)|(?<dep_841>vor|hinter) dem grün)(?:${OF}| davon)?${NOT_OF_ELSE}`;
/** Behind a thing: "Bunker hinten, und rechts ein Hang" has what is on the right begin anew. */
const NO_OTHER =
  "(?! (?:ein|kein|der|die|das|den|dem|ist|liegt|gibt|wartet|lauert|steht|fällt|geht|wird|verläuft|droht|beginnt|kommt|hat|bleibt)(?![a-zäöüß]))";
const sides = (end = ""): string => `${side()}(?:(?: ,)? (?:und|sowie|wie auch|oder) (?:auch )?${again(ALSO)}${end})?`;

const FILL = (n: number): string => `(?: (?:{adverb})){0,${n}}`;
const WHOM = "(?: (?:{us}))?(?: (?:{object}))?";

/** Two adjectives with a comma between: "ein tiefer, tückischer". */
const ADJECTIVES = "(?:(?:{adjective})(?: ,)? ){0,3}";
const noun = (kind: string): string =>
  `(?:(?:{no} |{num} |{det} )+${ADJECTIVES}|(?:(?:tief|klein|groß|breit|hoch|dicht|alt|schmal|weiter|einzeln|einzelne|einzelner|mächtig|tückisch) )?)(?:[a-zäöüß]+- )?{${kind}}(?! -)`;

/** Words before a thing that make of it a mark or a way of a stroke, not a statement that it is there. */
const ROUTE =
  /(?:^| )(?:von|out|aus|an|zu|über|um|neben|hinter|vor|zwischen|in|auf|bis|gegen|durch|richtung|trotz|wegen|nach|statt|wie|als|jenseits|diesseits|oberhalb|unterhalb|entlang|seitlich|links|rechts|außer|samt|ab)(?: (?:der|die|das|den|dem|des|ein|dies|all|beide|ihr|zwei|drei|linke|rechte))*$|(?:^| )zwischen [^,]* und(?: (?:der|die|das|den|dem|ein|drei|zwei))*$/;
const WARNED =
  /(?:^| )(?:meiden|vermeiden|meidet|vorsicht vor|achten sie auf|achtung vor|achtung|vorsicht|hüten sie sich vor|hüten vor|acht geben auf|gewarnt sei vor|beachten|beachten sie|meiden sie|vermeiden sie|vergessen sie nicht|aufpassen auf|respekt vor|merken sie sich)(?: (?:der|die|das|den|dem|ein|all|beide|zwei|drei))*$/;

/** Whether the words before a thing let its side count, even within advice. */
export const warned = (before: string): boolean => WARNED.test(before);

/** Things a side may belong to; of a wall or a road it may also be said that it is out of bounds. */
const anything = (kind: string): string =>
  ["bunker", "water", "trees", "gorse", ...(kind === "out-of-bounds" ? [] : ["wall", "road"])]
    .map((one) => PARTS[one]!)
    .join("|");
const NONE_BEFORE = /x^/;

function patternsOf(kind: ThingClass & ClaimKind): ClaimPattern[] {
  const make = (text: string, rest: Partial<ClaimPattern> = {}): ClaimPattern => ({
    kind,
    expression: phrase(text, PARTS),
    notAfter: ROUTE,
    ...rest,
  });
  const thing = noun(kind);
  // "Teich rechts Bunker links": what stands before the side has it.
  const free = {
    notAfter: new RegExp(
      `(?:^| )(?:nach|von|zu weit|weiter|nicht|sich|lieber|besser|zu|über|eher|wer|lieber nach|${anything(kind)})$`,
    ),
  };
  return [
    // "der rechts vom Grün liegende Bunker"
    make(
      `(?:{det} )?${side()} (?:liegend|gelegen|platziert|befindlich|verlaufend|stehend|lauernd)(?:e|er|es|en|em)? ${ADJECTIVES}(?:[a-zäöüß]+- )?{${kind}}`,
    ),
    // "Der Teich, der links neben dem Grün liegt"
    make(`${thing} , (?:der|die|das|welcher)${FILL(2)} ${sides()}${FILL(3)} (?:{link}|{guards})`),
    // "liegt nicht links, sondern rechts"
    make(
      `(?<=(?:${PARTS[kind]!}) (?:liegt|ist|wartet|lauert|verläuft) nicht [a-zäöüß ]{3,40} , )sondern${FILL(1)} ${sides()}`,
      { notAfter: NONE_BEFORE },
    ),
    // "Ein Bunker bewacht die linke Seite", "ein Teich verteidigt das Grün vorne"
    make(
      `${thing}${FILL(2)} {guards}${FILL(2)} (?:(?:die|der|den) (?:{cdep} {clat}|(?:ganz |gesamt )?{lat}) (?:ecke|seite|flanke|hälfte|kante|rand)(?:${OF})?|(?:{object})${FILL(2)} ${sides(NO_OTHER)})`,
    ),
    // "The Kist, kurz rechts, ist ..."
    make(`${thing} ,${FILL(2)} ${sides(NO_OTHER)}(?= ,| *$)(?! , (?:rechts|links|kurz|lang|dann))`),
    // "Ein Bunker liegt rechts vom Grün", "Bunker links und rechts"
    make(`${thing}(?: {link}${WHOM}(?: {not})?)?${FILL(4)} ${sides(NO_OTHER)}`),
    // "Rechts vom Grün liegt ein Bunker", "links gibt es kein Aus", "rechts bewacht ein Bunker das Grün"
    make(`${sides()}${FILL(3)} (?:{link}|{guards})${WHOM}${FILL(3)}(?: {not})? ${thing}(?! (?:vorbei|entlang))`, free),
    // "Es liegt rechts kein Bunker", "gibt es am Grün rechts keinen Bunker"
    make(`{link}${WHOM}${FILL(2)} ${sides()}${FILL(2)} (?!der |des )${thing}`, {
      notAfter: /(?:^| )(?:ball|drive|schlag|wer|man|spieler)$/,
    }),
    // "Die rechte Seite des Grüns wird von einem Bunker bewacht"
    make(
      `(?:die|der) {lat} (?:seite|flanke|hälfte|kante)(?:${OF})? (?:ist|wird)${FILL(2)} (?:von|durch) ${thing}(?: {guarded})?`,
      { notAfter: NONE_BEFORE },
    ),
    make(`grün (?:ist|wird)${FILL(2)} ${again(GUARDED_SIDE)}${FILL(1)} (?:von|durch) ${thing} {guarded}`, {
      notAfter: NONE_BEFORE,
      place: "green",
    }),
    make(`${again(GUARDED_SIDE)} (?:ist|wird) (?:{object})${FILL(2)} (?:von|durch) ${thing} {guarded}`, free),
    // "Die gesamte rechte Seite ist Aus"
    make(
      `(?:die|der) (?:ganz |gesamt |komplett )?{lat} (?:seite|flanke|hälfte)(?:${OF})? (?:ist|gehört|heißt|bedeutet)${FILL(2)}(?: (?:dem|der|zu dem))? ${thing}`,
      { notAfter: NONE_BEFORE },
    ),
    // "Alles, was links weggeht, landet im Wald"
    make(
      `(?:alles|jeder ball|bälle) (?:, )?(?:was |der |die )?(?:zu )?(?:weit |sehr )?(?:nach )?{lat}(?:${OF})?(?: [a-zäöüß]+){0,2} (?:, )?(?:landet|endet|liegt|verschwindet|ist|geht|landen|enden|liegen) (?:in|auf|hinter) (?:dem|der|das|die) (?:[a-zäöüß]+- )?{${kind}}`,
      { notAfter: NONE_BEFORE },
    ),
    // "Links Wasser", "links vom Grün ein Teich"
    make(
      `${sides()}${FILL(2)} (?!der |des |den |dem )${thing}(?! (?:vorbei|entlang|herum|liegen|umgehen|umspielen|lassen|hat|haben|verfehlen|meiden|anvisieren|treffen|ansteuern|überspielen))`,
      free,
    ),
  ];
}

const KINDS = ["bunker", "water", "out-of-bounds", "trees", "gorse", "wall", "road"] as const;

/** Where a thing that is not there is not: the end of the words, or the hole at large. */
const AT_ALL =
  "(?= *$| ,| und (?!links|rechts|vor|hinter)| auf dies| hier| weit und breit| in sicht| zu sehen| zu fürchten| in dem spiel| überhaupt| an dem grün *$)";
const HERE = "(?: (?:hier|auf dies bahn|auf dies loch|an dies loch|überhaupt|auf der bahn|weit und breit))*";

const none = (kind: string): string => (kind === "water" ? "any-water" : kind);
const NONE: readonly ClaimPattern[] = (["bunker", "water", "out-of-bounds"] as const).flatMap(
  (kind): ClaimPattern[] => [
    {
      kind,
      expression: phrase(`ohne (?:ein )?${ADJECTIVES}(?:[a-zäöüß]+- )?{${none(kind)}}${AT_ALL}`, PARTS),
      denied: true,
      notAfter: /(?:^| )(?:links|rechts|hinten|vorne|seite)$/,
    },
    {
      kind,
      expression: phrase(`{no} ${ADJECTIVES}(?:[a-zäöüß]+- )?{${none(kind)}}${AT_ALL}`, PARTS),
      notAfter: /(?:^| )(?:links|rechts|grün|fairway|hinten|vorne|weder|seite)$/,
    },
    {
      kind,
      denied: true,
      expression: phrase(
        `(?<!-)(?<!- )(?:{${none(kind)}}) (?:gibt es|hat es|findet man|finden sie|hat die bahn|hat das loch)${HERE} (?:kein|nicht|nirgends)(?= *$| ,| und)`,
        PARTS,
      ),
      notAfter: /(?:^| )(?:links|rechts|ein|das|der|die|vorne|hinten|grün)$/,
    },
  ],
);

const COUNT: readonly ClaimPattern[] = [
  {
    kind: "bunker-count",
    number: 1,
    expression: phrase(
      "(?:der einzig|nur ein|ein einzig|lediglich ein|bloß ein) (?:(?:{adjective}) ){0,2}bunker(?! (?:links|rechts|vor|hinter|auf|an|vorne|hinten|kurz))(?! ,)(?! der)",
      PARTS,
    ),
    notAfter:
      /(?:^| )(?:nicht|kein|als|wie|links|rechts|grün|hinten|vorne|liegt|wartet|lauert|steht|gibt es (?:links|rechts))$/,
  },
  {
    kind: "bunker-count",
    expression: phrase(
      "(?:es gibt|die bahn hat|das loch hat|gibt es|insgesamt) (?:genau |insgesamt )?(?<num_940>\\d+|zwei|drei|vier|fünf|sechs|sieben|acht|neun|zehn) bunker(?= *$| ,| auf dies| insgesamt)",
      PARTS,
    ),
  },
];

const CROSSES =
  "(?:kreuzt|kreuzen|quert|queren|durchquert|durchschneidet|schneidet|überquert|durchzieht|teilt|durchkreuzt|zerschneidet|unterbricht)";
const WAY = "(?:das fairway|den fairway|die bahn|das loch|die linie|die spielbahn|unser weg)";
const TIMES = "(?: (?<num_900>zweimal|dreimal))?";
const FILLED =
  "(?: (?:{adverb}|metres|\\d+|diagonal|schräg|quer|kurz|knapp|etwa|rund|vor dem grün|hinter dem abschlag|vor dem abschlag)){0,4}";
const WATER: readonly ClaimPattern[] = [
  {
    kind: "water",
    side: "across",
    expression: phrase(
      `(?:{no} |{det} )?${ADJECTIVES}(?:[a-zäöüß]+- )?{water} ${CROSSES}(?! den)(?: ${WAY})?${FILLED}${TIMES}`,
      PARTS,
    ),
    notAfter:
      /(?:^| )(?:wo|bis|nachdem|bevor|wie|als|an dem|an der|von dem|über den|über das|vor dem|hinter dem|in dem)$/,
    notBefore: /^ (?:den|die|das) (?:weg|feldweg|straße|abschlag|grün|nächste|\d)/,
  },
  {
    kind: "water",
    side: "across",
    expression: phrase(
      `${CROSSES}(?: ${WAY})?${FILLED} (?:ein|der|die|das|kein) ${ADJECTIVES}(?:[a-zäöüß]+- )?{water}(?: ${WAY})?${TIMES.replace("900", "901")}`,
      PARTS,
    ),
    notAfter: /(?:weg|straße|feldweg|ball|drive|schlag|wind|bahn|sie|loch|pfad)$/,
  },
  {
    kind: "water",
    side: "across",
    expression: phrase(
      `(?:{det} )?${ADJECTIVES}(?:[a-zäöüß]+- )?{water} (?:fließt|läuft|verläuft|zieht sich|liegt|führt|geht|plätschert)${FILLED} (?:über|durch|quer über|quer durch|quer zu) (?:das|die|der|den|zu) (?:fairway|bahn|linie|loch|spielbahn)`,
      PARTS,
    ),
    notAfter: ROUTE,
  },
  {
    kind: "water",
    side: "across",
    expression: phrase(
      `(?:fließt|läuft|verläuft|zieht sich|führt)${FILLED} (?:ein |der |die |das )?${ADJECTIVES}(?:[a-zäöüß]+- )?{water}${FILLED} (?:über|durch|quer über|quer durch) (?:das|die|den) (?:fairway|bahn|loch|linie|spielbahn)`,
      PARTS,
    ),
    notAfter: /(?:weg|straße|feldweg|ball|drive|schlag|pfad)$/,
  },
  {
    kind: "water",
    side: "across",
    expression: phrase(
      `(?:fairway|bahn|loch|linie) (?:wird|ist)${FILLED} (?:von|durch) (?:{det} )?${ADJECTIVES}(?:[a-zäöüß]+- )?{water}${FILLED}${TIMES.replace("900", "902")} (?:durchschnitten|gekreuzt|gequert|durchquert|geteilt|unterbrochen|zerschnitten|durchzogen|zerteilt)`,
      PARTS,
    ),
  },
  {
    kind: "island-green",
    expression: phrase(
      "inselgrün|grün (?:ist |wird |liegt )?(?:rundum |ringsum |ganz |vollständig |komplett |von all seite )?(?:von|in) (?:dem |ein |der |lauter )?(?:wasser|meer|see|teich) (?:umgeben|umschlossen|umspült|umringt)",
      PARTS,
    ),
    notAfter: /(?:wie ein|fast ein|beinahe ein|kein|nicht ein|als ein)$/,
    unless: /\b(?:fast|beinahe|nahezu|teilweise|quasi|gleichsam|halb)\b/,
  },
];

const DISTANCE: readonly ClaimPattern[] = (
  ["bunker", "water", "out-of-bounds", "gorse", "wall", "trees"] as const
).flatMap((kind): ClaimPattern[] => {
  const amount = "(?:etwa |rund |ungefähr |gut |knapp |genau |ca |circa )?(?<num_930>\\d{2,3}) {unit}";
  const notBefore =
    /^ (?:vor dem grün|hinter dem grün|vor der|breit|tief|lang|bis zu|von dem grün|vor|hinter|carry|weiter|zu dem grün|neben|links|rechts)/;
  return [
    {
      kind: "hazard-distance",
      thing: kind,
      notAfter: ROUTE,
      notBefore,
      expression: phrase(
        `{${kind}}(?: ${side()})? (?:liegt|ist|beginnt|kommt|wartet|lauert|steht)${FILL(2)} ${amount}(?: (?:hinter|von) dem abschlag| entfernt|(?= *$| ,))`,
        PARTS,
      ),
    },
    {
      kind: "hazard-distance",
      thing: kind,
      notAfter: ROUTE,
      notBefore,
      expression: phrase(
        `{${kind}}(?: ${side()})?(?: (?:liegt|ist|beginnt|kommt|wartet|lauert|steht))?${FILL(2).replace("|nach \\\\d+ metres", "")} (?:bei|nach|auf|ab) ${amount}(?= *$| ,| in dem spiel| in das spiel)`,
        PARTS,
      ),
    },
    {
      kind: "hazard-distance",
      thing: kind,
      notBefore: /^ (?:vorbei|hinweg)/,
      expression: phrase(
        `(?:nach|bei|auf|ab) ${amount}(?: ,)? (?:liegt|wartet|lauert|beginnt|kommt|steht|folgt)${FILL(2)}(?: ${side()})? (?:ein|der|die|das) ${ADJECTIVES}(?:[a-zäöüß]+- )?{${kind}}`,
        PARTS,
      ),
      unless: /\b(?:noch|von der landezone|danach)\b/,
    },
  ];
});

/** "Kein Bunker links, aber einer hinten": the thing is the one named last. */
const ANOTHER: readonly ClaimPattern[] = (["bunker", "water"] as const).map((kind): ClaimPattern => {
  const other = kind === "bunker" ? "water" : "bunker";
  return {
    kind,
    expression: phrase(
      `(?:noch )?(?:ein weiter|ein zweite|ein|zwei weiter|ein ander)(?: (?:{link}))?${FILL(2)} ${sides()}(?! (?:liegend|gelegen))(?: davon)?(?= *$| ,| und)`,
      PARTS,
    ),
    needsBefore: new RegExp(
      `(?<![a-zäöüß])(?:${PARTS[kind]!})(?![a-zäöüß])(?!.*(?<![a-zäöüß])(?:${PARTS[other]!}|baum|mauer|stufe|loch|abschlag|linie|schlag)(?![a-zäöüß]))`,
    ),
  };
});

/** "Einer links vom Grün und einer dahinter". */
const BEHIND_IT: readonly ClaimPattern[] = (["bunker", "water"] as const).map((kind): ClaimPattern => ({
  kind,
  expression: phrase("(?:ein|ein weiter|noch ein) (?<dep_950>dahinter|davor)", PARTS),
  needsBefore: new RegExp(
    `(?<![a-zäöüß])(?:${PARTS[kind]!})(?![a-zäöüß])(?!.*(?<![a-zäöüß])(?:${PARTS[kind === "bunker" ? "water" : "bunker"]!}|baum|mauer|fairway)(?![a-zäöüß])).*(?<![a-zäöüß])grün(?![a-zäöüß])`,
  ),
}));

export const THINGS: readonly ClaimPattern[] = [
  ...DISTANCE,
  ...WATER,
  ...KINDS.flatMap(patternsOf),
  ...ANOTHER,
  ...BEHIND_IT,
  ...NONE,
  ...COUNT,
];
