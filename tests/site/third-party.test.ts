/** The notices of what a guide ships of others' work. */
import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { build } from "vite";
import { expect, test } from "vitest";
import { licenceNotices, packageFolder, shippedPackages } from "../../src/site/build/third-party.ts";
import { PROJECT } from "../support/run.ts";

test.each([
  ["/a/node_modules/@fontsource/besley/files/x.woff2?url", "/a/node_modules/@fontsource/besley"],
  ["/a/node_modules/maplibre-gl/node_modules/pbf/index.js", "/a/node_modules/maplibre-gl/node_modules/pbf"],
  ["node_modules/@fontsource/besley/files/x.woff2", "node_modules/@fontsource/besley"],
  ["C:\\a\\node_modules\\pbf\\index.js", "C:\\a\\node_modules\\pbf"],
  ["\0/a/node_modules/pbf/index.js", "/a/node_modules/pbf"],
  ["/a/src/islands/settings.ts", undefined],
] as const)("%j lies in %j", (file, folder) => {
  expect(packageFolder(file)).toBe(folder);
});

test("each package stands once, with its version and its licence's own text, and the map library with what it has within", () => {
  const folders = ["@fontsource/besley", "@fontsource-variable/source-sans-3", "maplibre-gl", "maplibre-gl"].map(
    (name) => join(PROJECT, "node_modules", name),
  );
  const text = licenceNotices(folders);
  // SIL Open Font License 1.1, condition 2: each copy contains the copyright notice and this licence.
  expect(text.match(/SIL OPEN FONT LICENSE Version 1\.1/g)?.length).toBeGreaterThanOrEqual(2);
  expect(text.match(/^maplibre-gl \d+\.\d+\.\d+ \(BSD-3-Clause\)$/gm)).toHaveLength(1);
  for (const within of ["earcut", "gl-matrix", "kdbush", "pbf"])
    expect(text).toMatch(new RegExp(`^${within} \\d+\\.\\d+\\.\\d+ `, "m"));
  expect(text).not.toContain("@types/");
  expect(text).not.toContain(PROJECT);
});

test("what is shipped is heard of from the bundle: scripts, fonts that scripts ask for, fonts of style sheets", async () => {
  // Within the project, from where packages are found.
  await mkdir(join(PROJECT, ".astro"), { recursive: true });
  const folder = await mkdtemp(join(PROJECT, ".astro/third-party-"));
  try {
    await writeFile(
      join(folder, "page.css"),
      '@font-face { font-family: A; src: url("@fontsource/source-sans-3/files/source-sans-3-latin-400-normal.woff2"); }',
    );
    await writeFile(
      join(folder, "page.js"),
      'import "./page.css"; import font from "@fontsource/besley/files/besley-latin-600-normal.woff2?url"; import earcut from "earcut"; console.log(font, earcut);',
    );
    const shipped = new Set<string>();
    await build({
      root: PROJECT,
      configFile: false,
      logLevel: "silent",
      publicDir: false,
      plugins: [shippedPackages(shipped)],
      build: {
        outDir: join(folder, "out"),
        assetsInlineLimit: 0,
        rolldownOptions: { input: join(folder, "page.js") },
      },
    });
    expect([...shipped].sort()).toEqual(
      ["@fontsource/besley", "@fontsource/source-sans-3", "earcut"].map((name) => join(PROJECT, "node_modules", name)),
    );
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
});
