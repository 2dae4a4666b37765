/** Zod's issues as findings: one for each place at fault, in the words of our fields. */
import type * as z from "zod";
import { errorAt, type Finding, type Path } from "./finding.ts";
import { nearestNames } from "./nearest.ts";
import { FIELD } from "./fields.ts";
import { insteadOf, shown } from "./wording.ts";

type Issue = z.core.$ZodIssue;

const toPath = (path: readonly PropertyKey[]): Path =>
  path.map((step) => (typeof step === "number" ? step : String(step)));

/** The value at a path of plain data; undefined when the way ends early. */
export function valueAt(value: unknown, path: Path): unknown {
  let at = value;
  for (const step of path) {
    if (at === null || typeof at !== "object" || !Object.hasOwn(at, step)) return undefined;
    at = Reflect.get(at, step);
  }
  return at;
}

/**
 * The field a path ends in, with its list positions where it is an entry: `tees[2]`, `corners[1][2]`,
 * counted from 1.
 */
export function fieldName(path: Path): string {
  if (path.length === 0) return "The file";
  const field = path.findLastIndex((step) => typeof step === "string");
  const places = path.slice(field + 1).map((place) => `[${Number(place) + 1}]`);
  return `${path[field] ?? "entry"}${places.join("")}`;
}

function* flatten(data: unknown, issues: readonly Issue[], prefix: Path): Generator<Finding> {
  for (const issue of issues) {
    const path = [...prefix, ...toPath(issue.path)];
    if (issue.code === "unrecognized_keys") {
      const names = issue.message.split("\n");
      for (const key of issue.keys) {
        if (key === "<<")
          yield errorAt(
            [...path, key],
            "unknown-field",
            "YAML's merge key << is not used here. Write the fields out.",
            "key",
          );
        else
          yield errorAt(
            [...path, key],
            "unknown-field",
            `There is no field ${JSON.stringify(key)} here. ${insteadOf(key, names)}`,
            "key",
          );
      }
      continue;
    }
    if (issue.code === "invalid_union" && isGroup(valueAt(data, path))) {
      // A group was written, so the complaint of the branch that takes groups is the useful one.
      const branch = issue.errors.find((errors) =>
        errors.some(({ path: inner, code }) => inner.length > 0 || code === "unrecognized_keys"),
      );
      if (branch) {
        yield* flatten(data, branch, path);
        continue;
      }
    }
    const value = valueAt(data, path);
    const name = fieldName(path);
    if (
      issue.code === "invalid_type" &&
      issue.expected === "string" &&
      (typeof value === "number" || typeof value === "boolean")
    ) {
      yield errorAt(
        path,
        "wrong-value",
        `${name} is ${value}, which is no text to YAML: expected a text. Write ${name}: "${value}".`,
      );
      continue;
    }
    const found =
      typeof value === "string" && value.trim() !== "" && Number.isFinite(Number(value))
        ? `the text ${shown(value)}`
        : shown(value);
    const message = issue.message.replaceAll(FIELD, name);
    yield errorAt(path, value === undefined ? "missing-field" : "wrong-value", `${name} is ${found}: ${message}`);
  }
}

const isGroup = (value: unknown): boolean => value !== null && typeof value === "object" && !Array.isArray(value);

/** Told of one file in one run. */
const MOST_FINDINGS = 100;

/**
 * One finding for each place a schema refused; several complaints about one value are one
 * mistake, and so is a misspelt field that leaves the right one missing.
 */
export function findingsFromIssues(data: unknown, issues: readonly Issue[]): Finding[] {
  const seen = new Map<string, Finding>();
  for (const finding of flatten(data, issues, [])) {
    const key = JSON.stringify(finding.path);
    if (!seen.has(key)) seen.set(key, finding);
    if (seen.size < MOST_FINDINGS) continue;
    seen.set(
      "more",
      errorAt([], "many-mistakes", "There are more mistakes in this file than are told here. Put these right first."),
    );
    break;
  }
  const findings = [...seen.values()];
  const strangers = findings.filter(({ rule }) => rule === "unknown-field");
  return findings.filter(({ rule, path }) => {
    if (rule !== "missing-field") return true;
    const group = JSON.stringify(path.slice(0, -1));
    const name = String(path[path.length - 1]);
    return !strangers.some(
      (other) =>
        JSON.stringify(other.path.slice(0, -1)) === group &&
        nearestNames(String(other.path[other.path.length - 1]), [name]).length > 0,
    );
  });
}
