import { chmodSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { BROWSER_VARIABLE, findBrowser } from "./find-browser.ts";

describe("finding a browser", () => {
  let folder = "";
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), "marram-browser-"));
    writeFileSync(join(folder, "chromium"), "#!/bin/sh\n");
    chmodSync(join(folder, "chromium"), 0o755);
    writeFileSync(join(folder, "not-runnable"), "");
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  test("the variable comes first", () => {
    const named = join(folder, "chromium");
    expect(findBrowser({ [BROWSER_VARIABLE]: named, PATH: "/nowhere" })).toBe(named);
  });

  test("a variable that names nothing runnable is refused, not passed over", () => {
    const named = join(folder, "not-runnable");
    expect(() => findBrowser({ [BROWSER_VARIABLE]: named })).toThrow(
      `${BROWSER_VARIABLE} is ${named}, which cannot be run`,
    );
    expect(() => findBrowser({ [BROWSER_VARIABLE]: join(folder, "missing") })).toThrow(/or unset it/);
  });

  test("then the path, in order", () => {
    expect(findBrowser({ PATH: `/nowhere:${folder}` })).toBe(join(folder, "chromium"));
    expect(findBrowser({ [BROWSER_VARIABLE]: "", PATH: folder })).toBe(join(folder, "chromium"));
  });
});
