/**
 * What the parts of a course must agree on: each hole once, each stroke index once, a
 * marker and a card length for each tee, one id for one feature.
 */
import type { WrittenFeature } from "./features.ts";
import { SLUG } from "./fields.ts";
import { errorAt, warningAt, type Finding, type Path } from "./finding.ts";
import type { HoleFile } from "./hole.ts";
import { valueAt } from "./issues.ts";
import { count, insteadOf, oneOf } from "./wording.ts";

/** Checks on one hole against the course's tee sets and shared features. */
export interface HoleContext {
  /** Tee set ids; undefined when course.yaml could not be read, so nothing can be said of them. */
  readonly teeIds: readonly string[] | undefined;
  readonly sharedIds: ReadonlySet<string>;
}

/**
 * One line of play and one green, and tee markers that agree with the card.
 *
 * @param card the tee sets on the card; undefined where there is no card to speak of.
 */
export function checkHoleFeatures(
  written: readonly WrittenFeature[],
  card: readonly string[] | undefined,
  { teeIds, sharedIds }: HoleContext,
): Finding[] {
  const findings: Finding[] = [];
  const featuresPath: Path = ["features"];
  for (const [golf, what, write] of [
    [
      "hole",
      "line of play",
      "{ type: Feature, id: line, properties: { golf: hole }, geometry: { type: LineString, ... } }",
    ],
    ["green", "green", "{ type: Feature, id: green, properties: { golf: green }, geometry: { type: Polygon, ... } }"],
  ] as const) {
    const found = written.filter((feature) => feature.golf === golf);
    if (found.length === 0)
      findings.push(
        errorAt(
          featuresPath,
          "hole-incomplete",
          `The hole has no ${what} (golf: ${golf}): expected exactly one. Write - ${write}.`,
          "key",
        ),
      );
    for (const extra of found.slice(1)) {
      findings.push(
        errorAt(
          [...extra.path, "properties", "golf"],
          "hole-doubled-part",
          `${extra.id ?? "A feature"} is a second ${what} (golf: ${golf}), beside ${found[0]!.id ?? "the first"}: expected exactly one. Remove one of them.`,
        ),
      );
    }
  }
  findings.push(...doubledIds(written));
  for (const { id, path } of written) {
    if (id !== undefined && sharedIds.has(id)) {
      findings.push(
        errorAt(
          [...path, "id"],
          "feature-id-doubled",
          `The id ${id} is already a shared feature of the course (course.yaml). Write another id here.`,
        ),
      );
    }
  }
  findings.push(...checkMarkers(written, card, teeIds));
  return findings;
}

/** Ids written more than once in one file. */
export function doubledIds(written: readonly WrittenFeature[]): Finding[] {
  const seen = new Set<string>();
  const findings: Finding[] = [];
  for (const { id, path } of written) {
    if (id === undefined) continue;
    if (seen.has(id))
      findings.push(
        errorAt(
          [...path, "id"],
          "feature-id-doubled",
          `The id ${id} is used twice in this file. Write another id for one of them, such as ${id}-2.`,
        ),
      );
    seen.add(id);
  }
  return findings;
}

function checkMarkers(
  written: readonly WrittenFeature[],
  card: readonly string[] | undefined,
  teeIds: readonly string[] | undefined,
): Finding[] {
  const findings: Finding[] = [];
  const unknown = (id: string): string =>
    `There is no tee set ${JSON.stringify(id)} in course.yaml. ${insteadOf(id, teeIds ?? [])}`;
  const markers = new Set<string>();
  for (const { golf, tee, isPoint, path, id } of written) {
    if (golf !== "tee" || tee === undefined) continue;
    const teePath = [...path, "properties", "tee"];
    if (teeIds !== undefined && !teeIds.includes(tee)) {
      findings.push(errorAt(teePath, "tee-unknown", `${id ?? "A tee"}: ${unknown(tee)}`));
      continue;
    }
    if (!isPoint) continue;
    if (markers.has(tee))
      findings.push(
        errorAt(
          teePath,
          "tee-marker-doubled",
          `${id ?? "A marker"} is a second marker of the ${tee} tees: expected one. Remove one of them.`,
        ),
      );
    else if (card !== undefined && !card.includes(tee)) {
      findings.push(
        errorAt(
          teePath,
          "tee-without-card",
          `The ${tee} tees have a marker but no length on the card. Write card: { ${tee}: ___ } with the length in yards, or remove the marker.`,
        ),
      );
    }
    markers.add(tee);
  }
  for (const tee of card ?? []) {
    if (teeIds !== undefined && !teeIds.includes(tee))
      findings.push(errorAt(["card", tee], "tee-unknown", unknown(tee), "key"));
    else if (!markers.has(tee)) {
      findings.push(
        errorAt(
          ["card", tee],
          "card-without-tee",
          `The card has a length for the ${tee} tees, but the hole has no marker for them. Write - { type: Feature, id: tee-${tee}, properties: { golf: tee, tee: ${tee} }, geometry: { type: Point, ... } }, or take ${tee} off the card.`,
          "key",
        ),
      );
    }
  }
  if (card !== undefined && card.length === 0) {
    findings.push(
      errorAt(
        ["card"],
        "card-empty",
        `The card is empty: expected a length for each tee set the hole is played from. Write card: { ${(teeIds ?? ["yellow"]).map((tee) => `${tee}: ___`).join(", ")} }.`,
      ),
    );
  }
  return findings;
}

/** Features in course.yaml that belong to a hole's own page. */
export function checkSharedFeatures(written: readonly WrittenFeature[]): Finding[] {
  const findings = doubledIds(written);
  for (const { id, golf, isPoint, path } of written) {
    if (golf === "hole" || golf === "pin" || (golf === "tee" && isPoint)) {
      const what = golf === "hole" ? "line of play" : golf === "pin" ? "pin" : "tee marker";
      findings.push(
        errorAt(
          [...path, "properties", "golf"],
          "shared-feature",
          `${id ?? "A feature"} is a ${what}, which belongs to one hole. Move it to that hole's page.`,
        ),
      );
    }
  }
  return findings;
}

/** What can be said of the tee sets of a course.yaml even when other things in it are wrong. */
export interface WrittenTees {
  /** The id of each tee set in turn, where it is a text; undefined when there is no list at all. */
  readonly ids: readonly (string | undefined)[] | undefined;
  /** The gender of each rating of each tee set. */
  readonly genders: readonly (readonly unknown[])[];
  readonly defaultTee: unknown;
}

/** Reads tee sets out of plain data without asking whether the rest is in order. */
export function writtenTees(data: unknown): WrittenTees {
  const tees = valueAt(data, ["tees"]);
  if (!Array.isArray(tees)) return { ids: undefined, genders: [], defaultTee: undefined };
  return {
    ids: tees.map((tee) => {
      const id = valueAt(tee, ["id"]);
      return typeof id === "string" ? id : undefined;
    }),
    genders: tees.map((tee) => {
      const ratings = valueAt(tee, ["ratings"]);
      return Array.isArray(ratings) ? ratings.map((rating) => valueAt(rating, ["gender"])) : [];
    }),
    defaultTee: valueAt(data, ["defaultTee"]),
  };
}

/**
 * The ids that holes may name; undefined when one of them is wrong, since every hole would
 * then be told of a mistake that is not its own.
 */
export function usableTeeIds({ ids }: WrittenTees): readonly string[] | undefined {
  const known = ids?.filter((id) => id !== undefined && SLUG.test(id)) as string[] | undefined;
  return known !== undefined &&
    known.length > 0 &&
    known.length === ids?.length &&
    new Set(known).size === known.length
    ? known
    : undefined;
}

/** Tee sets against each other and the default. */
export function checkTeeSets({ ids, genders, defaultTee }: WrittenTees): Finding[] {
  const findings: Finding[] = [];
  if (ids === undefined) return findings;
  ids.forEach((id, i) => {
    if (id !== undefined && ids.indexOf(id) < i)
      findings.push(
        errorAt(
          ["tees", i, "id"],
          "tee-doubled",
          `The tee set ${id} is written twice. Write another id for one of them.`,
        ),
      );
  });
  genders.forEach((ratings, i) => {
    ratings.forEach((gender, j) => {
      if (typeof gender === "string" && ratings.indexOf(gender) < j)
        findings.push(
          errorAt(
            ["tees", i, "ratings", j, "gender"],
            "rating-doubled",
            `The ${ids[i] ?? "same"} tees are rated twice for ${gender}: expected once each for men and women. Remove one rating.`,
          ),
        );
    });
  });
  const known = ids.filter((id) => id !== undefined);
  if (typeof defaultTee === "string" && known.length > 0 && !known.includes(defaultTee))
    findings.push(
      errorAt(
        ["defaultTee"],
        "tee-unknown",
        `defaultTee: there is no tee set ${JSON.stringify(defaultTee)} below tees. ${insteadOf(defaultTee, known)}`,
      ),
    );
  return findings;
}

/** What is known of a hole when the course is held together, whatever else is wrong with it. */
export interface NumberedHole {
  readonly file: string;
  readonly number: number;
  /** Whether the file's name agrees, or has been told already that it does not. */
  readonly named: boolean;
  readonly strokeIndex: HoleFile["strokeIndex"] | undefined;
}

export interface CourseFinding extends Finding {
  /** The file the path belongs to. */
  readonly file: string;
}

/**
 * Holes 1 to n once each, and stroke indexes 1 to n once each for men and for women.
 *
 * @param complete whether every hole file could be read; a hole is not missed when its file is merely broken.
 */
export function checkRound(holes: readonly NumberedHole[], courseFile: string, complete: boolean): CourseFinding[] {
  const findings: CourseFinding[] = [];
  const inFile = (file: string, finding: Finding): void => void findings.push({ file, ...finding });
  const byNumber = new Map<number, NumberedHole>();
  for (const hole of holes) {
    const first = byNumber.get(hole.number);
    if (!hole.named) continue;
    if (first)
      inFile(
        hole.file,
        errorAt(
          ["hole"],
          "hole-doubled",
          `Hole ${hole.number} is already in ${first.file}. Write the number of this hole, or remove one of the files.`,
        ),
      );
    else byNumber.set(hole.number, hole);
  }
  if (findings.length > 0 || holes.some(({ named }) => !named)) return findings;
  const most = Math.max(0, ...byNumber.keys());
  const missing = Array.from({ length: most }, (_, i) => i + 1).filter((n) => !byNumber.has(n));
  if (complete && missing.length > 0) {
    const one = missing.length === 1;
    inFile(
      courseFile,
      errorAt(
        [],
        "hole-missing",
        `${one ? "Hole" : "Holes"} ${oneOf(missing.map(String), "and")} of ${most} ${one ? "is" : "are"} missing. Write ${oneOf(
          missing.map((n) => `holes/${String(n).padStart(2, "0")}-name.md`),
          "and",
        )}.`,
      ),
    );
  } else if (complete && most > 0 && most !== 9 && most !== 18) {
    inFile(
      courseFile,
      warningAt(
        [],
        "hole-count",
        `The course has ${count(most, "hole")}; a round is 9 or 18. If that is meant, nothing needs doing.`,
      ),
    );
  }
  if (complete) findings.push(...checkStrokeIndexes([...byNumber.values()], most));
  return findings;
}

function checkStrokeIndexes(holes: readonly NumberedHole[], most: number): CourseFinding[] {
  const findings: CourseFinding[] = [];
  const said = new Set<string>();
  for (const gender of ["men", "women"] as const) {
    const taken = new Map<number, NumberedHole>();
    for (const hole of [...holes].sort((a, b) => a.number - b.number)) {
      const { strokeIndex, file } = hole;
      if (strokeIndex === undefined) continue;
      const both = typeof strokeIndex === "number";
      const value = both ? strokeIndex : strokeIndex[gender];
      const path: Path = both ? ["strokeIndex"] : ["strokeIndex", gender];
      const whose = both ? "" : ` for ${gender}`;
      const first = taken.get(value);
      // A number for both genders would be reported once for each.
      const say = (rule: string, message: string): void => {
        const key = `${file}:${path.join(".")}:${rule}`;
        if (!said.has(key)) findings.push({ file, ...errorAt(path, rule, message) });
        said.add(key);
      };
      if (value > most)
        say(
          "stroke-index-range",
          `strokeIndex is ${value}${whose} on a course of ${count(most, "hole")}: expected 1 to ${most}, each once.${freeIndexes(holes, gender, most)}`,
        );
      else if (first)
        say(
          "stroke-index-doubled",
          `strokeIndex ${value}${whose} is already that of hole ${first.number} (${first.file}): expected 1 to ${most}, each once.${freeIndexes(holes, gender, most)}`,
        );
      else taken.set(value, hole);
    }
  }
  return findings;
}

/** The stroke indexes no hole has; one of them is usually the one that was meant. */
function freeIndexes(holes: readonly NumberedHole[], gender: "men" | "women", most: number): string {
  const used = new Set(
    holes.map(({ strokeIndex }) => (typeof strokeIndex === "object" ? strokeIndex[gender] : strokeIndex)),
  );
  const free = Array.from({ length: most }, (_, i) => i + 1).filter((n) => !used.has(n));
  return free.length === 0 || holes.some(({ strokeIndex }) => strokeIndex === undefined)
    ? ""
    : ` Not used yet: ${oneOf(free.map(String), "and")}.`;
}
