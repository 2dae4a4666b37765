/** The tests that a folder's mutants are run against: its own, and what is held against the outside beside them. */
import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";
import { PATIENT } from "../support/patience.ts";
import { FOLDER_VARIABLE, testsOf } from "./folders.ts";

export default defineConfig({
  test: {
    ...PATIENT,
    name: "mutation",
    root: fileURLToPath(new URL("../../", import.meta.url)),
    include: testsOf(process.env[FOLDER_VARIABLE] ?? "").map((part) => `tests/${part}`),
  },
});
