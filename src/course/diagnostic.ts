/**
 * What Marram says about content: one sentence at a place, and what to type instead.
 */
import type { Place } from "./types.ts";

export type Severity = "error" | "warning" | "note";

export interface Diagnostic extends Place {
  readonly severity: Severity;
  /** Stable name to look up or silence, words joined by hyphens. */
  readonly rule: string;
  /** What is wrong, with what was found and what was expected; then what to type. */
  readonly message: string;
}

/** `path:line:column: message`, one line. */
export const formatDiagnostic = ({ file, line, column, message }: Diagnostic): string =>
  `${file}:${line}:${column}: ${message}`;

/** By file, then line, then column: the order they are read in. */
export const inReadingOrder = (diagnostics: readonly Diagnostic[]): Diagnostic[] =>
  [...diagnostics].sort((a, b) =>
    a.file < b.file ? -1 : a.file > b.file ? 1 : a.line - b.line || a.column - b.column,
  );
