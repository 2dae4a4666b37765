/** `npm run build`: the whole guide, built beside the last one and swapped in. */
import { cp, rm } from "node:fs/promises";
import { join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { unnamedSources } from "../course/draft.ts";
import { readRecord } from "../site/build/build-record.ts";
import { finishWriting } from "../read/write-all.ts";
import { ContentError } from "../site/load/content-error.ts";
import { setCurrentGuide } from "../site/load/guide.ts";
import { CONTENT_VARIABLE, shownFolder } from "../site/build/integration.ts";
import { loadChecked } from "../site/load/checked.ts";
import { buildLines, summary } from "../site/load/report.ts";
import { readBase, readSite } from "./address.ts";
import { EXIT_CODES, readOptions, runCommand } from "./options.ts";
import { workFolder } from "../read/leftovers.ts";
import { refuseUnlessOurs } from "./staging.ts";
import { swapIn } from "./swap.ts";

const PROJECT = fileURLToPath(new URL("../../", import.meta.url));

const USAGE = `Usage: npm run build -- [options]
  --content DIR   folder with club.yaml and the courses (default: content)
  --out DIR       folder the guide is written to (default: dist)
  --base PATH     path it will be served from, such as /guide/ (default: /)
  --site URL      address of the site, such as https://example.org (default: none)
  --draft         build even where brought data has no source or licence yet; every page says Draft`;

/**
 * A folder for one build. Astro keeps the modules it renders pages with below its output
 * when that lies under the folder it is run from, and else all builds would share one place;
 * and those modules find their packages only from within this project.
 */
async function inWorkshop(make: (workshop: string) => Promise<void>): Promise<void> {
  const workshop = await workFolder(join(PROJECT, ".astro"), "building");
  process.chdir(PROJECT);
  try {
    await make(workshop);
  } finally {
    await rm(workshop, { recursive: true, force: true });
  }
}

await runCommand(async () => {
  const options = readOptions(
    process.argv.slice(2),
    {
      content: { type: "string" },
      out: { type: "string" },
      base: { type: "string" },
      site: { type: "string" },
      draft: { type: "boolean" },
      help: { type: "boolean" },
    },
    USAGE,
  );
  if (options.help) {
    console.log(`${USAGE}\n${EXIT_CODES}`);
    return;
  }
  const content = options.content === undefined ? resolve(PROJECT, "content") : resolve(options.content);
  const out = options.out === undefined ? resolve(PROJECT, "dist") : resolve(options.out);
  const base = readBase(options.base ?? "/");
  const site = options.site === undefined ? undefined : readSite(options.site);
  await refuseUnlessOurs(out, content, { "Marram itself": PROJECT, "the folder you are in": process.cwd() });

  await finishWriting(content);
  const { guide, diagnostics } = await loadChecked(content);
  const shownOut = shownFolder(out);
  for (const line of buildLines(diagnostics, shownFolder(content))) console.error(line);
  if (guide === undefined) throw new ContentError(`${summary(diagnostics)}. Nothing was built.`);
  const unnamed = guide.courses.flatMap(({ course }) =>
    unnamedSources(course).map(
      (file) =>
        `${course.id}/course.yaml: ${file} was brought, and nobody has said where it comes from and under what licence.`,
    ),
  );
  if (unnamed.length > 0 && !options.draft)
    throw new ContentError(
      `${unnamed.join("\n")}\nWrite text and licence in sources, as npm run check -- --to-do shows, or build with --draft: every page then says that it is one. Nothing was built.`,
    );
  setCurrentGuide(guide);

  process.env[CONTENT_VARIABLE] = content;
  // Building a guide is nobody else's business.
  process.env["ASTRO_TELEMETRY_DISABLED"] = "1";
  const { build } = await import("astro");
  await swapIn(out, (staging) =>
    inWorkshop(async (workshop) => {
      await build({
        root: PROJECT,
        outDir: workshop,
        base,
        logLevel: "warn",
        ...(site === undefined ? {} : { site }),
      });
      await cp(workshop, staging, { recursive: true });
    }),
  );
  const record = await readRecord(out);
  console.log(`${record?.pages} pages written to ${shownOut}, to be served from ${base}.`);
});
