/**
 * A hole's name, par, stroke index and card: what the line of play says and what the ground
 * proposes, held against the page. Pure. What the club wrote stays; what is marked as a
 * placeholder or as proposed gives way, and loses its mark where something better came.
 */
import { valueAt } from "../../course/schema/issues.ts";
import type { MarkedField } from "../../course/types.ts";
import type { Fields } from "../normalise/said.ts";
import type { Page } from "../pages/pages.ts";
import type { Edit } from "../pages/yaml-edit.ts";
import { mergeField } from "./field.ts";

/** What the ground proposes where nothing better is known. */
export interface Measured {
  readonly par: number | undefined;
  /** Whole yards by tee set; undefined where it is not asked for. */
  readonly card: Readonly<Record<string, number>> | undefined;
}

export interface FieldEdits {
  readonly edits: readonly Edit[];
  readonly notes: readonly string[];
}

const MARKS = ["placeholder", "proposed"] as const;

const marked = (page: Page, mark: (typeof MARKS)[number]): ReadonlySet<unknown> => {
  const list = valueAt(page.value, [mark]);
  return new Set(Array.isArray(list) ? list : []);
};

/** Whether a field of the page is not the club's own yet. */
export const isMarked = (page: Page, field: MarkedField): boolean =>
  MARKS.some((mark) => marked(page, mark).has(field));

/** @param last what the source said when it was brought last */
export function fieldEdits(
  page: Page,
  fields: Fields,
  last: Fields,
  measured: Measured = { par: undefined, card: undefined },
): FieldEdits {
  const edits: Edit[] = [];
  const marks = { placeholder: new Set(marked(page, "placeholder")), proposed: new Set(marked(page, "proposed")) };
  const unmark = (field: MarkedField): void => MARKS.forEach((mark) => marks[mark].delete(field));
  const propose = (field: MarkedField): void => {
    unmark(field);
    marks.proposed.add(field);
  };
  const put = (field: string, value: unknown): void => {
    const own = valueAt(page.value, [field]);
    if (JSON.stringify(own) === JSON.stringify(value)) return;
    edits.push(
      own === undefined ? { op: "add", path: [], key: field, value } : { op: "replace", path: [field], value },
    );
  };
  for (const field of ["par", "strokeIndex"] as const) {
    const value = fields[field];
    const proposal = field === "par" ? measured.par : undefined;
    if (isMarked(page, field) && value !== undefined) {
      put(field, value);
      unmark(field);
    } else if (isMarked(page, field) && proposal !== undefined) {
      put(field, proposal);
      propose(field);
    }
  }
  const said = Object.fromEntries(
    Object.entries(fields).flatMap(([field, value]) =>
      field.startsWith("card.") ? [[field.slice("card.".length), value]] : [],
    ),
  );
  const cardOpen = isMarked(page, "card") || valueAt(page.value, ["card"]) === undefined;
  if (isMarked(page, "card") || (cardOpen && measured.card !== undefined)) {
    const own = (valueAt(page.value, ["card"]) ?? {}) as Readonly<Record<string, unknown>>;
    const card = { ...(measured.card ?? own), ...said };
    const sets = Object.keys(card);
    if (sets.length > 0) put("card", card);
    if (sets.length > 0 && sets.every((tee) => said[tee] !== undefined)) unmark("card");
    else if (measured.card !== undefined) propose("card");
  }
  const club = Object.entries(fields).filter(
    ([field]) =>
      !(["par", "strokeIndex"] as const).some((one) => one === field && isMarked(page, one)) &&
      !(field.startsWith("card.") && isMarked(page, "card")),
  );
  const merged = mergeClubFields(page, Object.fromEntries(club), last);
  const lists = MARKS.flatMap((mark): Edit[] => {
    const now = [...marks[mark]];
    if (JSON.stringify(now) === JSON.stringify([...marked(page, mark)])) return [];
    return [
      valueAt(page.value, [mark]) === undefined
        ? { op: "add", path: [], key: mark, value: now }
        : { op: "replace", path: [mark], value: now },
    ];
  });
  return { edits: [...edits, ...merged.edits, ...lists], notes: merged.notes };
}

const shown = (value: unknown): string => (typeof value === "object" ? JSON.stringify(value) : String(value));

/** Fields that are the club's own, or are not there. */
function mergeClubFields(page: Page, fields: Fields, last: Fields): FieldEdits {
  const edits: Edit[] = [];
  const notes: string[] = [];
  const cardThere = valueAt(page.value, ["card"]) !== undefined;
  const newCard: Record<string, unknown> = {};
  // On a page that is still as it was begun, its number is no name.
  const begun = MARKS.some((mark) => marked(page, mark).size > 0);
  for (const [field, value] of Object.entries(fields)) {
    const path = field.split(".");
    const own = valueAt(page.value, path);
    const standsIn = begun && field === "name" && own === `Hole ${page.at}`;
    // The page's own name is the club's; a source's name only fills a gap.
    if (field === "name" && own !== undefined && !standsIn && last[field] === undefined) continue;
    const merged =
      standsIn && own !== value
        ? { value, change: `${field}: ${own} becomes ${shown(value)}`, kept: undefined }
        : mergeField(field, own, value, last[field]);
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
