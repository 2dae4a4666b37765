/** Where a Chromium or Chrome is on this machine. */
import { accessSync, constants } from "node:fs";
import { delimiter, join } from "node:path";

/** Set it to a browser's path to use that one. */
export const BROWSER_VARIABLE = "MARRAM_BROWSER";

const NAMES = ["chromium", "chromium-browser", "google-chrome-stable", "google-chrome", "chrome", "microsoft-edge"];

const PLACES = [
  "/usr/bin",
  "/usr/local/bin",
  "/snap/bin",
  "/opt/google/chrome",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
];

function runs(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/**
 * The browser's path, or undefined where there is none.
 *
 * @throws Error when the variable names something that cannot be run
 */
export function findBrowser(
  environment: Readonly<Record<string, string | undefined>> = process.env,
): string | undefined {
  const named = environment[BROWSER_VARIABLE];
  if (named !== undefined && named !== "") {
    if (!runs(named))
      throw new Error(
        `${BROWSER_VARIABLE} is ${named}, which cannot be run: set it to a Chromium or Chrome, or unset it.`,
      );
    return named;
  }
  const folders = [
    ...(environment["PATH"] ?? "").split(delimiter).filter(Boolean),
    ...PLACES.filter((place) => !place.includes(".app/")),
  ];
  const files = [
    ...folders.flatMap((folder) => NAMES.map((name) => join(folder, name))),
    ...PLACES.filter((place) => place.includes(".app/")),
  ];
  return files.find(runs);
}
