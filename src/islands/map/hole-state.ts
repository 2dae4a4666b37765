/**
 * What can happen on the live map of a hole, and how it then stands. Pure: `hole-view.ts` shows it,
 * `hole-map.ts` does the rest.
 */
import type { LonLat } from "../../contract/map-data.ts";
import type { Golfer } from "./golfer.ts";
import type { LocateFault } from "./locate.ts";
import { MOST_SHOTS } from "./shots.ts";
import { isNews, type Told, type Whereabouts } from "./whereabouts.ts";

/** Where the golfer is: explained, asked for, followed, let go of. */
export type MyPlace =
  | { readonly kind: "off" }
  | { readonly kind: "explaining" }
  | { readonly kind: "asking" }
  | { readonly kind: "fault"; readonly fault: LocateFault }
  | { readonly kind: "found"; readonly where: Whereabouts; readonly told: Told };

export interface HoleState {
  readonly golfer: Golfer;
  readonly tapped: LonLat | undefined;
  /** Whether taps lay shots instead of measuring. */
  readonly laying: boolean;
  readonly shots: readonly LonLat[];
  readonly place: MyPlace;
  /** Whether the page shows plain figures. */
  readonly plain: boolean;
  /** Plain figures came on because the golfer is on the course. */
  readonly turnedPlain: boolean;
  /** Once: who turns them off again, here or on the page, is not in a round or may have them. */
  readonly considered: boolean;
  /** Whether what the last event changed is to be spoken, not only shown. */
  readonly news: boolean;
}

export type HoleEvent =
  /** A tap, or Enter at the cross. */
  | { readonly kind: "chosen"; readonly position: LonLat }
  | { readonly kind: "tap-cleared" | "laying-pressed" | "shot-undone" | "shots-cleared" }
  | { readonly kind: "place-pressed" | "place-agreed" | "place-refused" }
  /** @param at milliseconds since 1970 */
  | { readonly kind: "place-found"; readonly where: Whereabouts; readonly at: number }
  | { readonly kind: "place-lost"; readonly fault: LocateFault }
  | { readonly kind: "plain-pressed" }
  /** The golfer is not in a round, or their Committee allows it. */
  | { readonly kind: "all-figures" }
  /** The page turned to plain figures or from them. */
  | { readonly kind: "plain-turned"; readonly plain: boolean }
  | { readonly kind: "golfer"; readonly golfer: Golfer };

export const openingState = (golfer: Golfer, shots: readonly LonLat[], plain: boolean): HoleState => ({
  golfer,
  tapped: undefined,
  laying: false,
  shots: shots.slice(0, MOST_SHOTS),
  place: { kind: "off" },
  plain,
  turnedPlain: false,
  considered: false,
  news: false,
});

/** Whether the device's position is followed. */
export const isFollowing = ({ place: { kind } }: HoleState): boolean =>
  kind === "asking" || kind === "fault" || kind === "found";

/** The same state where an event changes nothing. */
export function nextHole(state: HoleState, event: HoleEvent): HoleState {
  const { tapped, laying, shots, place, plain } = state;
  const told = (part: Partial<HoleState>): HoleState => ({ ...state, news: true, ...part });
  switch (event.kind) {
    case "chosen":
      if (!laying) return told({ tapped: event.position });
      return shots.length >= MOST_SHOTS ? state : told({ shots: [...shots, event.position] });
    case "tap-cleared":
      return tapped === undefined ? state : told({ tapped: undefined });
    case "laying-pressed":
      return told({ laying: !laying });
    case "shot-undone":
      return shots.length === 0 ? state : told({ shots: shots.slice(0, -1) });
    case "shots-cleared":
      return shots.length === 0 ? state : told({ shots: [] });
    case "place-pressed":
      return told({ place: { kind: place.kind === "off" ? "explaining" : "off" } });
    case "place-agreed":
      return place.kind === "explaining" ? told({ place: { kind: "asking" } }) : state;
    case "place-refused":
      return place.kind === "off" ? state : told({ place: { kind: "off" } });
    case "place-found":
      return isFollowing(state) ? found(state, event.where, event.at) : state;
    case "place-lost":
      // One lost signal does not undo a position that is there.
      if (!isFollowing(state) || (place.kind === "found" && event.fault !== "denied")) return state;
      return told({ place: { kind: "fault", fault: event.fault } });
    case "plain-pressed":
      return plain ? told({ plain: false, considered: true }) : { ...state, plain: true, news: false };
    case "all-figures":
      return told({ plain: false, considered: true });
    case "plain-turned":
      return event.plain === plain ? state : { ...state, plain: event.plain, news: false };
    case "golfer":
      return told({ golfer: event.golfer });
  }
}

function found(state: HoleState, where: Whereabouts, at: number): HoleState {
  const { place, considered, plain } = state;
  const before = place.kind === "found" ? place.told : undefined;
  const news = before === undefined || isNews(before, where, at);
  const begins = where.state === "on-course" && !considered;
  return {
    ...state,
    news,
    place: { kind: "found", where, told: news ? { where, at } : before },
    ...(begins && { considered: true, turnedPlain: !plain, plain: true }),
  };
}
