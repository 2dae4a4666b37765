import { describe, expect, test } from "vitest";
import { formatJson, formatRules, tallyText } from "../../src/check/format.ts";
import { RULES } from "../../src/check/registry.ts";
import type { Diagnostic } from "../../src/course/diagnostic.ts";

const one = (
  file: string,
  line: number,
  column: number,
  severity: Diagnostic["severity"],
  rule: string,
): Diagnostic => ({ file, line, column, severity, rule, message: `About ${rule}.` });

const report = {
  diagnostics: [
    one("tarvay/course.yaml", 1, 1, "note", "survey-age"),
    one("tarvay/holes/07.md", 5, 3, "warning", "card-against-ground"),
    one("tarvay/holes/07.md", 38, 112, "error", "tip-says-bends"),
  ],
  silenced: [
    { diagnostic: one("tarvay/holes/08.md", 5, 3, "warning", "card-against-ground"), because: "Reprinted in spring." },
  ],
};

describe("for people", () => {
  test("sums by severity, and what was silenced", () =>
    expect(tallyText(report)).toBe("1 error, 1 warning, 1 note; 1 silenced"));
  test("nothing found", () => {
    expect(tallyText({ diagnostics: [], silenced: report.silenced })).toBe("Nothing to say; 1 silenced");
  });
});

describe("for programs", () => {
  test("counts, every diagnostic, and what was silenced with its reason", () => {
    const read = JSON.parse(formatJson(report)) as Record<string, unknown>;
    expect(read).toEqual({
      version: 1,
      counts: { error: 1, warning: 1, note: 1, silenced: 1 },
      diagnostics: report.diagnostics,
      silenced: [{ ...report.silenced[0]!.diagnostic, because: "Reprinted in spring." }],
    });
  });
});

test("the table of rules has a line for each, with its severity and one sentence", () => {
  const lines = formatRules(RULES).trimEnd().split("\n");
  expect(lines).toHaveLength(RULES.length);
  for (const [i, rule] of RULES.entries())
    expect(lines[i]).toMatch(new RegExp(`^${rule.name} +${rule.severity} +\\S.*\\.$`));
});
