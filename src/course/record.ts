/** Whether a value of unknown make has fields: an object that is no list. */
export const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  value !== null && typeof value === "object" && !Array.isArray(value);
