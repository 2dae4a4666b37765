/** What pages say of drafts and of whose the shapes are. */
import { describe, expect, it } from "vitest";
import { GUIDE_LANGUAGES } from "../../src/course/guide-languages.ts";
import type { Course, Credit } from "../../src/course/types.ts";
import { computedFrom, creditText, draftLine, filmNote } from "../../src/site/text/draft-line.ts";
import { words } from "../../src/site/language/words.ts";
import { courseGeoJson, writeGeoJson } from "../../src/tell/export/geojson.ts";
import { courseGpx } from "../../src/tell/export/gpx.ts";
import { courseKml } from "../../src/tell/export/kml.ts";
import { plainCourse } from "../check/support.ts";

const place = { file: "test/course.yaml", line: 4, column: 5 };
const osm: Credit = {
  source: 0,
  text: "© OpenStreetMap contributors",
  licence: "ODbL 1.0",
  link: "https://www.openstreetmap.org/copyright",
  files: ["map.osm"],
  place,
};
const marked = (mark: "placeholder" | "proposed", kind: string): Course => {
  const plain = plainCourse();
  return {
    ...plain,
    holes: plain.holes.map((hole) => ({
      ...hole,
      features: hole.features.map((feature) =>
        feature.kind === kind ? { ...feature, tags: { ...feature.tags, [mark]: true } } : feature,
      ),
    })),
  };
};
const credited = (): Course => ({
  ...plainCourse(),
  sources: ["© OpenStreetMap contributors"],
  credits: [osm],
  brought: ["map.osm"],
});

describe.each(GUIDE_LANGUAGES)("in %s", (tag) => {
  const language = words(tag);
  it("says nothing of a course that is all the club's own", () => {
    expect([
      draftLine(plainCourse(), language),
      creditText(plainCourse(), language),
      filmNote(plainCourse(), language, plainCourse().holes),
    ]).toEqual([undefined, undefined, undefined]);
  });

  it("tells each reason for a draft apart", () => {
    const lines = [
      marked("placeholder", "green"),
      marked("proposed", "tee-marker"),
      plainCourse({ rest: { placeholder: ["card"] } }),
      { ...credited(), credits: [] },
    ].map((course) => draftLine(course, language));
    expect(new Set(lines).size).toBe(4);
    for (const line of lines) expect(line).toMatch(/^(?:Draft|Entwurf|Brouillon\u00a0): .+\.$/);
  });

  it("claims a survey only where there is one", () => {
    const say = (course: Course): string => computedFrom(course, language);
    expect(say({ ...credited(), surveyed: undefined })).toContain("© OpenStreetMap contributors");
    expect(say({ ...credited(), surveyed: "2026-05-14" })).toBe(language.footer.measured);
    expect(say({ ...marked("placeholder", "green"), surveyed: "2026-05-14" })).not.toBe(language.footer.measured);
    expect(say({ ...plainCourse(), surveyed: undefined, sources: [] })).not.toBe(language.footer.measured);
  });

  it("names whom a licence asks for, on paper, film and in exports", () => {
    const whole = "© OpenStreetMap contributors (ODbL 1.0)";
    expect(creditText(credited(), language)).toContain(whole);
    expect(filmNote(credited(), language, credited().holes)).toContain(whole);
    for (const text of [writeGeoJson(courseGeoJson(credited())), courseGpx(credited()), courseKml(credited())])
      expect(text).toContain(whole);
    expect(writeGeoJson(courseGeoJson(plainCourse()))).not.toContain("attribution");
  });
});
