/** A course as search engines read it: schema.org's GolfCourse, in JSON-LD. */
import type { Club } from "../course/types.ts";
import type { MeasuredCourse } from "../measure/types.ts";

/** What depends on where the guide is served from; addresses in full, or left out where that is not known. */
export interface CourseAddresses {
  readonly page: string | undefined;
  readonly map: string | undefined;
  readonly picture: string | undefined;
}

/** Four decimals of a degree: some ten metres, and near enough to find a golf course. */
const rounded = (degrees: number): number => Math.round(degrees * 1e4) / 1e4;

/**
 * https://schema.org/GolfCourse: name, club, address, contact, position. What the club does
 * not say is left out. An invented course says so, as its pages do.
 */
export function golfCourseData(
  club: Club,
  { course, holes, frame }: MeasuredCourse,
  description: string,
  { page, map, picture }: CourseAddresses,
): object {
  const tees = holes.flatMap(({ tees: [first] }) => (first ? [first.marker] : []));
  const mean = (axis: 0 | 1): number => tees.reduce((sum, tee) => sum + tee[axis], 0) / tees.length;
  const [longitude, latitude] = frame.toPosition([mean(0), mean(1)]);
  const { email, telephone, website, address } = club.contact;
  return {
    "@context": "https://schema.org",
    "@type": "GolfCourse",
    name: course.name,
    description,
    ...(club.invented === undefined ? {} : { disambiguatingDescription: club.invented }),
    ...(page === undefined ? {} : { "@id": page, url: page }),
    ...(picture === undefined ? {} : { image: picture }),
    ...(map === undefined ? {} : { hasMap: map }),
    ...(address === undefined ? {} : { address }),
    ...(telephone === undefined ? {} : { telephone }),
    ...(email === undefined ? {} : { email }),
    geo: { "@type": "GeoCoordinates", latitude: rounded(latitude), longitude: rounded(longitude) },
    parentOrganization: { "@type": "SportsClub", name: club.name, ...(website === undefined ? {} : { url: website }) },
  };
}

/** JSON that may stand within a script element: it can close none and open none. */
export const jsonForScript = (data: object): string => JSON.stringify(data).replaceAll("<", "\\u003c");
