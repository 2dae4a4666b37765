/** When English words say something of the hole as it is, and when they only advise, suppose or remember. */

const ORDINALS = [
  "first",
  "second",
  "third",
  "fourth",
  "fifth",
  "sixth",
  "seventh",
  "eighth",
  "ninth",
  "tenth",
  "eleventh",
  "twelfth",
  "thirteenth",
  "fourteenth",
  "fifteenth",
  "sixteenth",
  "seventeenth",
  "eighteenth",
] as const;

/** Ordinals that are not also strokes: "the second" is more often a shot than a hole. */
const HOLES_BY_WORD = ORDINALS.slice(3).join("|");
const HOLE_NOUN = "(?:hole|green|tee|fairway)";

const ELSEWHERE = new RegExp(
  [
    `\\b(?:next|previous|following|neighbouring|adjoining|adjacent|preceding|other|another|parallel) (?:hole|green|tee|fairway)s?\\b`,
    `\\b(?:next|last|previous) (?:one|time)\\b`,
    `\\b(?:as|like|unlike) (?:on |at |the one on |the one at |that on |that of )?the (?:${ORDINALS.join("|")}|last|next)\\b`,
    `\\b(?:most|other|many|few) (?:holes|greens|courses|links|par (?:threes|fours|fives|3s|4s|5s))\\b`,
    `\\b(?:practice|putting) green\\b(?! slope)`,
  ].join("|"),
);
const PAST =
  /\b(?:once (?:a|the|an|ran|was|bent|stood|lay|crossed|had)|formerly|originally|used to|was|were|had|no longer|years ago|in the old days|until (?:the|it|they|1|2)|before the (?:war|course|railway|road|burn|green|sea)|ran (?:along|down|up|through|across)|stood|built|moved|rebuilt|restored|planned|proposed|will be (?:added|built|planted|moved|filled))\b|\b(?:1[6-9]|20)\d\d\b/;
const SUPPOSING =
  /\b(?:if|unless|when|whenever|whoever|should you|in case|otherwise|suppose|imagine|provided|assuming|as soon as|once you|wherever|whichever|would|could be|might|may be|perhaps|maybe|some (?:say|think|call)|they (?:say|call)|jokes?|story|rumou?rs?|myth|dreams?|pretend|members (?:say|claim|call|swear|think)|it is said|legend|locals|people (?:say|think)|visitors (?:say|think))\b|\bwith (?:the|a|any|todays?) (?:pin|flag|hole|wind|breeze|westerly|tide)\b|\b(?:high|low|spring) tide\b/;
const SEEMING =
  /\b(?:looks?|looking|seems?|appears?|feels|as if|as though|illusion|pretends?|deceive[sd]?|deceptive|you think|trick of)\b/;
const SEEMING_OF_MEASURE =
  /\b(?:than (?:it|they|that|you|the hole|the green) (?:looks?|seems?|appears?|thinks?|feels?)|looks? (?:down|out) (?:on|over|at|from|to)|look (?:down|out|back|up)|you think)\b/g;
const COMPARING =
  /\b(?:not so much|rather than|as much as|instead of|not only|no more|no less|nothing like|far from|anything but|hardly|barely|scarcely)\b/;

const ordinalOf = (word: string): number => {
  const digits = /^(\d+)(?:st|nd|rd|th)$/.exec(word);
  return digits ? Number(digits[1]) : ORDINALS.indexOf(word as (typeof ORDINALS)[number]) + 1;
};

/** Whether a segment names a hole that is not this one. */
function namesAnotherHole(segment: string, own: number): boolean {
  const named = [
    ...[...segment.matchAll(/\b(\d+(?:st|nd|rd|th))\b/g)].map((match) => ordinalOf(match[1]!)),
    ...[...segment.matchAll(/\bholes? (?:number )?(\d+)\b/g)].map((match) => Number(match[1])),
    ...[...segment.matchAll(new RegExp(`\\b(${ORDINALS.join("|")}) ${HOLE_NOUN}\\b`, "g"))].map((match) =>
      ordinalOf(match[1]!),
    ),
    ...[
      ...segment.matchAll(
        new RegExp(`\\b(?:the|at|on|from) (${HOLES_BY_WORD})\\b(?! (?:shot|bunker|time|club|of|hole|is))`, "g"),
      ),
    ].map((match) => ordinalOf(match[1]!)),
  ];
  return named.some((number) => number !== own);
}

export function silent(segment: string, ends: string, holeNumber: number): boolean {
  return (
    ends === "?" ||
    ELSEWHERE.test(segment) ||
    PAST.test(segment) ||
    SUPPOSING.test(segment) ||
    COMPARING.test(segment) ||
    namesAnotherHole(segment, holeNumber)
  );
}

const COMMANDS = new Set(
  (
    "aim hit play miss keep take lay avoid stay leave use go drive try trust club favour favor pitch putt land start carry clear run bump think err " +
    "check beware mind watch ignore forget bail be do make choose pick find let give swing commit accept allow attack flirt fade draw chip float " +
    "shape split thread treat enjoy remember note bring set look lean walk wait ring listen cut head fly get reach challenge steer work turn consider err hug bounce feed target settle place position respect lag knock throw send whatever anything"
  ).split(" "),
);
COMMANDS.delete("anything");
COMMANDS.delete("whatever");
/** "Turns" is the hole's verb; a bare "turn" and "hug" are asked of the player, as are all of these after "to". */
const BEFORE_COMMAND = new Set([
  "then",
  "so",
  "just",
  "simply",
  "always",
  "never",
  "please",
  "not",
  "still",
  "now",
  "only",
  "also",
  "at",
  "least",
  "best",
  "better",
  "rather",
]);
const OPENS_CLAUSE = new Set([
  ",",
  "and",
  "but",
  "or",
  "then",
  "so",
  "because",
  "since",
  "as",
  "for",
  "where",
  "which",
  "that",
  "who",
  "while",
  "whose",
  "though",
  "although",
  "yet",
]);
const OPENS_STATEMENT = new Set([
  "but",
  "because",
  "since",
  "as",
  "for",
  "where",
  "which",
  "that",
  "who",
  "while",
  "whose",
  "though",
  "although",
]);
const PREPOSITIONS_TOO = new Set(["for", "as", "since"]);
const SUBJECTS = new Set([
  "the",
  "there",
  "it",
  "this",
  "here",
  "its",
  "these",
  "a",
  "an",
  "no",
  "out",
  "water",
  "bunkers",
  "two",
  "three",
  "everything",
  "anything",
  "nothing",
]);
const COUNSEL =
  /\b(?:you|players?|golfers?|one|we|hitters?) (?:should|must|need|want|would|could|might|may|had better|can afford)\b|\b(?:better|best|safest|safer|safe|wise|wiser|prudent|ideal|prefer(?:red)?|sensible|clever|smart) (?:to|play|is|off|line|side|miss|route|way|shot|place)\b|\b(?:right|only|best|ideal|safe|sensible|perfect) (?:line|play|shot|miss|route|drive)\b/;

/** Tells which words of a segment are advice: commands, what follows them, and "you should". */
export function advice(segment: string): (index: number) => boolean {
  const words = [...segment.matchAll(/\S+/g)].map((match) => ({ text: match[0], at: match.index }));
  // "Play for the middle" is one clause; ", for the middle is safe" opens another.
  const opens = (i: number): boolean =>
    OPENS_CLAUSE.has(words[i]!.text) && (!PREPOSITIONS_TOO.has(words[i]!.text) || words[i - 1]?.text === ",");
  const clauses: { from: number; advice: boolean }[] = [];
  for (let i = 0; i < words.length; i++) {
    const previous = words[i - 1]?.text;
    if (i > 0 && !opens(i - 1)) continue;
    if (opens(i)) continue;
    let k = i;
    while (BEFORE_COMMAND.has(words[k]?.text ?? "")) k++;
    const before = clauses[clauses.length - 1]?.advice ?? false;
    const commanded = COMMANDS.has(words[k]?.text ?? "");
    const stated =
      previous !== undefined &&
      (OPENS_STATEMENT.has(previous) || ((previous === "," || previous === "so") && SUBJECTS.has(words[i]!.text)));
    clauses.push({ from: words[i]!.at, advice: commanded || (before && !stated) });
  }
  const ends = clauses.map((_, i) => clauses[i + 1]?.from ?? segment.length);
  const counsel = clauses.map(({ from }, i) => COUNSEL.test(segment.slice(from, ends[i])));
  return (index) => {
    const at = clauses.findLastIndex(({ from }) => from <= index);
    return at >= 0 && (clauses[at]!.advice || counsel[at]!);
  };
}

/** Whether a clause tells how something looks and not how it is. */
export function seeming(segment: string, index: number): boolean {
  const from = Math.max(
    segment.lastIndexOf(" ,", index),
    segment.lastIndexOf(" and ", index),
    segment.lastIndexOf(" but ", index),
    0,
  );
  const rest = segment.slice(index).search(/ ,| and | but /);
  const clause = segment.slice(from, rest < 0 ? undefined : index + rest);
  return SEEMING.test(clause.replace(SEEMING_OF_MEASURE, ""));
}

const DENIAL = /\b(?:no|not|never|nothing|nobody|no one|none|neither|nor|nowhere|few|hardly|without)\b/;

const DENIED_BEHIND = /^(?: ,)? (?:it|this|that|they) (?:is|are|does|do) not\b/;

/** Whether the clause that ends here has denied something, or what follows does. */
export function denied(before: string, after: string): boolean {
  if (DENIED_BEHIND.test(after)) return true;
  const from = Math.max(
    before.lastIndexOf(" ,"),
    before.lastIndexOf(" and "),
    before.lastIndexOf(" but "),
    before.lastIndexOf(" where "),
    before.lastIndexOf(" because "),
    0,
  );
  return DENIAL.test(before.slice(from));
}

const PREPOSITION =
  /(?:^| )(?:of|on|along|beside|by|across|behind|to|from|at|in|near|under|below|above|round|around|towards?|past|over|between|before|beyond|off|short|left|right)(?: (?:the|this|its|a))?$/;
const SUBJECT_WITH_VERB =
  /^(?:(?:the|this|its|a) )?(?:fairway|green|putting surface|surface|hole|landing [a-z]+|tee|flag|pin|approach|second|drive|tee shot)(?: (?:also|here|itself|then))? (?:is|are|lies|sits|stands|runs|slopes|tilts|falls|leans|feeds|drifts|bends|turns|doglegs|swings|plays|climbs|rises|drops|has|can)\b/;

/** Whether the subject a match begins with is only a part of another: "the edge of the fairway is hidden". */
export const borrowed = (before: string, match: string): boolean =>
  SUBJECT_WITH_VERB.test(match) && PREPOSITION.test(before);
