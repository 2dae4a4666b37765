/** Characters that stand in a text and are not seen, or that show what follows in another order. */

/**
 * The control codes but tab and line ends, U+FFFE and U+FFFF, and the embeddings, overrides
 * and isolates of Unicode's bidirectional algorithm (UAX #9), which can show a figure's
 * digits the other way round. Its plain marks, which Hebrew and Arabic need, are not among them.
 */
// eslint-disable-next-line no-control-regex
const HIDDEN = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069\ufffe\uffff]/;

/** Half of a pair of UTF-16 units. */
const LONE = /\p{Surrogate}/u;

export interface Hidden {
  readonly offset: number;
  readonly code: number;
}

/** The first such character of a text, or undefined. */
export function firstHidden(text: string): Hidden | undefined {
  const found = HIDDEN.exec(text) ?? LONE.exec(text);
  return found ? { offset: found.index, code: found[0].charCodeAt(0) } : undefined;
}

export function hiddenMessage(code: number): string {
  if (code < 0x20 || (code >= 0x7f && code < 0xa0))
    return `A control character (code ${code}) stands here. Remove it.`;
  return `A character that is not seen (U+${code.toString(16).toUpperCase().padStart(4, "0")}) stands here. Remove it.`;
}
