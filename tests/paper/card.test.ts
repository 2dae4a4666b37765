/** The scorecard of eighteen holes, read back from its markup: each nine's own holes, sums and strokes. */
import { describe, expect, test } from "vitest";
import type { Club } from "../../src/course/types.ts";
import { measureCourse } from "../../src/measure/course.ts";
import { composeCard, MOST_PLAYERS, type CardOptions, type CardPlayer } from "../../src/paper/card.ts";
import { words } from "../../src/site/language/words.ts";
import { HOSTILE } from "../draw/fixture.ts";
import { areaFeature, box, course, hole, lineFeature, pointFeature, TEE_SETS } from "../support/flat-course.ts";

const COUNT = 18;
const parOf = (i: number) => ({ men: 3 + (i % 3), women: 4 + (i % 2) });
/** Men's and women's indexes run against each other, and odd numbers are not all out. */
const indexOf = (i: number) => ({ men: ((i * 7) % COUNT) + 1, women: COUNT - ((i * 5) % COUNT) });

const measured = measureCourse(
  course(
    Array.from({ length: COUNT }, (_, i) => {
      const [x, length] = [i * 200, 300 + 10 * i];
      return hole(
        [
          lineFeature("line", "line-of-play", [
            [x, 0],
            [x, length],
          ]),
          pointFeature("tee-back", "tee-marker", [x, 0], { tee: "back" }),
          pointFeature("tee-forward", "tee-marker", [x, 50], { tee: "forward" }),
          areaFeature("green", "green", box(x - 10, length - 15, x + 10, length + 15)),
        ],
        { number: i + 1, name: `Name ${i + 1} ${HOSTILE}`, par: parOf(i), strokeIndex: indexOf(i) },
      );
    }),
    { name: `Course ${HOSTILE}`, tees: TEE_SETS.map((tee) => ({ ...tee, name: `${tee.id} ${HOSTILE}` })) },
  ),
);

const club: Club = {
  name: `Club ${HOSTILE}`,
  place: `Place ${HOSTILE}`,
  language: "en",
  languages: ["en"],
  translations: {},
  units: "yards",
  invented: `Invented ${HOSTILE}`,
  contact: { email: undefined, telephone: undefined, website: undefined, address: undefined },
  cautions: [],
  localRules: [],
  courses: [measured.course],
};

const cardOf = (players: readonly CardPlayer[], rest: Partial<CardOptions> = {}): readonly [string, string] =>
  composeCard({
    club,
    measured,
    tees: measured.course.tees,
    unit: "metres",
    words: words("en"),
    theme: "light",
    courseGround: undefined,
    players,
    allowance: undefined,
    ...rest,
  }).leaves;

const plain = (html: string): string => html.replaceAll(/<[^>]*>/g, "").trim();

/** Rows of a kind in both nines: their cells as text, holes first, then sums. */
const rowsOf = (inside: string, kind: string): string[][][] =>
  [...inside.matchAll(/<table class="card-nine.*?<\/table>/gs)].map(([table]) =>
    [...table.matchAll(new RegExp(`<tr class="${kind}">(.*?)</tr>`, "gs"))].map(([, row]) =>
      [...row!.matchAll(/<td[^>]*>(.*?)<\/td>/gs)].map(([, cell]) => plain(cell!)),
    ),
  );

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
const OUT = Array.from({ length: 9 }, (_, i) => i);
const IN = OUT.map((i) => i + 9);
const ALL = [...OUT, ...IN];

describe("each nine", () => {
  const [, inside] = cardOf([]);

  test("has its own holes' lengths from every tee, its sum, and coming in the whole course's", () => {
    const [out, back] = rowsOf(inside, "tee") as [string[][], string[][]];
    for (const [row, less] of [
      [0, 0],
      [1, 50],
    ] as const) {
      const length = (i: number): number => 300 + 10 * i - less;
      expect(out[row]).toEqual([...OUT.map(length), sum(OUT.map(length))].map(String));
      expect(back[row]!.slice(0, 11)).toEqual(
        [...IN.map(length), sum(IN.map(length)), sum(ALL.map(length))].map(String),
      );
    }
  });

  test("has men's and women's par and index where they differ, summed for each", () => {
    const [outPar, inPar] = rowsOf(inside, "par") as [string[][], string[][]];
    const [outIndex, inIndex] = rowsOf(inside, "index") as [string[][], string[][]];
    for (const [row, gender] of [
      [0, "men"],
      [1, "women"],
    ] as const) {
      const par = (i: number): number => parOf(i)[gender];
      expect(outPar[row]).toEqual([...OUT.map(par), sum(OUT.map(par))].map(String));
      expect(inPar[row]!.slice(0, 11)).toEqual([...IN.map(par), sum(IN.map(par)), sum(ALL.map(par))].map(String));
      expect(outIndex[row]!.slice(0, 9)).toEqual(OUT.map((i) => String(indexOf(i)[gender])));
      expect(inIndex[row]!.slice(0, 9)).toEqual(IN.map((i) => String(indexOf(i)[gender])));
    }
  });
});

describe("strokes", () => {
  /**
   * World Handicap System, Appendix E: a stroke on each hole whose index is within the handicap, round after
   * round; a plus player gives back from the last index on.
   */
  const expected = (i: number, { handicap, gender }: CardPlayer): string => {
    const index = indexOf(i)[gender];
    if (handicap < 0) return index > COUNT + handicap ? "+" : "";
    return "•".repeat(Math.floor(handicap / COUNT) + (index <= handicap % COUNT ? 1 : 0));
  };
  const players: readonly CardPlayer[] = [
    { handicap: 20, gender: "men" },
    { handicap: 9, gender: "women" },
    { handicap: -2, gender: "men" },
    { handicap: 0, gender: "women" },
  ];

  test("are dotted on the holes of each player's own index, out and in, and given back by a plus player", () => {
    const [, inside] = cardOf(players);
    const [out, back] = rowsOf(inside, "player") as [string[][], string[][]];
    players.forEach((player, row) => {
      expect(out[row]!.slice(0, 9), `player ${row}`).toEqual(OUT.map((i) => expected(i, player)));
      expect(back[row]!.slice(0, 9), `player ${row}`).toEqual(IN.map((i) => expected(i, player)));
    });
    expect(back.slice(0, 4).map((row) => row.find((cell, i) => i > 10 && cell !== ""))).toEqual([
      "20",
      "9",
      "+2",
      "0",
    ]);
  });

  test("are explained where there are any of their kind", () => {
    const { dots, given } = words("en").paper.card;
    const told = (some: readonly CardPlayer[]): boolean[] =>
      [dots, given].map((text) => plain(cardOf(some)[1]).includes(text));
    expect([told([]), told([players[0]!]), told([players[2]!]), told(players)]).toEqual([
      [false, false],
      [true, false],
      [false, true],
      [true, true],
    ]);
  });

  test("more players than rows are refused", () => {
    expect(() => cardOf(Array.from({ length: MOST_PLAYERS + 1 }, () => players[0]!))).toThrow(RangeError);
  });
});

test("what a club writes is text on both sides", () => {
  for (const leaf of cardOf([])) {
    expect(leaf).not.toContain("<Tom");
    expect(leaf.replaceAll(/<[^>]*>/g, "")).not.toMatch(/&(?!(?:amp|lt|gt|quot|#39);)/);
  }
  const [outside, inside] = cardOf([]).map((leaf) =>
    leaf
      .replaceAll("&lt;", "<")
      .replaceAll("&gt;", ">")
      .replaceAll("&quot;", '"')
      .replaceAll("&#39;", "'")
      .replaceAll("&amp;", "&"),
  );
  for (const what of ["Course", "Club", "Place", "Invented", "back"])
    expect(outside, what).toContain(`${what} ${HOSTILE}`);
  for (const what of ["Name 1", "Name 18", "back", "forward"]) expect(inside, what).toContain(`${what} ${HOSTILE}`);
});
