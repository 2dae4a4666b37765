/**
 * A hash of the code that draws and measures: part of the key of everything drawn that is
 * kept between builds, so that a new version of Marram never shows what an older one drew.
 */
import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

/** Where every copy of this module in the process looks: the bundler gives pages their own. */
const KEY = Symbol.for("marram.code-version");

type Holder = { [KEY]?: string | undefined };
const holder = globalThis as Holder;

/** Folders of the source whose code is in no drawing. */
const ELSEWHERE = new Set(["commands", "islands", "pages", "styles"]);

/** @param root Marram's own folder. */
export function codeVersionOf(root: string): string {
  const hash = createHash("sha256");
  const source = join(root, "src");
  const files = readdirSync(source, { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && !ELSEWHERE.has(entry.name))
    .flatMap(({ name }) => readdirSync(join(source, name), { recursive: true, withFileTypes: true }))
    .filter((entry) => entry.isFile() && entry.name.endsWith(".ts"))
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
  // The lock stands for every package.
  for (const file of [...files, join(root, "package-lock.json")])
    hash.update(file.slice(root.length)).update("\0").update(readFileSync(file)).update("\0");
  return hash.digest("hex");
}

/** Drawings may be kept from now on; undefined: they are made anew each time, as while somebody works on the code. */
export function setCodeVersion(version: string | undefined): void {
  holder[KEY] = version;
}

export const codeVersion = (): string | undefined => holder[KEY];
