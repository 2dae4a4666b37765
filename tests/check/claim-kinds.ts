/** What each kind of claim is tried with, in any language: a tip that the ground refutes, and one it bears out. */
import { describe, expect, test } from "vitest";
import { CLAIM_KINDS, type ClaimKind } from "../../src/check/claims/claim.ts";
import type { Feature } from "../../src/course/types.ts";
import { areaFeature, box, lineFeature } from "../support/flat-course.ts";
import type { HoleName } from "./corpus.ts";
import { foundInTip } from "./support.ts";

export interface KindCase {
  readonly trips: readonly [HoleName, string];
  readonly passes: readonly [HoleName, string];
  /** Drawn on both holes, or on the one only. */
  readonly more?: readonly Feature[];
  readonly toTrip?: readonly Feature[];
  readonly toPass?: readonly Feature[];
}

export type KindCases = Readonly<Record<ClaimKind, KindCase>>;

export const GORSE = areaFeature("gorse", "scrub", box(-60, 150, -30, 200));
export const WALL = lineFeature("old-wall", "wall", [
  [-40, 100],
  [-40, 300],
]);
export const ROAD = lineFeature("coast-road", "road", [
  [-50, 0],
  [-50, 300],
]);
export const BIG_GREEN = areaFeature("green", "green", box(-15, 360, 15, 400));
export const SPLIT = areaFeature("fairway-2", "fairway", box(-60, 150, -40, 280));

export const KINDS = Object.keys(CLAIM_KINDS) as ClaimKind[];

export function tryKinds(language: string, cases: KindCases): void {
  describe(`kinds of claim in ${language}`, () => {
    test.each(KINDS)("%s: refuted", (kind) => {
      const { trips, more = [], toTrip = [] } = cases[kind];
      const [diagnostic, ...others] = foundInTip(`tip-says-${kind}`, ...trips, [...more, ...toTrip], language);
      expect(others).toEqual([]);
      expect(diagnostic).toMatchObject({ severity: "error", rule: `tip-says-${kind}`, file: "test/holes/01.md" });
      expect(diagnostic!.message).toMatch(
        /^The tip says ".+", but .+\. Change the words, or the drawing if it is wrong\.$/,
      );
    });
    test.each(KINDS)("%s: borne out", (kind) => {
      const { passes, more = [], toPass = [] } = cases[kind];
      expect(foundInTip(`tip-says-${kind}`, ...passes, [...more, ...toPass], language)).toEqual([]);
    });
  });
}
