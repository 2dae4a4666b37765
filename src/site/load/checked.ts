/** A content folder loaded, and then held against its ground and the rules. */
import { inReadingOrder } from "../../course/diagnostic.ts";
import { runChecks } from "../../check/check.ts";
import type { Silenced } from "../../check/silence.ts";
import { pagePaths } from "../addresses/routes.ts";
import { loadGuide, type Loaded } from "./load.ts";

export interface Checked extends Loaded {
  /** What the club has silenced, each with its reason. */
  readonly silenced: readonly Silenced[];
}

/** Today as an ISO date, in the clock of whoever runs the command. */
export function today(now = new Date()): string {
  const part = (value: number): string => String(value).padStart(2, "0");
  return `${now.getFullYear()}-${part(now.getMonth() + 1)}-${part(now.getDate())}`;
}

/**
 * Loads a guide and checks it. Content that cannot be read is not checked further: its
 * mistakes come first. A contradiction is an error like any other and leaves no guide.
 *
 * @param date what counts as today; it decides only what is remarked on, never what is built
 */
export async function loadChecked(folder: string, date = today()): Promise<Checked> {
  const loaded = await loadGuide(folder);
  const { guide } = loaded;
  if (!guide) return { ...loaded, silenced: [] };
  const pages = new Set(pagePaths(guide));
  const heard = guide.courses.map((measured) =>
    runChecks({ club: guide.club, measured, photos: loaded.photos.get(measured.course.id), pages, today: date }),
  );
  const diagnostics = inReadingOrder([...loaded.diagnostics, ...heard.flatMap((one) => one.diagnostics)]);
  const failed = diagnostics.some(({ severity }) => severity === "error");
  return { ...loaded, guide: failed ? undefined : guide, diagnostics, silenced: heard.flatMap((one) => one.silenced) };
}
