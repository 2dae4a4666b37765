/**
 * Drawings kept between builds. What is drawn depends on its inputs and on the code; both
 * are in the key, so a rebuild after a word in a tip draws nothing anew.
 */
import { deserialize, serialize } from "node:v8";
import { gunzipSync, gzipSync } from "node:zlib";
import type { Translatable } from "../../course/types.ts";
import type { MeasuredCourse, MeasuredHole } from "../../measure/types.ts";
import { cached, cachedSync, cacheKey, keep, keepSync } from "./cache.ts";
import { codeVersion } from "./code-version.ts";

/**
 * The result of a pure function, from the cache where the same was asked before.
 *
 * @param name of the function.
 * @param inputs all that the result depends on; see {@link fingerprint}.
 */
export function kept<T>(name: string, inputs: readonly unknown[], make: () => T): T {
  const version = codeVersion();
  if (version === undefined) return make();
  const key = cacheKey(version, name, ...inputs.map(fingerprint));
  const found = cachedSync(key);
  const whole = found && unpacked<T>(found);
  if (whole) return whole.value;
  const made = make();
  // Drawings shrink to a quarter at the least effort.
  keepSync(key, gzipSync(serialize(made), { level: 1 }));
  return made;
}

/** What was kept; undefined where the disk has spoilt it. */
function unpacked<T>(bytes: Uint8Array): { readonly value: T } | undefined {
  try {
    return { value: deserialize(gunzipSync(bytes)) as T };
  } catch {
    return undefined;
  }
}

/** As {@link kept}, for a picture's bytes. */
export async function keptPicture(
  name: string,
  inputs: readonly unknown[],
  make: () => Promise<Uint8Array<ArrayBuffer>>,
): Promise<Uint8Array<ArrayBuffer>> {
  const version = codeVersion();
  if (version === undefined) return make();
  const key = cacheKey(version, name, ...inputs.map(fingerprint));
  const found = await cached(key);
  if (found) return found;
  const made = await make();
  await keep(key, made);
  return made;
}

const known = new WeakMap<object, string>();

/**
 * A text that is another one for another value. A message of the words writes itself;
 * other functions are left out, being code. Where something was written in a
 * file is left out too, since nothing that is drawn depends on it.
 */
function fingerprint(value: unknown): string {
  if (typeof value !== "object" || value === null) return JSON.stringify(value) ?? "undefined";
  const found = known.get(value) ?? cacheKey(JSON.stringify(value, plain));
  known.set(value, found);
  return found;
}

function plain(key: string, value: unknown): unknown {
  if (typeof value === "number" && !Number.isFinite(value)) return `${value}`;
  if (typeof value !== "object" || value === null) return value;
  if (key === "place" && "line" in value && "column" in value) return undefined;
  if (value instanceof Map) return [...value];
  if (value instanceof Set) return [...value];
  if (ArrayBuffer.isView(value)) return bytesOf(value);
  return value;
}

/** A course's heights are some megabytes, and stand in many inputs. */
function bytesOf(view: ArrayBufferView): string {
  const found = known.get(view) ?? cacheKey(new Uint8Array(view.buffer, view.byteOffset, view.byteLength));
  known.set(view, found);
  return found;
}

const bare = new WeakMap<MeasuredHole, MeasuredHole>();

/**
 * A hole as drawings may see it: what its tip aims at is left of the tip, and the course
 * without its other holes, so that no drawing can come to depend on what is not in its key.
 */
export function drawnHole(hole: MeasuredHole): MeasuredHole {
  const found = bare.get(hole) ?? {
    ...hole,
    hole: {
      ...told(hole.hole),
      tip: { ...hole.hole.tip, language: "", markdown: aims(hole.hole.tip.markdown) },
      photos: hole.hole.photos.map((photo) => ({ ...told(photo), alt: "", caption: undefined, credit: undefined })),
      aim: undefined,
      silence: [],
      notices: [],
      translations: {},
    },
    course: {
      ...told(hole.course),
      description: "",
      holes: [],
      features: [],
      sources: [],
      credits: [],
      brought: [],
      silence: [],
      notices: [],
      translations: {},
    },
  };
  bare.set(hole, found);
  return found;
}

/** Whether something is translated shows beside a drawing and not in it. */
const told = <T extends Translatable>({ untranslated: _, ...rest }: T): Omit<T, "untranslated"> => rest;

const aims = (markdown: string): string => [...markdown.matchAll(/:aim\[[^\]]+\]/g)].map(([aim]) => aim).join(" ");

const bareCourses = new WeakMap<MeasuredCourse, MeasuredCourse>();

/** A course as drawings of all of it may see it. */
export function drawnCourse(course: MeasuredCourse): MeasuredCourse {
  const found = bareCourses.get(course) ?? {
    ...course,
    course: {
      ...told(course.course),
      description: "",
      sources: [],
      credits: [],
      brought: [],
      silence: [],
      notices: [],
      holes: [],
      translations: {},
    },
    holes: course.holes.map(drawnHole),
  };
  bareCourses.set(course, found);
  return found;
}
