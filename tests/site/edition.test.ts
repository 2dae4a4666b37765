/** The edition a built folder is given. */
import { createHash } from "node:crypto";
import { mkdir, mkdtemp, readFile, rename, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { UNSTAMPED } from "../../src/contract/edition.ts";
import { writeEdition } from "../../src/site/build/edition.ts";

const page = (text: string): string =>
  `<html lang="en" data-edition="${UNSTAMPED.edition}" data-edition-bytes="${UNSTAMPED.bytes}">${text}`;

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "marram-edition-"));
  await mkdir(join(folder, "links/1"), { recursive: true });
  await writeFile(join(folder, "index.html"), page("Cover"));
  await writeFile(join(folder, "links/1/index.html"), page("Höhe 7 m"));
  await writeFile(join(folder, "style.css"), "p{}");
});
afterEach(() => rm(folder, { recursive: true, force: true }));

test("lists every file by its bytes on the disk, and every page says which edition it is of", async () => {
  const { edition, bytes, files } = await writeEdition(folder);
  expect(Object.keys(files)).toEqual(["index.html", "links/1/index.html", "style.css"]);
  let sum = 0;
  for (const [path, file] of Object.entries(files)) {
    const content = await readFile(join(folder, path));
    sum += content.length;
    const sha256 = (bytes: Uint8Array | string): string => createHash("sha256").update(bytes).digest("hex");
    // A page is known again in another edition by what it is without the edition's name.
    const unstamped = { "index.html": sha256(page("Cover")), "links/1/index.html": sha256(page("Höhe 7 m")) }[path];
    expect(file, path).toEqual({
      bytes: content.length,
      sha256: sha256(content),
      ...(unstamped === undefined ? {} : { unstamped }),
    });
  }
  expect(bytes).toBe(sum);
  for (const path of ["index.html", "links/1/index.html"]) {
    expect(await readFile(join(folder, path), "utf8")).toContain(
      `data-edition="${edition}" data-edition-bytes="${String(sum).padStart(12, "0")}"`,
    );
  }
});

test("is the same again, and another when a byte of any file changes", async () => {
  const first = await writeEdition(folder);
  expect(await writeEdition(folder)).toEqual(first);
  const names = new Set([first.edition]);
  for (const [path, text] of [
    ["style.css", "p{ }"],
    ["index.html", page("cover")],
    ["new.txt", ""],
  ] as const) {
    await writeFile(join(folder, path), text);
    names.add((await writeEdition(folder)).edition);
  }
  expect(names.size).toBe(4);
});

test("is another when two files change places, or one its name", async () => {
  await writeFile(join(folder, "one.txt"), "1");
  await writeFile(join(folder, "two.txt"), "2");
  const names = new Set([(await writeEdition(folder)).edition]);
  // The same contents in the same order of paths: only which path holds them differs.
  await rename(join(folder, "two.txt"), join(folder, "two-2.txt"));
  names.add((await writeEdition(folder)).edition);
  await writeFile(join(folder, "one.txt"), "2");
  await writeFile(join(folder, "two-2.txt"), "1");
  names.add((await writeEdition(folder)).edition);
  expect(names.size).toBe(3);
});

test("leaves out what no page shows", async () => {
  const kept = Object.keys((await writeEdition(folder)).files);
  for (const path of [".marram.json", "edition.json", "sw.js", "robots.txt", "sitemap.xml", "links/1/share.jpg"])
    await writeFile(join(folder, path), "x");
  expect(Object.keys((await writeEdition(folder)).files)).toEqual(kept);
});
