/** German words in the form the patterns know: without endings, contractions written out, compounds opened. */
import { HEADS, NOT_HEADS, NOUNS, OTHERS, WRITTEN_OUT } from "./forms.ts";

/** Umlauts and ß as those write them who have no key for them. */
const fold = (word: string): string =>
  word.replaceAll("ä", "ae").replaceAll("ö", "oe").replaceAll("ü", "ue").replaceAll("ß", "ss");

const folded = (forms: ReadonlyMap<string, string>): ReadonlyMap<string, string> =>
  new Map([...forms].map(([form, lemma]) => [fold(form), lemma]));

const NOUN_FORMS = folded(NOUNS);
const OTHER_FORMS = folded(OTHERS);
const OUT = new Map(Object.entries(WRITTEN_OUT).map(([word, words]) => [fold(word), words]));

/** What is left without an ending, the likeliest first. */
const withoutEnding = (word: string, endings: readonly string[]): string[] =>
  ["", ...endings].flatMap((ending) =>
    ending === ""
      ? [word]
      : word.length - ending.length >= 3 && word.endsWith(ending)
        ? [word.slice(0, -ending.length)]
        : [],
  );

const NOUN_ENDINGS = ["s", "es", "n", "en", "e", "er", "ern", "ens", "se"];
const OTHER_ENDINGS = ["e", "er", "es", "en", "em"];

/** @param least letters that a word without its ending must have */
const known = (
  word: string,
  forms: ReadonlyMap<string, string>,
  endings: readonly string[],
  least = 3,
): string | undefined => {
  for (const stem of withoutEnding(word, endings)) {
    const lemma = stem === word || stem.length >= least ? forms.get(stem) : undefined;
    if (lemma !== undefined) return lemma;
  }
  return undefined;
};

/** "Grünbunker": `grün-` and `bunker`. */
function opened(word: string): readonly string[] | undefined {
  for (const stem of withoutEnding(word, NOUN_ENDINGS)) {
    const head = HEADS.find((one) => stem.endsWith(fold(one)) && stem.length - fold(one).length >= 3);
    if (!head) continue;
    const first = stem.slice(0, -fold(head).length);
    if (NOT_HEADS.test(first.replaceAll("ue", "ü")) || NOT_HEADS.test(first)) return undefined;
    return [`${first === "gruen" ? "grün" : first}-`, NOUN_FORMS.get(fold(head)) ?? head];
  }
  return undefined;
}

/** A name's endings change with its case: "der Alte Pfad", "des Alten Pfads". */
const stemmed = (word: string): string =>
  word.replace(/(?<=.{3})s$/, "").replace(/(?<=.{3})(?:ern|em|en|er|e|n)$/, "");

/** "Aus" is out of bounds where it is a noun; at the start of a sentence what follows tells. */
const OUT_OF_BOUNDS = /^(?:Aus|AUS)$/;

/**
 * @param vocabulary words the patterns know, which keep their form
 */
export function speller(vocabulary: ReadonlySet<string>): (written: string) => readonly string[] {
  const spellOne = (written: string): readonly string[] => {
    const plain = written.normalize("NFC");
    if (OUT_OF_BOUNDS.test(plain)) return ["out"];
    const word = plain.toLowerCase();
    const key = fold(word);
    const out = OUT.get(key) ?? (word.endsWith("s") ? OUT.get(key.slice(0, -1)) : undefined);
    if (out) return out;
    const capital = /^\p{Lu}/u.test(plain);
    const other = known(key, OTHER_FORMS, OTHER_ENDINGS);
    // "Weg" is a way, "weg" is gone; a word of either kind may begin a sentence.
    if (!capital) return [other ?? known(key, unfolded, OTHER_ENDINGS, 5) ?? word];
    if (OTHER_FORMS.get(key) !== undefined) return [OTHER_FORMS.get(key)!];
    const noun = known(key, NOUN_FORMS, NOUN_ENDINGS);
    if (noun) return [noun];
    if (vocabulary.has(word) || unfolded.has(key)) return [unfolded.get(key) ?? word];
    if (other) return [other];
    return opened(key) ?? [stemmed(word)];
  };
  const unfolded = new Map([...vocabulary].map((word) => [fold(word), word]));
  return (written) => {
    const short = /^(.+)'s$/.exec(written);
    if (!short) return spellOne(written);
    // "Geht's", but "Tom's".
    const first = spellOne(short[1]!);
    return vocabulary.has(first.join(" ")) && !NOUN_FORMS.has(fold(first.join(" "))) ? [...first, "es"] : first;
  };
}

const ARTICLES: ReadonlySet<string> = new Set(["der", "die", "das", "den", "dem", "des", "ein", "the"]);

/** "Die Klippe" is met as "der Klippe" too. */
export const nameWords = (words: readonly string[]): readonly string[] =>
  words.length > 1 && ARTICLES.has(words[0]!) ? words.slice(1) : words;

const blank = (text: string): string => " ".repeat(text.length);
const ABBREVIATIONS =
  /(?<![\p{L}])(?:ca|bzw|evtl|ggf|max|min|mind|Nr|inkl|vgl|rd|etw|z\. ?B|d\. ?h|u\. ?a|o\. ?ä|i\. ?d\. ?R|v\. ?a)\./gu;
const ORDINAL =
  /\b(\d{1,2})\.(?=\s+(?:Loch|Bahn|Spielbahn|Grün|Abschlag|Tee|Fairway|Schlag|Platz)\p{Ll}*\b)|(?<=(?<!\p{L})(?:am|an|der|die|das|dem|den|vom|zum|zur|im|wie|als|auf|Die|Der|Das|Am|An|Auf|Wie) )(\d{1,2})\.(?=\s+\p{Ll}|\s*,)/gu;
/** A saying of four words and more is somebody's; fewer are a name. */
const QUOTED = /[„“"»«‚][^„“”"»«\n]*[“”"«»‘]/g;

/** Within a sentence, with a capital, a links is a kind of course and no side. */
const COURSE = /(?<=[\p{L}\d,] |-)Links(?![\p{L}])/gu;

export function prepare(markdown: string): string {
  return markdown
    .replace(COURSE, blank)
    .replace(QUOTED, (quote) => (quote.trim().split(/\s+/).length > 2 ? blank(quote) : quote))
    .replace(ABBREVIATIONS, (abbreviation) => abbreviation.replaceAll(".", " "))
    .replace(ORDINAL, (ordinal) => ordinal.replace(".", "º"))
    .replace(/(?<=\d),(?=\d)/g, ".");
}
