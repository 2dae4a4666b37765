/** The finder of browsers, for tests: the same that our commands print with. */
export { BROWSER_VARIABLE, findBrowser } from "../../src/commands/browser/find-browser.ts";
