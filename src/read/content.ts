/** A content folder as a club, or everything that is wrong with it. */
import { stat } from "node:fs/promises";
import { join } from "node:path";
import { inReadingOrder, type Diagnostic } from "../course/diagnostic.ts";
import { clubSchema, type ClubFile } from "../course/schema/club.ts";
import { slugFrom } from "../course/schema/features.ts";
import { SLUG } from "../course/schema/fields.ts";
import { findingsFromIssues } from "../course/schema/issues.ts";
import { quote } from "../course/schema/wording.ts";
import type { Club, ClubTranslation, Course, Place } from "../course/types.ts";
import { readCourseFolder } from "./course-folder.ts";
import { listFolder, type Entry } from "./listing.ts";
import { readTextFile, systemFault } from "./text-file.ts";
import { languageDiagnostics, readClubTranslations, wantedTranslations, type Translated } from "./translations.ts";
import { parseYaml } from "./yaml-source.ts";

export interface Content {
  /** The whole club; undefined as long as anything in it is an error. */
  readonly club: Club | undefined;
  /** Courses and holes that are in order, so that later checks can speak of them in the same run. */
  readonly sound: readonly Course[];
  /** By course id: where course.yaml names the height file, for what only reading that file can tell. */
  readonly heightsPlaces: ReadonlyMap<string, Place>;
  /** In reading order. Files are named relative to the content folder. */
  readonly diagnostics: readonly Diagnostic[];
}

const CLUB_FILE = "club.yaml";

/**
 * Reads and checks a content folder. Mistakes in content are diagnostics, all of them in one
 * run; nothing is thrown for them.
 */
export async function readContent(folder: string): Promise<Content> {
  const diagnostics: Diagnostic[] = [];
  const say = (file: string, rule: string, message: string, severity: Diagnostic["severity"] = "error"): void =>
    void diagnostics.push({ file, line: 1, column: 1, severity, rule, message });
  let entries: readonly Entry[];
  try {
    if (!(await stat(folder)).isDirectory()) {
      say(
        CLUB_FILE,
        "folder-missing",
        `The content folder ${folder} is a file. Name the folder that holds ${CLUB_FILE}.`,
      );
      return { club: undefined, sound: [], heightsPlaces: new Map(), diagnostics };
    }
    entries = await listFolder(folder);
  } catch (error) {
    say(
      CLUB_FILE,
      "folder-missing",
      `The content folder ${folder} cannot be read: ${systemFault(error)}. Name the folder that holds ${CLUB_FILE}.`,
    );
    return { club: undefined, sound: [], heightsPlaces: new Map(), diagnostics };
  }
  const { club, diagnostics: clubDiagnostics } = await readClubFile(folder, entries);
  diagnostics.push(...clubDiagnostics);
  const languages = club && languagesOf(club);
  const { translations, diagnostics: translated } = await clubTranslations(folder, entries, club);
  diagnostics.push(...translated);
  const sound: Course[] = [];
  const heightsPlaces = new Map<string, Place>();
  let folders = 0;
  for (const { name, kind } of entries) {
    if (kind === "file" || kind === "other" || !(await isCourse(join(folder, name)))) continue;
    folders++;
    if (kind === "link") {
      say(
        `${name}/course.yaml`,
        "file-link",
        `The folder ${name}/ is a link to another place, and content is only read from its own folder. Put the folder itself here.`,
      );
      continue;
    }
    if (!SLUG.test(name)) {
      say(
        `${name}/course.yaml`,
        "folder-name",
        `The course's folder is named ${quote(name)}, which is part of its address: expected lower-case words joined by hyphens. Rename it to ${slugFrom(name) || "course"}.`,
      );
    }
    if (languages?.slice(1).some((language) => language.toLowerCase() === name)) {
      say(
        `${name}/course.yaml`,
        "folder-name",
        `The course's folder is named ${quote(name)}, as is the folder of the guide's pages in that language. Rename it.`,
      );
    }
    const result = await readCourseFolder(folder, name, languages);
    diagnostics.push(...result.diagnostics);
    if (result.course) sound.push(result.course);
    if (result.heightsPlace) heightsPlaces.set(name, result.heightsPlace);
  }
  if (folders === 0)
    say(
      CLUB_FILE,
      "course-missing",
      "There is no course folder beside club.yaml. Make a folder with the course's address as its name, and write course.yaml and holes/01-name.md in it.",
    );
  const ordered = inReadingOrder(diagnostics);
  const failed = ordered.some(({ severity }) => severity === "error");
  return {
    club: failed || club === undefined ? undefined : { ...clubFrom(club, translations), courses: sound },
    sound,
    heightsPlaces,
    diagnostics: ordered,
  };
}

/** A folder is a course when it has what a course has; others (drafts, pictures) are the club's own business. */
async function isCourse(path: string): Promise<boolean> {
  try {
    return (await listFolder(path)).some(({ name }) => /^(?:course\.ya?ml|holes)$/i.test(name));
  } catch {
    return false;
  }
}

async function readClubFile(
  folder: string,
  entries: readonly Entry[],
): Promise<{ club: ClubFile | undefined; diagnostics: readonly Diagnostic[] }> {
  const text = await readTextFile(folder, CLUB_FILE);
  if (!text.ok) {
    if (!text.missing) return { club: undefined, diagnostics: text.diagnostics };
    const misnamed = entries.find(({ name }) => /^club\.(ya?ml|json|md|txt)$/i.test(name));
    const advice = misnamed
      ? `Rename ${misnamed.name} to ${CLUB_FILE}.`
      : `Write ${CLUB_FILE} with at least name: and the club's name.`;
    return {
      club: undefined,
      diagnostics: [
        {
          file: CLUB_FILE,
          line: 1,
          column: 1,
          severity: "error",
          rule: "file-missing",
          message: `There is no ${CLUB_FILE} in the content folder. ${advice}`,
        },
      ],
    };
  }
  const parsed = parseYaml(text.source);
  if (!parsed.ok) return { club: undefined, diagnostics: parsed.diagnostics };
  const result = clubSchema.safeParse(parsed.yaml.value);
  if (result.success)
    return {
      club: result.data,
      diagnostics: languageDiagnostics(languagesOf(result.data), parsed.yaml.placeOf(["language"])),
    };
  return {
    club: undefined,
    diagnostics: findingsFromIssues(parsed.yaml.value, result.error.issues).map(parsed.yaml.toDiagnostic),
  };
}

/** The language content is written in, then the others the guide is published in. */
const languagesOf = ({ language }: Pick<ClubFile, "language">): readonly string[] =>
  typeof language === "string" ? [language] : language;

async function clubTranslations(
  folder: string,
  entries: readonly Entry[],
  club: ClubFile | undefined,
): Promise<Translated<ClubTranslation>> {
  if (club === undefined) return { translations: {}, diagnostics: [] };
  const { files, diagnostics } = wantedTranslations(
    "",
    entries.map(({ name }) => name),
    (name) => name === CLUB_FILE,
    languagesOf(club),
  );
  const read = await readClubTranslations(folder, files, club);
  return { translations: read.translations, diagnostics: [...diagnostics, ...read.diagnostics] };
}

const clubFrom = ({ contact, ...club }: ClubFile, translations: Club["translations"]): Omit<Club, "courses"> => ({
  ...club,
  language: languagesOf(club)[0]!,
  languages: languagesOf(club),
  translations,
  place: club.place,
  invented: club.invented,
  contact: {
    email: contact?.email,
    telephone: contact?.telephone,
    website: contact?.website,
    address: contact?.address,
  },
});
