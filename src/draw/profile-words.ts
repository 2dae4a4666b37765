/** The few words on the drawings of the ground; a page in another language hands in its own. */
import type { PlayerId } from "../measure/players.ts";
import type { Side } from "../measure/types.ts";

export interface GroundDrawingWords {
  readonly profileTitle: (hole: number, tee: string) => string;
  /** Described in words beside it, so this says only what it is. */
  readonly profileDescription: string;
  readonly tee: string;
  /** Where a drive comes to rest: `drive 200`. */
  readonly drive: (length: string) => string;
  readonly unseen: string;
  readonly sides: Readonly<Record<Side, string>>;
  readonly greenTitle: (hole: number) => string;
  readonly greenDescription: string;
  readonly front: string;
  readonly middle: string;
  readonly back: string;
  readonly falseFront: string;
  readonly upperTier: string;
  readonly lowerTier: string;
  readonly landingTitle: (hole: number) => string;
  readonly landingDescription: string;
  /** `150 left`: along the line of play to the middle of the green. */
  readonly left: (length: string) => string;
  readonly wide: (length: string) => string;
  readonly players: Readonly<Record<PlayerId, string>>;
  readonly yours: string;
}

export const ENGLISH_GROUND_DRAWING: GroundDrawingWords = {
  profileTitle: (hole, tee) => `Section of hole ${hole} along the line of play from the ${tee} tee`,
  profileDescription: "Tee at the left, green at the right. The heights are given in words under it.",
  tee: "tee",
  drive: (length) => `drive ${length}`,
  unseen: "not seen from the tee",
  sides: { left: "left", right: "right" },
  greenTitle: (hole) => `Green of hole ${hole}`,
  greenDescription: "The approach comes from below. Its size and slope are given in words beside it.",
  front: "Front",
  middle: "Middle",
  back: "Back",
  falseFront: "false front",
  upperTier: "upper",
  lowerTier: "lower",
  landingTitle: (hole) => `Where drives come to rest on hole ${hole}`,
  landingDescription: "The fairway drawn straight, play going up. Widths and trouble are given in the table after it.",
  left: (length) => `${length} left`,
  wide: (length) => `${length} wide`,
  players: { "scratch-men": "Scratch men", "bogey-men": "Bogey men", "scratch-women": "Scratch women", "bogey-women": "Bogey women" },
  yours: "Yours",
};
