/**
 * Makes sure the browser tests have a browser: finds one, or installs Debian's chromium,
 * or says what to do. Run before the tests: `node tests/support/ensure-browser.ts`.
 */
import { findOrInstallBrowser, SETTLE_BY_HAND } from "../../src/commands/browser/install-browser.ts";

const browser = findOrInstallBrowser((message) => console.log(message));
if (browser === undefined) {
  console.error(`The browser tests need a browser and none could be installed. ${SETTLE_BY_HAND}`);
  process.exitCode = 1;
} else {
  console.log(`Browser for the tests: ${browser}`);
}
