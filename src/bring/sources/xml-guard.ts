/**
 * XML sized up before a tree is made of it: no document type (and so no entities of its
 * own, which multiply), no endless nesting, no endless tags.
 */
import { DOMParser, type Document } from "@xmldom/xmldom";
import { checkBytes, checkCount, checkDepth, LIMITS } from "./limits.ts";
import { BringError } from "./refusal.ts";

/** Encodings a map file comes in; others are refused rather than misread. */
const ENCODINGS = new Set(["utf-8", "utf8", "us-ascii", "ascii", "iso-8859-1", "iso-8859-15", "windows-1252"]);

/** @throws BringError for UTF-16, bytes that are not what the declaration says, or a rare encoding. */
function decode(file: string, bytes: Uint8Array): string {
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff)) {
    throw new BringError(file, "is in UTF-16: expected UTF-8. Save it again with the encoding UTF-8.");
  }
  const start = Buffer.from(bytes.subarray(0, 200)).toString("latin1");
  const named =
    /^(?:\xef\xbb\xbf)?<\?xml[^>]*\bencoding\s*=\s*["']([^"']*)/.exec(start)?.[1]?.toLowerCase() ?? "utf-8";
  if (!ENCODINGS.has(named))
    throw new BringError(
      file,
      `is in the encoding ${JSON.stringify(named.slice(0, 40))}, which is not read. Save it again with the encoding UTF-8.`,
    );
  try {
    return new TextDecoder(named, { fatal: true }).decode(bytes);
  } catch (cause) {
    throw new BringError(
      file,
      `is not text in ${named.toUpperCase()} as it says. Save it again with the encoding UTF-8.`,
      { cause },
    );
  }
}

/** Where the opening tag that starts at `from` ends; a `>` within an attribute does not count. */
function tagEnd(text: string, from: number): number {
  let quote = 0;
  const last = Math.min(text.length, from + LIMITS.xmlTag);
  for (let i = from; i < last; i++) {
    const c = text.charCodeAt(i);
    if (quote !== 0) {
      if (c === quote) quote = 0;
    } else if (c === 0x22 || c === 0x27) quote = c;
    else if (c === 0x3e) return i;
  }
  return -1;
}

/** @throws BringError for a document type, entities, or more elements or depth than a map needs. */
export function guardXml(file: string, text: string): void {
  let [depth, elements] = [0, 0];
  const skip = (from: number, end: string, what: string): number => {
    const at = text.indexOf(end, from);
    if (at === -1) throw new BringError(file, `is cut off: ${what} is never closed. Save or copy it again.`);
    return at + end.length;
  };
  for (let at = text.indexOf("<"); at !== -1; at = text.indexOf("<", at)) {
    if (text.startsWith("<!--", at)) at = skip(at + 4, "-->", "a comment");
    else if (text.startsWith("<![CDATA[", at)) at = skip(at + 9, "]]>", "a CDATA section");
    else if (text.startsWith("<?", at)) at = skip(at + 2, "?>", "a processing instruction");
    else if (text.startsWith("<!", at)) {
      throw new BringError(
        file,
        `declares ${JSON.stringify(text.slice(at, at + 20).split(/[\s>]/)[0])}: a document type can define entities that multiply to any size, so it is not read, and no GPX, KML or OSM file needs one. Delete the declaration, up to the > that closes it.`,
      );
    } else if (text.startsWith("</", at)) {
      depth--;
      at += 2;
    } else {
      const end = tagEnd(text, at + 1);
      if (end === -1)
        throw new BringError(
          file,
          `has a tag of more than ${LIMITS.xmlTag} characters, or one that is never closed. Save it again from the program that made it.`,
        );
      checkCount(file, ++elements, LIMITS.xmlElements, "elements");
      if (text.charCodeAt(end - 1) !== 0x2f) checkDepth(file, ++depth);
      at = end + 1;
    }
  }
  if (elements === 0) throw new BringError(file, "has no elements: expected an OSM, GPX or KML file.");
}

/**
 * The document of an XML file.
 *
 * @throws BringError for one that is too large, not well-formed or declares a document type
 */
export function parseXml(file: string, bytes: Uint8Array): Document {
  checkBytes(file, bytes.length, LIMITS.xmlBytes, "XML");
  const text = decode(file, bytes);
  guardXml(file, text);
  try {
    return new DOMParser({
      onError(level, message) {
        if (level !== "warning") throw new Error(message);
      },
    }).parseFromString(text, "application/xml");
  } catch (cause) {
    const reason = cause instanceof Error ? cause.message.split("\n")[0] : String(cause);
    throw new BringError(file, `is not well-formed XML (${reason}). Save it again from the program that made it.`, {
      cause,
    });
  }
}
