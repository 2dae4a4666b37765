/** The swap of a build, broken off at each of its writes. */
import { mkdir, readdir, rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { recover, type Where } from "../../src/commands/swap.ts";
import { writeRecord } from "../../src/site/build/build-record.ts";
import { fingerprint } from "../support/run.ts";
import { breakOff } from "./broken-off.ts";

async function guide(folder: string, text: string, files: readonly string[]): Promise<Record<string, string>> {
  await rm(folder, { recursive: true, force: true });
  await mkdir(join(folder, "_astro"), { recursive: true });
  await mkdir(join(folder, "course/1"), { recursive: true });
  for (const file of files) await writeFile(join(folder, file), `${text} ${file}`);
  await writeRecord(folder, { madeBy: "Marram", base: "/", pages: files.length, languages: ["en"] });
  return fingerprint(folder);
}

const same = (a: object, b: object): boolean => JSON.stringify(a) === JSON.stringify(b);

/**
 * @param every only each so many writes, for a sample.
 * @param where the swap is made; within the target as at a mount point, or beside it.
 */
export async function breakSwaps(folder: string, where: Where, every = 1): Promise<{ tried: number; lost: string[] }> {
  const work = join(folder, where);
  const target = join(work, "dist");
  const made = join(folder, "made");
  const fresh = await guide(made, "new", [
    "index.html",
    "sw.js",
    "_astro/new.js",
    "course/1/index.html",
    "course/index.html",
  ]);
  const old = await guide(target, "old", ["index.html", "sw.js", "_astro/old.js", "course/1/index.html", "gone.html"]);
  const whole = async (): Promise<"old" | "new" | undefined> => {
    const found = await fingerprint(target).catch(() => ({}));
    return same(found, old) ? "old" : same(found, fresh) ? "new" : undefined;
  };
  const driver = ["tests/faults/swap-driver.ts", target];
  return breakOff(
    {
      args: [...driver, made, where],
      folder: work,
      prepare: async () => {
        await rm(work, { recursive: true, force: true });
        await guide(target, "old", ["index.html", "sw.js", "_astro/old.js", "course/1/index.html", "gone.html"]);
      },
      judge: async ({ mode, ended }) => {
        // A failure that could be told has put everything in order; only a kill may leave work to the next start.
        if (mode === "full" && ended.code !== 0 && where === "beside" && (await whole()) === undefined)
          return "neither guide is whole after the failure";
        await recover(target);
        if ((await whole()) === undefined)
          return `neither guide is whole after the next start: ${Object.keys(await fingerprint(target).catch(() => ({}))).join(", ")}`;
        const left = [
          ...(await readdir(work)).filter((name) => name !== "dist"),
          ...(await readdir(target)).filter((name) => name.startsWith(".marram-")),
        ];
        return left.length > 0 ? `left behind: ${left.join(", ")}` : undefined;
      },
    },
    join(folder, "count"),
    every,
  );
}
