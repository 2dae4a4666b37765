/** The German matcher held to sentences labelled by hand. */
import { describe, expect, test } from "vitest";
import { claimKey, score, told } from "../scoring.ts";
import { findClaims } from "../../../src/check/claims/find.ts";
import { GERMAN } from "../../../src/check/claims/german/index.ts";
import { judge } from "../../../src/check/claims/judge/index.ts";
import { sayIn } from "../../../src/check/say.ts";
import type { HoleName, Sentence } from "../corpus.ts";
import { corpusFacts } from "../corpus-holes.ts";
import { GERMAN_HELD_OUT, germanTuning } from "./corpus.ts";
import { TRUE_TIPS } from "./true-tips.ts";

/** A false alarm stops a club's build. */
const LEAST_PRECISION = 0.95;
const LEAST_RECALL = 0.75;

const all = [...germanTuning(), ...GERMAN_HELD_OUT];
const turned = (pairs: Readonly<Partial<Record<HoleName, HoleName>>>): Sentence[] =>
  all.map((one) => ({ ...one, hole: pairs[one.hole] ?? one.hole }));

describe("the German corpus", () => {
  test("is large, each sentence stands in it once, and many claim nothing", () => {
    expect(all.length).toBeGreaterThanOrEqual(600);
    expect(new Set(all.map(({ hole, text }) => `${hole} ${text}`)).size).toBe(all.length);
    expect(all.filter(({ claims }) => Object.keys(claims).length === 0).length).toBeGreaterThan(200);
  });
  test.each([
    ["held-out part", GERMAN_HELD_OUT],
    ["whole corpus", all],
  ] as const)("%s", (_, sentences) => {
    const scored = score(sentences, GERMAN);
    expect(scored.called).toBeGreaterThan(30);
    expect(scored.precision, scored.wrong.map(told).join("\n")).toBeGreaterThanOrEqual(LEAST_PRECISION);
    expect(scored.recall, scored.missed.map(told).join("\n")).toBeGreaterThanOrEqual(LEAST_RECALL);
  });
  test("would not pass with its facts turned round: holes A and C, and B and D, in each other's place", () => {
    expect(score(turned({ A: "C", C: "A", B: "D", D: "B" }), GERMAN).precision).toBeLessThan(0.8);
  });
});

describe("whole tips that are true", () => {
  const facts = corpusFacts();
  const verdicts = TRUE_TIPS.flatMap(([hole, markdown]) =>
    findClaims(markdown, facts[hole], GERMAN).map((claim) => ({
      hole,
      said: markdown.slice(claim.offset, claim.end),
      key: claimKey(claim),
      verdict: judge(claim, facts[hole], sayIn("metres")).verdict,
    })),
  );
  test("are understood in part", () => {
    expect(verdicts.length).toBeGreaterThan(60);
  });
  test("are refuted nowhere", () => {
    expect(verdicts.filter(({ verdict }) => verdict === "contradicts")).toEqual([]);
  });
});
