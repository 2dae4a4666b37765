import { describe, expect, test } from "vitest";
import type { LonLat } from "../../src/contract/map-data.ts";
import { holeData } from "../../src/site/files/hole-data.ts";
import { hazardsFromTee } from "../../src/islands/map/ahead.ts";
import { tapMeasure } from "../../src/islands/map/measure-tap.ts";
import { ownLanding } from "../../src/islands/map/own-landing.ts";
import { readOut } from "../../src/islands/map/read-out.ts";
import { farText, meOut, openingOut, shotsOut } from "../../src/islands/map/read-out-more.ts";
import { shotChain } from "../../src/islands/map/shots.ts";
import { whereabouts } from "../../src/islands/map/whereabouts.ts";
import { FRAME } from "../support/flat-course.ts";
import { sample } from "./sample.ts";
import { ENGLISH } from "./speech.ts";

const data = holeData(sample().holes[0]!, "yards");
const measure = tapMeasure(data);
const tee = data.tees[0]!;
const at = (x: number, y: number): LonLat => {
  const [longitude, latitude] = FRAME.toPosition([x, y]);
  return [longitude, latitude];
};
const shown = ({ figures, lines }: ReturnType<typeof shotsOut>) =>
  [...figures.map(({ label, value }) => `${label} ${value}`), ...lines].join("\n").replaceAll("\u00a0", " ");

describe("how a reading plays", () => {
  const leg = (riseMetres: number, lengthMetres: number, driftMetres: number, indication = false) => ({
    riseMetres,
    plays: { lengthMetres, plusMinusMetres: 1.2, driftMetres, indication },
  });
  const reading = measure.read(at(0, 200), "back", "middle");

  test("stands under the figure it belongs to, with what ground and wind do in a line", () => {
    const { figures, lines, spoken } = readOut(reading, "metres", ENGLISH, {
      legs: [leg(6, 207, -4), leg(-3.4, 195, 0.3)],
      wind: true,
      temperatureCelsius: 12.4,
    });
    expect(figures.map(({ note }) => note)).toEqual(["plays 207 ±2", undefined, "plays 195 ±2", undefined]);
    const line =
      "There: 6 m up, plays 207 ±2, the wind takes it 4 m left. On to the middle: 3 m down, plays 195 ±2. In the wind you set, at 12 °C.";
    expect(lines.map((text) => text.replaceAll("\u00a0", " "))).toContain(line);
    expect(spoken).toContain(
      "There: 6 m up, plays 207 ±2, the wind takes it 4 metres left.".replace("6 m", "6\u00a0m"),
    );
  });

  test("says when it is only an indication", () => {
    const lines = (indication: boolean): readonly string[] =>
      readOut(reading, "metres", ENGLISH, {
        legs: [leg(0, 207, 0), leg(0, 195, 0, indication)],
        wind: true,
        temperatureCelsius: 12,
      }).lines;
    expect(lines(true).at(-1)).toBe(`${lines(false).at(-1)} That is an indication only.`);
  });

  test("is left out for a leg no stroke covers, and altogether when neither is", () => {
    const none = { riseMetres: 2, plays: undefined };
    expect(
      readOut(reading, "metres", ENGLISH, {
        legs: [none, leg(0, 200, 0)],
        wind: false,
        temperatureCelsius: 15,
      }).lines.at(-1),
    ).toBe("On to the middle: level, plays 200 ±2. In still air at 15 °C.");
    expect(readOut(reading, "metres", ENGLISH, { legs: [none, none], wind: false, temperatureCelsius: 15 })).toEqual(
      readOut(reading, "metres", ENGLISH),
    );
  });

  test("a reading from the golfer's own place says so", () => {
    const mine = readOut(measure.read(at(0, 300), "back", "middle", at(0, 200)), "metres", ENGLISH);
    expect(mine.figures[0]).toEqual({ label: "From you", value: "100" });
    expect(mine.spoken).toMatch(/^From you 100 metres, 109 yards\./);
  });
});

test("as it opens: what to do, the golfer's drive, what the tee shot meets", () => {
  const own = ownLanding(measure.plane, tee, "middle", 200);
  const { lines, spoken } = openingOut(hazardsFromTee(data, tee), own, "middle", "metres", ENGLISH);
  expect(lines.join("\n").replaceAll("\u00a0", " ")).toBe(
    [
      "Tap anywhere to measure from the tee and on to the green.",
      "Your drive of 200 m: the fairway is 30 m wide there, 200 m left to the middle.",
      "From the tee: The Gully 80 m to reach, 104 m to carry; Bunker right 200 m to reach, 207 m to carry.",
    ].join("\n"),
  );
  expect(spoken).toContain("The Gully 80 metres to reach");
});

describe("own shots", () => {
  const out = (...places: LonLat[]) =>
    shotsOut(
      { chain: shotChain(measure.plane, tee, "middle", places), tee, third: "middle", under: undefined, full: false },
      "metres",
      ENGLISH,
    );

  test("are told leg by leg with what is left", () => {
    expect(shown(out(at(0, 190), at(0, 310)))).toBe("Shot 1 190\nShot 2 120\nLeft 90");
    expect(out(at(0, 190), at(0, 310)).spoken).toBe(
      "Shot 2: 120 metres, 131 yards. 90 metres, 98 yards left to the middle of the green.",
    );
  });

  test("on the green leave nothing; before the first say what to do", () => {
    expect(shown(out(at(0, 400)))).toBe("Shot 1 400\nOn the green.");
    expect(shown(out())).toBe("Tap where each shot comes down, from the Back tee on. Kept on this device only.");
  });
});

describe("where the golfer is", () => {
  const me = (x: number, y: number, accuracyMetres: number, plainTurned = false) => {
    const where = whereabouts({ position: at(x, y), accuracyMetres }, data.courseBounds, FRAME);
    return meOut(
      where,
      where.state === "on-course" ? measure.read(where.position, "back", "middle", where.position) : undefined,
      plainTurned,
      "yards",
      ENGLISH,
    );
  };

  test("on the hole: front, middle and back, how well it is known, what lies ahead", () => {
    expect(shown(me(0, 200, 9))).toBe(
      "Front 202\nMiddle 219\nBack 235\nKnown to within 10 yd.\nAhead: Bunker right 8 yd to reach, 17 yd to carry; The Burn 107 yd to reach, 115 yd to carry.",
    );
    expect(me(0, 200, 9, true).lines.at(-1)).toMatch(/4\.3a.*our reading.*Committee/);
  });

  test("too coarse, or off the course: no figures, and why", () => {
    expect(shown(me(0, 200, 90))).toBe(
      "Your position is known only to within 98 yd, which is too coarse for distances. In the open it gets better.",
    );
    // 480 is the northernmost place of the hole; 1,000 m are 1,094 yd.
    expect(shown(me(0, 1480, 10))).toBe("You are 1094 yd beyond the edge of the course. Known to within 11 yd.");
  });

  test("far off is told in miles or kilometres", () => {
    // The international mile is 1,609.344 m exactly.
    expect(farText(16_093.44, "yards", ENGLISH)).toBe("10 miles");
    expect(farText(4023.36, "yards", ENGLISH)).toBe("2.5 miles");
    expect(farText(2500, "metres", ENGLISH)).toBe("2.5 km");
    expect(farText(1999, "metres", ENGLISH)).toBe("1999\u00a0m");
  });
});
