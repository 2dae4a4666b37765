/**
 * What a club writes is text wherever a tip prints it: names of features and of tee sets, and nothing of
 * them is markup.
 */
import { describe, expect, test } from "vitest";
import { measureCourse } from "../../src/measure/course.ts";
import type { MeasuredHole } from "../../src/measure/types.ts";
import { words } from "../../src/site/language/words.ts";
import { renderTip } from "../../src/tell/tip.ts";
import { HOSTILE } from "../draw/fixture.ts";
import { areaFeature, box, course, hole, lineFeature, pointFeature, TEE_SETS } from "../support/flat-course.ts";

/**
 * A hole whose names all carry what HTML must escape, each with a mark of its own; it rises 6 m, and 4 m
 * from the forward tee.
 */
function hostileHole(markdown: string): MeasuredHole {
  const features = [
    lineFeature(
      "line",
      "line-of-play",
      [
        [0, 0],
        [0, 398],
      ],
      { heights: [10, 16] },
    ),
    pointFeature("tee-back", "tee-marker", [0, 0], { tee: "back", height: 10 }),
    pointFeature("tee-forward", "tee-marker", [0, 50], { tee: "forward", height: 20 }),
    pointFeature("light", "landmark", [30, 700], { name: `light ${HOSTILE}` }),
    areaFeature("green", "green", box(-10, 385, 10, 415)),
    areaFeature("fairway", "fairway", box(-15, 150, 15, 370)),
    areaFeature("pond", "water", box(-30, 100, 30, 120), { name: `pond ${HOSTILE}` }),
  ];
  const tees = TEE_SETS.map((tee) => ({ ...tee, name: `${tee.id} ${HOSTILE}` }));
  return measureCourse(
    course([hole(features, { tip: { markdown, place: { file: "test", line: 1, column: 1 } } })], { tees }),
  ).holes[0]!;
}

const rendered = (markdown: string, tee?: string): string =>
  renderTip(hostileHole(markdown), {
    units: "yards",
    idPrefix: "f",
    words: words("en").tell,
    ...(tee === undefined ? {} : { tee }),
  }).html;

/** Text between tags, as a reader sees it. */
const textOf = (html: string): string =>
  html
    .replaceAll(/<[^>]*>/g, "\u0000")
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&quot;", '"')
    .replaceAll("&#39;", "'")
    .replaceAll("&amp;", "&");

describe.each([undefined, "forward"])("shown from the tee set %s", (tee) => {
  test.each([
    [":carry[pond]", ["pond", "back", "forward"]],
    [":length", ["back", "forward"]],
    [":length{tee=back}", ["back"]],
    [":rise", ["back", "forward"]],
    [":aim[light]", ["light"]],
    [":leaves[pond]", ["pond", "back", "forward"]],
    [":span[pond]{to=green}", ["pond"]],
  ])("%s prints names as they are written", (figure, names) => {
    const html = rendered(`Play ${figure} now.`, tee);
    // Nothing of a name opens an element or an attribute.
    const tags = [...html.matchAll(/<\/?([^\s>/]+)/g)].map(([, name]) => name!);
    expect(new Set(tags.filter((name) => !["p", "button", "span", "b"].includes(name)))).toEqual(new Set());
    const text = textOf(html);
    for (const name of names) expect(text, name).toContain(`${name} ${HOSTILE}`);
    // Each mark of the hostile name stands escaped: no bare one is left.
    expect(html.replaceAll(/<[^>]*>/g, "")).not.toMatch(/[<>"]|&(?!(?:amp|lt|gt|quot|#39);)/);
  });
});

test("what stands in an attribute comes back as it was", () => {
  const html = rendered(":carry[pond]");
  const attributes = [...html.matchAll(/ data-metres="([^"]*)"/g)];
  expect(attributes).toHaveLength(1);
  expect(Object.keys(JSON.parse(attributes[0]![1]!.replaceAll("&quot;", '"')) as Record<string, number>)).toEqual([
    "back",
    "forward",
  ]);
});
