/** The strip of landing ground measured back. */
import { describe, expect, test } from "vitest";
import { drawLanding, type LandingBar } from "../../src/draw/landing.ts";
import { landingAt } from "../../src/measure/landing.ts";
import { REFERENCE_PLAYERS } from "../../src/measure/players.ts";
import { yardsFromMetres } from "../../src/geo/units.ts";
import { DOGLEG, hilly, PAR_FOUR } from "../support/hilly-course.ts";
import { HOSTILE } from "./fixture.ts";
import { pathPoints, readSvg } from "./read-svg.ts";
import { words } from "../../src/site/language/words.ts";

function stripOf(features = PAR_FOUR) {
  const hole = hilly(features).holes[0]!;
  const bars = REFERENCE_PLAYERS.flatMap((player): LandingBar[] => {
    const figures = landingAt(hole, hole.tees[0]!, player.driveMetres);
    return figures ? [{ player: player.id, figures }] : [];
  });
  return { bars, strip: drawLanding(hole, bars, { idPrefix: "l", unit: "yards", words: words("en").drawGround })! };
}

describe("the strip", () => {
  const { bars, strip } = stripOf();
  const tags = readSvg(strip.svg);
  const spots = tags.filter(({ name, attributes }) => name === "circle" && attributes["class"] === "plate-spot");
  const fairways = tags
    .filter(({ attributes }) => attributes["class"] === "plate-line" && attributes["stroke-width"] === "1.9")
    .map(({ attributes }) => pathPoints(attributes["d"]!)[0]!);

  test("stands a ring for each drive, the longer the higher", () => {
    expect(spots).toHaveLength(4);
    const byDrive = bars
      .map(({ figures }, i) => [figures.driveMetres, Number(spots[i]!.attributes["cy"])] as const)
      .sort((a, b) => a[0] - b[0]);
    for (let i = 1; i < byDrive.length; i++) expect(byDrive[i]![1]).toBeLessThan(byDrive[i - 1]![1]);
  });

  test("is true to scale, along and across", () => {
    // Bogey men's 182.9 m and scratch men's 228.6 m are 45.7 m apart; the fairway is 30 m wide at both.
    const y = (player: string): number =>
      Number(spots[bars.findIndex((bar) => bar.player === player)]!.attributes["cy"]);
    const pxPerMetre = (y("bogey-men") - y("scratch-men")) / 45.72;
    // A bogey woman's 137.2 m ends in the burn, short of the fairway, and has no heavy bar.
    expect(fairways).toHaveLength(3);
    for (const [left, right] of fairways) expect((right![0] - left![0]) / pxPerMetre).toBeCloseTo(30, 0);
  });

  test("prints each width and each first trouble as measured", () => {
    const texts = tags
      .filter(
        ({ name, parents }) =>
          name === "text" && parents.some(({ attributes }) => attributes["data-unit"] === "yards"),
      )
      .map(({ text }) => text);
    for (const { figures } of bars) {
      if (figures.fairway.widthMetres > 0)
        expect(
          texts.some(
            (text) =>
              text.startsWith(`${Math.round(yardsFromMetres(figures.driveMetres))},`) &&
              text.includes(`${Math.round(yardsFromMetres(figures.fairway.widthMetres))} wide`),
          ),
        ).toBe(true);
      for (const trouble of [figures.left, figures.right])
        if (trouble) expect(texts).toContain(`${Math.round(yardsFromMetres(trouble.metres))}`);
    }
  });

  test("no two players' labels touch", () => {
    const names = tags
      .filter(
        ({ name, attributes, parents }) =>
          name === "text" &&
          attributes["class"] === "plate-title" &&
          parents.some(({ attributes: { display } }) => display === undefined),
      )
      .map(({ attributes }) => Number(attributes["y"]));
    const ys = [...new Set(names)].sort((a, b) => a - b);
    expect(ys).toHaveLength(4);
    for (let i = 1; i < ys.length; i++) expect(ys[i]! - ys[i - 1]!).toBeGreaterThanOrEqual(28);
  });

  test("lays a bent hole straight: the line of play is upright", () => {
    const bent = stripOf(DOGLEG);
    const read = readSvg(bent.strip.svg);
    const line = pathPoints(
      read.find(
        ({ attributes }) => attributes["class"] === "plate-line" && attributes["stroke-dasharray"] !== undefined,
      )!.attributes["d"]!,
    )[0]!;
    expect(line[0]![0]).toBe(line[1]![0]);
    expect(bent.strip.svg).not.toMatch(/NaN|Infinity|undefined| style=/);
  });

  test("without a drive to show there is none", () => {
    expect(
      drawLanding(hilly(PAR_FOUR).holes[0]!, [], { idPrefix: "l", unit: "yards", words: words("en").drawGround }),
    ).toBeUndefined();
  });

  test("is repeatable and well-formed whatever things are called", () => {
    expect(stripOf().strip.svg).toBe(strip.svg);
    const hostile = stripOf(PAR_FOUR.map((one) => (one.name ? { ...one, name: HOSTILE } : one)));
    expect(readSvg(hostile.strip.svg).length).toBeGreaterThan(20);
  });
});
