/** What is drawn and told in German: the words asked for, and no English between them. */
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { drawGreenSheet } from "../../src/draw/green-sheet.ts";
import { drawLanding } from "../../src/draw/landing.ts";
import { drawPlate } from "../../src/draw/plate.ts";
import { drawProfile } from "../../src/draw/profile.ts";
import { aimFrom, hazardName } from "../../src/components/hole-view.ts";
import { landingAt } from "../../src/measure/landing.ts";
import { REFERENCE_PLAYERS } from "../../src/measure/players.ts";
import { composeBook } from "../../src/paper/book.ts";
import { composeCard } from "../../src/paper/card.ts";
import { composeSigns } from "../../src/paper/sign.ts";
import { holeGround } from "../../src/site/ground/figures.ts";
import { cornerText, greenSentences, lieText, riseSentence, sectionSentence } from "../../src/site/ground/text.ts";
import { words } from "../../src/site/language/words.ts";
import { decimal, shortDecimal } from "../../src/tell/numbers.ts";
import { renderTip } from "../../src/tell/tip.ts";
import type { Club, TeeSet } from "../../src/course/types.ts";
import { areaFeature, box, place, pointFeature, TEE_SETS } from "../support/flat-course.ts";
import { DOGLEG, hilly, PAR_FOUR } from "../support/hilly-course.ts";
import { advancesOf } from "../support/font-characters.ts";
import { PROJECT } from "../support/run.ts";
import { readSvg } from "../draw/read-svg.ts";
import { dayOf } from "../../src/words/day.ts";

const german = words("de");
const tees: readonly TeeSet[] = TEE_SETS.map((tee, i) => ({
  ...tee,
  name: ["Weiß", "Rot"][i]!,
  ratings: tee.ratings.map((rating) => ({ ...rating, courseRating: 71.4, bogeyRating: 96.3 })),
}));
const hill = (_east: number, north: number): number => 20 + north / 20;
const feature = PAR_FOUR.map((one) =>
  one.name === "Burn" ? { ...one, name: "Mühlbach" } : one.name === "Pot" ? { ...one, name: undefined } : one,
);
const course = hilly(feature, hill, {
  hole: {
    name: "Weiße Düne",
    tip: {
      markdown:
        "Spielen Sie über den Bach: :carry[burn] müssen es sein, links vom Sand (:reach[pot]). Das Grün liegt :rise.",
      language: "de",
      place,
    },
  },
  course: { name: "Tarvay Links", tees },
});
const hole = course.holes[0]!;
const [back] = hole.tees;
const lettering = (svg: string): string =>
  readSvg(svg)
    .filter(({ name }) => ["text", "title", "desc"].includes(name))
    .map(({ text }) => text)
    .join("\n");
const plain = (text: string): string => text.replaceAll("\u00a0", " ");
/** English that stands on the same drawings and leaves in English. */
const ENGLISH =
  / (?:the|of|and|to|from|with) |\b(?:hole|tee|surveyed|stroke index|reach|leaves|wide|left|right|front|middle|back|scratch men|trouble|out of bounds|gorse|level|metres)\b/i;
const noEnglish = (text: string): void => expect(text.match(ENGLISH)).toBeNull();

describe("drawings", () => {
  test("a plate: index, date and key", () => {
    const { svg } = drawPlate(hole, { composition: "desk", idPrefix: "p", unit: "metres", words: german.draw });
    const text = lettering(svg);
    for (const word of [
      "Par 4 · HCP 1",
      "Vermessen am 1. Mai 2026",
      "ab Abschlag",
      "bis Grünmitte",
      "Beginn–Carry",
      "Loch 1, Weiße Düne: Plan",
      "Mühlbach",
    ])
      expect(text).toContain(word);
    expect(text).toContain("1. Mai 2026");
    noEnglish(text);
  });

  test("a section: title, drive, sides", () => {
    const text = lettering(
      drawProfile(hole, course.ground!, {
        idPrefix: "s",
        unit: "metres",
        driveMetres: { back: 228.6 },
        words: german.drawGround,
      })!.svg,
    );
    for (const word of [
      "Längsschnitt von Loch 1 entlang der Spiellinie vom Abschlag Weiß",
      "Drive 229",
      "rechts",
      "Mühlbach",
    ])
      expect(text).toContain(word);
    noEnglish(text);
  });

  test("landing ground: players and widths", () => {
    const bars = REFERENCE_PLAYERS.flatMap((player) => {
      const figures = landingAt(hole, back!, player.driveMetres, course.ground);
      return figures ? [{ player: player.id, figures }] : [];
    });
    const text = lettering(drawLanding(hole, bars, { idPrefix: "l", unit: "metres", words: german.drawGround })!.svg);
    for (const word of ["Scratch Herren", "Bogey Damen", "30 breit", "Wo die Drives an Loch 1 liegen bleiben"])
      expect(text).toContain(word);
    noEnglish(text);
  });

  test("a green: front and back", () => {
    const text = lettering(
      drawGreenSheet(hole, { idPrefix: "g", unit: "metres", tee: "back", words: german.drawGround }).svg,
    );
    for (const word of ["Grün von Loch 1", "Anfang", "Ende"]) expect(text).toContain(word);
    noEnglish(text);
  });

  // The strip's labels stand in a margin made for them.
  test("landing ground's labels stay within their sheet", () => {
    const bars = REFERENCE_PLAYERS.flatMap((player) => {
      const figures = landingAt(hole, back!, player.driveMetres);
      return figures ? [{ player: player.id, figures }] : [];
    });
    const tags = readSvg(drawLanding(hole, bars, { idPrefix: "l", unit: "metres", words: german.drawGround })!.svg);
    const width = Number(tags[0]!.attributes["viewBox"]!.split(" ")[2]);
    const labels = tags.filter(({ name, text }) => name === "text" && text.startsWith("Scratch "));
    expect(labels.length).toBeGreaterThan(0);
    const advance = advancesOf(join(PROJECT, "node_modules/@fontsource/besley/files/besley-latin-600-normal.woff"));
    for (const { text, attributes } of labels) {
      const ems = [...text].reduce((sum, character) => sum + advance(character)!, 0);
      expect(Number(attributes["x"]) + ems * Number(attributes["font-size"])).toBeLessThanOrEqual(width);
    }
  });
});

describe("sentences", () => {
  const ground = holeGround(course, hole, back!);

  test("of a tip, its figures and their meanings", () => {
    const { html, text } = renderTip(hole, { units: "metres", idPrefix: "f", words: german.tell });
    expect(plain(text)).toMatch(
      /^Spielen Sie über den Bach: \d+ m müssen es sein, links vom Sand \(\d+ m\)\. Das Grün liegt 20 m bergauf\.$/,
    );
    expect(plain(html)).toContain(
      "Carry (Mühlbach): bis sicher dahinter, überall innerhalb von 25 m beiderseits der Spiellinie",
    );
    // A feature without a name is called what it is, not by its id.
    expect(plain(html)).toContain("Beginn (Bunker): ");
    expect(html).toContain("vom Abschlag Weiß");
    expect(plain(html)).toMatch(/\d+ Meter, \d+ Yards/);
    noEnglish(html.replace(/<[^>]+>/g, " "));
  });

  test("of rise, section, lie and green", () => {
    const [tee] = ground.tees;
    expect(plain(riseSentence(tee!.rise!, "metres", german))).toBe(
      "Vom Abschlag zum Grün geht es 20 m bergauf, gleichmäßig über die ganze Strecke.",
    );
    expect(plain(sectionSentence(back!, course.ground!, "metres", german)!)).toMatch(
      /^bei 50 m 3 m höher; bei 100 m 5 m höher; .*bei 400 m 20 m höher\.$/,
    );
    expect(plain(lieText({ awayPercent: 5, rightPercent: -3 }, german))).toBe("bergauf 5 %, fällt nach rechts 3 %");
    expect(greenSentences(ground.green!, back!.green.approach, "metres", german).join(" ")).toMatch(
      /^Das Grün steigt von vorn nach hinten an\. /,
    );
  });

  test("of a corner: kinds keep their capital, players are joined by und", () => {
    const bare = DOGLEG.map((one) => (one.name === "Whins" ? { ...one, name: undefined } : one));
    const measured = hilly(bare, () => 10);
    const corner = holeGround(measured, measured.holes[0]!, measured.holes[0]!.tees[0]!).tees[0]!.corners[0]!;
    const told = cornerText(
      measured.holes[0]!,
      { ...corner, reachableFor: ["scratch-men", "bogey-men"] },
      "metres",
      german,
    );
    const all = plain([...told.plain, ...told.beyond, ...told.reach].join(" "));
    expect(all).toMatch(/^Direkt über die rechte Ecke: \d+ m Carry \(Ginster\)\. Das spart \d+ m\. /);
    expect(all).toContain("Oberkante (Ginster): 3 m über dem Abschlag.");
    expect(all).toContain("Mit dem Drive erreichbar für: Scratch Herren und Bogey Herren.");
    noEnglish(all);
  });

  test("of what has no name of its own", () => {
    const mast = hilly([
      ...feature,
      pointFeature("mark", "landmark", [5, 900], { tags: { man_made: "lighthouse" } }),
      areaFeature("deep", "water", box(-60, 200, -30, 240)),
    ]);
    const unsaid = mast.holes[0]!;
    const measured = {
      ...unsaid,
      hole: { ...unsaid.hole, tip: { ...unsaid.hole.tip, markdown: "Auf :aim[mark] zielen." } },
    };
    expect(aimFrom(measured, measured.tees[0]!, german)?.name).toBe("Leuchtturm");
    expect(
      hazardName(
        measured,
        measured.tees[0]!.hazards.find(({ id }) => id === "deep")!,
        german,
      ),
    ).toBe("Wasser");
  });

  test("of numbers and dates", () => {
    expect([
      decimal(71.4, 1, german.locale),
      decimal(2, 1, german.locale),
      shortDecimal(0.25, 2, german.locale),
      shortDecimal(2, 1, german.locale),
    ]).toEqual(["71,4", "2,0", "0,25", "2"]);
    expect(decimal(71.4, 1, words("en").locale)).toBe("71.4");
    expect(german.notices.between({ from: dayOf("2026-11-01"), until: dayOf("2027-02-28") })).toBe(
      "Vom 1. November 2026 bis zum 28. Februar 2027.",
    );
  });
});

describe("paper", () => {
  const club = {
    name: "Golfclub Tarvay",
    place: "Insel Tarvay",
    language: "de",
    languages: ["de"],
    units: "metres",
    invented: undefined,
    contact: { email: undefined, telephone: undefined, website: undefined, address: undefined },
    cautions: [],
    localRules: [],
    courses: [course.course],
  } as unknown as Club;
  const told = (leaves: readonly string[]): string =>
    plain(
      leaves
        .join("\n")
        .replace(/<desc[\s\S]*?<\/desc>/g, "")
        .replace(/<[^>]+>/g, " "),
    );

  test("the book's leaves", () => {
    const book = composeBook({
      club,
      measured: course,
      teeIds: ["back", "forward"],
      unit: "metres",
      words: german,
      theme: "light",
      groundOf: () => undefined,
      courseGround: undefined,
    });
    const text = told(book.leaves);
    expect(book.title).toBe("Birdie-Book Tarvay Links");
    for (const word of [
      "So lesen Sie dieses Buch",
      "Angaben in Metern, vom Abschlag: Weiß, Rot",
      "Innerhalb der Golfregeln",
      "Musterplatzregel G-11",
      "HCP",
      "Landezone",
      "Notizen",
      "Sicherheitshinweise",
      "Gewitter",
      "Scorekarte",
      "Weiß, Herren",
      "71,4",
      "Vermessen am 1. Mai 2026.",
    ])
      expect(text).toContain(word);
    noEnglish(text);
  });

  test("the card and the signs", () => {
    const card = composeCard({
      club,
      measured: course,
      tees,
      unit: "metres",
      words: german,
      theme: "light",
      courseGround: undefined,
      players: [{ name: "A", handicap: 12, gender: "men" }] as never,
      allowance: 95,
    });
    const text = told(card.leaves);
    for (const word of [
      "HCP",
      "PH",
      "Zähler",
      "Unterschrift Spieler",
      "Playing Handicap (PH): 95 % des Course Handicaps.",
      "71,4",
      "96,3",
      "Gemessene Längen in Metern",
    ])
      expect(text).toContain(word);
    noEnglish(text);
    const signs = composeSigns({
      club,
      teeIds: ["back"],
      unit: "metres",
      words: german,
      theme: "light",
      groundOf: () => undefined,
      addressOf: () => "https://golf.example/1/",
      measured: course,
    });
    expect(signs.title).toBe("Abschlagtafeln Tarvay Links");
    expect(told(signs.leaves)).toContain("Zahlen im Plan in Metern vom Abschlag Weiß");
  });
});
