/** Whether a built folder holds the pages the guide must have. */
import { readdir } from "node:fs/promises";

/** Addresses of the HTML pages in a folder, from its root: `tarvay/7/`, `404.html`. */
export async function builtPages(folder: string): Promise<string[]> {
  const names = await readdir(folder, { recursive: true });
  return names
    .map((name) => name.replaceAll("\\", "/"))
    .filter((name) => name.endsWith(".html"))
    .map((name) =>
      name === "index.html" ? "" : name.endsWith("/index.html") ? name.slice(0, -"index.html".length) : name,
    )
    .sort();
}

/** What is wrong with a set of pages, one sentence each; the error page may be there. */
export function pageFaults(expected: readonly string[], built: readonly string[]): string[] {
  const shown = (path: string): string => (path === "" ? "the cover (index.html)" : path);
  const missing = expected.filter((path) => !built.includes(path)).map((path) => `Page ${shown(path)} is missing.`);
  const known = new Set([...expected, "404.html"]);
  const strange = built
    .filter((path) => !known.has(path))
    .map((path) => `Page ${shown(path)} is not one of the guide's (see pagePaths in src/site/addresses/routes.ts).`);
  return [...missing, ...strange];
}
