/** One field of a hole's page held against what a line of play says of it. Pure. */

export interface FieldMerge {
  readonly value: unknown;
  readonly change: string | undefined;
  readonly kept: string | undefined;
}

/** One field of a page's card against what the source says; undefined where nothing is to be done or said. */
export function mergeField(name: string, page: unknown, source: unknown, last: unknown): FieldMerge | undefined {
  const show = (value: unknown): string => (typeof value === "object" ? JSON.stringify(value) : String(value));
  const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);
  if (source === undefined || same(page, source)) return undefined;
  if (page === undefined && last === undefined)
    return { value: source, change: `${name}: ${show(source)} added`, kept: undefined };
  if (last !== undefined && same(page, last))
    return { value: source, change: `${name}: ${show(page)} becomes ${show(source)}`, kept: undefined };
  if (last !== undefined && same(source, last)) return undefined;
  return {
    value: undefined,
    change: undefined,
    kept: `${name}: ${page === undefined ? "left out" : show(page)} (the source says ${show(source)})`,
  };
}
