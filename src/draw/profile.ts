/**
 * The section: the ground along the line of play, cut open and seen from the side, drawn
 * at build. All tee sets share one frame with the green at the right, so that the ground
 * they have in common stands still when the tee is changed.
 */
import * as attr from "../contract/attributes.ts";
import { fromUnit, inUnit, METRES_PER_FOOT, type LengthUnit } from "../geo/units.ts";
import type { Point } from "../geo/position.ts";
import type { HazardFigures, MeasuredHole, TeeFigures } from "../measure/types.ts";
import type { HeightGrid } from "../terrain/grid.ts";
import { hazardsInPlay, reachAndCarry } from "./figures.ts";
import { textAttributes, type TextLine } from "./lettering.ts";
import { painter, type Painter, type PlateTheme } from "./palette.ts";
import { seenAlong, sectionAlong, stretchesOf, type SectionPoint, type Surface } from "./profile-ground.ts";
import type { GroundDrawingWords } from "../words/words.ts";
import { drawnTee } from "./sheet.ts";
import { element, escapeXml, num, polyPath } from "./svg.ts";
import { beads, flag, symbolMarker } from "./symbols.ts";
import { textWidth } from "./text-width.ts";

export interface ProfileOptions {
  /** Begins every id in the drawing; unique on its page. */
  readonly idPrefix: string;
  /** The unit shown first; both are drawn. */
  readonly unit: LengthUnit;
  /** The tee set shown first; the course's default when left out. */
  readonly tee?: string;
  /** By tee set, the drive whose landing ground is marked; none where a hole is reached in one. */
  readonly driveMetres?: Readonly<Record<string, number>>;
  readonly theme?: PlateTheme;
  readonly words: GroundDrawingWords;
}

export interface Profile {
  readonly svg: string;
  /** Heights are drawn this many times as large as lengths. */
  readonly exaggeration: number;
  readonly width: number;
  readonly height: number;
}

const UNITS: readonly LengthUnit[] = ["yards", "metres"];

const WIDTH = 390;
const LEFT = 33;
const RIGHT = 13;
const TOP = 9;
/** Room over the highest ground: flag, eye and lettering. */
const SKY = 34;
/** Most that the ground's relief may take up, and what is drawn of the earth under its lowest place. */
const RELIEF = 84;
const EARTH = 22;
const LANE = 14;
const MOST_LANES = 4;
const AXIS = 22;

/** Heights are never stretched more than this: flat ground is to look flat. */
export const MOST_EXAGGERATION = 6;
const EXAGGERATIONS = [1, 1.5, 2, 2.5, 3, 4, 5, MOST_EXAGGERATION];

/** Steps of the height rules in feet and in metres; the first that leaves them far enough apart is taken. */
const RULE_STEPS: Readonly<Record<LengthUnit, readonly number[]>> = {
  yards: [5, 10, 20, 50, 100],
  metres: [1, 2, 5, 10, 20],
};
const LEAST_RULE_GAP = 17;

const TEXT = 11;
const SMALL = 9.5;

/** The section of one tee set, placed on the sheet. */
interface Cut {
  readonly tee: TeeFigures;
  readonly section: readonly SectionPoint[];
  readonly seen: readonly boolean[];
  readonly teeHeight: number;
  x(stationMetres: number): number;
  y(heightMetres: number): number;
}

interface Sheet {
  readonly hole: MeasuredHole;
  readonly paint: Painter;
  readonly words: GroundDrawingWords;
  readonly prefix: string;
  readonly pxPerMetre: number;
  readonly exaggeration: number;
  /** Foot of the earth, of the lanes, of the frame. */
  readonly floor: number;
  readonly foot: number;
}

/**
 * Draws a hole's section; undefined where too little of the ground along it is known. Same hole and options,
 * same bytes.
 */
export function drawProfile(hole: MeasuredHole, grid: HeightGrid, options: ProfileOptions): Profile | undefined {
  const { words } = options;
  const paint = painter(options.theme ?? "light");
  const first = drawnTee(hole, options.tee);
  const longest = Math.max(...hole.tees.map(({ lengthMetres }) => lengthMetres));
  const behind = Math.max(6, longest * 0.02);
  const beyond = Math.max(...hole.tees.map(({ green }) => green.depthMetres / 2)) + Math.max(8, longest * 0.025);
  const pxPerMetre = (WIDTH - LEFT - RIGHT) / (behind + longest + beyond);
  const spacingMetres = Math.max(1.5, 3 / pxPerMetre);
  const sections = hole.tees.flatMap((tee) => {
    // Back to the frame's edge, so that a forward tee stands in ground, not at its end.
    const section = sectionAlong(hole, grid, tee.line, {
      behindMetres: behind + longest - tee.lengthMetres,
      beyondMetres: beyond,
      spacingMetres,
    });
    return section ? [{ tee, section }] : [];
  });
  if (sections.length < hole.tees.length) return undefined;
  const heights = sections.flatMap(({ section }) => section.map(({ heightMetres }) => heightMetres));
  const [lowest, highest] = [Math.min(...heights), Math.max(...heights)];
  const exaggeration =
    [...EXAGGERATIONS].reverse().find((times) => (highest - lowest) * times * pxPerMetre <= RELIEF) ?? 1;
  const relief = Math.max(16, (highest - lowest) * exaggeration * pxPerMetre);
  const floor = TOP + SKY + relief + EARTH;
  const cuts = sections.map(({ tee, section }): Cut => ({
    tee,
    section,
    seen: seenAlong(hole, grid, tee.marker, section),
    teeHeight: heightNear(section, 0),
    x: (station) => WIDTH - RIGHT - (tee.lengthMetres + beyond - station) * pxPerMetre,
    y: (height) => floor - EARTH - (height - lowest) * exaggeration * pxPerMetre,
  }));
  const lanes = new Map(
    cuts.flatMap((cut) =>
      UNITS.map((unit) => [`${cut.tee.tee.id} ${unit}`, lanesOf(cut, hole, unit, words)] as const),
    ),
  );
  const laneCount = Math.max(
    0,
    ...[...lanes.values()].map((spans) => Math.max(0, ...spans.map(({ lane }) => lane + 1))),
  );
  const foot = floor + laneCount * LANE + (laneCount > 0 ? 5 : 0);
  const height = foot + AXIS;
  const sheet: Sheet = { hole, paint, words, prefix: options.idPrefix, pxPerMetre, exaggeration, floor, foot };

  let content = "";
  for (const cut of cuts) {
    const shownTee = cut.tee === first;
    content += group(
      { [attr.tee]: cut.tee.tee.id },
      shownTee,
      element("g", { "clip-path": `url(#${options.idPrefix}-map)` }, drawGround(sheet, cut)),
    );
    for (const unit of UNITS) {
      const spans = lanes.get(`${cut.tee.tee.id} ${unit}`)!;
      const figures =
        drawRules(sheet, cut, unit) +
        drawSpans(sheet, cut, spans) +
        drawDrive(sheet, cut, unit, options.driveMetres?.[cut.tee.tee.id]) +
        drawAxis(sheet, cut, unit);
      content += group({ [attr.tee]: cut.tee.tee.id, [attr.unit]: unit }, shownTee && unit === options.unit, figures);
    }
    content += group({ [attr.tee]: cut.tee.tee.id }, shownTee, drawEnds(sheet, cut));
  }
  const [titleId, descriptionId] = [`${options.idPrefix}-title`, `${options.idPrefix}-description`];
  const svg =
    `<svg xmlns="http://www.w3.org/2000/svg" class="plate plate-profile" viewBox="0 0 ${WIDTH} ${num(height)}" width="${WIDTH}" height="${num(height)}" role="img" aria-labelledby="${escapeXml(titleId)}" aria-describedby="${escapeXml(descriptionId)}" font-family="Besley, Georgia, 'Times New Roman', serif">` +
    element("title", { id: titleId }, escapeXml(words.profileTitle({ hole: hole.hole.number, tee: first.tee.name }))) +
    element("desc", { id: descriptionId }, escapeXml(words.profileDescription)) +
    element("defs", {}, patterns(sheet)) +
    element("rect", { ...paint("paper"), width: WIDTH, height: num(height) }) +
    content +
    drawNeatline(sheet) +
    "</svg>";
  return { svg, exaggeration, width: WIDTH, height };
}

function group(data: Readonly<Record<string, string>>, shown: boolean, content: string): string {
  // Turned by the settings like a plate’s own groups.
  return element("g", { class: "plate-unit", ...data, ...(shown ? {} : { display: "none" }) }, content);
}

const heightNear = (section: readonly SectionPoint[], stationMetres: number): number =>
  section.reduce((best, point) =>
    Math.abs(point.stationMetres - stationMetres) < Math.abs(best.stationMetres - stationMetres) ? point : best,
  ).heightMetres;

/** Upright hatching for earth, and closer for ground that is not seen from the tee. */
function patterns({ paint, prefix, floor }: Sheet): string {
  const hatch = (name: string, gap: number, d: string, width: number): string =>
    element(
      "pattern",
      { id: `${prefix}-${name}`, patternUnits: "userSpaceOnUse", width: gap, height: 14 },
      element("path", { ...paint("line"), "stroke-width": width, d }),
    );
  return (
    hatch("earth", 9, "M1.5 0v14M4.5 0v14M7.5 0v14", 0.35) +
    hatch("unseen", 4, "M-1 3.5 5-2.5M-1 7 5 1M-1 10.500 5 4.500M-1 14 5 8M-1 17.500 5 11.500", 0.8) +
    element(
      "clipPath",
      { id: `${prefix}-map` },
      element("rect", { x: LEFT, y: TOP, width: WIDTH - LEFT - RIGHT, height: num(floor - TOP) }),
    ) +
    symbolMarker(`${prefix}-gorse`, "gorse-b", 0.62, paint) +
    symbolMarker(`${prefix}-tree`, "tree-b", 0.85, paint)
  );
}

/** Surfaces that show as a ribbon under the ground line, by the mark that paints them. */
const RIBBONS: readonly (readonly [
  surface: Surface,
  mark: "fairway" | "teeing-ground" | "sea" | "green" | "bunker",
])[] = [
  ["fairway", "fairway"],
  ["tee", "teeing-ground"],
  ["water", "sea"],
  ["green", "green"],
  ["bunker", "bunker"],
];
const RIBBON = 5;

/**
 * The earth, cut: its surface as a ribbon, then earth again a little lower, then hatching.
 * The outline is written once and used throughout: it is most of what a section weighs.
 */
function drawGround({ paint, prefix, floor }: Sheet, cut: Cut): string {
  const points = cut.section.map(({ stationMetres, heightMetres }): Point => [
    cut.x(stationMetres),
    cut.y(heightMetres),
  ]);
  const id = `${prefix}-${cut.tee.tee.id}`;
  const line = polyPath(points, false);
  const start = points[0]!;
  const windows = (is: (point: SectionPoint, index: number) => boolean, leastPx: number): string =>
    stretchesOf(cut.section, is)
      // The edge lies somewhere between two samples.
      .map(([a, b]) => [points[a]![0] - 1.5, points[b]![0] + 1.5] as const)
      .filter(([from, to]) => to - from > leastPx)
      .map(([from, to]) => `M${num(from)} 0H${num(to)}V${num(floor)}H${num(from)}z`)
      .join("");
  const through = (name: string, d: string, content: string): string =>
    d === ""
      ? ""
      : element("clipPath", { id: `${id}-${name}` }, element("path", { d })) +
        element("g", { "clip-path": `url(#${id}-${name})` }, content);
  const earth = (attributes: Readonly<Record<string, string | number>>): string =>
    element("use", { href: `#${id}-earth`, ...attributes });
  let out =
    element(
      "defs",
      {},
      element("path", { id, d: line }) +
        element("path", { id: `${id}-earth`, d: `${line}V${num(floor)}H${num(start[0])}z` }),
    ) + earth(paint("ground"));
  for (const [surface, mark] of RIBBONS) {
    out += through(
      surface,
      windows((point) => point.surface === surface, 0),
      earth({ ...paint(mark), "stroke-width": 0 }),
    );
  }
  const under = { href: `#${id}`, fill: "none" };
  out +=
    earth({ ...paint("ground"), transform: `translate(0 ${RIBBON})` }) +
    element("use", {
      ...under,
      transform: `translate(0 ${RIBBON + 6})`,
      stroke: `url(#${prefix}-earth)`,
      "stroke-width": 12,
      opacity: 0.8,
    }) +
    through(
      "unseen",
      windows((_, i) => !cut.seen[i], 6),
      element("use", {
        ...under,
        transform: `translate(0 ${RIBBON + 4})`,
        stroke: `url(#${prefix}-unseen)`,
        "stroke-width": 8,
      }),
    ) +
    element("use", { ...paint("line"), href: `#${id}`, "stroke-width": 1.25, "stroke-linejoin": "round" });
  const growth = (surface: Surface, symbol: string, gap: number): string => {
    const feet = stretchesOf(cut.section, (point) => point.surface === surface).flatMap(([a, b]) => {
      const some: Point[] = [];
      for (let i = a, last = -Infinity; i <= b; i++) {
        const [x, y] = points[i]!;
        if (x - last < gap) continue;
        some.push([x, y + 0.6]);
        last = x;
      }
      return some;
    });
    return beads(feet, `${prefix}-${symbol}`);
  };
  return out + growth("scrub", "gorse", 5.5) + growth("wood", "tree", 7.5);
}

/** Tee marker in the club's colour with the golfer's eye over it, and the flag. */
function drawEnds({ paint }: Sheet, cut: Cut): string {
  const [teeX, teeY] = [cut.x(0), cut.y(cut.teeHeight)];
  const green = heightNear(cut.section, cut.tee.lengthMetres);
  return (
    element("path", { ...paint("line"), "stroke-width": 0.8, d: `M${num(teeX)} ${num(teeY - 1)}v-9` }) +
    element("circle", {
      ...paint("marker"),
      fill: cut.tee.tee.colour,
      cx: num(teeX),
      cy: num(teeY - 10),
      r: 3.2,
      "stroke-width": 0.9,
    }) +
    element(
      "g",
      { transform: `translate(${num(cut.x(cut.tee.lengthMetres))} ${num(cut.y(green))})` },
      flag(paint, 0.95),
    )
  );
}

const set = (
  paint: Painter,
  line: TextLine,
  x: number,
  y: number,
  anchor: "start" | "middle" | "end",
  halo = 2.6,
): string =>
  element(
    "text",
    {
      x: num(x),
      y: num(y),
      ...(anchor === "start" ? {} : { "text-anchor": anchor }),
      ...textAttributes(line, paint, halo),
    },
    escapeXml(line.text),
  );

/** Level rules with their height above or below the tee. */
function drawRules({ paint, pxPerMetre, exaggeration, floor }: Sheet, cut: Cut, unit: LengthUnit): string {
  const one = unit === "yards" ? METRES_PER_FOOT : 1;
  const step = RULE_STEPS[unit].find((value) => value * one * exaggeration * pxPerMetre >= LEAST_RULE_GAP) ?? 100;
  const heightsOf = (n: number): number => cut.teeHeight + n * step * one;
  const lines: string[] = [];
  let lettering = "";
  for (let n = -40; n <= 40; n++) {
    const y = cut.y(heightsOf(n));
    // The unit stands at the top.
    if (y < TOP + 16 || y > floor - 4) continue;
    lines.push(`M${LEFT} ${num(y)}H${WIDTH - RIGHT}`);
    const text = n === 0 ? "0" : `${n > 0 ? "+" : "\u2212"}${Math.abs(n * step)}`;
    lettering += set(
      paint,
      { text, mark: "legend", size: SMALL, weight: n === 0 ? "heavy" : "regular" },
      LEFT - 6.5,
      y + 3.2,
      "end",
      0,
    );
  }
  lettering += set(
    paint,
    { text: unit === "yards" ? "ft" : "m", mark: "legend", size: SMALL, weight: "regular", italic: true },
    LEFT - 6.5,
    TOP + 8,
    "end",
    0,
  );
  return (
    element("path", {
      ...paint("tick"),
      "stroke-width": 0.4,
      "stroke-dasharray": "1 3",
      opacity: 0.75,
      d: lines.join(""),
    }) + lettering
  );
}

/** Where the drive of the tee's reference player comes to rest. */
function drawDrive({ paint, words }: Sheet, cut: Cut, unit: LengthUnit, driveMetres: number | undefined): string {
  if (driveMetres === undefined || driveMetres >= cut.tee.lengthMetres) return "";
  const [x, y] = [cut.x(driveMetres), cut.y(heightNear(cut.section, driveMetres))];
  const text = words.drive({ length: Math.round(inUnit(driveMetres, unit)) });
  return (
    element("path", {
      ...paint("leader"),
      "stroke-width": 0.7,
      "stroke-dasharray": "3 2.2",
      d: `M${num(x)} ${num(y - 2)}V${num(TOP + 17)}`,
    }) +
    element("path", { ...paint("landmark-ink"), d: `M${num(x)} ${num(y - 0.5)}l-2.8-5.5h5.6z` }) +
    set(paint, { text, mark: "figure", size: TEXT, weight: "regular", italic: true }, x, TOP + 14, "middle")
  );
}

interface Span {
  readonly hazard: HazardFigures;
  readonly from: number;
  readonly to: number;
  readonly text: string;
  readonly textX: number;
  readonly anchor: "start" | "end";
  readonly lane: number;
}

/** The hazards a stroke from this tee can find, each laid in the first lane with room for it. */
function lanesOf(cut: Cut, hole: MeasuredHole, unit: LengthUnit, words: GroundDrawingWords): Span[] {
  const taken: [number, number][][] = [];
  const spans: Span[] = [];
  const hazards = hazardsInPlay(cut.tee, hole).slice(0, 6);
  for (const hazard of [...hazards].sort(
    (a, b) => a.stationMetres[0] - b.stationMetres[0] || (a.id < b.id ? -1 : 1),
  )) {
    const [from, to] = hazard.stationMetres.map((station) =>
      Math.max(LEFT + 3, Math.min(WIDTH - RIGHT - 3, cut.x(station))),
    ) as [number, number];
    const name = hole.placed.get(hazard.id)?.feature.name;
    const side =
      hazard.position === "across" || hazard.position === "beyond" ? "" : ` ${words.sides[hazard.position]}`;
    const text = `${name ? `${name} ` : ""}${reachAndCarry(hazard, unit)}${side}`;
    const width = textWidth(text, SMALL) + 7;
    const after = to + 5 + width <= WIDTH - RIGHT - 2;
    const box: [number, number] = after ? [from - 4, to + 5 + width] : [from - 5 - width, to + 4];
    if (!after && box[0] < LEFT) continue;
    const lane = Array.from({ length: MOST_LANES }, (_, i) => i).find(
      (i) => !(taken[i] ?? []).some(([a, b]) => box[0] < b && a < box[1]),
    );
    if (lane === undefined) continue;
    (taken[lane] ??= []).push(box);
    spans.push({ hazard, from, to, text, textX: after ? to + 6 : from - 6, anchor: after ? "start" : "end", lane });
  }
  return spans;
}

function drawSpans({ paint, floor }: Sheet, cut: Cut, spans: readonly Span[]): string {
  let marks = "";
  let lettering = "";
  let hairs = "";
  for (const { hazard, from, to, text, textX, anchor, lane } of spans) {
    const y = floor + (lane + 0.5) * LANE + 2;
    const [groundA, groundB] = hazard.stationMetres.map((station) => cut.y(heightNear(cut.section, station))) as [
      number,
      number,
    ];
    hairs += `M${num(from)} ${num(groundA)}V${num(y)}`;
    if (to - from > 3) hairs += `M${num(to)} ${num(groundB)}V${num(y)}`;
    marks +=
      element("path", {
        ...paint("leader"),
        "stroke-width": 1.1,
        d: polyPath(
          [
            [from, y],
            [to, y],
          ],
          false,
        ),
      }) +
      element("circle", { ...paint("spot"), cx: num(from), cy: num(y), r: 1.9, "stroke-width": 0.8 }) +
      (to - from > 3
        ? element("circle", { ...paint("spot-full"), cx: num(to), cy: num(y), r: 2.1, "stroke-width": 0.6 })
        : "");
    lettering += set(paint, { text, mark: "figure", size: SMALL, weight: "regular" }, textX, y + 3.3, anchor, 2.2);
  }
  return (
    (hairs
      ? element("path", { ...paint("leader"), "stroke-width": 0.45, "stroke-dasharray": "1 1.8", d: hairs })
      : "") +
    marks +
    lettering
  );
}

/** A graduated foot like a chart's border: a bar for every 50 from the tee, every hundred in figures. */
function drawAxis({ paint, foot }: Sheet, cut: Cut, unit: LengthUnit): string {
  const edge = WIDTH - RIGHT;
  const bars: string[] = [];
  let lettering = "";
  const stop = cut.x(cut.tee.lengthMetres);
  for (let n = 0; ; n++) {
    const x = cut.x(fromUnit(n * 50, unit));
    if (x > edge) break;
    const next = Math.min(edge, cut.x(fromUnit((n + 1) * 50, unit)));
    if (n % 2 === 0) bars.push(`M${num(x)} ${num(foot)}H${num(next)}v3.500H${num(x)}z`);
    const text = String(n * 50);
    if (n % 2 === 0 && n > 0 && x + textWidth(text, SMALL) / 2 < stop - textWidth("888", TEXT, "heavy")) {
      lettering += set(paint, { text, mark: "legend", size: SMALL, weight: "regular" }, x, foot + 14, "middle", 0);
    }
  }
  const whole = String(Math.round(inUnit(cut.tee.lengthMetres, unit)));
  return (
    element("path", { ...paint("frame-ink"), d: bars.join("") }) +
    element("path", { ...paint("tick"), "stroke-width": 0.8, d: `M${num(stop)} ${num(foot - 3)}v9` }) +
    lettering +
    set(
      paint,
      { text: `${whole} ${unit === "yards" ? "yd" : "m"}`, mark: "title", size: TEXT, weight: "heavy" },
      Math.min(stop, edge - textWidth(whole, TEXT, "heavy") / 2 - 9),
      foot + 15,
      "middle",
      0,
    )
  );
}

function drawNeatline({ paint, foot, floor }: Sheet): string {
  const box = (gap: number, weight: number): string =>
    element("rect", {
      ...paint("frame"),
      x: num(LEFT - gap),
      y: num(TOP - gap),
      width: num(WIDTH - LEFT - RIGHT + 2 * gap),
      height: num(foot - TOP + 2 * gap),
      "stroke-width": weight,
    });
  return (
    box(0, 0.6) +
    box(3.5, 1.2) +
    (foot > floor
      ? element("path", { ...paint("frame"), "stroke-width": 0.6, d: `M${LEFT} ${num(floor)}H${WIDTH - RIGHT}` })
      : "")
  );
}
