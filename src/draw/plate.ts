/**
 * The plate: a hole's chart, drawn at build. Its layers, the order in which they lie on the
 * sheet and the order in which they take room for lettering are in plate-layers.ts; about
 * them stand paper, border and title block.
 */
import * as attr from "../contract/attributes.ts";
import { writePlane } from "../contract/values.ts";
import type { Box } from "../geo/box.ts";
import type { LengthUnit } from "../geo/units.ts";
import type { MeasuredHole } from "../measure/types.ts";
import { COMPOSITIONS, thinned, type Composition, type CompositionName } from "./composition.ts";
import { drawFrame, drawGraduation, drawPaper, inBothUnits } from "./furniture.ts";
import { LabelPlacer } from "./labels.ts";
import { painter, type PlateTheme } from "./palette.ts";
import { layLayers, Room } from "./plate-layers.ts";
import type { PlateGround } from "./relief.ts";
import { layCover, stageOf, teePlates } from "./stage.ts";
import { drawnTee, layHole, type Sheet } from "./sheet.ts";
import { element, escapeXml, num } from "./svg.ts";
import { drawTitleBlock } from "./title-block.ts";
import type { PlateWords } from "../words/words.ts";

export interface PlateOptions {
  /** One of the site's, by name, or another. */
  readonly composition: CompositionName | Composition;
  /** Begins every id in the drawing; unique on its page. Letters, digits, hyphens. */
  readonly idPrefix: string;
  /** The unit shown first; both are drawn. */
  readonly unit: LengthUnit;
  /** The tee set shown first; the course's default when left out. */
  readonly tee?: string;
  /** Colours written into the drawing; a page's {@link plateCss} overrides them. */
  readonly theme?: PlateTheme;
  readonly ground?: PlateGround;
  readonly words: PlateWords;
  /**
   * Ids of elements on the page that name and describe the plate; without them it carries its own title and
   * description.
   */
  readonly labelledBy?: string;
  readonly describedBy?: string;
}

export interface Plate {
  readonly svg: string;
  /** What is inside the svg element: for who shows parts of the sheet in elements of their own. */
  readonly body: string;
  /** Labels that found no room from the tee and in the unit shown first, in words. */
  readonly unplaced: readonly string[];
  readonly width: number;
  readonly height: number;
  /** Where the lettering shown first stands on the sheet, and the figures and drawings it keeps clear of. */
  readonly lettering: { readonly labels: readonly Box[]; readonly blocked: readonly Box[] };
}

/** Families of a plate's lettering where no style sheet reaches it. */
export const PLATE_FAMILY = "Besley, Georgia, 'Times New Roman', serif";

const UNITS: readonly LengthUnit[] = ["yards", "metres"];

/** Characters a plate may have: some 23 KB once compressed; less for the one a hole's page holds itself. */
const mostCharacters = ({ name }: Composition): number => (name === "phone" ? 67_000 : 92_000);
/** Shares of its texture that a heavy plate is redrawn with until it is light enough. */
const THINNING = [1, 0.85, 0.65, 0.4, 0.2] as const;

/**
 * Draws a hole's plate. Same hole and options, same bytes. Ground so rich that the plate
 * would be heavy to load is drawn with less texture: fewer dots, hachures and contours,
 * never fewer figures.
 *
 * @throws RangeError when the hole has no tees, or the id prefix cannot begin an id.
 */
export function drawPlate(hole: MeasuredHole, options: PlateOptions): Plate {
  const composition =
    typeof options.composition === "string" ? COMPOSITIONS[options.composition] : options.composition;
  const draw = layOut(hole, options, composition);
  let plate: Plate | undefined;
  for (const share of THINNING) {
    plate = draw(thinned(composition, share));
    // A relief picture handed in as a data address is not the drawing's own weight.
    if (plate.svg.length - (options.ground?.relief?.href.length ?? 0) <= mostCharacters(composition)) break;
  }
  return plate!;
}

/** Everything but the texture, found and drawn once; then the plate with as much texture as one likes. */
function layOut(hole: MeasuredHole, options: PlateOptions, composition: Composition): (texture: Composition) => Plate {
  const { words } = options;
  const theme = options.theme ?? "light";
  const paint = painter(theme);
  const sheet = layHole(hole, composition);
  const context = stageOf(hole.placed.values(), sheet, composition, theme, options.idPrefix);
  const first = drawnTee(hole, options.tee);
  const every = composition.keep.everyTee;
  const plates = teePlates(context, hole);
  layCover(context, plates);
  const bounds: Box = [sheet.map[0] + 3, sheet.map[1] + 3, sheet.map[2] - 3, sheet.map[3] - 3];
  const room = new Room(new LabelPlacer(bounds, context.cover));
  const drawn = layLayers({
    hole,
    context,
    words,
    ground: options.ground,
    first,
    plates,
    room,
    tees: every ? hole.tees : [first],
    unit: options.unit,
    units: every ? UNITS : [options.unit],
  });

  const clip = context.id("map");
  const [minX, minY, maxX, maxY] = sheet.map;
  const window = element(
    "clipPath",
    { id: clip },
    element("rect", { x: num(minX), y: num(minY), width: num(maxX - minX), height: num(maxY - minY) }),
  );
  const titleId = context.id("title");
  const descriptionId = context.id("description");
  const head =
    (options.labelledBy
      ? ""
      : element(
          "title",
          { id: titleId },
          escapeXml(words.plateTitle({ hole: hole.hole.number, name: hole.hole.name })),
        )) +
    (options.describedBy ? "" : element("desc", { id: descriptionId }, escapeXml(words.plateDescription))) +
    element("defs", {}, window) +
    drawPaper(sheet, paint);
  const furniture =
    (every
      ? inBothUnits(options.unit, (unit) => drawGraduation(sheet, composition, unit, paint))
      : drawGraduation(sheet, composition, options.unit, paint)) +
    drawFrame(sheet, composition, paint) +
    drawTitleBlock(hole, first, sheet, composition, options.unit, paint, words);
  return (texture) => {
    const map = drawn.map((draw) => draw(texture)).join("");
    const body = head + element("g", { "clip-path": `url(#${clip})` }, map) + furniture;
    const svg = `<svg xmlns="http://www.w3.org/2000/svg" class="plate plate-${composition.name}" viewBox="0 0 ${num(sheet.width)} ${num(sheet.height)}" width="${num(sheet.width)}" height="${num(sheet.height)}" ${attr.plane}="${planeText(sheet)}" role="img" aria-labelledby="${escapeXml(options.labelledBy ?? titleId)}" aria-describedby="${escapeXml(options.describedBy ?? descriptionId)}" font-family="${PLATE_FAMILY}">${body}</svg>`;
    const { unplaced, labels, blocked } = room;
    return { svg, body, unplaced, width: sheet.width, height: sheet.height, lettering: { labels, blocked } };
  };
}

/**
 * The sheet's place on the measuring plane, six numbers of an affine transform: so a browser can draw on it
 * what it measures.
 */
function planeText({ toSheet }: Sheet): string {
  const [[e, f], [a, b], [c, d]] = [toSheet([0, 0]), toSheet([1, 0]), toSheet([0, 1])] as const;
  return writePlane([a - e, b - f, c - e, d - f, e, f], num);
}
