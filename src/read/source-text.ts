/** A file's text that knows its lines. */
import type { Place } from "../course/types.ts";

export class SourceText {
  /** Path relative to the content folder, with forward slashes. */
  readonly file: string;
  /** Decoded, without a byte-order mark. Line ends are as written. */
  readonly text: string;
  #lineStarts: number[] | undefined;

  constructor(file: string, text: string) {
    this.file = file;
    this.text = text;
  }

  /** Line and column, from 1, of an offset into the text; columns count UTF-16 units, as editors do. */
  placeAt(offset: number): Place {
    this.#lineStarts ??= lineStarts(this.text);
    const starts = this.#lineStarts;
    let low = 0;
    let high = starts.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (starts[middle]! <= offset) low = middle;
      else high = middle - 1;
    }
    return { file: this.file, line: low + 1, column: offset - starts[low]! + 1 };
  }
}

function lineStarts(text: string): number[] {
  const starts = [0];
  for (let at = text.indexOf("\n"); at !== -1; at = text.indexOf("\n", at + 1)) starts.push(at + 1);
  return starts;
}
