/** A page's texts with what is to change on it: its own, and that of the file its features are in. Pure. */
import { valueAt } from "../../course/schema/issues.ts";
import { featuresBlock } from "./new-page.ts";
import type { FeatureList, Page } from "./pages.ts";
import { editYaml, type Edit } from "./yaml-edit.ts";

export interface PageEdits {
  /** To its fields. */
  readonly fields: readonly Edit[];
  /** To features that stand on it. */
  readonly features: readonly Edit[];
  /** Features to add at the end of its list. */
  readonly added: readonly object[];
}

export interface Written {
  readonly file: string;
  readonly before: string;
  readonly after: string;
}

/**
 * The files that change.
 *
 * @throws BringError when one is written in a way that cannot be edited
 */
export function editedPage(page: Page, { fields, features, added }: PageEdits): Written[] {
  const { list, file, text, start, end } = page;
  const more = additions(list, added);
  const written =
    list.file === file
      ? [
          {
            file,
            before: text,
            after:
              text.slice(0, start) +
              editYaml(file, text.slice(start, end), [...fields, ...features, ...more.edits]) +
              more.tail +
              text.slice(end),
          },
        ]
      : [
          {
            file,
            before: text,
            after: text.slice(0, start) + editYaml(file, text.slice(start, end), fields) + text.slice(end),
          },
          {
            file: list.file,
            before: list.text,
            after: editYaml(list.file, list.text, [...features, ...more.edits], list.style),
          },
        ];
  return written.filter(({ before, after }) => before !== after);
}

/** New features at the end of the list, or with a list where there is none. */
function additions(
  { text, start, end, value, path }: FeatureList,
  added: readonly object[],
): { edits: readonly Edit[]; tail: string } {
  if (added.length === 0) return { edits: [], tail: "" };
  const at = [...path, "features"];
  const collection = valueAt(value, path);
  const there = valueAt(value, at);
  if (Array.isArray(there) && there.length > 0)
    return { edits: added.map((feature) => ({ op: "append", path: at, value: feature })), tail: "" };
  if (Array.isArray(there)) return { edits: [{ op: "replace", path: at, value: added }], tail: "" };
  if (collection !== undefined)
    return { edits: [{ op: "replace", path, value: { type: "FeatureCollection", features: added } }], tail: "" };
  const newline = text.includes("\r\n") ? "\r\n" : "\n";
  const yaml = text.slice(start, end);
  return {
    edits: [],
    tail: `${yaml.endsWith("\n") || yaml === "" ? "" : newline}${featuresBlock(added, newline)}${newline}`,
  };
}
