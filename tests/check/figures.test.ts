/** The figures of a tip and of its translation: the same, or somebody is told which are not. */
import { describe, expect, test } from "vitest";
import { figureDifference, figuresOf } from "../../src/check/figures.ts";
import { found, plainCourse, tipIn, tipOf } from "./support.ts";

const SAME = { missing: [], extra: [] };

describe("figures of a tip", () => {
  test("are its name, feature and options, each once", () => {
    expect(
      figuresOf("It is :length, :carry[burn]{on=line} over and :length again; tee:left and 10:30 are prose."),
    ).toEqual([":length", ":carry[burn]{on=line}"]);
  });
  test.each([
    ["the order they stand in", ":rise and :length", "Auf :length kommen :rise"],
    ["how often", ":length", ":length, ja :length"],
    ["the order of options, commas and quotes", ":layup{leave=100 drive=230}", ':layup{drive="230", leave=100}'],
    ["spaces in brackets", ":aim[lighthouse]", ":aim[ lighthouse ]"],
    ["empty brackets and braces", ":length", ":length[]{}"],
  ])("do not differ by %s", (_, original, translation) => {
    expect(figureDifference(original, translation)).toEqual(SAME);
  });
  test.each([
    ["another feature", ":carry[burn]", ":carry[pond]", [":carry[burn]"], [":carry[pond]"]],
    ["another figure of the same feature", ":carry[burn]", ":reach[burn]", [":carry[burn]"], [":reach[burn]"]],
    ["another option", ":left{drive=230}", ":left{drive=210}", [":left{drive=230}"], [":left{drive=210}"]],
    ["an option left out", ":carry[burn]{n=2}", ":carry[burn]", [":carry[burn]{n=2}"], [":carry[burn]"]],
    ["one left out", ":rise, :length", ":length", [":rise"], []],
    ["one too many", ":length", ":length, :rise", [], [":rise"]],
  ])("differ by %s", (_, original, translation, missing, extra) => {
    expect(figureDifference(original, translation)).toEqual({ missing, extra });
  });
});

describe("what the check says of it", () => {
  const says = (original: string, translation: string) =>
    found(
      "translation-figures",
      plainCourse({ rest: { tip: tipOf(original), translations: tipIn("de", translation) } }),
    );
  test("names both the missing and the extra ones, at the translation", () => {
    const diagnostics = says("It is :rise and :length.", "Es sind :depth.");
    expect(diagnostics).toMatchObject([{ severity: "warning", file: "test/holes/01.de.md", line: 4, column: 1 }]);
    expect(diagnostics[0]!.message).toContain(
      "lacks :rise and :length, which stand in the original, and has :depth, which the original does not have",
    );
  });
  test("says nothing of a tip nobody has translated", () => {
    expect(found("translation-figures", plainCourse({ rest: { tip: tipOf("It is :rise.") } }))).toEqual([]);
  });
});
