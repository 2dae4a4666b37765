/** `npm run bring`: map files into a course's pages. */
import { resolve } from "node:path";
import { parseArgs } from "node:util";
import { fileURLToPath } from "node:url";
import { CONFIRMABLE, confirmed, type Confirmable } from "../bring/confirm.ts";
import { readPages } from "../bring/pages/pages.ts";
import { REACH_METRES } from "../bring/place/sort.ts";
import { fullReport, reportJson, shortReport } from "../bring/report/report.ts";
import { prepareBring, writeBring, writeFiles } from "../bring/run.ts";
import { FORMATS } from "../bring/sources/open.ts";
import { finishWriting } from "../read/write-all.ts";
import { toDoLines, type ToDo } from "../check/to-do.ts";
import { shownFolder } from "../site/build/integration.ts";
import { toDoOf } from "../site/load/to-do.ts";
import { CommandError, EXIT_CODES, runCommand } from "./options.ts";
import { withFiles } from "./preview.ts";

const USAGE = `Usage: npm run bring -- --course ID [options] FILE...
  FILE             ${FORMATS}
  --course ID      folder of the course in the content folder
  --content DIR    folder with club.yaml and the courses (default: content)
  --write          write it; without this the changes are only counted
  --all            every feature and every line that changes
  --json           for programs: one JSON value on standard output
  --crs SYSTEM     coordinate system of the files, before what they declare: "EPSG:2157" or "+proj=..."
  --dist-unit UNIT yards or metres: what OpenStreetMap's dist tags are in, where they do not say
  --lines KEY=VALUE  only lines of play with this tag count, where a file holds several courses
  --around METRES  roads, paths, buildings and fences further than this from every line of play are left out (default: ${REACH_METRES.works})
  --card-from-ground  put measured lengths on cards that are placeholders or missing, marked as proposed
  --markers PLACE  where on a tee ground of its own a proposed marker stands: middle, or two-fifths from the back (default: middle)
  --source TEXT    whom to name for files that do not say: "Survey by the club"; with --licence TEXT and, if there is one, --link URL
  --confirm WHAT   instead of files: ${CONFIRMABLE.join(", ")}, or several with commas; takes the marks of proposals away`;

function readArguments() {
  const text = { type: "string" } as const;
  const flag = { type: "boolean" } as const;
  try {
    return parseArgs({
      args: process.argv.slice(2),
      strict: true,
      allowPositionals: true,
      options: {
        content: text,
        course: text,
        crs: text,
        "dist-unit": text,
        lines: text,
        around: text,
        markers: text,
        source: text,
        licence: text,
        link: text,
        confirm: text,
        "card-from-ground": flag,
        write: flag,
        all: flag,
        json: flag,
        help: flag,
      },
    });
  } catch (error) {
    throw new CommandError(
      `${error instanceof Error ? error.message.split(". To specify")[0] : String(error)}.\n\n${USAGE}`,
    );
  }
}

function confirmables(typed: string): Confirmable[] {
  return typed.split(",").map((part) => {
    const found = CONFIRMABLE.find((one) => one === part.trim());
    if (found === undefined)
      throw new CommandError(
        `--confirm is ${JSON.stringify(typed)}: expected ${CONFIRMABLE.join(", ")}, or several with commas. Write --confirm markers.`,
      );
    return found;
  });
}

/** How much of a list fits below a report on one screen. */
const MOST_TO_DO = 4;

function toDoBelow(list: readonly ToDo[], whole: boolean): string[] {
  if (whole || list.length <= MOST_TO_DO) return ["", "Still to do", ...toDoLines(list)];
  return [
    "",
    "Still to do, first",
    ...toDoLines(list.slice(0, MOST_TO_DO)),
    `     and ${list.length - MOST_TO_DO} more: npm run check -- --to-do lists them all.`,
  ];
}

await runCommand(async () => {
  const { values, positionals } = readArguments();
  if (values.help) {
    console.log(`${USAGE}\n${EXIT_CODES}`);
    return;
  }
  const { course, lines, markers, around } = values;
  const unit = values["dist-unit"];
  if (course === undefined)
    throw new CommandError(
      `--course is missing: which course is it? Write --course tarvay, the name of its folder.\n\n${USAGE}`,
    );
  const content =
    values.content === undefined ? fileURLToPath(new URL("../../content", import.meta.url)) : resolve(values.content);
  const written = values.write === true;
  await finishWriting(content);
  if (values.confirm !== undefined) {
    const { files, count } = confirmed(await readPages(content, course), confirmables(values.confirm));
    if (written) await writeFiles(content, files);
    console.log(
      `${count} mark${count === 1 ? "" : "s"} of proposals ${written ? "taken away" : "would be taken away"} on ${files.length} page${files.length === 1 ? "" : "s"}.${written ? "" : " Add --write to do it."}`,
    );
    if (written) for (const line of toDoBelow(await toDoOf(content), values.all === true)) console.log(line);
    return;
  }
  if (positionals.length === 0) throw new CommandError(`No files are named. Expected ${FORMATS}.\n\n${USAGE}`);
  if (unit !== undefined && unit !== "yards" && unit !== "metres")
    throw new CommandError(
      `--dist-unit is ${JSON.stringify(unit)}: expected yards or metres. Write --dist-unit yards.`,
    );
  if (markers !== undefined && markers !== "middle" && markers !== "two-fifths")
    throw new CommandError(
      `--markers is ${JSON.stringify(markers)}: expected middle or two-fifths. Write --markers middle.`,
    );
  if (around !== undefined && !/^\d{1,5}$/.test(around))
    throw new CommandError(
      `--around is ${JSON.stringify(around)}: expected whole metres. Write --around ${REACH_METRES.works}.`,
    );
  const tag = lines === undefined ? undefined : /^([^=]+)=(.+)$/.exec(lines);
  if (tag === null)
    throw new CommandError(
      `--lines is ${JSON.stringify(lines)}: expected a tag and its value. Write --lines golf:course:name=Links.`,
    );
  const plan = await prepareBring({
    content,
    course,
    files: positionals,
    crs: values.crs,
    distUnit: unit,
    lines: tag === undefined ? undefined : { key: tag[1]!, value: tag[2]! },
    cardFromGround: values["card-from-ground"] === true,
    ...(markers === undefined ? {} : { markerPlace: markers }),
    ...(around === undefined ? {} : { aroundMetres: Number(around) }),
    stated: { text: values.source, licence: values.licence, link: values.link },
  });
  if (written) await writeBring(content, course, plan);
  const toDo = written
    ? await toDoOf(content)
    : await withFiles(content, plan.files, (copy) => toDoOf(copy, shownFolder(content)));
  if (values.json) {
    process.stdout.write(reportJson(plan, plan.read, written, toDo));
    return;
  }
  for (const line of [...plan.read, "", ...(values.all ? fullReport(plan, written) : shortReport(plan, course))])
    console.log(line);
  const pages = `${plan.files.length} ${plan.files.length === 1 ? "file" : "files"} in ${shownFolder(content)}`;
  if (written) console.log(`Written: ${pages}. Run npm run check next.`);
  else console.log(`This is a preview; nothing was written. Add --write to change ${pages}; --all shows each line.`);
  for (const line of toDoBelow(toDo, values.all === true)) console.log(line);
});
