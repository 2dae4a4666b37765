/**
 * A guide as it is seen in one of its languages: every text replaced where a translation
 * says it, and marked where none does. Figures are not touched; a view is measured no anew.
 */
import type { Club, Course, Feature, Hole, Notice, Photo, Tip, Translatable } from "../../course/types.ts";
import type { MeasuredCourse, MeasuredHole, PlacedFeature } from "../../measure/types.ts";
import type { Guide } from "../load/guide.ts";

/** Views in the order of the club's languages; the first is the guide itself. */
export const guideViews = (guide: Guide): Guide[] => guide.club.languages.map((language) => guideIn(guide, language));

const views = new WeakMap<Guide, Map<string, Guide>>();

/** @param language one of the club's, or another, in which only the guide's own words will be */
export function guideIn(guide: Guide, language: string): Guide {
  if (language === guide.club.language) return guide;
  const made = views.get(guide) ?? new Map<string, Guide>();
  views.set(guide, made);
  const view = made.get(language) ?? translated(guide, language);
  made.set(language, view);
  return view;
}

function translated(guide: Guide, language: string): Guide {
  const courses = guide.courses.map((measured) => courseIn(measured, language));
  return {
    ...guide,
    club: clubIn(
      guide.club,
      courses.map(({ course }) => course),
      language,
    ),
    courses,
  };
}

/** Some texts replaced by their translation; which ones had none is told beside them. */
function told<T extends Translatable, F extends keyof T & string>(
  original: T,
  said: { readonly [Field in F]?: T[Field] | undefined } | undefined,
  fields: readonly F[],
): T {
  const texts = { ...original };
  const untranslated: string[] = [];
  for (const field of fields) {
    const value: unknown = original[field];
    if (value === undefined || value === "" || (Array.isArray(value) && value.length === 0)) continue;
    const translation = said?.[field];
    if (translation === undefined) untranslated.push(field);
    else texts[field] = translation;
  }
  return { ...texts, untranslated };
}

function clubIn(club: Club, courses: readonly Course[], language: string): Club {
  const said = club.translations[language];
  const { address } = club.contact;
  return {
    ...told(club, said, ["invented", "cautions", "localRules"]),
    language,
    // Names and addresses are the same in every language until somebody says otherwise.
    name: said?.name ?? club.name,
    place: said?.place ?? club.place,
    contact: { ...club.contact, address: address === undefined ? undefined : (said?.address ?? address) },
    courses,
  };
}

/** The measured course and holes that a view shows, so that what is worked out from the ground is worked out once. */
const originals = new WeakMap<object, object>();

export const originalHole = (hole: MeasuredHole): MeasuredHole =>
  (originals.get(hole) as MeasuredHole | undefined) ?? hole;
export const originalCourse = (course: MeasuredCourse): MeasuredCourse =>
  (originals.get(course) as MeasuredCourse | undefined) ?? course;

function courseIn(measured: MeasuredCourse, language: string): MeasuredCourse {
  const { course } = measured;
  const said = course.translations[language];
  const tees = course.tees.map((tee) => ({ ...tee, name: said?.tees[tee.id] ?? tee.name }));
  const shared = said?.features ?? {};
  const seen: Course = {
    ...told(course, said, ["description", "sources"]),
    name: said?.name ?? course.name,
    tees,
    features: named(course.features, shared),
    notices: noticesIn(course.notices, said?.notices),
    holes: course.holes.map((hole) => holeIn(hole, language)),
  };
  const view: MeasuredCourse = {
    ...measured,
    course: seen,
    placed: placedWith(measured.placed, () => shared),
    holes: measured.holes.map((hole, i) => measuredHoleIn(hole, seen, seen.holes[i]!, shared, language)),
  };
  originals.set(view, measured);
  return view;
}

function measuredHoleIn(
  measured: MeasuredHole,
  course: Course,
  hole: Hole,
  shared: Readonly<Record<string, string>>,
  language: string,
): MeasuredHole {
  const own = measured.hole.translations[language]?.features ?? {};
  const view: MeasuredHole = {
    ...measured,
    course,
    hole,
    placed: placedWith(measured.placed, (feature) => (feature.shared ? shared : own)),
    tees: measured.tees.map((tee) => ({ ...tee, tee: course.tees.find(({ id }) => id === tee.tee.id) ?? tee.tee })),
  };
  originals.set(view, measured);
  return view;
}

function holeIn(hole: Hole, language: string): Hole {
  const said = hole.translations[language];
  const tip: Tip = said?.tip ?? hole.tip;
  const untranslated = [
    ...(said?.tip || hole.tip.markdown === "" ? [] : ["tip"]),
    ...(hole.aim === undefined || said?.aim !== undefined ? [] : ["aim"]),
  ];
  return {
    ...hole,
    untranslated,
    aim: said?.aim ?? hole.aim,
    name: said?.name ?? hole.name,
    tip,
    photos: hole.photos.map((photo): Photo => told(photo, said?.photos[photo.file], ["alt", "caption"])),
    features: named(hole.features, said?.features ?? {}),
    notices: noticesIn(hole.notices, said?.notices),
  };
}

const noticesIn = (notices: readonly Notice[], said: readonly (string | undefined)[] | undefined): Notice[] =>
  notices.map((notice, i) => told(notice, { text: said?.[i] }, ["text"]));

type Names = Readonly<Record<string, string>>;

const renamed = (feature: Feature, names: Names): Feature => {
  const name = names[feature.id];
  return name === undefined ? feature : { ...feature, name };
};

const named = (features: readonly Feature[], names: Names): readonly Feature[] =>
  Object.keys(names).length === 0 ? features : features.map((feature) => renamed(feature, names));

const placedWith = (
  placed: ReadonlyMap<string, PlacedFeature>,
  namesOf: (placed: PlacedFeature) => Names,
): ReadonlyMap<string, PlacedFeature> =>
  new Map([...placed].map(([id, one]) => [id, { ...one, feature: renamed(one.feature, namesOf(one)) }]));

/** The language a text stands in where that is not the page's, for its `lang`; undefined where it is. */
export const otherLanguage = (club: Pick<Club, "languages">, thing: Translatable, field: string): string | undefined =>
  thing.untranslated?.includes(field) ? club.languages[0] : undefined;
