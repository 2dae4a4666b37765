/** A browser for what prints and tests: one that is here, or Debian's chromium, installed. */
import { spawnSync } from "node:child_process";
import { BROWSER_VARIABLE, findBrowser } from "./find-browser.ts";

/** What to tell somebody on whose machine none could be installed. */
export const SETTLE_BY_HAND = `Install Chromium or Chrome, or set ${BROWSER_VARIABLE} to the path of one.`;

/** Runs a program, what it says going to the error stream: a command's own output may be read by another. */
function run(command: string, parts: readonly string[]): boolean {
  console.error(`> ${command} ${parts.join(" ")}`);
  const { status, error } = spawnSync(command, parts, {
    stdio: ["ignore", 2, 2],
    env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
  });
  return error === undefined && status === 0;
}

const has = (command: string): boolean => spawnSync(command, ["--version"], { stdio: "ignore" }).error === undefined;

/** Installs packages as root, or through sudo when that asks for no password; false where neither goes. */
export function aptInstall(packages: readonly string[]): boolean {
  if (process.platform !== "linux" || !has("apt-get")) return false;
  const root = process.getuid?.() === 0;
  if (!root && !(has("sudo") && spawnSync("sudo", ["-n", "true"], { stdio: "ignore" }).status === 0)) return false;
  const apt = (...parts: string[]): boolean =>
    root ? run("apt-get", parts) : run("sudo", ["-n", "apt-get", ...parts]);
  return apt("update") && apt("install", "-y", "--no-install-recommends", ...packages);
}

/** The path of a browser, installed first where none is found; undefined where none can be had. */
export function findOrInstallBrowser(tell: (message: string) => void): string | undefined {
  const found = findBrowser();
  if (found !== undefined) return found;
  tell("No Chromium or Chrome found; installing Debian's chromium.");
  return aptInstall(["chromium", "fonts-dejavu-core"]) ? findBrowser() : undefined;
}
