/** `npm run bring`: map files into a course's pages. */
import { resolve } from "node:path";
import { parseArgs } from "node:util";
import { fileURLToPath } from "node:url";
import { FORMATS } from "../bring/sources/open.ts";
import { reportBring } from "../bring/report/report.ts";
import { prepareBring, writeBring } from "../bring/run.ts";
import { shownFolder } from "../site/integration.ts";
import { CommandError, runCommand } from "./options.ts";

const USAGE = `Usage: npm run bring -- --course ID [options] FILE...
  FILE             ${FORMATS}
  --course ID      folder of the course in the content folder
  --content DIR    folder with club.yaml and the courses (default: content)
  --crs SYSTEM     coordinate system of the files, before what they declare: "EPSG:2157" or "+proj=..."
  --dist-unit UNIT yards or metres: what OpenStreetMap's dist tags are in, where they do not say
  --lines KEY=VALUE  only lines of play with this tag count, where a file holds several courses
  --write          write it; without this the changes are only shown`;

function readArguments() {
  try {
    return parseArgs({
      args: process.argv.slice(2),
      strict: true,
      allowPositionals: true,
      options: {
        content: { type: "string" },
        course: { type: "string" },
        crs: { type: "string" },
        "dist-unit": { type: "string" },
        lines: { type: "string" },
        write: { type: "boolean" },
        help: { type: "boolean" },
      },
    });
  } catch (error) {
    throw new CommandError(`${error instanceof Error ? error.message.split(". To specify")[0] : String(error)}.\n\n${USAGE}`);
  }
}

await runCommand(async () => {
  const { values, positionals } = readArguments();
  if (values.help) {
    console.log(USAGE);
    return;
  }
  const { course, lines } = values;
  const unit = values["dist-unit"];
  if (course === undefined) throw new CommandError(`--course is missing: which course is it? Write --course tarvay, the name of its folder.\n\n${USAGE}`);
  if (positionals.length === 0) throw new CommandError(`No files are named. Expected ${FORMATS}.\n\n${USAGE}`);
  if (unit !== undefined && unit !== "yards" && unit !== "metres") throw new CommandError(`--dist-unit is ${JSON.stringify(unit)}: expected yards or metres. Write --dist-unit yards.`);
  const tag = lines === undefined ? undefined : /^([^=]+)=(.+)$/.exec(lines);
  if (tag === null) throw new CommandError(`--lines is ${JSON.stringify(lines)}: expected a tag and its value. Write --lines golf:course:name=Links.`);
  const content = values.content === undefined ? fileURLToPath(new URL("../../content", import.meta.url)) : resolve(values.content);
  const plan = await prepareBring({
    content,
    course,
    files: positionals,
    crs: values.crs,
    distUnit: unit,
    lines: tag === undefined ? undefined : { key: tag[1]!, value: tag[2]! },
  });
  if (values.write) await writeBring(content, course, plan);
  for (const line of [...plan.read, "", ...reportBring(plan, values.write === true)]) console.log(line);
  const pages = `${plan.files.length} ${plan.files.length === 1 ? "file" : "files"} in ${shownFolder(content)}`;
  if (values.write) console.log(`Written: ${pages}. Run npm run check next.`);
  else console.log(`This is a preview; nothing was written. Add --write to change ${pages}.`);
});
