/**
 * The scorecard: one sheet printed on both sides and folded once. Outside, the back and the
 * front; inside, out on the left and in on the right, holes across and players down.
 */
import type { Club, Gender, TeeSet } from "../course/types.ts";
import { drawCourse } from "../draw/course-map.ts";
import type { PlateTheme } from "../draw/palette.ts";
import type { PlateGround } from "../draw/relief.ts";
import type { LengthUnit } from "../geo/units.ts";
import { strokesOn, writtenHandicap } from "../measure/handicap.ts";
import type { MeasuredCourse, MeasuredHole } from "../measure/types.ts";
import { nines } from "../components/nines.ts";
import { lengthsFrom, parOf } from "../components/totals.ts";
import { creditText, draftLine } from "../site/text/draft-line.ts";
import type { Words } from "../site/language/words.ts";
import { dayOf } from "../words/day.ts";
import { decimal } from "../tell/numbers.ts";
import { CREST, escape, figure, mmOf, notesBox, sized, swatch } from "./html.ts";

/** Rows of the card; more players take another card. */
export const MOST_PLAYERS = 4;

export interface CardPlayer {
  /**
   * What strokes are received on: a Playing Handicap, or a Course Handicap where no allowance was taken.
   * Negative for a plus player.
   */
  readonly handicap: number;
  readonly gender: Gender;
}

export interface CardOptions {
  readonly club: Club;
  readonly measured: MeasuredCourse;
  readonly tees: readonly TeeSet[];
  readonly unit: LengthUnit;
  readonly words: Words;
  readonly theme: PlateTheme;
  readonly courseGround: PlateGround | undefined;
  /** From the first row on; rows without one are left clear. */
  readonly players: readonly CardPlayer[];
  /** Percent, where Playing Handicaps were worked out with one. */
  readonly allowance: number | undefined;
}

export interface Card {
  readonly title: string;
  /** Outside, then inside. */
  readonly leaves: readonly [string, string];
}

/** @throws RangeError when more players are given than a card has rows. */
export function composeCard(options: CardOptions): Card {
  if (options.players.length > MOST_PLAYERS)
    throw new RangeError(`A card has rows for ${MOST_PLAYERS} players, not ${options.players.length}.`);
  const leaf = (kind: string, left: string, right: string): string =>
    `<section class="leaf ${kind}"><div class="page"><div class="panel">${left}</div><div class="panel">${right}</div></div></section>`;
  const parts = nines(options.measured.holes);
  const out = nineTable(options, parts[0] ?? [], 0);
  const rest = parts[1] ? nineTable(options, parts[1], 1) : notes(options);
  return {
    title: options.words.paper.card.documentTitle({ course: options.measured.course.name }),
    leaves: [
      leaf("outside", backPanel(options), frontPanel(options)),
      leaf("inside", `${headFields(options)}${out}`, `${signatures(options)}${rest}${small(options)}`),
    ],
  };
}

const letters = "ABCD";

/** Strokes of a hole as they are printed: a dot for each received, a plus for each given back. */
export const strokeMarks = (strokes: number): string => (strokes < 0 ? "+" : "•").repeat(Math.abs(strokes));

function nineTable(
  { measured, tees, unit, words, theme, players }: CardOptions,
  holes: readonly MeasuredHole[],
  nine: number,
): string {
  const say = words.card;
  const all = measured.holes;
  const received = players.map(({ handicap, gender }) =>
    strokesOn(
      handicap,
      all.map(({ hole }) => hole),
      gender,
    ),
  );
  const last = nines(all).length - 1 === nine;
  const { total } = words.paper.card;
  const sumName = nines(all).length === 1 ? total : nine === 0 ? say.out : say.in;
  const sums = [
    sumName,
    ...(last && nine > 0 ? [total] : []),
    ...(last ? [words.paper.card.handicap, words.paper.card.net] : []),
  ];
  const blanks = sums.map(() => "<td></td>");
  const row = (kind: string, head: string, cells: readonly string[], ends: readonly string[]): string =>
    `<tr class="${kind}"><th scope="row">${head}</th>${cells.map((cell) => `<td>${cell}</td>`).join("")}${ends.join("")}</tr>`;
  const ends = (own: string, total: string): string[] =>
    sums.map((_, i) => `<td class="sum">${i === 0 ? own : i === 1 && nine > 0 ? total : ""}</td>`);
  const rows = tees.map((tee) =>
    row(
      "tee",
      `${swatch(tee, 2.4, theme === "ink")} ${escape(tee.name)}`,
      holes.map((hole) => figure(hole.tees.find((one) => one.tee.id === tee.id)?.lengthMetres, unit, words)),
      ends(figure(lengthsFrom(holes, tee.id), unit, words), figure(lengthsFrom(all, tee.id), unit, words)),
    ),
  );
  // Men's and women's values have a row each where they differ anywhere.
  const perGender = (
    name: string,
    kind: string,
    value: (hole: MeasuredHole, gender: Gender) => number,
    total: (some: readonly MeasuredHole[], gender: Gender) => string,
  ): string[] => {
    const differ = all.some((hole) => value(hole, "men") !== value(hole, "women"));
    return (differ ? (["men", "women"] as const) : (["men"] as const)).map((gender) =>
      row(
        kind,
        escape(differ ? `${name}, ${words.genders[gender]}` : name),
        holes.map((hole) => `${value(hole, gender)}`),
        ends(total(holes, gender), total(all, gender)),
      ),
    );
  };
  rows.push(
    ...perGender(
      say.par,
      "par",
      ({ hole }, gender) => hole.par[gender],
      (some, gender) => `${parOf(some)[gender]}`,
    ),
  );
  rows.push(
    ...perGender(
      words.paper.card.strokeIndex,
      "index",
      ({ hole }, gender) => hole.strokeIndex[gender],
      () => "",
    ),
  );
  for (let i = 0; i < MOST_PLAYERS; i++) {
    const strokes = received[i];
    const cells = holes.map((hole) =>
      strokes ? `<span class="strokes">${strokeMarks(strokes[all.indexOf(hole)] ?? 0)}</span>` : "",
    );
    const player = players[i];
    const handicap = player && `<span class="hcp">${writtenHandicap(player.handicap)}</span>`;
    const own = sums.map(
      (name) => `<td class="sum">${name === words.paper.card.handicap ? (handicap ?? "") : ""}</td>`,
    );
    rows.push(row("player", escape(letters[i]!), cells, own));
  }
  rows.push(
    row(
      "marker",
      escape(words.paper.card.marker),
      holes.map(() => ""),
      blanks,
    ),
  );
  const names = holes.map(
    ({ hole }) => `<th scope="col"><span class="tall">${escape(hole.name)}</span><b>${hole.number}</b></th>`,
  );
  return `<table class="card-nine${last && nine > 0 ? " with-totals" : ""}"><thead><tr><th scope="col">${escape(say.hole)}</th>${names.join("")}${sums.map((name) => `<th scope="col" class="sum">${escape(name)}</th>`).join("")}</tr></thead><tbody>${rows.join("")}</tbody></table>`;
}

const field = (name: string, kind = ""): string => `<p class="field ${kind}"><span>${escape(name)}</span></p>`;

function headFields({ words }: CardOptions): string {
  const say = words.paper.card;
  return `<div class="fields">${field(say.competition, "wide")}${field(say.date)}${field(say.tees)}${[...letters].map((letter) => field(say.player({ letter }), "half")).join("")}</div>`;
}

const signatures = ({ words }: CardOptions): string =>
  `<div class="signatures">${field(words.paper.card.playerSignature)}${field(words.paper.card.markerSignature)}</div>`;

function small({ words, players, allowance }: CardOptions): string {
  const say = words.paper.card;
  const told = [
    ...(players.some(({ handicap }) => handicap > 0) ? [say.dots] : []),
    ...(players.some(({ handicap }) => handicap < 0) ? [say.given] : []),
    ...(allowance === undefined ? [] : [say.allowance({ percent: allowance })]),
  ];
  return `<p class="fine">${escape([...told, say.certified].join(" "))}</p>`;
}

const notes = ({ words }: CardOptions): string => notesBox(words.paper.book.notes);

const MAP = { widthMm: 92, heightMm: 74 };

function frontPanel({ club, measured, unit, words, theme, courseGround }: CardOptions): string {
  const map = drawCourse(measured, {
    idPrefix: "card-course",
    unit,
    size: "phone",
    theme,
    words: words.draw,
    ...(courseGround ? { ground: courseGround } : {}),
  });
  const share = Math.min(1, MAP.widthMm / mmOf(map.width), MAP.heightMm / mmOf(map.height));
  return (
    `<div class="card-front"><h1>${escape(measured.course.name)}</h1><p class="place">${escape(club.place ?? club.name)}</p><p class="label">${escape(words.card.title)}</p>` +
    `<div class="cover-map">${sized(map.svg, mmOf(map.width) * share, mmOf(map.height) * share)}</div></div>`
  );
}

function backPanel({ club, measured: { course }, tees, unit, words, theme }: CardOptions): string {
  const say = words.card;
  // Of the usual cautions a card has room for the two that may hurt anybody anywhere.
  const { lightning, balls } = words.cautions.general;
  const rated = tees.flatMap((tee) => tee.ratings.map((rating) => ({ tee, rating })));
  const bogey = rated.some(({ rating }) => rating.bogeyRating !== undefined);
  const rows = rated.map(
    ({ tee, rating }) =>
      `<tr><th scope="row">${swatch(tee, 2.6, theme === "ink")} ${escape(tee.name)}, ${escape(words.genders[rating.gender])}</th><td>${rating.par}</td><td>${decimal(rating.courseRating, 1, words.locale)}</td><td>${rating.slopeRating}</td>${bogey ? `<td>${rating.bogeyRating === undefined ? "–" : decimal(rating.bogeyRating, 1, words.locale)}</td>` : ""}</tr>`,
  );
  const head = [say.ratings, say.par, say.courseRating, say.slopeRating, ...(bogey ? [say.bogeyRating] : [])];
  return (
    `<div class="card-back">${CREST}<p class="club"><b>${escape(club.name)}</b></p>` +
    (rows.length > 0
      ? `<table class="card-ratings"><thead><tr>${head.map((text) => `<th scope="col">${escape(text)}</th>`).join("")}</tr></thead><tbody>${rows.join("")}</tbody></table><p class="fine">${escape(say.ratingsNote)}</p>`
      : "") +
    `<div class="card-care"><p><b>${escape(words.cautions.lead)}</b></p><p>${escape([lightning, balls].map(({ title, text }) => `${words.labelled({ label: title })} ${text}`).join(" "))}</p></div>` +
    `<p class="fine">${escape(say.intro({ unit: words.settings.inUnit[unit] }))} ${escape(say.measuredNote)} ${course.surveyed ? escape(words.figures.surveyed({ date: dayOf(course.surveyed) })) : ""} ${escape([club.invented, draftLine(course, words), creditText(course, words)].filter((line) => line !== undefined).join(" "))}</p></div>`
  );
}
