/**
 * What a page opens when it is asked to: a map, a film. How it stands, and what can happen to
 * it, in whatever order. Pure; `openable.ts` does what is to be done.
 */

export type Opening<Thing, Reason> =
  | { readonly kind: "closed"; readonly turn: number }
  /** `turn` counts the times it was asked for: what an earlier one brings is not wanted any more. */
  | { readonly kind: "loading"; readonly turn: number }
  | { readonly kind: "ready"; readonly turn: number; readonly thing: Thing }
  | { readonly kind: "failed"; readonly turn: number; readonly reason: Reason };

export type OpeningEvent<Thing, Reason> =
  | { readonly kind: "asked" }
  | { readonly kind: "arrived"; readonly turn: number; readonly thing: Thing }
  /** While it loads, or later, when the device takes its drawing away. */
  | { readonly kind: "failed"; readonly turn: number; readonly reason: Reason }
  | { readonly kind: "closed" };

export const CLOSED: Opening<never, never> = { kind: "closed", turn: 0 };

/** Whether something is loading or open, and so must be ended some time. */
export const isOn = ({ kind }: Opening<unknown, unknown>): boolean => kind === "loading" || kind === "ready";

/** The same state where an event changes nothing. */
export function next<Thing, Reason>(
  state: Opening<Thing, Reason>,
  event: OpeningEvent<Thing, Reason>,
): Opening<Thing, Reason> {
  const { kind, turn } = state;
  switch (event.kind) {
    case "asked":
      return isOn(state) ? state : { kind: "loading", turn: turn + 1 };
    case "arrived":
      return kind === "loading" && event.turn === turn ? { kind: "ready", turn, thing: event.thing } : state;
    case "failed":
      return isOn(state) && event.turn === turn ? { kind: "failed", turn, reason: event.reason } : state;
    case "closed":
      return isOn(state) ? { kind: "closed", turn } : state;
  }
}
