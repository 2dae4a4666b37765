/** Every message of a language's catalogue, said with samples of what it asks for. */
import { GUIDE_LANGUAGES } from "../../src/course/guide-languages.ts";
import { isGroup, type Group } from "../../src/words/catalogue.ts";
import { loadCatalogues } from "../../src/words/load.ts";
import type { Argument, Message } from "../../src/words/message.ts";
import { speak } from "../../src/words/speak.ts";
import { PROJECT } from "./run.ts";

export type Said = Readonly<Record<string, string | number | Date>>;

export interface Leaf {
  /** Names from the catalogue down, joined by dots. */
  readonly path: string;
  readonly message: Message;
  /** Each way it can be asked, and its answer. */
  readonly answers: readonly { readonly said: Said; readonly text: string }[];
  /** All answers, one a line. */
  readonly text: string;
}

const TEXTS = ["Alpha", "Beta", "Gamma", "Delta"];
const NUMBERS = [0, 1, 2, 3, 4, 18, 21, 100, 1000];
const DAYS = [new Date("2026-05-14T00:00:00Z"), new Date("2027-03-01T00:00:00Z")];
/** Stands for whatever else may come. */
const OTHER_CASE = "something_else";

const samplesOf = (argument: Argument, i: number): readonly (string | number | Date)[] => {
  if (argument.kind === "choice") return [...argument.cases, ...(argument.open ? [OTHER_CASE] : [])];
  return argument.kind === "number" ? NUMBERS : argument.kind === "date" ? DAYS : [TEXTS[i % TEXTS.length]!];
};

/** Every way a message can be asked. */
export const asked = ({ arguments: all }: Message): Said[] =>
  [...all].reduce<Said[]>(
    (ways, [name, argument], i) =>
      ways.flatMap((way) => samplesOf(argument, i).map((value) => ({ ...way, [name]: value }))),
    [{}],
  );

export const catalogues = loadCatalogues(PROJECT);

/** @param language one of the guide's */
export function leavesOf(language: string): Leaf[] {
  const { words, locale } = catalogues.find((one) => one.language === language)!;
  const leaves: Leaf[] = [];
  const walk = (group: Group, path: string): void => {
    for (const [name, { value }] of group) {
      const at = path === "" ? name : `${path}.${name}`;
      if (at === "locale" || at === "hyphens") continue;
      if (isGroup(value)) walk(value, at);
      else {
        const { one } = speak<{ one: string | ((said: Said) => string) }>({ one: value.compiled }, locale);
        const answers = asked(value).map((said) => ({ said, text: typeof one === "string" ? one : one(said) }));
        leaves.push({ path: at, message: value, answers, text: answers.map(({ text }) => text).join("\n") });
      }
    }
  };
  walk(words, "");
  return leaves;
}

export const LANGUAGES: readonly string[] = GUIDE_LANGUAGES;
