/** The difference of two texts, line by line, for reading: long lines are cut to where they differ. Pure. */

/** Beyond this many line pairs the whole file is one change; pages are some hundred lines. */
const MOST_PAIRS = 4_000_000;

/** Characters of a line that are shown, of its start when it is cut, and before what differs. */
const [WIDTH, HEAD, BEFORE] = [150, 56, 24];

type Step = readonly [mark: " " | "-" | "+", line: string];

function steps(before: readonly string[], after: readonly string[]): Step[] {
  let start = 0;
  while (start < before.length && start < after.length && before[start] === after[start]) start++;
  let end = 0;
  while (
    end < before.length - start &&
    end < after.length - start &&
    before[before.length - 1 - end] === after[after.length - 1 - end]
  )
    end++;
  const [a, b] = [before.slice(start, before.length - end), after.slice(start, after.length - end)];
  const middle: Step[] = [];
  if (a.length * b.length > MOST_PAIRS)
    middle.push(...a.map((line): Step => ["-", line]), ...b.map((line): Step => ["+", line]));
  else {
    // Longest common run of lines, from the back.
    const width = b.length + 1;
    const longest = new Uint32Array((a.length + 1) * width);
    for (let i = a.length - 1; i >= 0; i--) {
      for (let j = b.length - 1; j >= 0; j--) {
        longest[i * width + j] =
          a[i] === b[j]
            ? longest[(i + 1) * width + j + 1]! + 1
            : Math.max(longest[(i + 1) * width + j]!, longest[i * width + j + 1]!);
      }
    }
    for (let i = 0, j = 0; i < a.length || j < b.length;) {
      if (i < a.length && j < b.length && a[i] === b[j]) {
        middle.push([" ", a[i++]!]);
        j++;
      } else if (i < a.length && (j === b.length || longest[(i + 1) * width + j]! >= longest[i * width + j + 1]!))
        middle.push(["-", a[i++]!]);
      else middle.push(["+", b[j++]!]);
    }
  }
  return [
    ...before.slice(0, start).map((line): Step => [" ", line]),
    ...middle,
    ...before.slice(before.length - end).map((line): Step => [" ", line]),
  ];
}

function shown(line: string, differsAt: number): string {
  if (line.length <= WIDTH) return line;
  if (differsAt < WIDTH - BEFORE) return `${line.slice(0, WIDTH)}…`;
  return `${line.slice(0, HEAD)} … ${line.slice(differsAt - BEFORE, differsAt - BEFORE + WIDTH - HEAD)}…`;
}

const samePrefix = (a: string, b: string): number => {
  let i = 0;
  while (i < a.length && i < b.length && a[i] === b[i]) i++;
  return i;
};

/** Changed lines marked - and +, with the number of the line in the file as it is or will be. */
export function difference(before: string, after: string): string[] {
  const lines: string[] = [];
  let [was, becomes] = [0, 0];
  const all = steps(before === "" ? [] : before.split(/\r?\n/), after.split(/\r?\n/));
  let run: Step[] = [];
  const flush = (): void => {
    const removed = run.filter(([mark]) => mark === "-").map(([, line]) => line);
    const added = run.filter(([mark]) => mark === "+").map(([, line]) => line);
    const first = [was - removed.length + 1, becomes - added.length + 1] as const;
    removed.forEach((line, i) =>
      lines.push(
        `  ${String(first[0] + i).padStart(4)} - ${shown(line, added[i] === undefined ? 0 : samePrefix(line, added[i]))}`,
      ),
    );
    added.forEach((line, i) =>
      lines.push(
        `  ${String(first[1] + i).padStart(4)} + ${shown(line, removed[i] === undefined ? 0 : samePrefix(line, removed[i]))}`,
      ),
    );
    run = [];
  };
  for (const step of all) {
    if (step[0] === " ") {
      flush();
      was++;
      becomes++;
    } else {
      run.push(step);
      if (step[0] === "-") was++;
      else becomes++;
    }
  }
  flush();
  return lines;
}
