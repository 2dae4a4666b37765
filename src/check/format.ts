/** What was found, for people and for programs. */
import type { Diagnostic, Severity } from "../course/diagnostic.ts";
import type { Rule } from "./rule.ts";
import { count } from "./say.ts";
import type { Silenced } from "./silence.ts";

const SEVERITIES: readonly Severity[] = ["error", "warning", "note"];

export interface Report {
  readonly diagnostics: readonly Diagnostic[];
  readonly silenced?: readonly Silenced[];
}

const tally = (diagnostics: readonly Diagnostic[]): Record<Severity, number> => ({
  error: diagnostics.filter(({ severity }) => severity === "error").length,
  warning: diagnostics.filter(({ severity }) => severity === "warning").length,
  note: diagnostics.filter(({ severity }) => severity === "note").length,
});

/** `2 errors, 1 note; 3 silenced`. */
export function tallyText({ diagnostics, silenced = [] }: Report): string {
  const counts = tally(diagnostics);
  const parts = SEVERITIES.filter((severity) => counts[severity] > 0).map((severity) =>
    count(counts[severity], severity),
  );
  return (
    (parts.length === 0 ? "Nothing to say" : parts.join(", ")) +
    (silenced.length > 0 ? `; ${silenced.length} silenced` : "")
  );
}

/** For programs: one JSON value; `version` grows when a field changes its meaning. */
export function formatJson({ diagnostics, silenced = [] }: Report): string {
  const plain = ({ file, line, column, severity, rule, message }: Diagnostic) => ({
    file,
    line,
    column,
    severity,
    rule,
    message,
  });
  return `${JSON.stringify(
    {
      version: 1,
      counts: { ...tally(diagnostics), silenced: silenced.length },
      diagnostics: diagnostics.map(plain),
      silenced: silenced.map(({ diagnostic, because }) => ({ ...plain(diagnostic), because })),
    },
    null,
    2,
  )}\n`;
}

/** The look-up table of rules: name, severity, one sentence. */
export function formatRules(rules: readonly Rule[]): string {
  const wide = Math.max(...rules.map(({ name }) => name.length));
  return `${rules.map(({ name, severity, about }) => `${name.padEnd(wide)}  ${severity.padEnd(7)}  ${about}`).join("\n")}\n`;
}
