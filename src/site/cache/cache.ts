/**
 * Results that cost seconds, kept between builds under the hash of everything they are
 * made from: same input, same key, so nothing in it can be stale and it may be deleted at
 * any time.
 */
import { createHash, randomUUID, type BinaryLike } from "node:crypto";
import { readFileSync, renameSync, rmSync, statSync, utimesSync, writeFileSync } from "node:fs";
import { readdir, readFile, rename, rm, stat, utimes, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { makeFolders } from "../../read/make-folders.ts";

/** Names the folder where it is another; the bundler moves this module, so a build names it always. */
export const CACHE_VARIABLE = "MARRAM_CACHE";

/** Beside the packages, which a fresh install clears too. @param root Marram's own folder. */
export const cacheFolderOf = (root: string): string => join(root, "node_modules/.cache/marram");

const folder = (): string =>
  process.env[CACHE_VARIABLE] ?? cacheFolderOf(fileURLToPath(new URL("../../../", import.meta.url)));

/** A key from all that a result depends on, its maker's version included. */
export function cacheKey(...parts: readonly BinaryLike[]): string {
  const hash = createHash("sha256");
  for (const part of parts) hash.update(part).update("\0");
  return hash.digest("hex");
}

const pathOf = (key: string): string => join(folder(), key.slice(0, 2), key);

/** Results nobody asked for in so long are swept out; asking renews them. */
const KEPT_DAYS = 60;
const RENEWED_AFTER_MS = 24 * 3600 * 1000;
const isOld = (mtimeMs: number): boolean => Date.now() - mtimeMs > RENEWED_AFTER_MS;

/** The bytes kept under a key, or undefined. */
export async function cached(key: string): Promise<Uint8Array<ArrayBuffer> | undefined> {
  try {
    const path = pathOf(key);
    const bytes = new Uint8Array(await readFile(path));
    if (isOld((await stat(path)).mtimeMs)) await utimes(path, new Date(), new Date());
    return bytes;
  } catch {
    return undefined;
  }
}

/** As {@link cached}, for drawing, which does not wait. */
export function cachedSync(key: string): Uint8Array<ArrayBuffer> | undefined {
  try {
    const path = pathOf(key);
    const bytes = new Uint8Array(readFileSync(path));
    if (isOld(statSync(path).mtimeMs)) utimesSync(path, new Date(), new Date());
    return bytes;
  } catch {
    return undefined;
  }
}

const TOLD = Symbol.for("marram.cache-told");

/** Said once for the whole build, which holds this module more than once. */
function tellUnusable(error: unknown): void {
  const once = globalThis as { [TOLD]?: boolean };
  if (once[TOLD]) return;
  once[TOLD] = true;
  const code = error instanceof Error && "code" in error ? ` (${String(error.code)})` : "";
  console.error(
    `Nothing can be kept between builds in ${folder()}${code}: this goes on without, and takes longer. Set ${CACHE_VARIABLE} to a folder that can be written.`,
  );
}

/**
 * Keeps bytes under a key. Two builds at once write the same bytes, so the later one may
 * win. Where nothing can be kept, it is done without.
 */
export async function keep(key: string, bytes: Uint8Array): Promise<void> {
  const path = pathOf(key);
  const unfinished = `${path}.${randomUUID()}`;
  try {
    makeFolders(dirname(path));
    await writeFile(unfinished, bytes);
    await rename(unfinished, path);
  } catch (error) {
    tellUnusable(error);
    await rm(unfinished, { force: true }).catch(() => undefined);
  }
}

/** As {@link keep}, for drawing, which does not wait. */
export function keepSync(key: string, bytes: Uint8Array): void {
  const path = pathOf(key);
  const unfinished = `${path}.${randomUUID()}`;
  try {
    try {
      writeFileSync(unfinished, bytes);
    } catch {
      // Only the first in its folder has to make it.
      makeFolders(dirname(path));
      writeFileSync(unfinished, bytes);
    }
    renameSync(unfinished, path);
  } catch (error) {
    tellUnusable(error);
    try {
      rmSync(unfinished, { force: true });
    } catch {
      // It was not there, or stays for the sweep.
    }
  }
}

/** What was being written when its build was killed; no writing takes as long. */
const isUnfinished = (name: string): boolean => name.includes(".");

/**
 * Removes what nobody has asked for in {@link KEPT_DAYS} days, and what was never finished. What cannot be
 * removed stays.
 */
export async function sweepCache(now = Date.now()): Promise<void> {
  const entries = await readdir(folder(), { recursive: true, withFileTypes: true }).catch(() => []);
  for (const entry of entries) {
    if (!entry.isFile()) continue;
    const path = join(entry.parentPath, entry.name);
    const found = await stat(path).catch(() => undefined);
    const days = isUnfinished(entry.name) ? 1 : KEPT_DAYS;
    if (found && now - found.mtimeMs > days * 24 * 3600 * 1000) await rm(path, { force: true }).catch(() => undefined);
  }
}
