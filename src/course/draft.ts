/**
 * What of a guide is not the club's own yet: placeholders, which are invented and stand for
 * what is to come; and what was proposed, worked out from the ground until the club says
 * that it is right. Whatever shows a hole says which of both it shows.
 */
import type { Course, Feature, Hole, MarkedField } from "./types.ts";

/** How a tip begins that nobody has written yet. */
export const PLACEHOLDER_TIP = "This text stands for the tip";

/** A course's description that nobody has written yet. */
export const PLACEHOLDER_DESCRIPTION = "Write here what a visitor should know of the course, in a paragraph or two.";

export const isPlaceholder = ({ tags }: Pick<Feature, "tags">): boolean => tags["placeholder"] === true;

export const isProposed = ({ tags }: Pick<Feature, "tags">): boolean => tags["proposed"] === true;

export const tipIsPlaceholder = ({ tip }: Pick<Hole, "tip">): boolean => tip.markdown.startsWith(PLACEHOLDER_TIP);

export interface HoleDraft {
  /** Features that are invented. */
  readonly shapes: readonly Feature[];
  /** Features that were worked out from others. */
  readonly proposed: readonly Feature[];
  readonly placeholderFields: readonly MarkedField[];
  readonly proposedFields: readonly MarkedField[];
  readonly tip: boolean;
}

/** What of a hole is a draft; undefined for one that is all the club's own. */
export function draftOf(hole: Pick<Hole, "features" | "placeholder" | "proposed" | "tip">): HoleDraft | undefined {
  const draft: HoleDraft = {
    shapes: hole.features.filter(isPlaceholder),
    proposed: hole.features.filter(isProposed),
    placeholderFields: hole.placeholder,
    proposedFields: hole.proposed,
    tip: tipIsPlaceholder(hole),
  };
  const { shapes, proposed, placeholderFields, proposedFields, tip } = draft;
  return shapes.length + proposed.length + placeholderFields.length + proposedFields.length > 0 || tip
    ? draft
    : undefined;
}

/** Sources that do not say yet whom to name or under what licence, and files that no source is given for. */
export function unnamedSources({ credits, brought }: Pick<Course, "credits" | "brought">): string[] {
  const open = credits
    .filter(({ text, licence }) => text === undefined || licence === undefined)
    .flatMap(({ files }) => files);
  const listed = new Set(credits.flatMap(({ files }) => files));
  return [...new Set([...open, ...brought.filter((file) => !listed.has(file))])];
}
