import { mkdir, mkdtemp, readFile, readdir, rm, stat, symlink, writeFile } from "node:fs/promises";
import { homedir, tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { refuseUnlessOurs } from "../../src/commands/staging.ts";
import { recover, swapIn } from "../../src/commands/swap.ts";
import { writeRecord } from "../../src/site/build/build-record.ts";

let folder: string;
let target: string;

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "marram-staging-"));
  target = join(folder, "dist");
});
afterEach(() => rm(folder, { recursive: true, force: true }));

describe("swapping in", () => {
  const page =
    (text: string) =>
    (staging: string): Promise<void> =>
      writeFile(join(staging, "index.html"), text);

  test("puts the new folder where the old one was", async () => {
    await swapIn(target, page("one"));
    await swapIn(target, page("two"));
    expect(await readFile(join(target, "index.html"), "utf8")).toBe("two");
    expect(await readdir(folder)).toEqual(["dist"]);
  });

  test("fills a folder beside the target while the old one still stands", async () => {
    await swapIn(target, page("one"));
    await swapIn(target, async (staging) => {
      expect(dirname(staging)).toBe(folder);
      await page("two")(staging);
      expect(await readFile(join(target, "index.html"), "utf8")).toBe("one");
    });
  });

  test("leaves the old folder when filling fails, and nothing beside it", async () => {
    await swapIn(target, page("one"));
    const failing = swapIn(target, async (staging) => {
      await page("half")(staging);
      throw new Error("the power went out");
    });
    await expect(failing).rejects.toThrow("the power went out");
    expect(await readFile(join(target, "index.html"), "utf8")).toBe("one");
    expect(await readdir(folder)).toEqual(["dist"]);
  });

  test("puts the old folder back when the new one cannot be moved in", async () => {
    await swapIn(target, page("one"));
    await expect(swapIn(target, (staging) => rm(staging, { recursive: true }))).rejects.toThrow("ENOENT");
    expect(await readFile(join(target, "index.html"), "utf8")).toBe("one");
    expect(await readdir(folder)).toEqual(["dist"]);
  });

  test("makes a folder as open as any other", async () => {
    await swapIn(target, page("one"));
    await mkdir(join(folder, "plain"));
    expect((await stat(target)).mode).toBe((await stat(join(folder, "plain"))).mode);
  });

  test("makes the folders above the target", async () => {
    await swapIn(join(folder, "a/b/dist"), page("one"));
    expect(await readFile(join(folder, "a/b/dist/index.html"), "utf8")).toBe("one");
  });
});

describe("what a killed build left", () => {
  const GONE = 2 ** 22 + 1; // beyond any process number: Linux allows 2^22 (proc(5), pid_max)
  const leftover = async (kind: string, pid: number, text: string): Promise<string> => {
    const path = `${target}.marram-${kind}-${pid}-0123456789ab`;
    await mkdir(path);
    await writeFile(join(path, "index.html"), text);
    return path;
  };
  const page = (): Promise<string> => readFile(join(target, "index.html"), "utf8");

  test("between taking the old guide away and bringing the new one: the new one is brought", async () => {
    await leftover("replaced", GONE, "old");
    await leftover("ready", GONE, "new");
    await recover(target);
    expect(await page()).toBe("new");
    expect(await readdir(folder)).toEqual(["dist"]);
  });

  test("only the old guide, under another name: it is put back", async () => {
    await leftover("replaced", GONE, "old");
    await recover(target);
    expect(await page()).toBe("old");
  });

  test("half a guide: it is swept, and never put in place", async () => {
    await leftover("building", GONE, "half");
    await recover(target);
    expect(await readdir(folder)).toEqual([]);
  });

  test("a build that still runs, and what is not ours, is left alone", async () => {
    await leftover("building", process.ppid, "half");
    await mkdir(`${target}-backup`);
    await mkdir(`${target}.marram-building-1-letters`);
    const before = await readdir(folder);
    await recover(target);
    expect(await readdir(folder)).toEqual(before);
  });
});

describe("a mount point", () => {
  test("is changed within, keeps its file system's own folder, and loses what the new guide lacks", async () => {
    await mkdir(join(target, "lost+found"), { recursive: true });
    await writeFile(join(target, "gone.html"), "old");
    await swapIn(target, (staging) => writeFile(join(staging, "index.html"), "new"), "within");
    expect((await readdir(target)).sort()).toEqual(["index.html", "lost+found"]);
    await expect(swapIn(target, () => Promise.reject(new Error("the power went out")), "within")).rejects.toThrow(
      "the power went out",
    );
    expect((await readdir(target)).sort()).toEqual(["index.html", "lost+found"]);
  });
});

describe("a target", () => {
  const allowed = (path = target): Promise<void> =>
    refuseUnlessOurs(path, join(folder, "content"), { "Marram itself": join(folder, "marram") });

  test("may be missing, empty, or an earlier guide", async () => {
    await allowed();
    await mkdir(target);
    await allowed();
    await writeRecord(target, { madeBy: "Marram", base: "/", pages: 1, languages: ["en"] });
    await writeFile(join(target, "index.html"), "");
    await allowed();
    await mkdir(join(folder, "marram"));
    await allowed(join(folder, "marram/dist"));
  });

  test.each<[string, () => Promise<string>]>([
    [
      "a folder with something else in it",
      async () => {
        await mkdir(target);
        await writeFile(join(target, "letter.txt"), "Dear");
        return target;
      },
    ],
    [
      "a folder whose record is somebody else's",
      async () => {
        await mkdir(target);
        await writeFile(join(target, ".marram.json"), '{ "madeBy": "Somebody", "base": "/", "pages": 1 }');
        return target;
      },
    ],
    [
      "a file",
      async () => {
        await writeFile(target, "");
        return target;
      },
    ],
    [
      "a link to a guide",
      async () => {
        await mkdir(join(folder, "other"));
        await writeRecord(join(folder, "other"), { madeBy: "Marram", base: "/", pages: 1, languages: ["en"] });
        await symlink(join(folder, "other"), target);
        return target;
      },
    ],
    ["the content", async () => join(folder, "content")],
    ["a folder in the content", async () => join(folder, "content/tarvay/dist")],
    ["a folder above the content", async () => folder],
    [
      "a link into the content",
      async () => {
        await mkdir(join(folder, "content/tarvay"), { recursive: true });
        await symlink(join(folder, "content"), join(folder, "alias"));
        return join(folder, "alias/tarvay/dist");
      },
    ],
    ["Marram itself", async () => join(folder, "marram")],
    ["the home folder", async () => homedir()],
    ["the root", async () => "/"],
  ])("may not be %s", async (_, make) => {
    const path = await make();
    let message = "";
    try {
      await allowed(path);
    } catch (error) {
      message =
        error instanceof Error && error.name === "CommandError"
          ? error.message
          : `not refused as it should be: ${String(error)}`;
    }
    expect(message.replaceAll(folder, "FOLDER").replaceAll(homedir(), "HOME")).toMatchSnapshot();
    expect(message).toContain("cannot be written to");
  });
});
