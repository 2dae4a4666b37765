/** What bring did or would do, in lines for the terminal. Pure. */
import { difference } from "./diff.ts";
import type { LeftOver } from "../left-over.ts";
import type { Change } from "../merge/changes.ts";
import type { FeatureKind } from "../../course/types.ts";
import type { Plan } from "../plan.ts";

const count = (n: number, noun: string): string => `${n} ${noun}${n === 1 ? "" : "s"}`;

const KINDS: Readonly<Partial<Record<FeatureKind, string>>> = {
  "line-of-play": "line of play",
  "tee-marker": "tee marker",
  "teeing-ground": "teeing ground",
  "penalty-area-yellow": "penalty area (yellow)",
  "penalty-area-red": "penalty area (red)",
  "out-of-bounds": "out of bounds",
  "driving-range": "driving range",
};

function where({ match: { incoming: { candidate: { kind }, lie } } }: Change): string {
  const what = KINDS[kind] ?? kind;
  if (lie === undefined) return what;
  const side = lie.side === "across" ? "on the line of play" : `${Math.round(Math.abs(lie.offsetMetres))} m ${lie.side}`;
  return `${what}, ${Math.round(lie.stationMetres)} m along, ${side}`;
}

const MARKS = { new: "+", changed: "~", same: "=", "taken-out": "-" } as const;

function changeLine(change: Change): string {
  const { what, id, changes, match: { incoming: { guessed, reason, candidate: { from } } } } = change;
  const said = what === "taken-out" ? "taken off the page since it was brought, and left off" : what === "new" ? where(change) : changes.join("; ");
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

export function reportBring({ files, changes, leftOver, notes }: Plan, written: boolean): string[] {
  const lines: string[] = [];
  for (const at of new Set(changes.map((change) => change.at))) {
    const own = changes.filter((change) => change.at === at);
    lines.push(at === "course" ? "Kept once for the course" : `Hole ${at}`);
    for (const change of own) {
      if (change.what !== "same") lines.push(changeLine(change));
      for (const kept of change.kept) lines.push(`  ! ${change.id.padEnd(22)} keeps ${kept} [${change.match.incoming.candidate.from}]`);
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
  lines.push(summary(changes, leftOver));
  return lines;
}

function summary(changes: readonly Change[], leftOver: readonly LeftOver[]): string {
  const brought = changes.filter(({ what }) => what !== "taken-out");
  const guessed = brought.filter(({ match }) => match.incoming.guessed).length;
  const of = (what: Change["what"]): number => brought.filter((outcome) => outcome.what === what).length;
  return `${brought.length - guessed} matched, ${guessed} guessed, ${leftOver.length} left over: ${of("new")} new, ${of("changed")} changed, ${of("same")} as before.`;
}
