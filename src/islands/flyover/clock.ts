/** The film's time: runs, stands, is set. It knows no picture. */

/** What a clock needs of its surroundings; a test gives its own. */
export interface Ticker {
  /** Calls back with a time in milliseconds, once. */
  request(tick: (milliseconds: number) => void): number;
  cancel(request: number): void;
}

export interface Clock {
  readonly seconds: number;
  readonly running: boolean;
  play(): void;
  pause(): void;
  seek(seconds: number): void;
  setSpeed(times: number): void;
}

/** A picture that takes longer than this holds the film back, so that no part is skipped over. */
const LONGEST_TICK_SECONDS = 0.5;

/** @param changed called whenever time, or whether it runs, has changed */
export function clock(lengthSeconds: number, ticker: Ticker, changed: () => void): Clock {
  let [seconds, speed] = [0, 1];
  let request: number | undefined;
  let last: number | undefined;
  const tick = (now: number): void => {
    const gone = last === undefined ? 0 : Math.min(LONGEST_TICK_SECONDS, Math.max(0, (now - last) / 1000));
    last = now;
    seconds = Math.min(lengthSeconds, seconds + gone * speed);
    request = seconds < lengthSeconds ? ticker.request(tick) : undefined;
    changed();
  };
  const pause = (): void => {
    if (request === undefined) return;
    ticker.cancel(request);
    request = undefined;
    changed();
  };
  return {
    get seconds() {
      return seconds;
    },
    get running() {
      return request !== undefined;
    },
    play() {
      if (request !== undefined) return;
      if (seconds >= lengthSeconds) seconds = 0;
      last = undefined;
      request = ticker.request(tick);
      changed();
    },
    pause,
    seek(to) {
      seconds = Math.min(lengthSeconds, Math.max(0, to));
      changed();
    },
    setSpeed(times) {
      speed = times;
    },
  };
}
