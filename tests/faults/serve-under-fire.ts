/** The serve command itself, in a process of its own, under fire. */
import { spawn } from "node:child_process";
import { mkdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { writeRecord } from "../../src/site/build/build-record.ts";
import { PROJECT } from "../support/run.ts";
import type { Random } from "./random.ts";
import { throwRequests, type RequestFaults } from "./requests.ts";

const SECRET = "what lies beside the guide";

/** @param folder an empty one, for a guide and what must not be served. */
export async function attackServe(folder: string, count: number, random: Random): Promise<RequestFaults> {
  const out = join(folder, "guide");
  await mkdir(join(out, "course/1"), { recursive: true });
  await writeFile(join(folder, "secret.txt"), SECRET);
  for (const file of ["index.html", "course/1/index.html", "course/1/captions.vtt", "404.html"])
    await writeFile(join(out, file), `<p>${file}</p>`);
  await writeRecord(out, { madeBy: "Marram", base: "/", pages: 2, languages: ["en"] });
  const child = spawn(
    process.execPath,
    [join(PROJECT, "src/commands/serve.ts"), "--out", out, "--host", "127.0.0.1"],
    { stdio: ["ignore", "pipe", "pipe"] },
  );
  let said = "";
  try {
    const port = await new Promise<number>((resolve, reject) => {
      const hear = (text: Buffer): void => {
        said += text.toString();
        const found = /The guide is at http:\/\/127\.0\.0\.1:(\d+)/.exec(said)?.[1];
        if (found) resolve(Number(found));
      };
      child.stdout.on("data", hear);
      child.stderr.on("data", hear);
      child.on("close", () => reject(new Error(said)));
    });
    const faults = await throwRequests(port, count, random, ["/", "/course/1/", "/course/1/captions.vtt"], SECRET);
    return said.includes("    at ") ? { ...faults, lost: [...faults.lost, `printed a stack trace: ${said}`] } : faults;
  } finally {
    child.kill();
  }
}
