/** The golfer's own lengths as this device keeps them: only those typed by hand, whatever the driver carries. */
import { isCarryLength, RUNG_IDS, type DerivedRungId, type OwnLengths } from "../measure/ladder.ts";

const DERIVED: readonly DerivedRungId[] = RUNG_IDS.filter((id): id is DerivedRungId => id !== "driver");

/** What was kept; nothing of a text that is not ours, and no length that no stroke has. */
export function readLengths(text: string | null): OwnLengths {
  let value: unknown;
  try {
    value = JSON.parse(text ?? "");
  } catch {
    return {};
  }
  if (typeof value !== "object" || value === null) return {};
  const kept = value as Record<string, unknown>;
  return Object.fromEntries(
    DERIVED.flatMap((id) => {
      const metres = kept[id];
      return typeof metres === "number" && isCarryLength(metres) ? [[id, metres]] : [];
    }),
  );
}

/** Undefined for none: nothing is kept then. */
export const writeLengths = (own: OwnLengths): string | undefined =>
  Object.keys(own).length === 0 ? undefined : JSON.stringify(own);

/** With one length given, or taken back. */
export function withLength(own: OwnLengths, id: DerivedRungId, metres: number | undefined): OwnLengths {
  const { [id]: _before, ...others } = own;
  return metres === undefined ? others : { ...others, [id]: metres };
}
