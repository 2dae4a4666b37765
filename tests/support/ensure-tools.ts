/**
 * Makes sure the tests have what they need beside the packages: a browser, and the programs
 * of others that ours are held against. Installs what is missing from Debian, or says what
 * to do. Run before the tests: `node tests/support/ensure-tools.ts`.
 */
import { findOrInstallBrowser, SETTLE_BY_HAND } from "../../src/commands/browser/install-browser.ts";
import { needAllTools } from "./tools.ts";

const browser = findOrInstallBrowser((message) => console.log(message));
if (browser === undefined) {
  console.error(`The browser tests need a browser and none could be installed. ${SETTLE_BY_HAND}`);
  process.exitCode = 1;
} else {
  console.log(`Browser for the tests: ${browser}`);
  needAllTools();
}
