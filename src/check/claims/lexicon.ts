/** What a language brings to the matcher: all words are in a lexicon, none in the matcher. */
import type { ThingClass } from "../../course/kinds.ts";
import type { ClaimKind, ClaimPlace, ClaimSide, Compass, SlopeWay } from "./claim.ts";

/**
 * One way of saying something. Named groups of the expression carry the particulars; a
 * name may be followed by an underscore and a number, so that it can stand several times:
 *
 * - `no`, `not`: denies
 * - `lat`, `dep`: a side; `cdep` and `clat`: the two of one side ("short left"), read through
 *   {@link Lexicon.sides}; `both`: left and right; `way`: a slope's
 * - `num`: an amount, read through {@link Lexicon.numbers} or as digits
 * - `compass`, `unit`: as they say
 * - `strong`: "very"
 *
 * A word `named_<class>_<n>` stands for a feature called by its name.
 */
export interface ClaimPattern {
  readonly kind: ClaimKind;
  readonly expression: RegExp;
  readonly denied?: boolean;
  readonly side?: ClaimSide;
  readonly place?: ClaimPlace;
  readonly number?: number;
  readonly thing?: ThingClass;
  /** Also where advice is given: what is said is said by the way. */
  readonly inAdvice?: boolean;
  /** Not where the segment has this. */
  readonly unless?: RegExp;
  /** Only behind these words: "another", which stands for what was named before. */
  readonly needsBefore?: RegExp;
  /** Not where the words right before or behind the match are these. */
  readonly notAfter?: RegExp;
  readonly notBefore?: RegExp;
}

export const THING_CLASSES = [
  "bunker",
  "water",
  "out-of-bounds",
  "trees",
  "gorse",
  "wall",
  "road",
] as const satisfies readonly ThingClass[];

/** An expression for each class of thing. */
export const forThings = (make: (kind: ThingClass) => RegExp): Readonly<Record<ThingClass, RegExp>> =>
  Object.fromEntries(THING_CLASSES.map((kind) => [kind, make(kind)])) as Record<ThingClass, RegExp>;

export interface Lexicon {
  /** BCP 47 primary language. */
  readonly language: string;
  /** A tip with the full stops of ordinals and abbreviations put away; as long as it was, so that places stay. */
  prepare(markdown: string): string;
  /**
   * A word as written, but for a straight apostrophe, as patterns know it: lower case, short
   * forms written out; where words are inflected, in their plain form.
   */
  spell(word: string): readonly string[];
  /** The words of a feature's name, spelled, by which a tip is sure to call it: without an article that changes. */
  nameWords(words: readonly string[]): readonly string[];
  /** Longest and most particular first: of two matches of a kind that overlap the first counts. */
  readonly patterns: readonly ClaimPattern[];
  /** A word without which a kind is not said at all: spares the longer expressions. */
  readonly anchors: Readonly<Partial<Record<ClaimKind, RegExp>>>;
  /** What a text that mentions a class of thing at all has among its words. */
  readonly mentions: Readonly<Record<ThingClass, RegExp>>;
  readonly sides: Readonly<Record<string, "left" | "right" | "short" | "long">>;
  readonly numbers: Readonly<Record<string, number>>;
  /** Whether a segment says nothing of this hole as it is: a question, a condition, the past, another hole. */
  silent(segment: string, ends: string, holeNumber: number): boolean;
  /** Whether the words at an index are advice to the player. */
  advice(segment: string): (index: number) => boolean;
  /**
   * Whether the words about a match deny something, or tell of what kind the match's own denial is: what is
   * denied is not sure.
   */
  denied(before: string, after: string, match: string): boolean;
  /** Whether a match's own subject belongs to words before it: "the edge of the fairway is hidden". */
  borrowed(before: string, match: string): boolean;
  /** Whether words at an index tell how something looks, not how it is. */
  seeming(segment: string, index: number): boolean;
  /** Whether the words before a thing warn of it: its side counts although they are advice. */
  warned(before: string): boolean;
  /** Which ways a slope falls, by the words of group `way`; "to the back right" is two. */
  way(words: string): readonly SlopeWay[];
  compass(words: string): Compass | undefined;
  /** The place words about a match speak of. */
  place(before: string, match: string, after: string): ClaimPlace | undefined;
}
