/**
 * Results that cost seconds, kept between builds under the hash of everything they are
 * made from: same input, same key, so nothing in it can be stale and it may be deleted at
 * any time.
 */
import { createHash, randomUUID, type BinaryLike } from "node:crypto";
import { mkdir, readFile, rename, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

/** Beside the packages, which a fresh install clears too. */
const FOLDER = fileURLToPath(new URL("../../node_modules/.cache/marram/", import.meta.url));

/** A key from all that a result depends on, its maker's version included. */
export function cacheKey(...parts: readonly BinaryLike[]): string {
  const hash = createHash("sha256");
  for (const part of parts) hash.update(part).update("\0");
  return hash.digest("hex");
}

/** The bytes kept under a key, or undefined. */
export async function cached(key: string): Promise<Uint8Array<ArrayBuffer> | undefined> {
  try {
    return new Uint8Array(await readFile(pathOf(key)));
  } catch {
    return undefined;
  }
}

/** Keeps bytes under a key. Two builds at once write the same bytes, so the later one may win. */
export async function keep(key: string, bytes: Uint8Array): Promise<void> {
  const path = pathOf(key);
  await mkdir(dirname(path), { recursive: true });
  const unfinished = `${path}.${randomUUID()}`;
  await writeFile(unfinished, bytes);
  await rename(unfinished, path);
}

const pathOf = (key: string): string => join(process.env["MARRAM_CACHE"] ?? FOLDER, key.slice(0, 2), key);
