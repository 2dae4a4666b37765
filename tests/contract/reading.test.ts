/** What the build writes, the browser reads; and nothing else does it read. */
import { describe, expect, test } from "vitest";
import { readCourseData } from "../../src/contract/course-data.ts";
import { FILM_VERSION, readFilmData, type FilmData } from "../../src/contract/film-data.ts";
import { readGroundData } from "../../src/contract/ground-data.ts";
import { readHoleData } from "../../src/contract/hole-data.ts";
import { UnreadableData } from "../../src/contract/reading.ts";
import { holeFilm } from "../../src/flyover/hole-film.ts";
import { trackOf } from "../../src/flyover/track.ts";
import { courseData } from "../../src/site/files/course-data.ts";
import { groundData } from "../../src/site/files/ground-data.ts";
import { holeData } from "../../src/site/files/hole-data.ts";
import { words } from "../../src/site/language/words.ts";
import { DOGLEG, hilly } from "../support/hilly-course.ts";
import { sample } from "../islands/sample.ts";

const measured = sample();
const hills = hilly(DOGLEG);
const TILES = { minimumZoom: 12, maximumZoom: 16, bounds: [-9.1, 56.4, -9, 56.5] };

function filmData(): FilmData {
  const [hole] = hills.holes;
  const film = holeFilm(hole!, hole!.tees[0]!, "Aim left. It is far.", 200, hills.ground);
  return {
    version: FILM_VERSION,
    hole: hole!.hole.number,
    origin: hole!.frame.origin,
    track: trackOf(film.flight, 2),
    chapters: film.chapters.map(({ kind, seconds }) => ({ kind, seconds, title: kind })),
    cues: film.cues.map((cue) => ({ ...cue, language: "de" })),
  };
}

const FILES: readonly (readonly [name: string, read: (value: unknown) => unknown, written: unknown])[] = [
  [
    "hole.json",
    readHoleData,
    {
      ...holeData(measured.holes[0]!, "yards"),
      ground: { ...TILES, tiles: "../ground/{z}/{x}/{y}.webp", encoding: "terrarium" },
      photo: { ...TILES, tiles: "../air/{z}/{x}/{y}.webp" },
    },
  ],
  ["course.json", readCourseData, courseData(measured, "metres", (hole) => `${hole}/`)],
  ["ground.json", readGroundData, groundData(hills, hills.holes[0]!, "yards", words("en"))],
  ["ground.json", readGroundData, groundData(measured, measured.holes[0]!, "metres", words("en"))],
  ["the film", readFilmData, filmData()],
];

const sent = (written: unknown): unknown => JSON.parse(JSON.stringify(written));

type Step = string | number;

/** Every place in a value that holds something, the whole itself left out. */
function placesIn(value: unknown, at: readonly Step[] = []): (readonly Step[])[] {
  if (typeof value !== "object" || value === null) return [at];
  const parts: [Step, unknown][] = Array.isArray(value)
    ? value.map((part, i): [Step, unknown] => [i, part])
    : Object.entries(value);
  return [...(at.length === 0 ? [] : [at]), ...parts.flatMap(([step, part]) => placesIn(part, [...at, step]))];
}

/** A copy in which one place holds something else. */
function damaged(value: unknown, [step, ...on]: readonly Step[], other: unknown): unknown {
  if (step === undefined) return other;
  if (Array.isArray(value)) return value.map((part: unknown, i) => (i === step ? damaged(part, on, other) : part));
  return Object.fromEntries(
    Object.entries(value as object).map(([name, part]: [string, unknown]) => [
      name,
      name === step ? damaged(part, on, other) : part,
    ]),
  );
}

/** As a fault names it. */
const named = (place: readonly Step[]): string =>
  place.map((step) => (typeof step === "number" ? `[${step}]` : `.${step}`)).join("");

function faultOf(read: (value: unknown) => unknown, value: unknown): string {
  try {
    read(value);
  } catch (fault) {
    if (fault instanceof UnreadableData) return fault.message;
    throw fault;
  }
  return "";
}

describe.each(FILES)("%s", (name, read, written) => {
  test("as the build writes it is read as it is", () => {
    expect(read(sent(written))).toEqual(sent(written));
  });

  test("damaged in any one place it is refused, and the fault names the place and what helps", () => {
    const places = placesIn(sent(written));
    expect(places.length).toBeGreaterThan(50);
    for (const place of places) {
      const fault = faultOf(read, damaged(sent(written), place, { unheard: "of" }));
      if (place[0] === "version") expect(fault).toContain(`The version of ${name}`);
      else expect(fault).toContain(`${name}${named(place)}`);
      expect(fault).toContain("Reload the page");
    }
  });

  test("of another version it is refused whatever else is in it", () => {
    expect(faultOf(read, { version: 0 })).toMatch(/^The version of .+ is 0, not \d, which this page reads\. Reload/);
    expect(faultOf(read, { ...(sent(written) as object), version: 99 })).toContain("is 99, not");
  });

  test.each([[null], ["<!doctype html>"], [[]], [{}], [7]])("is not %j", (value) => {
    expect(faultOf(read, value)).not.toBe("");
  });

  test("may hold more than this page knows", () => {
    expect(() => read({ ...(sent(written) as object), later: true })).not.toThrow();
  });
});

test("a film whose columns do not go on equally long is refused", () => {
  const film = filmData();
  expect(faultOf(readFilmData, { ...film, track: { ...film.track, north: film.track.north.slice(1) } })).toContain(
    "five columns",
  );
});
