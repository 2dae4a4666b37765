/**
 * An edition: one build of the guide, as a list of its files. What a golfer keeps on the
 * phone is one edition, whole. Plain data, read alike by the build, the service worker and
 * the page.
 */
import * as attr from "./attributes.ts";

/** Beside the guide's pages. */
export const EDITION_FILE = "edition.json";

export interface EditionFile {
  readonly bytes: number;
  /** SHA-256 of the bytes, hexadecimal. */
  readonly sha256: string;
  /**
   * For a page that names its edition: the same of the page without that name, by which it is known again in
   * another edition.
   */
  readonly unstamped?: string;
}

export interface Edition {
  /** Names the edition: the start of the SHA-256 of everything in it, 16 hexadecimal digits. */
  readonly edition: string;
  /** Sum of its files. */
  readonly bytes: number;
  /** By path from the guide's root, in order: `tarvay/7/index.html`. */
  readonly files: Readonly<Record<string, EditionFile>>;
}

/** What a page carries until its edition is known; of the stamp's own length, so that sizes hold. */
export const UNSTAMPED = { edition: "0".repeat(16), bytes: "0".repeat(12) } as const;

const STAMP = new RegExp(`${attr.edition}="[0-9a-f]{16}" ${attr.editionBytes}="\\d{12}"`);

/** Whether a page has a place for its edition's name. */
export const isStamped = (page: string): boolean => STAMP.test(page);

/** A page under another edition's name and size. */
export const stampedWith = (page: string, edition: string, bytes: number | string): string =>
  page.replace(
    STAMP,
    `${attr.edition}="${edition}" ${attr.editionBytes}="${`${bytes}`.padStart(UNSTAMPED.bytes.length, "0")}"`,
  );

/** Whether two editions hold a file alike, but for the edition's name in it. */
export const sameFile = (a: EditionFile, b: EditionFile | undefined): boolean =>
  b !== undefined && (a.sha256 === b.sha256 || (a.unstamped !== undefined && a.unstamped === b.unstamped));

/** What a file is asked for by: `tarvay/7/` for `tarvay/7/index.html`. */
export const addressOf = (path: string): string => path.replace(/(^|\/)index\.html$/, "$1");

/** An edition by address instead of path. */
export const filesByAddress = ({ files }: Edition): Map<string, EditionFile> =>
  new Map(Object.entries(files).map(([path, file]) => [addressOf(path), file]));

/**
 * The address within the guide that a request asks for; undefined outside the guide.
 *
 * @param pathname as in a URL, percent-encoded
 * @param scope path the guide is served from, a slash at each end
 */
export function addressIn(pathname: string, scope: string): string | undefined {
  if (!pathname.startsWith(scope)) return undefined;
  try {
    return addressOf(decodeURIComponent(pathname.slice(scope.length)));
  } catch {
    return undefined;
  }
}

/** The bytes to fetch for an edition when another is kept already: files that the other does not hold alike. */
export function bytesToFetch(wanted: Edition, kept: Edition | undefined): number {
  return Object.entries(wanted.files).reduce(
    (sum, [path, file]) => sum + (sameFile(file, kept?.files[path]) ? 0 : file.bytes),
    0,
  );
}

const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === "object" && value !== null;

const isHash = (value: unknown): value is string => typeof value === "string" && /^[0-9a-f]{64}$/.test(value);

const isFile = (value: unknown): value is EditionFile =>
  isRecord(value) &&
  typeof value["bytes"] === "number" &&
  isHash(value["sha256"]) &&
  (value["unstamped"] === undefined || isHash(value["unstamped"]));

/** An edition from parsed JSON; undefined when it is anything else, such as a host's error page. */
export function readEdition(value: unknown): Edition | undefined {
  if (!isRecord(value)) return undefined;
  const { edition, bytes, files } = value;
  if (typeof edition !== "string" || !/^[0-9a-f]{16}$/.test(edition) || typeof bytes !== "number" || !isRecord(files))
    return undefined;
  const entries = Object.entries(files);
  return entries.every((entry): entry is [string, EditionFile] => isFile(entry[1]))
    ? { edition, bytes, files: Object.fromEntries(entries) }
    : undefined;
}
