/** Languages the guide's own words are written in, by primary language subtag (BCP 47). */
export const GUIDE_LANGUAGES = ["en", "de", "fr"] as const;

export type GuideLanguage = (typeof GUIDE_LANGUAGES)[number];

/** `pt` of `pt-BR`. */
export const primarySubtag = (tag: string): string => tag.toLowerCase().split("-")[0]!;

/** The one of some tags that is meant by another: the same, else one of the same language; `de` finds `de-AT`. */
export const tagFor = (tags: readonly string[], wanted: string): string | undefined =>
  tags.find((tag) => tag.toLowerCase() === wanted.toLowerCase()) ??
  tags.find((tag) => primarySubtag(tag) === primarySubtag(wanted));

/** The words that serve a tag; undefined where there is none. */
export const guideLanguageOf = (tag: string): GuideLanguage | undefined =>
  GUIDE_LANGUAGES.find((language) => language === primarySubtag(tag));
