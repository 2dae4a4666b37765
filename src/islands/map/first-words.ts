/** What is said before the map and its other words are there: a page that is only read carries no more. */

export const FIRST_WORDS = {
  loading: "Opening the live map…",
  notLoaded: "The live map could not be loaded just now. The drawn sheet and the lists hold the same figures.",
} as const;
