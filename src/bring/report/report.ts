/** What bring did or would do, in lines for the terminal. Pure. */
import { difference } from "./diff.ts";
import type { LeftOver } from "../normalise/candidate.ts";
import type { Outcome, Plan } from "../plan.ts";

const count = (n: number, noun: string): string => `${n} ${noun}${n === 1 ? "" : "s"}`;

const KINDS: Readonly<Partial<Record<Outcome["kind"], string>>> = {
  "line-of-play": "line of play",
  "tee-marker": "tee marker",
  "teeing-ground": "teeing ground",
  "penalty-area-yellow": "penalty area (yellow)",
  "penalty-area-red": "penalty area (red)",
  "out-of-bounds": "out of bounds",
  "driving-range": "driving range",
};

function where({ kind, lie }: Outcome): string {
  const what = KINDS[kind] ?? kind;
  if (lie === undefined) return what;
  const side = lie.side === "across" ? "on the line of play" : `${Math.round(Math.abs(lie.offsetMetres))} m ${lie.side}`;
  return `${what}, ${Math.round(lie.stationMetres)} m along, ${side}`;
}

const MARKS = { new: "+", changed: "~", same: "=", "taken-out": "-" } as const;

function outcomeLine(outcome: Outcome): string {
  const { what, id, from, guessed, reason, changes } = outcome;
  const said = what === "taken-out" ? "taken off the page since it was brought, and left off" : what === "new" ? where(outcome) : changes.join("; ");
  return `  ${MARKS[what]} ${id.padEnd(22)} ${said}\n      ${guessed ? "guessed" : "matched"}: ${reason} [${from}]`;
}

/** Left-over features by reason, the commonest first. */
export function leftOverLines(leftOver: readonly LeftOver[], most = 4): string[] {
  const byReason = new Map<string, string[]>();
  for (const { from, reason } of leftOver) {
    const froms = byReason.get(reason);
    if (froms) froms.push(from);
    else byReason.set(reason, [from]);
  }
  return [...byReason]
    .sort(([a, x], [b, y]) => y.length - x.length || (a < b ? -1 : 1))
    .map(([reason, froms]) => `  ${String(froms.length).padStart(4)}  ${reason}\n        ${froms.slice(0, most).join("; ")}${froms.length > most ? `; and ${froms.length - most} more` : ""}`);
}

export function reportBring({ files, outcomes, leftOver, notes }: Plan, written: boolean): string[] {
  const lines: string[] = [];
  for (const at of new Set(outcomes.map((outcome) => outcome.at))) {
    const own = outcomes.filter((outcome) => outcome.at === at);
    lines.push(at === "course" ? "Kept once for the course" : `Hole ${at}`);
    for (const outcome of own) {
      if (outcome.what !== "same") lines.push(outcomeLine(outcome));
      for (const kept of outcome.kept) lines.push(`  ! ${outcome.id.padEnd(22)} keeps ${kept} [${outcome.from}]`);
    }
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
  lines.push(summary(outcomes, leftOver));
  return lines;
}

function summary(outcomes: readonly Outcome[], leftOver: readonly LeftOver[]): string {
  const brought = outcomes.filter(({ what }) => what !== "taken-out");
  const guessed = brought.filter((outcome) => outcome.guessed).length;
  const of = (what: Outcome["what"]): number => brought.filter((outcome) => outcome.what === what).length;
  return `${brought.length - guessed} matched, ${guessed} guessed, ${leftOver.length} left over: ${of("new")} new, ${of("changed")} changed, ${of("same")} as before.`;
}
