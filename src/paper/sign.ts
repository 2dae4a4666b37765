/** Tee signs: one large sheet for each hole, read two metres off. */
import type { Club } from "../course/types.ts";
import { SIGN_COMPOSITION } from "../draw/paper-composition.ts";
import type { PlateTheme } from "../draw/palette.ts";
import { drawPlate } from "../draw/plate.ts";
import type { PlateGround } from "../draw/relief.ts";
import type { LengthUnit } from "../geo/units.ts";
import type { MeasuredCourse, MeasuredHole, TeeFigures } from "../measure/types.ts";
import { nearbyCautions, perGender } from "../components/hole-view.ts";
import { creditText, draftLine } from "../site/text/draft-line.ts";
import type { Words } from "../site/language/words.ts";
import { chosenTees, plateTee } from "./book-hole.ts";
import { CREST, escape, figure, inOneInk, mmOf, sized, symbolOf } from "./html.ts";
import { drawQr } from "./qr.ts";

/** Signs are laid out on A3 and scaled to other sheets. */
export const SIGN_QR_MM = 100;

export interface SignOptions {
  readonly club: Club;
  readonly measured: MeasuredCourse;
  readonly teeIds: readonly string[];
  readonly unit: LengthUnit;
  readonly words: Words;
  readonly theme: PlateTheme;
  readonly groundOf: (hole: MeasuredHole) => PlateGround | undefined;
  /** Address of a hole's page, whole. */
  readonly addressOf: (hole: MeasuredHole) => string;
}

export interface Signs {
  readonly title: string;
  readonly leaves: readonly string[];
}

/**
 * Black or white, whichever stands out more on a colour: relative luminance as WCAG 2.2
 * defines it; the two are alike at 0.179.
 */
export function inkOn(colour: string): "#000000" | "#ffffff" {
  const [r, g, b] = [1, 3, 5].map((at) => {
    const value = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b > 0.179 ? "#000000" : "#ffffff";
}

export function composeSigns(options: SignOptions): Signs {
  const { measured, words } = options;
  return {
    title: words.paper.sign.documentTitle({ course: measured.course.name }),
    leaves: measured.holes.map((hole) => signLeaf(options, hole)),
  };
}

/** A tee set as a bar in its colour, drawn: the name at the left, the length at the right. */
function teeBar({ tee, lengthMetres }: TeeFigures, unit: LengthUnit, words: Words, ink: boolean): string {
  const colour = ink ? "#ffffff" : tee.colour;
  const text = inkOn(colour);
  return (
    `<svg class="tee-bar" viewBox="0 0 103 24" width="103mm" height="24mm" role="img" aria-label="${escape(`${tee.name} ${figure(lengthMetres, unit, words)} ${symbolOf(unit, words)}`)}">` +
    `<rect x="0.4" y="0.4" width="102.2" height="23.2" fill="${escape(colour)}" stroke="currentColor" stroke-width="0.8"/>` +
    `<text x="5" y="15.6" font-size="10.5" font-weight="600" fill="${text}">${escape(tee.name)}</text>` +
    `<text x="98" y="17.4" font-size="16.5" font-weight="600" text-anchor="end" font-family="Besley, serif" fill="${text}">${figure(lengthMetres, unit, words)}</text></svg>`
  );
}

function signLeaf(
  { club, teeIds, unit, words, theme, groundOf, addressOf, measured: { course } }: SignOptions,
  measured: MeasuredHole,
): string {
  const { hole } = measured;
  const tees = chosenTees(measured, teeIds);
  const shown = plateTee(measured, tees);
  const ground = groundOf(measured);
  const plate = drawPlate(measured, {
    composition: SIGN_COMPOSITION,
    idPrefix: `sign-${hole.number}`,
    unit,
    tee: shown.tee.id,
    theme,
    words: words.draw,
    ...(ground ? { ground } : {}),
  });
  const address = addressOf(measured);
  const cautions = nearbyCautions(measured);
  return (
    `<section class="leaf sign-leaf"><div class="page">` +
    `<header class="sign-head"><span class="sign-n" aria-hidden="true">${hole.number}</span><div><h1><span class="visually-hidden">${escape(words.holeNumber({ hole: hole.number }))}, </span>${escape(hole.name)}</h1>` +
    `<p>${escape(words.par)} <b>${perGender(hole.par)}</b> <i>·</i> ${escape(words.draw.strokeIndex)} <b>${perGender(hole.strokeIndex)}</b></p></div></header>` +
    `<div class="sign-body"><figure>${sized(theme === "ink" ? inOneInk(plate.svg) : plate.svg, mmOf(plate.width), mmOf(plate.height))}<figcaption>${escape(words.paper.sign.figuresFrom({ tee: shown.tee.name, unit: words.settings.inUnit[unit] }))}</figcaption></figure>` +
    `<div class="sign-side"><div class="tee-bars">${tees.map((tee) => teeBar(tee, unit, words, theme === "ink")).join("")}</div><p class="sign-unit">${escape(words.settings[unit])}</p>` +
    (cautions.length > 0
      ? `<div class="sign-care"><p><b>${escape(words.paper.care)}</b></p><ul>${cautions.map((kind) => `<li>${escape(words.paper.nearby[kind])}</li>`).join("")}</ul></div>`
      : "") +
    `<div class="sign-qr">${drawQr(address, { label: words.holeTitle({ hole: hole.number, name: hole.name }), sizeMm: SIGN_QR_MM })}<p><b>${escape(words.paper.sign.scan)}</b></p><p class="address">${escape(address.replace(/^https?:\/\//, ""))}</p></div></div></div>` +
    `<footer class="sign-foot">${CREST}<p><b>${escape(course.name)}</b> ${escape(club.place ?? "")}</p><p class="rule">${escape(words.paper.careRule)}${[club.invented, draftLine(course, words, [hole]), creditText(course, words)].flatMap((line) => (line === undefined ? [] : [` ${escape(line)}`])).join("")}</p></footer>` +
    `</div></section>`
  );
}
