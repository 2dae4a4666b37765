/**
 * A small file in every built guide that says it is one: a build only ever replaces a
 * folder that has it, and the server learns from it where the guide expects to be served.
 */
import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";

export interface BuildRecord {
  readonly madeBy: "Marram";
  /** Path the guide is served from, with a slash at each end. */
  readonly base: string;
  /** Pages, without 404.html. */
  readonly pages: number;
  /** Of the guide's pages; the first one's stand at the root. */
  readonly languages: readonly string[];
}

export const RECORD_FILE = ".marram.json";

export const writeRecord = (folder: string, record: BuildRecord): Promise<void> =>
  writeFile(join(folder, RECORD_FILE), `${JSON.stringify(record, undefined, 2)}\n`);

/** The record of a built guide, or undefined where there is none worth the name. */
export async function readRecord(folder: string): Promise<BuildRecord | undefined> {
  let value: unknown;
  try {
    value = JSON.parse(await readFile(join(folder, RECORD_FILE), "utf8"));
  } catch {
    return undefined;
  }
  if (value === null || typeof value !== "object") return undefined;
  const { madeBy, base, pages, languages } = value as Partial<Record<keyof BuildRecord, unknown>>;
  if (madeBy !== "Marram" || typeof base !== "string" || typeof pages !== "number") return undefined;
  const known = Array.isArray(languages) ? languages.filter((language) => typeof language === "string") : [];
  return { madeBy, base, pages, languages: known };
}
