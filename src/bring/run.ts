/** Bringing files into a course folder: read, plan and, when asked, write. */
import { readFile } from "node:fs/promises";
import { basename, join } from "node:path";
import { SLUG } from "../course/schema/fields.ts";
import type { LengthUnit } from "../geo/units.ts";
import { LARGEST_TEXT_BYTES } from "../read/text-file.ts";
import { writeAll, type FileToWrite } from "../read/write-all.ts";
import type { Brought } from "./sources/brought.ts";
import { LEDGER_FILE, writeLedger } from "./pages/ledger.ts";
import { checkCount, LIMITS, megabytes } from "./sources/limits.ts";
import { NOT_PLACED_FILE, notPlacedText } from "./report/not-placed.ts";
import { openBrought } from "./sources/open.ts";
import { readPages } from "./pages/pages.ts";
import type { MarkerPlace } from "./complete/markers.ts";
import type { SourceFile, StatedSource } from "./merge/credits.ts";
import { planBring } from "./pipeline.ts";
import { REACH_METRES } from "./place/sort.ts";
import type { Plan } from "./plan.ts";
import { BringError } from "./sources/refusal.ts";
import { tidied } from "./normalise/tags.ts";

export interface BringRequest {
  readonly content: string;
  readonly course: string;
  readonly files: readonly string[];
  readonly crs: string | undefined;
  readonly distUnit: LengthUnit | undefined;
  /** Only lines of play with this tag count, where a file has several courses. */
  readonly lines: { readonly key: string; readonly value: string } | undefined;
  /** Measured lengths stand on cards that have none of the club's. */
  readonly cardFromGround?: boolean;
  readonly markerPlace?: MarkerPlace;
  readonly aroundMetres?: number;
  /** Of files that do not say it themselves: whom to name, and under what licence. */
  readonly stated?: StatedSource;
}

export interface Prepared extends Plan {
  /** For each file read: its format and how much it held. */
  readonly read: readonly string[];
}

/** @throws BringError for a file or page that cannot be used */
export async function prepareBring(request: BringRequest): Promise<Prepared> {
  const { content, course, files, crs, distUnit, lines } = request;
  if (!SLUG.test(course))
    throw new BringError(
      "--course",
      `is ${JSON.stringify(course)}: expected the name of a course's folder. Write --course tarvay.`,
    );
  checkCount("The command", files.length, LIMITS.files, "files");
  const pages = await readPages(content, course);
  const read: string[] = [];
  const notes: string[] = [];
  const brought: Brought[] = [];
  const fileOf = new Map<string, SourceFile>();
  for (const file of files) {
    for (const one of await openBrought(file, crs)) {
      read.push(`${file}: ${one.format}, ${one.features.length} feature${one.features.length === 1 ? "" : "s"}.`);
      notes.push(...one.notes);
      brought.push(...one.features);
      for (const { from } of one.features)
        fileOf.set(from, { name: basename(file), openStreetMap: one.openStreetMap });
      checkCount("The files together", brought.length, LIMITS.features, "features");
    }
  }
  const isOther = (one: Brought): boolean =>
    lines !== undefined &&
    tidied(one.properties).get("golf") === "hole" &&
    String(one.properties[lines.key]) !== lines.value;
  const wanted = brought.filter((one) => !isOther(one));
  const others = brought
    .filter(isOther)
    .map(({ from }) => ({ from, reason: `it is a line of play without ${lines!.key}=${lines!.value}` }));
  const {
    cardFromGround = false,
    markerPlace = "middle",
    aroundMetres = REACH_METRES.works,
    stated = NOTHING_STATED,
  } = request;
  const plan = planBring(wanted, pages, {
    course,
    distUnit,
    cardFromGround,
    markerPlace,
    aroundMetres,
    stated,
    fileOf,
  });
  for (const { file, after } of plan.files) {
    const size = Buffer.byteLength(after);
    if (size > LARGEST_TEXT_BYTES)
      throw new BringError(
        file,
        `would become ${megabytes(size)}, more than the ${megabytes(LARGEST_TEXT_BYTES)} a page may have. Simplify the outlines to a vertex every metre or two first.`,
      );
  }
  const leftOver = [...others, ...plan.leftOver];
  const shown = notPlacedText(leftOver, pages.notPlaced);
  const besides =
    shown === undefined || shown === pages.notPlaced
      ? []
      : [{ file: `${course}/${NOT_PLACED_FILE}`, before: pages.notPlaced, after: shown }];
  return { ...plan, files: [...plan.files, ...besides], read, leftOver, notes: [...notes, ...plan.notes] };
}

const NOTHING_STATED: StatedSource = { text: undefined, licence: undefined, link: undefined };

/**
 * Writes files of a content folder: all of them or none, see {@link writeAll}.
 *
 * @throws BringError when one was changed meanwhile; nothing is written then
 */
export async function writeFiles(
  content: string,
  files: Plan["files"],
  besides: readonly FileToWrite[] = [],
): Promise<void> {
  for (const { file, before } of files) {
    const now = await readFile(join(content, file), "utf8").catch(() => undefined);
    if (now?.replace(/^\ufeff/, "") !== before)
      throw new BringError(file, "was changed while bring was at work. Run the command again.");
  }
  await writeAll(content, [...files.map(({ file, after }) => ({ file, text: after })), ...besides]);
}

/**
 * Writes what was prepared, and the ledger of it.
 *
 * @throws BringError when a page was changed meanwhile; nothing is written then
 */
export async function writeBring(content: string, course: string, { files, ledger }: Plan): Promise<void> {
  await writeFiles(content, files, [{ file: `${course}/${LEDGER_FILE}`, text: writeLedger(ledger) }]);
}
