/** A tip's words and sentences, as read: a figure counts as one word. */

export interface TipWords {
  readonly words: readonly string[];
  readonly sentences: number;
}

const FIGURE = /(?<![\p{L}\p{N}:]):[a-z]+(?:\[[^\]\n]*\])?(?:\{[^}\n]*\})?/gu;

export function wordsOfTip(markdown: string): TipWords {
  const text = markdown
    .replace(FIGURE, " figure ")
    .replace(/\]\([^)\n]*\)/g, " ")
    .replace(/[*_`#>[\]]/g, " ");
  const words = text.match(/[\p{L}\p{N}]+(?:['’-][\p{L}\p{N}]+)*/gu) ?? [];
  const sentences = text.split(/[.!?]+(?:\s|$)|\n\s*\n/).filter((part) => /[\p{L}\p{N}]/u.test(part)).length;
  return { words, sentences };
}

/** Syllables of an English word, by its groups of vowels: right to a few in a hundred, which evens out over a tip. */
export function syllables(word: string): number {
  const lower = word.toLowerCase().replace(/[^a-z]/g, "");
  if (lower.length <= 3) return 1;
  const groups = lower
    .replace(/(?:[^laeiouyscxzhg]es|[^aeiouytd]ed|[^laeiouy]e)$/, (end) => end[0]!)
    .match(/[aeiouy]+/g);
  return Math.max(1, groups?.length ?? 1);
}

/**
 * Reading ease from 0 to 100, higher is easier: 206.835 - 1.015 words a sentence - 84.6
 * syllables a word (R. Flesch, "A new readability yardstick", Journal of Applied Psychology
 * 32, 1948; constants from memory).
 */
export function readingEase({ words, sentences }: TipWords): number {
  const spoken = words.reduce((sum, word) => sum + syllables(word), 0);
  return 206.835 - 1.015 * (words.length / Math.max(1, sentences)) - 84.6 * (spoken / Math.max(1, words.length));
}
