/** The type of the words, written from the first language's catalogue: a name or an argument that is not there does not compile. */
import { isGroup, type Catalogue, type Group } from "./catalogue.ts";
import type { Argument, Message } from "./message.ts";

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
  const lines = [...group].map(([name, { value }]) => `${inner}readonly ${key(name)}: ${isGroup(value) ? groupType(value, inner) : messageType(value)};\n`);
  return `{\n${lines.join("")}${indent}}`;
}

const key = (name: string): string => (/^[A-Za-z_]\w*$/.test(name) ? name : JSON.stringify(name));

function messageType({ arguments: all }: Message): string {
  if (all.size === 0) return "string";
  return `(said: { ${[...all].map(([name, argument]) => `readonly ${key(name)}: ${argumentType(argument)}`).join("; ")} }) => string`;
}

function argumentType(argument: Argument): string {
  if (argument.kind === "number") return "number";
  if (argument.kind === "date") return "Date";
  if (argument.kind === "choice" && !argument.open) return [...argument.cases].map((one) => JSON.stringify(one)).join(" | ");
  return argument.kind === "choice" ? "string" : "Text";
}
