/**
 * What a feature may be when no tag says so: GPX and KML have names and folders only, and
 * a GIS layer often has its meaning in its own name. Words of the trade in English, German and French; whatever
 * is taken from them is reported as a guess.
 */

/** The shape a kind needs. */
type Shape = "point" | "line" | "area";

interface Word {
  readonly pattern: RegExp;
  readonly shapes: readonly Shape[];
  readonly tags: Readonly<Record<string, string>>;
}

/** First match wins: the narrower word stands before the wider one. */
const WORDS: readonly Word[] = [
  {
    pattern: /\b(line of play|centre ?line|center ?line|playing line|spiellinie|spielbahnachse|ligne de jeu)\b/,
    shapes: ["line"],
    tags: { golf: "hole" },
  },
  {
    pattern: /\b(out of bounds|o\.?o?\.?b|boundary|ausgrenze|hors limites?)\b/,
    shapes: ["line", "area"],
    tags: { golf: "out_of_bounds" },
  },
  { pattern: /\b(driving range|practice range)\b/, shapes: ["area"], tags: { golf: "driving_range" } },
  { pattern: /\b(club ?h(ouse|aus))\b/, shapes: ["area"], tags: { golf: "clubhouse" } },
  { pattern: /\b(cart|buggy) ?paths?\b/, shapes: ["line"], tags: { golf: "cartpath" } },
  { pattern: /\b(bunkers?|sand traps?|traps?|sandhindernis(se)?)\b/, shapes: ["area"], tags: { golf: "bunker" } },
  {
    pattern: /\b(lateral|red penalty|seitliches wasserhindernis|rote penalty area|rote strafzone)\b/,
    shapes: ["area", "line"],
    tags: { golf: "lateral_water_hazard" },
  },
  {
    pattern:
      /\b(water hazard|yellow penalty|frontales wasserhindernis|wasserhindernis|gelbe penalty area|gelbe strafzone)\b/,
    shapes: ["area", "line"],
    tags: { golf: "water_hazard" },
  },
  {
    pattern: /\b(ponds?|lakes?|loch|lochan|reservoir|water|teich|weiher|see|étang|lac)\b/,
    shapes: ["area"],
    tags: { natural: "water" },
  },
  {
    pattern: /\b(burn|stream|brook|creek|ditch|bach|graben|ruisseau)\b/,
    shapes: ["line"],
    tags: { waterway: "stream" },
  },
  { pattern: /\b(fairways?|fwy)\b/, shapes: ["area"], tags: { golf: "fairway" } },
  {
    pattern: /\b(tees?|tee box(es)?|teeing (ground|area)s?|abschl(ag|äge)|départs?)\b/,
    shapes: ["point", "area"],
    tags: { golf: "tee" },
  },
  { pattern: /\b(pin|flag|flagstick|hole location)\b/, shapes: ["point"], tags: { golf: "pin" } },
  { pattern: /\b(greens?|grüns?)/, shapes: ["area"], tags: { golf: "green" } },
  { pattern: /\b(rough)\b/, shapes: ["area"], tags: { golf: "rough" } },
  { pattern: /\b(gorse|whins?|scrub|bush(es)?)\b/, shapes: ["area"], tags: { natural: "scrub" } },
  { pattern: /\b(heather|heath)\b/, shapes: ["area"], tags: { natural: "heath" } },
  { pattern: /\b(woods?|forest|trees|wald|bäume|bois|forêt)\b/, shapes: ["area"], tags: { natural: "wood" } },
  { pattern: /\b(tree)\b/, shapes: ["point"], tags: { natural: "tree" } },
  { pattern: /\b(wall|dyke)\b/, shapes: ["line"], tags: { barrier: "wall" } },
  { pattern: /\b(fence)\b/, shapes: ["line"], tags: { barrier: "fence" } },
  { pattern: /\b(hedge)\b/, shapes: ["line"], tags: { barrier: "hedge" } },
  { pattern: /\b(cairn)\b/, shapes: ["point"], tags: { man_made: "cairn" } },
  { pattern: /\b(lighthouse)\b/, shapes: ["point"], tags: { man_made: "lighthouse" } },
  { pattern: /\b(hole)\b/, shapes: ["line"], tags: { golf: "hole" } },
];

const plain = (text: string): string => text.toLowerCase().replace(/[_/]+/g, " ");

export interface Guess {
  readonly tags: Readonly<Record<string, string>>;
  /** The word that said so. */
  readonly word: string;
}

/** What words say a feature of a shape is; the nearest words come last and are asked first. */
export function kindFromWords(words: readonly string[], shape: Shape): Guess | undefined {
  for (const text of [...words].reverse()) {
    for (const { pattern, shapes, tags } of WORDS) {
      const found = shapes.includes(shape) ? pattern.exec(plain(text)) : null;
      if (found) return { tags, word: found[0] };
    }
  }
  return undefined;
}

/**
 * The hole that words name: `Hole 7`, `7th green`, `7 bunker left`, `H07`; undefined without one, or with
 * one beyond 18.
 */
export function holeFromWords(words: readonly string[]): number | undefined {
  for (const text of [...words].reverse()) {
    const found =
      /\b(?:hole|bahn|loch|trou|no\.?|h|#)[\s.:#-]*0?(\d{1,2})\b/.exec(plain(text)) ??
      /\b(\d{1,2})(?:st|nd|rd|th)\b/.exec(plain(text)) ??
      /^\s*0?(\d{1,2})(?=[\s.:,-]|$)/.exec(plain(text));
    const number = Number(found?.[1]);
    if (number >= 1 && number <= 18) return number;
  }
  return undefined;
}

/** The tee set that words name, of those the course has. */
export function teeFromWords(
  words: readonly string[],
  tees: readonly { readonly id: string; readonly name: string }[],
): string | undefined {
  for (const text of [...words].reverse()) {
    const own = ` ${plain(text).replace(/[^\p{L}\p{N}]+/gu, " ")} `;
    const found = tees.find(({ id, name }) =>
      [id.replaceAll("-", " "), plain(name)].some((word) => own.includes(` ${word} `)),
    );
    if (found) return found.id;
  }
  return undefined;
}
