/**
 * Folders that a command works in and means to remove. A killed one cannot, so their names
 * say which process made them, and the next start sweeps those whose process is gone.
 */
import { randomBytes } from "node:crypto";
import { mkdir, readdir, rm, stat } from "node:fs/promises";
import { join } from "node:path";
import { makeFolders } from "./make-folders.ts";

/** `.marram-ready-4711-0123456789ab`, behind what it is for. */
const NAME = /\.marram-(building|ready|moving|replaced)-(\d+)-[0-9a-f]{12}$/;

export type LeftoverKind = "building" | "ready" | "moving" | "replaced";

export const leftoverName = (kind: LeftoverKind, before = ""): string =>
  `${before}.marram-${kind}-${process.pid}-${randomBytes(6).toString("hex")}`;

export const isLeftoverName = (name: string): boolean => NAME.test(name);

/** The same folder's name for another kind. */
export const renamedLeftover = (path: string, kind: LeftoverKind): string =>
  path.replace(NAME, (whole, was: string) => whole.replace(was, kind));

/** Longer than any build takes. In containers one number may stand for many processes, some of them elsewhere. */
const SURELY_OVER_MS = 24 * 3600 * 1000;

function runs(pid: number): boolean {
  // Whatever had this number before, it was not this process.
  if (pid === process.pid) return false;
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return error instanceof Error && "code" in error && error.code === "EPERM";
  }
}

export interface Leftover {
  readonly path: string;
  readonly kind: LeftoverKind;
}

/** Leftovers of processes that are gone, among those whose name begins so. */
export async function leftovers(folder: string, before = ""): Promise<Leftover[]> {
  const found: Leftover[] = [];
  for (const name of await readdir(folder).catch(() => [])) {
    const parts = name.startsWith(before) ? NAME.exec(name) : null;
    if (!parts || parts.index !== before.length) continue;
    const path = join(folder, name);
    const age = await stat(path).then(
      ({ mtimeMs }) => Date.now() - mtimeMs,
      () => 0,
    );
    if (age > SURELY_OVER_MS || !runs(Number(parts[2]))) found.push({ path, kind: parts[1] as LeftoverKind });
  }
  return found;
}

/** A folder to work in, swept of those that killed processes left. */
export async function workFolder(parent: string, kind: LeftoverKind): Promise<string> {
  makeFolders(parent);
  for (const { path } of await leftovers(parent)) await rm(path, { recursive: true, force: true });
  const path = join(parent, leftoverName(kind));
  await mkdir(path);
  return path;
}
