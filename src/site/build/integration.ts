/**
 * The Astro integration that puts the guide in place before any page is rendered, and
 * stops the build when the content has mistakes or the pages do not come out complete.
 */
import { readdir } from "node:fs/promises";
import { join, relative, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import type { AstroIntegration } from "astro";
import { writeRecord } from "./build-record.ts";
import { CACHE_VARIABLE, cacheFolderOf, sweepCache } from "../cache/cache.ts";
import { codeVersionOf, setCodeVersion } from "../cache/code-version.ts";
import { ContentError } from "../load/content-error.ts";
import { writeEdition } from "./edition.ts";
import { currentGuide, loadedGuide, setCurrentGuide } from "../load/guide.ts";
import { loadChecked } from "../load/checked.ts";
import { builtPages, pageFaults } from "./page-check.ts";
import { buildLines, summary } from "../load/report.ts";
import { pagePaths, tidyBase } from "../addresses/routes.ts";
import { bundleWorker } from "./service-worker.ts";
import { writeSitemap } from "./sitemap.ts";
import { readWords } from "../language/words.ts";
import { WORDS_FOLDER } from "../../words/load.ts";
import { shippedPackages, writeLicences } from "./third-party.ts";

/** Names the content folder where it is not `content`; set by our commands, useful with `npx astro build` too. */
export const CONTENT_VARIABLE = "MARRAM_CONTENT";

/** How a folder is named to people: from where they are, when it lies below. */
export function shownFolder(folder: string): string {
  const from = relative(process.cwd(), folder);
  return from !== "" && !from.startsWith("..") ? from.replaceAll("\\", "/") : folder;
}

/**
 * What pages ask `import.meta.env` for. Astro lets the environment of the process answer
 * first, and a host that happens to set BASE_URL would move every address.
 */
const BUILD_VARIABLES = ["ASSETS_PREFIX", "BASE_URL", "DEV", "MODE", "PROD", "SITE", "SSR"];

function shutOutEnvironment(command: "dev" | "build"): void {
  for (const name of BUILD_VARIABLES) delete process.env[name];
  // Under NODE_ENV=test pages would be built for development, without their policy.
  if (command === "build") process.env["NODE_ENV"] = "production";
}

async function filesBelow(folder: string): Promise<string[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  return entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
}

export default function marram(): AstroIntegration {
  let base = "/";
  let site: string | undefined;
  let content = "";
  const shipped = new Set<string>();
  return {
    name: "marram",
    hooks: {
      async "astro:config:setup"({ command, config, addWatchFile, updateConfig }) {
        // Checking types needs no content.
        if (command === "sync") return;
        base = tidyBase(config.base);
        site = config.site;
        content = resolve(fileURLToPath(config.root), process.env[CONTENT_VARIABLE] ?? "content");
        if (command === "preview") return;
        const root = fileURLToPath(config.root);
        process.env[CACHE_VARIABLE] ??= cacheFolderOf(root);
        if (command === "build") updateConfig({ vite: { plugins: [shippedPackages(shipped)] } });
        // While somebody works on the code, everything is drawn anew.
        setCodeVersion(command === "build" ? codeVersionOf(root) : undefined);
        shutOutEnvironment(command);
        // Pages lie in a bundle, from where the catalogues are not found.
        readWords();
        if (command === "dev") for (const file of await filesBelow(join(root, WORDS_FOLDER))) addWatchFile(file);
        // Our build command reads the content before it starts Astro.
        if (command === "build" && loadedGuide()?.contentFolder === content) return;
        const { guide, diagnostics } = await loadChecked(content);
        for (const line of buildLines(diagnostics, shownFolder(content))) console.error(line);
        if (command === "dev") for (const file of await filesBelow(content)) addWatchFile(file);
        if (guide === undefined) throw new ContentError(`${summary(diagnostics)}. Nothing was built.`);
        setCurrentGuide(guide);
      },
      "astro:server:setup"({ server }) {
        // Files that were there when the server started are watched one by one; a new one counts as a change of the
        // club.
        server.watcher.add(content);
        const changed = (path: string): void => {
          if (path.startsWith(content)) server.watcher.emit("change", join(content, "club.yaml"));
        };
        server.watcher.on("add", changed);
        server.watcher.on("unlink", changed);
      },
      async "astro:build:done"({ dir, logger }) {
        const folder = fileURLToPath(dir);
        const expected = pagePaths(currentGuide());
        const faults = pageFaults(expected, await builtPages(folder));
        if (faults.length > 0)
          throw new Error(
            `The guide must have ${expected.length} pages, and they did not come out so.\n${faults.join("\n")}`,
          );
        if (site !== undefined) await writeSitemap(folder, site, base, expected);
        await bundleWorker(folder);
        await writeLicences(folder, shipped);
        await writeEdition(folder);
        await sweepCache();
        await writeRecord(folder, {
          madeBy: "Marram",
          base,
          pages: expected.length,
          languages: currentGuide().club.languages,
        });
        logger.info(`${expected.length} pages, as many as the guide must have.`);
      },
    },
  };
}
