/** Just enough of an SVG reader to measure a drawing back: tags in order, and path coordinates. */

export interface Tag {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  /** Tags around it, outermost first. */
  readonly parents: readonly Tag[];
  /** Text directly inside. */
  text: string;
}

const TOKEN = /<(\/?)([A-Za-z][\w:-]*)((?:\s+[\w:-]+="[^"<>]*")*)\s*(\/?)>|([^<]+)/gy;

/** @throws Error where the text is not well-formed: a stray `<` or `&`, an unclosed or crossed tag. */
export function readSvg(svg: string): Tag[] {
  const tags: Tag[] = [];
  const open: Tag[] = [];
  TOKEN.lastIndex = 0;
  while (TOKEN.lastIndex < svg.length) {
    const at = TOKEN.lastIndex;
    const match = TOKEN.exec(svg);
    if (!match) throw new Error(`Not well-formed at ${at}: ${svg.slice(at, at + 60)}`);
    const [, closing, name, attributes, empty, text] = match;
    if (text !== undefined) {
      checkText(text);
      const inside = open[open.length - 1];
      if (inside) inside.text += unescape(text);
      continue;
    }
    if (closing) {
      const last = open.pop();
      if (last?.name !== name) throw new Error(`</${name}> closes <${last?.name}>`);
      continue;
    }
    const values: Record<string, string> = {};
    for (const [, key, value] of attributes!.matchAll(/([\w:-]+)="([^"]*)"/g)) {
      checkText(value!);
      if (Object.hasOwn(values, key!)) throw new Error(`${key} is written twice in <${name}>`);
      values[key!] = unescape(value!);
    }
    const tag: Tag = { name: name!, attributes: values, parents: [...open], text: "" };
    tags.push(tag);
    if (!empty) open.push(tag);
  }
  if (open.length > 0) throw new Error(`<${open[open.length - 1]!.name}> is never closed`);
  return tags;
}

function checkText(text: string): void {
  if (/&(?!amp;|lt;|gt;|quot;|#39;)/.test(text)) throw new Error(`A bare & in: ${text}`);
}

const unescape = (text: string): string =>
  text
    .replace(/&lt;/g, "<")
    .replace(/&gt;/g, ">")
    .replace(/&quot;/g, '"')
    .replace(/&#39;/g, "'")
    .replace(/&amp;/g, "&");

export type Pair = readonly [number, number];

/** End points of each subpath, absolute; curves and arcs by where they end. */
export function pathPoints(d: string): Pair[][] {
  const paths: Pair[][] = [];
  const tokens = d.match(/[MmLlHhVvCcSsAaQqZz]|-?(?:\d+\.\d+|\d+|\.\d+)/g) ?? [];
  const takes: Readonly<Record<string, number>> = { m: 2, l: 2, h: 1, v: 1, c: 6, s: 4, q: 4, a: 7 };
  let [x, y, startX, startY, i, command] = [0, 0, 0, 0, 0, ""];
  while (i < tokens.length) {
    if (/[A-Za-z]/.test(tokens[i]!)) command = tokens[i++]!;
    const lower = command.toLowerCase();
    if (lower === "z") {
      [x, y] = [startX, startY];
      continue;
    }
    const relative = command === lower;
    const values = tokens.slice(i, i + takes[lower]!).map(Number);
    i += takes[lower]!;
    if (lower === "h") x = relative ? x + values[0]! : values[0]!;
    else if (lower === "v") y = relative ? y + values[0]! : values[0]!;
    else {
      const [ex, ey] = values.slice(-2) as [number, number];
      [x, y] = relative ? [x + ex, y + ey] : [ex, ey];
    }
    if (lower === "m") {
      [startX, startY] = [x, y];
      paths.push([]);
      command = relative ? "l" : "L";
    }
    paths[paths.length - 1]!.push([x, y]);
  }
  return paths;
}
