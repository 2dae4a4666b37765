/** Files a page names: photos and heights. They come from the course's own folder, never from elsewhere. */
import { lstat, readdir } from "node:fs/promises";
import { extname, join } from "node:path";
import { nearestNames } from "../course/schema/nearest.ts";
import { oneOf, quote } from "../course/schema/wording.ts";
import { systemFault } from "./text-file.ts";

export interface AssetFault {
  readonly rule: string;
  readonly message: string;
}

export interface AssetKind {
  /** What it is called in a message. */
  readonly noun: string;
  /** Lower-case endings with the full stop. */
  readonly endings: readonly string[];
  readonly largestBytes: number;
}

export const PHOTO: AssetKind = {
  noun: "photo",
  endings: [".jpg", ".jpeg", ".png", ".webp", ".avif", ".tif", ".tiff"],
  largestBytes: 60_000_000,
};
export const ORTHOPHOTO: AssetKind = {
  noun: "photo from the air",
  endings: [".tif", ".tiff", ".jpg", ".jpeg", ".png", ".webp"],
  largestBytes: 1_500_000_000,
};
export const HEIGHTS: AssetKind = { noun: "height file", endings: [".tif", ".tiff"], largestBytes: 500_000_000 };

const HEIC: readonly string[] = [".heic", ".heif", ".hif"];

/** What to do with the format that some phones keep pictures in. */
export const HEIC_ADVICE =
  "a HEIC picture, as some phones keep them, and the guide cannot read those. Export it as JPEG (on the phone: share it, or set the camera to its most compatible format), put that into the folder, and write its name.";

/**
 * What is wrong with a named file, or undefined.
 *
 * @param folder absolute path the name starts from.
 * @param shownFolder the same as the club would write it.
 * @param name as written in the content.
 */
export async function checkAsset(
  folder: string,
  shownFolder: string,
  name: string,
  kind: AssetKind,
): Promise<AssetFault | undefined> {
  const outside =
    name.includes("\\") ||
    name.startsWith("/") ||
    /^[A-Za-z]:/.test(name) ||
    name.split("/").some((step) => step === ".." || step === "." || step === "");
  if (outside) {
    return {
      rule: "file-outside",
      message: `${quote(name)} is not a name within ${shownFolder}/. Put the ${kind.noun} into that folder and write its name only, with / between folders.`,
    };
  }
  const ending = extname(name).toLowerCase();
  if (!kind.endings.includes(ending)) {
    if (HEIC.includes(ending)) return { rule: "file-kind", message: `${quote(name)} is ${HEIC_ADVICE}` };
    return {
      rule: "file-kind",
      message: `${quote(name)} is not a ${kind.noun} the guide reads: expected a name that ends in ${oneOf(kind.endings)}.`,
    };
  }
  const steps = name.split("/");
  let path = folder;
  for (const [i, step] of steps.entries()) {
    const last = i === steps.length - 1;
    try {
      // Some file systems find Tee.jpg for tee.jpg; the web server the guide ends up on may not.
      const names = await readdir(path);
      if (!names.includes(step)) return missing(shownFolder, steps.slice(0, i), step, names, kind);
      path = join(path, step);
      const found = await lstat(path);
      if (found.isSymbolicLink())
        return {
          rule: "file-link",
          message: `${quote(name)} is a link to another place. Put the ${kind.noun} itself into ${shownFolder}/.`,
        };
      if (last && !found.isFile())
        return { rule: "file-kind", message: `${quote(name)} is a folder: expected a ${kind.noun}.` };
      if (last && found.size === 0)
        return { rule: "file-empty", message: `The ${kind.noun} ${quote(name)} is empty. Copy it again.` };
      if (last && found.size > kind.largestBytes)
        return {
          rule: "file-size",
          message: `The ${kind.noun} ${quote(name)} is ${Math.round(found.size / 1e6)} MB: expected at most ${kind.largestBytes / 1e6} MB. Make it smaller.`,
        };
    } catch (error) {
      if (error instanceof Error && "code" in error && (error.code === "ENOENT" || error.code === "ENOTDIR"))
        return missing(shownFolder, steps.slice(0, i), step, [], kind);
      return {
        rule: "file-unreadable",
        message: `The ${kind.noun} ${quote(name)} cannot be read: ${systemFault(error)}.`,
      };
    }
  }
  return undefined;
}

function missing(
  shownFolder: string,
  before: readonly string[],
  step: string,
  names: readonly string[],
  kind: AssetKind,
): AssetFault {
  const where = [shownFolder, ...before].join("/");
  const near = nearestNames(
    step,
    names.filter((n) => !n.startsWith(".")),
  );
  const instead =
    near.length > 0 ? `Did you mean ${oneOf(near)}?` : `Put the ${kind.noun} there, or correct its name.`;
  return { rule: "file-missing", message: `There is no ${quote(step)} in ${where}/. ${instead}` };
}
