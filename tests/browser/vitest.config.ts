/** Browser tests: the built demo is served, and one browser started, once for all of them. */
import { fileURLToPath } from "node:url";
import { defineProject } from "vitest/config";
import { PATIENT } from "../support/patience.ts";

export default defineProject({
  test: {
    ...PATIENT,
    name: "browser",
    root: fileURLToPath(new URL("../../", import.meta.url)),
    include: ["tests/browser/**/*.test.ts"],
    globalSetup: ["tests/support/site-setup.ts"],
  },
});
