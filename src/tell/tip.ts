/** A tip with its figures filled in. */
import * as attr from "../contract/attributes.ts";
import { writeMetres } from "../contract/values.ts";
import type { Token } from "markdown-it";
import type { Diagnostic } from "../course/diagnostic.ts";
import type { Tip } from "../course/types.ts";
import type { LengthUnit } from "../geo/units.ts";
import type { MeasuredHole, TeeFigures } from "../measure/types.ts";
import { answer, type Answer } from "./answer.ts";
import { figureOf, figureSyntax, type FigureToken } from "./figure-rule.ts";
import { formatHeight, formatLength, spokenBoth } from "./format.ts";
import { createMarkdown } from "./markdown.ts";
import type { FigureWords } from "../words/words.ts";

export interface TipOptions {
  readonly units: LengthUnit;
  /** Prefix of the ids of the figures' meanings, so that several tips can share a page. */
  readonly idPrefix: string;
  /** Tee set whose figures are filled in; the course's default where left out. */
  readonly tee?: string;
  readonly words: FigureWords;
}

export interface RenderedTip {
  readonly html: string;
  /** The same as plain text, one paragraph a line: captions, descriptions. */
  readonly text: string;
  readonly words: number;
}

const parser = createMarkdown();
parser.use(figureSyntax);

const escape = parser.utils.escapeHtml;

/** The tee set a tip is written for when nobody has chosen: the course's default, or the longest the hole has. */
export function shownTee(hole: MeasuredHole, tee: string | undefined): TeeFigures {
  const wanted = tee ?? hole.course.defaultTee;
  const found = hole.tees.find((one) => one.tee.id === wanted) ?? hole.tees[0];
  if (!found) throw new Error(`Hole ${hole.hole.number} has no tee marker; it must be refused before it is told.`);
  return found;
}

/** What a figure prints for one tee set. */
export function figureText(figure: Answer, teeId: string, units: LengthUnit, words: FigureWords): string {
  if (figure.type === "name") return figure.text;
  const metres = figure.metres[teeId];
  if (metres === undefined) return "–";
  if (figure.type === "length") return formatLength(metres, units, words.units, figure.rounding).text;
  const height = formatHeight(metres, units, words.units);
  return height.value === "0"
    ? words.level
    : metres > 0
      ? words.up({ height: height.text })
      : words.down({ height: height.text });
}

function figureHtml(
  figure: Answer,
  shown: TeeFigures,
  id: string,
  hole: MeasuredHole,
  options: Required<TipOptions>,
): string {
  const { units, words } = options;
  const text = escape(figureText(figure, shown.tee.id, units, words));
  const metres = figure.type === "name" ? undefined : figure.metres[shown.tee.id];
  const data =
    figure.type === "name"
      ? ""
      : ` ${attr.figure}="${figure.type}" ${attr.metres}="${escape(writeMetres(figure.metres))}"` +
        (figure.rounding === "nearest" ? "" : ` ${attr.round}="${figure.rounding}"`);
  // What is read aloud holds both units; what is seen holds one.
  const spoken =
    figure.type === "length" && metres !== undefined
      ? `<span aria-hidden="true" ${attr.shown}>${text}</span><span class="visually-hidden" ${attr.spoken}>${spokenBoth(metres, units, words.units, figure.rounding)}</span>`
      : figure.type === "rise"
        ? `<span ${attr.shown}>${text}</span>`
        : text;
  const others =
    figure.type === "name" || figure.fixed
      ? ""
      : `<span class="figure-tees">${hole.tees
          .map(
            (one) =>
              `<span ${attr.tee}="${escape(one.tee.id)}">${escape(one.tee.name)} <b>${escape(figureText(figure, one.tee.id, units, words))}</b></span>`,
          )
          .join(" ")}</span>`;
  const fromTee = (name: string): string => `, ${escape(words.fromTee({ tee: name }))}`;
  // One phrase for each tee set, so that choosing another needs no words.
  const from =
    figure.type === "name"
      ? ""
      : figure.fixed !== undefined
        ? fromTee(figure.fixed)
        : hole.tees
            .map(
              ({ tee }) =>
                `<span ${attr.forTee}="${escape(tee.id)}"${tee === shown.tee ? "" : " hidden"}>${fromTee(tee.name)}</span>`,
            )
            .join("");
  return (
    `<button type="button" class="figure" popovertarget="${id}"${data}>${spoken}</button>` +
    `<span popover class="figure-meaning" id="${id}"><span class="figure-definition">${escape(figure.meaning(words))}` +
    `${from}.</span>${others}</span>`
  );
}

/** Every token, those inside paragraphs too. */
function flatten(tokens: readonly Token[]): Token[] {
  return tokens.flatMap((token) => (token.children ? flatten(token.children) : [token]));
}

/** The text of a tip, figures told by `figure`. */
function plainText(tokens: readonly Token[], figure: (token: FigureToken) => string): string {
  const paragraphs: string[] = [];
  for (const token of tokens) {
    if (token.type !== "inline") continue;
    const text = flatten(token.children ?? [])
      .map((child) => {
        const here = figureOf(child);
        if (here) return figure(here);
        if (child.type === "softbreak" || child.type === "hardbreak") return " ";
        return child.content;
      })
      .join("");
    paragraphs.push(text);
  }
  return paragraphs.join("\n");
}

/** Words a reader reads: a figure with its unit counts as one. */
const countWords = (text: string): number => text.split(/[\s–—]+/).filter((word) => /[\p{L}\p{N}]/u.test(word)).length;

/**
 * A hole's tip as HTML. Each figure is a button that opens its meaning in a popover, which
 * needs no script, and carries every tee set's metres for the settings script.
 *
 * @throws Error when a figure has no answer; {@link checkTip} says so with its place first
 */
export function renderTip(hole: MeasuredHole, given: TipOptions, tip: Tip = hole.hole.tip): RenderedTip {
  const options: Required<TipOptions> = { tee: hole.course.defaultTee, ...given };
  const shown = shownTee(hole, options.tee);
  const tokens = parser.parse(tip.markdown, {});
  const answers = new Map<FigureToken, Answer>();
  for (const token of flatten(tokens)) {
    const figure = figureOf(token);
    if (!figure) continue;
    // Whether a figure stands at all is asked of the tee set the tip is written for; another set may lack it.
    const answered = answer(figure.call, hole, { ...options, tee: hole.course.defaultTee });
    if ("problem" in answered) throw new Error(`${figure.raw}: ${answered.problem}`);
    answers.set(figure, answered);
  }
  let count = 0;
  const rules = { ...parser.renderer.rules };
  const renderer = Object.assign(Object.create(parser.renderer) as typeof parser.renderer, {
    rules: {
      ...rules,
      figure: (all: Token[], index: number) =>
        figureHtml(answers.get(figureOf(all[index]!)!)!, shown, `${options.idPrefix}-${++count}`, hole, options),
    },
  });
  const html = renderer.render(tokens, parser.options, {});
  const text = plainText(tokens, (figure) =>
    figureText(answers.get(figure)!, shown.tee.id, options.units, options.words),
  );
  return { html, text, words: countWords(text) };
}

/** Everything wrong with a tip's figures, with line and column. */
export function checkTip(hole: MeasuredHole, units: LengthUnit, tip: Tip = hole.hole.tip): Diagnostic[] {
  const diagnostics: Diagnostic[] = [];
  const lines = tip.markdown.split("\n");
  for (const block of parser.parse(tip.markdown, {})) {
    if (block.type !== "inline" || !block.map) continue;
    // What stands in the block stands there in the order of its tokens: walk along.
    let [line, column] = [block.map[0], 0];
    const find = (text: string): number => {
      let found = lines[line]!.indexOf(text, column);
      while (found < 0 && line + 1 < block.map![1]) found = lines[++line]!.indexOf(text);
      column = found + text.length;
      return Math.max(0, found);
    };
    for (const token of flatten(block.children ?? [])) {
      // A figure shown as code is no figure, but it must be walked past.
      if (token.type === "code_inline") find(token.content);
      const figure = figureOf(token);
      if (!figure) continue;
      const { call, raw } = figure;
      const found = find(raw);
      const answered = answer(call, hole, { units, tee: hole.course.defaultTee });
      if (!("problem" in answered)) continue;
      diagnostics.push({
        severity: "error",
        rule: "tip-figure",
        file: tip.place.file,
        line: tip.place.line + line,
        column: (line === 0 ? tip.place.column : 1) + found,
        message: `${raw}: ${answered.problem}`,
      });
    }
  }
  return diagnostics;
}
