/**
 * The demo guide, or another club's, as a club would build it, for a path below a host's root: built once for
 * all tests that look at a built guide, and used again while neither code nor content
 * change. Whoever reads it leaves it as it is; who must change it takes a copy.
 */
import { spawn } from "node:child_process";
import { createHash, randomUUID } from "node:crypto";
import { existsSync } from "node:fs";
import { mkdir, readdir, readFile, rename, rm, stat, utimes } from "node:fs/promises";
import { join, relative } from "node:path";
import { PROJECT } from "./run.ts";

/** The path the demo is served from. */
export const DEMO_BASE = "/guides/links/";

/** Names a content folder to test instead of the demo's. */
const CONTENT_VARIABLE = "MARRAM_TEST_CONTENT";

const KEPT = join(PROJECT, "node_modules/.cache/marram-demo");
/** So many are kept: one switches between branches. */
const MOST_KEPT = 6;

async function filesBelow(path: string): Promise<string[]> {
  if ((await stat(path)).isFile()) return [path];
  const entries = await readdir(path, { recursive: true, withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
}

/** A name from everything that a build is made of. */
async function nameOf(content: string): Promise<string> {
  const hash = createHash("sha256").update(process.version).update(DEMO_BASE);
  for (const part of ["src", "public", "astro.config.mjs", "tsconfig.json", "package-lock.json", content]) {
    for (const file of await filesBelow(part === content ? content : join(PROJECT, part))) {
      hash.update(`\0${relative(PROJECT, file)}\0`).update(await readFile(file));
    }
  }
  return hash.digest("hex").slice(0, 24);
}

const build = (content: string, folder: string): Promise<void> =>
  new Promise((resolve, reject) => {
    const child = spawn(
      process.execPath,
      [join(PROJECT, "src/commands/build.ts"), "--content", content, "--out", folder, "--base", DEMO_BASE],
      { cwd: PROJECT, env: { ...process.env, NODE_ENV: "production" }, stdio: ["ignore", "pipe", "pipe"] },
    );
    let said = "";
    for (const stream of [child.stdout, child.stderr])
      stream.setEncoding("utf8").on("data", (text: string) => (said += text));
    child.on("error", reject);
    child.on("close", (code) => {
      if (code === 0) resolve();
      else reject(new Error(`The guide of ${content} could not be built for the tests.\n${said}`));
    });
  });

/** Removes all but those used last. */
async function sweep(): Promise<void> {
  const kept = await Promise.all(
    (await readdir(KEPT)).map(async (name) => ({ name, used: (await stat(join(KEPT, name))).mtimeMs })),
  );
  for (const { name } of kept.sort((a, b) => b.used - a.used).slice(MOST_KEPT))
    await rm(join(KEPT, name), { recursive: true, force: true });
}

/** The folder of the built demo. @throws Error with what the build said */
export const builtDemo = (): Promise<string> => builtGuide(process.env[CONTENT_VARIABLE] ?? join(PROJECT, "content"));

/** The folder of a content folder's built guide. @throws Error with what the build said */
export async function builtGuide(content: string): Promise<string> {
  const folder = join(KEPT, await nameOf(content));
  if (!existsSync(folder)) {
    await mkdir(KEPT, { recursive: true });
    const unfinished = `${folder}-${randomUUID()}`;
    await build(content, unfinished);
    // Two runs at once make the same; the first one there stays.
    await rename(unfinished, folder).catch(() => rm(unfinished, { recursive: true, force: true }));
  }
  await utimes(folder, new Date(), new Date());
  await sweep();
  return folder;
}
