/** The live map of a hole without a map: how it stands after any events, and what it then shows. */
import { describe, expect, test } from "vitest";
import type { LonLat } from "../../src/contract/map-data.ts";
import {
  isFollowing,
  nextHole,
  openingState,
  type HoleEvent,
  type HoleState,
} from "../../src/islands/map/hole-state.ts";
import { holeView } from "../../src/islands/map/hole-view.ts";
import { tapMeasure } from "../../src/islands/map/measure-tap.ts";
import { MOST_SHOTS } from "../../src/islands/map/shots.ts";
import { whereabouts } from "../../src/islands/map/whereabouts.ts";
import { holeData } from "../../src/site/files/hole-data.ts";
import { seeded, type Random } from "../faults/random.ts";
import { FRAME } from "../support/flat-course.ts";
import { sample } from "./sample.ts";
import { ENGLISH } from "./speech.ts";

const data = holeData(sample().holes[0]!, "yards");
const hole = { data, measure: tapMeasure(data), speech: ENGLISH };
const GOLFER = { tee: "back", units: "yards", third: "middle" } as const;
const OPEN = openingState(GOLFER, [], false);

const at = (x: number, y: number): LonLat => {
  const [longitude, latitude] = FRAME.toPosition([x, y]);
  return [longitude, latitude];
};
const whereAt = (x: number, y: number, accuracyMetres: number) =>
  whereabouts({ position: at(x, y), accuracyMetres }, data.courseBounds, FRAME);

function anyEvent({ below, pick, chance }: Random): HoleEvent {
  const place = (): [number, number] => [below(120) - 60, below(430)];
  return pick<() => HoleEvent>([
    () => ({ kind: "chosen", position: at(...place()) }),
    () => ({ kind: "chosen", position: at(0, 400) }),
    () => ({
      kind: pick([
        "tap-cleared",
        "laying-pressed",
        "shot-undone",
        "shots-cleared",
        "place-pressed",
        "place-agreed",
        "place-refused",
        "plain-pressed",
        "all-figures",
      ] as const),
    }),
    () => ({ kind: pick(["laying-pressed", "place-pressed", "place-agreed"] as const) }),
    () => ({
      kind: "place-found",
      where: chance(0.3) ? whereAt(9_000, 0, 20) : whereAt(...place(), chance(0.2) ? 300 : 8),
      at: below(100_000),
    }),
    () => ({ kind: "place-lost", fault: pick(["denied", "unavailable", "unsupported"] as const) }),
    () => ({ kind: "plain-turned", plain: chance(0.5) }),
    () => ({
      kind: "golfer",
      golfer: {
        tee: pick(["back", "forward", "unheard-of", undefined]),
        units: pick(["yards", "metres"] as const),
        third: pick(["front", "middle", "back"] as const),
      },
    }),
  ])();
}

/** Walks through many events, looking at each step. */
function walk(look: (before: HoleState, event: HoleEvent, after: HoleState) => void, walks = 150): void {
  for (let seed = 0; seed < walks; seed++) {
    const random = seeded(seed);
    let state = OPEN;
    for (let i = 0; i < 40; i++) {
      const before = state;
      const event = anyEvent(random);
      state = nextHole(before, event);
      look(before, event, state);
    }
  }
}

describe("after any events", () => {
  test("no more shots are laid than a plan has, and only taps while laying and the golfer's taking back change them", () => {
    walk((before, event, after) => {
      expect(after.shots.length).toBeLessThanOrEqual(MOST_SHOTS);
      if (after.shots === before.shots) return;
      expect(["chosen", "shot-undone", "shots-cleared"]).toContain(event.kind);
      if (event.kind === "chosen")
        expect([before.laying, after.shots.length, after.shots.at(-1)]).toEqual([
          true,
          before.shots.length + 1,
          event.position,
        ]);
    });
  });

  test("the device is followed only after the golfer has agreed, until they let go", () => {
    walk((before, event, after) => {
      if (isFollowing(after) && !isFollowing(before))
        expect([before.place.kind, event.kind]).toEqual(["explaining", "place-agreed"]);
      if (event.kind === "place-pressed" && before.place.kind !== "off") expect(after.place.kind).toBe("off");
      if (event.kind === "place-found" && !isFollowing(before)) expect(after).toBe(before);
    });
  });

  test("plain figures come by themselves at most once, on the course, and never after somebody took them away on the map", () => {
    walk((before, event, after) => {
      if (
        after.plain === before.plain ||
        event.kind === "plain-pressed" ||
        event.kind === "plain-turned" ||
        event.kind === "all-figures"
      )
        return;
      expect(event.kind).toBe("place-found");
      expect([before.considered, after.considered, after.plain, after.turnedPlain]).toEqual([false, true, true, true]);
      expect(after.place.kind === "found" && after.place.where.state).toBe("on-course");
    });
  });

  test("what changes nothing is the same state, so nothing is drawn or said again", () => {
    expect(nextHole(OPEN, { kind: "shots-cleared" })).toBe(OPEN);
    expect(nextHole(OPEN, { kind: "plain-turned", plain: false })).toBe(OPEN);
    expect(nextHole(OPEN, { kind: "place-lost", fault: "denied" })).toBe(OPEN);
  });

  test("laying shots and back leaves tap and shots as they were", () => {
    walk((_before, _event, state) => {
      const back = nextHole(nextHole(state, { kind: "laying-pressed" }), { kind: "laying-pressed" });
      expect([back.tapped, back.shots, back.laying]).toEqual([state.tapped, state.shots, state.laying]);
    });
  });
});

describe("the view", () => {
  const strokes = { driveMetres: 200, nextMetres: 180 };
  const look = (see: (state: HoleState) => void): void => walk((_before, _event, state) => see(state), 10);

  test("is there for every state, says something, and offers only what does something", () => {
    look((state) => {
      const view = holeView(hole, state, strokes);
      expect(view.told.spoken).not.toBe("");
      expect(view.play.features.length).toBeGreaterThan(3);
      expect(view.pressed).toEqual({ shots: state.laying, whereAmI: state.place.kind !== "off", plain: state.plain });
      for (const { event } of view.actions) expect(nextHole(state, event)).not.toBe(state);
    });
  });

  test("tells how a reading plays only without plain figures, and never from the golfer's own place", () => {
    let told = 0;
    look((state) => {
      const { plays } = holeView(hole, state, strokes);
      if (plays === undefined) return;
      told += 1;
      expect(state.plain).toBe(false);
      expect(plays.fromMe).toBe(false);
      expect(state.laying).toBe(false);
    });
    expect(told).toBeGreaterThan(10);
  });

  test("while shots are laid the tapped point is not measured, and the other way round", () => {
    look((state) => {
      const measured = (part: Partial<HoleState>) => holeView(hole, { ...state, ...part }, undefined).measure;
      if (state.laying) expect(measured({ tapped: at(7, 77) })).toEqual(measured({ tapped: undefined }));
      else expect(measured({ shots: [at(7, 77)] })).toEqual(measured({ shots: [] }));
    });
  });
});
