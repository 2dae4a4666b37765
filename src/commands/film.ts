/** `npm run film`: a flyover as a video file, drawn frame by frame, with its captions beside it. */
import { readdir, readFile, rename, rm, stat, writeFile } from "node:fs/promises";
import { dirname, extname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { tagFor } from "../course/guide-languages.ts";
import { cutCues, frameTimes } from "../flyover/cut.ts";
import { readFilmData } from "../contract/film-data.ts";
import { flightOf } from "../flyover/track.ts";
import { webVtt } from "../flyover/webvtt.ts";
import { readRecord } from "../site/build/build-record.ts";
import { flyoverPath, holePath, coursePath, languageFolder, tourPath } from "../site/addresses/routes.ts";
import { findOrInstallBrowser, SETTLE_BY_HAND } from "./browser/install-browser.ts";
import { openCamera } from "./film/camera.ts";
import { encodeTo, findOrInstallEncoder, type FilmFormat } from "./film/encoder.ts";
import { CommandError, EXIT_CODES, readOptions, runCommand } from "./options.ts";

const USAGE = `Usage: npm run film -- --hole N --out FILE [options]
       npm run film -- --round --out FILE [options]
  --hole N           the hole to fly; or --round for all of them
  --out FILE         film to write, .mp4 or .webm; captions go beside it as .vtt
  --course ID        which course, where the club has several
  --language TAG     which language, where the guide has several (default: its first)
  --size WxH         picture size in pixels, even numbers (default: 1280x720)
  --fps N            frames a second (default: 25)
  --from-seconds N   start there (default: 0)
  --to-seconds N     stop there (default: the end)
  --built DIR        folder of the built guide (default: dist)
Each frame waits until it is drawn in full, so a machine without a graphics card takes minutes for a second of film.`;

const FORMATS: Readonly<Record<string, FilmFormat>> = { ".mp4": "mp4", ".webm": "webm" };

const LARGEST_PIXELS = 7680;
const MOST_FPS = 120;

function readSize(text: string): { width: number; height: number } {
  const [, width, height] = (/^(\d+)x(\d+)$/.exec(text) ?? []).map(Number);
  const fits = (pixels: number | undefined): pixels is number =>
    pixels !== undefined && pixels >= 16 && pixels <= LARGEST_PIXELS && pixels % 2 === 0;
  if (fits(width) && fits(height)) return { width, height };
  throw new CommandError(
    `--size is ${JSON.stringify(text)}: expected width and height in even pixels, 16 to ${LARGEST_PIXELS}. Write --size 1280x720.`,
  );
}

function readNumber(name: string, text: string | undefined, fallback: number, least: number, most: number): number {
  if (text === undefined) return fallback;
  const value = text.trim() === "" ? NaN : Number(text);
  if (value >= least && value <= most) return value;
  throw new CommandError(
    `--${name} is ${JSON.stringify(text)}: expected a number from ${least} to ${Number(most.toFixed(2))}. Write --${name} ${Number(fallback.toFixed(2))}.`,
  );
}

const isFile = (path: string): Promise<boolean> =>
  stat(path).then(
    (found) => found.isFile(),
    () => false,
  );

/** The course asked for, or the only one. */
async function courseOf(folder: string, asked: string | undefined): Promise<string> {
  const names = (await readdir(folder, { withFileTypes: true }))
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name);
  const courses: string[] = [];
  for (const name of names.sort()) if (await isFile(join(folder, coursePath(name), "tour.json"))) courses.push(name);
  const choices = courses.map((id) => `--course ${id}`).join(" or ");
  if (asked !== undefined) {
    if (courses.includes(asked)) return asked;
    throw new CommandError(
      `There is no course ${JSON.stringify(asked)} in ${folder}. ${courses.length > 0 ? `Write ${choices}.` : "Run: npm run build"}`,
    );
  }
  const [only, ...others] = courses;
  if (only === undefined) throw new CommandError(`The guide in ${folder} has no flyovers. Run: npm run build`);
  if (others.length > 0) throw new CommandError(`The club has several courses. Write ${choices}.`);
  return only;
}

/** The folder of a language's pages. */
function pagesIn(languages: readonly string[], asked: string | undefined): string {
  if (asked === undefined) return "";
  const language = tagFor(languages, asked);
  if (language !== undefined) return languageFolder({ language, languages });
  throw new CommandError(
    `--language is ${JSON.stringify(asked)}: the guide has no pages in it. Write ${languages.map((tag) => `--language ${tag}`).join(" or ")}.`,
  );
}

await runCommand(async () => {
  const options = readOptions(
    process.argv.slice(2),
    {
      hole: { type: "string" },
      round: { type: "boolean" },
      out: { type: "string" },
      course: { type: "string" },
      language: { type: "string" },
      size: { type: "string" },
      fps: { type: "string" },
      "from-seconds": { type: "string" },
      "to-seconds": { type: "string" },
      built: { type: "string" },
      help: { type: "boolean" },
    },
    USAGE,
  );
  if (options.help) {
    console.log(`${USAGE}\n${EXIT_CODES}`);
    return;
  }
  const { hole, round = false, out } = options;
  if ((hole === undefined) === !round) throw new CommandError(`Say what to film: --hole 7, or --round.\n\n${USAGE}`);
  if (out === undefined)
    throw new CommandError(`--out is missing: where is the film to go? Write --out film.mp4.\n\n${USAGE}`);
  const format = FORMATS[extname(out).toLowerCase()];
  if (format === undefined)
    throw new CommandError(
      `--out is ${JSON.stringify(out)}: expected a name that ends in .mp4 or .webm. Write --out film.mp4.`,
    );
  const { width, height } = readSize(options.size ?? "1280x720");
  const fps = readNumber("fps", options.fps, 25, 1, MOST_FPS);
  const folder =
    options.built === undefined ? fileURLToPath(new URL("../../dist", import.meta.url)) : resolve(options.built);
  const record = await readRecord(folder);
  if (record === undefined) throw new CommandError(`There is no built guide in ${folder}. Run: npm run build`);
  const course = await courseOf(folder, options.course);
  const pages = pagesIn(record.languages, options.language);
  const number = Number(hole);
  if (
    hole !== undefined &&
    !(Number.isInteger(number) && (await isFile(join(folder, holePath(course, number), "flyover.json"))))
  ) {
    throw new CommandError(
      `--hole is ${JSON.stringify(hole)}: the guide in ${folder} has no such hole. Write --hole 1.`,
    );
  }
  const file = join(
    folder,
    pages,
    round ? `${coursePath(course)}tour.json` : `${holePath(course, number)}flyover.json`,
  );
  const film = readFilmData(JSON.parse(await readFile(file, "utf8")));
  const { seconds } = flightOf(film.track);
  const fromSeconds = readNumber("from-seconds", options["from-seconds"], 0, 0, seconds);
  const toSeconds = readNumber("to-seconds", options["to-seconds"], seconds, 0, seconds);
  if (toSeconds <= fromSeconds)
    throw new CommandError(
      `Nothing lies between ${fromSeconds} and ${toSeconds} seconds. Write a --to-seconds after --from-seconds; the film is ${seconds.toFixed(1)} seconds long.`,
    );
  if (
    !(await stat(dirname(resolve(out))).then(
      (found) => found.isDirectory(),
      () => false,
    ))
  )
    throw new CommandError(`The folder of ${out} does not exist. Make it first: mkdir -p ${dirname(out)}`);

  const tell = (message: string): void => console.error(message);
  const browser = findOrInstallBrowser(tell);
  if (browser === undefined) throw new CommandError(`A film needs a browser. ${SETTLE_BY_HAND}`);
  const encoder = findOrInstallEncoder(tell);

  const cut = { fromSeconds, toSeconds };
  const times = frameTimes(cut, fps);
  const started = performance.now();
  const camera = await openCamera({
    browser,
    folder,
    base: record.base,
    path: `${pages}${round ? tourPath(course) : flyoverPath(course, number)}`,
    width,
    height,
  });
  const opened = (performance.now() - started) / 1000;
  const unfinished = `${out}.part`;
  const encoding = encodeTo(unfinished, encoder, format, fps);
  try {
    for (const [i, time] of times.entries()) {
      await encoding.add(await camera.picture(time));
      if ((i + 1) % 25 === 0)
        tell(`${i + 1} of ${times.length} frames, ${((performance.now() - started) / 1000).toFixed(0)} s`);
    }
    await encoding.finish();
    await rename(unfinished, out);
  } catch (error) {
    encoding.abandon();
    await rm(unfinished, { force: true });
    throw error;
  } finally {
    await camera.close();
  }
  const captions = `${out.slice(0, -extname(out).length)}.vtt`;
  await writeFile(captions, webVtt(cutCues(film.cues, cut)));
  const [filmed, length] = [(performance.now() - started) / 1000 - opened, times.length / fps];
  console.log(
    `${out} and ${captions} written: ${times.length} frames, ${length.toFixed(2)} s of film. Opening took ${opened.toFixed(1)} s, the frames ${filmed.toFixed(1)} s: ${(filmed / length).toFixed(1)} s for each second of film.`,
  );
});
