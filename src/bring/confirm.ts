/** What was proposed becomes the club's own: its marks are taken away. Pure. */
import { isProposed } from "../course/draft.ts";
import { valueAt } from "../course/schema/issues.ts";
import type { CoursePages, Page } from "./pages/pages.ts";
import { editedPage } from "./pages/written.ts";
import type { Edit } from "./pages/yaml-edit.ts";
import type { PlannedFile } from "./plan.ts";

/** What can be confirmed at a time. */
export const CONFIRMABLE = ["lines", "markers", "par", "card"] as const;
export type Confirmable = (typeof CONFIRMABLE)[number];

const KIND = { "line-of-play": "lines", "tee-marker": "markers" } as const;

/** The pages without the marks of what is confirmed. */
export function confirmed(pages: CoursePages, what: readonly Confirmable[]): { files: PlannedFile[]; count: number } {
  let count = 0;
  const files = pages.holes.flatMap((page) => {
    const features = page.features.flatMap((feature): Edit[] => {
      const own = KIND[feature.kind as keyof typeof KIND];
      if (!isProposed(feature) || own === undefined || !what.includes(own)) return [];
      return [{ op: "remove", path: [...feature.path, "properties"], key: "proposed" }];
    });
    const fields = fieldEdits(page, what);
    count += features.length + fields.removed;
    return editedPage(page, { fields: fields.edits, features, added: [] });
  });
  return { files, count };
}

function fieldEdits({ value }: Page, what: readonly Confirmable[]): { edits: Edit[]; removed: number } {
  const listed = valueAt(value, ["proposed"]);
  if (!Array.isArray(listed)) return { edits: [], removed: 0 };
  const left = listed.filter((field) => !(what as readonly unknown[]).includes(field));
  if (left.length === listed.length) return { edits: [], removed: 0 };
  return {
    edits: [
      left.length === 0
        ? { op: "remove", path: [], key: "proposed" }
        : { op: "replace", path: ["proposed"], value: left },
    ],
    removed: listed.length - left.length,
  };
}
