/** Where a guide may be written: replacing a folder must lose nothing but an earlier guide. */
import { lstat, readdir, realpath } from "node:fs/promises";
import { homedir } from "node:os";
import { basename, dirname, join, parse, relative, resolve, sep } from "node:path";
import { readRecord } from "../site/build/build-record.ts";
import { isLeftoverName } from "../read/leftovers.ts";
import { CommandError } from "./options.ts";

const isWithin = (inner: string, outer: string): boolean => {
  const way = relative(outer, inner);
  return way === "" || (!way.startsWith(`..${sep}`) && way !== ".." && parse(way).root === "");
};

/** The path with links followed as far as it exists. */
async function real(path: string): Promise<string> {
  try {
    return await realpath(path);
  } catch {
    const parent = dirname(path);
    return parent === path ? path : join(await real(parent), basename(path));
  }
}

/**
 * Makes sure that replacing a folder loses nothing but an earlier guide.
 *
 * @param content the content folder; a guide within it would be read as content next time.
 * @param keep other folders that must survive, by what they are called.
 * @throws CommandError that says which folder to name instead.
 */
export async function refuseUnlessOurs(
  target: string,
  content: string,
  keep: Readonly<Record<string, string>>,
): Promise<void> {
  const refuse = (reason: string): never => {
    throw new CommandError(
      `The guide cannot be written to ${target}: ${reason} Name a folder of its own: --out dist.`,
    );
  };
  const path = await real(resolve(target));
  if (parse(path).root === path) refuse("that is the root of the disk.");
  for (const [what, folder] of Object.entries({
    "the content folder": content,
    ...keep,
    "your home folder": homedir(),
  })) {
    const kept = await real(resolve(folder));
    if (isWithin(kept, path)) refuse(path === kept ? `that is ${what}.` : `${what} lies in it.`);
  }
  if (isWithin(path, await real(resolve(content)))) refuse("it lies in the content folder.");
  let found;
  try {
    found = await lstat(resolve(target));
  } catch {
    return;
  }
  if (found.isSymbolicLink()) refuse("it is a link to another place.");
  if (!found.isDirectory()) refuse("it is a file.");
  // A volume has its file system's own folder, and perhaps what a killed build left.
  const names = (await readdir(path)).filter((name) => name !== "lost+found" && !isLeftoverName(name));
  if (names.length > 0 && (await readRecord(path)) === undefined) {
    refuse("it is not empty, and what is in it was not made by Marram.");
  }
}
