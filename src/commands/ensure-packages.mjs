/**
 * Installs the packages the lock file names, unless they are there already. Plain
 * JavaScript, since it also runs before there is a Node that reads TypeScript.
 */
import { spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../../", import.meta.url));

/** @param {string} file @returns {Record<string, { version?: string, optional?: boolean }> | undefined} */
function packagesIn(file) {
  try {
    return JSON.parse(readFileSync(file, "utf8")).packages;
  } catch {
    return undefined;
  }
}

/** Whether what npm says it installed is what the lock asks for; packages for other systems may be left out. */
function installed() {
  const wanted = packagesIn(`${root}package-lock.json`);
  const present = packagesIn(`${root}node_modules/.package-lock.json`);
  if (wanted === undefined || present === undefined) return false;
  return Object.entries(wanted).every(([name, { version, optional }]) => {
    if (name === "") return true;
    const found = present[name];
    return found === undefined ? optional === true : found.version === version;
  });
}

if (!installed()) {
  console.log("> npm ci --loglevel=error");
  // Warnings there are about the Node that runs npm, and ours comes with the packages.
  // A shell finds npm under its Windows name too; nothing here comes from outside.
  const { status } = spawnSync("npm ci --loglevel=error", { cwd: root, stdio: "inherit", shell: true });
  if (status !== 0) process.exit(status ?? 1);
}

const [major, minor] = process.versions.node.split(".").map(Number);
const readsTypeScript = major > 22 || (major === 22 && minor >= 18);
if (
  !readsTypeScript &&
  !existsSync(`${root}node_modules/.bin/node`) &&
  !existsSync(`${root}node_modules/.bin/node.cmd`)
) {
  console.error(
    `Marram runs on Node 24, this is ${process.version}, and npm did not fetch Node 24 for this system. Install Node 24 or later, or run npm ci without --omit=optional.`,
  );
  process.exit(1);
}
