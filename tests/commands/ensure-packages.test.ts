/** Installing only when something is missing: a project of two files, and an npm that only says it was called. */
import { spawnSync } from "node:child_process";
import { chmod, copyFile, mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { delimiter, join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { PROJECT } from "../support/run.ts";

const SCRIPT = "src/commands/ensure-packages.mjs";
let folder: string;

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "marram-packages-"));
  await mkdir(join(folder, "src/commands"), { recursive: true });
  await mkdir(join(folder, "node_modules"));
  await mkdir(join(folder, "bin"));
  await copyFile(join(PROJECT, SCRIPT), join(folder, SCRIPT));
});
afterEach(() => rm(folder, { recursive: true, force: true }));

type Packages = Readonly<Record<string, { version?: string; optional?: boolean }>>;

async function calls(
  wanted: Packages,
  present: Packages | undefined,
  exitCode = 0,
): Promise<{ status: number | null; stdout: string }> {
  await writeFile(join(folder, "package-lock.json"), JSON.stringify({ packages: wanted }));
  if (present) await writeFile(join(folder, "node_modules/.package-lock.json"), JSON.stringify({ packages: present }));
  await writeFile(join(folder, "bin/npm"), `#!/bin/sh\necho "npm was called: $*"\nexit ${exitCode}\n`);
  await chmod(join(folder, "bin/npm"), 0o755);
  const { status, stdout } = spawnSync(process.execPath, [join(folder, SCRIPT)], {
    encoding: "utf8",
    env: { ...process.env, PATH: `${join(folder, "bin")}${delimiter}${process.env["PATH"]}` },
  });
  return { status, stdout };
}

const WANTED: Packages = {
  "": {},
  "node_modules/a": { version: "1.0.0" },
  "node_modules/other-system": { version: "2.0.0", optional: true },
};

test("nothing is installed when all is there, less what is for other systems", async () => {
  expect(await calls(WANTED, { "node_modules/a": { version: "1.0.0" } })).toEqual({ status: 0, stdout: "" });
});

test.each<[string, Packages | undefined]>([
  ["there are no packages", undefined],
  ["one is missing", {}],
  ["one is of another version", { "node_modules/a": { version: "1.0.1" } }],
  [
    "an optional one is of another version",
    { "node_modules/a": { version: "1.0.0" }, "node_modules/other-system": { version: "1.0.0" } },
  ],
])("npm ci runs when %s", async (_, present) => {
  const { status, stdout } = await calls(WANTED, present);
  expect(status).toBe(0);
  expect(stdout).toContain("npm was called: ci");
});

test("a failed installation is a failure", async () => {
  expect((await calls(WANTED, undefined, 7)).status).toBe(7);
});
