/** Content files as text: no larger than stated, valid UTF-8, no stray control characters. */
import { isUtf8 } from "node:buffer";
import { lstat, readFile } from "node:fs/promises";
import { join } from "node:path";
import type { Diagnostic } from "../course/diagnostic.ts";
import type { Place } from "../course/types.ts";
import { firstHidden, hiddenMessage } from "./hidden-characters.ts";
import { SourceText } from "./source-text.ts";

/**
 * A hole page is some 25 KB and a coastline of ten thousand vertices 300 KB; nothing larger was written for
 * a guide.
 */
export const LARGEST_TEXT_BYTES = 4_000_000;

export type TextResult =
  | { readonly ok: true; readonly source: SourceText }
  | { readonly ok: false; readonly missing: boolean; readonly diagnostics: readonly Diagnostic[] };

const megabytes = (bytes: number): string => `${(bytes / 1e6).toFixed(bytes < 1e7 ? 1 : 0)} MB`;

/** What went wrong with a file system call, in plain words. */
export function systemFault(error: unknown): string {
  const code = error instanceof Error && "code" in error ? String(error.code) : "";
  if (code === "EACCES" || code === "EPERM") return "permission is denied";
  if (code === "ENOENT") return "it is not there";
  if (code === "EMFILE" || code === "ENFILE") return "too many files are open";
  return code === "" ? String(error) : `the system says ${code}`;
}

/**
 * @param folder the content folder.
 * @param file path below it, with forward slashes.
 */
export async function readTextFile(folder: string, file: string): Promise<TextResult> {
  const start: Place = { file, line: 1, column: 1 };
  const refuse = (rule: string, message: string, place = start, missing = false): TextResult => ({
    ok: false,
    missing,
    diagnostics: [{ ...place, severity: "error", rule, message }],
  });
  const path = join(folder, file);
  let bytes: Buffer;
  try {
    const found = await lstat(path);
    if (found.isSymbolicLink())
      return refuse(
        "file-link",
        "The file is a link to another place, and content is only read from its own folder. Put the file itself here.",
      );
    if (!found.isFile())
      return refuse("file-kind", "A folder has this name: expected a text file. Rename the folder.");
    // Asked before reading, so that a huge file costs nothing.
    if (found.size > LARGEST_TEXT_BYTES) {
      return refuse(
        "file-size",
        `The file is ${megabytes(found.size)}: expected at most ${megabytes(LARGEST_TEXT_BYTES)} of text. Simplify its outlines to a vertex every metre or two, and keep pictures in photos/.`,
      );
    }
    bytes = await readFile(path);
  } catch (error) {
    const missing = error instanceof Error && "code" in error && error.code === "ENOENT";
    return refuse("file-unreadable", `The file cannot be read: ${systemFault(error)}.`, start, missing);
  }
  if (bytes.length === 0) return refuse("file-empty", "The file is empty.");
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff)) {
    return refuse("encoding", "The file is in UTF-16: expected UTF-8. Save it again with the encoding UTF-8.");
  }
  if (!isUtf8(bytes)) {
    return refuse("encoding", "This is not UTF-8 text. Save the file again with the encoding UTF-8.", {
      file,
      ...firstBadByte(bytes),
    });
  }
  const text = bytes.toString("utf8");
  const source = new SourceText(file, text.charCodeAt(0) === 0xfeff ? text.slice(1) : text);
  if (source.text.trim() === "") return refuse("file-empty", "The file is empty.");
  const loneReturn = /\r(?!\n)/.exec(source.text);
  if (loneReturn)
    return refuse(
      "control-character",
      "A line ends with a carriage return alone: expected a line feed. Save the file with the line ends of Unix or Windows.",
      source.placeAt(loneReturn.index),
    );
  const hidden = firstHidden(source.text);
  if (hidden) return refuse("control-character", hiddenMessage(hidden.code), source.placeAt(hidden.offset));
  return { ok: true, source };
}

/** Line feeds are never part of a longer UTF-8 sequence, so each line can be judged alone. */
function firstBadByte(bytes: Buffer): { line: number; column: number } {
  let line = 1;
  for (let from = 0; from < bytes.length; line++) {
    const next = bytes.indexOf(0x0a, from);
    const end = next === -1 ? bytes.length : next;
    const slice = bytes.subarray(from, end);
    if (!isUtf8(slice)) {
      let column = 1;
      const lossy = slice.toString("utf8");
      // A replacement character may also have been typed, so it is the first that does not encode back to the same
      // bytes.
      for (let at = 0, byte = 0; at < lossy.length;) {
        const character = String.fromCodePoint(lossy.codePointAt(at)!);
        const encoded = Buffer.from(character);
        if (!encoded.equals(slice.subarray(byte, byte + encoded.length))) break;
        at += character.length;
        byte += encoded.length;
        column = at + 1;
      }
      return { line, column };
    }
    from = end + 1;
  }
  return { line: 1, column: 1 };
}
