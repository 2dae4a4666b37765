/**
 * A language's catalogue: every word that a guide says by itself, as groups of messages by
 * name. The file is YAML that a translator can edit; what is wrong in it is said with its line.
 */
import { isAlias, isMap, isScalar, LineCounter, parseDocument, type Document, type Node } from "yaml";
import type { Diagnostic } from "../course/diagnostic.ts";
import { MessageFault, readMessage, type Message } from "./message.ts";

export interface Entry {
  readonly line: number;
  readonly column: number;
  readonly value: Message | Group;
}

export type Group = ReadonlyMap<string, Entry>;

export interface Catalogue {
  /** Primary language subtag. */
  readonly language: string;
  readonly file: string;
  /** BCP 47 tag by whose rules numbers, dates, lists and plurals are written. */
  readonly locale: string;
  readonly words: Group;
}

export const isGroup = (value: Message | Group): value is Group => value instanceof Map;

export type Fault = (line: number, column: number, message: string) => void;

/** @param file as it is named to people; @returns what is whole of it, beside all that is wrong */
export function readCatalogue(
  language: string,
  file: string,
  text: string,
): { catalogue: Catalogue; faults: readonly Diagnostic[] } {
  const faults: Diagnostic[] = [];
  const say: Fault = (line, column, message) =>
    faults.push({ severity: "error", rule: "words", file, line, column, message });
  const lines = new LineCounter();
  const document = parseDocument(text, {
    version: "1.2",
    schema: "failsafe",
    stringKeys: true,
    lineCounter: lines,
    prettyErrors: false,
    logLevel: "silent",
  });
  for (const {
    pos: [offset],
    message,
  } of [...document.errors, ...document.warnings]) {
    const { line, col } = lines.linePos(offset);
    say(line, col, `This is no YAML: ${message}`);
  }
  const locale = localeOf(document, say);
  const words =
    document.contents === null
      ? new Map<string, Entry>()
      : groupOf(document.contents, document, lines, locale, "", say);
  return { catalogue: { language, file, locale, words }, faults };
}

/** The plurals of a language without a good locale are read as English: the fault is told once. */
function localeOf(document: Document.Parsed, say: Fault): string {
  const written: unknown = isMap(document.contents) ? document.contents.get("locale") : undefined;
  try {
    if (typeof written === "string" && Intl.PluralRules.supportedLocalesOf(written).length === 1) return written;
  } catch {
    // No tag at all.
  }
  say(
    1,
    1,
    `locale is ${typeof written === "string" ? JSON.stringify(written) : "missing"}. Write a language tag whose numbers and dates are known, for example locale: en-GB.`,
  );
  return "en";
}

function groupOf(
  node: Node,
  document: Document.Parsed,
  lines: LineCounter,
  locale: string,
  path: string,
  say: Fault,
): Group {
  const group = new Map<string, Entry>();
  if (!isMap<Node, Node | null>(node)) {
    const { line, col } = lines.linePos(node.range?.[0] ?? 0);
    say(
      line,
      col,
      `${path || "The file"} is a list. Write a group, each message behind a name: ${path || "name"}: ...`,
    );
    return group;
  }
  for (const { key, value } of node.items) {
    const name = isScalar(key) ? String(key.value) : "";
    const at = path === "" ? name : `${path}.${name}`;
    const { line, col: column } = lines.linePos(key.range?.[0] ?? 0);
    // An anchor keeps what two places say one text.
    const given = isAlias(value) ? value.resolve(document) : value;
    if (isScalar(given) && typeof given.value === "string" && given.value.trim() !== "") {
      try {
        group.set(name, { line, column, value: readMessage(given.value, locale) });
      } catch (error) {
        if (!(error instanceof MessageFault)) throw error;
        say(line, column, `${at}: ${error.message}.`);
      }
    } else if (given === undefined || given === null || isScalar(given)) {
      say(line, column, `${at} says nothing. Write its words behind the colon.`);
    } else group.set(name, { line, column, value: groupOf(given, document, lines, locale, at, say) });
  }
  return group;
}
