/** The day's conditions and own lengths without a page: how they stand after anything a golfer does. */
import { describe, expect, test } from "vitest";
import type { ConditionsField } from "../../src/contract/dataset.ts";
import { limitsOf } from "../../src/islands/conditions-model.ts";
import {
  isRefused,
  nextConditions,
  textOf,
  type ConditionsEvent,
  type ConditionsState,
} from "../../src/islands/conditions-state.ts";
import { NO_CONDITIONS, readConditions, writeConditions } from "../../src/islands/conditions-store.ts";
import { seeded, type Random } from "../faults/random.ts";

const FIELDS: readonly ConditionsField[] = ["speed", "from", "temperature", "carry"];
const UNITS = ["yards", "metres"] as const;
const OPEN: ConditionsState = { units: "yards", conditions: NO_CONDITIONS, lengths: {}, typed: {} };

const typed = (field: ConditionsField, text: string): ConditionsEvent => ({
  kind: "typed",
  field,
  text,
  bearing: 275,
});

function anyEvent({ below, pick }: Random): ConditionsEvent {
  return pick<() => ConditionsEvent>([
    () =>
      typed(pick(FIELDS), pick(["", "0", "5", "12", "12,5", "200", "260", "361", "900", "-4", "far", "1e3", "−7"])),
    () => typed(pick(FIELDS), String(below(400))),
    () => ({ kind: "left", field: pick(FIELDS) }),
    () => ({ kind: "wind", wind: pick([undefined, { speedMetresPerSecond: below(20), fromDegrees: below(360) }]) }),
    () => ({ kind: "reset" }),
    () => ({ kind: "lengths", lengths: pick([{}, { hybrid: 150 }]) }),
    () => ({ kind: "units", units: pick(UNITS) }),
    () => ({ kind: "stored", conditions: { ...NO_CONDITIONS, carryMetres: 180 }, lengths: {} }),
  ])();
}

function walk(look: (before: ConditionsState, event: ConditionsEvent, after: ConditionsState) => void): void {
  for (let seed = 0; seed < 200; seed++) {
    const random = seeded(seed);
    let state = OPEN;
    for (let i = 0; i < 40; i++) {
      const before = state;
      const event = anyEvent(random);
      state = nextConditions(before, event);
      look(before, event, state);
    }
  }
}

describe("after any events", () => {
  test("what stands is what this device would keep and read again", () => {
    walk((_before, _event, { conditions }) =>
      expect(readConditions(writeConditions(conditions, 1_000) ?? null, 2_000)).toEqual(conditions),
    );
  });

  test("what is refused changes nothing, and stays until that field or another is mended", () => {
    let refusals = 0;
    walk((before, event, after) => {
      if (event.kind === "typed" && isRefused(after, event.field)) {
        refusals += 1;
        expect([after.conditions, after.lengths]).toEqual([before.conditions, before.lengths]);
      }
      if (event.kind === "left" && isRefused(before, event.field)) expect(after).toBe(before);
    });
    expect(refusals).toBeGreaterThan(200);
  });

  test("a field keeps what is typed in it only while it is typed: all others show what stands", () => {
    walk((_before, event, after) => {
      if (event.kind !== "typed") expect(event.kind === "left" || Object.keys(after.typed).length === 0).toBe(true);
      else expect(after.typed[event.field]).toBeDefined();
    });
  });

  test("another unit, or another tab's lengths, is not the golfer's wind: the day stays what it was", () => {
    walk((before, event, after) => {
      if (event.kind === "units" || event.kind === "lengths") expect(after.conditions).toBe(before.conditions);
      if (event.kind === "reset")
        expect(after.conditions).toEqual({ ...before.conditions, wind: undefined, temperatureCelsius: undefined });
    });
  });
});

test("a whole number within its limits is shown as it was typed, in either unit", () => {
  for (const units of UNITS)
    for (const field of FIELDS) {
      const { least, most } = limitsOf(field, units);
      for (let value = least; value <= most; value++) {
        const state = nextConditions(nextConditions({ ...OPEN, units }, typed(field, String(value))), {
          kind: "left",
          field,
        });
        // A direction of 360 degrees is north, 0.
        expect(textOf(state, field), `${field} in ${units}`).toBe(String(field === "from" ? value % 360 : value));
      }
    }
});

test("a wind without a direction comes from where the hole leads", () => {
  expect(nextConditions(OPEN, typed("speed", "10")).conditions.wind?.fromDegrees).toBe(275);
});
