/** What is drawn and printed in each language: its own words, and no phrase of another's between them. */
import { describe, expect, test } from "vitest";
import { drawCourse } from "../../src/draw/course-map.ts";
import { drawGreenSheet } from "../../src/draw/green-sheet.ts";
import { drawLanding } from "../../src/draw/landing.ts";
import { drawPlate } from "../../src/draw/plate.ts";
import { drawProfile } from "../../src/draw/profile.ts";
import { landingAt } from "../../src/measure/landing.ts";
import { REFERENCE_PLAYERS } from "../../src/measure/players.ts";
import { composeBook } from "../../src/paper/book.ts";
import { composeCard } from "../../src/paper/card.ts";
import { composeSigns } from "../../src/paper/sign.ts";
import { words } from "../../src/site/language/words.ts";
import { renderTip } from "../../src/tell/tip.ts";
import type { Club } from "../../src/course/types.ts";
import { place, TEE_SETS } from "../support/flat-course.ts";
import { hilly, PAR_FOUR } from "../support/hilly-course.ts";
import { LANGUAGES, leavesOf } from "../support/messages.ts";
import { readSvg } from "../draw/read-svg.ts";

/** Names are the club's: of no language. */
const NAMELESS = PAR_FOUR.map((feature) => ({ ...feature, name: undefined }));
const course = hilly(NAMELESS, (_east, north) => 20 + north / 20, {
  hole: { name: "Xx", tip: { markdown: ":reach[pot] :carry[burn] :rise :length", language: "en", place } },
  course: { name: "Xx", tees: TEE_SETS.map((tee) => ({ ...tee, name: "Xx" })) },
});
const hole = course.holes[0]!;
const bars = REFERENCE_PLAYERS.flatMap((player) => {
  const figures = landingAt(hole, hole.tees[0]!, player.driveMetres, course.ground);
  return figures ? [{ player: player.id, figures }] : [];
});
const lettering = (svg: string): string =>
  readSvg(svg)
    .filter(({ name }) => ["text", "title", "desc"].includes(name))
    .map(({ text }) => text)
    .join("\n");
const plain = (html: string): string => html.replace(/<[^>]+>/g, "\n").replaceAll("&amp;", "&");

function everything(language: string): Readonly<Record<string, string>> {
  const say = words(language);
  const club = {
    name: "Xx",
    place: "Xx",
    language,
    languages: [language],
    units: "metres",
    invented: undefined,
    contact: { email: undefined, telephone: undefined, website: undefined, address: undefined },
    cautions: [],
    localRules: [],
    courses: [course.course],
  } as unknown as Club;
  const paper = {
    club,
    measured: course,
    unit: "metres",
    words: say,
    theme: "light",
    courseGround: undefined,
    groundOf: () => undefined,
  } as const;
  return {
    plate: lettering(drawPlate(hole, { composition: "desk", idPrefix: "p", unit: "metres", words: say.draw }).svg),
    section: lettering(
      drawProfile(hole, course.ground!, {
        idPrefix: "s",
        unit: "metres",
        driveMetres: { back: 228.6 },
        words: say.drawGround,
      })!.svg,
    ),
    landing: lettering(drawLanding(hole, bars, { idPrefix: "l", unit: "metres", words: say.drawGround })!.svg),
    green: lettering(drawGreenSheet(hole, { idPrefix: "g", unit: "metres", tee: "back", words: say.drawGround }).svg),
    map: lettering(drawCourse(course, { idPrefix: "m", unit: "metres", words: say.draw }).svg),
    tip: plain(renderTip(hole, { units: "metres", idPrefix: "f", words: say.tell }).html),
    book: plain(composeBook({ ...paper, teeIds: ["back", "forward"] }).leaves.join("\n")),
    card: plain(composeCard({ ...paper, tees: course.course.tees, players: [], allowance: 95 }).leaves.join("\n")),
    signs: plain(
      composeSigns({ ...paper, teeIds: ["back"], addressOf: () => "https://golf.example/1/" }).leaves.join("\n"),
    ),
  };
}

/** Texts of a language long enough to be nobody else's, without what is filled in. */
const phrases = (language: string): string[] =>
  leavesOf(language).flatMap(({ message: { text, arguments: all } }) =>
    all.size === 0 && text.length > 9 ? [text] : [],
  );

const told = Object.fromEntries(LANGUAGES.map((language) => [language, everything(language)]));

describe.each(LANGUAGES)("in %s", (language) => {
  const own = new Set(phrases(language).flatMap((text) => text.toLowerCase()));
  const foreign = LANGUAGES.filter((other) => other !== language)
    .flatMap(phrases)
    .filter((text) => !own.has(text.toLowerCase()) && !/^[A-Z][\w-]* ?[A-Z]?\w*$/.test(text));

  test.each(Object.keys(told[language]!))("the %s says nothing in another language", (kind) => {
    const text = told[language]![kind]!;
    expect(text.length).toBeGreaterThan(20);
    expect(foreign.filter((phrase) => text.includes(phrase))).toEqual([]);
  });

  test("every drawing and sheet is another one than in other languages", () => {
    for (const other of LANGUAGES.filter((one) => one !== language)) {
      for (const [kind, text] of Object.entries(told[language]!))
        expect([kind, text]).not.toEqual([kind, told[other]![kind]]);
    }
  });
});
