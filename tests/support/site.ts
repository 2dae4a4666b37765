/** A built guide on disk, and serving it as any static host would, under a path of its own. */
import { readdirSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { guideServer } from "../../src/commands/guide-server.ts";

export interface ServedSite {
  /** `http://127.0.0.1:1234`, without a slash at the end. */
  readonly origin: string;
  /** The path the guide lies under, with a slash at both ends. */
  readonly base: string;
  readonly folder: string;
}

/** Files of a folder, as addresses relative to it, in order. */
export function filesOf(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join("/"))
    .sort();
}

/** Addresses of the pages of a built site: `""`, `tarvay/`, `tarvay/1/` and so on; `404.html` as itself. */
export const pagesOf = (folder: string): string[] =>
  filesOf(folder)
    .filter((file) => file.endsWith(".html"))
    .map((file) => file.replace(/(^|\/)index\.html$/, "$1"));

/** Serves a folder under a base path and nothing outside it. */
export async function serve(
  folder: string,
  base: string,
): Promise<{ readonly site: ServedSite; close(): Promise<void> }> {
  const server = guideServer({ folder, base });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const address = server.address();
  if (address === null || typeof address === "string") throw new Error("The test server has no port.");
  return {
    site: { origin: `http://127.0.0.1:${address.port}`, base, folder },
    close: () =>
      new Promise((resolve) => {
        server.closeAllConnections();
        server.close(() => resolve());
      }),
  };
}
