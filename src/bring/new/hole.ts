/**
 * A placeholder for a hole: straight, with a fairway and a green, out and back
 * beside its neighbours, so that a new guide can be built and looked at before anything is
 * traced. Lengths are within the World Handicap System's guidelines for the par.
 */
import { PLACEHOLDER_TIP } from "../../course/draft.ts";
import { frameAt } from "../../geo/frame.ts";
import type { Point } from "../../geo/position.ts";
import { yardsFromMetres } from "../../geo/units.ts";
import { holeFileName, featuresBlock } from "../pages/new-page.ts";
import type { NewClub } from "./answers.ts";

const PARS = [4, 4, 3, 5, 4, 4, 3, 4, 5, 4, 5, 3, 4, 4, 4, 3, 5, 4] as const;

/** Keep to the Rules of Handicapping's recommendations (Appendix E) on eighteen. */
const INDEXES_18 = [9, 13, 17, 7, 1, 11, 5, 15, 3, 10, 6, 16, 18, 2, 12, 4, 14, 8] as const;
const INDEXES_9 = [5, 7, 9, 4, 1, 6, 3, 8, 2] as const;

const LENGTH_METRES: Readonly<Record<3 | 4 | 5, number>> = { 3: 150, 4: 345, 5: 500 };

/** From one hole's line to the next: room for a corridor each side. */
const APART_METRES = 80;

/** From a green's middle on to the next tee. */
const WALK_METRES = 35;

/** Each set stands this share nearer, less where there are many. */
const STEP = 0.06;
const MOST_NEARER = 0.17;

/** How the holes before it lie: out northwards, back southwards, side by side. */
function startOf(number: number): { tee: Point; north: 1 | -1 } {
  let [x, y]: Point = [0, 0];
  let north: 1 | -1 = 1;
  for (let before = 1; before < number; before++) {
    y += north * (LENGTH_METRES[parOf(before)] + WALK_METRES);
    x += APART_METRES;
    north = north === 1 ? -1 : 1;
  }
  return { tee: [x, y], north };
}

const parOf = (number: number): 3 | 4 | 5 => PARS[number - 1]!;

export function newHole({ at, holes, tees }: NewClub, number: number): { fileName: string; page: string } {
  const frame = frameAt(at);
  const par = parOf(number);
  const length = LENGTH_METRES[par];
  const {
    tee: [x, y],
    north,
  } = startOf(number);
  /** So far along the hole and so far right of its line. */
  const position = (along: number, right = 0): number[] => {
    const [longitude, latitude] = frame.toPosition([x + right * north, y + along * north]);
    return [Number(longitude.toFixed(7)), Number(latitude.toFixed(7))];
  };
  const oval = (along: number, right: number, halfLength: number, halfWidth: number): number[][] => {
    const ring = Array.from({ length: 16 }, (_, i) => {
      const angle = (2 * Math.PI * i) / 16;
      return position(along + halfLength * Math.sin(angle), right + halfWidth * Math.cos(angle) * north);
    });
    // Counter-clockwise on the map whichever way the hole runs.
    return north === 1 ? [...ring, ring[0]!] : [...ring, ring[0]!].reverse();
  };
  const step = Math.min(STEP, MOST_NEARER / Math.max(1, tees.length - 1));
  const markers = tees.map(({ id }, i) => ({ id, along: Math.round(length * step * i) }));
  // Marked, so that every page says so and what is brought takes their place.
  const feature = (id: string, properties: object, type: string, coordinates: unknown): object => ({
    type: "Feature",
    id,
    properties: { ...properties, placeholder: true },
    geometry: { type, coordinates },
  });
  const features = [
    feature("line", { golf: "hole" }, "LineString", [position(0), position(length)]),
    ...markers.map(({ id, along }) => feature(`tee-${id}`, { golf: "tee", tee: id }, "Point", position(along))),
    ...(par === 3
      ? []
      : [feature("fairway", { golf: "fairway" }, "Polygon", [oval(length * 0.55, 0, length * 0.36, 17)])]),
    feature("green", { golf: "green" }, "Polygon", [oval(length, 0, 13, 11)]),
  ];
  const index = holes === 9 ? INDEXES_9[number - 1] : INDEXES_18[number - 1];
  const card = markers.map(({ id, along }) => `${id}: ${Math.round(yardsFromMetres(length - along))}`).join(", ");
  const page = `---
# Hole ${number}. Lines that begin with # are for you. Write the hole's own name, par and stroke index.
hole: ${number}
name: "Hole ${number}"
par: ${par}
strokeIndex: ${index}
# The printed card, in yards, for each tee set.
card: { ${card} }
# What stands for your own as yet. Take out of the brackets what you have written.
placeholder: [ par, strokeIndex, card ]
# Photos lie in the folder photos beside holes. Take the # away and write the file's name and what it shows.
# photos:
#   - { file: ${String(number).padStart(2, "0")}-tee.jpg, alt: "From the tee towards the green", from: tee, towards: green }
# The shapes below stand for the real ones. Bring in your own from a survey or a tracing: npm run bring
# Where you draw one by hand, take its placeholder: true away.
${featuresBlock(features)}
---
${TIP}`;
  return { fileName: holeFileName(number, undefined), page };
}

/**
 * Sixty words and more, as the check asks, and nothing that any ground contradicts: it
 * names no feature, so it holds when real shapes take the placeholders' place.
 */
const TIP = `${PLACEHOLDER_TIP}: write your own here. Say where to aim from the tee, what to stay away from, and what the green does.

Figures are filled in from the shapes, so none is typed. The hole is :length long. From the tee the front of the green is :front away, its middle :middle and its back :back; it is :depth deep and :width wide. DEVELOPERS.md of Marram lists every figure that a tip can hold.
`;
