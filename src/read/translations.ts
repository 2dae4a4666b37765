/**
 * Translations of content: `club.de.yaml`, `course.de.yaml` and `holes/07-skerry.de.md`
 * beside the files they translate. Each says only what differs.
 */
import type { Diagnostic } from "../course/diagnostic.ts";
import { guideLanguageOf } from "../course/guide-languages.ts";
import type { ClubFile } from "../course/schema/club.ts";
import type { CourseFile } from "../course/schema/course.ts";
import type { Finding } from "../course/schema/finding.ts";
import { findingsFromIssues } from "../course/schema/issues.ts";
import {
  checkCount,
  checkNames,
  clubTranslationSchema,
  courseTranslationSchema,
  holeTranslationSchema,
} from "../course/schema/translation.ts";
import { insteadOf, oneOf, quote } from "../course/schema/wording.ts";
import type { ClubTranslation, CourseTranslation, HoleTranslation, Place, Translations } from "../course/types.ts";
import { splitFrontMatter } from "./front-matter.ts";
import { HOLE_FILE, type HolePage } from "./hole-file.ts";
import { checkMarkdown } from "./markdown-text.ts";
import type { SourceText } from "./source-text.ts";
import { readTextFile } from "./text-file.ts";
import { parseYaml, type YamlSource } from "./yaml-source.ts";

export interface Translated<T> {
  readonly translations: Translations<T>;
  readonly diagnostics: readonly Diagnostic[];
}

/** What lies in a folder as a translation: its file's name, what it translates, and the language. */
export interface TranslationFile {
  readonly file: string;
  readonly of: string;
  readonly language: string;
}

/** `07-skerry.de.md` as the German of `07-skerry.md`; undefined for what is not named like a translation. */
export function translationFile(name: string): TranslationFile | undefined {
  const parts = /^(.+)\.([A-Za-z]{2,3}(?:-[A-Za-z0-9]{2,8})*)\.(md|yaml)$/.exec(name);
  return parts ? { file: name, of: `${parts[1]}.${parts[3]}`, language: parts[2]! } : undefined;
}

/** The translations among some names that are of a file and in a language of the club; and a word about the others. */
export function wantedTranslations(
  folder: string,
  names: readonly string[],
  isOriginal: (name: string) => boolean,
  languages: readonly string[],
): { files: TranslationFile[]; diagnostics: Diagnostic[] } {
  const files: TranslationFile[] = [];
  const diagnostics: Diagnostic[] = [];
  const [first, ...further] = languages;
  for (const name of names) {
    const found = translationFile(name);
    if (found === undefined || !isOriginal(found.of)) continue;
    const say = (severity: Diagnostic["severity"], message: string): void =>
      void diagnostics.push({
        file: `${folder}${name}`,
        line: 1,
        column: 1,
        severity,
        rule: "translation-language",
        message,
      });
    if (found.language === first) {
      say(
        "error",
        `The file is named a translation into ${first}, which is the language content is written in. Put it into ${found.of}, or remove it.`,
      );
    } else if (!further.includes(found.language)) {
      const all = first === undefined ? [found.language] : [...languages, found.language];
      const near = further.some((one) => one.toLowerCase().startsWith(found.language.toLowerCase().slice(0, 2)));
      const instead = near
        ? insteadOf(found.language, further)
        : `Write language: [${all.join(", ")}] in club.yaml, or remove the file.`;
      say(
        "warning",
        `The file is not read: ${quote(found.language)} is not among the languages of the guide, ${oneOf(languages, "and")}. ${instead}`,
      );
    } else if (!names.includes(found.of)) {
      say("error", `There is no ${found.of} for this to be a translation of. Rename it, or remove it.`);
    } else {
      files.push(found);
    }
  }
  return { files, diagnostics };
}

interface Parsed {
  readonly yaml: YamlSource;
  readonly source: SourceText;
  readonly diagnostics: Diagnostic[];
}

/** A translation's YAML; a file that cannot be read is told and left out. */
async function readYaml(folder: string, file: string): Promise<Parsed | readonly Diagnostic[]> {
  const text = await readTextFile(folder, file);
  if (!text.ok) return text.diagnostics;
  const parsed = parseYaml(text.source);
  return parsed.ok ? { yaml: parsed.yaml, source: text.source, diagnostics: [] } : parsed.diagnostics;
}

const isFaulty = (diagnostics: readonly Diagnostic[]): boolean =>
  diagnostics.some(({ severity }) => severity === "error");

/** @param club undefined when club.yaml has mistakes itself */
export async function readClubTranslations(
  folder: string,
  files: readonly TranslationFile[],
  club: ClubFile | undefined,
): Promise<Translated<ClubTranslation>> {
  return together(files, async ({ file }) => {
    const read = await readYaml(folder, file);
    if (!("yaml" in read)) return { diagnostics: read };
    const { yaml } = read;
    const result = clubTranslationSchema.safeParse(yaml.value);
    const findings: Finding[] = result.success ? [] : findingsFromIssues(yaml.value, result.error.issues);
    if (club) {
      findings.push(
        ...checkCount(yaml.value, "cautions", club.cautions.length, false),
        ...checkCount(yaml.value, "localRules", club.localRules.length, false),
      );
    }
    const { name, place, invented, address, cautions, localRules } = result.data ?? {};
    return {
      value: result.success ? { name, place, invented, address, cautions, localRules } : undefined,
      diagnostics: findings.map(yaml.toDiagnostic),
    };
  });
}

/** @param front undefined when course.yaml has mistakes itself */
export async function readCourseTranslations(
  folder: string,
  id: string,
  files: readonly TranslationFile[],
  front: CourseFile | undefined,
  featureIds: readonly string[] | undefined,
): Promise<Translated<CourseTranslation>> {
  return together(files, async ({ file }) => {
    const read = await readYaml(folder, `${id}/${file}`);
    if (!("yaml" in read)) return { diagnostics: read };
    const { yaml } = read;
    const result = courseTranslationSchema.safeParse(yaml.value);
    const findings: Finding[] = result.success ? [] : findingsFromIssues(yaml.value, result.error.issues);
    findings.push(...checkNames(yaml.value, "features", "feature", featureIds));
    if (front) {
      findings.push(
        ...checkNames(
          yaml.value,
          "tees",
          "tee set",
          front.tees.map((tee) => tee.id),
        ),
        ...checkCount(yaml.value, "sources", front.sources.length, false),
        ...checkCount(yaml.value, "notices", front.notices.length, true),
      );
    }
    const diagnostics = findings.map(yaml.toDiagnostic);
    if (!result.success) return { diagnostics };
    const { name, description, sources, tees, features, notices } = result.data;
    const place = yaml.placeOf(["description"]);
    // Where a line of a folded text stands in the file is anyone's guess, so the field is named instead.
    if (description !== undefined)
      diagnostics.push(...checkMarkdown({ markdown: description, place }).map((found) => ({ ...found, ...place })));
    return {
      value: {
        name,
        description: description?.trim(),
        sources,
        tees,
        features,
        notices: textsOf(notices),
        place: yaml.placeOf([]),
      },
      diagnostics,
    };
  });
}

/** @param page of the first language */
export async function readHoleTranslations(
  folder: string,
  id: string,
  files: readonly TranslationFile[],
  page: HolePage,
): Promise<Translated<HoleTranslation>> {
  return together(files, async ({ file, language }) => {
    const text = await readTextFile(folder, `${id}/holes/${file}`);
    return text.ok ? readHoleTranslation(text.source, language, id, page) : { diagnostics: text.diagnostics };
  });
}

/** A translated page: a tip, and before it a front matter where there is more to translate. */
function readHoleTranslation(source: SourceText, language: string, id: string, page: HolePage): Read<HoleTranslation> {
  // Most translations are a tip and nothing else, and need no fences.
  const fenced = source.text.startsWith("---");
  const parts = fenced ? splitFrontMatter(source) : undefined;
  if (parts && !parts.ok) return { diagnostics: [parts.diagnostic] };
  const parsed = parts ? parseYaml(source, parts.start, parts.end) : undefined;
  if (parsed && !parsed.ok) return { diagnostics: parsed.diagnostics };
  const written = parsed?.yaml.value ?? {};
  const tip = parts?.tip ?? { markdown: source.text.replace(/\r\n/g, "\n").trimEnd(), place: source.placeAt(0) };
  const result = holeTranslationSchema.safeParse(written);
  const findings: Finding[] = result.success ? [] : findingsFromIssues(written, result.error.issues);
  const { front } = page;
  findings.push(
    ...checkNames(
      written,
      "features",
      "feature",
      page.written?.flatMap((feature) => feature.id ?? []),
    ),
  );
  if (front) {
    findings.push(
      ...checkNames(
        written,
        "photos",
        "photo",
        front.photos.map((photo) => photo.file),
      ),
      ...checkCount(written, "notices", front.notices.length, true),
    );
  }
  const diagnostics = [...checkMarkdown(tip), ...(parsed ? findings.map(parsed.yaml.toDiagnostic) : [])];
  if (!result.success) return { diagnostics };
  const { name, aim, photos, features, notices } = result.data;
  return {
    value: {
      name,
      aim,
      photos: Object.fromEntries(
        Object.entries(photos).map(([file, { alt, caption }]) => [`${id}/photos/${file}`, { alt, caption }]),
      ),
      features,
      notices: textsOf(notices),
      tip: tip.markdown === "" ? undefined : { ...tip, language },
      place: parsed?.yaml.placeOf([]) ?? source.placeAt(0),
    },
    diagnostics,
  };
}

const textsOf = (notices: readonly (string | null)[]): (string | undefined)[] =>
  notices.map((notice) => notice ?? undefined);

interface Read<T> {
  readonly value?: T | undefined;
  readonly diagnostics: readonly Diagnostic[];
}

async function together<T>(
  files: readonly TranslationFile[],
  read: (file: TranslationFile) => Promise<Read<T>>,
): Promise<Translated<T>> {
  const translations: Record<string, T> = {};
  const diagnostics: Diagnostic[] = [];
  for (const file of files) {
    const { value, diagnostics: found } = await read(file);
    diagnostics.push(...found);
    if (value !== undefined && !isFaulty(found)) translations[file.language] = value;
  }
  return { translations, diagnostics };
}

/** Where the guide has no words of its own in a language. @param place of `language:` */
export const languageDiagnostics = (languages: readonly string[], place: Place): Diagnostic[] =>
  languages.slice(0, 1).flatMap((language) =>
    guideLanguageOf(language) !== undefined
      ? []
      : [
          {
            ...place,
            severity: "warning",
            rule: "language-words",
            message: `The guide has no words of its own in ${quote(language)}: what it says itself will be in English.`,
          },
        ],
  );

export const isHoleOriginal = (name: string): boolean => HOLE_FILE.test(name);
