/**
 * The notices of what a published guide ships of others' work (fonts, the map library):
 * their licences ask that copies carry them. What is shipped is taken from the bundle
 * itself, so nothing has to be listed by hand.
 */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { writeFile } from "node:fs/promises";
import { dirname, join, resolve } from "node:path";
import type { Plugin } from "vite";

/** At the guide's root; every page leads to it. */
export const LICENCES_FILE = "licences.txt";

/** Packages that come with their own packages inside them, which no bundler sees. */
const COME_WHOLE = ["maplibre-gl"];

interface Manifest {
  readonly name: string;
  readonly version: string;
  readonly license?: string;
  readonly homepage?: string;
  readonly dependencies?: Readonly<Record<string, string>>;
}

const manifestOf = (folder: string): Manifest =>
  JSON.parse(readFileSync(join(folder, "package.json"), "utf8")) as Manifest;

/** `…/node_modules/@fontsource/besley` of a file in it; undefined for our own. */
export function packageFolder(file: string): string | undefined {
  return /^(?:.*[\\/])?node_modules[\\/](?:@[^\\/]+[\\/])?[^\\/]+(?=[\\/])/.exec(
    file.replace(/^\0/, "").split("?")[0]!,
  )?.[0];
}

/** Hears of every file that goes to the browser. */
export function shippedPackages(folders: Set<string>): Plugin {
  return {
    name: "marram-shipped-packages",
    generateBundle(_, bundle) {
      for (const part of Object.values(bundle)) {
        // Pages are made by the server's code, which stays here; what they show of fonts and pictures goes out.
        if (part.type === "chunk" && this.environment.name !== "client") continue;
        for (const file of part.type === "chunk" ? part.moduleIds : part.originalFileNames) {
          const folder = packageFolder(file);
          // Assets are named from the project's folder.
          if (folder !== undefined) folders.add(resolve(this.environment.config.root, folder));
        }
      }
    },
  };
}

/** Where a package finds another: beside it, or in a folder above. */
function resolved(from: string, name: string): string | undefined {
  for (let at = from; ; at = dirname(at)) {
    const folder = join(at, "node_modules", name);
    if (existsSync(join(folder, "package.json"))) return folder;
    if (dirname(at) === at) return undefined;
  }
}

function withInnards(folders: Iterable<string>): string[] {
  const all = new Set<string>();
  const add = (folder: string, whole: boolean): void => {
    if (all.has(folder)) return;
    all.add(folder);
    const { name, dependencies = {} } = manifestOf(folder);
    if (!whole && !COME_WHOLE.includes(name)) return;
    for (const one of Object.keys(dependencies)) {
      const found = one.startsWith("@types/") ? undefined : resolved(folder, one);
      if (found !== undefined) add(found, true);
    }
  };
  for (const folder of folders) add(folder, false);
  return [...all];
}

const isNotice = (name: string): boolean => /^(?:licen[cs]e|copying|ofl|notice)(?:[.-].*)?$/i.test(name);

/** Each package with its version and the licence texts that lie in it. */
export function licenceNotices(folders: Iterable<string>): string {
  const parts = withInnards(folders)
    .map((folder) => ({ folder, manifest: manifestOf(folder) }))
    .filter(
      ({ manifest: { name, version } }, i, all) =>
        all.findIndex((one) => one.manifest.name === name && one.manifest.version === version) === i,
    )
    .sort((a, b) => (a.manifest.name < b.manifest.name ? -1 : 1))
    .map(({ folder, manifest: { name, version, license, homepage } }) => {
      const texts = readdirSync(folder)
        .filter(isNotice)
        .sort()
        .map((file) => readFileSync(join(folder, file), "utf8").replace(/\r\n?/g, "\n").trim());
      return [
        `${name} ${version}${license === undefined ? "" : ` (${license})`}`,
        homepage,
        "",
        ...(texts.length > 0 ? texts : [`Licence: ${license ?? "not stated"}`]),
      ]
        .filter((line) => line !== undefined)
        .join("\n");
    });
  const rule = `\n\n${"-".repeat(72)}\n\n`;
  return [
    "This guide carries the following work of others, each under its own licence.\nWhere map data comes from others, the page about the figures names it under its sources.",
    ...parts,
  ]
    .join(rule)
    .concat("\n");
}

export const writeLicences = (folder: string, packages: Iterable<string>): Promise<void> =>
  writeFile(join(folder, LICENCES_FILE), licenceNotices(packages));
