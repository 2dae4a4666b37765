/** Where the golfer is: explained, asked for, followed, let go of; and plain figures turned on by it. */
import type { Fix, Whereabouts } from "./whereabouts.ts";
import { isPlain, setPlain } from "../plain.ts";
import { follow, type LocateFault } from "./locate.ts";

export type MyState =
  | { readonly kind: "off" }
  | { readonly kind: "explaining" }
  | { readonly kind: "asking" }
  | { readonly kind: "fault"; readonly fault: LocateFault }
  | { readonly kind: "found"; readonly where: Whereabouts };

export interface MyPlace {
  readonly state: MyState;
  /** Plain figures came on by themselves, and are on still. */
  readonly plainTurned: boolean;
  /** The tool was pressed: begins with the explanation, or lets go. */
  press(): void;
  /** The golfer has read it and wants it. */
  agree(): void;
  /** The golfer is not in a round, or their Committee allows it. */
  allFigures(): void;
  stop(): void;
}

/** @param changed called after each change, `news` false for a position much like the last */
export function myPlace(input: { readonly classify: (fix: Fix) => Whereabouts; readonly changed: (news: boolean) => void }): MyPlace {
  let state: MyState = { kind: "off" };
  let letGo: (() => void) | undefined;
  let turned = false;
  // Once: who turns them off again, here or on the page, is not in a round or may have them.
  let considered = false;
  let told: Told | undefined;

  const set = (next: MyState, news = true): void => {
    state = next;
    input.changed(news);
  };
  const stop = (): void => {
    letGo?.();
    letGo = undefined;
    told = undefined;
    if (state.kind !== "off") set({ kind: "off" });
  };
  const found = (fix: Fix): void => {
    const where = input.classify(fix);
    const news = told === undefined || isNews(told, where, Date.now());
    if (news) told = { where, at: Date.now() };
    // Set first: turning the page to plain figures shows the map again.
    state = { kind: "found", where };
    if (where.state === "on-course" && !considered) {
      considered = true;
      turned = !isPlain();
      if (turned) setPlain(true);
    }
    input.changed(news);
  };
  return {
    get state() {
      return state;
    },
    get plainTurned() {
      return turned && isPlain();
    },
    press() {
      if (state.kind === "off") set({ kind: "explaining" });
      else stop();
    },
    agree() {
      set({ kind: "asking" });
      letGo = follow(found, (fault) => {
        // One lost signal does not undo a position that is there.
        if (state.kind !== "found" || fault === "denied") set({ kind: "fault", fault });
      });
    },
    allFigures() {
      considered = true;
      setPlain(false);
      input.changed(true);
    },
    stop,
  };
}

interface Told {
  readonly where: Whereabouts;
  /** Milliseconds since 1970. */
  readonly at: number;
}

const NEWS_METRES = 10;
const NEWS_MILLISECONDS = 15_000;
const METRES_PER_DEGREE = 111_320;

/** A walking golfer would else be talked to all the way. */
export function isNews({ where: before, at }: Told, where: Whereabouts, now: number): boolean {
  if (before.state !== where.state) return true;
  const [lon, lat] = where.position;
  const metres = METRES_PER_DEGREE * Math.hypot((lon - before.position[0]) * Math.cos((lat * Math.PI) / 180), lat - before.position[1]);
  return now - at >= NEWS_MILLISECONDS && metres >= NEWS_METRES;
}
