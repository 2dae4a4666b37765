import { fileURLToPath } from "node:url";
import { beforeAll, describe, expect, test } from "vitest";
import { holeFilm, groundOf, type HoleFilm } from "../../src/flyover/hole-film.ts";
import { holeFlight, ratesOf, turn } from "../../src/flyover/path.ts";
import { ease, smoothAbove, smoothed } from "../../src/flyover/smooth.ts";
import { tourOf } from "../../src/flyover/tour.ts";
import { COMFORT, type Flight } from "../../src/flyover/types.ts";
import { lineThrough } from "../../src/geo/line.ts";
import { metresFromYards } from "../../src/geo/units.ts";
import type { MeasuredCourse } from "../../src/measure/types.ts";
import { loadGuide } from "../../src/site/load/load.ts";
import { renderTip, shownTee } from "../../src/tell/tip.ts";
import { words } from "../../src/site/language/words.ts";

/** Flies it in small steps and says the first thing that would make somebody ill, or nothing. */
function discomfort(flight: Flight): string[] {
  const rates = ratesOf(flight.poseAt, flight.seconds, 0.1);
  return (Object.keys(rates) as (keyof typeof rates)[])
    .filter((rate) => !(rates[rate] <= COMFORT[rate] * 1.02))
    .map((rate) => `${rate} ${rates[rate].toFixed(1)}`);
}

function leastClearance(flight: Flight, groundAt: (point: readonly [number, number]) => number | undefined): number {
  let least = Infinity;
  for (let t = 0; t <= flight.seconds; t += 0.25) {
    const { point, heightMetres } = flight.poseAt(t);
    const ground = groundAt(point);
    if (ground !== undefined) least = Math.min(least, heightMetres - ground);
  }
  return least;
}

describe("smoothing", () => {
  test("an envelope is nowhere below what it covers", () => {
    const rough = Array.from({ length: 200 }, (_, i) => 10 * Math.sin(i / 3) + (i % 17));
    const above = smoothAbove(rough, 12);
    rough.forEach((value, i) => expect(above[i]!).toBeGreaterThanOrEqual(value - 1e-9));
  });

  test("a straight ramp stays straight inside", () => {
    const ramp = Array.from({ length: 60 }, (_, i) => i * 2);
    smoothed(ramp, 9)
      .slice(12, 48)
      .forEach((value, i) => expect(value).toBeCloseTo((i + 12) * 2, 9));
  });

  test("easing starts and ends at rest and is never steeper than it says", () => {
    expect([ease(0), ease(1), ease(0.5)]).toEqual([0, 1, 0.5]);
    for (let t = 0; t < 1; t += 0.01) expect((ease(t + 0.001) - ease(t)) / 0.001).toBeLessThanOrEqual(1.875 + 1e-6);
  });

  test("turns go the short way round", () => {
    expect(turn(350, 10)).toBeCloseTo(20);
    expect(turn(10, 350)).toBeCloseTo(-20);
  });
});

describe("a flight over made ground", () => {
  const sharp = lineThrough([
    [0, 0],
    [0, 220],
    [150, 220],
    [150, 420],
  ]);
  const hills = ([x, y]: readonly [number, number]): number =>
    12 * Math.sin(x / 20) * Math.cos(y / 25) + (y > 200 ? 40 : 0);

  test("two right angles and a cliff are flown in comfort, clear of the ground", () => {
    const flight = holeFlight(sharp, hills);
    expect(discomfort(flight)).toEqual([]);
    expect(leastClearance(flight, hills)).toBeGreaterThanOrEqual(COMFORT.clearanceMetres);
  });

  test("it starts behind the tee looking down the hole, and ends looking at the green", () => {
    const flight = holeFlight(
      lineThrough([
        [0, 0],
        [0, 380],
      ]),
      () => 5,
    );
    const [start, end] = [flight.poseAt(0), flight.poseAt(flight.seconds)];
    expect(start.point[1]).toBeLessThan(0);
    expect(Math.abs(turn(0, start.bearingDegrees))).toBeLessThan(1);
    expect(end.point[1]).toBeLessThan(380);
    expect(end.downDegrees).toBeGreaterThan(5);
  });

  test("captions make it longer, never shorter", () => {
    const short = holeFlight(sharp, hills);
    expect(holeFlight(sharp, hills, 200).seconds).toBe(200);
    expect(holeFlight(sharp, hills, 1).seconds).toBe(short.seconds);
  });

  test("ground that is not known does not make a pose that is no number", () => {
    const flight = holeFlight(sharp, () => undefined);
    for (let t = 0; t <= flight.seconds; t += 1) {
      const { point, heightMetres, bearingDegrees, downDegrees } = flight.poseAt(t);
      expect([...point, heightMetres, bearingDegrees, downDegrees].every(Number.isFinite)).toBe(true);
    }
  });
});

describe("the demo's eighteen holes (invented ground)", () => {
  let course: MeasuredCourse;
  let films: HoleFilm[];
  beforeAll(async () => {
    const { guide } = await loadGuide(fileURLToPath(new URL("../../content", import.meta.url)));
    course = guide!.courses[0]!;
    films = course.holes.map((hole) =>
      holeFilm(
        hole,
        shownTee(hole, undefined),
        renderTip(hole, { units: "yards", idPrefix: "f", words: words("en").tell }).text,
        metresFromYards(220),
        course.ground,
      ),
    );
  });

  test("no hole turns, nods, speeds or pushes more than comfort allows", () => {
    expect(
      films
        .map(({ flight }, i) => [i + 1, discomfort(flight)])
        .filter(([, faults]) => (faults as string[]).length > 0),
    ).toEqual([]);
  });

  test("no camera comes nearer the ground than it may", () => {
    for (const { flight } of films)
      expect(leastClearance(flight, groundOf(course.ground))).toBeGreaterThanOrEqual(COMFORT.clearanceMetres);
  });

  test("captions end before the film does, and films are watchable: under two minutes a hole", () => {
    for (const { flight, cues } of films) {
      expect(cues[cues.length - 1]!.endSeconds).toBeLessThan(flight.seconds);
      expect(flight.seconds).toBeLessThan(120);
    }
  });

  test("chapters go from tee to green, in order", () => {
    films.forEach(({ chapters }, i) => {
      const par = course.holes[i]!.hole.par.men;
      expect(chapters[0]!.kind).toBe("tee");
      expect(chapters[chapters.length - 1]!.kind).toBe("green");
      expect(chapters.length).toBeGreaterThanOrEqual(par === 3 ? 2 : 3);
      chapters.slice(1).forEach(({ seconds }, k) => expect(seconds).toBeGreaterThan(chapters[k]!.seconds));
    });
  });

  test("the whole round is one flight without a jolt, clear of the ground", () => {
    const tour = tourOf(
      films.map(({ flight }) => flight),
      groundOf(course.ground),
    );
    expect(tour.parts.filter(({ hole }) => hole !== undefined)).toHaveLength(18);
    expect(leastClearance(tour, groundOf(course.ground))).toBeGreaterThan(COMFORT.clearanceMetres * 0.9);
    for (const { startSeconds, seconds, hole } of tour.parts) {
      const part: Flight = {
        seconds,
        poseAt: (t) => tour.poseAt(startSeconds + Math.min(seconds - 1e-6, Math.max(0, t))),
      };
      expect([hole, discomfort(part)]).toEqual([hole, []]);
    }
    for (const { startSeconds } of tour.parts.slice(1)) {
      const [before, after] = [tour.poseAt(startSeconds - 1e-4), tour.poseAt(startSeconds + 1e-4)];
      expect(Math.hypot(after.point[0] - before.point[0], after.point[1] - before.point[1])).toBeLessThan(0.01);
      expect(Math.abs(turn(before.bearingDegrees, after.bearingDegrees))).toBeLessThan(0.01);
    }
  });
});
