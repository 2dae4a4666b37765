/**
 * Folders with those above them. Node's own way (`mkdir` with `recursive`) tries for ever
 * where the system says that a folder is not there and its parent is, as below /proc.
 */
import { mkdirSync, rmdirSync, statSync } from "node:fs";
import { dirname, resolve } from "node:path";

const isCode = (error: unknown, code: string): boolean =>
  error instanceof Error && "code" in error && error.code === code;

/**
 * Makes a folder; one that is there will do.
 *
 * @returns the uppermost folder that was made, or undefined.
 * @throws the system's error; what was made is taken away again
 */
export function makeFolders(path: string): string | undefined {
  const missing: string[] = [];
  for (let at = resolve(path); statSync(at, { throwIfNoEntry: false }) === undefined; at = dirname(at))
    missing.push(at);
  const made: string[] = [];
  for (const one of missing.reverse()) {
    try {
      mkdirSync(one);
      made.push(one);
    } catch (error) {
      // Somebody else may have made it meanwhile; a link to nowhere is no folder.
      if (isCode(error, "EEXIST") && statSync(one, { throwIfNoEntry: false })?.isDirectory()) continue;
      for (const done of made.reverse()) rmdirSync(done);
      throw error;
    }
  }
  return made[0];
}
