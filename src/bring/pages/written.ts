/** A page's text with what is to change on it. Pure. */
import { valueAt } from "../../course/schema/issues.ts";
import { featuresBlock } from "./new-page.ts";
import type { Page } from "./pages.ts";
import { editYaml, type Edit } from "./yaml-edit.ts";

/**
 * @param edits to what stands on the page
 * @param added features to add at the end of its list
 * @throws BringError when the page is written in a way that cannot be edited
 */
export function editedPage({ text, start, end, value, file }: Page, edits: readonly Edit[], added: readonly object[]): string {
  const yaml = text.slice(start, end);
  const list = valueAt(value, ["features", "features"]);
  const all: Edit[] = [...edits];
  let tail = "";
  if (added.length > 0) {
    if (Array.isArray(list) && list.length > 0) all.push(...added.map((feature) => ({ op: "append", path: ["features", "features"], value: feature }) as const));
    else if (Array.isArray(list)) all.push({ op: "replace", path: ["features", "features"], value: added });
    else if (valueAt(value, ["features"]) === undefined) {
      const newline = text.includes("\r\n") ? "\r\n" : "\n";
      tail = `${yaml.endsWith("\n") || yaml === "" ? "" : newline}${featuresBlock(added, newline)}${newline}`;
    } else all.push({ op: "replace", path: ["features"], value: { type: "FeatureCollection", features: added } });
  }
  return text.slice(0, start) + editYaml(file, yaml, all) + tail + text.slice(end);
}
