/** The figures a tip holds, as they are asked for: what one says and its translation does not. */

const FIGURE = /(?<![\p{L}\p{N}:]):([a-z]+)(?:\[([^\]\n]*)\])?(?:\{([^}\n]*)\})?/gu;

/** A figure in one spelling: options in order, without what may be left out. */
function spelled(name: string, target: string | undefined, options: string | undefined): string {
  const parts = (options ?? "")
    .split(/[\s,]+/)
    .filter((part) => part !== "")
    .map((part) => part.replace(/=(["'])(.*)\1$/, "=$2"))
    .sort();
  const feature = target?.trim() ?? "";
  return `:${name}${feature === "" ? "" : `[${feature}]`}${parts.length === 0 ? "" : `{${parts.join(" ")}}`}`;
}

/** Each figure of a tip once, in reading order. */
export const figuresOf = (markdown: string): readonly string[] => [
  ...new Set([...markdown.matchAll(FIGURE)].map(([, name, target, options]) => spelled(name!, target, options))),
];

export interface FigureDifference {
  /** In the original and not in the translation. */
  readonly missing: readonly string[];
  /** In the translation and not in the original. */
  readonly extra: readonly string[];
}

/** How the figures of a translated tip differ from those of the original: name, feature and options, as a set. */
export function figureDifference(original: string, translation: string): FigureDifference {
  const [ours, theirs] = [figuresOf(original), figuresOf(translation)];
  return {
    missing: ours.filter((figure) => !theirs.includes(figure)),
    extra: theirs.filter((figure) => !ours.includes(figure)),
  };
}
