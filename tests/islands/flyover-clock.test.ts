import { describe, expect, test } from "vitest";
import { clock, type Ticker } from "../../src/islands/flyover/clock.ts";

/** Frames that come when the test says so. */
function frames(): Ticker & { next(milliseconds: number): void; readonly waiting: number } {
  const asked = new Map<number, (milliseconds: number) => void>();
  let count = 0;
  return {
    request(tick) {
      asked.set(++count, tick);
      return count;
    },
    cancel: (request) => void asked.delete(request),
    next(milliseconds) {
      const due = [...asked.values()];
      asked.clear();
      for (const tick of due) tick(milliseconds);
    },
    get waiting() {
      return asked.size;
    },
  };
}

const started = (length = 10) => {
  const ticker = frames();
  let changes = 0;
  const time = clock(length, ticker, () => changes++);
  return { time, ticker, changes: () => changes };
};

describe("a film's clock", () => {
  test("stands until it is played, and asks for no frames while it stands", () => {
    const { time, ticker } = started();
    expect([time.seconds, time.running, ticker.waiting]).toEqual([0, false, 0]);
    time.play();
    time.pause();
    expect([time.running, ticker.waiting]).toEqual([false, 0]);
  });

  test("goes with the frames, at its speed, from where it was", () => {
    const { time, ticker } = started();
    time.play();
    ticker.next(5000);
    expect(time.seconds).toBe(0);
    ticker.next(5200);
    expect(time.seconds).toBeCloseTo(0.2, 9);
    time.setSpeed(2);
    ticker.next(5300);
    expect(time.seconds).toBeCloseTo(0.4, 9);
    time.pause();
    time.play();
    // The pause is not made up for.
    ticker.next(60_000);
    ticker.next(60_100);
    expect(time.seconds).toBeCloseTo(0.6, 9);
  });

  test("a picture that took long holds the film back, and a clock set back does not turn it", () => {
    const { time, ticker } = started();
    time.play();
    ticker.next(1000);
    ticker.next(9000);
    expect(time.seconds).toBe(0.5);
    ticker.next(8000);
    expect(time.seconds).toBe(0.5);
  });

  test("stops at the end and starts over from there", () => {
    const { time, ticker } = started(1);
    time.seek(0.9);
    time.play();
    ticker.next(0);
    ticker.next(400);
    expect([time.seconds, time.running, ticker.waiting]).toEqual([1, false, 0]);
    time.play();
    expect([time.seconds, time.running]).toEqual([0, true]);
  });

  test("is set only within the film, and says so each time", () => {
    const { time, changes } = started(10);
    time.seek(-3);
    expect(time.seconds).toBe(0);
    time.seek(30);
    expect(time.seconds).toBe(10);
    expect(changes()).toBe(2);
  });
});
