/** `npm run check`: everything wrong or doubtful in the content, without building anything. */
import { resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { formatJson, formatRules } from "../check/format.ts";
import { RULES } from "../check/registry.ts";
import { toDoLines } from "../check/to-do.ts";
import { loadChecked } from "../site/load/checked.ts";
import { finishWriting } from "../read/write-all.ts";
import { toDoOf } from "../site/load/to-do.ts";
import { ContentError } from "../site/load/content-error.ts";
import { shownFolder } from "../site/build/integration.ts";
import { reportLines, summary } from "../site/load/report.ts";
import { EXIT_CODES, readOptions, runCommand } from "./options.ts";

const USAGE = `Usage: npm run check -- [options]
  --content DIR   folder with club.yaml and the courses (default: content)
  --to-do         what is left until the guide can be published, as a list to work off
  --json          for programs: one JSON value on standard output
  --rules         list every rule by the name it is silenced with`;

await runCommand(async () => {
  const options = readOptions(
    process.argv.slice(2),
    {
      content: { type: "string" },
      json: { type: "boolean" },
      rules: { type: "boolean" },
      "to-do": { type: "boolean" },
      help: { type: "boolean" },
    },
    USAGE,
  );
  if (options.help) {
    console.log(`${USAGE}\n${EXIT_CODES}`);
    return;
  }
  if (options.rules) {
    process.stdout.write(formatRules(RULES));
    return;
  }
  const content =
    options.content === undefined
      ? fileURLToPath(new URL("../../content", import.meta.url))
      : resolve(options.content);
  await finishWriting(content);
  if (options["to-do"]) {
    const list = await toDoOf(content);
    if (options.json) console.log(JSON.stringify(list, null, 1));
    else for (const line of toDoLines(list)) console.log(line);
    return;
  }
  const { guide, diagnostics, silenced } = await loadChecked(content);
  if (options.json) process.stdout.write(formatJson({ diagnostics, silenced }));
  else for (const line of reportLines(diagnostics, shownFolder(content), { rules: true })) console.log(line);
  if (guide === undefined) throw new ContentError(`${summary(diagnostics)}.`);
  if (options.json) return;
  const holes = guide.courses.reduce((sum, course) => sum + course.holes.length, 0);
  const hushed = silenced.length === 0 ? "" : `, ${silenced.length} silenced`;
  console.log(
    `${summary(diagnostics)}${hushed}: ${guide.courses.length} course${guide.courses.length === 1 ? "" : "s"}, ${holes} holes.`,
  );
});
