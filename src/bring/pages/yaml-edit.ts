/**
 * Edits to YAML that leave every other byte as the author wrote it: the document's nodes
 * say where a value stands, and only that stretch of text is replaced. The result is
 * parsed again and must hold exactly what was asked for.
 */
import { isDeepStrictEqual } from "node:util";
import {
  isAlias,
  isMap,
  isNode,
  isScalar,
  isSeq,
  parse,
  parseDocument,
  type Document,
  type Node,
  type Pair,
  type YAMLMap,
} from "yaml";
import type { Path } from "../../course/schema/finding.ts";
import { BringError } from "../sources/refusal.ts";

export type Edit =
  /** A new value for what is there. */
  | { readonly op: "replace"; readonly path: Path; readonly value: unknown }
  /** A field that is not there yet. */
  | { readonly op: "add"; readonly path: Path; readonly key: string; readonly value: unknown }
  | { readonly op: "remove"; readonly path: Path; readonly key: string }
  /** One more entry at the end of a list. */
  | { readonly op: "append"; readonly path: Path; readonly value: unknown }
  /** An entry of a list taken out, by its place as the text stands. */
  | { readonly op: "drop"; readonly path: Path; readonly index: number };

/** How new values are written: JSON is YAML too, but a GIS reads only JSON. */
export type Style = "yaml" | "json";

interface Splice {
  readonly from: number;
  readonly to: number;
  readonly text: string;
  /** How deep in the document: of two that meet in one place the deeper text comes first. */
  readonly depth: number;
}

const PLAIN = /^[A-Za-z][A-Za-z0-9_ .'/()-]*[A-Za-z0-9_.')]$|^[A-Za-z]$/;

/** A scalar as short as YAML lets it be in any place. */
function scalar(value: string | number | boolean | null): string {
  if (typeof value !== "string") return JSON.stringify(value);
  return PLAIN.test(value) && parse(value) === value ? value : JSON.stringify(value);
}

const keyText = (key: string): string =>
  /^[A-Za-z_][\w-]*$/.test(key) && parse(key) === key ? key : JSON.stringify(key);

/** A value on one line; arrays of numbers as JSON, which is YAML too. */
export function flow(value: unknown): string {
  if (Array.isArray(value))
    return value.every((v) => typeof v === "number" || Array.isArray(v))
      ? JSON.stringify(value)
      : `[${value.map(flow).join(", ")}]`;
  if (value !== null && typeof value === "object") {
    const fields = Object.entries(value).map(([key, v]) => `${keyText(key)}: ${flow(v)}`);
    return fields.length === 0 ? "{}" : `{ ${fields.join(", ")} }`;
  }
  return scalar(value as string | number | boolean | null);
}

const written = (value: unknown, style: Style): string => (style === "json" ? JSON.stringify(value) : flow(value));

const writtenKey = (key: string, style: Style): string => (style === "json" ? JSON.stringify(key) : keyText(key));

const parsed = (text: string): Document.Parsed =>
  parseDocument(text, { version: "1.2", schema: "core", stringKeys: true, prettyErrors: false, logLevel: "silent" });

/**
 * The text with the edits made. They must not overlap.
 *
 * @param file for the message of a refusal
 * @throws BringError when the document is written in a way the edit would break, as with aliases
 */
export function editYaml(file: string, text: string, edits: readonly Edit[], style: Style = "yaml"): string {
  if (edits.length === 0) return text;
  const document = parsed(text);
  const expected: unknown = structuredClone(document.toJS());
  const splices: Splice[] = [];
  // What takes entries out moves those behind them, so it is done last.
  for (const edit of grouped(edits).sort((a, b) => Number(a.op === "items") - Number(b.op === "items"))) {
    splices.push(...spliceFor(document, text, edit, style).map((splice) => ({ ...splice, depth: edit.path.length })));
    apply(expected, edit);
  }
  splices.sort((a, b) => b.from - a.from || a.depth - b.depth);
  const edited = splices.reduce((sum, { from, to, text: own }) => sum.slice(0, from) + own + sum.slice(to), text);
  const check = parsed(edited);
  let sound = check.errors.length === 0;
  try {
    sound &&= isDeepStrictEqual(check.toJS(), expected);
  } catch {
    sound = false;
  }
  if (!sound)
    throw new BringError(
      file,
      "is written in a way that bring cannot edit without rewriting it (aliases, or a value spread over unusual lines). Write its features as `- { type: Feature, ... }`, one for each, and run bring again.",
    );
  return edited;
}

type Grouped =
  | Extract<Edit, { op: "replace" | "remove" }>
  | {
      readonly op: "items";
      readonly path: Path;
      readonly drop: ReadonlySet<number>;
      readonly values: readonly unknown[];
    }
  | { readonly op: "add"; readonly path: Path; readonly fields: readonly (readonly [string, unknown])[] };

/** Several additions at one place become one, in their order, and so do all changes to the entries of one list. */
function grouped(edits: readonly Edit[]): Grouped[] {
  const groups = new Map<string, Grouped>();
  edits.forEach((edit, i) => {
    if (edit.op === "replace" || edit.op === "remove") {
      groups.set(`${i}`, edit);
      return;
    }
    const { path } = edit;
    const at = `${edit.op === "add" ? "add" : "items"} ${JSON.stringify(path)}`;
    const before = groups.get(at);
    if (edit.op === "add") {
      groups.set(at, {
        op: "add",
        path,
        fields: [...(before?.op === "add" ? before.fields : []), [edit.key, edit.value]],
      });
      return;
    }
    const items =
      before?.op === "items" ? before : { op: "items" as const, path, drop: new Set<number>(), values: [] };
    groups.set(
      at,
      edit.op === "append"
        ? { ...items, values: [...items.values, edit.value] }
        : { ...items, drop: new Set([...items.drop, edit.index]) },
    );
  });
  return [...groups.values()];
}

function apply(root: unknown, edit: Grouped): void {
  const step = (value: unknown, key: string | number): unknown => (value as Record<string | number, unknown>)[key];
  const at = (path: Path): Record<string | number, unknown> =>
    path.reduce(step, root) as Record<string | number, unknown>;
  if (edit.op === "replace") at(edit.path.slice(0, -1))[edit.path[edit.path.length - 1]!] = edit.value;
  else if (edit.op === "remove") delete at(edit.path)[edit.key];
  else if (edit.op === "items") {
    const list = at(edit.path) as unknown as unknown[];
    list.splice(0, list.length, ...list.filter((_, i) => !edit.drop.has(i)), ...edit.values);
  } else for (const [key, value] of edit.fields) at(edit.path)[key] = value;
}

const lineEnd = (text: string, at: number): number => {
  const end = text.indexOf("\n", at);
  return end === -1 ? text.length : text[end - 1] === "\r" ? end - 1 : end;
};

const columnOf = (text: string, at: number): number => at - (text.lastIndexOf("\n", at - 1) + 1);

/** Just past the last ink of a node; its range may reach over empty lines. */
function inkEnd(text: string, node: Node): number {
  const [start, end] = node.range!;
  return start + text.slice(start, end).trimEnd().length;
}

function nodeAt(document: Document.Parsed, path: Path): Node {
  let node: unknown = document.contents;
  for (const step of path) {
    if (isAlias(node)) node = node.resolve(document);
    node = isMap(node) || isSeq(node) ? node.get(step, true) : undefined;
  }
  if (!isNode(node)) throw new TypeError(`There is nothing at ${path.join(".")}.`);
  return node;
}

const isEmptyValue = (node: Node): boolean => isScalar(node) && node.value === null;

type Cut = Omit<Splice, "depth">;

function spliceFor(document: Document.Parsed, text: string, edit: Grouped, style: Style): Cut[] {
  const newline = text.includes("\r\n") ? "\r\n" : "\n";
  const insert = (at: number, own: string): Cut[] => [{ from: at, to: at, text: own }];
  const node = nodeAt(document, edit.path);
  const closing = inkEnd(text, node) - 1;
  /** Before the bracket that closes a flow collection, behind its last entry. */
  const intoFlow = (entries: string): Cut[] => {
    const inside = text.slice(node.range![0] + 1, closing);
    const kept = inside.trimEnd();
    const at = node.range![0] + 1 + kept.length;
    if (kept === "")
      return [{ from: node.range![0] + 1, to: closing, text: text[closing] === "}" ? ` ${entries} ` : entries }];
    return insert(at, `${kept.endsWith(",") ? "" : ","} ${entries}`);
  };
  switch (edit.op) {
    case "replace": {
      const empty = node.range![0] === node.range![1];
      const before = text[node.range![0] - 1];
      return [
        {
          from: node.range![0],
          to: empty ? node.range![0] : inkEnd(text, node),
          text: (empty && before === ":" ? " " : "") + written(edit.value, style),
        },
      ];
    }
    case "items":
      return itemCuts(text, node, edit, newline, style);
    case "add": {
      if (isMap(node) && node.flow)
        return intoFlow(
          edit.fields.map(([key, value]) => `${writtenKey(key, style)}: ${written(value, style)}`).join(", "),
        );
      if (!isMap(node) || node.items.length === 0) throw new TypeError(`There is no group at ${edit.path.join(".")}.`);
      const indent = " ".repeat(columnOf(text, (node.items[0]!.key as Node).range![0]));
      const last = node.items[node.items.length - 1]!;
      const lastNode = isNode(last.value) && !isEmptyValue(last.value) ? last.value : (last.key as Node);
      return insert(
        lineEnd(text, inkEnd(text, lastNode)),
        edit.fields.map(([key, value]) => `${newline}${indent}${keyText(key)}: ${flow(value)}`).join(""),
      );
    }
    case "remove":
      return [removal(text, node as YAMLMap, edit.key)];
  }
}

/** Entries taken out of a list with their lines, and new ones behind those that stay. */
function itemCuts(
  text: string,
  node: Node,
  { path, drop, values }: Extract<Grouped, { op: "items" }>,
  newline: string,
  style: Style,
): Cut[] {
  if (!isSeq(node)) throw new TypeError(`There is no list at ${path.join(".")}.`);
  const items = node.items as Node[];
  const kept = items.filter((_, i) => !drop.has(i));
  if (node.flow) return flowItemCuts(text, node, items, drop, values, newline, style);
  if (items.length === 0) throw new TypeError(`There is no list at ${path.join(".")}.`);
  const dash = " ".repeat(columnOf(text, node.range![0]));
  const lines = values.map((value) => `${dash}- ${flow(value)}`);
  const lineOf = (item: Node): { from: number; to: number } => {
    const end = lineEnd(text, inkEnd(text, item));
    return {
      from: text.lastIndexOf("\n", item.range![0] - 1) + 1,
      to: text.startsWith(newline, end) ? end + newline.length : end,
    };
  };
  const cuts = items.flatMap((item, i): Cut[] => (drop.has(i) ? [{ ...lineOf(item), text: "" }] : []));
  const last = kept.at(-1);
  if (last === undefined) {
    if (lines.length === 0) return [{ from: node.range![0], to: inkEnd(text, node), text: "[]" }];
    return cuts.map((cut, i) => (i === 0 ? { ...cut, text: lines.map((line) => line + newline).join("") } : cut));
  }
  if (lines.length > 0) {
    const at = lineEnd(text, inkEnd(text, last));
    cuts.push({ from: at, to: at, text: lines.map((line) => newline + line).join("") });
  }
  return cuts;
}

/** Within brackets; in JSON each new entry on a line of its own, indented like the first. */
function flowItemCuts(
  text: string,
  node: Node,
  items: readonly Node[],
  drop: ReadonlySet<number>,
  values: readonly unknown[],
  newline: string,
  style: Style,
): Cut[] {
  const [start, end] = [node.range![0] + 1, inkEnd(text, node) - 1];
  const inside = text.slice(start, end);
  const indent = /^\s*\n([ \t]*)/.exec(inside)?.[1] ?? "    ";
  const between = style === "json" ? `,${newline}${indent}` : ", ";
  const fresh = values.map((value) => written(value, style)).join(between);
  const last = items.findLastIndex((_, i) => !drop.has(i));
  if (last === -1)
    return [
      {
        from: start,
        to: end,
        text: style === "json" && fresh !== "" ? `${newline}${indent}${fresh}${newline}${indent.slice(2)}` : fresh,
      },
    ];
  const cuts = items.flatMap((item, i): Cut[] =>
    drop.has(i) && i < last ? [{ from: item.range![0], to: items[i + 1]!.range![0], text: "" }] : [],
  );
  const from = inkEnd(text, items[last]!);
  const to = last === items.length - 1 ? from : inkEnd(text, items.at(-1)!);
  return [...cuts, { from, to, text: fresh === "" ? "" : between + fresh }];
}

/** A field with its comma, or with its line. */
function removal(text: string, map: YAMLMap, key: string): Cut {
  const i = map.items.findIndex((pair: Pair) => isScalar(pair.key) && String(pair.key.value) === key);
  const pair = map.items[i]!;
  const from = (pair.key as Node).range![0];
  const to = isNode(pair.value) ? inkEnd(text, pair.value) : inkEnd(text, pair.key as Node);
  if (map.flow) {
    const next = map.items[i + 1];
    if (next) return { from, to: (next.key as Node).range![0], text: "" };
    const before = text.slice(0, from).replace(/,?\s*$/, "").length;
    return { from: before, to, text: "" };
  }
  const start = text.lastIndexOf("\n", from - 1) + 1;
  return {
    from: start,
    to: Math.min(text.length, text.indexOf("\n", to) === -1 ? text.length : text.indexOf("\n", to) + 1),
    text: "",
  };
}
