/**
 * A mistake found in plain content, before anybody knows where in a file it was written.
 * The checks stay free of files; whoever read the file turns the path into a line.
 */
import type { Severity } from "../diagnostic.ts";

/** The way from the top of a document to a value: field names, and list positions from 0. */
export type Path = readonly (string | number)[];

export interface Finding {
  readonly path: Path;
  /** Whether the field's name or its value is at fault. */
  readonly at: "key" | "value";
  readonly severity: Severity;
  /** Stable name, words joined by hyphens. */
  readonly rule: string;
  readonly message: string;
}

export const errorAt = (path: Path, rule: string, message: string, at: Finding["at"] = "value"): Finding => ({
  path,
  at,
  severity: "error",
  rule,
  message,
});

export const warningAt = (path: Path, rule: string, message: string, at: Finding["at"] = "value"): Finding => ({
  path,
  at,
  severity: "warning",
  rule,
  message,
});
