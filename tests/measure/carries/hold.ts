/** Holds one random hole's reach and carry to the oracle; says what does not agree. */
import type { Position as XY } from "geojson";
import { measureCourse } from "../../../src/measure/course.ts";
import { areasOf } from "../../../src/measure/place.ts";
import type { HazardFigures, MeasuredHole, TeeFigures } from "../../../src/measure/types.ts";
import type { Point, Position } from "../../../src/geo/position.ts";
import { about, corridorPolygon, expectedRuns, stationAlong, unlessGivenUp } from "./oracle.ts";
import { randomFrom, randomHole } from "./random-hole.ts";

/** The property's tolerance. */
export const TOLERANCE_METRES = 0.01;

/** A corridor wider or narrower by this answers as well. */
const HAIR_METRES = 0.002;

type Corridor = ReturnType<typeof corridorPolygon>;

export interface Held {
  readonly tried: number;
  /**
   * Cases where a hair decides how many runs there are (another width of 2 mm more or less answers
   * otherwise), or where the library gives no answer.
   */
  readonly unsettled: number;
  readonly worstMetres: number;
  readonly faults: readonly string[];
}

export function holdHole(seed: number): Held {
  const random = randomHole(seed);
  const measured = measureCourse(random.course).holes[0]!;
  let [tried, unsettled, worstMetres] = [0, 0, 0];
  const faults: string[] = [];
  for (const tee of measured.tees) {
    const position = (point: Point): Position => measured.frame.toPosition(point);
    const local = about(position(tee.marker));
    const line = tee.line.points.map((point) => local(position(point)));
    const corridors = new Map<number, Corridor>();
    const corridor = (more: number): Corridor => {
      const known = corridors.get(more) ?? corridorPolygon(line, measured.corridorMetres + more);
      corridors.set(more, known);
      return known;
    };
    for (const [id, sort] of Object.entries(random.sorts)) {
      const areas = areasOf(measured.placed.get(id)!).map((area) =>
        area.map((ring) => ring.map((p) => local(position(p)))),
      );
      if (areas.length === 0) continue;
      tried += 1;
      const here = tee.hazards
        .filter((hazard) => hazard.id === id && hazard.inCorridor)
        .sort((a, b) => a.stationMetres[0] - b.stationMetres[0]);
      const name = `seed ${seed}, ${tee.tee.id}, ${id} (${sort})`;
      const compare = (more: number): { faults: string[]; worst: number } | undefined => {
        const expected = unlessGivenUp(() => expectedRuns(line, corridor(more), areas));
        if (!expected) return undefined;
        if (expected.length !== here.length)
          return { faults: [`${name}: ${here.length} stretches, expected ${expected.length}`], worst: 0 };
        const found: string[] = [];
        let worst = 0;
        expected.forEach((run, i) => {
          for (const key of ["reachMetres", "farMetres"] as const) {
            const off = Math.abs(here[i]![key] - run[key]);
            worst = Math.max(worst, off);
            if (!(off <= TOLERANCE_METRES))
              found.push(`${name} ${i + 1}: ${key} ${here[i]![key]}, expected ${run[key]}`);
          }
        });
        return { faults: found, worst };
      };
      const answer = compare(0);
      if (answer === undefined) unsettled += 1;
      else if (answer.faults.length === 0) worstMetres = Math.max(worstMetres, answer.worst);
      else if ([-HAIR_METRES, HAIR_METRES].some((more) => compare(more)?.faults.length === 0)) unsettled += 1;
      else faults.push(...answer.faults);
    }
    faults.push(...ballsOf(measured, tee, seed, random.sorts), ...attainedIn(tee, measured, seed));
  }
  return { tried, unsettled, worstMetres, faults };
}

/** Balls that come down anywhere in the corridor: whoever is in a hazard is between its reach and its far distance. */
function ballsOf(
  measured: MeasuredHole,
  tee: TeeFigures,
  seed: number,
  sorts: Readonly<Record<string, string>>,
): string[] {
  const random = randomFrom(seed ^ 0x5bd1e995);
  const [x0, y0] = tee.marker;
  const line: XY[] = tee.line.points.map(([x, y]) => [x, y]);
  const faults: string[] = [];
  for (let ball = 0; ball < 120; ball++) {
    const station = random() * (tee.lengthMetres + 44);
    const offset = (2 * random() - 1) * (measured.corridorMetres - 0.01);
    const [x, y] = beside(tee.line.points, station, offset);
    const metres = Math.hypot(x - x0, y - y0);
    for (const id of Object.keys(sorts)) {
      if (!areasOf(measured.placed.get(id)!).some((area) => inRings(area, [x, y]))) continue;
      const along = stationAlong(line, [x, y]);
      const hit = tee.hazards.find(
        ({ id: other, inCorridor, stationMetres: [from, to], reachMetres, farMetres }) =>
          other === id &&
          inCorridor &&
          along >= from - 0.01 &&
          along <= to + 0.01 &&
          metres >= reachMetres - TOLERANCE_METRES &&
          metres <= farMetres + TOLERANCE_METRES,
      );
      if (!hit)
        faults.push(
          `seed ${seed}, ${tee.tee.id}: a ball ${metres.toFixed(3)} m out, station ${along.toFixed(3)}, is in ${id} (${sorts[id]}) but in none of its stretches`,
        );
    }
  }
  return faults;
}

/** Reach and far distance are those of the points told. */
function attainedIn(tee: TeeFigures, measured: MeasuredHole, seed: number): string[] {
  return tee.hazards
    .filter(({ inCorridor }) => inCorridor)
    .flatMap((hazard: HazardFigures) => {
      const off = (["reach", "far"] as const).filter((end) => {
        const [x, y] = hazard[`${end}Point`];
        return Math.abs(Math.hypot(x - tee.marker[0], y - tee.marker[1]) - hazard[`${end}Metres`]) > 1e-6;
      });
      return off.map(
        (end) =>
          `seed ${seed}, ${tee.tee.id}, ${hazard.id}: ${end} is not at its point (corridor ${measured.corridorMetres})`,
      );
    });
}

function beside(points: readonly Point[], station: number, offset: number): Point {
  let rest = station;
  for (let i = 1; ; i++) {
    const [a, b] = [points[i - 1]!, points[i]!];
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    if (rest > length && i < points.length - 1) {
      rest -= length;
      continue;
    }
    const [dx, dy] = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
    return [a[0] + dx * rest + dy * offset, a[1] + dy * rest - dx * offset];
  }
}

/** Even-odd over all rings. */
function inRings(rings: readonly (readonly Point[])[], [px, py]: Point): boolean {
  let inside = false;
  for (const ring of rings) {
    for (let i = 1; i < ring.length; i++) {
      const [[x1, y1], [x2, y2]] = [ring[i - 1]!, ring[i]!];
      if (y1 > py !== y2 > py && px < x1 + ((py - y1) / (y2 - y1)) * (x2 - x1)) inside = !inside;
    }
  }
  return inside;
}
