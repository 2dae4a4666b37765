/** A hole's flyover: its flight, chapters and captions together. */
import type { MeasuredHole, TeeFigures } from "../measure/types.ts";
import type { Point } from "../geo/position.ts";
import { heightAt } from "../terrain/sample.ts";
import type { HeightGrid } from "../terrain/grid.ts";
import type { Cue } from "../contract/film-data.ts";
import { cuesOf } from "./captions.ts";
import { holeFlight, type HoleFlight } from "./path.ts";
import type { Chapter } from "./types.ts";

/** The first words wait for the picture to settle, and the last ones are not cut off. */
const LEAD_SECONDS = 1;

export interface HoleFilm {
  readonly flight: HoleFlight;
  readonly chapters: readonly Chapter[];
  readonly cues: readonly Cue[];
}

export const groundOf =
  (grid: HeightGrid | undefined) =>
  (point: Point): number | undefined =>
    grid ? heightAt(grid, point) : 0;

/**
 * @param tip the tip as plain text, one paragraph a line
 * @param driveMetres where the first shot comes down, for the chapters of par fours and fives
 */
export function holeFilm(
  hole: MeasuredHole,
  tee: TeeFigures,
  tip: string,
  driveMetres: number,
  grid: HeightGrid | undefined,
): HoleFilm {
  const cues = cuesOf(tip, LEAD_SECONDS);
  const captionsEnd = (cues[cues.length - 1]?.endSeconds ?? 0) + LEAD_SECONDS;
  const flight = holeFlight(tee.line, groundOf(grid), captionsEnd);
  return { flight, cues, chapters: chaptersOf(hole, tee, driveMetres, flight) };
}

/** One chapter a shot: tee, where the drive comes down, a lay-up on a par five, the green. */
function chaptersOf(hole: MeasuredHole, tee: TeeFigures, driveMetres: number, flight: HoleFlight): Chapter[] {
  const chapters: Chapter[] = [{ kind: "tee", seconds: 0, stationMetres: 0 }];
  const add = (kind: Chapter["kind"], stationMetres: number): void => {
    const seconds = flight.secondsAt(stationMetres);
    const previous = chapters[chapters.length - 1]!;
    if (seconds > previous.seconds + 1) chapters.push({ kind, seconds, stationMetres });
  };
  const par = hole.hole.par.men;
  if (par > 3 && driveMetres < tee.lengthMetres - 40) add("landing", driveMetres);
  if (par > 4) add("approach", Math.max(driveMetres + 60, tee.lengthMetres - 110));
  add("green", tee.lengthMetres);
  return chapters;
}
