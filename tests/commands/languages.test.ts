/**
 * The demo in a third language, for which its content has nothing: pages, drawings, data and captions speak
 * it, and say what they do not.
 */
import { cp, mkdtemp, readFile, readdir, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { builtPages } from "../../src/site/build/page-check.ts";
import { words } from "../../src/site/language/words.ts";
import { readIslandWords } from "../../src/words/island-words.ts";
import { plant } from "../fixtures/marked.ts";
import { LANGUAGES, leavesOf } from "../support/messages.ts";
import { PROJECT, run, type Ended } from "../support/run.ts";

let folder: string;
let out: string;
let built: Ended;
/** Addresses of the pages in the content's own language. */
let own: readonly string[];

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "marram-languages-"));
  const content = join(folder, "content");
  out = join(folder, "guide");
  await cp(join(PROJECT, "content"), content, { recursive: true });
  await plant(content, [{ file: "club.yaml", from: "language: [en, de]", to: "language: [en, de, fr]" }]);
  built = await run("src/commands/build.ts", ["--content", content, "--out", out]);
  own = (await builtPages(out)).filter((page) => !/^(?:de|fr)\//.test(page) && page !== "404.html");
});
afterAll(() => rm(folder, { recursive: true, force: true }));

const htmlOf = (page: string): Promise<string> => readFile(join(out, page, "index.html"), "utf8");

/** What a page says in its own language: no script, no style, nothing marked as another's. */
const saidIn = (html: string): string =>
  html
    .replaceAll(/<(script|style)\b[^]*?<\/\1>/g, " ")
    .replaceAll(/\sdata-[\w-]+="[^"]*"/g, "")
    .replaceAll(/<(\w+)(?=[^>]*\slang="en")[^>]*>[^]*?<\/\1>/g, " ")
    .replaceAll(/<[^>]*>/g, "\n")
    .replaceAll("&#39;", "'")
    .replaceAll("&quot;", '"')
    .replaceAll("&amp;", "&");

/** Texts of a language that are sentences or long enough to be nobody else's. */
const sentences = (language: string): string[] =>
  leavesOf(language).flatMap(({ message: { text, arguments: all } }) =>
    all.size === 0 && /\p{Ll}.*\s.*\p{Ll}{2}/u.test(text) ? [text] : [],
  );

describe("the demo in three languages", () => {
  test("is built, with the same pages in each", async () => {
    expect([built.code, built.stdout.split(",")[0]]).toEqual([0, `${3 * own.length} pages written to ${out}`]);
    const pages = await builtPages(out);
    for (const language of ["de", "fr"])
      expect(pages.filter((page) => page.startsWith(`${language}/`))).toEqual(
        own.map((page) => `${language}/${page}`),
      );
  });

  test("each French page says so, leads to the others, and has no sentence of the guide's own in another language", async () => {
    const french = new Set(sentences("fr"));
    const foreign = LANGUAGES.filter((language) => language !== "fr")
      .flatMap(sentences)
      .filter((text) => !french.has(text));
    for (const page of own) {
      const html = await htmlOf(`fr/${page}`);
      expect(html, page).toMatch(/<html lang="fr"/);
      const text = saidIn(html);
      const alone = new Set(text.split("\n").map((line) => line.trim()));
      // A name the club gives may hold two or three of our words, and is the same in every language.
      const found = foreign.filter((sentence) =>
        sentence.split(" ").length > 3 ? text.includes(sentence) : alone.has(sentence),
      );
      expect([page, found]).toEqual([page, []]);
    }
  });

  test("what the club has not translated stands in its own language, and is marked", async () => {
    const page = own.find((address) => address.endsWith("/7/"))!;
    const html = await htmlOf(`fr/${page}`);
    expect(html).toContain(words("fr").holePage.notTranslated);
    expect(html).toMatch(/<div class="tip" lang="en" data-own-voice=/);
    const notes = await htmlOf(`fr/${own.find((address) => address.endsWith("/figures/"))!}`);
    expect(notes).toContain(words("fr").figures.tipsNotChecked);
    for (const language of ["", "de/"]) {
      const checked = await htmlOf(`${language}${own.find((address) => address.endsWith("/figures/"))!}`);
      expect(checked).not.toContain(words(language === "" ? "en" : "de").figures.tipsNotChecked);
    }
  });

  test("drawings, flights and what islands fetch are French too", async () => {
    const course = own.find((address) => address.endsWith("/figures/"))!.replace("figures/", "");
    const say = words("fr");
    expect(await readFile(join(out, "fr", course, "7/plate.svg"), "utf8")).toContain(say.draw.legend.hazard);
    const film = JSON.parse(await readFile(join(out, "fr", course, "7/flyover.json"), "utf8")) as {
      readonly chapters: readonly { readonly title: string }[];
    };
    expect(film.chapters[0]!.title).toBe(say.film.chapters.tee);
    expect(await readFile(join(out, "fr", course, "tour.vtt"), "utf8")).toContain("Trou 1, ");
    const islands = readIslandWords(
      JSON.parse(await readFile(join(out, "words-fr.json"), "utf8")) as { readonly locale: string },
    );
    expect(islands.liveMap.loading).toBe(say.liveMap.loading);
    expect(islands.units.metres.spoken({ number: "0", count: 0 })).toBe("0 mètre");
    expect((await readdir(join(out, "fr", course))).toSorted()).toEqual(
      (await readdir(join(out, "de", course))).toSorted(),
    );
  });
});
