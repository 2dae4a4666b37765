import { defineConfig } from "vitest/config";
import { PATIENT } from "./tests/support/patience.ts";

export default defineConfig({
  test: {
    maxWorkers: PATIENT.maxWorkers,
    projects: [
      {
        test: {
          ...PATIENT,
          name: "unit",
          include: ["tests/**/*.test.ts"],
          exclude: ["**/node_modules/**", "tests/browser/**", "tests/commands/**", "tests/film/**"],
        },
      },
      // Whole builds in processes of their own, each in a folder of its own.
      {
        test: {
          ...PATIENT,
          name: "commands",
          include: ["tests/commands/**/*.test.ts"],
          globalSetup: ["tests/support/demo-setup.ts"],
        },
      },
      "tests/browser/vitest.config.ts",
    ],
  },
});
