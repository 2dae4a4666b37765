/** Writes a built guide's edition: the list of its files, by which a phone keeps it whole. */
import { createHash } from "node:crypto";
import { readFile, readdir, writeFile } from "node:fs/promises";
import { join, relative, sep } from "node:path";
import {
  EDITION_FILE,
  isStamped,
  stampedWith,
  UNSTAMPED,
  type Edition,
  type EditionFile,
} from "../../contract/edition.ts";

/** Bundled beside the pages; the browser keeps it by itself. */
export const WORKER_FILE = "sw.js";

/** Files that no page shows: a golfer who keeps the guide has no use for them. */
const NOT_KEPT = /^(?:.*\/)?(?:\.[^/]*|edition\.json|sw\.js|robots\.txt|sitemap\.xml|share\.jpg)$/;

const sha256 = (bytes: Uint8Array | string): string => createHash("sha256").update(bytes).digest("hex");

/**
 * Names the edition in every page of a built folder and lists all its files.
 *
 * The name is a hash of every file, in which the pages are taken without it; so the same
 * guide has the same name, and any change another. Calling it again changes nothing.
 */
export async function writeEdition(folder: string): Promise<Edition> {
  const paths = await keptPaths(folder);
  const all = createHash("sha256");
  let bytes = 0;
  const files: Record<string, EditionFile> = {};
  const pages: { readonly path: string; readonly text: string }[] = [];
  for (const path of paths) {
    const content = await readFile(join(folder, path));
    const text = path.endsWith(".html") ? content.toString("utf8") : undefined;
    const unnamed =
      text === undefined || !isStamped(text)
        ? content
        : Buffer.from(stampedWith(text, UNSTAMPED.edition, UNSTAMPED.bytes));
    const hash = sha256(unnamed);
    all.update(`${path}\0${hash}\n`);
    bytes += unnamed.length;
    files[path] = { bytes: unnamed.length, sha256: hash };
    if (text !== undefined && isStamped(text)) pages.push({ path, text });
  }
  const edition = all.digest("hex").slice(0, UNSTAMPED.edition.length);
  for (const { path, text } of pages) {
    const named = stampedWith(text, edition, bytes);
    files[path] = { bytes: files[path]!.bytes, sha256: sha256(named), unstamped: files[path]!.sha256 };
    if (named !== text) await writeFile(join(folder, path), named);
  }
  const list: Edition = { edition, bytes, files };
  await writeFile(join(folder, EDITION_FILE), `${JSON.stringify(list)}\n`);
  return list;
}

async function keptPaths(folder: string): Promise<string[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join("/"))
    .filter((path) => !NOT_KEPT.test(path))
    .sort();
}
