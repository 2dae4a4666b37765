/** No island speaks by itself: what the browser says is the dictionary's, in whatever language. */
import { globSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { LengthUnit } from "../../src/geo/units.ts";
import type { HoleData } from "../../src/contract/hole-data.ts";
import type { LonLat } from "../../src/contract/map-data.ts";
import { holeData } from "../../src/site/files/hole-data.ts";
import { hazardsFromTee } from "../../src/islands/map/ahead.ts";
import { figuresIn, playDrawing } from "../../src/islands/map/hole-drawing.ts";
import { tapMeasure } from "../../src/islands/map/measure-tap.ts";
import { ownLanding } from "../../src/islands/map/own-landing.ts";
import { featureWords, readOut } from "../../src/islands/map/read-out.ts";
import { farText, meOut, openingOut, shotsOut } from "../../src/islands/map/read-out-more.ts";
import { shotChain } from "../../src/islands/map/shots.ts";
import { whereabouts } from "../../src/islands/map/whereabouts.ts";
import { chained } from "../../src/islands/map/words.ts";
import type { Third } from "../../src/measure/third.ts";
import { readIslandWords } from "../../src/words/island-words.ts";
import { FRAME } from "../support/flat-course.ts";
import { sample } from "./sample.ts";
import { ENGLISH, foreign, speechIn, speechOf, writtenWords } from "./speech.ts";

/** A language with no Latin letter in it, and a hole whose names have none either. */
const SPEECH = speechOf(readIslandWords({ ...foreign(writtenWords("en")), locale: "ru" }));
const built = holeData(sample().holes[0]!, "yards");
const data: HoleData = {
  ...built,
  features: {
    ...built.features,
    features: built.features.features.map(({ properties: { name, ...others }, ...feature }) => ({
      ...feature,
      properties: { ...others, ...(name !== undefined && { name: "Юю" }) },
    })),
  },
  tees: built.tees.map((tee) => ({ ...tee, name: "Щщ" })),
};
const measure = tapMeasure(data);
const tee = data.tees[0]!;
const at = (x: number, y: number): LonLat => {
  const [longitude, latitude] = FRAME.toPosition([x, y]);
  return [longitude, latitude];
};
const LATIN = /\p{Script=Latin}|\{/u;

const THIRDS: readonly Third[] = ["front", "middle", "back"];
const UNITS: readonly LengthUnit[] = ["yards", "metres"];
const CASES = THIRDS.flatMap((third) => UNITS.map((unit) => [third, unit] as const));
/** Nothing, gully, bunker, boundary, landmark, green, bay. */
const PLACES = [at(0, 200), at(0, 90), at(11, 203), at(50, 120), at(30, 480), at(3, 404), at(-200, 100)];

describe("in a language with other letters, nothing is left of ours", () => {
  test.each(CASES)("in what a reading says: %s third, %s", (third, unit) => {
    const leg = (riseMetres: number, driftMetres: number) => ({
      riseMetres,
      plays: { lengthMetres: 150, plusMinusMetres: 1, driftMetres, indication: true },
    });
    const plays = [
      [6, -4],
      [-6, 4],
      [0, 0],
    ].flatMap(([rise, drift]) =>
      [true, false].map((wind) => ({
        legs: [leg(rise!, drift!), leg(-rise!, -drift!)],
        wind,
        temperatureCelsius: -2,
      })),
    );
    for (const place of PLACES) {
      for (const me of [undefined, at(0, 20)]) {
        for (const played of [undefined, ...plays]) {
          const {
            figures,
            lines,
            unit: symbol,
            spoken,
          } = readOut(measure.read(place, tee.id, third, me), unit, SPEECH, played);
          expect(
            [...figures.flatMap(({ label, value, note = "" }) => [label, value, note]), ...lines, symbol, spoken].join(
              "\n",
            ),
          ).not.toMatch(LATIN);
        }
      }
    }
  });

  test.each(CASES)("as the map opens, of own shots, of where the golfer is: %s third, %s", (third, unit) => {
    const outs = [
      ...[100, 200].map((drive) =>
        openingOut(hazardsFromTee(data, tee), ownLanding(measure.plane, tee, third, drive), third, unit, SPEECH),
      ),
      ...[[], [at(0, 190)], [at(0, 190), at(0, 400)]].map((places) =>
        shotsOut(
          { chain: shotChain(measure.plane, tee, third, places), tee, third, under: "Юю", full: places.length > 1 },
          unit,
          SPEECH,
        ),
      ),
      ...[
        [0, 200, 9],
        [3, 404, 5],
        [0, 200, 90],
        [0, 1480, 10],
        [0, 9480, 10],
      ].map(([x, y, accuracyMetres]) => {
        const where = whereabouts({ position: at(x!, y!), accuracyMetres: accuracyMetres! }, data.courseBounds, FRAME);
        return meOut(
          where,
          where.state === "on-course" ? measure.read(where.position, tee.id, third, where.position) : undefined,
          true,
          unit,
          SPEECH,
        );
      }),
    ];
    expect(outs.every(({ spoken }) => spoken !== "")).toBe(true);
    expect(
      outs
        .flatMap(({ figures, lines, unit: symbol, spoken }) => [
          ...figures.flatMap(({ label, value }) => [label, value]),
          ...lines,
          symbol,
          spoken,
        ])
        .join("\n"),
    ).not.toMatch(LATIN);
  });

  test("in what is drawn on the map", () => {
    const own = ownLanding(measure.plane, tee, "middle", 100);
    const { features } = playDrawing(
      data,
      { tee, cut: undefined, ahead: hazardsFromTee(data, tee), own },
      figuresIn("yards", SPEECH),
      SPEECH.say,
    );
    const texts = features
      .flatMap(({ properties }) => [properties?.["figure"], properties?.["ownLabel"]])
      .filter((text) => text !== undefined);
    expect(texts.length).toBeGreaterThan(2);
    expect(texts.join("\n")).not.toMatch(LATIN);
  });
});

test("things told one after another are chained by the language's own pattern", () => {
  const link = ({ list, next }: { readonly list: string; readonly next: string }): string => `${list} & ${next}`;
  expect(chained(link, ["a", "b", "c"])).toBe("a & b & c");
  expect(chained(link, ["a"])).toBe("a");
});

test("a decimal is written as the language writes it", () => {
  // 2.5 international miles of 1,609.344 m.
  expect(farText(4023.36, "yards", speechIn("de")).replace("\u00a0", " ")).toBe("2,5 Meilen");
});

test("a kind after a name is worded for its place, not lower-cased", () => {
  const bunker = { id: "pot", kind: "bunker", name: "Topf" } as const;
  expect(featureWords(bunker, speechIn("de").say)).toBe("Topf (Bunker)");
  expect(featureWords(bunker, ENGLISH.say)).toBe("Topf (bunker)");
});

describe("the source of islands", () => {
  const sources = globSync("src/islands/**/*.ts").map(
    (file) =>
      [
        file,
        readFileSync(file, "utf8")
          .replaceAll(/\/\*[^]*?\*\//g, "")
          .replaceAll(/^\s*\/\/.*$/gm, "")
          // An error's text may stand on a line of its own.
          .replaceAll(/\b(\w*Error\()\s+(?="|`)/g, "$1"),
      ] as const,
  );

  test("takes no catalogue along", () => {
    const taken = sources.flatMap(([file, text]) =>
      /from "[./]*\/site\/|from "[./]*\/words\/(?!speak|island-words|words|compiled)/.test(text) ? [file] : [],
    );
    expect(sources.length).toBeGreaterThan(50);
    expect(taken).toEqual([]);
  });

  test("holds no sentence but in errors and the console", () => {
    const sentence = /^[A-Z][a-z’']+ [a-z’']|[a-z’']{2,} [a-z’']+ [a-z’']{2,}/;
    const found = sources.flatMap(([file, text]) =>
      text
        .split("\n")
        .filter((line) => !/Error\(|console\.|^import /.test(line))
        .flatMap((line) =>
          [...line.matchAll(/"([^"\n]*)"|`([^`\n]*)`/g)].flatMap(([, plain, template]) => {
            const words = (plain ?? template ?? "").replaceAll(/\$\{[^}]*\}/g, "");
            return sentence.test(words) ? [`${file}: ${words}`] : [];
          }),
        ),
    );
    expect(found).toEqual([]);
  });
});
