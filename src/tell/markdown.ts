/** Markdown as Marram reads it: CommonMark, no raw HTML, links to safe schemes only. */
import createParser, { type MarkdownIt } from "markdown-it";

/** Where a link may lead: another page, a mail program or a telephone. */
const SAFE_LINK = /^(?:https?:|mailto:|tel:|#|\/(?!\/)|\.{1,2}\/|[\w-]+(?:[/?#]|$))/i;

/** Whether a link's target may stand in a page. Relative targets may; `javascript:`, `data:` and the like may not. */
export const isSafeLink = (url: string): boolean => SAFE_LINK.test(url.trim());

/** A parser with Marram's settings. Typographic quotes, no raw HTML (it prints as text). */
export function createMarkdown(): MarkdownIt {
  const markdown = createParser({ html: false, linkify: false, typographer: true });
  markdown.validateLink = isSafeLink;
  // Pictures belong in `photos`, where they get sizes and alternative texts.
  markdown.disable("image");
  return markdown;
}

const plain = createMarkdown();

/** One paragraph's worth, without the paragraph. */
export const renderInlineMarkdown = (source: string): string => plain.renderInline(source);
