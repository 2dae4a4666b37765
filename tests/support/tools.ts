/**
 * Programs that others made and ours are held against. They come with Debian. Where one is
 * missing it is installed by apt; where that fails the tests fail too, saying what to
 * install: a check that quietly did not run would look like one that passed.
 */
import { spawnSync } from "node:child_process";
import { aptInstall } from "../../src/commands/browser/install-browser.ts";

interface Tool {
  /** A program of the package, and what makes it tell its version. */
  readonly program: readonly [name: string, ...args: string[]];
  readonly what: string;
}

/** By their Debian packages. */
const TOOLS = {
  "gdal-bin": { program: ["gdalinfo", "--version"], what: "compare heights and pictures with GDAL" },
  "poppler-utils": { program: ["pdfinfo", "-v"], what: "read PDFs with poppler" },
  ffmpeg: { program: ["ffprobe", "-version"], what: "look into films with FFmpeg's probe" },
} as const satisfies Record<string, Tool>;

export type ToolPackage = keyof typeof TOOLS;

const isThere = ({ program: [name, ...args] }: Tool): boolean =>
  spawnSync(name, args, { stdio: "ignore" }).status === 0;

const found = new Set<ToolPackage>();

/** Makes sure of some of these packages. @throws Error that says what to install by hand */
export function needTools(...packages: readonly ToolPackage[]): void {
  const missing = packages.filter((name) => !found.has(name) && !isThere(TOOLS[name]));
  if (missing.length > 0) aptInstall(missing);
  const still = missing.filter((name) => !isThere(TOOLS[name]));
  if (still.length > 0) {
    throw new Error(
      `These tests ${still.map((name) => TOOLS[name].what).join(" and ")}, which is not here. Install it: apt-get install ${still.join(" ")}`,
    );
  }
  for (const name of packages) found.add(name);
}

/** All of them, at once. */
export const needAllTools = (): void => needTools("gdal-bin", "poppler-utils", "ffmpeg");
