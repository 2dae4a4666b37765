/**
 * The guide that pages are made of: a club whose courses are measured. Whoever starts a
 * build puts it in place; pages ask for it.
 */
import type { Club } from "../../course/types.ts";
import type { MeasuredCourse } from "../../measure/types.ts";

export interface Guide {
  readonly club: Club;
  /** In the order of their folders' names. */
  readonly courses: readonly MeasuredCourse[];
  /** Absolute path of the content folder. */
  readonly contentFolder: string;
}

/**
 * The bundler gives pages their own copy of this module, so the guide cannot lie in a
 * variable here; it lies where every copy in the process looks.
 */
const KEY = Symbol.for("marram.guide");

type Holder = { [KEY]?: Guide | undefined };

const holder = globalThis as Holder;

export function setCurrentGuide(guide: Guide | undefined): void {
  holder[KEY] = guide;
}

/** The guide somebody has put in place already, if any. */
export const loadedGuide = (): Guide | undefined => holder[KEY];

/** @throws Error when nobody has loaded a guide: pages are rendered through the integration in astro.config.mjs. */
export function currentGuide(): Guide {
  const guide = holder[KEY];
  if (!guide) {
    throw new Error(
      "No guide is loaded. Pages are built with `npm run build` or `npx astro build`, whose configuration (astro.config.mjs) uses the integration that reads the content.",
    );
  }
  return guide;
}
