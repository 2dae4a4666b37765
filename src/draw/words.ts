/** The few words a drawing says; a page in another language hands in its own. */
export interface PlateWords {
  readonly north: string;
  readonly par: string;
  readonly strokeIndex: string;
  readonly outOfBounds: string;
  readonly surveyed: (isoDate: string) => string;
  /** What the arcs, the boxed figures and the dotted figures mean. */
  readonly legend: { readonly arcs: string; readonly left: string; readonly hazard: string; readonly bend: string };
  readonly plateTitle: (hole: number, name: string) => string;
  readonly plateDescription: string;
  readonly courseTitle: (course: string) => string;
}

const MONTHS = ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"];

/** `2026-05-14` as `14 May 2026`; anything else as it stands. */
export function longDate(isoDate: string): string {
  const parts = /^(\d{4})-(\d{2})-(\d{2})/.exec(isoDate);
  const month = parts && MONTHS[Number(parts[2]) - 1];
  return parts && month ? `${Number(parts[3])} ${month} ${parts[1]}` : isoDate;
}

export const ENGLISH: PlateWords = {
  north: "N",
  par: "Par",
  strokeIndex: "Stroke index",
  outOfBounds: "out of bounds",
  surveyed: (isoDate) => `Surveyed ${longDate(isoDate)}`,
  legend: { arcs: "from the tee", left: "to the middle", hazard: "reach–carry", bend: "bend" },
  plateTitle: (hole, name) => `Hole ${hole}, ${name}: plan`,
  plateDescription: "Plan of the hole. Every figure on it is given in words and tables on this page.",
  courseTitle: (course) => `${course}: map of the course`,
};
