/** One hole page: its front matter held to the schema, its features, its tip. */
import { isRecord } from "../course/record.ts";
import { metresFromYards } from "../geo/units.ts";
import type { Diagnostic } from "../course/diagnostic.ts";
import { checkFeatures, type CheckedFeature, type WrittenFeature } from "../course/schema/features.ts";
import { warningAt, errorAt, type Finding } from "../course/schema/finding.ts";
import { holeSchema, type HoleFile } from "../course/schema/hole.ts";
import { findingsFromIssues, valueAt } from "../course/schema/issues.ts";
import { noticeFrom } from "../course/schema/notice.ts";
import type { Feature, Hole, Notice, PerGender, Photo, Silence, Tip } from "../course/types.ts";
import { withFeatures } from "./features-file.ts";
import { splitFrontMatter } from "./front-matter.ts";
import { checkMarkdown } from "./markdown-text.ts";
import type { SourceText } from "./source-text.ts";
import { readTextFile } from "./text-file.ts";
import { parseYaml, type YamlSource } from "./yaml-source.ts";

/** `7.md`, `07.md`, `07-skerry.md`. */
export const HOLE_FILE = /^(\d{1,2})(?:-[a-z0-9]+)*\.md$/;

/** A hole page as far as it could be read; parts that are wrong are undefined. */
export interface HolePage {
  readonly file: string;
  readonly yaml: YamlSource | undefined;
  /** The number the page gives, even when the rest is wrong. */
  readonly number: number | undefined;
  /** Whether the file's name starts with that number. */
  readonly named: boolean;
  /** The front matter when all of it holds to the schema. */
  readonly front: HoleFile | undefined;
  /** The tee sets on the card, whether or not their lengths are in order. */
  readonly card: readonly string[] | undefined;
  readonly strokeIndex: HoleFile["strokeIndex"] | undefined;
  /** Every feature written, in order or not; undefined where there is no list of them. */
  readonly written: readonly WrittenFeature[] | undefined;
  readonly features: readonly CheckedFeature[];
  readonly tip: Tip | undefined;
  readonly diagnostics: readonly Diagnostic[];
}

const NOTHING = {
  yaml: undefined,
  number: undefined,
  named: false,
  front: undefined,
  card: undefined,
  strokeIndex: undefined,
  written: undefined,
  features: [],
  tip: undefined,
} as const;

export async function readHoleFile(folder: string, file: string): Promise<HolePage> {
  const text = await readTextFile(folder, file);
  return text.ok ? readHolePage(folder, text.source) : { file, ...NOTHING, diagnostics: text.diagnostics };
}

async function readHolePage(folder: string, source: SourceText): Promise<HolePage> {
  const { file } = source;
  const parts = splitFrontMatter(source);
  if (!parts.ok) return { file, ...NOTHING, diagnostics: [parts.diagnostic] };
  const { tip } = parts;
  const diagnostics = [...fieldsBelow(tip), ...checkMarkdown(tip)];
  if (tip.markdown === "") {
    diagnostics.push({
      ...tip.place,
      severity: "warning",
      rule: "tip-empty",
      message: "The page has no tip. Write how to play the hole below the second line ---.",
    });
  }
  const parsed = parseYaml(source, parts.start, parts.end);
  if (!parsed.ok) return { file, ...NOTHING, tip, diagnostics: [...diagnostics, ...parsed.diagnostics] };
  const { yaml, diagnostics: besides } = await withFeatures(folder, file, parsed.yaml);
  diagnostics.push(...besides);
  const findings: Finding[] = [];
  const result = holeSchema.safeParse(yaml.value);
  if (!result.success) findings.push(...findingsFromIssues(yaml.value, result.error.issues));
  const card = valueAt(yaml.value, ["card"]);
  const features = isRecord(yaml.value)
    ? checkFeatures(valueAt(yaml.value, ["features"]), ["features"])
    : { listed: false, features: [], written: [], findings: [] };
  findings.push(...features.findings);
  const part = <K extends keyof HoleFile>(key: K): HoleFile[K] | undefined => {
    const one = holeSchema.shape[key].safeParse(valueAt(yaml.value, [key]));
    return one.success ? (one.data as HoleFile[K]) : undefined;
  };
  const number = part("hole");
  const prefix = HOLE_FILE.exec(file.slice(file.lastIndexOf("/") + 1))?.[1];
  const named = number === undefined || prefix === undefined || Number(prefix) === number;
  if (!named) {
    findings.push(
      errorAt(
        ["hole"],
        "hole-file-number",
        `hole is ${number}, but the file's name starts with ${prefix}. Write hole: ${Number(prefix)}, or rename the file to start with ${String(number).padStart(2, "0")}.`,
      ),
    );
  }
  findings.push(...parThreeLine(result.success ? result.data : undefined, features.features));
  return {
    file,
    yaml,
    number,
    named,
    front: result.success ? result.data : undefined,
    card: isRecord(card) ? Object.keys(card) : undefined,
    strokeIndex: part("strokeIndex"),
    written: features.listed ? features.written : undefined,
    features: features.features,
    tip,
    diagnostics: [...diagnostics, ...findings.map(yaml.toDiagnostic)],
  };
}

const FIELD = new RegExp(`^(${[...Object.keys(holeSchema.shape), "features"].join("|")}):(?=\\s|$)`);

/** A line --- too many ends the front matter early, and the fields below it would be printed as the tip. */
function fieldsBelow({ markdown, place }: Tip): Diagnostic[] {
  const field = FIELD.exec(markdown)?.[1];
  if (field === undefined) return [];
  return [
    {
      ...place,
      severity: "error",
      rule: "front-matter",
      message: `The field ${field} stands below the front matter, where the tip is: a line --- above it ended the front matter. Remove that line, or put the field above it.`,
    },
  ];
}

/** A par 3 is measured straight from tee to green. */
function parThreeLine(front: HoleFile | undefined, features: readonly CheckedFeature[]): Finding[] {
  if (front === undefined) return [];
  const par = perGender(front.par);
  const line = features.find(({ kind }) => kind === "line-of-play");
  if (
    par.men !== 3 ||
    par.women !== 3 ||
    line?.geometry.type !== "LineString" ||
    line.geometry.coordinates.length === 2
  )
    return [];
  return [
    warningAt(
      [...line.path, "geometry", "coordinates"],
      "par-three-bend",
      `${line.id}: the line of play of a par 3 has ${line.geometry.coordinates.length} positions: expected two, tee and green, as a par 3 is measured straight. Remove the others.`,
    ),
  ];
}

export const perGender = (value: number | { men: number; women: number }): PerGender =>
  typeof value === "number" ? { men: value, women: value } : value;

/** Features tied to the lines they are written on. */
export const placeFeatures = (features: readonly CheckedFeature[], yaml: YamlSource): Feature[] =>
  features.map(({ path, ...feature }) => ({ ...feature, place: yaml.placeOf(path) }));

/** Silenced rules tied to the lines they are written on. */
export const placeSilences = (
  silences: readonly { readonly rule: string; readonly because: string }[],
  yaml: YamlSource,
): Silence[] => silences.map((silence, i) => ({ ...silence, place: yaml.placeOf(["silence", i]) }));

/** Notices tied to the lines they are written on. */
export const placeNotices = (notices: readonly Parameters<typeof noticeFrom>[0][], yaml: YamlSource): Notice[] =>
  notices.map((notice, i) => noticeFrom(notice, yaml.placeOf(["notices", i])));

/** The hole of a page with everything in order, or undefined. */
export function holeFrom(
  { file, yaml, front, features, tip }: HolePage,
  photos: readonly Photo[],
  translations: Hole["translations"],
): Hole | undefined {
  if (yaml === undefined || front === undefined || tip === undefined) return undefined;
  return {
    translations,
    number: front.hole,
    name: front.name,
    slug: file.slice(file.lastIndexOf("/") + 1, -".md".length),
    par: perGender(front.par),
    strokeIndex: perGender(front.strokeIndex),
    placeholder: front.placeholder,
    proposed: front.proposed,
    aim: front.aim,
    cardMetres: Object.fromEntries(Object.entries(front.card).map(([tee, yards]) => [tee, metresFromYards(yards)])),
    photos,
    features: placeFeatures(features, yaml),
    tip,
    notices: placeNotices(front.notices, yaml),
    silence: placeSilences(front.silence, yaml),
    place: yaml.placeOf(["hole"], "key"),
  };
}
