/**
 * What Markdown in content must not hold: raw HTML, pictures from elsewhere, and links
 * that are not links. A guide's pages run no script but their own and load nothing from
 * other sites.
 */
import MarkdownIt, { type Token } from "markdown-it";
import type { Diagnostic } from "../course/diagnostic.ts";
import { quote } from "../course/schema/wording.ts";
import type { Tip } from "../course/types.ts";

const SCHEMES = ["https:", "http:", "mailto:", "tel:"];

const PARAGRAPH = "Write an empty line for a new paragraph.";
const LINK = "Write a link: [words](https://example.org/).";
const LIST = "Write lines that start with - or 1.";
const HEADING = "Write a line that starts with ##.";

const INSTEAD: Readonly<Record<string, string>> = {
  b: "Write **bold**.",
  strong: "Write **bold**.",
  i: "Write *slanted*.",
  em: "Write *slanted*.",
  a: LINK,
  iframe: LINK,
  video: LINK,
  audio: LINK,
  br: PARAGRAPH,
  p: PARAGRAPH,
  ul: LIST,
  ol: LIST,
  li: LIST,
  h1: HEADING,
  h2: HEADING,
  h3: HEADING,
  img: "List the picture under photos: in the front matter.",
  script: "Remove it: pages run no script from content.",
  style: "Remove it: the guide has its own style.",
};

const markdown = new MarkdownIt({ html: true, linkify: false });
// Every address is let through here, to be judged below rather than silently left as text.
markdown.validateLink = () => true;

interface Fault {
  readonly rule: string;
  readonly message: string;
}

function htmlFault(html: string): Fault {
  const tag = /^<\/?([A-Za-z][A-Za-z0-9-]*)/.exec(html.trim());
  if (!tag)
    return {
      rule: "raw-html",
      message: `${quote(html.trim())} is raw HTML, which the guide does not use. Remove it, or write \\< for the sign itself.`,
    };
  const name = tag[1]!.toLowerCase();
  const instead = INSTEAD[name] ?? "Remove it, or write \\< for the sign itself.";
  return { rule: "raw-html", message: `<${name}> is raw HTML, which the guide does not use. ${instead}` };
}

function linkFault(href: string): Fault | undefined {
  // Browsers skip white space and control characters within a scheme, so they must not hide one here.
  // eslint-disable-next-line no-control-regex
  const plain = decodeSafely(href).replace(/[\u0000-\u0020\u007f-\u009f]/g, "");
  const scheme = /^([A-Za-z][A-Za-z0-9+.-]*):/.exec(plain)?.[0].toLowerCase();
  if (scheme !== undefined && !SCHEMES.includes(scheme)) {
    return {
      rule: "link-scheme",
      message: `The link ${quote(href)} starts with ${scheme}, which the guide does not link to. Write an address that starts with https:, http:, mailto: or tel:.`,
    };
  }
  if (/^[\\/]{2}/.test(plain)) {
    return {
      rule: "link-scheme",
      message: `The link ${quote(href)} leaves out how to get there. Write https: before it.`,
    };
  }
  return undefined;
}

function decodeSafely(href: string): string {
  try {
    return decodeURIComponent(href);
  } catch {
    return href;
  }
}

function faultOf(token: Token): (Fault & { needle: string }) | undefined {
  // A closing tag is the same mistake as its opening one.
  if (token.type === "html_inline" && token.content.startsWith("</")) return undefined;
  if (token.type === "html_block" || token.type === "html_inline") {
    return { ...htmlFault(token.content), needle: token.content.trim().split("\n")[0]! };
  }
  if (token.type === "image") {
    return {
      rule: "tip-image",
      message:
        "A picture cannot stand in the text. List it under photos: with its alternative text, and keep the file in the course's photos folder.",
      needle: "![",
    };
  }
  if (token.type !== "link_open") return undefined;
  const href = String(token.attrGet("href") ?? "");
  const fault = linkFault(href);
  return fault && { ...fault, needle: decodeSafely(href) };
}

/** Ten pages of print. What reads Markdown may take the square of its length. */
const MOST_CHARACTERS = 20_000;

/** Every such mistake in a Markdown text, with its place in the file. */
export function checkMarkdown({ markdown: text, place }: Pick<Tip, "markdown" | "place">): Diagnostic[] {
  if (text.length > MOST_CHARACTERS) {
    return [
      {
        ...place,
        severity: "error",
        rule: "text-size",
        message: `The text has ${text.length} characters: expected at most ${MOST_CHARACTERS}. Shorten it.`,
      },
    ];
  }
  // Most tips hold none of the characters all this is about.
  if (!/[<[]|&/.test(text)) return [];
  const diagnostics: Diagnostic[] = [];
  const lines = text.split("\n");
  for (const block of markdown.parse(text, {})) {
    const from = block.map?.[0] ?? 0;
    const until = block.map?.[1] ?? lines.length;
    let [line, column] = [from, 0];
    for (const token of block.type === "inline" ? (block.children ?? []) : [block]) {
      const fault = faultOf(token);
      if (!fault) continue;
      // The parser keeps only the block's lines, so each mistake is sought after the one before it.
      // A link may be written in a definition further down, or with entities that hide its address.
      const found =
        seek(lines, fault.needle, line, column, until) ??
        seek(lines, fault.needle, 0, 0, lines.length) ??
        seek(lines, "](", line, column, until);
      if (found) [line, column] = [found.line, found.column + 1];
      const at = found ?? { line: from, column: 0 };
      diagnostics.push({
        file: place.file,
        line: place.line + at.line,
        column: (at.line === 0 ? place.column : 1) + at.column,
        severity: "error",
        rule: fault.rule,
        message: fault.message,
      });
    }
  }
  return diagnostics;
}

function seek(
  lines: readonly string[],
  needle: string,
  line: number,
  column: number,
  until: number,
): { line: number; column: number } | undefined {
  for (let l = line; l < Math.min(until, lines.length); l++) {
    const found = lines[l]!.indexOf(needle, l === line ? column : 0);
    if (found !== -1) return { line: l, column: found };
  }
  return undefined;
}
