/**
 * How a tour's players launch the ball, club by club: nature, against which the family of launches and the
 * coefficient sets are held.
 */

export interface ClubMeans {
  readonly club: string;
  readonly ballSpeedMph: number;
  readonly angleDegrees: number;
  readonly spinRpm: number;
  readonly carryYards: number;
  readonly heightYards: number;
  readonly descentDegrees: number;
}

const rows = (
  table: readonly (readonly [string, number, number, number, number, number, number])[],
): readonly ClubMeans[] =>
  table.map(([club, ballSpeedMph, angleDegrees, spinRpm, carryYards, heightYards, descentDegrees]) => ({
    club,
    ballSpeedMph,
    angleDegrees,
    spinRpm,
    carryYards,
    heightYards,
    descentDegrees,
  }));

/**
 * Means of a men's professional tour. Ball speed, launch angle and spin read second hand; carry, height and
 * descent read
 * for the 7-iron and the pitching wedge, from memory for the others. Ground, air and wind are unstated.
 */
export const MEN: readonly ClubMeans[] = rows([
  ["driver", 167, 10.9, 2686, 275, 32, 38],
  ["3-wood", 158, 9.2, 3655, 243, 30, 43],
  ["5-wood", 152, 9.4, 4350, 230, 31, 47],
  ["hybrid", 146, 10.2, 4437, 225, 29, 47],
  ["3-iron", 142, 10.4, 4630, 212, 27, 46],
  ["4-iron", 137, 11, 4836, 203, 28, 48],
  ["5-iron", 132, 12.1, 5361, 194, 31, 49],
  ["6-iron", 127, 14.1, 6231, 183, 30, 50],
  ["7-iron", 120, 16.3, 7097, 172, 32, 50],
  ["8-iron", 115, 18.1, 7998, 160, 31, 50],
  ["9-iron", 109, 20.4, 8647, 148, 30, 51],
  ["pitching wedge", 102, 24.2, 9304, 136, 29, 52],
]);

/** A sand wedge's full stroke for the same players: common practice, no source. */
export const MEN_SAND_WEDGE = { ballSpeedMph: 92, angleDegrees: 28.5, spinRpm: 9800, carryYards: 110 } as const;

/** Means of a women's professional tour, all from memory. */
export const WOMEN: readonly ClubMeans[] = rows([
  ["driver", 140, 13.2, 2611, 218, 25, 37],
  ["3-wood", 132, 11.2, 2704, 195, 23, 39],
  ["5-wood", 128, 12.1, 4501, 185, 26, 43],
  ["hybrid", 123, 12.7, 4693, 174, 24, 42],
  ["4-iron", 116, 14.3, 4801, 169, 24, 43],
  ["5-iron", 112, 14.8, 5081, 161, 23, 45],
  ["6-iron", 109, 17.1, 5943, 152, 25, 46],
  ["7-iron", 104, 19, 6699, 141, 26, 47],
  ["8-iron", 100, 20.8, 7494, 130, 25, 47],
  ["9-iron", 93, 23.9, 7589, 119, 26, 47],
  ["pitching wedge", 86, 25.6, 8403, 107, 23, 48],
]);
