/** The files a course's features were brought from, as `brought.json` lists them. */
import { valueAt } from "../course/schema/issues.ts";
import { readTextFile } from "./text-file.ts";

/** What `bring` keeps beside a course. */
export const LEDGER_FILE = "brought.json";

/** Their names; none where nothing was brought. Whether the file is sound is for `bring` to say. */
export async function broughtFiles(folder: string, course: string): Promise<string[]> {
  const read = await readTextFile(folder, `${course}/${LEDGER_FILE}`);
  if (!read.ok) return [];
  try {
    const listed = valueAt(JSON.parse(read.source.text), ["sources"]);
    return Array.isArray(listed) ? listed.filter((name) => typeof name === "string") : [];
  } catch {
    return [];
  }
}
