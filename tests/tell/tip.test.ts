import { describe, expect, test } from "vitest";
import type { Feature } from "../../src/course/types.ts";
import { measureCourse } from "../../src/measure/course.ts";
import type { MeasuredHole } from "../../src/measure/types.ts";
import { answer } from "../../src/tell/answer.ts";
import { checkTip, renderTip } from "../../src/tell/tip.ts";
import { areaFeature, box, course, hole, lineFeature, pointFeature } from "../support/flat-course.ts";
import { words } from "../../src/site/language/words.ts";

const FEATURES = [
  lineFeature("line", "line-of-play", [
    [0, 0],
    [0, 398],
  ]),
  pointFeature("tee-back", "tee-marker", [0, 0], { tee: "back", height: 10 }),
  pointFeature("tee-forward", "tee-marker", [0, 50], { tee: "forward", height: 12 }),
  pointFeature("light", "landmark", [30, 700], { name: "Harbour light" }),
  pointFeature("post", "landmark", [0, 500]),
  pointFeature("marker", "landmark", [6, 240]),
  areaFeature("green", "green", box(-10, 385, 10, 415)),
  areaFeature("fairway", "fairway", box(-15, 150, 15, 370)),
  areaFeature("pond", "water", box(-30, 100, 30, 120), { name: "Mill & Pond" }),
  lineFeature(
    "burn",
    "penalty-area-red",
    [
      [-80, 250],
      [80, 250],
      [80, 330],
      [-80, 330],
    ],
    { widthMetres: 2, name: "the burn" },
  ),
  areaFeature("left-trap", "bunker", box(-20, 200, -12, 206), { name: "Long Tom" }),
  areaFeature("right-trap", "bunker", box(12, 200, 20, 206), { name: "Short Tom" }),
];

const withTip = (markdown: string): MeasuredHole =>
  measureCourse(
    course([hole(FEATURES, { tip: { markdown, place: { file: "tarvay/holes/01-test.md", line: 12, column: 1 } } })]),
  ).holes[0]!;

const text = (markdown: string, tee?: string): string =>
  renderTip(withTip(markdown), {
    units: "yards",
    idPrefix: "f",
    words: words("en").tell,
    ...(tee === undefined ? {} : { tee }),
  }).text;

/** Yards of a length in metres, as printed; worked out here, not by the code under test. */
const yd = (metres: number): string => `${Math.round(metres / 0.9144)}\u00a0yd`;
/** What must be carried goes up, where a hazard begins goes down. */
const up = (metres: number): string => `${Math.ceil(metres / 0.9144)}\u00a0yd`;
const down = (metres: number): string => `${Math.floor(metres / 0.9144)}\u00a0yd`;

describe("each figure prints what the ground says", () => {
  const expected: readonly [figure: string, prints: string][] = [
    [":length", yd(400)],
    [":reach[pond]", down(100)],
    [":carry[pond]{on=line}", up(120)],
    [":carry[pond]", up(Math.hypot(25, 120))],
    [":carry[burn]{n=2 on=line}", up(331)],
    // Along the line of play, as :length and :left run.
    [":leaves[left-trap]", yd(400 - 206)],
    [":leaves[marker]", yd(400 - 240)],
    [":layup{leave=100}", yd(400 - 91.44)],
    [":layup{leave=100 drive=200}", yd(400 - 91.44 - 182.88)],
    [":fairway{drive=220}", yd(30)],
    [":left{drive=250}", yd(400 - 228.6)],
    [":span[left-trap]{to=right-trap}", yd(24)],
    [":span[fairway]{to=green}", yd(15)],
    [":front", yd(385)],
    [":middle", yd(400)],
    [":back", yd(415)],
    [":depth", yd(30)],
    [":width", yd(20)],
    [":aim[light]", "Harbour light"],
    [":length{tee=forward}", yd(350)],
  ];
  for (const [figure, prints] of expected) test(`${figure} prints ${prints}`, () => expect(text(figure)).toBe(prints));

  test("a rise is up to a higher green and down to a lower one, from each tee by its own height", () => {
    // The green stands at 16 m, the back tee at 10 m, the forward tee at 20 m: 19.7 ft up and 13.1 ft down.
    const uneven = FEATURES.map((one) =>
      one.id === "tee-forward"
        ? pointFeature("tee-forward", "tee-marker", [0, 50], { tee: "forward", height: 20 })
        : one,
    ).map((one) =>
      one.id === "line"
        ? lineFeature(
            "line",
            "line-of-play",
            [
              [0, 0],
              [0, 398],
            ],
            { heights: [10, 16] },
          )
        : one,
    );
    const rise = (tee: string): string =>
      renderTip(
        measureCourse(course([hole(uneven, { tip: { markdown: ":rise", place: { file: "t", line: 1, column: 1 } } })]))
          .holes[0]!,
        { units: "yards", idPrefix: "f", words: words("en").tell, tee },
      ).text;
    expect([rise("back"), rise("forward")]).toEqual(["20\u00a0ft up", "13\u00a0ft down"]);
  });

  test("a bend that is not there, a rise without heights of the green, are problems, not numbers", () => {
    expect(() => text(":bend")).toThrow("0 turning points");
    expect(() => text(":rise")).toThrow("no heights are known");
  });

  test("a tee set from which a figure has no meaning prints a dash, not a number", () => {
    // From the forward tee, 50 m on, a drive of 400 yd passes the green.
    expect(text(":left{drive=400}", "forward")).toBe("–");
    expect(text(":left{drive=400}")).toBe(yd(400 - 365.76));
  });

  test("another tee set changes the figures, but not a fixed one", () => {
    expect(text(":length and :length{tee=back}", "forward")).toBe(`${yd(350)} and ${yd(400)}`);
  });
});

describe("the page holds more than the number", () => {
  const { html } = renderTip(withTip("Carry :carry[pond]{on=line}, then aim at :aim[light]."), {
    units: "yards",
    idPrefix: "f",
    words: words("en").tell,
  });

  test("both units are read aloud, one is seen", () => {
    expect(html).toContain(
      '<span aria-hidden="true" data-shown>132\u00a0yd</span><span class="visually-hidden" data-spoken>132 yards, 120 metres</span>',
    );
  });

  test("the meaning opens without a script, and says from where", () => {
    expect(html).toContain('popovertarget="f-1"');
    expect(html).toMatch(/<span popover class="figure-meaning" id="f-1">.*to be past Mill &amp; Pond/);
    // A phrase for each tee set, the shown one's alone to be seen.
    expect(html).toMatch(
      /Mill &amp; Pond<span data-for-tee="back">, from the Back tee<\/span><span data-for-tee="forward" hidden>, from the Forward tee<\/span>\./,
    );
  });

  test("every tee set's metres are there for the settings script", () => {
    const written = /data-metres="([^"]+)"/.exec(html)![1]!.replaceAll("&quot;", '"');
    const metres = JSON.parse(written) as Record<string, number>;
    expect(metres["back"]).toBeCloseTo(120, 2);
    expect(metres["forward"]).toBeCloseTo(70, 2);
  });
});

describe("what a tip may hold", () => {
  test("raw HTML prints as text and never runs", () => {
    const { html } = renderTip(withTip('A <b>bold</b> <img src=x onerror="alert(1)"> <script>alert(1)</script>'), {
      units: "yards",
      idPrefix: "f",
      words: words("en").tell,
    });
    expect(html).not.toMatch(/<(?:b|img|script)\b/);
  });

  for (const url of [
    "javascript:alert(1)",
    "data:text/html,x",
    "vbscript:x",
    "JaVaScRiPt:alert(1)",
    "//elsewhere.example/x",
    "file:///etc/passwd",
  ]) {
    test(`a link to ${url} is not made`, () => {
      expect(
        renderTip(withTip(`[here](${url})`), { units: "yards", idPrefix: "f", words: words("en").tell }).html,
      ).not.toContain("<a ");
    });
  }

  for (const url of [
    "https://club.example/",
    "mailto:pro@club.example",
    "tel:+44123",
    "../2/",
    "/card/",
    "#plate",
    "map/",
  ]) {
    test(`a link to ${url} is made`, () => {
      expect(
        renderTip(withTip(`[here](${url})`), { units: "yards", idPrefix: "f", words: words("en").tell }).html,
      ).toContain("<a ");
    });
  }

  test("a colon in prose is prose", () => {
    expect(text("From the tee:left is dead. Start at 10:30. A note: mind the wind :)")).toBe(
      "From the tee:left is dead. Start at 10:30. A note: mind the wind :)",
    );
  });

  test("a figure in code is code", () => {
    expect(text("Write `:carry[pond]` for it.")).toBe("Write :carry[pond] for it.");
  });
});

describe("mistakes are told with their place and what to type", () => {
  const told = (markdown: string): string[] =>
    checkTip(withTip(markdown), "yards").map(({ line, column, message }) => `${line}:${column} ${message}`);

  test("nothing wrong, nothing said", () => expect(told("Carry :carry[pond].")).toEqual([]));

  test("wording", () => {
    expect(
      told(
        [
          "Carry :cary[pond] and :carry[pnd].",
          "Then `:carry[pnd]` again :carry[pnd] and :layup.",
          "",
          "- Tee :length{tee=bak}, :layup{leave=long}, :fairway{drive=20},",
          "  :depth[green] :aim[post] :carry[burn]{n=3} :carry :span[pond] :reach[light] :length{unit=m}",
        ].join("\n"),
      ),
    ).toMatchInlineSnapshot(`
      [
        "12:7 :cary[pond]: no figure is called "cary". Did you mean carry?",
        "12:23 :carry[pnd]: no feature of this hole is called "pnd". Did you mean pond?",
        "13:26 :carry[pnd]: no feature of this hole is called "pnd". Did you mean pond?",
        "13:42 :layup: the option leave is missing; write for example :layup{leave=100}",
        "15:7 :length{tee=bak}: no tee set of this hole is called "bak". Did you mean back?",
        "15:25 :layup{leave=long}: leave=long must be a length above 0 and below 1000; write for example leave=100",
        "15:45 :fairway{drive=20}: the line of play is not on a fairway 20 yd from the Back tee",
        "16:3 :depth[green]: :depth takes no feature; write :depth without [green]",
        "16:17 :aim[post]: the feature "post" has no name to print; give it one",
        "16:28 :carry[burn]{n=3}: the burn meets the shot corridor twice, so there is no n=3",
        "16:46 :carry: a feature is missing; write for example :carry[pond]",
        "16:53 :span[pond]: the option to is missing; write for example :span[pond]{to=green}",
        "16:65 :reach[light]: Harbour light has no outline to reach or carry; use :aim or :leaves for a point",
        "16:79 :length{unit=m}: no option of :length is called "unit". Write tee.",
      ]
    `);
  });
});

describe("where nothing can be carried", () => {
  const told = (features: readonly Feature[], figure: string): string => {
    const of = measureCourse(
      course([
        hole([...FEATURES, ...features], { tip: { markdown: figure, place: { file: "t.md", line: 1, column: 1 } } }),
      ]),
    ).holes[0]!;
    const [, target] = /\[([a-z-]+)\]/.exec(figure)!;
    const options = /on=line/.test(figure) ? { on: "line" } : {};
    const name = figure.slice(1, figure.indexOf("["));
    const found = answer({ name, target, options }, of, { units: "yards", tee: "back" });
    return "problem" in found ? found.problem : `${found.type}`;
  };

  test("a boundary: the reach can be written instead", () => {
    expect(
      told(
        [
          lineFeature(
            "fence",
            "out-of-bounds",
            [
              [-40, 200],
              [40, 210],
            ],
            { name: "the fence" },
          ),
        ],
        ":carry[fence]",
      ),
    ).toBe(
      "the fence is out of bounds, and nobody plays from beyond it, so there is no carry; :reach[fence] tells how far it is to its edge",
    );
  });

  test("water round the green: the carry to dry land on the line can", () => {
    const moat = areaFeature(
      "moat",
      "water",
      [
        [-60, 340],
        [60, 340],
        [60, 460],
        [18, 460],
        [18, 370],
        [-60, 370],
      ],
      { name: "the Moat" },
    );
    expect(told([moat], ":carry[moat]")).toBe(
      "the Moat lies in front of the green and goes on beside or behind it, so no carry is past all of it; " +
        ":carry[moat]{on=line} tells the carry to dry land on the line of play, :reach[moat] tells how far it is to its edge",
    );
    expect(told([moat], ":carry[moat]{on=line}")).toBe("length");
  });

  test("what runs on past the green: to stay short of it", () => {
    expect(told([areaFeature("sea", "water", box(12, 90, 90, 700), { name: "the Sea" })], ":carry[sea]")).toBe(
      "the Sea runs on past the green from the Back tee, so it has no far side to carry to; lay up short of it: :reach[sea] tells how far it is to its edge",
    );
  });

  test("every remedy that is named works when it is written", () => {
    for (const features of [
      [
        lineFeature("it", "out-of-bounds", [
          [-40, 200],
          [40, 210],
        ]),
      ],
      [areaFeature("it", "water", box(12, 90, 90, 700))],
      [
        areaFeature("it", "water", [
          [-60, 340],
          [60, 340],
          [60, 460],
          [18, 460],
          [18, 370],
          [-60, 370],
        ]),
      ],
      [areaFeature("it", "water", box(-60, 340, 60, 700))],
    ]) {
      const problem = told(features, ":carry[it]");
      for (const [written] of problem.matchAll(/:[a-z]+\[it\](?:\{[^}]*\})?/g))
        expect(told(features, written), written).toBe("length");
    }
  });
});
