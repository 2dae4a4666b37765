/**
 * Makes a language's words of a compiled catalogue, or of a part of one that a page carries:
 * a message without arguments is its text, one with arguments a function of them. Small
 * enough for every page; the same in the build and in a browser.
 */
import format, { type CompiledMessage, type FormatOptions, type FormatValues } from "icu-minify/format";
import type { CompiledGroup } from "./compiled.ts";

/** Intl's formatters cost more to make than to use. */
function kept<Options extends object, Made>(make: (locale: string, options: Options | undefined) => Made) {
  const made = new Map<string, Made>();
  return (locale: unknown, options?: Options): Made => {
    const key = `${String(locale)}${JSON.stringify(options) ?? ""}`;
    const found = made.get(key) ?? make(String(locale), options);
    made.set(key, found);
    return found;
  };
}

const OPTIONS: FormatOptions = {
  // Days are days of a calendar, whatever clock the machine that writes them has.
  timeZone: "UTC",
  formats: { dateTime: { long: { day: "numeric", month: "long", year: "numeric" } } },
  formatters: {
    getNumberFormat: kept((locale, options) => new Intl.NumberFormat(locale, options)),
    getPluralRules: kept((locale, options) => new Intl.PluralRules(locale, options)),
    getDateTimeFormat: kept((locale, options) => new Intl.DateTimeFormat(locale, options)),
  },
};

/** A message that asks for something; written as JSON it is its compiled form again. */
function spoken(message: CompiledMessage, locale: string): (said: FormatValues<string>) => string {
  // Some languages part thousands by a narrow space, which the guide's fonts do not have.
  const say = (said: FormatValues<string>): string =>
    String(format(message, locale, said, OPTIONS)).replaceAll("\u202f", "\u00a0");
  return Object.assign(say, { toJSON: () => message });
}

/**
 * @typeParam Words what the catalogue was checked to be: its type is made from the same file.
 * @param locale by whose rules numbers, dates and plurals are written.
 */
export function speak<Words>(group: CompiledGroup, locale: string): Words {
  const words = Object.entries(group).map(([name, value]) => [
    name,
    typeof value === "string" ? value : Array.isArray(value) ? spoken(value, locale) : speak<unknown>(value, locale),
  ]);
  return Object.fromEntries(words) as Words;
}
