/**
 * Works out how a reading's legs play: heights from the guide's tiles, then the flight code, fetched at the
 * first need.
 */
import type { Conditions } from "../conditions-store.ts";
import type { Frame } from "../../geo/frame.ts";
import type { HeightTiles } from "../../contract/map-data.ts";
import type { Reading } from "./measure-tap.ts";
import type { Plays } from "./plays.ts";
import { heightsOf } from "./heights.ts";
import { tilePixels } from "./tile-pixels.ts";

/** A reader waits this long for more than distances before distances are said. */
const LATE_MS = 1_500;

export interface PlaysReader {
  /** Whether the guide has heights at all. */
  readonly possible: boolean;
  /** `done` is called once unless another reading comes first; `late` before it, when it takes long. */
  read(
    reading: Reading,
    conditions: Conditions,
    calls: { readonly late: () => void; readonly done: (plays: Plays | undefined, wasLate: boolean) => void },
  ): void;
  /** Drops the reading that is being worked on. */
  forget(): void;
}

export function playsReader(ground: HeightTiles | undefined, { toPlane }: Frame): PlaysReader {
  const heights = ground && heightsOf(ground, tilePixels);
  let turn = 0;
  let timer: ReturnType<typeof setTimeout> | undefined;

  async function work({ legs, toFrontMetres }: Reading, conditions: Conditions): Promise<Plays | undefined> {
    if (heights === undefined) return undefined;
    // On the green there is no leg on to play.
    const stops = toFrontMetres === undefined ? legs.slice(0, 2) : legs;
    const [{ playsOf }, ...found] = await Promise.all([
      import("./plays.ts"),
      ...stops.map((stop) => heights.at(stop)),
    ]);
    const known = found.flatMap((heightMetres, i) =>
      heightMetres === undefined ? [] : [{ point: toPlane(stops[i]!), heightMetres }],
    );
    return known.length < stops.length ? undefined : playsOf(known, conditions);
  }

  const forget = (): void => {
    turn += 1;
    clearTimeout(timer);
  };
  return {
    possible: heights !== undefined,
    read(reading, conditions, { late, done }) {
      forget();
      const own = turn;
      let wasLate = false;
      timer = setTimeout(() => {
        wasLate = true;
        late();
      }, LATE_MS);
      // Heights or code that do not come leave the distances standing.
      void work(reading, conditions)
        .catch(() => undefined)
        .then((plays) => {
          if (own !== turn) return;
          clearTimeout(timer);
          done(plays, wasLate);
        });
    },
    forget,
  };
}
