/** Reading a figure's metres and wording a rise. Whole pages are turned in the browser tests. */
import { expect, test } from "vitest";
import { voiceOf } from "../../src/components/page-data.ts";
import { metresFor } from "../../src/contract/values.ts";
import { teeOn } from "../../src/islands/settings-figures.ts";
import { riseText, voiceIn, wholeLength } from "../../src/tell/voice.ts";
import { words } from "../../src/site/language/words.ts";

/** As a page carries it. */
const VOICE = voiceIn(JSON.stringify(voiceOf(words("en"))));

test("a figure holds one number, or one for each tee", () => {
  expect(metresFor("182.9", "white")).toBe(182.9);
  expect(metresFor(`{"white":182.9,"red":150}`, "red")).toBe(150);
});

test("a tee without the figure has none, were it the only one that has it", () => {
  expect(metresFor(`{"white":182.9,"red":150}`, "blue")).toBeUndefined();
  expect(metresFor(`{"white":182.9}`, "red")).toBeUndefined();
});

test.each(["", "not json", "null", "true", "[]", `{"white":"182"}`, "{}", `[1,"2"]`])("%j is no figure", (written) => {
  expect(metresFor(written, "white")).toBeUndefined();
});

test("names an object inherits are not tees", () => {
  expect(metresFor(`{"white":1,"red":2}`, "constructor")).toBeUndefined();
});

test("a tee kept from another hole gives way where this one has it not", () => {
  expect(teeOn("white", ["black", "white"], "black")).toBe("white");
  expect(teeOn("blue", ["black", "white"], "black")).toBe("black");
  expect(teeOn(undefined, ["black", "white"], "black")).toBe("black");
});

// 3.048 m is 10 ft exactly.
test("a rise is in feet beside yards and in metres beside metres, level when it rounds to nothing", () => {
  expect(riseText(3.048, "yards", VOICE)).toBe("10\u00a0ft up");
  expect(riseText(-3.048, "metres", VOICE)).toBe("3\u00a0m down");
  expect(riseText(0.1, "yards", VOICE)).toBe("level");
});

test("a total adds what is read: whole yards of each hole, not the metres between", () => {
  const half = 100.4 * 0.9144;
  const holes = metresFor(JSON.stringify([half, half, half]), "white")!;
  expect(wholeLength(half, "yards", VOICE.units).value).toBe("100");
  expect(wholeLength(holes, "yards", VOICE.units).text).toBe("300\u00a0yd");
  expect(wholeLength(holes, "metres", VOICE.units).value).toBe("276");
});
