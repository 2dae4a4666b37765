/** A content folder as it would be with some files changed, in a place of its own that is gone afterwards. */
import { copyFile, link, mkdir, mkdtemp, readdir, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";

/** The same file under a second name where the disk allows it, since photos and heights are large. */
const linkOrCopy = (from: string, to: string): Promise<void> => link(from, to).catch(() => copyFile(from, to));

/** @param files paths relative to the folder, with the text each would have */
export async function withFiles<T>(
  folder: string,
  files: readonly { readonly file: string; readonly after: string }[],
  look: (copy: string) => Promise<T>,
): Promise<T> {
  const copy = await mkdtemp(join(tmpdir(), "marram-preview-"));
  const changed = new Set(files.map(({ file }) => file));
  try {
    for (const entry of await readdir(folder, { recursive: true, withFileTypes: true })) {
      if (!entry.isFile()) continue;
      const path = join(entry.parentPath, entry.name);
      const own = path.slice(folder.length + 1);
      if (changed.has(own.replaceAll("\\", "/"))) continue;
      await mkdir(dirname(join(copy, own)), { recursive: true });
      await linkOrCopy(path, join(copy, own));
    }
    for (const { file, after } of files) {
      await mkdir(dirname(join(copy, file)), { recursive: true });
      await writeFile(join(copy, file), after);
    }
    return await look(copy);
  } finally {
    await rm(copy, { recursive: true, force: true });
  }
}
