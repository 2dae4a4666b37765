/**
 * YAML as plain values whose every part can be found again in the file.
 */
import {
  isAlias,
  isMap,
  isNode,
  isScalar,
  isSeq,
  parseDocument,
  Scalar,
  visit,
  type Document,
  type Node,
  type Pair,
  type YAMLError,
} from "yaml";
import type { Diagnostic } from "../course/diagnostic.ts";
import type { Place } from "../course/types.ts";
import type { Finding, Path } from "../course/schema/finding.ts";
import { liftNumbers, offsetInNumbers, type Lifted, type Skeleton } from "./lift-numbers.ts";
import { firstHidden, hiddenMessage } from "./hidden-characters.ts";
import type { SourceText } from "./source-text.ts";
import { secondDocument } from "./yaml-documents.ts";
import { yamlMessage } from "./yaml-errors.ts";

/** Aliases that may be followed in one file; more is an attack or a mistake, not a golf course. */
const MOST_ALIASES = 100;

/** Fields of one group, ever so many times what any needs; each is looked for among the others. */
const MOST_FIELDS = 1000;

/** Mistakes of one file's form that are told in one run. */
const MOST_PROBLEMS = 100;

const MOST_DEPTH = 100;

const DEPTH_MESSAGE =
  "Groups or lists are nested too deeply to read. Hole pages need about ten levels; look for brackets that are not closed.";

/** Where brackets or dashes open more levels than a parser should go down; undefined where none do. */
function tooDeep(text: string): number | undefined {
  const dashes = /^[ ]*(?:[-?][ \t]+){32}/m.exec(text);
  let depth = 0;
  for (let i = 0; i < text.length; i++) {
    const c = text.charCodeAt(i);
    if (c === 0x5b || c === 0x7b) {
      if (++depth > MOST_DEPTH) return i;
    } else if ((c === 0x5d || c === 0x7d) && depth > 0) depth--;
  }
  return dashes?.index;
}

function tooLarge(document: Document.Parsed): { offset: number; message: string } | undefined {
  let found: { offset: number; message: string } | undefined;
  let aliases = 0;
  visit(document, {
    Map(_, map) {
      if (map.items.length <= MOST_FIELDS) return undefined;
      found = {
        offset: map.range?.[0] ?? 0,
        message: `This group has ${map.items.length} fields: expected at most ${MOST_FIELDS}. Remove what does not belong here.`,
      };
      return visit.BREAK;
    },
    Alias(_, alias) {
      if (++aliases <= MOST_ALIASES) return undefined;
      found = {
        offset: alias.range?.[0] ?? 0,
        message: `There are more than ${MOST_ALIASES} aliases (*name) in this file. Write the values out instead.`,
      };
      return visit.BREAK;
    },
  });
  return found;
}

export interface YamlSource {
  readonly value: unknown;
  /** Where the field or value at a path is written; for a path that is not there, its nearest parent. */
  placeOf(path: Path, at?: "key" | "value"): Place;
  toDiagnostic(finding: Finding): Diagnostic;
}

export type YamlResult =
  | { readonly ok: true; readonly yaml: YamlSource }
  | { readonly ok: false; readonly diagnostics: readonly Diagnostic[] };

const parse = (text: string): Document.Parsed =>
  parseDocument(text, {
    version: "1.2",
    schema: "core",
    strict: true,
    stringKeys: true,
    // Doubled fields are reported below, by name.
    uniqueKeys: false,
    prettyErrors: false,
    logLevel: "silent",
  });

/**
 * Puts lifted arrays back as values; false where one of them is not a value of its own (it stands in a text
 * or a comment).
 */
function restore(document: Document.Parsed, lifted: ReadonlyMap<number, Lifted>): boolean {
  let restored = 0;
  visit(document, {
    Seq(_, node) {
      const start = node.range?.[0];
      const back = start === undefined ? undefined : lifted.get(start);
      if (
        back === undefined ||
        !node.flow ||
        node.items.length > 0 ||
        node.range![1] !== back.end ||
        node.anchor !== undefined
      )
        return undefined;
      restored++;
      const scalar = new Scalar(back.value);
      scalar.range = node.range!;
      return scalar;
    },
  });
  return restored === lifted.size;
}

function parseQuickly(text: string): Document.Parsed {
  const skeleton: Skeleton = liftNumbers(text);
  if (skeleton.lifted.size > 0) {
    const document = parse(skeleton.text);
    if (document.errors.length === 0 && document.warnings.length === 0 && restore(document, skeleton.lifted))
      return document;
  }
  return parse(text);
}

/**
 * Reads the part of a file from `start` to `end` as one YAML document.
 *
 * @param whole parses without the shortcut for coordinates; for tests that hold the two to each other.
 */
export function parseYaml(source: SourceText, start = 0, end = source.text.length, whole = false): YamlResult {
  const text = source.text.slice(start, end);
  const say = (offset: number, rule: string, message: string): Diagnostic => ({
    ...source.placeAt(start + Math.min(offset, text.length)),
    severity: "error",
    rule,
    message,
  });
  let document: Document.Parsed;
  let value: unknown;
  const second = secondDocument(text);
  const deep = tooDeep(text);
  if (deep !== undefined) return { ok: false, diagnostics: [say(deep, "yaml-depth", DEPTH_MESSAGE)] };
  if (second) return { ok: false, diagnostics: [say(second.offset, "yaml-document", second.message)] };
  try {
    document = whole ? parse(text) : parseQuickly(text);
    const large = tooLarge(document);
    if (large) return { ok: false, diagnostics: [say(large.offset, "yaml-size", large.message)] };
    const problems = [
      ...hiddenByEscapes(document, text).map(({ code, offset }) =>
        say(offset, "control-character", hiddenMessage(code)),
      ),
      ...firstOfLine(text, [...document.errors, ...document.warnings]).map((error) =>
        say(error.pos[0], "yaml", yamlMessage(error.code, error.message)),
      ),
      ...looseAliases(document).map(({ name, offset }) =>
        say(
          offset,
          "yaml",
          `There is no &${name} for the alias *${name} to stand for. Put the text in quotes if no alias is meant.`,
        ),
      ),
      ...doubledFields(document).map(({ name, offset }) =>
        say(
          offset,
          "doubled-field",
          `The field ${JSON.stringify(name)} is written twice in this group. Keep one of them.`,
        ),
      ),
    ];
    if (problems.length > 0) return { ok: false, diagnostics: problems.slice(0, MOST_PROBLEMS) };
    value = document.toJS({ maxAliasCount: MOST_ALIASES });
  } catch (error) {
    if (error instanceof ReferenceError) {
      return {
        ok: false,
        diagnostics: [
          say(
            0,
            "yaml-aliases",
            `Aliases (*name) multiply to more than ${MOST_ALIASES} copies. Write the values out instead.`,
          ),
        ],
      };
    }
    if (error instanceof RangeError) {
      return { ok: false, diagnostics: [say(0, "yaml-depth", DEPTH_MESSAGE)] };
    }
    throw error;
  }
  const placeOf = (path: Path, at: "key" | "value" = "value"): Place =>
    source.placeAt(start + offsetOf(document, text, path, at));
  return {
    ok: true,
    yaml: {
      value,
      placeOf,
      toDiagnostic: ({ path, at, severity, rule, message }) => ({ ...placeOf(path, at), severity, rule, message }),
    },
  };
}

/** Once a parser stumbles, it stumbles again over the rest of the line. */
function firstOfLine(text: string, errors: readonly YAMLError[]): YAMLError[] {
  const lines = new Set<number>();
  return [...errors]
    .sort((a, b) => a.pos[0] - b.pos[0])
    .filter(({ pos: [offset] }) => {
      const start = text.lastIndexOf("\n", Math.max(0, offset - 1));
      return !lines.has(start) && lines.add(start);
    });
}

/** Characters that a file's text may not hold do not come in by an escape such as "\u0007" either. */
function hiddenByEscapes(document: Document.Parsed, text: string): { code: number; offset: number }[] {
  const found: { code: number; offset: number }[] = [];
  if (!text.includes("\\")) return found;
  visit(document, {
    Scalar(_, node) {
      const hidden = typeof node.value === "string" ? firstHidden(node.value) : undefined;
      if (hidden) found.push({ code: hidden.code, offset: node.range?.[0] ?? 0 });
    },
  });
  return found;
}

function looseAliases(document: Document.Parsed): { name: string; offset: number }[] {
  const loose: { name: string; offset: number }[] = [];
  const anchors = new Set<string>();
  // In document order: an anchor must be set before its alias.
  visit(document, (_, node) => {
    if (isAlias(node) && !anchors.has(node.source)) loose.push({ name: node.source, offset: node.range?.[0] ?? 0 });
    else if (isNode(node) && "anchor" in node && node.anchor) anchors.add(node.anchor);
  });
  return loose;
}

function doubledFields(document: Document.Parsed): { name: string; offset: number }[] {
  const doubled: { name: string; offset: number }[] = [];
  visit(document, {
    Map(_, map) {
      const seen = new Set<string>();
      for (const { key } of map.items) {
        if (!isScalar(key)) continue;
        const name = String(key.value);
        if (seen.has(name)) doubled.push({ name, offset: key.range?.[0] ?? 0 });
        seen.add(name);
      }
    },
  });
  return doubled;
}

const startOf = (node: unknown): number | undefined => (isNode(node) ? node.range?.[0] : undefined);

/** Offset of the field or value at a path, or of the innermost group or list on the way to it. */
function offsetOf(document: Document.Parsed, text: string, path: Path, at: "key" | "value"): number {
  let node: Node | null | undefined = document.contents;
  let offset = startOf(node) ?? 0;
  for (const [depth, step] of path.entries()) {
    if (isAlias(node)) node = node.resolve(document);
    if (isMap(node)) {
      const pair: Pair | undefined = node.items.find(({ key }) => isScalar(key) && String(key.value) === String(step));
      if (pair === undefined) return offset;
      const keyOffset = startOf(pair.key) ?? offset;
      const last = depth === path.length - 1;
      if (last && at === "key") return keyOffset;
      const value: unknown = pair.value;
      node = isNode(value) ? value : undefined;
      const valueOffset = startOf(node);
      // A value left empty has no extent of its own, and a group below its name is best found by the name.
      const empty = isScalar(node) && node.value === null && node.range?.[0] === node.range?.[1];
      const below = (isMap(node) || isSeq(node)) && !node.flow;
      offset = valueOffset === undefined || empty || below ? keyOffset : valueOffset;
    } else if (isSeq(node)) {
      const item: unknown = typeof step === "number" ? node.items[step] : undefined;
      if (!isNode(item)) return offset;
      node = item;
      offset = startOf(item) ?? offset;
    } else if (isScalar(node) && Array.isArray(node.value)) {
      return offsetInNumbers(text, offset, path.slice(depth));
    } else {
      return offset;
    }
  }
  return offset;
}
