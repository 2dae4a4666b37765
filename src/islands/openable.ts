/** Opens and ends what opening.ts says is wanted, and shows how it stands. */
import { CLOSED, isOn, next, type Opening, type OpeningEvent } from "./opening.ts";

/** One time that it is opened. */
export interface Turn<Reason> {
  /** Aborted when it is closed or has failed: all that was begun for it ends with this. */
  readonly signal: AbortSignal;
  readonly close: () => void;
  readonly fail: (reason: Reason) => void;
}

export interface OpenableInput<Thing, Reason> {
  readonly load: (turn: Turn<Reason>) => Promise<Thing>;
  /** What a load that was refused stands for. */
  readonly reasonOf: (cause: unknown) => Reason;
  /** Called after every change. */
  readonly show: (state: Opening<Thing, Reason>) => void;
}

export interface Openable<Thing> {
  open(): void;
  close(): void;
  /** What is open now. */
  thing(): Thing | undefined;
}

export function openable<Thing, Reason>({ load, reasonOf, show }: OpenableInput<Thing, Reason>): Openable<Thing> {
  let state: Opening<Thing, Reason> = CLOSED;
  let ending = new AbortController();

  function happen(event: OpeningEvent<Thing, Reason>): void {
    const before = state;
    state = next(before, event);
    if (state === before) return;
    if (isOn(before) && !isOn(state)) ending.abort();
    show(state);
    if (state.kind === "loading") begin(state.turn);
  }

  function begin(turn: number): void {
    ending = new AbortController();
    const fail = (reason: Reason): void => happen({ kind: "failed", turn, reason });
    load({ signal: ending.signal, close, fail }).then(
      (thing) => happen({ kind: "arrived", turn, thing }),
      (cause: unknown) => fail(reasonOf(cause)),
    );
  }

  const close = (): void => happen({ kind: "closed" });
  return {
    open: () => happen({ kind: "asked" }),
    close,
    thing: () => (state.kind === "ready" ? state.thing : undefined),
  };
}
