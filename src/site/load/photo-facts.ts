/** Every photo of some courses looked at: what the check asks of them, and which cannot be shown. */
import { readdir } from "node:fs/promises";
import { join } from "node:path";
import type { Diagnostic } from "../../course/diagnostic.ts";
import type { PhotoFacts, PhotoLook } from "../../course/photo-look.ts";
import type { Course } from "../../course/types.ts";
import { PhotoError } from "../../read/photos.ts";
import { atMost } from "../pictures/at-most.ts";
import { photoLook } from "../pictures/photos.ts";

export interface PhotosFound {
  /** By course id. */
  readonly facts: ReadonlyMap<string, PhotoFacts>;
  /** Photos that cannot be shown, where they are named. */
  readonly diagnostics: readonly Diagnostic[];
}

export async function findPhotos(courses: readonly Course[], contentFolder: string): Promise<PhotosFound> {
  const facts = new Map<string, PhotoFacts>();
  const diagnostics: Diagnostic[] = [];
  const inTurn = atMost(4);
  for (const course of courses) {
    const looks = new Map<string, PhotoLook>();
    const shown = course.holes.flatMap(({ photos }) => photos);
    await Promise.all(
      shown.map(({ file, place }) =>
        inTurn(async () => {
          try {
            looks.set(file, await photoLook(join(contentFolder, file), file.slice(file.lastIndexOf("/") + 1)));
          } catch (error) {
            if (!(error instanceof PhotoError)) throw error;
            diagnostics.push({ ...place, severity: "error", rule: "photo-unreadable", message: error.message });
          }
        }),
      ),
    );
    const named = new Set(shown.map(({ file }) => file));
    const lying = await filesBelow(contentFolder, `${course.id}/photos`);
    facts.set(course.id, { lookOf: (file) => looks.get(file), unused: lying.filter((file) => !named.has(file)) });
  }
  return { facts, diagnostics };
}

/** Files named from the content folder, in order; hidden ones are the system's own. */
async function filesBelow(contentFolder: string, folder: string): Promise<string[]> {
  const entries = await readdir(join(contentFolder, folder), { recursive: true, withFileTypes: true }).catch(() => []);
  return entries
    .filter((entry) => entry.isFile() && !entry.name.startsWith("."))
    .map((entry) =>
      join(entry.parentPath, entry.name)
        .slice(contentFolder.length + 1)
        .replaceAll("\\", "/"),
    )
    .sort();
}
