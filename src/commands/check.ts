/** `npm run check`: what is wrong with the content, without building anything. */
import { resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { ContentError } from "../site/content-error.ts";
import { shownFolder } from "../site/integration.ts";
import { loadGuide } from "../site/load.ts";
import { reportLines, summary } from "../site/report.ts";
import { readOptions, runCommand } from "./options.ts";

const USAGE = `Usage: npm run check -- [options]
  --content DIR   folder with club.yaml and the courses (default: content)`;

await runCommand(async () => {
  const options = readOptions(process.argv.slice(2), { content: { type: "string" }, help: { type: "boolean" } }, USAGE);
  if (options.help) {
    console.log(USAGE);
    return;
  }
  const content = options.content === undefined ? fileURLToPath(new URL("../../content", import.meta.url)) : resolve(options.content);
  const { guide, diagnostics } = await loadGuide(content);
  for (const line of reportLines(diagnostics, shownFolder(content))) console.log(line);
  if (guide === undefined) throw new ContentError(`${summary(diagnostics)}.`);
  const holes = guide.courses.reduce((sum, course) => sum + course.holes.length, 0);
  console.log(`${summary(diagnostics)}: ${guide.courses.length} course${guide.courses.length === 1 ? "" : "s"}, ${holes} holes.`);
});
