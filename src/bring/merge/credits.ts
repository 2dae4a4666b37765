/** Sources and licences of what is brought, in course.yaml, where they are printed from. Pure. */
import { valueAt } from "../../course/schema/issues.ts";
import type { Edit } from "../pages/yaml-edit.ts";

export interface SourceFile {
  /** Name of the file, without folders. */
  readonly name: string;
  readonly openStreetMap: boolean;
}

/** What the person at the keyboard says of files that do not say it themselves. */
export interface StatedSource {
  readonly text: string | undefined;
  readonly licence: string | undefined;
  readonly link: string | undefined;
}

/** As its copyright page asks for it. */
export const OPEN_STREET_MAP = {
  text: "© OpenStreetMap contributors",
  licence: "Open Database License (ODbL) 1.0",
  link: "https://www.openstreetmap.org/copyright",
} as const;

/**
 * @param value of course.yaml
 * @param files those that features were taken from in this run
 */
export function creditEdits(value: unknown, files: readonly SourceFile[], stated: StatedSource): Edit[] {
  const listed = valueAt(value, ["sources"]);
  const sources: readonly unknown[] = Array.isArray(listed) ? listed : [];
  const edits: Edit[] = [];
  const fresh: Record<string, unknown>[] = [];
  for (const { name, openStreetMap } of files) {
    const named = sources.findIndex((source) => filesOf(source).includes(name));
    if (named !== -1) {
      edits.push(
        ...Object.entries(openStreetMap ? OPEN_STREET_MAP : stated).flatMap(([key, said]): Edit[] =>
          said === undefined || valueAt(sources[named], [key]) !== undefined
            ? []
            : [{ op: "add", path: ["sources", named], key, value: said }],
        ),
      );
      continue;
    }
    const credit: Record<string, unknown> = Object.fromEntries(
      Object.entries(openStreetMap ? OPEN_STREET_MAP : stated).filter(([, said]) => said !== undefined),
    );
    const alike = (source: unknown): boolean =>
      credit["text"] !== undefined &&
      credit["licence"] !== undefined &&
      ["text", "licence"].every((key) => valueAt(source, [key]) === credit[key]);
    const there = sources.findIndex(alike);
    const made = fresh.find(alike);
    if (made !== undefined) made["files"] = [...filesOf(made), name];
    else if (there === -1) fresh.push({ ...credit, files: [name] });
    else if (Array.isArray(valueAt(sources[there], ["files"])))
      edits.push({ op: "append", path: ["sources", there, "files"], value: name });
    else edits.push({ op: "add", path: ["sources", there], key: "files", value: [name] });
  }
  if (fresh.length === 0) return edits;
  if (sources.length > 0)
    return [...edits, ...fresh.map((source): Edit => ({ op: "append", path: ["sources"], value: source }))];
  return [
    ...edits,
    listed === undefined
      ? { op: "add", path: [], key: "sources", value: fresh }
      : { op: "replace", path: ["sources"], value: fresh },
  ];
}

const filesOf = (source: unknown): readonly unknown[] => {
  const files = valueAt(source, ["files"]);
  return Array.isArray(files) ? files : [];
};
