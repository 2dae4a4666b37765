/** `npm run test:film`: films in both formats and in every language, from the same built demo. */
import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";
import { PATIENT } from "../support/patience.ts";

export default defineConfig({
  test: {
    ...PATIENT,
    name: "film",
    root: fileURLToPath(new URL("../../", import.meta.url)),
    include: ["tests/film/**/*.test.ts"],
    globalSetup: ["tests/support/demo-setup.ts"],
  },
});
