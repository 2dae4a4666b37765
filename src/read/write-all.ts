/**
 * Several files written as one: all of them or none, whatever happens in between.
 *
 *   .marram-building-…/   the new files and a list of where they go     a failure here changed nothing
 *   .marram-ready-…/      the same, renamed: from now on it is decided  a failure here is made good by finishWriting
 *   each file is moved to its place, the folder removed
 */
import { copyFile, mkdir, readFile, rename, rm, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { leftoverName, leftovers, renamedLeftover } from "./leftovers.ts";
import { makeFolders } from "./make-folders.ts";

export interface FileToWrite {
  /** Below the folder, with forward slashes. */
  readonly file: string;
  readonly text: string;
}

const LIST = "list.json";

interface List {
  readonly files: readonly string[];
  /** Made though nothing lies in them. */
  readonly folders: readonly string[];
}

/** @throws the system's error; then the folder is as it was, or {@link finishWriting} makes it as it was meant */
export async function writeAll(
  folder: string,
  files: readonly FileToWrite[],
  folders: readonly string[] = [],
): Promise<void> {
  const made = makeFolders(folder);
  const building = join(folder, leftoverName("building"));
  const ready = renamedLeftover(building, "ready");
  try {
    await mkdir(building);
    // On the disk, and not only on its way there, before anything depends on it.
    for (const [i, { text }] of files.entries()) await writeFile(join(building, String(i)), text, { flush: true });
    const list: List = { files: files.map(({ file }) => file), folders };
    await writeFile(join(building, LIST), JSON.stringify(list), { flush: true });
    await rename(building, ready);
  } catch (error) {
    await rm(made ?? building, { recursive: true, force: true }).catch(() => undefined);
    throw error;
  }
  await moveAll(folder, ready);
}

/** Finishes what a killed {@link writeAll} had decided on, and removes what it had not. */
export async function finishWriting(folder: string): Promise<void> {
  for (const { path, kind } of await leftovers(folder)) {
    if (kind === "ready") await moveAll(folder, path);
    else await rm(path, { recursive: true, force: true });
  }
}

const isCode = (error: unknown, code: string): boolean =>
  error instanceof Error && "code" in error && error.code === code;

async function moveAll(folder: string, ready: string): Promise<void> {
  const { files, folders } = JSON.parse(await readFile(join(ready, LIST), "utf8")) as List;
  for (const [i, file] of files.entries()) {
    const [from, to] = [join(ready, String(i)), join(folder, file)];
    makeFolders(dirname(to));
    await rename(from, to).catch((error: unknown) => {
      // Moved before, by whoever was killed.
      if (isCode(error, "ENOENT")) return;
      if (isCode(error, "EXDEV")) return moveAcross(from, to);
      throw error;
    });
  }
  for (const one of folders) makeFolders(join(folder, one));
  await rm(ready, { recursive: true, force: true });
}

/** To another disk, mounted within the folder. */
async function moveAcross(from: string, to: string): Promise<void> {
  const beside = `${to}${leftoverName("building")}`;
  await copyFile(from, beside);
  await rename(beside, to);
}
