/** The YAML parser's complaints in words for people who did not write a parser. */
import type { ErrorCode } from "yaml";

const WORDS: Partial<Record<ErrorCode, string>> = {
  ALIAS_PROPS: "An alias (*name) cannot have a tag or an anchor of its own. Remove what stands before it.",
  BAD_ALIAS: "A word that starts with * or & is an anchor or alias to YAML. Put the text in quotes.",
  BAD_DIRECTIVE: "A line that starts with % is a directive to YAML. Put the text in quotes, or remove the line.",
  BAD_DQ_ESCAPE: "Unknown escape in a text in double quotes. Write \\\\ for a backslash, or use single quotes.",
  BAD_INDENT:
    "The indentation does not fit the lines above. Indent the fields of one group by the same number of spaces.",
  BAD_SCALAR_START: "A text cannot start with this character. Put the text in quotes.",
  BLOCK_AS_IMPLICIT_KEY:
    "A field cannot start here: the line above already has a value. Put a text with a colon in quotes, and each field on its own line.",
  BLOCK_IN_FLOW: "A list with dashes or an indented group cannot stand inside [ ] or { }. Write it with commas.",
  KEY_OVER_1024_CHARS:
    "A field's name is over 1,024 characters long. A quote or a bracket is probably not closed above.",
  MULTILINE_IMPLICIT_KEY:
    "A field's name runs over more than one line. A quote is not closed, or a colon and a space are missing after the name.",
  MULTIPLE_DOCS: "A second document starts here. One file holds one document: remove the line ---.",
  NON_STRING_KEY: "A field's name must be a text. Put it in quotes.",
  TAG_RESOLVE_FAILED: "A word that starts with ! is a tag to YAML. Put the text in quotes.",
  TAB_AS_INDENT: "A tab is used to indent. Use spaces.",
};

/** Our sentence for a parser's error; the parser's own, first line only, where there is none. */
export function yamlMessage(code: ErrorCode, message: string): string {
  if (code === "BAD_INDENT" && message.startsWith("Flow"))
    return "A bracket [ or { is opened above and not closed, or what stands in it is not indented. Close it, or indent its lines.";
  const words = WORDS[code];
  if (words !== undefined) return words;
  const first = message.split("\n")[0]!.replace(/\.?$/, ".");
  if (code === "MISSING_CHAR")
    return `${first.replace(/^Missing closing (\S)quote\.$/, "A text that starts with $1 has no closing $1.")} Close the quote or bracket, or put a space after the colon or comma.`;
  if (code === "UNEXPECTED_TOKEN") return `${first} Check the quotes, brackets and commas before it.`;
  return first;
}
