/** The demo's words and its ground: drawn and written apart, so each is a test of the other. */
import { fileURLToPath } from "node:url";
import { beforeAll, describe, expect, test } from "vitest";
import { runChecks } from "../../src/check/check.ts";
import type { Diagnostic } from "../../src/course/diagnostic.ts";
import type { Guide } from "../../src/site/load/guide.ts";
import { loadGuide } from "../../src/site/load/load.ts";
import { TODAY } from "./support.ts";

let guide: Guide;

beforeAll(async () => {
  const loaded = await loadGuide(fileURLToPath(new URL("../../content", import.meta.url)));
  if (!loaded.guide) throw new Error("The demo cannot be read.");
  guide = loaded.guide;
});

/** What the check says when each hole has the tip of the hole so many further on. */
function withTipsMoved(by: number): readonly Diagnostic[] {
  const measured = guide.courses[0]!;
  const holes = measured.holes.map((one, i) => ({
    ...one,
    hole: { ...one.hole, tip: measured.holes[(i + by) % measured.holes.length]!.hole.tip },
  }));
  return runChecks({ club: guide.club, measured: { ...measured, holes }, today: TODAY }).diagnostics.filter(
    ({ severity }) => severity === "error",
  );
}

/** The same of its translations; what differs in their figures is another rule's business. */
function withTranslationsMoved(by: number): readonly Diagnostic[] {
  const measured = guide.courses[0]!;
  const holes = measured.holes.map((one, i) => ({
    ...one,
    hole: { ...one.hole, translations: measured.holes[(i + by) % measured.holes.length]!.hole.translations },
  }));
  return runChecks({ club: guide.club, measured: { ...measured, holes }, today: TODAY }).diagnostics.filter(
    ({ severity }) => severity === "error",
  );
}

describe("the demo", () => {
  test("says nothing that its ground refutes", () => {
    expect(withTipsMoved(0)).toEqual([]);
  });
  test.each([1, 5, 7, 11])("its tips are refuted by the ground of the hole %i before", (by) => {
    expect(withTipsMoved(by).length).toBeGreaterThan(10);
  });
  test.each([1, 5, 7, 11])("its translated tips are refuted by the ground of the hole %i before", (by) => {
    const refuted = withTranslationsMoved(by);
    expect(refuted.length).toBeGreaterThan(5);
    for (const { file } of refuted) expect(file).toMatch(/\.de\.md$/);
  });
  test("its translated tips hold the figures of the originals", () => {
    const diagnostics = runChecks({ club: guide.club, measured: guide.courses[0]!, today: TODAY }).diagnostics;
    expect(diagnostics.filter(({ rule }) => rule === "translation-figures" || rule === "tip-language")).toEqual([]);
  });
});
