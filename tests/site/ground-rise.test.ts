/** Where a rise comes, told from profiles worked out by hand. */
import { expect, test } from "vitest";
import type { ProfilePoint } from "../../src/terrain/profile.ts";
import { riseStory } from "../../src/site/ground/rise.ts";

/** Heights every 10 m, as a function of the station. */
const profile = (lengthMetres: number, heightAt: (station: number) => number | undefined): ProfilePoint[] =>
  Array.from({ length: lengthMetres / 10 + 1 }, (_, i) => ({
    stationMetres: i * 10,
    point: [0, i * 10] as const,
    heightMetres: heightAt(i * 10),
  }));

test("a scarp at the end is told as the last stretch", () => {
  const story = riseStory(profile(400, (s) => (s < 340 ? 10 : 10 + (s - 340) / 5)))!;
  expect(story.riseMetres).toBeCloseTo(12, 6);
  expect(story.most).toMatchObject({ where: "last" });
  // 60 % of 12 m on a slope of 1 in 5 takes 36 m: 40 m of ten-metre steps, of which several are as short.
  expect((story.most as { lengthMetres: number }).lengthMetres).toBeLessThanOrEqual(60);
});

test("a drop off the tee is told as the first stretch", () => {
  const story = riseStory(profile(400, (s) => (s < 60 ? 30 - s / 3 : 10)))!;
  expect(story.riseMetres).toBeCloseTo(-20, 6);
  expect(story.most).toMatchObject({ where: "first" });
});

test("a bank in the middle is told by its two ends", () => {
  const story = riseStory(profile(400, (s) => (s < 180 ? 10 : s > 220 ? 18 : 10 + (s - 180) / 5)))!;
  const most = story.most as { where: string; fromMetres: number; toMetres: number };
  expect(most.where).toBe("between");
  expect(most.fromMetres).toBeGreaterThanOrEqual(180);
  expect(most.toMetres).toBeLessThanOrEqual(220);
});

test("an even slope rises evenly", () => {
  expect(riseStory(profile(400, (s) => s / 40))!.most).toEqual({ where: "evenly" });
});

test("level ends have no most, however deep the hollow between", () => {
  const story = riseStory(profile(400, (s) => 20 - 8 * Math.sin((Math.PI * s) / 400)))!;
  expect(story.most).toBeUndefined();
  expect(story.downMetres).toBeCloseTo(8, 1);
  expect(story.upMetres).toBeCloseTo(8, 1);
});

test("where ups and downs outweigh the rise no stretch of it is the most", () => {
  // 3 m down in all, across an inlet 25 m deep.
  expect(riseStory(profile(200, (s) => (s > 60 && s < 140 ? -5 : s <= 60 ? 20 : 17)))!.most).toBeUndefined();
});

test("an unknown end has no story; an unknown middle is passed over", () => {
  expect(riseStory(profile(400, (s) => (s === 400 ? undefined : 10)))).toBeUndefined();
  expect(riseStory(profile(400, (s) => (s === 200 ? undefined : s / 40)))!.riseMetres).toBeCloseTo(10, 6);
});
