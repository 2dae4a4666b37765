import { readdirSync } from "node:fs";
import { extname, join } from "node:path";

/** Every file below a folder that ends in one of these. */
export const sourceFiles = (folder: string, ends: readonly string[]): string[] =>
  readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && ends.includes(extname(entry.name)))
    .map(({ parentPath, name }) => join(parentPath, name));
