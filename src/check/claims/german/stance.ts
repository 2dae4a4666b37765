/** When German words say something of the hole as it is, and when they only advise, suppose or remember. */

const ORDINALS = [
  "erste",
  "zweite",
  "dritte",
  "vierte",
  "fünfte",
  "sechste",
  "siebte",
  "achte",
  "neunte",
  "zehnte",
  "elfte",
  "zwölfte",
  "dreizehnte",
  "vierzehnte",
  "fünfzehnte",
  "sechzehnte",
  "siebzehnte",
  "achtzehnte",
] as const;
const CARDINALS = [
  "eins",
  "zwei",
  "drei",
  "vier",
  "fünf",
  "sechs",
  "sieben",
  "acht",
  "neun",
  "zehn",
  "elf",
  "zwölf",
  "dreizehn",
  "vierzehn",
  "fünfzehn",
  "sechzehn",
  "siebzehn",
  "achtzehn",
] as const;
const HOLE_NOUN = "(?:loch|bahn|grün|abschlag|fairway)";
const any = (words: string): RegExp => new RegExp(`(?<![a-zäöüß])(?:${words})(?![a-zäöüß])`);

const ELSEWHERE = any(
  [
    `(?:nächste|nächsten|nächstes|nächster|vorige|vorigen|vorherige|vorherigen|folgende|folgenden|benachbarte|benachbarten|ander|andere|anderen|anderes|letzte|letzten|parallele|parallelen) ${HOLE_NOUN}`,
    `nachbar-? ?(?:bahn|loch|grün|fairway)|nachbarbahn|nachbarloch|nachbargrün|nachbarfairway|übungsgrün|puttinggrün|übungsplatz|driving range`,
    `(?:meist|meisten|ander|anderen|viel|manche|manchen|übrigen|wenig) (?:loch|bahn|grün|platz|par [345])`,
  ].join("|"),
);
const PAST = any(
  "früher|einst|ehemals|ehemalig|ehemalige|ehemaligen|damals|vormals|war|waren|hatte|hatten|gewesen|wurde|wurden|lag|lagen|stand|standen|verlief|gab es|floss|bog|führte|einmal (?:ein|das|die)|ursprünglich|seit|jahrhundert|jahren|neulich|künftig|demnächst|geplant|soll|sollen|nicht mehr|(?:1[6-9]|20)\\d\\d(?! metres)|vor dem krieg|bis zu dem (?:umbau|sturm)|umbau",
);
const SUPPOSING = any(
  "wenn|falls|sofern|sobald|solange|ob|angenommen|gesetzt|vorausgesetzt|andernfalls|sonst|würde|würden|läge|lägen|stünde|stünden|gäbe|käme|kämen|ginge|hielte|fiele|bliebe|fände|müsste|müssten|wüsste|ließe|wäre|wären|hätte|hätten|könnte|könnten|dürfte|möchte|sei|seien|vielleicht|womöglich|möglicherweise|eventuell|angeblich|vermutlich|wohl|(?<!karte )sagt|sagen|sagte|nennen|nennt|behauptet|behaupten|glauben|glaubt|meinen|meint|heißt es|erzählt|erzählen|sage|legende|gerücht|scherz|spaß|witz|träumt|träumen|wünscht|wünschen|stelle sich|stellen sie sich|tut so|als ob|bei (?:flut|ebbe|hochwasser|niedrigwasser|nässe)|bei (?:dem |ein |stark |starkem |kräftigem |viel |leichtem )?(?:wind|fahne)|je nach|mit wind|gegen den wind|gegen wind",
);
/** "Wer links bleibt, findet ..." supposes; so does a verb at the start: "Steht die Fahne hinten, ...". */
const WHOEVER = /(?:^|(?<= , )|(?<=und ))(?:wer|wem|wen)(?= )/;
const VERB_FIRST =
  /^(?:und |aber |doch )?(?:steht|liegt|liegen|stehen|kommt|kommen|ist|sind|weht|bläst|fliegt|landet|spielt|hat|haben|wird|geht|bleibt|verzieht|verfehlt|gelingt|trifft|schlägt|fällt|rollt|gerät|will|wollen|möchten|sitzt|dreht|findet|nimmt|hält|zieht|verläuft) (?:der|die|das|man|sie|ein|es|ihr|dies|all|ball)\b(?=.* , )/;
const SEEMING = any(
  "scheint|scheinen|wirkt|wirken|sieht aus|aussieht|aussehen|ausschaut|sieht (?:[a-zäöüß]+ ){1,4}aus|täuscht|täuschen|trügt|vermeintlich|vermeintliche|scheinbar|anscheinend|gefühlt|fühlt sich|eindruck|optisch|anmutet|illusion|als wäre|nicht (?:ganz|völlig|vollkommen|vollständig|komplett|immer|überall|allzu|gerade|unbedingt|wirklich|so|zu(?= (?:breit|schmal|eng|groß|klein|lang|kurz|steil|eben|flach))|viel|sehr|besonders|nur)(?= [a-zäöüß])(?! tief)",
);
const NOT_SEEMING = /als (?:es|sie|er|man) (?:[a-zäöüß]+ )?(?:aussieht|wirkt|scheint|denkt|vermutet)/g;
const COMPARING = any(
  "eher als|statt|anstatt|geschweige|nicht so sehr|alles andere als|nichts als scheinbar|von wegen|nicht nur|weder|fast(?! (?:all|jed|jede|jeder|immer|überall))|beinahe|kein wunder dass",
);

const numberOf = (word: string): number => {
  const digits = /^(\d+)º?$/.exec(word);
  if (digits) return Number(digits[1]);
  const ordinal = ORDINALS.findIndex(
    (one) => word === one || word === `${one}n` || word === `${one}r` || word === `${one}s`,
  );
  return ordinal >= 0 ? ordinal + 1 : CARDINALS.indexOf(word as (typeof CARDINALS)[number]) + 1;
};

const ORDINAL = `(?:${ORDINALS.join("|")})[nrs]?`;
const CARDINAL = CARDINALS.slice(1).join("|");

/** Whether a segment names a hole that is not this one. */
function namesAnotherHole(segment: string, own: number): boolean {
  const named = [
    ...[...segment.matchAll(/(?<![\d.])(\d{1,2})º/g)].map((match) => Number(match[1])),
    ...[
      ...segment.matchAll(
        /(?<![a-zäöüß])(?:loch|bahn)(?: nummer| nr)? (\d{1,2})(?![\d.])(?! (?:metres|yards|schlag))/g,
      ),
    ].map((match) => Number(match[1])),
    ...[
      ...segment.matchAll(
        new RegExp(
          `(?<![a-zäöüß])(?:(?:an|auf|von|zu|bei|wie|hinter|vor|nach|die|der) (?:der|die) )(\\d{1,2}|${CARDINAL})(?![\\d.º])(?! [a-zäöüß])`,
          "g",
        ),
      ),
    ].map((match) => numberOf(match[1]!)),
    ...[
      ...segment.matchAll(/(?<![a-zäöüß])(?:an|auf|wie an|wie auf) der (\d{1,2})(?![\d.º])(?! (?:metres|yards))/g),
    ].map((match) => Number(match[1])),
    ...[
      ...segment.matchAll(
        new RegExp(
          `(?<![a-zäöüß])(?:(?:wie|anders als) (?:an|auf) (?:dem|der) (${ORDINAL})|(?:an|auf) (?:dem|der) (${ORDINAL})(?= *$| ,| (?:ist|liegt|gibt|steht|hat|und|lauert|wartet|geht|bei)))`,
          "g",
        ),
      ),
    ].map((match) => numberOf((match[1] ?? match[2])!)),
    ...[...segment.matchAll(new RegExp(`(?<![a-zäöüß])(${ORDINAL}) ${HOLE_NOUN}(?![a-zäöüß])`, "g"))].map((match) =>
      numberOf(match[1]!),
    ),
  ];
  return named.some((number) => number > 0 && number !== own);
}

/** "Anders als die Neun": the hole that is named is the other, what is said is said of this one. */
const UNLIKE =
  /(?:anders|im gegensatz|in gegensatz)(?: als| zu)? (?:auf |an |bei )?(?:die|der|das|dem|den) (?:\d{1,2}º?|[a-zäöüß]+)(?: (?:loch|bahn))?/g;

export function silent(segment: string, ends: string, holeNumber: number): boolean {
  return (
    ends === "?" ||
    ELSEWHERE.test(segment) ||
    PAST.test(segment) ||
    SUPPOSING.test(segment) ||
    WHOEVER.test(segment) ||
    VERB_FIRST.test(segment) ||
    COMPARING.test(segment) ||
    namesAnotherHole(segment.replace(UNLIKE, ""), holeNumber)
  );
}

/** Told to the familiar "du", at the start of a clause. */
const FAMILIAR = new Set(
  "spiel spiele ziel ziele halt halte bleib bleibe nimm lass lasse achte meide vermeide schlag schlage leg lege triff denk denke vertrau vertraue such suche wähle greif beginn starte versuch versuche plane lande putte chippe geh zähl rechne bedenke beachte vergiss haltet nehmt lasst".split(
    " ",
  ),
);
/** Forms for "Sie" that state rather than tell: "rechts haben Sie das Aus". */
const STATING = new Set(
  "haben sehen finden kommen erreichen treffen stehen liegen blicken schauen überblicken brauchen benötigen erleben".split(
    " ",
  ),
);
/** At the end of a clause these tell the player what to do: "links bleiben". */
const BARE = new Set(
  "bleiben halten spielen zielen nehmen meiden vermeiden verfehlen lassen ablegen legen vorlegen anspielen landen schlagen treffen angreifen ansteuern anvisieren gehen wählen achten beginnen starten denken putten chippen umspielen vertrauen rechnen überspielen".split(
    " ",
  ),
);
const COUNSEL = any(
  "(?:man|sie|spieler|wir|du|golfer) (?:soll|sollte|sollten|muss|müssen|darf|dürfen|kann besser|tut gut|tun gut|solltest|musst)|(?:soll|sollte|sollten|muss|müssen|darf|dürfen|tut|tun) (?:man|sie|wir|du)|empfiehlt|empfehlen|empfohlen|ratsam|rat|besser|lieber|am besten|an besten|sicher(?:st|sten|ste|er|ere|eren)?(?: (?:verfehlt|ist|liegt|weg|seite|linie|spielt|schlag))|ideal|ideale|idealen|beste|besten|bester|richtige|richtig|klug|klüger|klugerweise|sinnvoll|vernünftig|gehört(?! zu)|zielen|ziel|zielpunkt|spielt man|zielt man",
);

const JOINS = new Set(["und", "oder", "aber", "denn", "sondern", "doch", "also"]);

interface Clause {
  readonly from: number;
  readonly advice: boolean;
}

/** Tells which words of a segment are advice: commands, bare infinitives, "man sollte". */
export function advice(segment: string): (index: number) => boolean {
  const clauses: Clause[] = [];
  const bounds = [
    0,
    ...[...segment.matchAll(/ , (?:und |oder |aber |denn |sondern )?| (?:und|oder|aber|denn|doch|also) /g)].map(
      (match) => match.index + match[0].length,
    ),
  ];
  bounds.forEach((from, i) => {
    const words = segment
      .slice(from, bounds[i + 1] ?? segment.length)
      .split(" ")
      .filter((word) => word !== "" && word !== ",");
    while (JOINS.has(words.at(-1) ?? "")) words.pop();
    const sie = words.findIndex(
      (word, k) => word === "sie" && k > 0 && words[k - 1]!.endsWith("en") && !STATING.has(words[k - 1]!),
    );
    const last = words.at(-1) ?? "";
    const bare =
      BARE.has(last) &&
      words.at(-2) !== "zu" &&
      !words.some((word) => /^(?:werden|wird|können|die|wo)$/.test(word) && word !== "die");
    const told = sie > 0 || FAMILIAR.has(words[0] ?? "") || bare || COUNSEL.test(words.join(" "));
    // "Zielen Sie links und den Bunker ...": what is joined goes on advising until something is stated.
    const joined =
      i > 0 &&
      / (?:und|oder) $/.test(segment.slice(0, from)) &&
      clauses[i - 1]!.advice &&
      !/(?<![a-zäöüß])(?:ist|sind|liegt|liegen|hat|gibt|fällt|lauert|wartet|steht|warten|lauern)(?![a-zäöüß])/.test(
        words.join(" "),
      );
    clauses.push({ from, advice: told || joined });
  });
  return (index) => clauses.findLast(({ from }) => from <= index)?.advice ?? false;
}

const STARTS = [" ,", " und ", " aber ", " denn ", " doch ", " weil ", " sondern ", " wo "];
const ENDS = / ,| und | aber | denn | doch | sondern /;

/** Whether a clause tells how something looks, or how it is not quite, and not how it is. */
export function seeming(segment: string, index: number): boolean {
  const from = Math.max(0, ...STARTS.map((start) => segment.lastIndexOf(start, index)));
  const rest = segment.slice(index).search(ENDS);
  return SEEMING.test(segment.slice(from, rest < 0 ? undefined : index + rest).replace(NOT_SEEMING, ""));
}

const DENIAL = any(
  "kein|nicht|nie|niemals|niemand|keiner|nichts|nirgends|weder|ohne|kaum|selten|keineswegs|keinesfalls|entgegen",
);
/** "Nicht" stands behind what it denies. */
const DENIED_BEHIND = any(
  "nicht(?! zu (?:unterschätzen|übersehen|vergessen|überhören|verachten|leugnen))|nie|niemals|nirgends|keineswegs|kaum|nichts|kein rede|fehlt|fehlen|gespart|erspart|vermisst|vergebens|vergeblich|verzichtet|verschwunden|kein(?= *$| mehr)",
);

/** What cannot be seen from somewhere is there. */
const UNSEEN = /von (?:dem|der) (?:abschlag|fairway|bahn)(?: aus)? nicht (?:zu sehen|einsehbar|sichtbar|zu erkennen)/;

/** "Kein Bunker links, der tiefer ist", "kein Bunker links ist tiefer": there may be others. */
const NONE_SUCH =
  /^ , (?:der|die|das|den|dem|deren|dessen|wo|welcher|(?:in|aus|an|auf|mit|von|über|bei|durch) (?:der|dem|den|die|das)) [^,]*(?:ist|sind|hat|wird|kann|muss|darf|[a-zäöüß]{3,}(?:t|en))(?= ,|$)|^ (?:ist|sind|hat|haben|macht|kostet|stört|darf|muss|kann|wird|fängt|schluckt|wie|als|mehr|außer|so)(?![a-zäöüß])/;
const NO_THING = any("kein|ohne");
/** The match itself says that there is none: "links gibt es kein", "links ist kein". */
const THERE_IS = any("gibt es|hat|ist|sind|liegt|liegen|findet");

/** Whether the clause that ends here has denied something, or goes on to. */
export function denied(before: string, after: string, match: string): boolean {
  if (
    NO_THING.test(match) &&
    NONE_SUCH.test(after) &&
    (after.startsWith(" ,") || !THERE_IS.test(match) || /^ (?:wie|als|mehr|außer|so)/.test(after))
  )
    return true;
  const to = after.search(ENDS);
  const rest = (to < 0 ? after : after.slice(0, to)).replace(UNSEEN, "");
  if (DENIED_BEHIND.test(rest)) return true;
  const from = Math.max(0, ...STARTS.map((start) => before.lastIndexOf(start)));
  return DENIAL.test(before.slice(from));
}

const PREPOSITION =
  /(?:^| )(?:des|dem|von|an|auf|neben|hinter|vor|zu|in|bei|unter|über|seite der|rand der|ende der|seit der|zu der|von der|an der|auf der|neben der|bei der|hinter der|vor der)$/;
const SUBJECT_WITH_VERB =
  /^(?:grün|fairway|bahn|loch|abschlag|annäherung|drive|fläche|puttfläche) (?:ist|liegt|fällt|neigt|hängt|kippt|steigt|biegt|knickt|dreht|verläuft|hat|bleibt|führt)(?![a-zäöüß])/;

/** Whether the subject a match begins with is only a part of another: "der Rand des Grüns ist verdeckt". */
export const borrowed = (before: string, match: string): boolean =>
  SUBJECT_WITH_VERB.test(match) && PREPOSITION.test(before);

/** Every word this file knows, for the spelling. */
export const STANCE_WORDS: readonly string[] = [
  ...[
    ELSEWHERE,
    PAST,
    SUPPOSING,
    WHOEVER,
    VERB_FIRST,
    SEEMING,
    COMPARING,
    COUNSEL,
    DENIAL,
    DENIED_BEHIND,
    UNSEEN,
    NOT_SEEMING,
    PREPOSITION,
    UNLIKE,
  ].map(({ source }) => source),
  ...ORDINALS.flatMap((ordinal) => [ordinal, `${ordinal}n`, `${ordinal}r`, `${ordinal}s`]),
  ...CARDINALS,
  ...FAMILIAR,
  ...STATING,
  ...BARE,
  ...JOINS,
];
