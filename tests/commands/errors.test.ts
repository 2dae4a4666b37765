/**
 * How commands end badly: one sentence with place and remedy, never a stack trace, and an exit code that the
 * help states.
 */
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { EXIT_CODES, tellError } from "../../src/commands/options.ts";
import { writeClub } from "../fixtures/club.ts";
import { run } from "../support/run.ts";

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "marram-errors-"));
  await writeClub(join(folder, "content"), { holes: 9 });
  await writeFile(join(folder, "file"), "");
});
afterAll(() => rm(folder, { recursive: true, force: true }));

test.each(["build", "serve", "check", "new", "bring", "export", "paper", "film", "dev"])(
  "%s says in its help how it ends",
  async (command) => {
    const { code, stdout, stderr } = await run(`src/commands/${command}.ts`, ["--help"]);
    expect([code, stderr]).toEqual([0, ""]);
    expect(stdout.endsWith(`${EXIT_CODES}\n`)).toBe(true);
  },
);

test.each([
  ["build", ["--out", "/proc/guide"]],
  ["new", ["--folder", "/proc/club", "--name", "Trial", "--at", "lat=56.5,lon=-9"]],
  ["export", ["--out", "/proc/files"]],
  ["export", ["--out", "FILE/below"]],
  ["new", ["--folder", "FILE/below", "--name", "Trial", "--at", "lat=56.5,lon=-9"]],
] as const)("%s %j: the path and what to do", async (command, args) => {
  const told = args.map((one) => one.replace("FILE", join(folder, "file")));
  const content = command === "new" ? [] : ["--content", join(folder, "content")];
  const { code, stderr } = await run(`src/commands/${command}.ts`, [...content, ...told]);
  expect(code).toBe(1);
  const last = stderr.trim().split("\n").at(-1)!;
  expect(last).toContain(told[1]!);
  expect(last).toMatch(/\. (?:Check|Name) .*\.$/);
  expect(stderr).not.toMatch(/^ {4}at /m);
});

test.each([
  [
    Object.assign(new Error("x"), { code: "ENOSPC", path: "/a/b" }),
    1,
    "The disk is full: /a/b (ENOSPC). Make room and run it again.",
  ],
  [
    new Error("wrapped", { cause: Object.assign(new Error("x"), { code: "EROFS", path: "/a" }) }),
    1,
    "The disk can only be read: /a (EROFS). Name a folder on another one.",
  ],
  [
    new RangeError("Maximum call stack size exceeded"),
    2,
    "A fault of Marram itself, not of what you wrote (RangeError: Maximum call stack size exceeded). Please report it, with what was run; MARRAM_TRACE=1 before the command shows where it happened.",
  ],
] as const)("%s is told so", (error, code, text) => {
  expect(tellError(error)).toEqual({ text, code });
});
