/** The search behind every effective length. */
import { describe, expect, it } from "vitest";
import { findCarry } from "../../src/flight/search.ts";

const BOUNDS = [36, 311] as const;

describe("search for a carry", () => {
  it.each([40, 161.3, 309])("finds %d m from any start", (wanted) => {
    for (const guess of [-5, 36, 140, 311, 500]) {
      // Bent both ways, so a straight line through two trials overshoots.
      const answer = findCarry(BOUNDS, guess, (carry) => ({
        missMetres: (carry - wanted) ** 3 / 5000 + 2 * (carry - wanted),
      }));
      expect(answer.found && answer.carryMetres).toBeCloseTo(wanted, 3);
    }
  });

  it("says which side everything is on when there is none", () => {
    expect(findCarry(BOUNDS, 60, (carry) => ({ missMetres: carry - 500 }))).toEqual({ found: false, side: "short" });
    expect(findCarry(BOUNDS, 60, (carry) => ({ missMetres: carry + 500 }))).toEqual({ found: false, side: "long" });
  });

  it("ends at a jump, and its trial shows the miss", () => {
    const answer = findCarry(BOUNDS, 60, (carry) => ({ missMetres: carry < 50 ? -90 : 40 }));
    expect(answer).toMatchObject({ found: true });
    expect(answer.found && Math.abs(answer.trial.missMetres)).toBeGreaterThanOrEqual(40);
  });
});
