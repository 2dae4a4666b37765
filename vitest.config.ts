import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    // Two cores are what a small machine has.
    maxWorkers: 2,
    projects: [
      {
        test: {
          name: "unit",
          include: ["tests/**/*.test.ts"],
          exclude: ["tests/browser/**", "tests/commands/**"],
        },
      },
      {
        test: {
          // These build whole guides in processes of their own, which share caches in the project's folder.
          name: "commands",
          include: ["tests/commands/**/*.test.ts"],
          fileParallelism: false,
          testTimeout: 120_000,
          hookTimeout: 120_000,
        },
      },
      "tests/browser/vitest.config.ts",
    ],
  },
});
