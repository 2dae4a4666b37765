import type { Hole, Tip } from "./types.ts";

/** A hole's tip in every language it is written in, the content's first language first. */
export const everyTip = ({ tip, translations }: Hole): Tip[] => [
  tip,
  ...Object.values(translations).flatMap((translation) => translation.tip ?? []),
];
