/** The title block: number and name, par, what the figures mean, scale, date of survey. */
import { inUnit, type LengthUnit } from "../geo/units.ts";
import type { MeasuredHole, TeeFigures } from "../measure/types.ts";
import type { Composition, CompositionName } from "./composition.ts";
import { drawScale, inBothUnits } from "./furniture.ts";
import { textAttributes, type TextLine } from "./lettering.ts";
import type { Painter } from "./palette.ts";
import type { Sheet } from "./sheet.ts";
import { element, escapeXml, num, polyPath } from "./svg.ts";
import { textWidth } from "./text-width.ts";
import { dayOf } from "../words/day.ts";
import type { PlateWords } from "../words/words.ts";

interface Layout {
  readonly number: number;
  readonly name: number;
  readonly spacing: number;
  readonly small: number;
}

const LAYOUTS: Readonly<Record<CompositionName, Layout>> = {
  phone: { number: 44, name: 18, spacing: 0, small: 11 },
  desk: { number: 58, name: 23, spacing: 0.02, small: 12 },
  card: { number: 92, name: 42, spacing: 0.01, small: 20 },
};

export function drawTitleBlock(
  hole: MeasuredHole,
  first: TeeFigures,
  sheet: Sheet,
  composition: Composition,
  unit: LengthUnit,
  paint: Painter,
  words: PlateWords,
): string {
  // On paper the page around the plate says all this, in its own type.
  if (composition.name === "book" || composition.name === "sign") return "";
  const layout = LAYOUTS[composition.name];
  const [minX, , maxX, maxY] = sheet.map;
  const top = maxY + (composition.name === "phone" ? 4 : 14);
  const key = composition.keep.legend ? composition.text.note + 8 : 0;
  const middle = (top + sheet.height - key) / 2;
  const set = (text: string, x: number, y: number, line: Omit<TextLine, "text">, anchor = "start"): string =>
    element(
      "text",
      { x: num(x), y: num(y), "text-anchor": anchor, ...textAttributes({ ...line, text }, paint, 0) },
      escapeXml(text),
    );
  const small = { mark: "legend", size: layout.small, weight: "regular" } as const;
  const { number, name, par, strokeIndex } = hole.hole;

  const digits = String(number);
  const numberWidth = textWidth(digits, layout.number, "heavy");
  const left = minX + 2;
  const nameX = left + numberWidth + layout.small;
  const pars = par.men === par.women ? `${par.men}` : `${par.men}/${par.women}`;
  const indexes =
    strokeIndex.men === strokeIndex.women ? `${strokeIndex.men}` : `${strokeIndex.men}/${strokeIndex.women}`;
  const length = `${Math.round(inUnit(first.lengthMetres, unit))} ${unit === "yards" ? "yd" : "m"}`;
  let out =
    set(digits, left, middle + layout.number * 0.36, { mark: "title", size: layout.number, weight: "heavy" }) +
    set(name, nameX, middle - layout.small * 0.2, {
      mark: "title",
      size: layout.name,
      weight: "heavy",
      spacing: layout.spacing,
    }) +
    set(
      `${words.par} ${pars} · ${words.strokeIndex} ${indexes}${composition.name === "card" ? ` · ${length}` : ""}`,
      nameX,
      middle + layout.small * 1.25,
      small,
    );
  if (composition.name === "card") {
    const right = maxX - 2;
    out += set(hole.course.name, right, middle - layout.small * 0.2, { ...small, mark: "title", size: 27 }, "end");
    if (hole.course.surveyed)
      out += set(
        words.surveyed({ date: dayOf(hole.course.surveyed) }),
        right,
        middle + layout.small * 1.25,
        small,
        "end",
      );
    return out;
  }

  // Scale and date stand at the right; the key below or between, where there is room.
  const most = composition.name === "phone" ? 122 : 190;
  out += inBothUnits(unit, (each) => {
    const { width } = drawScale([0, 0], most, sheet, composition, each, paint);
    return drawScale(
      [maxX - width - 2, middle - (composition.name === "phone" ? 10 : 14)],
      most,
      sheet,
      composition,
      each,
      paint,
    ).svg;
  });
  if (hole.course.surveyed) {
    out += set(
      words.surveyed({ date: dayOf(hole.course.surveyed) }),
      maxX - 1,
      middle + layout.small * 1.25,
      small,
      "end",
    );
  }
  if (composition.keep.legend) {
    const y = sheet.height - (composition.name === "phone" ? 8 : 12);
    if (composition.name === "desk")
      out += set(hole.course.name, maxX - 1, y, { ...small, size: composition.text.note, italic: true }, "end");
    out += drawKey(
      left,
      y,
      maxX - left,
      hole.tees.some(({ bends }) => bends.length > 0),
      composition,
      paint,
      words,
    );
  }
  return out;
}

/** What arcs, boxed and dotted figures say, in one line. */
function drawKey(
  x: number,
  y: number,
  room: number,
  bends: boolean,
  composition: Composition,
  paint: Painter,
  words: PlateWords,
): string {
  const size = composition.text.note;
  const { fine } = composition;
  const parts: { width: number; draw: (x: number) => string }[] = [
    {
      width: 20,
      draw: (at) =>
        element("path", { ...paint("arc"), "stroke-width": fine, d: `M${num(at)} ${num(y - 2)}q9-5 18 0` }),
    },
    {
      width: 20,
      draw: (at) =>
        element("rect", {
          ...paint("pill"),
          x: num(at),
          y: num(y - 8.5),
          width: 18,
          height: 10,
          rx: 5,
          "stroke-width": fine,
        }),
    },
    {
      width: 20,
      draw: (at) =>
        element("path", {
          ...paint("leader"),
          "stroke-width": fine,
          d: polyPath(
            [
              [at + 3, y - 3.5],
              [at + 16, y - 3.5],
            ],
            false,
          ),
        }) +
        element("circle", { ...paint("spot"), cx: num(at + 3), cy: num(y - 3.5), r: 2, "stroke-width": fine }) +
        element("circle", { ...paint("spot-full"), cx: num(at + 16), cy: num(y - 3.5), r: 2, "stroke-width": fine }),
    },
  ];
  if (bends) {
    parts.push({
      width: 12,
      draw: (at) =>
        element("circle", { ...paint("spot"), cx: num(at + 5), cy: num(y - 3.5), r: 4, "stroke-width": fine }) +
        element("circle", { ...paint("frame-ink"), cx: num(at + 5), cy: num(y - 3.5), r: 1.1 }),
    });
  }
  const said = [words.legend.arcs, words.legend.left, words.legend.hazard, words.legend.bend].slice(0, parts.length);
  const widths = said.map((text) => textWidth(text, size));
  const total = parts.reduce((sum, { width }, i) => sum + width + 4 + widths[i]!, 0);
  const gap = Math.max(5, Math.min(26, (room - total) / (parts.length - 1)));
  let at = x;
  return parts
    .map(({ width, draw }, i) => {
      const text = element(
        "text",
        {
          x: num(at + width + 2),
          y: num(y),
          ...textAttributes({ text: "", mark: "legend", size, weight: "regular" }, paint, 0),
        },
        escapeXml(said[i]!),
      );
      const drawn = draw(at) + text;
      at += width + 4 + widths[i]! + gap;
      return drawn;
    })
    .join("");
}
