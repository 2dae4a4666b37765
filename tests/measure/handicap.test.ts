import { describe, expect, test } from "vitest";
import {
  courseHandicap,
  playingHandicap,
  roundHalfUp,
  strokesOn,
  strokesReceived,
  writtenHandicap,
} from "../../src/measure/handicap.ts";

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
/** Stroke indexes of an invented course, odd out and even in. */
const INDEXES = [9, 13, 17, 7, 1, 11, 5, 15, 3, 10, 6, 16, 2, 14, 18, 4, 12, 8];

describe("course handicap", () => {
  test("the worked example over nine holes (published: USGA, Local Guidance for Rule 6): index 8.7, halved to 4.4, rating 35.3, slope 121, par 36", () => {
    const unrounded = courseHandicap(4.4, { courseRating: 35.3, slopeRating: 121, par: 36 });
    expect(unrounded).toBeCloseTo(4.0115, 4); // digits past the second: computed
    expect(roundHalfUp(unrounded)).toBe(4);
  });

  test.each([
    // Computed from the published formula, regression.
    [10, 70.0, 121, 72, 8.70796],
    [15, 72.0, 130, 70, 19.25664],
    [19, 62.0, 118, 73, 8.84071],
  ])("over 18 holes: index %f, rating %f, slope %i, par %i", (index, courseRating, slopeRating, par, expected) => {
    expect(courseHandicap(index, { courseRating, slopeRating, par })).toBeCloseTo(expected, 5);
  });

  test("on a course of neutral slope rated at its par the handicap is the index, a plus player's too", () => {
    for (const index of [-3.4, 0, 0.1, 17.6, 54])
      expect(courseHandicap(index, { courseRating: 71, slopeRating: 113, par: 71 })).toBeCloseTo(index, 12);
  });

  test("what is no number is refused", () => {
    expect(() => courseHandicap(Number.NaN, { courseRating: 71, slopeRating: 113, par: 71 })).toThrow(RangeError);
  });
});

describe("rounding, halves upwards (published: Rules of Handicapping, 6.1 and 6.2)", () => {
  test.each([
    [0.5, 1],
    [4.5, 5],
    [4.4999, 4],
    [12.5, 13],
    [-0.5, 0],
    [-1.6, -2],
    [-2.4, -2],
  ])("%f is %i", (value, expected) => expect(roundHalfUp(value)).toBe(expected));

  test("a plus player's half goes towards none (from memory)", () => expect(roundHalfUp(-1.5)).toBe(-1));

  test("a half that arithmetic leaves a hair short still goes up", () => {
    // 14.5 on paper, 14.499999999999998 in binary.
    expect(8.7 * 3 - 11.6).not.toBe(14.5);
    expect(roundHalfUp(8.7 * 3 - 11.6)).toBe(15);
  });
});

describe("playing handicap", () => {
  test("the allowance is taken of the unrounded handicap, and rounding comes once, at the end (published: USGA FAQ, Where does rounding occur)", () => {
    // Rounded first it would be 16, and 95 % of that 15.2; of 16.49 it is 15.67. Computed.
    expect(playingHandicap(16.49, 95)).toBe(16);
    expect(playingHandicap(16.49)).toBe(16);
  });

  test("the usual allowances, stroke play and match play, alone and four-ball (from memory: Appendix C)", () => {
    expect([95, 100, 85, 90].map((percent) => playingHandicap(20, percent))).toEqual([19, 20, 17, 18]);
  });

  test("a negative allowance is refused", () => expect(() => playingHandicap(10, -5)).toThrow(/0 or more/));
});

describe("strokes received (published: Rules of Handicapping, Appendix E)", () => {
  test("in ascending order of index", () => {
    const received = strokesReceived(14, INDEXES);
    INDEXES.forEach((index, i) => expect(received[i], `index ${index}`).toBe(index <= 14 ? 1 : 0));
  });

  test.each([0, 1, 9, 17, 18, 19, 27, 36, 37, 54])(
    "%i strokes are given out to the last one, index 1 counting again as 19, 37 and 55",
    (handicap) => {
      const received = strokesReceived(handicap, INDEXES);
      expect(sum(received)).toBe(handicap);
      INDEXES.forEach((index, i) => {
        const counts = [index, index + 18, index + 36, index + 54].filter((turn) => turn <= handicap).length;
        expect(received[i], `index ${index}`).toBe(counts);
      });
    },
  );

  test("a plus player gives back from the highest index (18 holes: from memory)", () => {
    const received = strokesReceived(-2, INDEXES);
    expect(INDEXES.filter((_, i) => received[i] === -1).sort()).toEqual([17, 18]);
    expect(sum(received)).toBe(-2);
    expect(received.every((strokes) => Object.is(strokes, 0) || strokes === -1)).toBe(true);
    expect(sum(strokesReceived(-20, INDEXES))).toBe(-20);
  });

  test("nine holes of an 18-hole course keep the order of its indexes", () => {
    const out = INDEXES.slice(0, 9);
    expect(out.filter((_, i) => strokesReceived(4, out)[i] === 1).sort((a, b) => a - b)).toEqual([1, 3, 5, 7]);
    expect(out.filter((_, i) => strokesReceived(-1, out)[i] === -1)).toEqual([17]);
    expect(sum(strokesReceived(13, out))).toBe(13);
  });

  test("by gender", () => {
    const holes = [{ strokeIndex: { men: 1, women: 2 } }, { strokeIndex: { men: 2, women: 1 } }];
    expect(strokesOn(1, holes, "men")).toEqual([1, 0]);
    expect(strokesOn(1, holes, "women")).toEqual([0, 1]);
  });

  test("fractions and doubled indexes are refused", () => {
    expect(() => strokesReceived(4.5, INDEXES)).toThrow(/round the handicap/);
    expect(() => strokesReceived(4, [1, 1])).toThrow(/same stroke index/);
    expect(strokesReceived(4, [])).toEqual([]);
  });
});

test("handicaps as players write them", () =>
  expect([14, 0, -0, -2].map(writtenHandicap)).toEqual(["14", "0", "0", "+2"]));
