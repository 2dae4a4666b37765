import { expect, test } from "vitest";
import { hole, plant, withClub } from "../fixtures/marked.ts";
import { run } from "../support/run.ts";

const CHECK = "src/commands/check.ts";

test("sound content", async () => {
  await withClub(async (folder) => {
    const { code, stdout, stderr } = await run(CHECK, ["--content", folder]);
    // The club is sound, but its tips are short and its card is plain: that is remarked on, by name.
    expect([code, stderr]).toEqual([0, ""]);
    expect(stdout).toContain("note: The tip has 16 words; 60 to 140 are read on a tee.");
    expect(stdout).toContain("(tip-length)");
    expect(stdout).toMatch(/\n\d+ remarks: 1 course, 9 holes\.\n$/);
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
      "CONTENT/course-1/holes/01-hole.md:4:6: par is "four": expected a whole number from 3 to 6, or one each for men and women. Write par: 4 or par: { men: 4, women: 4 }. (wrong-value)

      CONTENT/course-1/holes/02-hole.md:18:7: :carry[pnd]: …
      "
    `);
  });
});

test("a tip that the ground contradicts is an error, for people and for programs, and the build refuses it", async () => {
  await withClub(async (folder) => {
    // Hole 1 is a straight par 4 with a pond to carry and a bunker left.
    await plant(folder, [
      { file: hole(1), from: "It is :carry[pond]", to: "There is no water on this hole. It is :carry[pond]" },
    ]);
    const told = await run(CHECK, ["--content", folder]);
    expect(told.code).toBe(1);
    expect(told.stdout).toMatch(/01-hole\.md:18:10: The tip says "no water", but Pond .* \(tip-says-water\)/);
    const { code, stdout } = await run(CHECK, ["--content", folder, "--json"]);
    expect(code).toBe(1);
    const { version, counts, diagnostics } = JSON.parse(stdout) as {
      version: number;
      counts: Record<string, number>;
      diagnostics: { file: string; line: number; severity: string; rule: string }[];
    };
    expect([version, counts["error"]]).toEqual([1, 1]);
    expect(diagnostics.find(({ severity }) => severity === "error")).toMatchObject({
      file: "course-1/holes/01-hole.md",
      line: 18,
    });
    const built = await run("src/commands/build.ts", ["--content", folder, "--out", `${folder}-site`]);
    expect(built.code).toBe(1);
    expect(built.stderr).toContain("Nothing was built.");
  });
});

test("every rule can be looked up by its name", async () => {
  const { code, stdout } = await run(CHECK, ["--rules"]);
  expect(code).toBe(0);
  expect(stdout).toMatch(/^card-against-ground +warning +\S/m);
  expect(stdout.trim().split("\n").length).toBeGreaterThan(50);
});

test("an unknown option", async () => {
  const { code, stderr } = await run(CHECK, ["--contant", "x"]);
  expect(code).toBe(1);
  expect(stderr).toMatchInlineSnapshot(`
    "Unknown option '--contant'.

    Usage: npm run check -- [options]
      --content DIR   folder with club.yaml and the courses (default: content)
      --to-do         what is left until the guide can be published, as a list to work off
      --json          for programs: one JSON value on standard output
      --rules         list every rule by the name it is silenced with
    "
  `);
});
