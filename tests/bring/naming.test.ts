import { describe, expect, it } from "vitest";
import { nameFeatures, type ToName } from "../../src/bring/pages/naming.ts";

const bunker = (stationMetres: number, offsetMetres: number, rest: Partial<ToName> = {}): ToName => ({
  kind: "bunker",
  name: undefined,
  tee: undefined,
  id: undefined,
  lie: {
    distanceMetres: Math.abs(offsetMetres),
    stationMetres,
    offsetMetres,
    side: offsetMetres === 0 ? "across" : offsetMetres < 0 ? "left" : "right",
  },
  ...rest,
});
const NONE = new Set<string>();

describe("ids", () => {
  it("number hazards by side in the order they are met", () => {
    expect(nameFeatures([bunker(300, -12), bunker(180, -20), bunker(200, 15), bunker(220, 0)], NONE)).toEqual([
      "bunker-left-2",
      "bunker-left-1",
      "bunker-right-1",
      "bunker-across-1",
    ]);
  });

  it("go on from the highest there is, since a tip may name the others", () => {
    expect(
      nameFeatures(
        [bunker(100, -12), bunker(150, -12)],
        new Set(["bunker-left-1", "bunker-left-4", "bunker-left-old"]),
      ),
    ).toEqual(["bunker-left-5", "bunker-left-6"]);
  });

  it("come from a real name, unless it is taken", () => {
    expect(
      nameFeatures([bunker(100, -12, { name: "Hell's Höhle" }), bunker(200, -12, { name: "Hell's Höhle" })], NONE),
    ).toEqual(["hells-hohle", "bunker-left-1"]);
  });

  it("keep those of an earlier export", () => {
    expect(nameFeatures([bunker(100, -12, { id: "the-coffin", name: "Other" })], NONE)).toEqual(["the-coffin"]);
  });

  it("need no side where a hole has one or few", () => {
    const plain = (kind: ToName["kind"], tee?: string): ToName => ({ ...bunker(0, 3), kind, tee });
    expect(
      nameFeatures(
        [
          plain("line-of-play"),
          plain("green"),
          plain("fairway"),
          plain("fairway"),
          plain("tee-marker", "white"),
          plain("teeing-ground", "white"),
          plain("teeing-ground"),
        ],
        NONE,
      ),
    ).toEqual(["line", "green", "fairway", "fairway-2", "tee-white", "teeing-ground-white", "teeing-ground"]);
  });

  it("are valid and distinct for names of any kind", () => {
    const names = ["", "  ", "---", "北", "line", "Bunker Left 1", "x".repeat(200), "a", "a"];
    const ids = nameFeatures(
      names.map((name, i) => bunker(i, 5, { name })),
      NONE,
    );
    expect(new Set(ids).size).toBe(names.length);
    for (const id of ids) expect(id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
  });
});
