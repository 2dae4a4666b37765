/** Sheets of paper printed to PDF by a browser that reaches nothing but our own fonts. */
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { chromium, type Browser } from "playwright-core";
import { findOrInstallBrowser, SETTLE_BY_HAND } from "../browser/install-browser.ts";
import { CommandError } from "../options.ts";
import { drawHalos } from "./halos.ts";

const PROJECT = fileURLToPath(new URL("../../../", import.meta.url));

/** An address that leads nowhere (RFC 2606): all that is asked of it is answered here. */
const ORIGIN = "http://paper.invalid";
const FONT = /^\/node_modules\/@fontsource\/[a-z0-9-]+\/files\/[a-z0-9-]+\.woff2$/;

const LETTERING = join(PROJECT, "node_modules/@fontsource/besley/files");

const SWITCHES = [
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  "--no-first-run",
  "--no-pings",
  "--font-render-hinting=none",
  "--force-color-profile=srgb",
];

/** The stylesheet of all paper; its fonts are found from where it lies. */
export const paperCss = async (): Promise<string> =>
  (await readFile(join(PROJECT, "src/styles/paper.css"), "utf8")).replaceAll(
    "../../node_modules/",
    `${ORIGIN}/node_modules/`,
  );

async function launch(tell: (message: string) => void): Promise<Browser> {
  const executablePath = findOrInstallBrowser(tell);
  if (executablePath === undefined)
    throw new CommandError(`Paper is printed by a browser, and none could be found or installed. ${SETTLE_BY_HAND}`);
  // Root has no sandbox to hide in; anybody else keeps it.
  const asRoot = process.getuid?.() === 0;
  return chromium.launch({ executablePath, args: [...SWITCHES, ...(asRoot ? ["--no-sandbox"] : [])] });
}

export interface Printed {
  readonly pdf: Uint8Array;
  /** Pages whose text runs over, by number, and by how much. */
  readonly overfull: readonly { readonly page: number; readonly mm: number }[];
}

/** Prints documents one after another in one browser. */
export async function printDocuments(
  documents: readonly string[],
  tell: (message: string) => void,
): Promise<Printed[]> {
  const browser = await launch(tell);
  try {
    const page = await browser.newPage();
    let html = "";
    await page.route("**/*", async (route) => {
      const { origin, pathname } = new URL(route.request().url());
      if (origin !== ORIGIN) return route.abort();
      if (pathname === "/") return route.fulfill({ contentType: "text/html; charset=utf-8", body: html });
      if (!FONT.test(pathname)) return route.abort();
      return route.fulfill({
        contentType: "font/woff2",
        headers: { "Access-Control-Allow-Origin": "*" },
        body: await readFile(join(PROJECT, pathname)),
      });
    });
    const printed: Printed[] = [];
    for (html of documents) {
      await page.goto(`${ORIGIN}/`, { waitUntil: "load" });
      await page.emulateMedia({ media: "print" });
      const overfull = await page.evaluate(async () => {
        await document.fonts.ready;
        return [...document.querySelectorAll<HTMLElement>(".leaf > .page")].flatMap((leaf, i) => {
          const over = Math.max(leaf.scrollHeight - leaf.clientHeight, leaf.scrollWidth - leaf.clientWidth);
          return over > 1 ? [{ page: i + 1, mm: (over * 25.4) / 96 }] : [];
        });
      });
      await drawHalos(page, LETTERING);
      const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true, tagged: true, outline: true });
      printed.push({ pdf, overfull });
    }
    return printed;
  } finally {
    await browser.close();
  }
}
