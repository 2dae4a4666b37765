/** A map or film that is opened, fails, is closed and opened again, in any order. */
import { describe, expect, test } from "vitest";
import { openable, type Turn } from "../../src/islands/openable.ts";
import { CLOSED, isOn, next, type Opening, type OpeningEvent } from "../../src/islands/opening.ts";
import { seeded } from "../faults/random.ts";

type State = Opening<string, string>;

const SEEDS = Array.from({ length: 300 }, (_, seed) => seed);

describe("how it stands", () => {
  test("after any events, early and late: ready only with what the last asking brought, failed only by it", () => {
    for (const seed of SEEDS) {
      const { pick, below } = seeded(seed);
      let state: State = CLOSED;
      for (let i = 0; i < 40; i++) {
        const turn = below(state.turn + 2);
        const event: OpeningEvent<string, string> = pick([
          { kind: "asked" },
          { kind: "closed" },
          { kind: "arrived", turn, thing: `thing ${turn}` },
          { kind: "failed", turn, reason: `reason ${turn}` },
        ] as const);
        const before: State = state;
        state = next(before, event);
        if (state.kind === "ready") expect(state.thing).toBe(`thing ${state.turn}`);
        if (state.kind === "failed") expect(state.reason).toBe(`reason ${state.turn}`);
        expect(state.turn - before.turn).toBe(event.kind === "asked" && !isOn(before) ? 1 : 0);
        if (event.kind === "closed") expect(state.kind).not.toMatch(/loading|ready/);
        if ((event.kind === "arrived" || event.kind === "failed") && event.turn !== before.turn)
          expect(state).toBe(before);
      }
    }
  });
});

/** A load that is answered when the test says so, and what it still holds. */
interface Load extends Turn<string> {
  readonly answer: (thing: string) => void;
  readonly refuse: (cause: string) => void;
}

/** Lets promises that are settled have their say. */
const settle = async (): Promise<void> => {
  for (let i = 0; i < 4; i++) await Promise.resolve();
};

function made() {
  const loads: Load[] = [];
  const shown: string[] = [];
  const one = openable<string, string>({
    load: (turn) => new Promise((answer, refuse) => loads.push({ ...turn, answer, refuse })),
    reasonOf: String,
    show: ({ kind }) => shown.push(kind),
  });
  /** Which loads have not ended. */
  const wanted = (): number[] => loads.flatMap(({ signal }, i) => (signal.aborted ? [] : [i]));
  return { one, loads, shown, wanted };
}

describe("opening and closing", () => {
  test("in any order leaves nothing begun behind: closed or failed, every turn has ended; else the last alone goes on", async () => {
    for (const seed of SEEDS) {
      const { pick } = seeded(seed);
      const { one, loads, shown, wanted } = made();
      for (let i = 0; i < 30; i++) {
        const load = loads.length === 0 ? undefined : pick(loads);
        pick([
          () => one.open(),
          () => one.open(),
          () => one.close(),
          () => load?.answer("it"),
          () => load?.refuse("gone"),
          () => load?.fail("lost"),
          () => load?.close(),
        ] as const)();
        await settle();
        const last = shown.at(-1) ?? "closed";
        if (last === "closed" || last === "failed") expect(wanted()).toEqual([]);
        else expect(wanted()).toEqual([loads.length - 1]);
        expect(one.thing() !== undefined).toBe(last === "ready");
      }
      one.close();
      expect(wanted()).toEqual([]);
    }
  });

  test("says each change once, the loading before the load begins", () => {
    const { one, shown, loads } = made();
    one.close();
    one.open();
    one.open();
    expect(shown).toEqual(["loading"]);
    expect(loads).toHaveLength(1);
    one.close();
    one.close();
    expect(shown).toEqual(["loading", "closed"]);
  });

  test("what was given up and comes all the same is not shown", async () => {
    const { one, loads, shown } = made();
    one.open();
    one.close();
    loads[0]!.answer("late");
    await settle();
    expect(shown.at(-1)).toBe("closed");
    one.open();
    loads[0]!.fail("late");
    expect(shown.at(-1)).toBe("loading");
    loads[1]!.answer("it");
    await settle();
    expect(one.thing()).toBe("it");
  });
});
