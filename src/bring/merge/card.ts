/** What lines of play say of their holes (name, par, stroke index, card), held against the pages. Pure. */
import { valueAt } from "../../course/schema/issues.ts";
import type { Fields } from "../normalise/said.ts";
import type { Page } from "../pages/pages.ts";
import type { Edit } from "../pages/yaml-edit.ts";
import { mergeField } from "./field.ts";

/** @param last what the source said when it was brought last */
export function fieldEdits(page: Page, fields: Fields, last: Fields): { edits: Edit[]; notes: string[] } {
  const edits: Edit[] = [];
  const notes: string[] = [];
  const cardThere = valueAt(page.value, ["card"]) !== undefined;
  const newCard: Record<string, unknown> = {};
  for (const [field, value] of Object.entries(fields)) {
    const path = field.split(".");
    const own = valueAt(page.value, path);
    // The page's own name is the club's; a source's name only fills a gap.
    if (field === "name" && own !== undefined && last[field] === undefined) continue;
    const merged = mergeField(field, own, value, last[field]);
    if (merged === undefined) continue;
    if (merged.kept) notes.push(`${page.file} keeps ${merged.kept}.`);
    if (!merged.change) continue;
    notes.push(`${page.file}: ${merged.change}.`);
    if (own !== undefined) edits.push({ op: "replace", path, value });
    else if (path.length === 1) edits.push({ op: "add", path: [], key: field, value });
    else if (cardThere) edits.push({ op: "add", path: ["card"], key: path[1]!, value });
    else newCard[path[1]!] = value;
  }
  if (Object.keys(newCard).length > 0) edits.push({ op: "add", path: [], key: "card", value: newCard });
  return { edits, notes };
}
