/** Our commands as a person runs them: in a process of their own. */
import { spawn } from "node:child_process";
import { createHash } from "node:crypto";
import { readFile, readdir } from "node:fs/promises";
import { join, relative } from "node:path";
import { fileURLToPath } from "node:url";

export const PROJECT = fileURLToPath(new URL("../../", import.meta.url));

/** Where Node keeps modules as it compiled them: half of what a short command takes. */
const COMPILED = join(PROJECT, "node_modules/.cache/marram-node");

export interface Ended {
  readonly code: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

/** Runs a script of this project (`src/commands/build.ts`) with Node. */
export function run(
  script: string,
  args: readonly string[],
  env: Readonly<Record<string, string>> = {},
): Promise<Ended> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [join(PROJECT, script), ...args], {
      cwd: PROJECT,
      stdio: ["ignore", "pipe", "pipe"],
      env: {
        ...process.env,
        NO_COLOR: "1",
        FORCE_COLOR: "0",
        ASTRO_TELEMETRY_DISABLED: "1",
        NODE_COMPILE_CACHE: COMPILED,
        ...env,
      },
    });
    let stdout = "";
    let stderr = "";
    child.stdout.setEncoding("utf8").on("data", (text: string) => (stdout += text));
    child.stderr.setEncoding("utf8").on("data", (text: string) => (stderr += text));
    child.on("error", reject);
    child.on("close", (code) => resolve({ code, stdout, stderr }));
  });
}

/** Every file below a folder with a hash of its bytes. */
export async function fingerprint(folder: string): Promise<Record<string, string>> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const files = entries
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
  const hashes = await Promise.all(
    files.map(
      async (file) =>
        [
          relative(folder, file),
          createHash("sha256")
            .update(await readFile(file))
            .digest("hex"),
        ] as const,
    ),
  );
  return Object.fromEntries(hashes);
}
