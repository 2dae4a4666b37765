/** The tip as captions: split where one breathes, shown as long as it takes to read. */
import type { Cue } from "../contract/film-data.ts";

/**
 * Reading speed and shape of captions: 15 characters a second and two lines of at most 42
 * are usual for adult viewers (common practice among broadcasters, no source).
 */
export const READING = {
  charactersPerSecond: 15,
  leastSeconds: 1.6,
  lineCharacters: 42,
  lines: 2,
  gapSeconds: 0.12,
} as const;

/** Sentence ends, not those of "St." or "6.5": a full stop followed by a space and a capital or an opening mark. */
const SENTENCE = /(?<=[.!?…]["'”’)]?)\s+(?=["'“‘(]?[\p{Lu}\p{N}])/u;

/** A space that a line may end at: a no-break space holds a figure and its unit together. */
const SPACE = String.raw`[^\S\u00a0]`;

/** Where a long sentence may be cut, the better places first. */
const BREAKS = [
  `(?<=[;:])${SPACE}`,
  `(?<=,)${SPACE}`,
  `${SPACE}(?=(?:and|but|or|so|then|which|where|when|if|because|und|aber|oder|denn|sondern|dann|wo|wenn|weil|dass|sonst)\\s)`,
  SPACE,
].map((pattern) => new RegExp(pattern, "giu"));

/** Text short enough for one caption, cut at the best place near its middle. */
function pieces(sentence: string): string[] {
  const most = READING.lineCharacters * READING.lines;
  const text = sentence.trim();
  if (text.length <= most) return text === "" ? [] : [text];
  for (const pattern of BREAKS) {
    const cuts = [...text.matchAll(pattern)]
      .map(({ index }) => index)
      .filter((at) => at > 12 && at < text.length - 12);
    if (cuts.length === 0) continue;
    const middle = cuts.reduce((best, at) =>
      Math.abs(at - text.length / 2) < Math.abs(best - text.length / 2) ? at : best,
    );
    return [...pieces(text.slice(0, middle)), ...pieces(text.slice(middle))];
  }
  return [text];
}

/** A caption laid into lines of about equal length, none longer than a line holds where words allow. */
export function laidOut(text: string): string {
  if (text.length <= READING.lineCharacters) return text;
  const spaces = [...text.matchAll(new RegExp(SPACE, "gu"))].map(({ index }) => index);
  const middle = spaces.reduce<number | undefined>(
    (best, at) =>
      best === undefined || Math.abs(at - text.length / 2) < Math.abs(best - text.length / 2) ? at : best,
    undefined,
  );
  return middle === undefined ? text : `${text.slice(0, middle)}\n${text.slice(middle + 1)}`;
}

/**
 * Captions of a tip's plain text (paragraphs are lines), from a start. A golf figure is
 * read in full, so a no-break space counts as any other character.
 */
export function cuesOf(text: string, startSeconds = 0): Cue[] {
  let time = startSeconds;
  return text
    .split("\n")
    .flatMap((paragraph) => paragraph.split(SENTENCE))
    .flatMap(pieces)
    .map((piece) => {
      const cue: Cue = {
        startSeconds: time,
        endSeconds: time + Math.max(READING.leastSeconds, piece.length / READING.charactersPerSecond),
        text: laidOut(piece),
      };
      time = cue.endSeconds + READING.gapSeconds;
      return cue;
    });
}
