/** A club that is just beginning: what is asked, what is written. */
import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { describe, expect, test } from "vitest";
import { parSuits } from "../../src/measure/par-length.ts";
import { askFor, readAnswers, readPosition, readTees } from "../../src/bring/new/answers.ts";
import type { NewClub } from "../../src/bring/new/answers.ts";
import { newClub } from "../../src/bring/new/club.ts";
import { readContent } from "../../src/read/content.ts";
import { loadChecked } from "../../src/site/load/checked.ts";
import { linesOf } from "../fixtures/marked.ts";

const said = (read: () => unknown): string => {
  try {
    return JSON.stringify(read());
  } catch (error) {
    return (error as Error).message;
  }
};

describe("a position", () => {
  test.each([
    "lat=56.5,lon=-9.25",
    "lon=-9.25, lat=56.5",
    "latitude: 56.5; longitude: -9.25",
    "56.5 N, 9.25 W",
    "9.25w,56.5n",
    "56.5° N, 9.25° W",
    "lat=56.5 lon=-9.25",
    "56.5,-9.25",
    "56.5, -9.25",
    "56.5 -9.25",
    "56,5; -9,25",
    "56,5 -9,25",
    "56° 30' N, 9° 15' W",
    "56°30'00\"N 9°15'00\"W",
    "N 56 30 W 9 15",
    "N56° 30.0', W9° 15.0'",
    "-9.25 E, 56.5 N",
    "https://maps.example/@56.5,-9.25,15z",
    "https://maps.example/#map=15/56.5/-9.25",
    "https://maps.example/?mlat=56.5&mlon=-9.25#x",
    "https://maps.example/?q=56.5,-9.25",
    "geo:56.5,-9.25;u=35",
  ])("%s", (typed) => {
    expect(readPosition(typed)).toEqual([-9.25, 56.5]);
  });
  test("that is none is refused with what to type", () => {
    expect(
      [
        "lat=56.5",
        "56.5",
        "lat=56.5,lat=57",
        "lat=156.5,lon=2",
        "95, 9",
        "56 75 N, 9 W",
        "lat=1e1,lon=2",
        "here",
        "",
        "1,2,3",
      ].map((typed) => said(() => readPosition(typed))),
    ).toMatchInlineSnapshot(`
      [
        "The position "lat=56.5" lacks its longitude. Write --at "56.5012, -9.0123", latitude first, south and west with a minus; degrees and minutes or a map's share link do too.",
        "The position "56.5" lacks its second number. Write --at "56.5012, -9.0123", latitude first, south and west with a minus; degrees and minutes or a map's share link do too.",
        "The position "lat=56.5,lat=57" gives the latitude twice. Write --at "56.5012, -9.0123", latitude first, south and west with a minus; degrees and minutes or a map's share link do too.",
        "The position "lat=156.5,lon=2" is not on the map: latitude goes from -85 to 85, longitude from -180 to 180, latitude first. Write --at "56.5012, -9.0123", latitude first, south and west with a minus; degrees and minutes or a map's share link do too.",
        "The position "95, 9" is not on the map: latitude goes from -85 to 85, longitude from -180 to 180, latitude first. Write --at "56.5012, -9.0123", latitude first, south and west with a minus; degrees and minutes or a map's share link do too.",
        "The position "56 75 N, 9 W" cannot be read. Write --at "56.5012, -9.0123", latitude first, south and west with a minus; degrees and minutes or a map's share link do too.",
        "The position "lat=1e1,lon=2" cannot be read. Write --at "56.5012, -9.0123", latitude first, south and west with a minus; degrees and minutes or a map's share link do too.",
        "The position "here" cannot be read. Write --at "56.5012, -9.0123", latitude first, south and west with a minus; degrees and minutes or a map's share link do too.",
        "The position "" cannot be read. Write --at "56.5012, -9.0123", latitude first, south and west with a minus; degrees and minutes or a map's share link do too.",
        "The position "1,2,3" cannot be read. Write --at "56.5012, -9.0123", latitude first, south and west with a minus; degrees and minutes or a map's share link do too.",
      ]
    `);
  });
});

describe("tee sets", () => {
  test("have a name and a colour, or a common word for both", () => {
    expect(readTees("Blue:#2F5D8A, white , Ladies' Red:#b3261e")).toEqual([
      { id: "blue", name: "Blue", colour: "#2f5d8a" },
      { id: "white", name: "white", colour: "#f4f4f0" },
      { id: "ladies-red", name: "Ladies' Red", colour: "#b3261e" },
    ]);
  });
  test("that are not are refused with what to type", () => {
    expect(
      ["", "Blue,", "Heather", "Blue:blue", "Blue:#2f5d8", "Blue,blue:#000000", "Blue:#2f5d8a:1"].map((typed) =>
        said(() => readTees(typed)),
      ),
    ).toMatchInlineSnapshot(`
      [
        "A tee set is "": expected a name and a colour with a colon between. Write --tees "Blue:#2f5d8a,White:#f4f4f0", longest first.",
        "A tee set is "": expected a name and a colour with a colon between. Write --tees "Blue:#2f5d8a,White:#f4f4f0", longest first.",
        "The Heather tees have no colour. Write Heather:#c9a227 with six digits of your own.",
        "The colour of the Blue tees is "blue": expected # and six digits 0 to 9 or letters a to f. Write --tees "Blue:#2f5d8a,White:#f4f4f0", longest first.",
        "The colour of the Blue tees is "#2f5d8": expected # and six digits 0 to 9 or letters a to f. Write --tees "Blue:#2f5d8a,White:#f4f4f0", longest first.",
        "The blue tees are named twice. Write --tees "Blue:#2f5d8a,White:#f4f4f0", longest first.",
        "A tee set is "Blue:#2f5d8a:1": expected a name and a colour with a colon between. Write --tees "Blue:#2f5d8a,White:#f4f4f0", longest first.",
      ]
    `);
  });
});

test("other answers that are not", () => {
  const good = { name: "Club", course: "Links", holes: "9", tees: "Blue", units: "yards", at: "lat=56.5,lon=-9" };
  expect(
    [{ name: " " }, { course: "a\nb" }, { holes: "12" }, { units: "feet" }].map((wrong) =>
      said(() => readAnswers({ ...good, ...wrong })),
    ),
  ).toMatchInlineSnapshot(`
    [
      "The club's name is " ": expected one line of text. Write for example --name "Our Golf Club".",
      "The course's name is "a\\nb": expected one line of text. Write for example --course "Our Links".",
      "The number of holes is "12": expected 9 or 18. Write --holes 18.",
      "The unit is "feet": expected yards or metres. Write --units yards.",
    ]
  `);
});

test("what is missing is asked for, again after a slip, and Enter takes what stands there", async () => {
  const typed = ["", "Our Golf Club", "", "twelve", "9", "", "", "here", "lat=56.5,lon=-9"];
  const asked: string[] = [];
  const told: string[] = [];
  const answers = await askFor(
    { units: "metres" },
    (question) => {
      asked.push(question);
      return Promise.resolve(typed.shift() ?? "");
    },
    (text) => told.push(text),
  );
  expect(readAnswers(answers)).toMatchObject({
    name: "Our Golf Club",
    course: "Our Golf Club",
    holes: 9,
    units: "metres",
    at: [-9, 56.5],
  });
  expect(asked).toMatchInlineSnapshot(`
    [
      "The club's name: ",
      "The club's name: ",
      "The course's name [Our Golf Club]: ",
      "Holes, 9 or 18 [18]: ",
      "Holes, 9 or 18 [18]: ",
      "Tee sets with their colours, longest first [White, Yellow, Red]: ",
      "Where the first tee is, as a map gives it (56.5012, -9.0123, or the map's share link): ",
      "Where the first tee is, as a map gives it (56.5012, -9.0123, or the map's share link): ",
      "Where the first tee is, as a map gives it (56.5012, -9.0123, or the map's share link): ",
    ]
  `);
  expect(told.map((text) => text.slice(0, 40))).toMatchInlineSnapshot(`
    [
      "The club's name is "": expected one line",
      "The number of holes is "twelve": expecte",
      "The position "" cannot be read. Write --",
      "The position "here" cannot be read. Writ",
    ]
  `);
});

const club: NewClub = {
  name: "O'Hara's \"Old\": #1 & Co",
  course: "Our Links",
  holes: 18,
  tees: readTees("Blue,White,Yellow,Red"),
  units: "yards",
  at: [-9, 56.5],
};

async function written<T>(one: NewClub, use: (folder: string) => Promise<T>): Promise<T> {
  const folder = await mkdtemp(join(tmpdir(), "marram-new-"));
  try {
    for (const { path, text } of newClub(one)) {
      await mkdir(dirname(join(folder, path)), { recursive: true });
      await writeFile(join(folder, path), text);
    }
    return await use(folder);
  } finally {
    await rm(folder, { recursive: true });
  }
}

describe("the files", () => {
  test.each([
    ["eighteen holes of four tee sets", club],
    ["nine of one, in metres", { ...club, holes: 9, tees: readTees("Red"), units: "metres" } as const],
    [
      "nine of eight, south of the equator and at the edge of the map",
      {
        ...club,
        holes: 9,
        tees: readTees("Black,Gold,Blue,White,Green,Yellow,Silver,Red"),
        at: [179.99, -45],
      } as const,
    ],
  ])(
    "%s: sound, and the check has nothing to say but that there is no survey and each hole is a draft",
    async (_, one) => {
      await written(one, async (folder) => {
        const { guide, diagnostics } = await loadChecked(folder, "2026-11-25");
        const [drafts, others] = [
          diagnostics.filter(({ rule }) => rule === "draft"),
          diagnostics.filter(({ rule }) => rule !== "draft"),
        ];
        expect(linesOf(others)).toEqual([
          "our-links/course.yaml:1:1: The date of the survey is not given. Write for example surveyed: 2026-05-14.",
        ]);
        expect(drafts.map(({ message }) => message.split(". ")[0])).toEqual(
          Array.from(
            { length: one.holes },
            (_, i) =>
              `Hole ${i + 1} is a draft: all shapes are placeholders; placeholder figures par, strokeIndex and card; a tip that stands for the club's`,
          ),
        );
        expect(guide!.club).toMatchObject({ name: one.name, units: one.units });
        const [course] = guide!.courses;
        expect(course!.holes).toHaveLength(one.holes);
        const [longitude, latitude] = course!.holes[0]!.frame.toPosition(course!.holes[0]!.tees[0]!.marker);
        expect(longitude).toBeCloseTo(one.at[0], 5);
        expect(latitude).toBeCloseTo(one.at[1], 5);
        // Unrated tees are not held to their par by the check, so it is done here.
        for (const { hole, tees } of course!.holes)
          for (const { lengthMetres } of tees)
            expect(parSuits(hole.par.men, lengthMetres, "men", "yards"), `${hole.number}`).toBe(true);
      });
    },
  );

  test("the lines that only need their # taken away are sound too", async () => {
    await written(club, async (folder) => {
      const uncomment = (text: string): string =>
        text.replace(/^# ?((?: {2,}|- |[a-zA-Z]+: |[a-zA-Z]+:$).*)$/gm, "$1");
      for (const { path, text } of newClub(club)) {
        if (!path.endsWith(".yaml")) continue;
        // Ratings stand in the middle of a list, so theirs is shown as an example only.
        const plain = uncomment(text)
          .replace(/^ {4}ratings:\n {6}- \{.*\n/m, "")
          .replace(/^Ratings are .*\n|^Change what .*\n/gm, "");
        await writeFile(join(folder, path), plain);
      }
      const { diagnostics, club: read } = await readContent(folder);
      expect(linesOf(diagnostics)).toEqual([]);
      expect(read).toMatchObject({
        contact: { email: "office@example.org" },
        courses: [{ surveyed: "2026-05-14", notices: [{ holes: [3, 7] }] }],
      });
      expect(read!.cautions).toHaveLength(1);
    });
  });
});
