/** What bring did or would do, in lines for the terminal: at most a screen, golf first, or all of it. Pure. */
import type { FeatureKind } from "../../course/types.ts";
import { numbersIn } from "../../course/schema/wording.ts";
import type { LeftOver } from "../left-over.ts";
import type { Change } from "../merge/changes.ts";
import type { Plan } from "../plan.ts";
import { difference } from "./diff.ts";
import { golfLeftOver, NOT_PLACED_FILE } from "./not-placed.ts";
import { causeOf, counted, nounOf } from "./words.ts";

const count = (n: number, noun: string): string => `${n} ${noun}${n === 1 ? "" : "s"}`;

/** By what a key says of each, the commonest first. */
function tally<T>(items: readonly T[], key: (item: T) => string): [key: string, items: T[]][] {
  const groups = new Map<string, T[]>();
  for (const item of items) groups.set(key(item), [...(groups.get(key(item)) ?? []), item]);
  return [...groups].sort(([a, x], [b, y]) => y.length - x.length || (a < b ? -1 : 1));
}

const ORDER: readonly FeatureKind[] = [
  "line-of-play",
  "green",
  "fairway",
  "teeing-ground",
  "tee-marker",
  "bunker",
  "penalty-area-yellow",
  "penalty-area-red",
  "water",
  "pin",
  "rough",
];
const rank = (kind: FeatureKind): number => (ORDER.includes(kind) ? ORDER.indexOf(kind) : ORDER.length);

const kindsIn = (changes: readonly Change[]): string =>
  tally(changes, ({ match }) => match.incoming.candidate.kind)
    .sort(([a], [b]) => rank(a as FeatureKind) - rank(b as FeatureKind))
    .map(([kind, own]) => counted(own.length, kind as FeatureKind))
    .join(", ");

/** Lines of this many characters and more are broken. */
const WIDTH = 110;

function wrapped(text: string, indent: string): string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(" ")) {
    if (line !== "" && line.length + 1 + word.length > WIDTH) {
      lines.push(line);
      line = `${indent}  ${word}`;
    } else line = line === "" ? `${indent}${word}` : `${line} ${word}`;
  }
  return [...lines, line];
}

/** At most a screen: what came, what was worked out, what found no place, each counted. */
export function shortReport({ changes, completions, leftOver, notes }: Plan, course: string): string[] {
  const lines: string[] = [];
  const came = changes.filter(({ what }) => what === "new" || what === "changed");
  const holes = came.filter(({ at }) => at !== "course");
  const put = (text: string): number => lines.push(...wrapped(text, "  "));
  if (holes.length > 0) {
    lines.push(`On ${count(new Set(holes.map(({ at }) => at)).size, "hole")}:`);
    put(kindsIn(holes));
  }
  const shared = came.filter(({ at }) => at === "course");
  if (shared.length > 0) lines.push(...wrapped(`Kept once for the course: ${kindsIn(shared)}`, ""));
  const proposed = completions.flatMap((one) => one.proposed);
  if (proposed.length > 0)
    lines.push(`Proposed on tee grounds: ${counted(proposed.length, "tee-marker")}, until you confirm them.`);
  const laid = completions.filter(({ placeholders }) => placeholders.length > 0);
  if (laid.length > 0)
    lines.push(
      `Still placeholders, laid along the real line: on ${count(laid.length, "hole")} (${numbersIn(laid.map(({ hole }) => hole))}).`,
    );
  const dropped = completions.flatMap((one) => one.dropped).length;
  if (dropped > 0) lines.push(`Placeholders taken away: ${dropped}.`);
  const same = changes.filter(({ what }) => what === "same").length;
  if (same > 0) lines.push(`As before: ${same}.`);
  const again = changes.filter(({ what }) => what === "duplicate").length;
  if (again > 0) lines.push(`Drawn twice, and kept once: ${again}.`);
  const kept = changes.filter((change) => change.kept.length > 0).length;
  if (kept > 0) lines.push(`Yours was kept where the source says otherwise: ${kept}.`);
  const taken = changes.filter(({ what }) => what === "taken-out").length;
  if (taken > 0) lines.push(`Left off, since you took them off before: ${taken}.`);
  lines.push(...notPlaced(leftOver, course));
  if (notes.length > 0) {
    lines.push("Please note");
    for (const note of notes.slice(0, MOST_NOTES)) lines.push(...wrapped(note, "  "));
    if (notes.length > MOST_NOTES) lines.push(`  and ${notes.length - MOST_NOTES} more: --all tells them.`);
  }
  return [...lines, "", summary(changes, leftOver)];
}

/** Few enough for all of it to stay on a screen. */
const [MOST_NOTES, MOST_KINDS] = [4, 6];

function notPlaced(leftOver: readonly LeftOver[], course: string): string[] {
  if (leftOver.length === 0) return [];
  const golf = golfLeftOver(leftOver);
  const byKind = tally(golf, ({ candidate }) => candidate!.kind).sort(
    ([a], [b]) => rank(a as FeatureKind) - rank(b as FeatureKind),
  );
  const causes = (some: readonly LeftOver[]): string =>
    tally(some, causeOf)
      .slice(0, 3)
      .map(([cause, own], _, all) => (all.length === 1 ? cause : `${own.length} ${cause}`))
      .join(", ");
  const lines = byKind
    .slice(0, MOST_KINDS)
    .map(([kind, own]) => `  ${counted(own.length, kind as FeatureKind)}: ${causes(own)}`);
  const others = leftOver.filter((one) => !golf.includes(one));
  if (others.length > 0)
    lines.push(`  ${count(others.length, golf.length > 0 ? "other" : "feature")}: ${causes(others)}`);
  return [`Not placed${golf.length > 0 ? `, and shown in ${course}/${NOT_PLACED_FILE}` : ""}`, ...lines];
}

function where({
  match: {
    incoming: {
      candidate: { kind },
      lie,
    },
  },
}: Change): string {
  const what = nounOf(kind);
  if (lie === undefined) return what;
  const side =
    lie.side === "across" ? "on the line of play" : `${Math.round(Math.abs(lie.offsetMetres))} m ${lie.side}`;
  return `${what}, ${Math.round(lie.stationMetres)} m along, ${side}`;
}

const MARKS = { new: "+", changed: "~", same: "=", "taken-out": "-", duplicate: "=" } as const;

function changeLine(change: Change): string {
  const {
    what,
    id,
    changes,
    match: {
      incoming: {
        guessed,
        reason,
        candidate: { from },
      },
    },
  } = change;
  const said = {
    new: () => where(change),
    changed: () => changes.join("; "),
    same: () => "",
    "taken-out": () => "taken off the page since it was brought, and left off",
    duplicate: () => "the same drawn again, and kept as it is",
  }[what]();
  return `  ${MARKS[what]} ${id.padEnd(22)} ${said}\n      ${guessed ? "guessed" : "matched"}: ${reason} [${from}]`;
}

/** Left-over features by reason, the commonest first. */
export function leftOverLines(leftOver: readonly LeftOver[], most = 4): string[] {
  return tally(leftOver, ({ reason }) => reason).map(([reason, own]) => {
    const froms = own.map(({ from }) => from);
    return `  ${String(froms.length).padStart(4)}  ${reason}\n        ${froms.slice(0, most).join("; ")}${froms.length > most ? `; and ${froms.length - most} more` : ""}`;
  });
}

/** Every feature, and before writing every line of every file that would change. */
export function fullReport({ files, changes, completions, leftOver, notes }: Plan, written: boolean): string[] {
  const lines: string[] = [];
  for (const at of new Set(changes.map((change) => change.at))) {
    const own = changes.filter((change) => change.at === at);
    lines.push(at === "course" ? "Kept once for the course" : `Hole ${at}`);
    for (const change of own) {
      if (change.what !== "same") lines.push(changeLine(change));
      for (const kept of change.kept)
        lines.push(`  ! ${change.id.padEnd(22)} keeps ${kept} [${change.match.incoming.candidate.from}]`);
    }
    const completion = completions.find(({ hole }) => hole === at);
    for (const { id } of completion?.proposed ?? []) lines.push(`  + ${id.padEnd(22)} proposed on a tee ground`);
    for (const { id } of completion?.placeholders ?? [])
      lines.push(`  + ${id.padEnd(22)} a placeholder, laid along the real line`);
    for (const { id } of completion?.dropped ?? []) lines.push(`  - ${id.padEnd(22)} a placeholder, taken away`);
    const same = own.filter(({ what }) => what === "same").length;
    if (same > 0) lines.push(`  = ${count(same, "feature")} as before`);
    lines.push("");
  }
  if (leftOver.length > 0) lines.push("Left over", ...leftOverLines(leftOver), "");
  if (notes.length > 0) lines.push("Please note", ...notes.map((note) => `  ${note}`), "");
  if (!written) {
    for (const { file, before, after } of files) {
      lines.push(before === undefined ? `${file} (new)` : file, ...difference(before ?? "", after), "");
    }
  }
  lines.push(summary(changes, leftOver));
  return lines;
}

function summary(changes: readonly Change[], leftOver: readonly LeftOver[]): string {
  const brought = changes.filter(({ what }) => what !== "taken-out" && what !== "duplicate");
  const guessed = brought.filter(({ match }) => match.incoming.guessed).length;
  const of = (what: Change["what"]): number => brought.filter((change) => change.what === what).length;
  return `${brought.length - guessed} matched, ${guessed} guessed, ${leftOver.length} left over: ${of("new")} new, ${of("changed")} changed, ${of("same")} as before.`;
}

/** For programs: the same, with every detail. */
export function reportJson(
  { files, changes, completions, leftOver, notes }: Plan,
  read: readonly string[],
  written: boolean,
  toDo: readonly unknown[],
): string {
  return `${JSON.stringify(
    {
      read,
      written,
      files: files.map(({ file, before }) => ({ file, new: before === undefined })),
      features: changes.map(
        ({
          at,
          id,
          what,
          changes: words,
          kept,
          match: {
            incoming: { candidate, guessed, reason },
          },
        }) => ({ at, id, what, kind: candidate.kind, from: candidate.from, guessed, reason, changes: words, kept }),
      ),
      holes: completions.map(({ hole, proposed, placeholders, dropped, lengths }) => ({
        hole,
        proposed: proposed.map(({ id }) => id),
        placeholders: placeholders.map(({ id }) => id),
        takenAway: dropped.map(({ id }) => id),
        lengthsMetres: lengths,
      })),
      notPlaced: leftOver.map(({ from, reason, candidate }) => ({ from, reason, kind: candidate?.kind ?? null })),
      notes,
      toDo,
    },
    null,
    1,
  )}\n`;
}
