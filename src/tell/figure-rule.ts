/** `:name[feature]{option=value}` in a tip: the syntax alone, not what it means. */
import type { MarkdownIt, Token } from "markdown-it";
import type { FigureCall } from "./figures.ts";

/** A figure as it stands in the Markdown. */
export interface FigureToken {
  readonly call: FigureCall;
  /** As written, to find it again in the source. */
  readonly raw: string;
}

const SYNTAX = /:([a-z]+)(?:\[([^\]\n]*)\])?(?:\{([^}\n]*)\})?/y;
const WORD = /[\p{L}\p{N}:]/u;

function optionsOf(written: string | undefined): Record<string, string> {
  const options: Record<string, string> = {};
  for (const part of (written ?? "").split(/[\s,]+/).filter((text) => text !== "")) {
    const equals = part.indexOf("=");
    const name = equals < 0 ? part : part.slice(0, equals);
    options[name] = equals < 0 ? "" : part.slice(equals + 1).replace(/^(["'])(.*)\1$/, "$2");
  }
  return options;
}

/** Teaches a parser the figure syntax; read the tokens it makes with {@link figureOf}. */
export function figureSyntax(markdown: MarkdownIt): void {
  markdown.inline.ruler.before("emphasis", "figure", (state, silent) => {
    if (state.src.charCodeAt(state.pos) !== 0x3a) return false;
    // "tee:left" and "10:30" are prose.
    if (state.pos > 0 && WORD.test(state.src[state.pos - 1]!)) return false;
    SYNTAX.lastIndex = state.pos;
    const match = SYNTAX.exec(state.src);
    if (!match) return false;
    const [raw, name, target, options] = match;
    if (!silent) {
      const token = state.push("figure", "", 0);
      const figure: FigureToken = {
        call: { name: name!, target: target?.trim() || undefined, options: optionsOf(options) },
        raw,
      };
      token.meta = { figure };
    }
    state.pos += raw.length;
    return true;
  });
}

/** The figure a token stands for, or undefined for any other token. */
export const figureOf = (token: Token): FigureToken | undefined =>
  token.type === "figure" ? (token.meta?.["figure"] as FigureToken) : undefined;
