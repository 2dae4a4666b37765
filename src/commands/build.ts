/** `npm run build`: the whole guide, built beside the last one and swapped in. */
import { resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { readRecord } from "../site/build-record.ts";
import { ContentError } from "../site/content-error.ts";
import { setCurrentGuide } from "../site/guide.ts";
import { CONTENT_VARIABLE, shownFolder } from "../site/integration.ts";
import { loadChecked } from "../site/checked.ts";
import { buildLines, summary } from "../site/report.ts";
import { readBase, readSite } from "./address.ts";
import { readOptions, runCommand } from "./options.ts";
import { refuseUnlessOurs, swapIn } from "./staging.ts";

const PROJECT = fileURLToPath(new URL("../../", import.meta.url));

const USAGE = `Usage: npm run build -- [options]
  --content DIR   folder with club.yaml and the courses (default: content)
  --out DIR       folder the guide is written to (default: dist)
  --base PATH     path it will be served from, such as /guide/ (default: /)
  --site URL      address of the site, such as https://example.org (default: none)`;

await runCommand(async () => {
  const options = readOptions(
    process.argv.slice(2),
    { content: { type: "string" }, out: { type: "string" }, base: { type: "string" }, site: { type: "string" }, help: { type: "boolean" } },
    USAGE,
  );
  if (options.help) {
    console.log(USAGE);
    return;
  }
  const content = options.content === undefined ? resolve(PROJECT, "content") : resolve(options.content);
  const out = options.out === undefined ? resolve(PROJECT, "dist") : resolve(options.out);
  const base = readBase(options.base ?? "/");
  const site = options.site === undefined ? undefined : readSite(options.site);
  await refuseUnlessOurs(out, content, { "Marram itself": PROJECT, "the folder you are in": process.cwd() });

  const { guide, diagnostics } = await loadChecked(content);
  for (const line of buildLines(diagnostics, shownFolder(content))) console.error(line);
  if (guide === undefined) throw new ContentError(`${summary(diagnostics)}. Nothing was built.`);
  setCurrentGuide(guide);

  process.env[CONTENT_VARIABLE] = content;
  // Building a guide is nobody else's business.
  process.env["ASTRO_TELEMETRY_DISABLED"] = "1";
  const { build } = await import("astro");
  await swapIn(out, async (staging) => {
    await build({ root: PROJECT, outDir: staging, base, logLevel: "warn", ...(site === undefined ? {} : { site }) });
  });
  const record = await readRecord(out);
  console.log(`${record?.pages} pages written to ${shownFolder(out)}, to be served from ${base}.`);
});
