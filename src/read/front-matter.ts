/** A hole page's two parts: the front matter between its fences, and the tip below. */
import type { Diagnostic } from "../course/diagnostic.ts";
import type { Tip } from "../course/types.ts";
import { quote } from "../course/schema/wording.ts";
import type { SourceText } from "./source-text.ts";

export type FrontMatterResult =
  | { readonly ok: true; readonly start: number; readonly end: number; readonly tip: Tip }
  | { readonly ok: false; readonly diagnostic: Diagnostic };

const FENCE = /^---[ \t]*\r?$/;

/** Offsets of the YAML between the fences, and the tip with the place of its first character. */
export function splitFrontMatter(source: SourceText): FrontMatterResult {
  const { text } = source;
  const refuse = (offset: number, message: string): FrontMatterResult => ({
    ok: false,
    diagnostic: { ...source.placeAt(offset), severity: "error", rule: "front-matter", message },
  });
  const lineEnd = (from: number): number => {
    const end = text.indexOf("\n", from);
    return end === -1 ? text.length : end;
  };
  const firstEnd = lineEnd(0);
  const first = text.slice(0, firstEnd);
  if (!FENCE.test(first)) {
    return refuse(
      0,
      `The file starts with ${quote(first.trim())}: expected the line --- that opens the front matter. Write --- on the first line, the fields below it, and --- again before the tip.`,
    );
  }
  const start = Math.min(firstEnd + 1, text.length);
  for (let from = start; from < text.length; from = lineEnd(from) + 1) {
    const end = lineEnd(from);
    if (!FENCE.test(text.slice(from, end))) continue;
    return { ok: true, start, end: from, tip: tipFrom(source, Math.min(end + 1, text.length)) };
  }
  return refuse(
    0,
    "The front matter that opens here is never closed. Write --- on a line of its own after the last field, before the tip.",
  );
}

/** From its first line with anything on it, so that line and column of the Markdown are those of the file. */
function tipFrom(source: SourceText, from: number): Tip {
  const rest = source.text.slice(from);
  const firstInk = rest.search(/\S/);
  const offset = firstInk === -1 ? from : from + rest.lastIndexOf("\n", firstInk) + 1;
  return { markdown: source.text.slice(offset).replace(/\r\n/g, "\n").trimEnd(), place: source.placeAt(offset) };
}
