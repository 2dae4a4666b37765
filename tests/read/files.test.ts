/** Files as they come: encodings, line ends, sizes, links, strangers, and what is read of a sound one. */
import { mkdir, readFile, rename, rm, symlink, truncate, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { LARGEST_TEXT_BYTES } from "../../src/read/text-file.ts";
import { readContent } from "../../src/read/content.ts";
import { writeClub } from "../fixtures/club.ts";
import { hole, linesOf, placesOf, plant, withClub, writeInto } from "../fixtures/marked.ts";

const readText = (folder: string, file: string): Promise<string> => readFile(join(folder, file), "utf8");

describe("a sound club", () => {
  test("is read whole, without a word", async () => {
    await withClub(async (folder) => {
      const { club, diagnostics } = await readContent(folder);
      expect(diagnostics).toEqual([]);
      expect(club).toMatchObject({
        name: "Sample Links Golf Club",
        units: "yards",
        language: "en",
        contact: { email: undefined },
        cautions: [],
        courses: [
          {
            id: "course-1",
            name: "Course 1",
            surveyed: "2026-05-14",
            defaultTee: "white",
            corridorMetres: 25,
            ground: undefined,
          },
        ],
      });
      const [course] = club!.courses;
      expect(course!.holes.map(({ number }) => number)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9]);
      expect(course!.tees.map(({ id, colour }) => [id, colour])).toEqual([
        ["white", "#f4f4f0"],
        ["red", "#b3261e"],
      ]);
    });
  });

  test("has every value of a hole, lengths in metres, features with their lines", async () => {
    await withClub(async (folder) => {
      const { club } = await readContent(folder);
      const first = club!.courses[0]!.holes[0]!;
      expect(first).toMatchObject({
        number: 1,
        name: "Hole 1",
        slug: "01-hole",
        par: { men: 4, women: 4 },
        strokeIndex: { men: 1, women: 1 },
      });
      // The international yard is 0.9144 m (1959 agreement).
      expect(first.cardMetres).toEqual({ white: 361 * 0.9144, red: 328 * 0.9144 });
      expect(first.features.map(({ id, kind, tee, name }) => [id, kind, tee, name])).toEqual([
        ["line", "line-of-play", undefined, undefined],
        ["tee-white", "tee-marker", "white", undefined],
        ["tee-red", "tee-marker", "red", undefined],
        ["green", "green", undefined, undefined],
        ["bunker-left", "bunker", undefined, "Left bunker"],
        ["pond", "penalty-area-red", undefined, "Pond"],
        ["fairway", "fairway", undefined, undefined],
      ]);
      const lines = (await readText(folder, hole(1))).split("\n");
      for (const { id, place } of first.features) {
        expect(lines[place.line - 1]!.slice(place.column - 1)).toMatch(new RegExp(`^\\{ type: Feature, id: ${id},`));
      }
      expect(lines[first.tip.place.line - 1]).toBe(first.tip.markdown.split("\n")[0]);
    });
  });

  test("may write par and stroke index for each gender", async () => {
    await withClub(async (folder) => {
      await plant(folder, [
        { file: hole(1), from: "par: 4", to: "par: { men: 4, women: 5 }" },
        { file: hole(1), from: "strokeIndex: 1", to: "strokeIndex: { men: 1, women: 2 }" },
        { file: hole(2), from: "strokeIndex: 2", to: "strokeIndex: { men: 2, women: 1 }" },
      ]);
      const { club, diagnostics } = await readContent(folder);
      expect(diagnostics).toEqual([]);
      expect(club!.courses[0]!.holes[0]).toMatchObject({
        par: { men: 4, women: 5 },
        strokeIndex: { men: 1, women: 2 },
      });
    });
  });

  test("may have several courses", async () => {
    await withClub(async (folder) => {
      await writeClub(folder, { courses: 3, holes: 9 });
      const { club } = await readContent(folder);
      expect(club!.courses.map(({ id, holes }) => [id, holes.length])).toEqual([
        ["course-1", 9],
        ["course-2", 9],
        ["course-3", 9],
      ]);
    });
  });

  test("reads the same with a byte-order mark, with Windows line ends, and without a last line end", async () => {
    await withClub(async (folder) => {
      const plain = await readContent(folder);
      for (let n = 1; n <= 9; n++) {
        const text = await readText(folder, hole(n));
        await writeFile(join(folder, hole(n)), `\ufeff${text.trimEnd().replaceAll("\n", "\r\n")}`);
      }
      for (const file of ["club.yaml", "course-1/course.yaml"]) {
        await writeFile(join(folder, file), `\ufeff${(await readText(folder, file)).replaceAll("\n", "\r\n")}`);
      }
      expect(await readContent(folder)).toEqual(plain);
    });
  });

  test("keeps true places under a byte-order mark and Windows line ends", async () => {
    await withClub(async (folder) => {
      const places = await plant(folder, [
        { file: hole(1), from: "par: 4", to: "par: ¶four" },
        { file: hole(1), from: '"golf":"bunker"', to: '"golf":¶"bunkr"' },
        { file: hole(1), from: "It is :carry", to: "First line.\nThen ¶<b>bold</b> :carry" },
      ]);
      await writeFile(join(folder, hole(1)), `\ufeff${(await readText(folder, hole(1))).replaceAll("\n", "\r\n")}`);
      expect(placesOf((await readContent(folder)).diagnostics)).toEqual(places);
    });
  });

  test("is not disturbed by what else lies about", async () => {
    await withClub(async (folder) => {
      const before = await readContent(folder);
      for (const file of [
        "README.md",
        ".DS_Store",
        "course-1/README.md",
        "course-1/holes/README.md",
        "course-1/holes/.07-draft.md.swp",
        "course-1/holes/.DS_Store",
        "drafts/holes.txt",
        "pictures/a.jpg",
        "course-1/holes/notes.txt",
      ]) {
        await writeInto(folder, file, "anything");
      }
      expect(await readContent(folder)).toEqual(before);
    });
  });

  test("may write what only looks like HTML or a forbidden link", async () => {
    await withClub(async (folder) => {
      await plant(folder, [
        {
          file: hole(1),
          from: "It is :carry",
          to: "Write `<b>` or\n\n    <script>\n\nor 5 < 6 > 3 & so on, \\<i>, <https://example.org/>, <office@example.org>, [mail](mailto:office@example.org), [call](tel:+441632960000), [next](../2/), [here](#card), [a](https://example.org/?a=1&b=2). It is :carry",
        },
      ]);
      expect((await readContent(folder)).diagnostics).toEqual([]);
    });
  });

  test("may name its pages by number alone", async () => {
    await withClub(async (folder) => {
      await rename(join(folder, hole(7)), join(folder, "course-1/holes/7.md"));
      const { club, diagnostics } = await readContent(folder);
      expect(diagnostics).toEqual([]);
      expect(club!.courses[0]!.holes[6]!.slug).toBe("7");
    });
  });
});

describe("files that cannot be read", () => {
  const lines = async (change: (folder: string) => Promise<void>): Promise<string[]> =>
    withClub(async (folder) => {
      await change(folder);
      return linesOf((await readContent(folder)).diagnostics);
    });

  test("empty, or white space only", async () => {
    expect(
      await lines(async (folder) => {
        await writeInto(folder, hole(1), "");
        await writeInto(folder, hole(2), " \n\n");
        await writeInto(folder, "club.yaml", "");
      }),
    ).toMatchInlineSnapshot(`
      [
        "club.yaml:1:1: The file is empty.",
        "course-1/holes/01-hole.md:1:1: The file is empty.",
        "course-1/holes/02-hole.md:1:1: The file is empty.",
      ]
    `);
  });

  test("without front matter, or with one that is never closed", async () => {
    expect(
      await lines(async (folder) => {
        await writeInto(folder, hole(1), "# Harbour Light\n\nAim left.\n");
        await writeInto(folder, hole(2), "---\nhole: 2\nname: Two\n");
      }),
    ).toMatchInlineSnapshot(`
      [
        "course-1/holes/01-hole.md:1:1: The file starts with "# Harbour Light": expected the line --- that opens the front matter. Write --- on the first line, the fields below it, and --- again before the tip.",
        "course-1/holes/02-hole.md:1:1: The front matter that opens here is never closed. Write --- on a line of its own after the last field, before the tip.",
      ]
    `);
  });

  test("empty front matter", async () => {
    expect(await lines((folder) => writeInto(folder, hole(1), "---\n---\nAim left.\n"))).toMatchInlineSnapshot(`
      [
        "course-1/holes/01-hole.md:2:1: The file is empty: expected a group with the fields hole, name, par, strokeIndex, card, aim, photos, notices, silence, placeholder, proposed, features.",
      ]
    `);
  });

  test("not UTF-8: the very character", async () => {
    expect(
      await lines(async (folder) => {
        // "é" in Latin-1, after a sound "é" in UTF-8 on the same line.
        await writeInto(
          folder,
          hole(1),
          Buffer.concat([Buffer.from("---\nhole: 1\nname: Café "), Buffer.from([0xe9]), Buffer.from("\n---\n")]),
        );
        await writeInto(folder, hole(2), Buffer.from("\ufeff---\nhole: 2\n", "utf16le"));
        await writeInto(folder, hole(3), "---\nhole: 3\nname: A\u0000B\n---\n");
        await writeInto(folder, hole(4), "---\rhole: 4\r---\r");
      }),
    ).toMatchInlineSnapshot(`
      [
        "course-1/holes/01-hole.md:3:12: This is not UTF-8 text. Save the file again with the encoding UTF-8.",
        "course-1/holes/02-hole.md:1:1: The file is in UTF-16: expected UTF-8. Save it again with the encoding UTF-8.",
        "course-1/holes/03-hole.md:3:8: A control character (code 0) stands here. Remove it.",
        "course-1/holes/04-hole.md:1:4: A line ends with a carriage return alone: expected a line feed. Save the file with the line ends of Unix or Windows.",
      ]
    `);
  });

  test("50 MB", async () => {
    expect(
      await lines(async (folder) => {
        await truncate(join(folder, hole(1)), 50_000_000);
        await truncate(join(folder, "course-1/course.yaml"), LARGEST_TEXT_BYTES + 1);
      }),
    ).toMatchInlineSnapshot(`
      [
        "course-1/course.yaml:1:1: The file is 4.0 MB: expected at most 4.0 MB of text. Simplify its outlines to a vertex every metre or two, and keep pictures in photos/.",
        "course-1/holes/01-hole.md:1:1: The file is 50 MB: expected at most 4.0 MB of text. Simplify its outlines to a vertex every metre or two, and keep pictures in photos/.",
      ]
    `);
  });

  test("links and folders", async () => {
    expect(
      await lines(async (folder) => {
        await rm(join(folder, hole(1)));
        await symlink("/etc/hostname", join(folder, hole(1)));
        await rm(join(folder, hole(2)));
        await mkdir(join(folder, hole(2)));
        await symlink(join(folder, "course-1"), join(folder, "course-2"));
      }),
    ).toMatchInlineSnapshot(`
      [
        "course-1/holes/01-hole.md:1:1: The file is a link to another place, and content is only read from its own folder. Put the file itself here.",
        "course-1/holes/02-hole.md:1:1: A folder has this name: expected a text file. Rename the folder.",
        "course-2/course.yaml:1:1: The folder course-2/ is a link to another place, and content is only read from its own folder. Put the folder itself here.",
      ]
    `);
  });

  test.each(["holes", "photos", "ground"])("a folder %s that is a link out of the content", async (name) => {
    expect(
      await lines(async (folder) => {
        await rm(join(folder, "course-1", name), { recursive: true, force: true });
        await mkdir(join(folder, "elsewhere"));
        await symlink(join(folder, "elsewhere"), join(folder, "course-1", name));
      }),
    ).toEqual([
      `course-1/course.yaml:1:1: The folder course-1/${name}/ is a link to another place, and content is only read from its own folder. Put the folder itself here.`,
    ]);
  });

  test("a page whose name is not read is an error, so that no hole goes missing; notes beside the pages may stay", async () => {
    const severities = await withClub(async (folder) => {
      await writeInto(folder, "course-1/holes/10-Extra.md", "Any text");
      await writeInto(folder, "course-1/holes/extra.md", "---\nhole: 10\n---\n");
      await writeInto(folder, "course-1/holes/back/10-extra.md", "---");
      await writeInto(folder, "course-1/holes/greenkeeper.md", "Mow on Mondays.");
      await writeInto(folder, "course-1/holes/README.md", "Mow on Mondays.");
      return (await readContent(folder)).diagnostics.map(({ file, severity }) => [file, severity]);
    });
    expect(severities).toEqual([
      ["course-1/holes/10-Extra.md", "error"],
      ["course-1/holes/back/10-extra.md", "error"],
      ["course-1/holes/extra.md", "error"],
      ["course-1/holes/greenkeeper.md", "warning"],
    ]);
  });

  test.each(["Course.yaml", "COURSE.YML"])("a course whose %s is all there is", async (name) => {
    const found = await withClub(async (folder) => {
      await mkdir(join(folder, "second"));
      await writeInto(folder, `second/${name}`, "name: Second");
      return linesOf((await readContent(folder)).diagnostics);
    });
    expect(found[0]).toBe(
      `second/course.yaml:1:1: There is no course.yaml in second/: expected the course's name and tee sets in it. Rename ${name} to course.yaml.`,
    );
  });

  test("names that are not read", async () => {
    expect(
      await lines(async (folder) => {
        await writeInto(folder, "course-1/holes/10-extra.markdown", "---");
        await writeInto(folder, "course-1/holes/11 Burn's Reach.md", "---");
        await writeInto(folder, "course-1/holes/Skerry.md", "---");
        await writeInto(folder, "course-1/holes/12.txt", "---");
      }),
    ).toMatchInlineSnapshot(`
      [
        "course-1/holes/10-extra.markdown:1:1: The file is not read: a hole page is named with lower-case words joined by hyphens and ends in .md. Rename it to 10-extra.md.",
        "course-1/holes/11 Burn's Reach.md:1:1: The file is not read: a hole page is named with lower-case words joined by hyphens and ends in .md. Rename it to 11-burn-s-reach.md.",
        "course-1/holes/12.txt:1:1: The file is not read: a hole page is named with lower-case words joined by hyphens and ends in .md. Rename it to 12.md.",
        "course-1/holes/Skerry.md:1:1: The file is not read: a hole page's name starts with the hole's number. Rename it, for example to 07-skerry.md.",
      ]
    `);
  });
});

describe("folders", () => {
  const linesFor = async (change: (folder: string) => Promise<void>): Promise<string[]> =>
    withClub(async (folder) => {
      await change(folder);
      return linesOf((await readContent(folder)).diagnostics).map((line) => line.replaceAll(folder, "FOLDER"));
    });

  test("without a club, a course, or anything", async () => {
    expect(await linesFor(async (folder) => rm(join(folder, "club.yaml")))).toMatchInlineSnapshot(`
      [
        "club.yaml:1:1: There is no club.yaml in the content folder. Write club.yaml with at least name: and the club's name.",
      ]
    `);
    expect(await linesFor(async (folder) => rename(join(folder, "club.yaml"), join(folder, "club.yml"))))
      .toMatchInlineSnapshot(`
      [
        "club.yaml:1:1: There is no club.yaml in the content folder. Rename club.yml to club.yaml.",
      ]
    `);
    expect(await linesFor(async (folder) => rm(join(folder, "course-1"), { recursive: true }))).toMatchInlineSnapshot(`
      [
        "club.yaml:1:1: There is no course folder beside club.yaml. Make a folder with the course's address as its name, and write course.yaml and holes/01-name.md in it.",
      ]
    `);
    expect(await linesFor(async (folder) => rm(folder, { recursive: true }))).toMatchInlineSnapshot(`
      [
        "club.yaml:1:1: The content folder FOLDER cannot be read: it is not there. Name the folder that holds club.yaml.",
      ]
    `);
  });

  test("a course without course.yaml, without pages, or with a name that is no address", async () => {
    expect(
      await linesFor(async (folder) =>
        rename(join(folder, "course-1/course.yaml"), join(folder, "course-1/course.yml")),
      ),
    ).toMatchInlineSnapshot(`
      [
        "course-1/course.yaml:1:1: There is no course.yaml in course-1/: expected the course's name and tee sets in it. Rename course.yml to course.yaml.",
      ]
    `);
    expect(await linesFor(async (folder) => rm(join(folder, "course-1/holes"), { recursive: true })))
      .toMatchInlineSnapshot(`
      [
        "course-1/course.yaml:1:1: The folder course-1/holes/ cannot be read: it is not there. Write a page for each hole, such as course-1/holes/01-name.md.",
      ]
    `);
    expect(await linesFor(async (folder) => rename(join(folder, "course-1"), join(folder, "Die Düne"))))
      .toMatchInlineSnapshot(`
      [
        "Die Düne/course.yaml:1:1: The course's folder is named "Die Düne", which is part of its address: expected lower-case words joined by hyphens. Rename it to die-dune.",
      ]
    `);
  });

  test("a hole that is missing, and one that is there twice", async () => {
    expect(
      await linesFor(async (folder) => {
        await rm(join(folder, hole(4)));
        await rm(join(folder, hole(5)));
      }),
    ).toMatchInlineSnapshot(`
      [
        "course-1/course.yaml:1:1: Holes 4 and 5 of 9 are missing. Write holes/04-name.md and holes/05-name.md.",
      ]
    `);
    expect(
      await linesFor(async (folder) =>
        writeInto(folder, "course-1/holes/04-again.md", await readText(folder, hole(4))),
      ),
    ).toMatchInlineSnapshot(`
      [
        "course-1/holes/04-hole.md:2:7: Hole 4 is already in course-1/holes/04-again.md. Write the number of this hole, or remove one of the files.",
      ]
    `);
  });

  test("a last hole that is missing shows in the count and the stroke index", async () => {
    await withClub(async (folder) => {
      await plant(folder, [
        { file: hole(8), from: "strokeIndex: 8", to: "strokeIndex: 9" },
        { file: hole(9), from: "strokeIndex: 9", to: "strokeIndex: 8" },
      ]);
      await rm(join(folder, hole(9)));
      const { diagnostics } = await readContent(folder);
      expect(diagnostics.map(({ rule, severity }) => [rule, severity])).toEqual([
        ["hole-count", "warning"],
        ["stroke-index-range", "error"],
      ]);
    });
  });
});

describe("photos", () => {
  const JPEG = Buffer.from([0xff, 0xd8, 0xff, 0xd9]);
  const photo = (file: string): { file: string; from: string; to: string } => ({
    file: hole(1),
    from: "card:",
    to: `photos:\n  - { file: ${file}, alt: "From the tee" }\ncard:`,
  });

  test("are named from the content folder", async () => {
    await withClub(async (folder) => {
      await writeInto(folder, "course-1/photos/01/tee.jpg", JPEG);
      await plant(folder, [photo("01/tee.jpg")]);
      const { club, diagnostics } = await readContent(folder);
      expect(diagnostics).toEqual([]);
      expect(club!.courses[0]!.holes[0]!.photos).toEqual([
        {
          file: "course-1/photos/01/tee.jpg",
          alt: "From the tee",
          caption: undefined,
          credit: undefined,
          focus: undefined,
          taken: undefined,
          place: { file: hole(1), line: 7, column: 13 },
        },
      ]);
    });
  });

  test.each<[string, string, (folder: string) => Promise<void>, string]>([
    [
      "another case",
      "Tee.jpg",
      (folder) => writeInto(folder, "course-1/photos/tee.jpg", JPEG),
      'There is no "Tee.jpg" in course-1/photos/. Did you mean tee.jpg?',
    ],
    [
      "an empty file",
      "tee.jpg",
      (folder) => writeInto(folder, "course-1/photos/tee.jpg", ""),
      'The photo "tee.jpg" is empty. Copy it again.',
    ],
    [
      "a folder",
      "tee.jpg",
      (folder) => writeInto(folder, "course-1/photos/tee.jpg/x", "x"),
      '"tee.jpg" is a folder: expected a photo.',
    ],
    [
      "a link",
      "tee.jpg",
      async (folder) => {
        await mkdir(join(folder, "course-1/photos"));
        await symlink(join(folder, "club.yaml"), join(folder, "course-1/photos/tee.jpg"));
      },
      '"tee.jpg" is a link to another place. Put the photo itself into course-1/photos/.',
    ],
    [
      "a folder that is a link",
      "deep/tee.jpg",
      async (folder) => {
        await writeInto(folder, "elsewhere/tee.jpg", JPEG);
        await mkdir(join(folder, "course-1/photos"));
        await symlink(join(folder, "elsewhere"), join(folder, "course-1/photos/deep"));
      },
      '"deep/tee.jpg" is a link to another place. Put the photo itself into course-1/photos/.',
    ],
  ])("%s is refused", async (_, name, change, message) => {
    await withClub(async (folder) => {
      await change(folder);
      await plant(folder, [photo(name)]);
      expect((await readContent(folder)).diagnostics.map((diagnostic) => diagnostic.message)).toEqual([message]);
    });
  });
});

describe("one run", () => {
  test("tells of mistakes in every file, in reading order, and keeps what is sound", async () => {
    await withClub(async (folder) => {
      const expected = await plant(folder, [
        { file: "club.yaml", from: "units: yards", to: "units: ¶feet" },
        { file: "course-1/course.yaml", from: "sources: [", to: "sources: ¶7 # [" },
        { file: hole(2), from: "par: 4", to: "par: ¶four" },
        { file: hole(2), from: '"golf":"bunker"', to: '"golf":¶"bunkr"' },
        { file: hole(2), from: "It is :carry", to: "¶<b>It</b> is :carry" },
        { file: hole(5), from: "name: Hole 5", to: "name: ¶[]" },
        { file: hole(9), from: "hole: 9", to: "hole: ¶-9" },
      ]);
      const { club, sound, diagnostics } = await readContent(folder);
      expect(placesOf(diagnostics)).toEqual(expected);
      const order = diagnostics.map(({ file, line }) => `${file}:${String(line).padStart(4, "0")}`);
      expect(order).toEqual([...order].sort());
      expect(club).toBeUndefined();
      expect(sound).toEqual([]);
    });
  });

  test("offers the holes that are in order to later checks", async () => {
    await withClub(async (folder) => {
      await plant(folder, [{ file: hole(2), from: "par: 4", to: "par: four" }]);
      const { club, sound } = await readContent(folder);
      expect(club).toBeUndefined();
      expect(sound[0]!.holes.map(({ number }) => number)).toEqual([1, 3, 4, 5, 6, 7, 8, 9]);
    });
  });
});

describe("attacks", () => {
  test("aliases that multiply are refused at once", async () => {
    await withClub(async (folder) => {
      const bomb = [
        "a: &a [x,x,x,x,x,x,x,x,x]",
        ...Array.from("bcdefghij", (c, i) => `${c}: &${c} [${Array(9).fill(`*${"abcdefghij"[i]}`).join(",")}]`),
      ].join("\n");
      await writeInto(folder, "club.yaml", `${bomb}\nname: X\n`);
      expect(linesOf((await readContent(folder)).diagnostics)).toEqual([
        "club.yaml:1:1: Aliases (*name) multiply to more than 100 copies. Write the values out instead.",
      ]);
    });
  });

  test("brackets nested a hundred thousand deep are refused", async () => {
    await withClub(async (folder) => {
      await writeInto(folder, "club.yaml", `name: ${"[".repeat(100_000)}`);
      expect((await readContent(folder)).diagnostics[0]).toMatchObject({ file: "club.yaml", severity: "error" });
    });
  });

  test("names of JavaScript's own are only names", async () => {
    await withClub(async (folder) => {
      await plant(folder, [
        { file: "club.yaml", from: "units: yards", to: "units: yards\n¶__proto__: { name: X }\n¶constructor: X" },
        { file: hole(1), from: "red: 328 }", to: "red: 328, ¶__proto__: 300, ¶toString: 200 }" },
        { file: hole(2), from: '"golf":"bunker"', to: "golf: ¶constructor" },
      ]).then(async (expected) => {
        expect(placesOf((await readContent(folder)).diagnostics)).toEqual(expected);
      });
    });
  });
});
