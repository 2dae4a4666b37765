/** `npm run export`: a course's features in open formats, so that nothing is locked in. */
import { writeFile } from "node:fs/promises";
import { join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import type { Course } from "../course/types.ts";
import { readContent } from "../read/content.ts";
import { finishWriting } from "../read/write-all.ts";
import { ContentError } from "../site/load/content-error.ts";
import { shownFolder } from "../site/build/integration.ts";
import { reportLines, summary } from "../site/load/report.ts";
import { courseGeoJson, writeGeoJson } from "../tell/export/geojson.ts";
import { courseGpx } from "../tell/export/gpx.ts";
import { courseKml } from "../tell/export/kml.ts";
import { CommandError, EXIT_CODES, readOptions, runCommand } from "./options.ts";
import { makeFolders } from "../read/make-folders.ts";

const WRITERS: Readonly<Record<string, (course: Course) => string>> = {
  geojson: (course) => writeGeoJson(courseGeoJson(course)),
  gpx: courseGpx,
  kml: courseKml,
};

const USAGE = `Usage: npm run export -- --out DIR [options]
  --out DIR        folder the files are written to, one for each course and format
  --format NAME    geojson, gpx, kml or all (default: all)
  --course ID      only this course (default: every course)
  --content DIR    folder with club.yaml and the courses (default: content)`;

await runCommand(async () => {
  const options = readOptions(
    process.argv.slice(2),
    {
      content: { type: "string" },
      course: { type: "string" },
      format: { type: "string" },
      out: { type: "string" },
      help: { type: "boolean" },
    },
    USAGE,
  );
  if (options.help) {
    console.log(`${USAGE}\n${EXIT_CODES}`);
    return;
  }
  const { format = "all", out } = options;
  if (out === undefined)
    throw new CommandError(`--out is missing: where are the files to go? Write --out exported.\n\n${USAGE}`);
  const formats = format === "all" ? Object.keys(WRITERS) : [format];
  if (!formats.every((name) => Object.hasOwn(WRITERS, name)))
    throw new CommandError(
      `--format is ${JSON.stringify(format)}: expected geojson, gpx, kml or all. Write --format gpx.`,
    );
  const content =
    options.content === undefined
      ? fileURLToPath(new URL("../../content", import.meta.url))
      : resolve(options.content);
  await finishWriting(content);
  const { club, diagnostics } = await readContent(content);
  if (club === undefined) {
    for (const line of reportLines(diagnostics, shownFolder(content))) console.error(line);
    throw new ContentError(`${summary(diagnostics)}. Nothing was exported: put these right first.`);
  }
  const courses = options.course === undefined ? club.courses : club.courses.filter(({ id }) => id === options.course);
  if (courses.length === 0)
    throw new CommandError(
      `There is no course ${JSON.stringify(options.course)} in ${shownFolder(content)}. Write --course ${club.courses.map(({ id }) => id).join(" or --course ")}.`,
    );
  makeFolders(resolve(out));
  for (const course of courses) {
    for (const name of formats) {
      const file = join(out, `${course.id}.${name}`);
      await writeFile(file, WRITERS[name]!(course));
      console.log(`${file} written.`);
    }
  }
});
