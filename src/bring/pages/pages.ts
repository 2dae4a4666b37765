/** The course as its files stand: what is on each page, and the text it is written in. */
import { join } from "node:path";
import { formatDiagnostic } from "../../course/diagnostic.ts";
import { checkFeatures, type CheckedFeature } from "../../course/schema/features.ts";
import type { Path } from "../../course/schema/finding.ts";
import { valueAt } from "../../course/schema/issues.ts";
import { writtenTees } from "../../course/schema/agreement.ts";
import { withFeatures } from "../../read/features-file.ts";
import { splitFrontMatter } from "../../read/front-matter.ts";
import { HOLE_FILE } from "../../read/hole-file.ts";
import { listFolder } from "../../read/listing.ts";
import { readTextFile } from "../../read/text-file.ts";
import { parseYaml } from "../../read/yaml-source.ts";
import { EMPTY_LEDGER, LEDGER_FILE, readLedger, type Ledger } from "./ledger.ts";
import { NOT_PLACED_FILE } from "../report/not-placed.ts";
import { BringError } from "../sources/refusal.ts";
import type { Style } from "./yaml-edit.ts";

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
  /** Where its features are written. */
  readonly list: FeatureList;
  readonly features: readonly CheckedFeature[];
  /** Every id written on it, sound or not. */
  readonly ids: readonly string[];
}

/** A FeatureCollection in a page, or in a file of its own beside it. */
export interface FeatureList {
  /** Relative to the content folder; the page itself where they stand in it. */
  readonly file: string;
  readonly text: string;
  readonly start: number;
  readonly end: number;
  /** The document it stands in. */
  readonly value: unknown;
  /** The way to the collection. */
  readonly path: Path;
  readonly style: Style;
}

export interface CoursePages {
  readonly course: Page;
  readonly holes: readonly Page[];
  readonly tees: readonly { readonly id: string; readonly name: string }[];
  readonly ledger: Ledger;
  /** What the last run could not place, as it lies beside the course. */
  readonly notPlaced: string | undefined;
}

export const allPages = ({ course, holes }: CoursePages): readonly Page[] => [course, ...holes];

/** A page of text that was read already. */
export function pageOf(
  at: PageAt | undefined,
  file: string,
  text: string,
  start: number,
  end: number,
  value: unknown,
  beside?: Pick<FeatureList, "file" | "text" | "value">,
): Page {
  const list: FeatureList =
    beside === undefined
      ? { file, text, start, end, value, path: ["features"], style: "yaml" }
      : { ...beside, start: 0, end: beside.text.length, path: [], style: "json" };
  const { features, written } = checkFeatures(valueAt(list.value, list.path), list.path);
  const number = valueAt(value, ["hole"]);
  const own =
    at ?? (typeof number === "number" ? number : Number(HOLE_FILE.exec(file.slice(file.lastIndexOf("/") + 1))?.[1]));
  return { at: own, file, text, start, end, value, list, features, ids: written.flatMap(({ id }) => id ?? []) };
}

async function readPage(content: string, file: string, at: PageAt | undefined): Promise<Page> {
  const read = await readTextFile(content, file);
  if (!read.ok)
    throw new BringError(
      file,
      read.missing
        ? "is not there. Write it first, with at least the course's name and its tee sets."
        : read.diagnostics.map(({ message }) => message).join(" "),
    );
  const { source } = read;
  let [start, end] = [0, source.text.length];
  if (at !== "course") {
    const parts = splitFrontMatter(source);
    if (!parts.ok)
      throw new BringError(
        formatDiagnostic(parts.diagnostic),
        "Put this right first, so that bring can tell what is on the page.",
      );
    [start, end] = [parts.start, parts.end];
  }
  const yaml = parseYaml(source, start, end);
  if (!yaml.ok)
    throw new BringError(
      formatDiagnostic(yaml.diagnostics[0]!),
      "Put this right first, so that bring can tell what is on the page.",
    );
  const { beside, diagnostics } = await withFeatures(content, file, yaml.yaml);
  if (diagnostics.length > 0)
    throw new BringError(
      formatDiagnostic(diagnostics[0]!),
      "Put this right first, so that bring can tell what is on the page.",
    );
  return pageOf(
    at,
    file,
    source.text,
    start,
    end,
    yaml.yaml.value,
    beside && { file: beside.source.file, text: beside.source.text, value: beside.value },
  );
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
  if (!ledger.ok && !ledger.missing)
    throw new BringError(file, ledger.diagnostics.map(({ message }) => message).join(" "));
  const notPlaced = await readTextFile(content, `${id}/${NOT_PLACED_FILE}`);
  return {
    course,
    holes,
    tees,
    notPlaced: notPlaced.ok ? notPlaced.source.text : undefined,
    ledger: ledger.ok ? readLedger(file, ledger.source.text) : EMPTY_LEDGER,
  };
}
