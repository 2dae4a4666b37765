/** Browser tests: the demo is built and served, and one browser started, once for all of them. */
import { fileURLToPath } from "node:url";
import { defineProject } from "vitest/config";

export default defineProject({
  test: {
    name: "browser",
    root: fileURLToPath(new URL("../../", import.meta.url)),
    include: ["tests/browser/**/*.test.ts"],
    globalSetup: ["tests/support/site-setup.ts"],
    // A project does not take this from the root.
    maxWorkers: 2,
    testTimeout: 60_000,
    // The setup builds the whole demo.
    hookTimeout: 120_000,
    // Maps are drawn in software here; a busy machine takes its time.
    expect: { poll: { timeout: 15_000 } },
  },
});
