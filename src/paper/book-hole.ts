/**
 * A hole's opening in the pocket book: the plate on the left-hand page; its figures, the
 * green and room for notes on the right.
 */
import type { Club } from "../course/types.ts";
import type { GreenSheet } from "../draw/green-sheet.ts";
import { drawScale } from "../draw/furniture.ts";
import { painter, type PlateTheme } from "../draw/palette.ts";
import { BOOK_COMPOSITION, PX_PER_MM } from "../draw/paper-composition.ts";
import type { PlateGround } from "../draw/relief.ts";
import { layHole } from "../draw/sheet.ts";
import { element } from "../draw/svg.ts";
import type { LengthUnit } from "../geo/units.ts";
import { defaultAmong } from "../measure/default-tee.ts";
import type { MeasuredHole, TeeFigures } from "../measure/types.ts";
import {
  hazardName,
  mustCarryMetres,
  nearbyCautions,
  perGender,
  troubleRows,
  type TroubleRow,
} from "../components/hole-view.ts";
import { keptGreenSheet, keptPlate } from "../site/cache/kept-drawings.ts";
import { keptGreenLie } from "../site/cache/kept-figures.ts";
import { featureName } from "../site/ground/names.ts";
import { greenSentences } from "../site/ground/text.ts";
import { otherLanguage } from "../site/language/language-view.ts";
import { tipWords } from "../site/text/tip-words.ts";
import type { Words } from "../site/language/words.ts";
import { renderTip } from "../tell/tip.ts";
import type { HeightGrid } from "../terrain/grid.ts";
import { linesOf } from "./flow.ts";
import {
  denominator,
  escape,
  figure,
  inOneInk,
  langAttribute,
  mmOf,
  notesBox,
  sized,
  swatch,
  symbolOf,
} from "./html.ts";
import { bookLandings, type BookLanding } from "./landings.ts";
import type { Size } from "./sizes.ts";

export interface HoleInBook {
  readonly club: Club;
  readonly measured: MeasuredHole;
  /** Tee sets whose figures are printed, as chosen; those not used on the hole are passed over. */
  readonly teeIds: readonly string[];
  readonly unit: LengthUnit;
  readonly words: Words;
  readonly theme: PlateTheme;
  readonly ground: PlateGround | undefined;
  readonly heights: HeightGrid | undefined;
}

/** Room inside the margins of a page. */
export const COLUMN_MM = 96;
export const TEXT_HEIGHT_MM = 166;

/** Most of a page that a green's drawing is given, across and up, with what is told of it at its side. */
const GREEN_WIDTH_MM = 68;
const GREEN_HEIGHT_MM = 74;
/** A green so much wider than deep has the page's width, and what is told stands under it. */
const BROAD = 1.45;
const TOLD_UNDER_MM = 13;
/** A green drawn smaller than this says too little; before that the tip gives way. */
const LEAST_GREEN_MM = 44;
const LEAST_NOTES_MM = 13;

const MOST_TROUBLE = 6;
const ROW_MM = 3.75;
const TIP = { fontMm: 2.5, lineMm: 3.15 };

/** The tee sets of a hole that were chosen, in the order of the card; the longest where none of them is used here. */
export function chosenTees({ tees }: MeasuredHole, ids: readonly string[]): TeeFigures[] {
  const chosen = tees.filter(({ tee }) => ids.includes(tee.id));
  return chosen.length > 0 ? chosen : tees.slice(0, 1);
}

/** The tee set the plate is drawn from: the course's own choice where it is among those chosen. */
export const plateTee = (measured: MeasuredHole, tees: readonly TeeFigures[]): TeeFigures =>
  defaultAmong(tees, measured.course)!;

/** Both pages of a hole, left then right. */
export function holeOpening(given: HoleInBook): readonly [string, string] {
  return [platePage(given), figuresPage(given)];
}

function platePage({ measured, teeIds, unit, words, theme, ground }: HoleInBook): string {
  const { hole } = measured;
  const say = words.paper.book;
  const shown = plateTee(measured, chosenTees(measured, teeIds));
  const plate = keptPlate(measured, {
    composition: BOOK_COMPOSITION,
    idPrefix: `book-${hole.number}`,
    unit,
    tee: shown.tee.id,
    theme,
    words: words.draw,
    ...(ground ? { ground } : {}),
  });
  const sheet = layHole(measured, BOOK_COMPOSITION);
  const scale = drawScale([2, 13], 150, sheet, BOOK_COMPOSITION, unit, painter(theme));
  const bar = element(
    "svg",
    {
      class: "plate scale-bar",
      viewBox: `-6 0 ${Math.ceil(scale.width) + 12} 19`,
      width: `${(scale.width + 12) / PX_PER_MM}mm`,
      height: `${19 / PX_PER_MM}mm`,
      "aria-hidden": "true",
      "font-family": "Besley, serif",
    },
    scale.svg,
  );
  const cautions = nearbyCautions(measured);
  return (
    `<header class="hole-head"><span class="hole-n" aria-hidden="true">${hole.number}</span>` +
    `<div><h2><span class="visually-hidden">${escape(words.holeNumber({ hole: hole.number }))}, </span>${escape(hole.name)}</h2>` +
    `<p>${escape(words.par)} <b>${perGender(hole.par)}</b> <i>·</i> ${escape(words.draw.strokeIndex)} <b>${perGender(hole.strokeIndex)}</b></p></div>` +
    `<p class="hole-length"><b>${figure(shown.lengthMetres, unit, words)}</b> ${escape(symbolOf(unit, words))}<small>${swatch(shown.tee, 2.2, theme === "ink")} ${escape(say.fromTee({ tee: shown.tee.name }))}</small></p></header>` +
    `<figure class="book-plate">${sized(theme === "ink" ? inOneInk(plate.svg) : plate.svg, mmOf(plate.width), mmOf(plate.height))}</figure>` +
    `<div class="plate-foot">${bar}<span>${escape(say.scale({ denominator: denominator((1000 * PX_PER_MM) / sheet.pxPerMetre, words.locale) }))}</span>` +
    (cautions.length > 0
      ? `<p class="care"><b>${escape(words.labelled({ label: words.paper.care }))}</b> ${escape(cautions.map((kind) => words.paper.nearby[kind]).join(", "))}.</p>`
      : "") +
    `</div>`
  );
}

function figuresPage({ club, measured, teeIds, unit, words, theme, heights }: HoleInBook): string {
  const { hole } = measured;
  const say = words.paper.book;
  const tees = chosenTees(measured, teeIds);
  const shown = plateTee(measured, tees);
  const ink = theme === "ink";
  const trouble = telling(troubleRows(measured, shown), tees);
  const landings = bookLandings(measured, tees, heights);
  const lie = heights && keptGreenLie(measured, shown, heights);
  const green = keptGreenSheet(measured, {
    idPrefix: `book-green-${hole.number}`,
    unit,
    tee: shown.tee.id,
    theme,
    words: words.drawGround,
    ...(heights ? { ground: { grid: heights, lie } } : {}),
  });
  const tip = renderTip(measured, {
    units: unit,
    idPrefix: "unused",
    tee: shown.tee.id,
    words: tipWords(club, measured.hole),
  })
    .text.split("\n")
    .filter((line) => line !== "");
  const told = lie ? greenSentences(lie, shown.green.approach, unit, words).join(" ") : "";

  const tipMm = tip.reduce((sum, line) => sum + linesOf(line, COLUMN_MM, TIP.fontMm) * TIP.lineMm + 0.8, 2.5);
  const tablesMm =
    5.5 +
    (tees.length + 1) * ROW_MM +
    2 +
    (trouble.length > 0 ? (trouble.length + 1) * ROW_MM + 2 : 0) +
    (landings.length > 0 ? (landings.length + 1) * ROW_MM + 2 : 0);
  const free = TEXT_HEIGHT_MM - tablesMm - LEAST_NOTES_MM - 3;
  const tells = free - tipMm >= Math.min(LEAST_GREEN_MM, mmOf(green.height));
  const broad = green.width / green.height > BROAD;
  const room = free - (tells ? tipMm : 0) - (broad ? TOLD_UNDER_MM : 0);
  const size = greenSize(green, {
    widthMm: broad ? COLUMN_MM : GREEN_WIDTH_MM,
    heightMm: Math.min(GREEN_HEIGHT_MM, room),
  });

  return (
    `<p class="running"><span>${hole.number} <b>${escape(hole.name)}</b></span><span>${escape(words.settings[unit])}</span></p>` +
    teesTable(tees, unit, words, ink) +
    troubleTable(measured, trouble, tees, unit, words, ink) +
    landingTable(measured, landings, unit, words, ink) +
    (tells
      ? `<div class="book-tip"${langAttribute(otherLanguage(club, measured.hole, "tip"))}>${tip.map((line) => `<p>${escape(line)}</p>`).join("")}</div>`
      : "") +
    `<div class="book-green${broad ? " broad" : ""}"><figure>${sized(green.svg, size.widthMm, size.heightMm)}<figcaption>${escape(say.greenScale({ denominator: denominator(size.scale, words.locale) }))}</figcaption></figure>` +
    `<div class="green-side"><dl><div><dt>${escape(words.holePage.depth)}</dt><dd>${figure(shown.green.depthMetres, unit, words)}</dd></div><div><dt>${escape(words.holePage.width)}</dt><dd>${figure(shown.green.widthMetres, unit, words)}</dd></div></dl>` +
    (told ? `<p>${escape(told)}</p>` : "") +
    `</div></div>` +
    notesBox(say.notes)
  );
}

/** How large a green is printed: as drawn, at most 1:500, or smaller to fit; never larger. */
export function greenSize(
  { width, height, pxPerMetre }: Omit<GreenSheet, "svg">,
  room: Size,
): Size & { readonly scale: number } {
  const share = Math.min(1, room.widthMm / mmOf(width), room.heightMm / mmOf(height));
  return {
    widthMm: mmOf(width) * share,
    heightMm: mmOf(height) * share,
    scale: (1000 * PX_PER_MM) / (pxPerMetre * share),
  };
}

/** Trouble worth a line: what a chosen tee can find first, the rest while there is room; in order of reach. */
function telling(rows: readonly TroubleRow[], tees: readonly TeeFigures[]): TroubleRow[] {
  const of = rows.filter(({ reach }) => tees.some(({ tee }) => reach[tee.id] !== undefined));
  const kept = new Set(
    [...of.filter(({ hazard }) => hazard.inCorridor), ...of.filter(({ hazard }) => !hazard.inCorridor)].slice(
      0,
      MOST_TROUBLE,
    ),
  );
  return of.filter((row) => kept.has(row));
}

const teeHead = ({ tee }: TeeFigures, ink: boolean): string => `${swatch(tee, 2.3, ink)} ${escape(tee.name)}`;

function teesTable(tees: readonly TeeFigures[], unit: LengthUnit, words: Words, ink: boolean): string {
  const say = words.holePage;
  const carries = tees.some((tee) => mustCarryMetres(tee) !== undefined);
  const head = [say.tee, say.length, ...(carries ? [say.carry] : []), say.front, say.middle, say.back];
  const rows = tees.map((tee) => {
    const { frontMetres, middleMetres, backMetres } = tee.green;
    const cells = [
      `<b>${figure(tee.lengthMetres, unit, words)}</b>`,
      ...(carries ? [figure(mustCarryMetres(tee), unit, words, "up")] : []),
      ...[frontMetres, middleMetres, backMetres].map((metres) => figure(metres, unit, words)),
    ];
    return `<tr><th scope="row">${teeHead(tee, ink)}</th>${cells.map((cell) => `<td>${cell}</td>`).join("")}</tr>`;
  });
  return `<table class="book-tees"><caption class="visually-hidden">${escape(say.howFar)}</caption><thead><tr>${head.map((text) => `<th scope="col">${escape(text)}</th>`).join("")}</tr></thead><tbody>${rows.join("")}</tbody></table>`;
}

function troubleTable(
  measured: MeasuredHole,
  rows: readonly TroubleRow[],
  tees: readonly TeeFigures[],
  unit: LengthUnit,
  words: Words,
  ink: boolean,
): string {
  if (rows.length === 0) return `<p class="no-trouble">${escape(words.paper.book.noTrouble)}</p>`;
  const say = words.paper.book;
  const body = rows.map(({ hazard, reach, carry }) => {
    const cells = tees.map(({ tee: { id } }) => {
      if (reach[id] === undefined) return "<td>–</td>";
      return `<td>${figure(reach[id], unit, words, "down")}${carry[id] === undefined ? "" : `–${figure(carry[id], unit, words, "up")}`}</td>`;
    });
    const side = `${say.sides[hazard.position]}${hazard.inCorridor ? "" : `, ${words.holePage.wide}`}`;
    return `<tr><th scope="row">${escape(hazardName(measured, hazard, words))} <small>${escape(side)}</small></th>${cells.join("")}</tr>`;
  });
  const head = tees.map((tee) => `<th scope="col">${teeHead(tee, ink)}</th>`).join("");
  return `<table class="book-trouble"><caption class="visually-hidden">${escape(words.labelled({ label: words.holePage.hazards }))} ${escape(words.holePage.reachToCarry)}</caption><thead><tr><th scope="col">${escape(words.holePage.hazards)} <small>${escape(words.holePage.reachToCarry)}</small></th>${head}</tr></thead><tbody>${body.join("")}</tbody></table>`;
}

function landingTable(
  measured: MeasuredHole,
  landings: readonly BookLanding[],
  unit: LengthUnit,
  words: Words,
  ink: boolean,
): string {
  if (landings.length === 0) return "";
  const say = words.paper.book;
  const body = landings.map(({ player, tee, figures: { driveMetres, fairway, left, right, leavesMetres } }) => {
    const trouble = (one: typeof left): string =>
      one
        ? `${figure(one.metres, unit, words)} <small>${escape(featureName(measured, one.id, words))}</small>`
        : `<small>${escape(say.clear)}</small>`;
    return (
      `<tr><th scope="row">${swatch(tee.tee, 2.3, ink)} ${escape(words.ground.players[player.id])}</th><td>${figure(driveMetres, unit, words)}</td>` +
      `<td>${fairway.widthMetres > 0 ? figure(fairway.widthMetres, unit, words) : `<small>${escape(say.offFairway)}</small>`}</td>` +
      `<td class="beside">${trouble(left)}</td><td class="beside">${trouble(right)}</td><td><b>${figure(leavesMetres, unit, words)}</b></td></tr>`
    );
  });
  const head = [say.landing, say.drive, say.wide, say.left, say.right, say.leaves];
  return `<table class="book-landing"><caption class="visually-hidden">${escape(say.landing)}</caption><thead><tr>${head.map((text, i) => `<th scope="col"${i === 3 || i === 4 ? ' class="beside"' : ""}>${escape(text)}</th>`).join("")}</tr></thead><tbody>${body.join("")}</tbody></table>`;
}
