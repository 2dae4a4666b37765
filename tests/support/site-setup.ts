/**
 * Once before all browser tests: builds the demo guide into a folder of its own, as a club
 * would, for a path below a host's root; serves it; starts the browser.
 */
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { TestProject } from "vitest/node";
import { startServer } from "./browser-server.ts";
import { serve, type ServedSite } from "./site.ts";

declare module "vitest" {
  interface ProvidedContext {
    /** The demo, built and served. */
    site: ServedSite;
    /** Where the running browser listens. */
    browser: string;
  }
}

const PROJECT = fileURLToPath(new URL("../../", import.meta.url));
const BASE = "/guides/links/";

/** Names a content folder to test instead of the demo's. */
const CONTENT_VARIABLE = "MARRAM_TEST_CONTENT";

function build(folder: string): void {
  const content = process.env[CONTENT_VARIABLE] ?? join(PROJECT, "content");
  const { status, stdout, stderr, error } = spawnSync(
    process.execPath,
    [join(PROJECT, "src/commands/build.ts"), "--content", content, "--out", folder, "--base", BASE],
    { cwd: PROJECT, encoding: "utf8", env: { ...process.env, NODE_ENV: "production" } },
  );
  if (error !== undefined || status !== 0) {
    throw new Error(`The demo guide could not be built for the browser tests.\n${error?.message ?? ""}${stdout}${stderr}`);
  }
}

export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const folder = mkdtempSync(join(tmpdir(), "marram-site-"));
  const built = join(folder, "site");
  build(built);
  const { site, close } = await serve(built, BASE);
  const browser = await startServer();
  project.provide("site", site);
  project.provide("browser", browser.wsEndpoint());
  return async () => {
    await browser.close();
    await close();
    rmSync(folder, { recursive: true, force: true });
  };
}
