/** The pocket book's pages that are not holes: cover, how to read it, cautions, local rules, the card, the back. */
import type { Club, TeeSet } from "../course/types.ts";
import { drawCourse } from "../draw/course-map.ts";
import { painter, type PlateTheme } from "../draw/palette.ts";
import type { PlateGround } from "../draw/relief.ts";
import { element } from "../draw/svg.ts";
import type { LengthUnit } from "../geo/units.ts";
import type { MeasuredCourse } from "../measure/types.ts";
import { perGender } from "../components/hole-view.ts";
import { nines } from "../components/nines.ts";
import { lengthsFrom, parOf } from "../components/totals.ts";
import { renderInlineMarkdown } from "../tell/markdown.ts";
import { decimal } from "../tell/numbers.ts";
import { computedFrom, creditText, draftLine } from "../site/text/draft-line.ts";
import { otherLanguage } from "../site/language/language-view.ts";
import type { Words } from "../site/language/words.ts";
import { dayOf } from "../words/day.ts";
import { COLUMN_MM, TEXT_HEIGHT_MM } from "./book-hole.ts";
import { paginate, type Block, type FlowStyle } from "./flow.ts";
import { CREST, escape, figure, langAttribute, mmOf, notesBox, sized, swatch, symbolOf } from "./html.ts";

export interface BookMatter {
  readonly club: Club;
  readonly measured: MeasuredCourse;
  readonly tees: readonly TeeSet[];
  readonly unit: LengthUnit;
  readonly words: Words;
  readonly theme: PlateTheme;
  readonly courseGround: PlateGround | undefined;
}

const STYLE: FlowStyle = {
  widthMm: COLUMN_MM,
  heightMm: TEXT_HEIGHT_MM - 11,
  fontMm: 2.75,
  lineMm: 3.5,
  gapMm: 1.5,
  headingMm: 7,
};

/** A course's map fits the cover and its own page. */
const MAP_WIDTH_MM = 94;
const MAP_HEIGHT_MM = 96;

export function coverPage({ club, measured, tees, unit, words, theme, courseGround }: BookMatter): string {
  const { course, holes } = measured;
  const say = words.paper.book;
  const map = drawCourse(measured, {
    idPrefix: "book-course",
    unit,
    size: "phone",
    theme,
    words: words.draw,
    ...(courseGround ? { ground: courseGround } : {}),
  });
  const share = Math.min(1, MAP_WIDTH_MM / mmOf(map.width), MAP_HEIGHT_MM / mmOf(map.height));
  const chosen = tees.map((tee) => `<li>${swatch(tee, 3, theme === "ink")} ${escape(tee.name)}</li>`).join("");
  return (
    `<div class="cover-frame"><div class="cover-head">${CREST}<h1>${escape(course.name)}</h1>${club.place ? `<p class="place">${escape(club.place)}</p>` : ""}` +
    `<p class="label">${escape(say.title)}</p></div>` +
    `<div class="cover-map">${sized(map.svg, mmOf(map.width) * share, mmOf(map.height) * share)}</div>` +
    `<div class="cover-foot"><p>${escape(words.cover.holesCount({ count: holes.length }))} · ${escape(words.parIs({ par: perGender(parOf(holes)) }))} · ${escape(words.settings[unit])}</p><ul>${chosen}</ul></div></div>`
  );
}

type Mark = keyof Words["paper"]["book"]["howToRead"];

/** Small samples of what the plate draws, in its own paint. */
function sample(mark: Mark, theme: PlateTheme): string {
  const paint = painter(theme);
  const drawn: Readonly<Record<Mark, string>> = {
    plate:
      element("rect", { ...paint("frame"), x: 9, y: 1.5, width: 11, height: 21, "stroke-width": 1.2 }) +
      element("path", { ...paint("line"), "stroke-width": 1.1, "stroke-dasharray": "3 2", d: "M14.500 20.500V5" }),
    arc: element("path", { ...paint("arc"), "stroke-width": 1, d: "M3 15q11.500-9 23 0" }),
    left:
      element("rect", { ...paint("pill"), x: 3, y: 6, width: 23, height: 12, rx: 6, "stroke-width": 0.8 }) +
      `<text x="14.5" y="15" font-size="8.5" text-anchor="middle" ${fill(paint("pill-figure"))}>150</text>`,
    hazard:
      element("path", { ...paint("leader"), "stroke-width": 0.9, d: "M5 12H24" }) +
      element("circle", { ...paint("spot"), cx: 5, cy: 12, r: 2.4, "stroke-width": 0.8 }) +
      element("circle", { ...paint("spot-full"), cx: 24, cy: 12, r: 2.4, "stroke-width": 0.8 }),
    bend:
      element("circle", { ...paint("spot"), cx: 14.5, cy: 12, r: 5, "stroke-width": 1 }) +
      element("circle", { ...paint("frame-ink"), cx: 14.5, cy: 12, r: 1.3 }),
    figures: element("path", { ...paint("line"), "stroke-width": 0.9, d: "M4 5H25M4 12H25M4 19H25M13 5V19" }),
    landing:
      element("path", { ...paint("line"), "stroke-width": 2.6, d: "M8 12H21" }) +
      element("circle", { ...paint("frame-ink"), cx: 3.5, cy: 12, r: 1.5 }) +
      element("circle", { ...paint("frame-ink"), cx: 26, cy: 12, r: 1.5 }),
    green:
      element("ellipse", { ...paint("green"), cx: 14.5, cy: 12, rx: 10.5, ry: 8, "stroke-width": 0.9 }) +
      element("path", { ...paint("leader"), "stroke-width": 0.8, "stroke-dasharray": "1.2 2", d: "M14.500 20V4" }),
  };
  return `<svg class="key" viewBox="0 0 29 24" width="7.67mm" height="6.35mm" aria-hidden="true">${drawn[mark]}</svg>`;
}

const fill = (paint: Readonly<Record<string, string>>): string => `class="${paint["class"]}" fill="${paint["fill"]}"`;

export function howToPage({ words, tees, unit, theme }: BookMatter): string {
  const say = words.paper.book;
  const rows = Object.entries(say.howToRead).map(
    ([mark, { term, meaning }]) =>
      `<div>${sample(mark as Mark, theme)}<dt>${escape(term)}</dt><dd>${escape(meaning)}</dd></div>`,
  );
  const from = say.figuresFrom({ tees: tees.map(({ name }) => name).join(", "), unit: words.settings.inUnit[unit] });
  return (
    `<h2>${escape(say.howTo)}</h2><p class="lead">${escape(from)}.</p><dl class="how-to">${rows.join("")}</dl>` +
    `<section class="limits"><h3>${escape(say.limits)}</h3>${Object.values(say.limitsText)
      .map((text) => `<p>${escape(text)}</p>`)
      .join("")}</section>`
  );
}

const plain = (html: string): string => html.replace(/<[^>]+>/g, "");

/** Text over as many pages as it takes, each with its heading. */
function flowing(
  title: string,
  blocks: readonly Block[],
  words: Words,
  wrap: (html: string, first: number) => string,
): string[] {
  let done = 0;
  return paginate(blocks, STYLE).map((page, i) => {
    const html = wrap(page.map((block) => block.html).join(""), done + 1);
    done += page.length;
    // Only the first heading is one for the list of contents.
    return `${i === 0 ? `<h2>${escape(title)}</h2>` : `<p class="h2">${escape(words.paper.book.continued({ title }))}</p>`}${html}`;
  });
}

export function cautionPages({ club, words }: BookMatter): string[] {
  const { cautions } = words;
  const blocks: Block[] = [
    { html: `<p><b>${escape(cautions.lead)}</b></p>`, text: cautions.lead },
    ...Object.values(cautions.general).map(({ title, text }): Block => ({
      html: `<p><b>${escape(title)}.</b> ${escape(text)}</p>`,
      text: `${title}. ${text}`,
    })),
    ...(club.cautions.length > 0
      ? [{ html: `<p class="h3"><b>${escape(cautions.club)}</b></p>`, text: cautions.club, heading: true }]
      : []),
    ...club.cautions.map((text): Block => ({
      html: `<p${langAttribute(otherLanguage(club, club, "cautions"))}>${escape(text)}</p>`,
      text,
    })),
  ];
  return flowing(cautions.title, blocks, words, (html) => `<div class="book-cautions">${html}</div>`);
}

export function localRulePages({ club, words }: BookMatter): string[] {
  if (club.localRules.length === 0) return [];
  const blocks = club.localRules.map((rule): Block => {
    const html = renderInlineMarkdown(rule);
    return {
      html: `<li${langAttribute(otherLanguage(club, club, "localRules"))}>${html}</li>`,
      text: plain(html),
      indentMm: 6,
    };
  });
  return flowing(
    words.cover.localRules,
    blocks,
    words,
    (html, first) => `<ol class="book-rules" start="${first}">${html}</ol>`,
  );
}

/** Every hole with the chosen tees' lengths, and room for a score. */
export function cardPage({ measured, tees, unit, words, theme }: BookMatter): string {
  const { holes } = measured;
  const say = words.card;
  const parts = nines(holes);
  const row = (
    name: string,
    label: string,
    par: string,
    index: string,
    lengths: readonly string[],
    strong = false,
  ): string =>
    `<tr${strong ? ' class="sum"' : ""}><th scope="row">${name}</th><td class="name">${escape(label)}</td><td>${par}</td><td>${index}</td>${lengths.map((length) => `<td>${length}</td>`).join("")}<td class="score"></td></tr>`;
  const sum = (part: typeof holes, name: string): string =>
    row(
      escape(name),
      "",
      perGender(parOf(part)),
      "",
      tees.map(({ id }) => figure(lengthsFrom(part, id), unit, words)),
      true,
    );
  const body = parts.map(
    (part, i) =>
      `<tbody>${part
        .map(({ hole, tees: figures }) =>
          row(
            `${hole.number}`,
            hole.name,
            perGender(hole.par),
            perGender(hole.strokeIndex),
            tees.map(({ id }) => figure(figures.find(({ tee }) => tee.id === id)?.lengthMetres, unit, words)),
          ),
        )
        .join("")}${parts.length > 1 ? sum(part, i === 0 ? say.out : say.in) : ""}</tbody>`,
  );
  const ratings = tees.flatMap((tee) =>
    tee.ratings.map(
      (rating) =>
        `<tr><th scope="row">${swatch(tee, 2.3, theme === "ink")} ${escape(tee.name)}, ${escape(words.genders[rating.gender])}</th><td>${rating.par}</td><td>${decimal(rating.courseRating, 1, words.locale)}</td><td>${rating.slopeRating}</td></tr>`,
    ),
  );
  return (
    `<h2>${escape(say.title)}</h2><table class="book-card"><thead><tr><th scope="col">${escape(say.hole)}</th><th scope="col" class="name">${escape(say.name)}</th><th scope="col">${escape(say.par)}</th><th scope="col">${escape(words.strokeIndexShort)}</th>${tees.map((tee) => `<th scope="col">${swatch(tee, 2.3, theme === "ink")} ${escape(tee.name)}</th>`).join("")}<th scope="col" class="score">${escape(say.score)}</th></tr></thead>${body.join("")}<tfoot>${sum(holes, say.total)}</tfoot></table>` +
    (ratings.length > 0
      ? `<table class="book-ratings"><thead><tr><th scope="col">${escape(say.ratings)}</th><th scope="col">${escape(say.par)}</th><th scope="col">${escape(say.courseRating)}</th><th scope="col">${escape(say.slopeRating)}</th></tr></thead><tbody>${ratings.join("")}</tbody></table>`
      : "") +
    `<p class="fine">${escape(say.measuredNote)} ${escape(words.settings[unit])} (${escape(symbolOf(unit, words))}).</p>`
  );
}

export const notesPage = ({ words }: BookMatter): string => notesBox(words.paper.book.notes, " whole");

/** That it is a draft, and whose the shapes are. */
const stateOf = (course: BookMatter["measured"]["course"], words: Words): string[] =>
  [draftLine(course, words), creditText(course, words)].filter((line) => line !== undefined);

export function backPage({ club, measured: { course }, words }: BookMatter): string {
  const survey = course.surveyed
    ? words.figures.surveyed({ date: dayOf(course.surveyed) })
    : words.figures.notSurveyed;
  const { address, telephone, email, website } = club.contact;
  const contact = [address, telephone, email, website].filter((line) => line !== undefined);
  return (
    `<div class="back">${CREST}<p class="club"><b>${escape(club.name)}</b>${club.place ? `<br>${escape(club.place)}` : ""}</p>` +
    (contact.length > 0 ? `<p>${contact.map(escape).join("<br>")}</p>` : "") +
    `<div class="back-foot"><p>${escape(survey)} ${escape(computedFrom(course, words))}</p>` +
    stateOf(course, words)
      .map((line) => `<p><b>${escape(line)}</b></p>`)
      .join("") +
    (club.invented ? `<p><b>${escape(club.invented)}</b></p>` : "") +
    `<p>${escape(words.paper.careRule)}</p></div></div>`
  );
}
