/**
 * The second club, which is as unlike the demo as its content can be, keeps what every
 * club's content has to keep.
 */
import { fileURLToPath } from "node:url";
import { beforeAll, describe, expect, test } from "vitest";
import { runChecks } from "../../src/check/check.ts";
import { departures } from "../../src/check/rules/stroke-index-spread.ts";
import { wordsOfTip } from "../../src/check/tip-words.ts";
import type { Diagnostic } from "../../src/course/diagnostic.ts";
import { nines } from "../../src/components/nines.ts";
import { courseTees, lengthsFrom, parOf } from "../../src/components/totals.ts";
import { everyTip } from "../../src/course/tips.ts";
import type { Gender } from "../../src/course/types.ts";
import type { MeasuredCourse, MeasuredHole } from "../../src/measure/types.ts";
import type { Guide } from "../../src/site/load/guide.ts";
import { loadGuide } from "../../src/site/load/load.ts";
import { renderTip } from "../../src/tell/tip.ts";
import { words } from "../../src/site/language/words.ts";
import { TODAY } from "../check/support.ts";

const CONTENT = fileURLToPath(new URL("sallowmere", import.meta.url));
const sum = (all: readonly number[]): number => all.reduce((total, one) => total + one, 0);
const GENDERS: readonly Gender[] = ["men", "women"];

let guide: Guide;
let measured: MeasuredCourse;

beforeAll(async () => {
  const loaded = await loadGuide(CONTENT);
  expect(loaded.diagnostics).toEqual([]);
  guide = loaded.guide!;
  measured = guide.courses[0]!;
});

/** What the check says when each hole has the tips of the hole so many further on. */
function checked(tipsMovedBy = 0): readonly Diagnostic[] {
  const { holes } = measured;
  const moved = holes.map((one, i): MeasuredHole => ({
    ...one,
    hole: { ...one.hole, tip: holes[(i + tipsMovedBy) % holes.length]!.hole.tip },
  }));
  return runChecks({ club: guide.club, measured: { ...measured, holes: moved }, today: TODAY }).diagnostics;
}

describe("Sallowmere", () => {
  test("leaves the check nothing to remark on", () => {
    expect(checked()).toEqual([]);
  });

  test.each([1, 2, 4, 7])("its tips are refuted by the ground of the hole %i before", (by) => {
    expect(checked(by).filter(({ severity }) => severity === "error").length).toBeGreaterThan(4);
  });

  test("says that it is invented, and lies on open sea in the south-east of the chart", () => {
    expect(guide.club.invented).toContain("invented");
    const [longitude, latitude] = measured.frame.origin;
    expect(latitude).toBeLessThan(-30);
    expect(longitude).toBeGreaterThan(0);
  });

  test("has every card within two metres of the ground", () => {
    for (const { hole, tees } of measured.holes) {
      for (const { tee, lengthMetres, cardMetres } of tees) {
        expect(Math.abs(cardMetres! - lengthMetres), `hole ${hole.number}, ${tee.name}`).toBeLessThanOrEqual(2);
      }
    }
  });

  test("adds up: nine holes, one nine, par and lengths, and each rating's par with its holes", () => {
    const { course, holes } = measured;
    expect(nines(holes).map((nine) => nine.length)).toEqual([9]);
    expect(parOf(holes)).toEqual({ men: 35, women: 36 });
    // A set that misses a hole has no total.
    expect(courseTees(measured).map(({ tee }) => tee.id)).toEqual(["willow", "heron"]);
    for (const { id, ratings } of course.tees) {
      const cards = holes.map(({ hole }) => hole.cardMetres[id] ?? NaN).filter((metres) => !Number.isNaN(metres));
      const lengths = lengthsFrom(holes, id);
      // Whole yards, nine times.
      if (lengths) expect(Math.abs(sum(lengths) - sum(cards))).toBeLessThanOrEqual((9 * 0.9144) / 2);
      for (const { gender, par } of ratings) expect(par, id).toBe(parOf(holes)[gender]);
    }
  });

  test("has ratings that are possible, and higher ones for longer tees", () => {
    for (const gender of GENDERS) {
      const rated = measured.course.tees.flatMap(({ ratings }) =>
        ratings.filter((rating) => rating.gender === gender),
      );
      expect(rated.length).toBeGreaterThan(1);
      for (const { slopeRating, courseRating, bogeyRating } of rated) {
        // Rules of Handicapping, definition of Slope Rating.
        expect(slopeRating).toBeGreaterThanOrEqual(55);
        expect(slopeRating).toBeLessThanOrEqual(155);
        expect(bogeyRating).toBeGreaterThan(courseRating);
      }
      const falling = (one: number, i: number, all: readonly number[]): boolean => i === 0 || one < all[i - 1]!;
      expect(rated.map(({ courseRating }) => courseRating).every(falling)).toBe(true);
      expect(rated.map(({ slopeRating }) => slopeRating).every(falling)).toBe(true);
    }
  });

  test("has stroke indexes 1 to 9, each once, that keep to the recommendations when the nine is played twice", () => {
    for (const gender of GENDERS) {
      const indexes = measured.holes.map(({ hole }) => hole.strokeIndex[gender]);
      expect([...indexes].sort((a, b) => a - b)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9]);
      // Rules of Handicapping, Appendix E: odd ones for the first round of the nine, even ones for the second.
      const twice = [...indexes.map((index) => 2 * index - 1), ...indexes.map((index) => 2 * index)];
      expect(departures(twice)).toEqual([]);
    }
  });

  test("has tips of 90 to 140 words whose figures fill from every tee that plays the hole", () => {
    for (const one of measured.holes) {
      for (const tip of everyTip(one.hole)) {
        for (const { tee } of one.tees) {
          const { text } = renderTip(
            one,
            {
              units: guide.club.units,
              idPrefix: "tip",
              tee: tee.id,
              words: words(tip.language ?? guide.club.language).tell,
            },
            tip,
          );
          expect(text, `${one.hole.number} ${tee.name}`).not.toMatch(/:[a-z]+[[{]|–|undefined|NaN/);
          expect(text).toMatch(/\d/);
        }
        const count = wordsOfTip(tip.markdown).words.length;
        expect(count, tip.place.file).toBeGreaterThanOrEqual(90);
        expect(count, tip.place.file).toBeLessThanOrEqual(140);
        // Figures are never typed.
        expect(tip.markdown.replaceAll(/:[a-z]+(?:\[[^\]]*\])?(?:\{[^}]*\})?/g, "")).not.toMatch(/\d/);
      }
    }
  });

  test("asks to carry only what a drive of 230 m carries", () => {
    let carries = 0;
    for (const { hole, tees } of measured.holes) {
      for (const [, id] of hole.tip.markdown.matchAll(/:carry\[([^\]]+)\]/g)) {
        const drive = tees.find(({ tee }) => tee.id === measured.course.defaultTee)!;
        const first = drive.hazards.find((hazard) => hazard.id === id);
        expect(first?.carryMetres ?? Infinity, `${hole.number} ${id}`).toBeLessThanOrEqual(230);
        carries++;
      }
    }
    expect(carries).toBeGreaterThan(4);
  });

  test("keeps what the demo has not", () => {
    const features = [...measured.course.features, ...measured.holes.flatMap(({ hole }) => hole.features)];
    const of = (kind: string) => features.filter((feature) => feature.kind === kind);
    expect(guide.club.units).toBe("metres");
    expect(of("fairway").filter(({ geometry }) => geometry.type === "MultiPolygon").length).toBeGreaterThan(1);
    expect(
      features.filter(
        ({ tags, geometry }) =>
          tags["natural"] === "water" && geometry.type === "Polygon" && geometry.coordinates.length > 1,
      ).length,
    ).toBe(2);
    expect(of("driving-range").length).toBe(1);
    expect(
      features
        .filter(({ tags }) => tags["natural"] === "tree_row")
        .every(({ geometry, heightMetres }) => geometry.type === "LineString" && heightMetres! > 0),
    ).toBe(true);
    expect(of("tree").some(({ geometry }) => geometry.type === "MultiPoint")).toBe(true);
    expect(measured.holes.some(({ tees }) => tees.length < measured.course.tees.length)).toBe(true);
    expect(measured.holes.some(({ hole }) => hole.par.men !== hole.par.women)).toBe(true);
    expect(new Set(measured.holes.flatMap(({ tees }) => tees[0]!.bends.map(({ side }) => side)))).toEqual(
      new Set(["left", "right"]),
    );
  });
});
