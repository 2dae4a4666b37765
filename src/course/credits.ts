/** Whom a course's sources ask to name, with the licence. Pure. */
import type { Course } from "./types.ts";

export interface CreditLine {
  /** `© OpenStreetMap contributors (ODbL 1.0)`, in the language of the course as it is seen. */
  readonly text: string;
  readonly link: string | undefined;
}

export const creditLines = ({ credits, sources }: Pick<Course, "credits" | "sources">): CreditLine[] =>
  credits.flatMap(({ source, text, licence, link }) =>
    text === undefined || licence === undefined ? [] : [{ text: `${sources[source] ?? text} (${licence})`, link }],
  );
