/** Diagnostics as lines for a terminal. */
import { formatDiagnostic, type Diagnostic } from "../../course/diagnostic.ts";

export interface ReportStyle {
  /** Name the rule behind each line, for looking up and silencing. */
  readonly rules?: boolean;
}

/**
 * One line for each, in the order given, an empty line between files.
 *
 * @param folder the content folder as it should stand before the files' names, so that an editor can open them.
 */
export function reportLines(
  diagnostics: readonly Diagnostic[],
  folder: string,
  { rules = false }: ReportStyle = {},
): string[] {
  const prefix = folder === "" || folder === "." ? "" : `${folder.replace(/\/+$/, "")}/`;
  const lines: string[] = [];
  let file: string | undefined;
  for (const diagnostic of diagnostics) {
    if (file !== undefined && diagnostic.file !== file) lines.push("");
    file = diagnostic.file;
    const mark = diagnostic.severity === "error" ? "" : `${diagnostic.severity}: `;
    const name = rules ? ` (${diagnostic.rule})` : "";
    lines.push(
      formatDiagnostic({
        ...diagnostic,
        file: `${prefix}${diagnostic.file}`,
        message: `${mark}${diagnostic.message}${name}`,
      }),
    );
  }
  return lines;
}

/** What a build says: mistakes and warnings; notes are only counted, since they are for the check. */
export function buildLines(diagnostics: readonly Diagnostic[], folder: string): string[] {
  const told = diagnostics.filter(({ severity }) => severity !== "note");
  const notes = diagnostics.length - told.length;
  const lines = reportLines(told, folder);
  return notes === 0
    ? lines
    : [
        ...lines,
        `${notes} note${notes === 1 ? "" : "s"} besides: npm run check tells ${notes === 1 ? "it" : "them"}.`,
      ];
}

/** `2 mistakes in 1 file, 3 warnings`. */
export function summary(diagnostics: readonly Diagnostic[]): string {
  const errors = diagnostics.filter(({ severity }) => severity === "error");
  const others = diagnostics.length - errors.length;
  const number = (n: number, noun: string): string => `${n} ${noun}${n === 1 ? "" : "s"}`;
  const files = number(new Set(errors.map(({ file }) => file)).size, "file");
  const parts = [
    ...(errors.length > 0 ? [`${number(errors.length, "mistake")} in ${files}`] : []),
    ...(others > 0 ? [number(others, "remark")] : []),
  ];
  return parts.length === 0 ? "No mistakes" : parts.join(", ");
}
