/** Every word of a dictionary with its path, in the order of paths; functions answered with samples. */
import type { Words } from "../../src/site/words.ts";

export interface Leaf {
  /** Keys from the dictionary down, joined by dots. */
  readonly path: string;
  readonly text: string;
  /** What the text must hold: the samples a function was called with. */
  readonly holds: readonly string[];
}

/** Functions that ask for something else than texts: what they are called with, and which of it their answer must hold. */
const SPECIAL: Readonly<Record<string, { readonly args: readonly unknown[]; readonly holds: readonly string[] }>> = {
  "inSentence": { args: ["Wort"], holds: [] },
  "list": { args: [["Alpha", "Beta", "Gamma"]], holds: ["Alpha", "Beta", "Gamma"] },
  "stretch": { args: ["Alpha", 2], holds: ["Alpha"] },
  "cover.holesCount": { args: [18], holds: ["18"] },
  "holePage.bend": { args: ["left", 31], holds: ["31°"] },
  "tell.unnamed": { args: ["far-bunker", "bunker"], holds: [] },
  "tell.meaning.bend": { args: ["left", "31°"], holds: ["31°"] },
  "tell.meaning.aim": { args: ["Alpha", "31°", "right"], holds: ["Alpha", "31°"] },
  "draw.surveyed": { args: ["2026-05-14"], holds: ["14", "2026"] },
  "ground.green.lies": { args: [["alpha", "beta"]], holds: ["lpha", "beta"] },
  "ground.corner.straight": { args: ["Alpha", "Beta", "left"], holds: ["Alpha", "Beta"] },
  "ground.corner.nothing": { args: ["right", "Alpha"], holds: ["Alpha"] },
  "ground.corner.top": { args: ["Alpha", "Beta", true], holds: ["Alpha", "Beta"] },
};

const SAMPLES = ["Alpha", "Beta", "Gamma", "Delta"];

/** Names that tie things together, not words anybody reads. */
const NO_WORDS = new Set(["language", "locale", "id", "mark"]);

export function leavesOf(words: Words): Leaf[] {
  const leaves: Leaf[] = [];
  const walk = (value: unknown, path: readonly string[]): void => {
    const name = path.join(".");
    if (NO_WORDS.has(path[path.length - 1]!)) return;
    if (typeof value === "string") leaves.push({ path: name, text: value, holds: [] });
    else if (typeof value === "function") {
      const { args, holds } = SPECIAL[name] ?? { args: SAMPLES.slice(0, value.length), holds: SAMPLES.slice(0, value.length) };
      leaves.push({ path: name, text: (value as (...given: readonly unknown[]) => string)(...args), holds });
    } else if (typeof value === "object" && value !== null) for (const [key, inner] of Object.entries(value)) walk(inner, [...path, key]);
  };
  walk(words, []);
  return leaves.sort((a, b) => (a.path < b.path ? -1 : 1));
}
