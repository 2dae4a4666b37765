import { describe, expect, test } from "vitest";
import { COMPOSITIONS } from "../../src/draw/composition.ts";
import { LabelPlacer } from "../../src/draw/labels.ts";
import { LAYERS, layLayers, Room, type Layer, type PlateSetup } from "../../src/draw/plate-layers.ts";
import { layHole } from "../../src/draw/sheet.ts";
import { layCover, stageOf, teePlates } from "../../src/draw/stage.ts";
import { words } from "../../src/site/language/words.ts";
import { hilly, PAR_FOUR } from "../support/hilly-course.ts";

const measured = hilly(PAR_FOUR, () => 20).holes[0]!;

function setup(): PlateSetup {
  const composition = COMPOSITIONS.desk;
  const sheet = layHole(measured, composition);
  const context = stageOf(measured.placed.values(), sheet, composition, "light", "p");
  const plates = teePlates(context, measured);
  layCover(context, plates);
  return {
    hole: measured,
    context,
    words: words("en").draw,
    ground: undefined,
    first: measured.tees[0]!,
    tees: measured.tees,
    unit: "yards",
    units: ["yards", "metres"],
    plates,
    room: new Room(new LabelPlacer(sheet.map, context.cover)),
  };
}

describe("the layers of a plate", () => {
  test("have a name each, and no two take room at the same time", () => {
    expect(new Set(LAYERS.map(({ name }) => name)).size).toBe(LAYERS.length);
    const taking = LAYERS.flatMap(({ importance }) => importance ?? []);
    expect(new Set(taking).size).toBe(taking.length);
  });

  test("take room by importance and are drawn as listed, whatever the list", () => {
    const order = [3, undefined, 1, 2, undefined];
    const laid: string[] = [];
    const layers = order.map((importance, i): Layer => ({
      name: `${i}`,
      ...(importance === undefined ? {} : { importance }),
      lay: () => {
        laid.push(`${i}`);
        return () => `<${i}>`;
      },
    }));
    const drawn = layLayers(setup(), layers).map((draw) => draw(COMPOSITIONS.desk));
    expect(laid).toEqual(["2", "3", "0", "1", "4"]);
    expect(drawn).toEqual(["<0>", "<1>", "<2>", "<3>", "<4>"]);
  });

  test("leave the flag its room: no label laid after it touches its box", () => {
    const plate = setup();
    const flagOnly = new Room(plate.room.shared);
    LAYERS.find(({ name }) => name === "flag")!.lay({ ...plate, room: flagOnly });
    const [flag] = flagOnly.shared.taken;
    layLayers(plate);
    for (const [west, south, east, north] of plate.room.labels) {
      expect(west < flag![2] && flag![0] < east && south < flag![3] && flag![1] < north).toBe(false);
    }
  });
});
