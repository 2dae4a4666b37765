/**
 * How long tests wait, for every project the same. Nothing here is a measurement: a limit
 * only ends what would never end by itself, and is far beyond what a machine under a load of
 * twenty takes.
 */

/** For one thing awaited in a test: a page, a state, a child process's word. */
export const WAIT_LIMIT_MS = 600_000;

/** For one test, and for what comes before or after tests. */
const TEST_LIMIT_MS = 1_800_000;

/** What every project's settings begin with; a project does not take them from the root. */
export const PATIENT = {
  // Two cores are what a small machine has; one more for a test that only waits.
  maxWorkers: 3,
  testTimeout: TEST_LIMIT_MS,
  hookTimeout: TEST_LIMIT_MS,
  expect: { poll: { timeout: WAIT_LIMIT_MS } },
} as const;
