/**
 * Every catalogue says what the first one says: the same names, and in each message the same
 * arguments. The first sets the shape, from which the types of the code are made too.
 */
import type { Diagnostic } from "../course/diagnostic.ts";
import { isGroup, type Catalogue, type Fault, type Group } from "./catalogue.ts";
import type { Argument, Message } from "./message.ts";

/** What another catalogue leaves out, adds or turns into something else. */
export function disagreements(first: Catalogue, other: Catalogue): Diagnostic[] {
  const found: Diagnostic[] = [];
  const { file } = other;
  const say: Fault = (line, column, message) =>
    found.push({ severity: "error", rule: "words", file, line, column, message });
  compareGroups(first.words, other.words, { line: 1, column: 1 }, "", first, say);
  return found;
}

function compareGroups(
  first: Group,
  other: Group,
  at: { readonly line: number; readonly column: number },
  path: string,
  { file, language }: Catalogue,
  say: Fault,
): void {
  const pathOf = (name: string): string => (path === "" ? name : `${path}.${name}`);
  for (const [name, { line, column }] of other) {
    if (!first.has(name))
      say(line, column, `${pathOf(name)} is not known: ${file} has no such name. Take it out, or spell it as there.`);
  }
  for (const [name, wanted] of first) {
    const said = other.get(name);
    const where = `${file}:${wanted.line}`;
    if (said === undefined) {
      const text = isGroup(wanted.value) ? "a group" : JSON.stringify(wanted.value.text);
      say(at.line, at.column, `${pathOf(name)} is missing. Add it: ${language} has ${text} (${where}).`);
    } else if (isGroup(wanted.value) !== isGroup(said.value)) {
      say(
        said.line,
        said.column,
        `${pathOf(name)} must be a ${isGroup(wanted.value) ? "group" : "message"}, as at ${where}.`,
      );
    } else if (isGroup(wanted.value) && isGroup(said.value)) {
      compareGroups(wanted.value, said.value, said, pathOf(name), { file, language } as Catalogue, say);
    } else {
      for (const problem of unlike(wanted.value as Message, said.value as Message, where))
        say(said.line, said.column, `${pathOf(name)}: ${problem}`);
    }
  }
}

function unlike(first: Message, other: Message, where: string): string[] {
  const problems: string[] = [];
  for (const name of other.arguments.keys()) {
    if (!first.arguments.has(name))
      problems.push(`{${name}} is not given. The arguments are ${names(first)} (${where}).`);
  }
  for (const [name, wanted] of first.arguments) {
    const said = other.arguments.get(name);
    if (said === undefined) problems.push(`{${name}} is left out. Say it, as at ${where}.`);
    else {
      const problem = unlikeArgument(name, wanted, said, where);
      if (problem !== undefined) problems.push(problem);
    }
  }
  return problems;
}

const names = ({ arguments: all }: Message): string =>
  all.size === 0 ? "none" : [...all.keys()].map((name) => `{${name}}`).join(", ");

function unlikeArgument(name: string, wanted: Argument, said: Argument, where: string): string | undefined {
  if (wanted.kind !== "choice" || said.kind !== "choice") {
    // A number or a case may be printed as it is.
    return said.kind === wanted.kind || (said.kind === "text" && wanted.kind === "number")
      ? undefined
      : `{${name}} is a ${said.kind}, where ${where} has a ${wanted.kind}. Change one of them.`;
  }
  if (wanted.open) return undefined;
  const strange = [...said.cases].find((one) => !wanted.cases.has(one));
  if (strange !== undefined)
    return `{${name}} has the case ${strange}, which never comes. The cases are ${[...wanted.cases].join(", ")} (${where}).`;
  const left = [...wanted.cases].find((one) => !said.cases.has(one));
  return left === undefined || said.open
    ? undefined
    : `{${name}} says nothing for the case ${left}. Add it, as at ${where}.`;
}
