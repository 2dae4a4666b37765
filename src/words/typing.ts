/**
 * The type of the words, written from the first language's catalogue: a name or an argument that is not
 * there does not compile.
 */
import { isGroup, type Catalogue, type Group } from "./catalogue.ts";
import type { Argument, Message } from "./message.ts";

/** Lines are narrower than this, with their semicolon. */
const COLUMNS = 119;

export const typesOf = ({ words }: Catalogue): string => `/**
 * The words of a guide, by group and name. Written by \`npm run words\` from the first
 * language's catalogue; change that, not this.
 */

/** Printed as it is. */
type Text = string | number;

export interface Catalogue ${groupType(words, "")}
`;

function groupType(group: Group, indent: string): string {
  const inner = `${indent}  `;
  const lines = [...group].map(([name, { value }]) => {
    const named = `${inner}readonly ${key(name)}: `;
    return `${named}${isGroup(value) ? groupType(value, inner) : messageType(value, named)};\n`;
  });
  return `{\n${lines.join("")}${indent}}`;
}

const key = (name: string): string => (/^[A-Za-z_]\w*$/.test(name) ? name : JSON.stringify(name));

/** On one line where it has room after what stands before it, as the formatter would have it. */
function messageType({ arguments: all }: Message, before: string): string {
  if (all.size === 0) return "string";
  const each = [...all].map(([name, argument]) => `readonly ${key(name)}: ${argumentType(argument)};`);
  const short = `(said: { ${each.join(" ").slice(0, -1)} }) => string`;
  if (before.length + short.length < COLUMNS) return short;
  const indent = /^ */.exec(before)![0];
  return `(said: {\n${each.map((one) => `${indent}  ${one}\n`).join("")}${indent}}) => string`;
}

function argumentType(argument: Argument): string {
  if (argument.kind === "number") return "number";
  if (argument.kind === "date") return "Date";
  if (argument.kind === "choice" && !argument.open)
    return [...argument.cases].map((one) => JSON.stringify(one)).join(" | ");
  return argument.kind === "choice" ? "string" : "Text";
}
