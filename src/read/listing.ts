/** What lies in a folder, in the same order on every machine. */
import { readdir } from "node:fs/promises";

export interface Entry {
  readonly name: string;
  readonly kind: "file" | "folder" | "link" | "other";
}

/** Entries by name, hidden ones left out. @throws the system's error when the folder cannot be read. */
export async function listFolder(path: string): Promise<Entry[]> {
  const found = await readdir(path, { withFileTypes: true });
  return found
    .filter(({ name }) => !name.startsWith("."))
    .map((entry): Entry => ({
      name: entry.name,
      kind: entry.isFile() ? "file" : entry.isDirectory() ? "folder" : entry.isSymbolicLink() ? "link" : "other",
    }))
    .sort((a, b) => (a.name < b.name ? -1 : 1));
}
