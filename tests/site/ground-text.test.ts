/** Sentences about the ground, in both units. */
import { describe, expect, test } from "vitest";
import { metresFromYards } from "../../src/geo/units.ts";
import { holeGround } from "../../src/site/ground/figures.ts";
import {
  cornerText,
  greenSentences,
  lieText,
  plusMinus,
  riseSentence,
  sectionSentence,
  sightSentences,
} from "../../src/site/ground/text.ts";
import { words } from "../../src/site/language/words.ts";
import { DOGLEG, hilly, PAR_FOUR } from "../support/hilly-course.ts";

const english = words("en");
const plain = (text: string): string => text.replaceAll("\u00a0", " ");
const groundOf = (measured: ReturnType<typeof hilly>) =>
  holeGround(measured, measured.holes[0]!, measured.holes[0]!.tees[0]!);

describe("rise", () => {
  const story = {
    riseMetres: 3.6576,
    most: { where: "last", lengthMetres: metresFromYards(61) },
    upMetres: 3.7,
    downMetres: 0,
  } as const;

  // 3.6576 m is 12 ft exactly; 61 yd is 55.8 m.
  test("is told in feet beside yards, in metres beside metres, lengths to the nearest five", () => {
    expect(plain(riseSentence(story, "yards", english))).toBe(
      "Goes up 12 ft from tee to green, most of it in the last 60 yd.",
    );
    expect(plain(riseSentence(story, "metres", english))).toBe(
      "Goes up 4 m from tee to green, most of it in the last 55 m.",
    );
  });

  test("tells of a dip on the way, and of level ends", () => {
    expect(
      plain(
        riseSentence(
          { riseMetres: -6.096, most: { where: "evenly" }, upMetres: 3.048, downMetres: 9.144 },
          "yards",
          english,
        ),
      ),
    ).toBe("Goes down 20 ft from tee to green, evenly along the way, going up 10 ft and down 30 ft on the way.");
    expect(riseSentence({ riseMetres: 0.3, most: undefined, upMetres: 0.5, downMetres: 0.2 }, "yards", english)).toBe(
      "Tee and green are about level.",
    );
  });
});

describe("sight", () => {
  const clear = { greenShare: 1, flag: true, landing: true, greenFromLanding: true };

  test("with all in view nothing is said", () => {
    expect(sightSentences(clear, 180, "yards", english)).toEqual([]);
  });

  test("says what is hidden, and whether the flag shows", () => {
    expect(sightSentences({ ...clear, greenShare: 0, flag: false }, undefined, "yards", english)).toEqual([
      "You cannot see the green from the tee, nor its flag.",
    ]);
    expect(sightSentences({ ...clear, greenShare: 0, flag: true }, undefined, "yards", english)).toEqual([
      "From the tee you see the flag only, not the green.",
    ]);
    expect(
      sightSentences(
        { ...clear, landing: false, greenFromLanding: false },
        metresFromYards(200),
        "yards",
        english,
      ).map(plain),
    ).toEqual([
      "The ground where a drive of 200 yd ends is hidden from the tee.",
      "After a drive of 200 yd the middle of the green is hidden.",
    ]);
  });

  test("unknown sight is not told as hidden", () => {
    expect(
      sightSentences(
        { greenShare: undefined, flag: undefined, landing: undefined, greenFromLanding: undefined },
        180,
        "yards",
        english,
      ),
    ).toEqual([]);
  });
});

test.each([
  [{ awayPercent: 4, rightPercent: -2.6 }, "uphill 4 %, falls right 3 %"],
  [{ awayPercent: -5.2, rightPercent: 3 }, "downhill 5 %, falls left 3 %"],
  [{ awayPercent: 0.9, rightPercent: -1.2 }, "level"],
])("a lie of %j is %s", (lie, text) => {
  expect(plain(lieText(lie, english))).toBe(text);
});

test("the green's slope is told as met from the tee", () => {
  const measured = hilly(PAR_FOUR, (_east, north) => 10 + Math.max(0, north - 380) * 0.03);
  const tee = measured.holes[0]!.tees[0]!;
  const sentences = greenSentences(groundOf(measured).green!, tee.green.approach, "yards", english);
  expect(sentences[0]).toBe("Rises from front to back.");
  expect(sentences).toContain("Below the hole is short of it: from there a putt runs uphill.");
});

test("the section in words gives the height at the green as the rise", () => {
  const measured = hilly(PAR_FOUR, (_east, north) => 20 + north / 40);
  const text = plain(sectionSentence(measured.holes[0]!.tees[0]!, measured.ground!, "metres", english)!);
  expect(text).toMatch(/^at 50 m 1 m up; at 100 m 3 m up; /);
  expect(text).toMatch(/at 400 m 10 m up\.$/);
});

test("a corner tells its carry plainly, and apart from it what rests on heights", () => {
  const measured = hilly(DOGLEG, () => 10);
  const {
    plain: distance,
    beyond,
    reach,
  } = cornerText(measured.holes[0]!, groundOf(measured).tees[0]!.corners[0]!, "metres", english);
  expect(plain(distance.join(" "))).toBe("Straight over the right corner: 194 m to carry Whins. It saves 40 m.");
  expect(plain(beyond[0]!)).toBe("The top of Whins stands 3 m above the tee.");
  expect(reach[0]).toBe("In reach of the drives of scratch men.");
  const bare = hilly(DOGLEG);
  expect(cornerText(bare.holes[0]!, groundOf(bare).tees[0]!.corners[0]!, "metres", english).beyond).toEqual([]);
});

test("a spread is never told as nothing", () => {
  expect(plusMinus(0.01, "yards")).toBe("±1");
  expect(plusMinus(2.2, "metres")).toBe("±3");
});

test("on a hole reached in one the ups and downs between are left out", () => {
  const story = { riseMetres: -3.048, most: undefined, upMetres: 29, downMetres: 32 } as const;
  expect(plain(riseSentence(story, "yards", english, true))).toBe("Goes down 10 ft from tee to green.");
});
