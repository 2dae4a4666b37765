/** One course folder: course.yaml, the hole pages, and what they must agree on. */
import { join } from "node:path";
import type { Diagnostic } from "../course/diagnostic.ts";
import {
  checkHoleFeatures,
  checkRound,
  checkSharedFeatures,
  checkTeeSets,
  usableTeeIds,
  writtenTees,
} from "../course/schema/agreement.ts";
import { courseSchema, type CourseFile } from "../course/schema/course.ts";
import { checkFeatures, type CheckedFeature, type WrittenFeature } from "../course/schema/features.ts";
import { errorAt, type Finding, type Path } from "../course/schema/finding.ts";
import { findingsFromIssues, valueAt } from "../course/schema/issues.ts";
import { checkNoticeHoles } from "../course/schema/notice.ts";
import { checkViewpoints, viewpointOf } from "../course/schema/photo.ts";
import { checkWhereabouts, middle, type Located } from "../course/schema/whereabouts.ts";
import type { Course, Hole, Orthophoto, Photo, Place } from "../course/types.ts";
import { checkAsset, HEIGHTS, ORTHOPHOTO, PHOTO, type AssetKind } from "./asset.ts";
import {
  HOLE_FILE,
  holeFrom,
  placeFeatures,
  placeNotices,
  placeSilences,
  readHoleFile,
  type HolePage,
} from "./hole-file.ts";
import { withFeatures } from "./features-file.ts";
import { listFolder } from "./listing.ts";
import { broughtFiles } from "./brought-files.ts";
import { checkMarkdown } from "./markdown-text.ts";
import { readTextFile, systemFault } from "./text-file.ts";
import {
  isHoleOriginal,
  readCourseTranslations,
  readHoleTranslations,
  translationFile,
  wantedTranslations,
  type TranslationFile,
} from "./translations.ts";
import { parseYaml, type YamlSource } from "./yaml-source.ts";

export interface CourseResult {
  /** Where course.yaml names the height file, for whoever reads that file. */
  readonly heightsPlace: Place | undefined;
  /** The course with those of its holes that are in order; undefined when course.yaml is not. */
  readonly course: Course | undefined;
  readonly diagnostics: readonly Diagnostic[];
}

/** Files read at a time: enough to keep a disk busy, few enough for any limit on open files. */
const AT_ONCE = 16;

interface CoursePage {
  readonly file: string;
  readonly yaml: YamlSource | undefined;
  readonly front: CourseFile | undefined;
  readonly teeIds: readonly string[] | undefined;
  readonly written: readonly WrittenFeature[];
  readonly features: readonly CheckedFeature[];
  /** Files that features were brought from. */
  readonly brought: readonly string[];
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * @param folder the content folder.
 * @param id the course's folder in it.
 * @param languages of the guide, the content's first; undefined when club.yaml could not tell, and no translation
 *   is read then.
 */
export async function readCourseFolder(
  folder: string,
  id: string,
  languages?: readonly string[],
): Promise<CourseResult> {
  const page = await readCourseFile(folder, id);
  const { files, translations: translationFiles, diagnostics: listed } = await holeFiles(folder, id, languages);
  const holes: HolePage[] = [];
  for (let i = 0; i < files.length; i += AT_ONCE) {
    holes.push(...(await Promise.all(files.slice(i, i + AT_ONCE).map((file) => readHoleFile(folder, file)))));
  }
  const diagnostics: Diagnostic[] = [...page.diagnostics, ...listed, ...holes.flatMap((hole) => hole.diagnostics)];
  const courseTranslated = await courseTranslations(folder, id, page, languages);
  diagnostics.push(...courseTranslated.diagnostics);
  const faulty = new Set(diagnostics.filter(({ severity }) => severity === "error").map(({ file }) => file));
  const add = (found: readonly Diagnostic[]): void => {
    diagnostics.push(...found);
    for (const { file, severity } of found) if (severity === "error") faulty.add(file);
  };

  const context = { teeIds: page.teeIds, sharedIds: new Set(page.written.flatMap(({ id: own }) => own ?? [])) };
  for (const hole of holes) {
    if (hole.yaml && hole.written)
      add(checkHoleFeatures(hole.written, hole.card, context).map(hole.yaml.toDiagnostic));
  }
  add(whereabouts([page, ...holes]));
  add(round(page, holes, listed.length === 0));
  add(noticeHoles(page, holes));
  const photos = new Map<string, readonly Photo[]>();
  for (const hole of holes) {
    const { found, diagnostics: missing } = await holePhotos(folder, id, hole, page);
    photos.set(hole.file, found);
    add(missing);
  }

  const translations = new Map<string, Hole["translations"]>();
  for (const hole of holes) {
    const own = translationFiles.filter(({ of }) => hole.file.endsWith(`/${of}`));
    const translated = await readHoleTranslations(folder, id, own, hole);
    translations.set(hole.file, translated.translations);
    diagnostics.push(...translated.diagnostics);
  }

  const sound = holes.flatMap((hole) =>
    faulty.has(hole.file)
      ? []
      : (holeFrom(hole, photos.get(hole.file) ?? [], translations.get(hole.file) ?? {}) ?? []),
  );
  sound.sort((a, b) => a.number - b.number);
  const course = faulty.has(page.file) ? undefined : courseFrom(id, page, sound, courseTranslated.translations);
  return { course, heightsPlace: page.yaml?.placeOf(["ground", "heights"]), diagnostics };
}

async function readCourseFile(folder: string, id: string): Promise<CoursePage> {
  const file = `${id}/course.yaml`;
  const nothing = {
    file,
    yaml: undefined,
    front: undefined,
    teeIds: undefined,
    written: [],
    features: [],
    brought: [],
  };
  const text = await readTextFile(folder, file);
  if (!text.ok) {
    if (!text.missing) return { ...nothing, diagnostics: text.diagnostics };
    const misnamed = (await listFolder(join(folder, id)).catch(() => [])).find(({ name }) =>
      /^course\.(ya?ml|json|md|txt)$/i.test(name),
    );
    const advice = misnamed ? `Rename ${misnamed.name} to course.yaml.` : `Write ${file}.`;
    return {
      ...nothing,
      diagnostics: [
        {
          file,
          line: 1,
          column: 1,
          severity: "error",
          rule: "file-missing",
          message: `There is no course.yaml in ${id}/: expected the course's name and tee sets in it. ${advice}`,
        },
      ],
    };
  }
  const parsed = parseYaml(text.source);
  if (!parsed.ok) return { ...nothing, diagnostics: parsed.diagnostics };
  const { yaml, diagnostics: besides } = await withFeatures(folder, file, parsed.yaml);
  const findings: Finding[] = [];
  const result = courseSchema.safeParse(yaml.value);
  if (!result.success) findings.push(...findingsFromIssues(yaml.value, result.error.issues));
  const shared = valueAt(yaml.value, ["features"]);
  const features =
    shared === undefined ? { features: [], written: [], findings: [] } : checkFeatures(shared, ["features"]);
  findings.push(...features.findings, ...checkSharedFeatures(features.written));
  const tees = writtenTees(yaml.value);
  findings.push(...checkTeeSets(tees));
  const diagnostics: Diagnostic[] = [...besides];
  if (result.success) {
    diagnostics.push(
      ...checkMarkdown({ markdown: result.data.description, place: yaml.placeOf(["description"]) })
        // Where a line of a folded text stands in the file is anyone's guess, so the field is named instead.
        .map((diagnostic) => ({ ...diagnostic, ...yaml.placeOf(["description"]) })),
    );
    const { heights, photo } = result.data.ground ?? {};
    const asset = async (name: string | undefined, kind: AssetKind, path: Path): Promise<void> => {
      const fault = name === undefined ? undefined : await checkAsset(join(folder, id), id, name, kind);
      if (fault) findings.push(errorAt(path, fault.rule, fault.message));
    };
    await asset(heights, HEIGHTS, ["ground", "heights"]);
    if (typeof photo === "string") await asset(photo, ORTHOPHOTO, ["ground", "photo"]);
    else await asset(photo?.file, ORTHOPHOTO, ["ground", "photo", "file"]);
  }
  return {
    file,
    yaml,
    front: result.success ? result.data : undefined,
    teeIds: usableTeeIds(tees),
    written: features.written,
    features: features.features,
    brought: await broughtFiles(folder, id),
    diagnostics: [...diagnostics, ...findings.map(yaml.toDiagnostic)],
  };
}

/** Folders of a course that are read. */
const OWN_FOLDERS = ["holes", "photos", "ground"];

/** The hole pages of a course in order, and a word about files that look like one but are not. */
async function holeFiles(
  folder: string,
  id: string,
  languages: readonly string[] | undefined,
): Promise<{ files: string[]; translations: TranslationFile[]; diagnostics: Diagnostic[] }> {
  const holes = `${id}/holes`;
  const at = (file: string): Place => ({ file, line: 1, column: 1 });
  const linked = (await listFolder(join(folder, id)).catch(() => [])).filter(
    ({ name, kind }) => kind === "link" && OWN_FOLDERS.includes(name),
  );
  if (linked.length > 0) {
    return {
      files: [],
      translations: [],
      diagnostics: linked.map(({ name }) => ({
        ...at(`${id}/course.yaml`),
        severity: "error",
        rule: "file-link",
        message: `The folder ${id}/${name}/ is a link to another place, and content is only read from its own folder. Put the folder itself here.`,
      })),
    };
  }
  let entries;
  try {
    entries = await listFolder(join(folder, holes));
  } catch (error) {
    const message = `The folder ${holes}/ cannot be read: ${systemFault(error)}. Write a page for each hole, such as ${holes}/01-name.md.`;
    return {
      files: [],
      translations: [],
      diagnostics: [{ ...at(`${id}/course.yaml`), severity: "error", rule: "folder-missing", message }],
    };
  }
  const files: string[] = [];
  const diagnostics: Diagnostic[] = [];
  for (const { name, kind } of entries) {
    if (HOLE_FILE.test(name)) {
      files.push(`${holes}/${name}`);
      continue;
    }
    if (kind === "folder") {
      const below = (await listFolder(join(folder, holes, name)).catch(() => [])).find((entry) =>
        looksLikeHole(entry.name),
      );
      if (below)
        diagnostics.push({
          ...at(`${holes}/${name}/${below.name}`),
          severity: "error",
          rule: "file-name",
          message: `The page is not read: it lies in a folder below ${holes}/. Move it to ${holes}/.`,
        });
      continue;
    }
    if (isTranslation(name) || !looksLikeHole(name)) continue;
    const number = /^(\d{1,2})(?!\d)/.exec(name)?.[1];
    const message =
      number === undefined
        ? `The file is not read: a hole page's name starts with the hole's number. Rename it, for example to 07-${slugOf(name)}.md.`
        : `The file is not read: a hole page is named with lower-case words joined by hyphens and ends in .md. Rename it to ${[number, slugOf(name.slice(number.length))].filter(Boolean).join("-")}.md.`;
    // A page that somebody wrote for a hole must not go missing; notes that lie beside may stay.
    const isPage = number !== undefined || (await startsLikePage(folder, `${holes}/${name}`));
    diagnostics.push({
      ...at(`${holes}/${name}`),
      severity: isPage ? "error" : "warning",
      rule: "file-name",
      message,
    });
  }
  if (files.length === 0 && diagnostics.length === 0) {
    diagnostics.push({
      ...at(`${id}/course.yaml`),
      severity: "error",
      rule: "hole-missing",
      message: `There are no hole pages in ${holes}/. Write one for each hole, such as ${holes}/01-name.md.`,
    });
  }
  const translated =
    languages === undefined
      ? undefined
      : wantedTranslations(
          `${holes}/`,
          entries.map(({ name }) => name),
          isHoleOriginal,
          languages,
        );
  return {
    files,
    translations: translated?.files ?? [],
    diagnostics: [...diagnostics, ...(translated?.diagnostics ?? [])],
  };
}

async function startsLikePage(folder: string, file: string): Promise<boolean> {
  const text = await readTextFile(folder, file);
  return text.ok && text.source.text.startsWith("---");
}

const isTranslation = (name: string): boolean => {
  const found = translationFile(name);
  return found !== undefined && isHoleOriginal(found.of);
};

async function courseTranslations(
  folder: string,
  id: string,
  { front, written }: CoursePage,
  languages: readonly string[] | undefined,
): ReturnType<typeof readCourseTranslations> {
  const names = (await listFolder(join(folder, id)).catch(() => [])).map(({ name }) => name);
  const { files, diagnostics } =
    languages === undefined
      ? { files: [], diagnostics: [] }
      : wantedTranslations(`${id}/`, names, (name) => name === "course.yaml", languages);
  const read = await readCourseTranslations(
    folder,
    id,
    files,
    front,
    written.flatMap(({ id: own }) => own ?? []),
  );
  return { translations: read.translations, diagnostics: [...diagnostics, ...read.diagnostics] };
}

const NOT_HOLES = new Set(["readme", "notes", "license", "index"]);

const looksLikeHole = (name: string): boolean => {
  const [stem, ending] = [name.replace(/\.[^.]*$/, "").toLowerCase(), /\.[^.]*$/.exec(name)?.[0].toLowerCase() ?? ""];
  if (NOT_HOLES.has(stem)) return false;
  return (
    [".md", ".markdown", ".mdown", ".mkd", ".mdx"].includes(ending) ||
    (/^\d/.test(name) && [".txt", ".yaml", ".yml", ""].includes(ending))
  );
};

const slugOf = (name: string): string =>
  name
    .replace(/\.[^.]*$/, "")
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-+|-+$/g, "");

function whereabouts(pages: readonly (HolePage | CoursePage)[]): Diagnostic[] {
  const centre = middle(pages.flatMap(({ features }) => features));
  if (centre === undefined) return [];
  return pages.flatMap(({ yaml, features }) =>
    yaml === undefined ? [] : features.flatMap((feature) => checkWhereabouts(feature, centre).map(yaml.toDiagnostic)),
  );
}

function round(page: CoursePage, holes: readonly HolePage[], allNamed: boolean): Diagnostic[] {
  const numbered = holes.flatMap(({ file, number, named, strokeIndex }) =>
    number === undefined ? [] : [{ file, number, named, strokeIndex }],
  );
  const complete = allNamed && numbered.length === holes.length && holes.length > 0;
  return checkRound(numbered, page.file, complete).map(({ file, ...finding }) => {
    const yaml = file === page.file ? page.yaml : holes.find((hole) => hole.file === file)?.yaml;
    return (
      yaml?.toDiagnostic(finding) ?? {
        file,
        line: 1,
        column: 1,
        severity: finding.severity,
        rule: finding.rule,
        message: finding.message,
      }
    );
  });
}

/** Holes that notices name, once it is known which there are. */
function noticeHoles({ yaml }: CoursePage, holes: readonly HolePage[]): Diagnostic[] {
  const numbers = holes.map(({ number }) => number);
  if (yaml === undefined || numbers.length === 0 || numbers.includes(undefined)) return [];
  return checkNoticeHoles(yaml.value, new Set(numbers.filter((number) => number !== undefined))).map(
    yaml.toDiagnostic,
  );
}

async function holePhotos(
  folder: string,
  id: string,
  { front, yaml, written, features }: HolePage,
  page: CoursePage,
): Promise<{ found: Photo[]; diagnostics: Diagnostic[] }> {
  const found: Photo[] = [];
  const diagnostics: Diagnostic[] = [];
  const photos = valueAt(yaml?.value, ["photos"]);
  if (yaml === undefined || !Array.isArray(photos)) return { found, diagnostics };
  const shown = `${id}/photos`;
  for (const [i, photo] of photos.entries()) {
    const file = valueAt(photo, ["file"]);
    if (typeof file !== "string" || file === "") continue;
    const fault = await checkAsset(join(folder, shown), shown, file, PHOTO);
    if (fault) diagnostics.push(yaml.toDiagnostic(errorAt(["photos", i, "file"], fault.rule, fault.message)));
  }
  const all = [...(written ?? []), ...page.written];
  const ids = written === undefined || page.yaml === undefined ? undefined : all.flatMap(({ id: own }) => own ?? []);
  diagnostics.push(...checkViewpoints(yaml.value, ids).map(yaml.toDiagnostic));
  const centre = middle([...features, ...page.features]);
  for (const [i, entry] of (front?.photos ?? []).entries()) {
    const taken = viewpointOf(entry);
    if (taken?.at !== undefined && centre !== undefined) {
      const stood: Located = {
        id: "at",
        path: ["photos", i, "at"],
        geometry: { type: "Point", coordinates: [...taken.at] },
      };
      diagnostics.push(...checkWhereabouts(stood, centre).map(yaml.toDiagnostic));
    }
    const { file, alt, caption, credit, focus } = entry;
    found.push({
      file: `${shown}/${file}`,
      alt,
      caption,
      credit,
      focus,
      taken,
      place: yaml.placeOf(["photos", i, "file"]),
    });
  }
  return { found, diagnostics };
}

function orthophotoFrom(
  id: string,
  written: NonNullable<CourseFile["ground"]>["photo"],
  yaml: YamlSource,
): Orthophoto | undefined {
  if (written === undefined) return undefined;
  const { file, crs, corners } =
    typeof written === "string" ? { file: written, crs: undefined, corners: undefined } : written;
  return { file: `${id}/${file}`, crs, corners, place: yaml.placeOf(["ground", "photo"]) };
}

function courseFrom(
  id: string,
  { front, yaml, features, brought }: CoursePage,
  holes: readonly Hole[],
  translations: Course["translations"],
): Course | undefined {
  if (front === undefined || yaml === undefined) return undefined;
  return {
    translations,
    id,
    name: front.name,
    description: front.description.trim(),
    surveyed: front.surveyed,
    sources: front.sources.map((source) =>
      typeof source === "string" ? source : (source.text ?? source.files.join(", ")),
    ),
    credits: front.sources.flatMap((source, i) =>
      typeof source === "string"
        ? []
        : [
            {
              source: i,
              text: source.text,
              licence: source.licence,
              link: source.link,
              files: source.files,
              place: yaml.placeOf(["sources", i]),
            },
          ],
    ),
    brought,
    defaultTee: front.defaultTee,
    corridorMetres: front.corridorMetres,
    tees: front.tees.map((tee) => ({
      ...tee,
      ratings: tee.ratings.map((rating) => ({ ...rating, bogeyRating: rating.bogeyRating })),
    })),
    features: placeFeatures(features, yaml),
    notices: placeNotices(front.notices, yaml),
    silence: placeSilences(front.silence, yaml),
    holes,
    orthophoto: orthophotoFrom(id, front.ground?.photo, yaml),
    ground:
      front.ground?.heights === undefined
        ? undefined
        : { file: `${id}/${front.ground.heights}`, crs: front.ground.crs },
  };
}
