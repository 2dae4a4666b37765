/**
 * Makes sure the browser tests have a browser: finds one, or installs Debian's chromium,
 * or says what to do. Run before the tests: `node tests/support/ensure-browser.ts`.
 */
import { spawnSync } from "node:child_process";
import { BROWSER_VARIABLE, findBrowser } from "./find-browser.ts";

const SETTLE_BY_HAND = `Install Chromium or Chrome, or set ${BROWSER_VARIABLE} to the path of one.`;

function run(command: string, parts: readonly string[]): boolean {
  console.log(`> ${command} ${parts.join(" ")}`);
  const { status, error } = spawnSync(command, parts, { stdio: "inherit", env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" } });
  return error === undefined && status === 0;
}

const has = (command: string): boolean => spawnSync(command, ["--version"], { stdio: "ignore" }).error === undefined;

/** Installs as root, or through sudo when that asks for no password. */
function install(): boolean {
  if (process.platform !== "linux" || !has("apt-get")) return false;
  const root = process.getuid?.() === 0;
  if (!root && !(has("sudo") && spawnSync("sudo", ["-n", "true"], { stdio: "ignore" }).status === 0)) return false;
  const apt = (...parts: string[]): boolean => (root ? run("apt-get", parts) : run("sudo", ["-n", "apt-get", ...parts]));
  return apt("update") && apt("install", "-y", "--no-install-recommends", "chromium", "fonts-dejavu-core");
}

const found = findBrowser();
if (found !== undefined) {
  console.log(`Browser for the tests: ${found}`);
} else {
  console.log("No Chromium or Chrome found for the browser tests; installing Debian's chromium.");
  const installed = install() ? findBrowser() : undefined;
  if (installed === undefined) {
    console.error(`The browser tests need a browser and none could be installed. ${SETTLE_BY_HAND}`);
    process.exitCode = 1;
  } else {
    console.log(`Browser for the tests: ${installed}`);
  }
}
