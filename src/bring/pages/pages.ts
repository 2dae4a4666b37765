/** The course as its files stand: what is on each page, and the text it is written in. */
import { join } from "node:path";
import { formatDiagnostic } from "../../course/diagnostic.ts";
import { checkFeatures, type CheckedFeature } from "../../course/schema/features.ts";
import { valueAt } from "../../course/schema/issues.ts";
import { writtenTees } from "../../course/schema/agreement.ts";
import { splitFrontMatter } from "../../read/front-matter.ts";
import { HOLE_FILE } from "../../read/hole-file.ts";
import { listFolder } from "../../read/listing.ts";
import { readTextFile } from "../../read/text-file.ts";
import { parseYaml } from "../../read/yaml-source.ts";
import { EMPTY_LEDGER, LEDGER_FILE, readLedger, type Ledger } from "./ledger.ts";
import { BringError } from "../sources/refusal.ts";

/** A hole by its number, or what the course keeps for all of them. */
export type PageAt = number | "course";

export interface Page {
  readonly at: PageAt;
  /** Relative to the content folder. */
  readonly file: string;
  readonly text: string;
  /** Where its YAML begins and ends in the text. */
  readonly start: number;
  readonly end: number;
  readonly value: unknown;
  readonly features: readonly CheckedFeature[];
  /** Every id written on it, sound or not. */
  readonly ids: readonly string[];
}

export interface CoursePages {
  readonly course: Page;
  readonly holes: readonly Page[];
  readonly tees: readonly { readonly id: string; readonly name: string }[];
  readonly ledger: Ledger;
}

export const allPages = ({ course, holes }: CoursePages): readonly Page[] => [course, ...holes];

/** A page of text that was read already. */
export function pageOf(at: PageAt | undefined, file: string, text: string, start: number, end: number, value: unknown): Page {
  const { features, written } = checkFeatures(valueAt(value, ["features"]), ["features"]);
  const number = valueAt(value, ["hole"]);
  const own = at ?? (typeof number === "number" ? number : Number(HOLE_FILE.exec(file.slice(file.lastIndexOf("/") + 1))?.[1]));
  return { at: own, file, text, start, end, value, features, ids: written.flatMap(({ id }) => id ?? []) };
}

async function readPage(content: string, file: string, at: PageAt | undefined): Promise<Page> {
  const read = await readTextFile(content, file);
  if (!read.ok) throw new BringError(file, read.missing ? "is not there. Write it first, with at least the course's name and its tee sets." : read.diagnostics.map(({ message }) => message).join(" "));
  const { source } = read;
  let [start, end] = [0, source.text.length];
  if (at !== "course") {
    const parts = splitFrontMatter(source);
    if (!parts.ok) throw new BringError(formatDiagnostic(parts.diagnostic), "Put this right first, so that bring can tell what is on the page.");
    [start, end] = [parts.start, parts.end];
  }
  const yaml = parseYaml(source, start, end);
  if (!yaml.ok) throw new BringError(formatDiagnostic(yaml.diagnostics[0]!), "Put this right first, so that bring can tell what is on the page.");
  return pageOf(at, file, source.text, start, end, yaml.yaml.value);
}

/**
 * @param content the content folder
 * @param id the course's folder in it
 * @throws BringError when a page cannot be read as YAML; other mistakes on pages do not matter here
 */
export async function readPages(content: string, id: string): Promise<CoursePages> {
  const course = await readPage(content, `${id}/course.yaml`, "course");
  const names = await listFolder(join(content, id, "holes")).catch(() => []);
  const holes: Page[] = [];
  for (const { name, kind } of names) {
    if (kind === "file" && HOLE_FILE.test(name)) holes.push(await readPage(content, `${id}/holes/${name}`, undefined));
  }
  const teeIds = writtenTees(course.value).ids ?? [];
  const tees = teeIds.flatMap((tee, i) => {
    const name = valueAt(course.value, ["tees", i, "name"]);
    return tee === undefined ? [] : [{ id: tee, name: typeof name === "string" ? name : tee }];
  });
  const file = `${id}/${LEDGER_FILE}`;
  const ledger = await readTextFile(content, file);
  if (!ledger.ok && !ledger.missing) throw new BringError(file, ledger.diagnostics.map(({ message }) => message).join(" "));
  return { course, holes, tees, ledger: ledger.ok ? readLedger(file, ledger.source.text) : EMPTY_LEDGER };
}
