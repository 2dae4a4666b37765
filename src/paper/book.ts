/** The pocket book: its pages in order, as markup for one stylesheet (`styles/paper.css`). */
import type { Club, TeeSet } from "../course/types.ts";
import type { PlateTheme } from "../draw/palette.ts";
import type { PlateGround } from "../draw/relief.ts";
import type { LengthUnit } from "../geo/units.ts";
import type { MeasuredCourse, MeasuredHole } from "../measure/types.ts";
import type { Words } from "../site/language/words.ts";
import { holeOpening } from "./book-hole.ts";
import {
  backPage,
  cardPage,
  cautionPages,
  coverPage,
  howToPage,
  localRulePages,
  notesPage,
  type BookMatter,
} from "./book-matter.ts";
import { padding } from "./imposition.ts";

/** More sets than this find no room beside each other on a page. */
export const MOST_TEES = 4;

export interface BookOptions {
  readonly club: Club;
  readonly measured: MeasuredCourse;
  /** Tee sets whose figures are printed, at most {@link MOST_TEES}. */
  readonly teeIds: readonly string[];
  readonly unit: LengthUnit;
  readonly words: Words;
  /** `ink` for black and white. */
  readonly theme: PlateTheme;
  readonly groundOf: (hole: MeasuredHole) => PlateGround | undefined;
  readonly courseGround: PlateGround | undefined;
}

export interface Book {
  readonly title: string;
  /** One for each page, in reading order; a multiple of four, so that the book can be stapled. */
  readonly leaves: readonly string[];
}

type Kind = "cover" | "matter" | "plate" | "figures" | "back";

/** Tee sets of a course by id, in the course's order. */
export const teeSets = ({ course }: MeasuredCourse, ids: readonly string[]): TeeSet[] =>
  course.tees.filter(({ id }) => ids.includes(id));

/** The sets a book is made for when nobody has chosen: the first that fit, the course's default among them. */
export function usualTees({ course: { tees, defaultTee } }: MeasuredCourse): string[] {
  const ids = tees.map(({ id }) => id).slice(0, MOST_TEES);
  return ids.includes(defaultTee) ? ids : [...ids.slice(0, MOST_TEES - 1), defaultTee];
}

/**
 * Composes the book. Page 1 is the cover, a right-hand page, so even pages are left-hand
 * ones; each hole begins on one.
 *
 * @throws RangeError when no tee set of the course, or too many, are chosen.
 */
export function composeBook(options: BookOptions): Book {
  const { club, measured, teeIds, unit, words, theme, groundOf } = options;
  const tees = teeSets(measured, teeIds);
  if (tees.length === 0 || tees.length > MOST_TEES)
    throw new RangeError(`A book holds figures from one to ${MOST_TEES} tee sets, not ${tees.length}.`);
  const matter: BookMatter = { club, measured, tees, unit, words, theme, courseGround: options.courseGround };

  const pages: { readonly kind: Kind; readonly html: string }[] = [{ kind: "cover", html: coverPage(matter) }];
  const add = (kind: Kind, ...html: readonly string[]): void => {
    for (const one of html) pages.push({ kind, html: one });
  };
  add("matter", howToPage(matter), ...cautionPages(matter));
  // The first hole opens on a left-hand page, which is an even one.
  if (pages.length % 2 === 0) add("matter", notesPage(matter));
  for (const hole of measured.holes) {
    const [plate, figures] = holeOpening({
      club,
      measured: hole,
      teeIds,
      unit,
      words,
      theme,
      ground: groundOf(hole),
      heights: measured.ground,
    });
    add("plate", plate);
    add("figures", figures);
  }
  add("matter", ...localRulePages(matter), cardPage(matter));
  for (let blank = padding(pages.length + 1); blank > 0; blank--) add("matter", notesPage(matter));
  add("back", backPage(matter));

  return {
    title: words.paper.book.documentTitle({ course: measured.course.name }),
    leaves: pages.map(({ kind, html }, i) => {
      const number = i + 1;
      const folio = kind === "cover" || kind === "back" ? "" : `<p class="folio" aria-hidden="true">${number}</p>`;
      return `<section class="leaf ${kind} ${number % 2 === 0 ? "verso" : "recto"}"><div class="page">${html}${folio}</div></section>`;
    }),
  };
}
