/**
 * Coordinates taken out of YAML before it is parsed.
 *
 * Nine tenths of a hole page are arrays of plain numbers, and a YAML parser that keeps
 * positions builds a node for each: some 12 ms a page against 2 ms for the rest. Arrays
 * that are also JSON are therefore cut out, leaving `[   ]` of the same extent, so every
 * offset stays true. An array JSON does not take (comments, `.nan`, trailing commas) is
 * left for the YAML parser. {@link parseYaml} puts the arrays back.
 */

export interface Lifted {
  /** Offset just past the closing bracket. */
  readonly end: number;
  readonly value: unknown;
}

export interface Skeleton {
  readonly text: string;
  /** By offset of the opening bracket. */
  readonly lifted: ReadonlyMap<number, Lifted>;
}

/** After a quoted name YAML needs no space behind the colon, as JSON is often written. */
const START = /\bcoordinates(?:["'][ ]*:[ ]*|[ ]*:[ ]+)(?=\[)/g;

/**
 * Offset past the bracket that closes the one at `start`, or undefined where anything but JSON numbers
 * stands between.
 */
function endOfNumbers(text: string, start: number): number | undefined {
  let depth = 0;
  for (let i = start; i < text.length; i++) {
    const c = text.charCodeAt(i);
    if (c === 0x5b) depth++;
    else if (c === 0x5d) {
      if (--depth === 0) return i + 1;
    } else if (
      !(
        (c >= 0x30 && c <= 0x39) ||
        c === 0x20 ||
        c === 0x2c ||
        c === 0x2d ||
        c === 0x2e ||
        c === 0x2b ||
        c === 0x45 ||
        c === 0x65 ||
        c === 0x0a ||
        c === 0x0d
      )
    ) {
      return undefined;
    }
  }
  return undefined;
}

/**
 * Whether each further line is indented enough to belong to the line the array starts in, so YAML would not
 * complain of it.
 */
function wellIndented(text: string, start: number, end: number): boolean {
  const slice = text.slice(start, end);
  if (!slice.includes("\n")) return true;
  const lineStart = text.lastIndexOf("\n", start) + 1;
  const own = /^[ -]*/.exec(text.slice(lineStart, start))![0].length;
  return slice
    .split("\n")
    .slice(1)
    .every((line) => line.trim() === "" || line.search(/\S/) > own);
}

export function liftNumbers(text: string): Skeleton {
  const lifted = new Map<number, Lifted>();
  const parts: string[] = [];
  let from = 0;
  START.lastIndex = 0;
  for (let match = START.exec(text); match !== null; match = START.exec(text)) {
    const start = START.lastIndex;
    const end = endOfNumbers(text, start);
    if (end === undefined || !wellIndented(text, start, end)) continue;
    let value: unknown;
    try {
      value = JSON.parse(text.slice(start, end));
    } catch {
      continue;
    }
    lifted.set(start, { end, value });
    parts.push(text.slice(from, start + 1), text.slice(start + 1, end - 1).replace(/[^\n]/g, " "));
    from = end - 1;
    START.lastIndex = end;
  }
  parts.push(text.slice(from));
  return { text: parts.join(""), lifted };
}

/**
 * Offset of the entry at a path inside an array of numbers that starts at `start`; the array's own where
 * there is none.
 */
export function offsetInNumbers(text: string, start: number, path: readonly (string | number)[]): number {
  let at = start;
  for (const step of path) {
    if (typeof step !== "number" || text[at] !== "[") return at;
    let index = 0;
    let depth = 0;
    let i = at + 1;
    for (; i < text.length; i++) {
      const c = text[i]!;
      if (depth === 0 && index === step && !/[\s,]/.test(c)) break;
      if (c === "[") depth++;
      else if (c === "]") {
        if (depth === 0) return at;
        depth--;
      } else if (c === "," && depth === 0) index++;
    }
    at = i;
  }
  return at;
}
