/** Where a guide is served, as somebody writes it at the keyboard. */
import { tidyBase } from "../site/addresses/routes.ts";
import { CommandError } from "./options.ts";

/** The path a guide lies under, one slash at each end. */
export function readBase(text: string): string {
  if (!text.startsWith("/") || !/^[A-Za-z0-9._~/-]*$/.test(text) || text.split("/").includes("..")) {
    throw new CommandError(
      `--base is ${JSON.stringify(text)}: expected a path of letters, digits and hyphens that starts with a slash. Write --base /guide/.`,
    );
  }
  return tidyBase(text);
}

/** A site's origin. */
export function readSite(text: string): string {
  const url = URL.canParse(text) ? new URL(text) : undefined;
  if (
    url === undefined ||
    !["https:", "http:"].includes(url.protocol) ||
    url.pathname !== "/" ||
    url.search !== "" ||
    url.hash !== ""
  ) {
    throw new CommandError(
      `--site is ${JSON.stringify(text)}: expected an address without a path. Write --site https://example.org, and the path as --base /guide/.`,
    );
  }
  return url.origin;
}
