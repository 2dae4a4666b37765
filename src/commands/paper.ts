/** `npm run paper`: pocket book, scorecard and tee signs as PDF files, from the same content as the guide. */
import { rename, rm, stat, writeFile } from "node:fs/promises";
import { dirname, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { tagFor } from "../course/guide-languages.ts";
import type { Club } from "../course/types.ts";
import type { MeasuredCourse } from "../measure/types.ts";
import { BOOK_COMPOSITION, SIGN_COMPOSITION } from "../draw/paper-composition.ts";
import type { LengthUnit } from "../geo/units.ts";
import { composeBook, teeSets } from "../paper/book.ts";
import { composeCard } from "../paper/card.ts";
import { paperDocument } from "../paper/document.ts";
import { composeSigns } from "../paper/sign.ts";
import { BLEED_MM, BOOK_PAGE, CARD_SHEET, SHEETS, turned, type Size } from "../paper/sizes.ts";
import { finishWriting } from "../read/write-all.ts";
import { ContentError } from "../site/load/content-error.ts";
import { shownFolder } from "../site/build/integration.ts";
import { loadGuide } from "../site/load/load.ts";
import { reportLines, summary } from "../site/load/report.ts";
import { guideIn } from "../site/language/language-view.ts";
import { holePath, languageFolder } from "../site/addresses/routes.ts";
import type { Words } from "../site/language/words.ts";
import { readBase, readSite } from "./address.ts";
import { CommandError, EXIT_CODES, readOptions, runCommand } from "./options.ts";
import { finish, impose, onSheets, type Finish } from "./print/finish.ts";
import { groundOfCourse, groundsOf } from "./print/pictures.ts";
import {
  BOOKLET_SHEETS,
  readCourse,
  readPlayers,
  readSheet,
  readTees,
  readUnit,
  readWords,
  SIGN_SHEETS,
} from "./print/request.ts";
import { paperCss, printDocuments } from "./print/to-pdf.ts";
import { makeFolders } from "../read/make-folders.ts";

const KINDS = ["book", "card", "signs"] as const;
type Kind = (typeof KINDS)[number];

const USAGE = `Usage: npm run paper -- book|card|signs --out FILE [options]
  --out FILE           the PDF that is written
  --content DIR        folder with club.yaml and the courses (default: content)
  --course ID          which course, where the club has several
  --tees ID,ID         tee sets whose figures are printed (default: all that fit)
  --unit NAME          yards or metres (default: the club's)
  --language TAG       language, one of the club's or of the guide's own words (default: the club's first)
  --ink                black and white
  --marks              keep the bleed, with crop marks around it (book and card)
 book:
  --booklet SHEET      two pages to a side of a4 or letter, to fold and staple (turn over the short edge)
 card:
  --course-handicap N  Course Handicaps of up to four players, such as 14 or 14,+2: strokes received are dotted
  --gender NAME        whose stroke indexes count: men or women, or one for each player (default: men)
  --allowance PERCENT  work out Playing Handicaps with it
  --sheet SHEET        each side in the middle of a4 or letter, with marks to cut and fold
 signs:
  --site URL           address of the site, such as https://example.org
  --base PATH          path the guide is served from, such as /guide/ (default: /)
  --sheet SHEET        a2, a3, a4, letter or tabloid (default: a3)`;

const OPTIONS = {
  content: { type: "string" },
  out: { type: "string" },
  course: { type: "string" },
  tees: { type: "string" },
  unit: { type: "string" },
  language: { type: "string" },
  ink: { type: "boolean" },
  marks: { type: "boolean" },
  booklet: { type: "string" },
  sheet: { type: "string" },
  "course-handicap": { type: "string" },
  gender: { type: "string" },
  allowance: { type: "string" },
  site: { type: "string" },
  base: { type: "string" },
  help: { type: "boolean" },
} as const;

/** Options that say something of one kind of paper alone. */
const ONLY: Readonly<Partial<Record<keyof typeof OPTIONS, readonly Kind[]>>> = {
  marks: ["book", "card"],
  booklet: ["book"],
  sheet: ["card", "signs"],
  "course-handicap": ["card"],
  gender: ["card"],
  allowance: ["card"],
  site: ["signs"],
  base: ["signs"],
};

type Options = ReturnType<typeof readOptions<typeof OPTIONS>>;

interface Job {
  readonly kind: Kind;
  readonly options: Options;
  readonly club: Club;
  readonly measured: MeasuredCourse;
  readonly unit: LengthUnit;
  readonly words: Words;
  readonly ink: boolean;
}

/** What a kind of paper is made of: its pages, their size and how they are finished. */
interface Sheets {
  readonly title: string;
  readonly leaves: readonly string[];
  readonly page: Size;
  readonly bleedMm: number;
  readonly css: string;
  readonly finish: (pdf: Uint8Array, how: Finish) => Promise<Uint8Array>;
  readonly foldMm?: number;
}

async function book({ options, club, measured, unit, words, ink }: Job): Promise<Sheets> {
  const teeIds = readTees(measured, options.tees);
  const booklet = readSheet("--booklet", options.booklet, BOOKLET_SHEETS);
  const [groundOf, courseGround] = [
    await groundsOf(measured, BOOK_COMPOSITION, ink),
    await groundOfCourse(measured, ink),
  ];
  const { title, leaves } = composeBook({
    club,
    measured,
    teeIds,
    unit,
    words,
    theme: ink ? "ink" : "light",
    groundOf,
    courseGround,
  });
  return {
    title,
    leaves,
    page: BOOK_PAGE,
    bleedMm: BLEED_MM,
    css: "",
    finish: (pdf, how) => (booklet ? impose(pdf, how, SHEETS[booklet]) : finish(pdf, { ...how, facing: true })),
  };
}

async function card({ options, club, measured, unit, words, ink }: Job): Promise<Sheets> {
  const tees = teeSets(measured, readTees(measured, options.tees));
  const sheet = readSheet("--sheet", options.sheet, BOOKLET_SHEETS);
  const { players, allowance } = readPlayers(options["course-handicap"], options.gender, options.allowance);
  const { title, leaves } = composeCard({
    club,
    measured,
    tees,
    unit,
    words,
    theme: ink ? "ink" : "light",
    courseGround: await groundOfCourse(measured, ink),
    players,
    allowance,
  });
  return {
    title,
    leaves,
    page: CARD_SHEET,
    bleedMm: BLEED_MM,
    css: "",
    foldMm: CARD_SHEET.widthMm / 2,
    finish: (pdf, how) => (sheet ? onSheets(pdf, how, turned(SHEETS[sheet])) : finish(pdf, how)),
  };
}

async function signs({ options, club, measured, unit, words, ink }: Job): Promise<Sheets> {
  if (options.site === undefined)
    throw new CommandError(
      "--site is missing: which address are the codes to lead to? Write --site https://www.example.org, and the path below it as --base /guide/.",
    );
  const [site, base] = [readSite(options.site), readBase(options.base ?? "/")];
  const teeIds = readTees(measured, options.tees);
  const page = SHEETS[readSheet("--sheet", options.sheet, SIGN_SHEETS) ?? "a3"];
  const zoom = Math.min(page.widthMm / SHEETS.a3.widthMm, page.heightMm / SHEETS.a3.heightMm);
  const { title, leaves } = composeSigns({
    club,
    measured,
    teeIds,
    unit,
    words,
    theme: ink ? "ink" : "light",
    groundOf: await groundsOf(measured, SIGN_COMPOSITION, ink),
    addressOf: ({ hole }) => `${site}${base}${languageFolder(club)}${holePath(measured.course.id, hole.number)}`,
  });
  return { title, leaves, page, bleedMm: 0, css: `:root{--sign-zoom:${zoom}}`, finish };
}

const MAKERS: Readonly<Record<Kind, (job: Job) => Promise<Sheets>>> = { book, card, signs };

/** Refuses what the kind does not know, and a file that cannot be written, before anything costs time. */
async function readOut(kind: Kind, options: Options): Promise<string> {
  for (const [name, kinds] of Object.entries(ONLY)) {
    if (options[name as keyof Options] !== undefined && !kinds.includes(kind))
      throw new CommandError(`--${name} is for ${kinds.join(" and ")}, not for ${kind}. Leave it out.`);
  }
  if (options.marks && options.booklet !== undefined)
    throw new CommandError("A booklet has its marks already. Leave out --marks, or --booklet.");
  if (options.marks && options.sheet !== undefined)
    throw new CommandError("A card on a sheet has its marks already. Leave out --marks, or --sheet.");
  if (options.out === undefined)
    throw new CommandError(`--out is missing: where is the PDF to go? Write --out ${kind}.pdf.\n\n${USAGE}`);
  if (!/\.pdf$/i.test(options.out))
    throw new CommandError(
      `--out is ${JSON.stringify(options.out)}: a PDF is written, and its name says so. Write --out ${options.out}.pdf.`,
    );
  const out = resolve(options.out);
  if (
    await stat(out).then(
      (found) => found.isDirectory(),
      () => false,
    )
  )
    throw new CommandError(`${options.out} is a folder. Name a file: --out ${options.out}/${kind}.pdf.`);
  return out;
}

/** Whole or not at all: a printer may be reading the last one. */
async function writeWhole(path: string, bytes: Uint8Array): Promise<void> {
  makeFolders(dirname(path));
  const beside = `${path}.${process.pid}`;
  try {
    await writeFile(beside, bytes);
    await rename(beside, path);
  } finally {
    await rm(beside, { force: true });
  }
}

await runCommand(async () => {
  const [wanted = "", ...rest] = process.argv.slice(2);
  if (wanted === "--help") {
    console.log(`${USAGE}\n${EXIT_CODES}`);
    return;
  }
  const kind = KINDS.find((name) => name === wanted);
  if (kind === undefined)
    throw new CommandError(
      `${wanted === "" || wanted.startsWith("-") ? "What is to be printed?" : `${JSON.stringify(wanted)} cannot be printed.`} Write book, card or signs first: npm run paper -- book --out book.pdf.\n\n${USAGE}`,
    );
  const options = readOptions(rest, OPTIONS, USAGE);
  if (options.help) {
    console.log(`${USAGE}\n${EXIT_CODES}`);
    return;
  }
  const out = await readOut(kind, options);
  const content =
    options.content === undefined
      ? fileURLToPath(new URL("../../content", import.meta.url))
      : resolve(options.content);
  await finishWriting(content);
  const { guide, diagnostics } = await loadGuide(content);
  if (guide === undefined) {
    for (const line of reportLines(diagnostics, shownFolder(content))) console.error(line);
    throw new ContentError(`${summary(diagnostics)}. Nothing was printed: put these right first.`);
  }
  const words = readWords(options.language, guide.club.language);
  const { club, courses } = guideIn(
    guide,
    options.language === undefined
      ? guide.club.language
      : (tagFor(guide.club.languages, options.language) ?? options.language),
  );
  const measured = readCourse(courses, options.course);
  const ink = options.ink ?? false;
  const sheets = await MAKERS[kind]({
    kind,
    options,
    club,
    measured,
    unit: readUnit(options.unit, club.units),
    words,
    ink,
  });
  const html = paperDocument({
    ...sheets,
    language: words.language,
    css: `${await paperCss()}${sheets.css}`,
    kind: `${kind}${ink ? " ink" : ""}`,
  });
  const [printed] = await printDocuments([html], (message) => console.error(message));
  for (const { page, mm } of printed!.overfull)
    console.error(
      `Page ${page}: its text runs over by ${mm.toFixed(1)} mm and is cut off there. Shorten what stands on it.`,
    );
  const pdf = await sheets.finish(printed!.pdf, {
    title: sheets.title,
    subject: measured.course.name,
    author: club.name,
    language: words.locale,
    page: sheets.page,
    bleedMm: sheets.bleedMm,
    marks: options.marks ?? false,
    ...(sheets.foldMm === undefined ? {} : { foldMm: sheets.foldMm }),
  });
  await writeWhole(out, pdf);
  console.log(`${options.out} written: ${sheets.leaves.length} pages, ${(pdf.length / 1e6).toFixed(1)} MB.`);
});
