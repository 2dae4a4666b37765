/** Where YAML would stop reading a file, and leave out what follows without a word. */

/** YAML 1.2.2, 9.1: a line that begins so, in its first column, begins or ends a document, whatever it stands in. */
const MARKER = /^(---|\.\.\.)(?=[ \t\r]|$)/;

/** White space, a comment or a directive. */
const NOTHING = /^[ \t\r]*(?:#|$)|^%/;

export interface SecondDocument {
  readonly offset: number;
  readonly message: string;
}

/** The line from which on a file would not be read; undefined where all of it is. */
export function secondDocument(text: string): SecondDocument | undefined {
  if (!/^(?:---|\.\.\.)/m.test(text)) return undefined;
  let offset = 0;
  let begun = false;
  let ended: SecondDocument | undefined;
  for (const line of text.split("\n")) {
    const marker = MARKER.exec(line)?.[1];
    // The line --- may open the one document there is.
    if (marker !== undefined && (begun || marker === "...")) {
      ended ??= {
        offset,
        message: `To YAML the file ends with this line ${marker}, and what follows would not be read. Remove the line.`,
      };
    }
    const written = marker === undefined ? line : line.slice(marker.length);
    if (marker !== undefined) begun = true;
    if (!NOTHING.test(written)) {
      if (ended !== undefined) return ended;
      begun = true;
    }
    offset += line.length + 1;
  }
  return undefined;
}
