/**
 * What was brought last, beside the course: `brought.json`. With it the next run can tell
 * an edit of the club's from a change in the source, and what the club took out from what
 * is new.
 */
import { createHash } from "node:crypto";
import * as z from "zod";
import type { CheckedGeometry } from "../../course/schema/geometry.ts";
import { BringError } from "../sources/refusal.ts";

export { LEDGER_FILE } from "../../read/brought-files.ts";

const ABOUT =
  "What `npm run bring` brought last, so that the next run can tell your edits from changes in the source. Keep it with the course; without it bring starts afresh.";

const entry = z.strictObject({
  /** Page and id: `7/bunker-left-1`, or `course/sea`. */
  at: z.string(),
  /** Of the geometry as it was brought. */
  geometry: z.string(),
  tags: z.record(z.string(), z.union([z.string(), z.number(), z.boolean()])),
});

const schema = z.strictObject({
  about: z.string(),
  /** Files that features were brought from, by name: each must have a source and a licence in course.yaml. */
  sources: z.array(z.string()).default([]),
  /** By the identity the source gives, with the page where one thing is brought to several. */
  features: z.record(z.string(), entry),
  /** By hole number and field: what its line of play said. */
  holes: z.record(z.string(), z.record(z.string(), z.unknown())),
});

export type LedgerEntry = z.infer<typeof entry>;
export interface Ledger {
  readonly sources: readonly string[];
  readonly features: Readonly<Record<string, LedgerEntry>>;
  readonly holes: Readonly<Record<string, Readonly<Record<string, unknown>>>>;
}

export const EMPTY_LEDGER: Ledger = { sources: [], features: {}, holes: {} };

/** @throws BringError when it cannot be what an earlier run wrote */
export function readLedger(file: string, text: string): Ledger {
  try {
    const { sources, features, holes } = schema.parse(JSON.parse(text));
    return { sources, features, holes };
  } catch (cause) {
    throw new BringError(
      file,
      "is not as bring wrote it. Take back the last version of it, or delete it: bring then starts afresh and treats what is on the pages as drawn by hand.",
      { cause },
    );
  }
}

const sorted = <T>(record: Readonly<Record<string, T>>): Record<string, T> =>
  Object.fromEntries(Object.entries(record).sort(([a], [b]) => (a < b ? -1 : 1)));

/** The same bytes for the same content. */
export const writeLedger = ({ sources, features, holes }: Ledger): string =>
  `${JSON.stringify({ about: ABOUT, sources: sources.toSorted(), features: sorted(features), holes: sorted(holes) }, null, 1)}\n`;

/** A short mark of a geometry, by which it is known again. */
export const markOf = ({ type, coordinates }: CheckedGeometry): string =>
  createHash("sha256")
    .update(JSON.stringify([type, coordinates]))
    .digest("base64url")
    .slice(0, 16);

/** How the ledger names a feature on a page: `7/bunker-left-1`. */
export const atOf = (at: number | "course", id: string): string => `${at}/${id}`;

/** Key of what the source gives no identity. */
export const placeKey = (at: number | "course", id: string): string => `=${atOf(at, id)}`;
