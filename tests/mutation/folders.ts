/** Which folders are mutated, and which tests are to notice. */

/** Tells the test runner which folder's tests are wanted. */
export const FOLDER_VARIABLE = "MARRAM_MUTATED";

/**
 * By folder of the source. Tests that take long and say little of a single line stay out: the demo, whole
 * corpora of GDAL.
 */
const TESTS: Readonly<Record<string, readonly string[]>> = {
  geo: ["geo/*.test.ts", "course/ring.test.ts"],
  terrain: ["terrain/*.test.ts"],
  flight: ["flight/*.test.ts"],
  measure: ["measure/*.test.ts"],
  check: [
    "check/{around,claim-kinds,claims,dead-link,figures,format,ground,photos,rules,silence,tip-words,tips}.test.ts",
    "check/german/*.test.ts",
  ],
};

export const FOLDERS: readonly string[] = Object.keys(TESTS);

/** @throws Error for a folder that is not mutated */
export function testsOf(folder: string): readonly string[] {
  const found = TESTS[folder];
  if (found === undefined)
    throw new Error(`${JSON.stringify(folder)} is not mutated. Choose from ${FOLDERS.join(", ")}.`);
  return found;
}
