/** A club's own Markdown, without figures: descriptions, under a page's own headings. */
import { createMarkdown } from "../tell/markdown.ts";

const parser = createMarkdown();
parser.core.ruler.push("lower-headings", ({ tokens }) => {
  for (const token of tokens) {
    if (token.type.startsWith("heading")) token.tag = `h${Math.min(6, Number(token.tag.slice(1)) + 2)}`;
  }
});

export const markdownHtml = (markdown: string): string => parser.render(markdown, {});

/** The first paragraph as plain text, for a page's description. */
export function firstParagraph(markdown: string): string {
  const inline = parser.parse(markdown, {}).find(({ type }) => type === "inline");
  return (inline?.children ?? [])
    .map(({ type, content }) => (type.endsWith("break") ? " " : content))
    .join("")
    .trim();
}

/** Cut at a word for a page's description, where search pages cut it anyway. */
export function shortened(text: string, limit = 160): string {
  const flat = text.replace(/\s+/g, " ").trim();
  if (flat.length <= limit) return flat;
  const cut = flat.slice(0, limit - 1);
  return `${cut.slice(0, Math.max(cut.lastIndexOf(" "), limit / 2)).replace(/[,;:.\s]+$/, "")}…`;
}
