/**
 * One message in ICU MessageFormat (unicode-org.github.io/icu/userguide/format_parse/messages):
 * read once when a guide is built, and handed on in a short form that a browser speaks
 * without a parser.
 */
import { parse, TYPE, type MessageFormatElement } from "@formatjs/icu-messageformat-parser";
import compile from "icu-minify/compile";
import type { CompiledMessage } from "icu-minify/format";

/**
 * What an argument is.
 *
 * `text` is printed as it is. `number` chooses a plural or is written by the language's rules.
 * `date` is a day. `choice` picks one of some named cases; it is `open` where the message
 * says something for every other case too.
 */
export type Argument =
  | { readonly kind: "text" | "number" | "date" }
  | { readonly kind: "choice"; readonly cases: ReadonlySet<string>; readonly open: boolean };

export interface Message {
  /** As written. */
  readonly text: string;
  readonly compiled: CompiledMessage;
  readonly arguments: ReadonlyMap<string, Argument>;
}

/** What a message cannot be, and what to write instead. */
export class MessageFault extends Error {}

/** The parser's names for what it stumbles over, in words. */
const FAULTS: Readonly<Record<string, string>> = {
  EXPECT_ARGUMENT_CLOSING_BRACE: "a brace { is not closed. Close it with }",
  UNCLOSED_QUOTED_ARGUMENT_STYLE: "a quotation inside braces is not closed. Close it with '",
  EMPTY_ARGUMENT: "braces {} name nothing. Write a name between them",
  MALFORMED_ARGUMENT: "what stands between braces is no name. Write letters and figures only",
  EXPECT_ARGUMENT_TYPE: "after a comma in braces stands no kind. Write plural, selectordinal, select, number or date",
  INVALID_ARGUMENT_TYPE: "a kind of argument is not known. Write plural, selectordinal, select, number or date",
  MISSING_OTHER_CLAUSE: "the case other is missing. Every plural and select ends with other {...}",
  EXPECT_SELECT_ARGUMENT_OPTIONS: "cases are missing. Write for example {count, plural, one {...} other {...}}",
  DUPLICATE_PLURAL_ARGUMENT_SELECTOR: "a case is given twice. Keep one of them",
  DUPLICATE_SELECT_ARGUMENT_SELECTOR: "a case is given twice. Keep one of them",
};

/** Whole numbers a guide counts; a language's rules for millions are of no use in it. */
const COUNTED = 1000;

/**
 * @param locale whose plurals the message must answer.
 * @throws MessageFault
 */
export function readMessage(text: string, locale: string): Message {
  const found = new Map<string, Argument>();
  collect(parsed(text), found, locale);
  return { text, compiled: compile(text), arguments: found };
}

function parsed(text: string): MessageFormatElement[] {
  try {
    return parse(text, { shouldParseSkeletons: false });
  } catch (error) {
    const name = error instanceof Error ? error.message : "";
    throw new MessageFault(FAULTS[name] ?? `it is no ICU MessageFormat (${name.toLowerCase().replaceAll("_", " ")})`, {
      cause: error,
    });
  }
}

function collect(elements: readonly MessageFormatElement[], found: Map<string, Argument>, locale: string): void {
  for (const element of elements) {
    if (element.type === TYPE.literal) {
      if (!/[{}]/.test(element.value)) continue;
      throw new MessageFault(
        "a brace stands by itself, or behind an apostrophe '. Write the apostrophe as ’ and give every brace its other",
      );
    }
    if (element.type === TYPE.pound) continue;
    if (element.type === TYPE.tag || element.type === TYPE.time) {
      throw new MessageFault(
        `${element.type === TYPE.tag ? `the tag <${element.value}>` : "a time"} has no place in a guide's words. Leave it out`,
      );
    }
    if (element.type === TYPE.date && element.style !== "long") {
      throw new MessageFault(`a date is written {${element.value}, date, long}. Write it so`);
    }
    if (element.type === TYPE.number && element.style) {
      throw new MessageFault(`a number is written {${element.value}, number}. Write it so`);
    }
    note(found, element.value, argumentOf(element));
    if (element.type !== TYPE.select && element.type !== TYPE.plural) continue;
    if (element.type === TYPE.plural) holdPlural(element, locale);
    for (const { value } of Object.values(element.options)) collect(value, found, locale);
  }
}

function argumentOf(element: Exclude<MessageFormatElement, { type: TYPE.pound }>): Argument {
  if (element.type === TYPE.select) {
    const cases = new Set(Object.keys(element.options).filter((name) => name !== "other"));
    return { kind: "choice", cases, open: element.options["other"]!.value.length > 0 };
  }
  if (element.type === TYPE.plural || element.type === TYPE.number) return { kind: "number" };
  return { kind: element.type === TYPE.date ? "date" : "text" };
}

/** One argument may stand in several places of a message; it is then what the strictest of them asks. */
function note(found: Map<string, Argument>, name: string, next: Argument): void {
  const before = found.get(name);
  if (before === undefined || (before.kind === "text" && next.kind !== "date")) found.set(name, next);
  else if (before.kind === "choice" && next.kind === "choice") {
    found.set(name, {
      kind: "choice",
      cases: new Set([...before.cases, ...next.cases]),
      open: before.open && next.open,
    });
  } else if (before.kind !== next.kind && next.kind !== "text") {
    throw new MessageFault(
      `{${name}} is a ${before.kind} in one place and a ${next.kind} in another. Make it one of them`,
    );
  }
}

/** Every whole number must have a case of its own language's, other being one of them. */
function holdPlural(element: Extract<MessageFormatElement, { type: TYPE.plural }>, locale: string): void {
  const { value: name, options, offset, pluralType } = element;
  if (offset !== 0) throw new MessageFault(`{${name}} has an offset. Leave it out and count what is said`);
  const rules = new Intl.PluralRules(locale, { type: pluralType ?? "cardinal" });
  const known = rules.resolvedOptions().pluralCategories;
  const strange = Object.keys(options).find(
    (one) => !one.startsWith("=") && !(known as readonly string[]).includes(one),
  );
  if (strange !== undefined) {
    throw new MessageFault(
      `{${name}} has the case ${strange}, which ${locale} does not know. Write ${known.join(", ")}, or =1 for one number`,
    );
  }
  for (let number = 0; number <= COUNTED; number++) {
    const wanted = rules.select(number);
    if (options[`=${number}`] === undefined && options[wanted] === undefined) {
      throw new MessageFault(
        `{${name}} has no case ${wanted}, which ${locale} needs for ${number}. Write ${wanted} {...}`,
      );
    }
  }
}
