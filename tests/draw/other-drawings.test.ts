import { describe, expect, test } from "vitest";
import { drawCourse, layCourse } from "../../src/draw/course-map.ts";
import { PALETTE, painter, plateCss, type PlateTheme } from "../../src/draw/palette.ts";
import { drawPlate } from "../../src/draw/plate.ts";
import { drawHoleThumbnail } from "../../src/draw/thumbnail.ts";
import { distanceMetres } from "../../src/geo/vector.ts";
import { holeOf, HOSTILE, measured } from "./fixture.ts";
import { readSvg } from "./read-svg.ts";
import { words } from "../../src/site/language/words.ts";

const course = measured();
const renamed = measured((hole) => ({
  ...hole,
  name: HOSTILE,
  features: hole.features.map((feature) => (feature.name ? { ...feature, name: HOSTILE } : feature)),
}));

describe("the course map", () => {
  const drawn = drawCourse(course, {
    idPrefix: "map",
    unit: "yards",
    words: words("en").draw,
    href: ({ hole }) => `./${hole.number}/?a=1&b=2`,
  });
  const tags = readSvg(drawn.svg);

  test("has north up", () => {
    const sheet = layCourse(course);
    const [o, n] = [sheet.toSheet([0, 0]), sheet.toSheet([0, 100])];
    expect(n[0]).toBeCloseTo(o[0], 9);
    expect(n[1]).toBeLessThan(o[1]);
  });

  test("links every hole by an address and a name", () => {
    const links = tags.filter(({ name }) => name === "a");
    expect(links.map(({ attributes }) => attributes["href"])).toEqual(["./7/?a=1&b=2", "./12/?a=1&b=2"]);
    expect(links.map(({ attributes }) => attributes["aria-label"])).toEqual(["7 Harbour Light", "12 Skerry"]);
    // An image's links are hidden from assistive technology; a group's are not.
    expect(tags[0]!.attributes["role"]).toBe("group");
  });

  test("without addresses is a picture", () => {
    const plain = readSvg(drawCourse(course, { idPrefix: "map", unit: "yards", words: words("en").draw }).svg);
    expect(plain[0]!.attributes["role"]).toBe("img");
    expect(plain.some(({ name }) => name === "a")).toBe(false);
  });

  test.each(["desk", "phone"] as const)("is repeatable, escaped and free of styles: %s", (size) => {
    {
      const options = { idPrefix: "m", unit: "metres", size, words: words("en").draw } as const;
      expect(drawCourse(course, options).svg).toBe(drawCourse(measured(), options).svg);
      const hostile = readSvg(drawCourse(renamed, { ...options, href: () => "x" }).svg);
      expect(hostile.some(({ attributes }) => attributes["aria-label"]?.includes(HOSTILE))).toBe(true);
      expect(hostile.some(({ name, attributes }) => name === "style" || attributes["style"] !== undefined)).toBe(
        false,
      );
    }
  });

  test("numbers no two holes in one place", () => {
    const discs = tags
      .filter(({ attributes }) => attributes["class"] === "plate-disc")
      .map(({ attributes }) => [Number(attributes["cx"]), Number(attributes["cy"])] as const);
    expect(discs).toHaveLength(2);
    expect(distanceMetres(discs[0]!, discs[1]!)).toBeGreaterThan(22);
  });
});

describe("a thumbnail", () => {
  test.each([7, 12])("of hole %i is under 2 KB and needs no ids", (number) => {
    const svg = drawHoleThumbnail(holeOf(course, number));
    expect(svg.length).toBeLessThan(2048);
    const tags = readSvg(svg);
    expect(tags.some(({ attributes }) => attributes["id"] !== undefined || attributes["href"] !== undefined)).toBe(
      false,
    );
    expect(tags.some(({ attributes }) => attributes["class"] === "plate-green")).toBe(true);
    expect(tags[0]!.attributes["aria-hidden"]).toBe("true");
  });

  test("is named when it is told its name", () => {
    const [root] = readSvg(drawHoleThumbnail(holeOf(course, 7), { label: HOSTILE }));
    expect([root!.attributes["role"], root!.attributes["aria-label"]]).toEqual(["img", HOSTILE]);
  });
});

describe("the palette", () => {
  // WCAG 2.2, relative luminance and contrast ratio as defined there.
  const luminance = (hex: string): number => {
    const [r, g, b] = [1, 3, 5].map((i) => {
      const c = parseInt(hex.slice(i, i + 2), 16) / 255;
      return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
    }) as [number, number, number];
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const contrast = (a: string, b: string): number => {
    const [x, y] = [luminance(a), luminance(b)].sort((p, q) => q - p) as [number, number];
    return (x + 0.05) / (y + 0.05);
  };

  test.each<PlateTheme>(["light", "dark", "ink"])("keeps lettering readable: %s", (theme) => {
    const tints = PALETTE[theme];
    // Letters have a halo all round, so it is what they are read against.
    for (const under of ["halo", "paper", "ground", "fairway", "sea"] as const) {
      expect(contrast(tints.ink, tints[under]), under).toBeGreaterThanOrEqual(4.5);
    }
    // Lines and spots lie on the bare ground: 1.4.11 asks 3 of them.
    for (const under of ["green", "sand"] as const)
      expect(contrast(tints.ink, tints[under]), under).toBeGreaterThanOrEqual(3);
    for (const letters of ["ink-soft", "sea-ink"] as const)
      expect(contrast(tints[letters], tints.halo), letters).toBeGreaterThanOrEqual(4.5);
  });

  test("prints in one ink: greys only", () => {
    for (const [tint, colour] of Object.entries(PALETTE.ink)) {
      if (tint.startsWith("stake")) continue;
      expect(colour, tint).toMatch(/^#(..)\1\1$/);
    }
  });

  test("has a rule for every mark a plate uses and fetches nothing", () => {
    const css = plateCss();
    expect(css).not.toMatch(/url\(|@import|expression/);
    const marks = new Set(
      readSvg(
        drawPlate(holeOf(course, 7), { composition: "desk", idPrefix: "p", unit: "yards", words: words("en").draw })
          .svg,
      )
        .filter(({ attributes }) => attributes["fill"] !== undefined && attributes["class"] !== undefined)
        .map(({ attributes }) => attributes["class"]!),
    );
    expect(marks.size).toBeGreaterThan(25);
    for (const mark of marks) if (mark !== "plate-marker") expect(css).toContain(`.${mark}{`);
    for (const used of css.matchAll(/var\((--plate-[\w-]+)[,)]/g)) {
      if (used[1] !== "--plate-font") expect(css).toContain(`${used[1]}:`);
    }
  });

  test("writes a theme's own colours into a drawing", () => {
    expect(painter("dark")("fairway")["fill"]).toBe(PALETTE.dark.fairway);
    const svg = drawPlate(holeOf(course, 12), {
      composition: "card",
      idPrefix: "p",
      unit: "yards",
      words: words("en").draw,
      theme: "dark",
    }).svg;
    expect(svg).toContain(PALETTE.dark.sea);
    expect(svg).not.toContain(PALETTE.light.ground);
  });
});
