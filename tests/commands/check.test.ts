import { expect, test } from "vitest";
import { hole, plant, withClub } from "../fixtures/marked.ts";
import { run } from "../support/run.ts";

const CHECK = "src/commands/check.ts";

test("sound content", async () => {
  await withClub(async (folder) => {
    expect(await run(CHECK, ["--content", folder])).toEqual({ code: 0, stdout: "No mistakes: 1 course, 9 holes.\n", stderr: "" });
  });
});

test("content with a mistake in its figures and one in its fields", async () => {
  await withClub(async (folder) => {
    await plant(folder, [
      { file: hole(1), from: "par: 4", to: "par: four" },
      { file: hole(2), from: ":carry[pond]", to: ":carry[pnd]" },
    ]);
    const { code, stdout, stderr } = await run(CHECK, ["--content", folder]);
    expect(code).toBe(1);
    expect(stderr).toBe("2 mistakes in 2 files.\n");
    // How figures are told off is held by the tests of tips.
    expect(stdout.replaceAll(folder, "CONTENT").replace(/(:carry\[\w+\]:) .*/, "$1 …")).toMatchInlineSnapshot(`
      "CONTENT/course-1/holes/01-hole.md:4:6: par is "four": expected a whole number from 3 to 6, or one each for men and women. Write par: 4 or par: { men: 4, women: 4 }.

      CONTENT/course-1/holes/02-hole.md:18:7: :carry[pnd]: …
      "
    `);
  });
});

test("an unknown option", async () => {
  const { code, stderr } = await run(CHECK, ["--contant", "x"]);
  expect(code).toBe(1);
  expect(stderr).toMatchInlineSnapshot(`
    "Unknown option '--contant'.

    Usage: npm run check -- [options]
      --content DIR   folder with club.yaml and the courses (default: content)
    "
  `);
});
