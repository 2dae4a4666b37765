/**
 * Preloaded into a process (`node --import`): its nth call that writes below a folder
 * fails. What the process asks of the file system goes through here, by callback, promise
 * and in step.
 *
 *   MARRAM_FAULT         kill:5, full:5 or count:/path/to/file, which writes how many calls there were
 *   MARRAM_FAULT_FOLDER  calls elsewhere are not counted
 */
import fs from "node:fs";
import { syncBuiltinESMExports } from "node:module";
import { resolve, sep } from "node:path";

const [mode, argument] = (process.env.MARRAM_FAULT ?? "").split(/:(.*)/s);
const folder = resolve(process.env.MARRAM_FAULT_FOLDER ?? "/nowhere");
const WRITES = [
  "appendFile",
  "copyFile",
  "cp",
  "link",
  "mkdir",
  "mkdtemp",
  "rename",
  "rm",
  "rmdir",
  "symlink",
  "truncate",
  "unlink",
  "utimes",
  "writeFile",
  "open",
  "createWriteStream",
  "chmod",
];

const bare = {
  writeFileSync: fs.writeFileSync,
  readdirSync: fs.readdirSync,
  copyFileSync: fs.copyFileSync,
  mkdirSync: fs.mkdirSync,
  statSync: fs.statSync,
};
let calls = 0;

const isBelow = (path) =>
  typeof path === "string" && (resolve(path) === folder || resolve(path).startsWith(folder + sep));

/** A kill in the middle of a write leaves half of it. */
function half(name, [to, what]) {
  try {
    if (name.startsWith("writeFile"))
      bare.writeFileSync(to, Buffer.from(what).subarray(0, Buffer.from(what).length >> 1));
    if (name.startsWith("cp")) {
      const from = to;
      const names = bare.readdirSync(from);
      for (const one of names.slice(0, names.length >> 1))
        if (bare.statSync(`${from}/${one}`).isFile()) bare.copyFileSync(`${from}/${one}`, `${what}/${one}`);
    }
  } catch {
    // Then not even that.
  }
}

/** Whether this call is the one. */
function strike(name, args) {
  const writes = !name.startsWith("open") || (typeof args[1] === "string" && /[wa+]/.test(args[1]));
  if (!writes || !args.slice(0, 2).some(isBelow)) return false;
  calls++;
  if (mode === "count" || calls !== Number(argument)) return false;
  if (mode === "kill") {
    half(name, args);
    process.kill(process.pid, "SIGKILL");
  }
  return true;
}

const full = (path) =>
  Object.assign(new Error(`ENOSPC: no space left on device, write '${path}'`), {
    code: "ENOSPC",
    errno: -28,
    syscall: "write",
    path,
  });
// A full disk can still take away.
const FAILS_WHEN_FULL = /^(?:appendFile|copyFile|cp|link|mkdir|mkdtemp|symlink|writeFile|open|createWriteStream)/;
const strikesDown = (name, args) => (mode !== "full" || FAILS_WHEN_FULL.test(name)) && strike(name, args);

for (const name of WRITES) {
  const promised = fs.promises[name];
  if (promised) {
    fs.promises[name] = async function (...args) {
      if (strikesDown(name, args)) throw full(args[0]);
      return promised.apply(this, args);
    };
  }
  const inStep = fs[`${name}Sync`];
  if (inStep) {
    fs[`${name}Sync`] = function (...args) {
      if (strikesDown(`${name}Sync`, args)) throw full(args[0]);
      return inStep.apply(this, args);
    };
  }
}
syncBuiltinESMExports();
if (mode === "count") process.on("exit", () => bare.writeFileSync(argument, String(calls)));
