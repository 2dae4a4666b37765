/**
 * Building beside the target and swapping in: a build that fails leaves the guide that is
 * there as it is, and visitors never meet half of one.
 *
 *   beside   dist.marram-building-…  fill  ->  dist.marram-ready-…  exchange  ->  dist
 *   within   a mount point cannot be renamed: the same folders lie within it, and its
 *            entries are exchanged one by one, pages last
 *
 * A folder called "ready" is whole. So whatever a killed build left, the next start knows
 * what to do: finish it, or put the old guide back. See {@link recover}.
 */
import { execFile } from "node:child_process";
import { access, constants, cp, mkdir, readdir, rename, rm, stat } from "node:fs/promises";
import { basename, dirname, join, resolve } from "node:path";
import { promisify } from "node:util";
import { RECORD_FILE } from "../site/build/build-record.ts";
import { isLeftoverName, leftoverName, leftovers, renamedLeftover } from "../read/leftovers.ts";
import { makeFolders } from "../read/make-folders.ts";

const codeOf = (error: unknown): string => (error instanceof Error && "code" in error ? String(error.code) : "");

export type Where = "beside" | "within";

/**
 * Whether a folder can be replaced by a rename: not where it is a mount point, nor where the folder above it
 * is closed.
 */
async function placeFor(path: string): Promise<Where> {
  const [own, parent] = await Promise.all([path, dirname(path)].map((one) => stat(one).catch(() => undefined)));
  if (own === undefined || parent === undefined) return "beside";
  const open = await access(dirname(path), constants.W_OK).then(
    () => true,
    () => false,
  );
  return own.dev === parent.dev && open ? "beside" : "within";
}

/**
 * Calls `fill` with an empty folder, then puts that in the target's place. When `fill`
 * fails the folder is removed and the target stays as it was.
 *
 * @param where for tests; left out, what the target allows.
 */
export async function swapIn(target: string, fill: (staging: string) => Promise<void>, where?: Where): Promise<void> {
  const path = resolve(target);
  makeFolders(dirname(path));
  await recover(path);
  const how = where ?? (await placeFor(path));
  const beside = how === "beside";
  // Not mkdtemp: its folders are closed to everybody else, and a web server is somebody else.
  const building = beside ? leftoverName("building", path) : join(path, leftoverName("building"));
  await mkdir(building);
  const ready = renamedLeftover(building, "ready");
  try {
    await fill(building);
    await rename(building, ready);
    if (beside) await replace(path, ready);
    else await replaceEntries(path, ready);
  } catch (error) {
    // What is already moving is finished by the next start.
    for (const one of [building, ready]) await rm(one, { recursive: true, force: true }).catch(() => undefined);
    throw error;
  }
}

/** Finishes or takes back what a killed build left of its swap, and removes what it left besides. */
export async function recover(target: string): Promise<void> {
  const path = resolve(target);
  const beside = await leftovers(dirname(path), basename(path));
  const exists = await stat(path).then(
    () => true,
    () => false,
  );
  if (!exists) {
    const last = beside.find(({ kind }) => kind === "ready") ?? beside.find(({ kind }) => kind === "replaced");
    if (last) await rename(last.path, path);
  }
  const within = await leftovers(path);
  const unfinished = within.find(({ kind }) => kind === "moving") ?? within.find(({ kind }) => kind === "ready");
  if (unfinished) await replaceEntries(path, unfinished.path);
  for (const one of [...beside, ...within]) await rm(one.path, { recursive: true, force: true });
}

const run = promisify(execFile);

/** renameat2(2)'s exchange, where a program here can ask for it: coreutils from 9.5, util-linux from 2.40. */
async function exchange(one: string, other: string): Promise<boolean> {
  if (process.platform !== "linux") return false;
  for (const [program, ...args] of [["mv", "--exchange", "--no-target-directory", "--"], ["exch"]] as const) {
    const done = await run(program, [...args, one, other]).then(
      () => true,
      () => false,
    );
    if (done) return true;
  }
  return false;
}

async function replace(path: string, ready: string): Promise<void> {
  const had = await stat(path).then(
    () => true,
    () => false,
  );
  if (had && (await exchange(ready, path))) return rm(ready, { recursive: true, force: true });
  const replaced = renamedLeftover(ready, "replaced");
  try {
    if (had) await rename(path, replaced);
  } catch (error) {
    // A mount point that looked like a folder of the same disk.
    if (!["EBUSY", "EXDEV"].includes(codeOf(error))) throw error;
    const within = join(path, basename(ready).slice(basename(path).length));
    await cp(ready, renamedLeftover(within, "building"), { recursive: true });
    await rename(renamedLeftover(within, "building"), within);
    await rm(ready, { recursive: true, force: true });
    return replaceEntries(path, within);
  }
  try {
    await rename(ready, path);
  } catch (error) {
    if (had) await rename(replaced, path);
    throw error;
  }
  if (had) await rm(replaced, { recursive: true, force: true });
}

/** Files and folders that pages need before the pages that need them; the record of it all last. */
const orderOf = (name: string): number =>
  name === RECORD_FILE
    ? 4
    : name.endsWith(".html") || name === "sw.js" || name === "edition.json"
      ? 3
      : name === "_astro"
        ? 0
        : 1;

/**
 * Can be broken off anywhere and begun again. While the folder is "ready" all of the new
 * guide is in it, and what it lacks is old; once it is "moving", only what is left in it
 * has to go over.
 */
async function replaceEntries(path: string, ready: string): Promise<void> {
  const replaced = renamedLeftover(ready, "replaced");
  const moving = renamedLeftover(ready, "moving");
  const aside = (name: string): Promise<void> =>
    rename(join(path, name), join(replaced, name)).catch((error: unknown) => {
      if (codeOf(error) !== "ENOENT") throw error;
    });
  makeFolders(replaced);
  if (ready !== moving) {
    const names = new Set(await readdir(ready));
    for (const name of await readdir(path))
      if (!names.has(name) && name !== "lost+found" && !isLeftoverName(name)) await aside(name);
    await rename(ready, moving);
  }
  for (const name of (await readdir(moving)).sort((a, b) => orderOf(a) - orderOf(b))) {
    await aside(name);
    await rename(join(moving, name), join(path, name));
  }
  await rm(moving, { recursive: true, force: true });
  await rm(replaced, { recursive: true, force: true });
}
