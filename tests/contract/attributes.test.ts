/** Data attributes: one list of names, and what is written in them is read as it was. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import * as attributes from "../../src/contract/attributes.ts";
import { dataset } from "../../src/contract/dataset.ts";
import {
  flagOf,
  metresFor,
  planeOf,
  shotOf,
  writeFlag,
  writeMetres,
  writePlane,
  writeShot,
} from "../../src/contract/values.ts";

const SOURCE = new URL("../../src/", import.meta.url).pathname;
const LIST = "contract/attributes.ts";

const sources = (endings: RegExp): (readonly [path: string, text: string])[] =>
  readdirSync(SOURCE, { recursive: true, encoding: "utf8" })
    .filter((path) => endings.test(path) && path !== LIST)
    .map((path) => [path, readFileSync(join(SOURCE, path), "utf8")] as const);

const names: readonly string[] = Object.values(attributes);

describe("the list of names", () => {
  test("each is its key as HTML writes it (HTML, 3.2.6.6: what `dataset` calls `forTee` is `data-for-tee`)", () => {
    for (const [key, name] of Object.entries(attributes))
      expect(name).toBe(`data-${key.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`);
  });

  test("nothing but the list spells one out", () => {
    const comment = /\/\*[\s\S]*?\*\/|^\s*\/\/.*$/gm;
    const spelled = sources(/\.(?:ts|astro)$/).flatMap(([path, text]) =>
      [...text.replace(comment, "").matchAll(/(?<![\w-])data-[a-z-]+|[\w\])]\.dataset\b/g)]
        // The colours' own switch, which no script turns.
        .filter(([name]) => name !== "data-theme")
        .map(([name]) => `${path}: ${name}`),
    );
    expect(spelled).toEqual([]);
  });

  test("style sheets know no other", () => {
    const styled = sources(/\.css$/).flatMap(([path, text]) =>
      [...text.matchAll(/\[(data-[a-z-]+)/g)].map((found) => [path, found[1]!] as const),
    );
    expect(styled.length).toBeGreaterThan(5);
    for (const [path, name] of styled) expect(names, path).toContain(name);
  });

  test("holds none that nobody uses", () => {
    const all = sources(/\.(?:ts|astro)$/)
      .map(([, text]) => text)
      .join("\n");
    const written = [...all.matchAll(/\bdataset\(([^()]*(?:\([^()]*(?:\([^()]*\)[^()]*)*\)[^()]*)*)\)/g)]
      .map((found) => found[1]!)
      .join("\n");
    const unused = Object.keys(attributes).filter(
      (key) => !new RegExp(`\\battr\\.${key}\\b`).test(all) && !new RegExp(`\\b${key}\\b`).test(written),
    );
    expect(unused).toEqual([]);
  });
});

describe("an element's attributes", () => {
  test("are there by name, with a value, or not at all", () => {
    expect(dataset("own", "today")).toEqual({ "data-own": "", "data-today": "" });
    expect(
      dataset("own", { forTee: "white", metres: 12.5, middle: true, carryRow: false, noticeFrom: undefined }),
    ).toEqual({
      "data-own": "",
      "data-for-tee": "white",
      "data-metres": "12.5",
      "data-middle": "",
    });
  });
});

describe("what is written is read as it was", () => {
  const six = [0.25, -0.1, 0.1, 0.25, 12.5, -40] as const;

  test.each([[182.912], [0], [{ white: 182.912, red: 150 }], [{ white: [100.5, 200], red: 3 }], [[1, 2, 3]]])(
    "metres of %j, to the millimetre",
    (metres) => {
      const read = metresFor(writeMetres(metres), "white");
      expect(read).toEqual(typeof metres === "object" && "white" in metres ? metres.white : metres);
      expect(metresFor(writeMetres({ white: 1.000_4 }), "white")).toBe(1);
    },
  );

  test("a shot", () => {
    expect(shotOf(writeShot([182.25, -3.5, 359.9]))).toEqual([182.25, -3.5, 359.9]);
  });

  test("a plate's plane and a flag's places", () => {
    expect(planeOf(writePlane(six, String))).toEqual(six);
    const places = { front: [0.25, -0.1], middle: [0.1, 0.25], back: [12.5, -40] } as const;
    expect(flagOf(writeFlag(places, String))).toEqual(places);
  });

  test.each(["", "1 2 3", "1 2 3 4 5 x", "1 2 3 4 5 6 7", "NaN 0 0 0 0 0"])("nothing is read of %j", (written) => {
    expect(planeOf(written)).toBeUndefined();
    expect(flagOf(written)).toBeUndefined();
    expect(shotOf(written)).toBeUndefined();
  });
});
