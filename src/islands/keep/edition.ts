/**
 * An edition: one build of the guide, as a list of its files. What a golfer keeps on the
 * phone is one edition, whole. Plain data, read alike by the build, the service worker and
 * the page.
 */

/** Beside the guide's pages. */
export const EDITION_FILE = "edition.json";

export interface EditionFile {
  readonly bytes: number;
  /** SHA-256 of the bytes, hexadecimal. */
  readonly sha256: string;
}

export interface Edition {
  /** Names the edition: the start of the SHA-256 of everything in it, 16 hexadecimal digits. */
  readonly edition: string;
  /** Sum of its files. */
  readonly bytes: number;
  /** By path from the guide's root, in order: `tarvay/7/index.html`. */
  readonly files: Readonly<Record<string, EditionFile>>;
}

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
  const same = (path: string, { sha256 }: EditionFile): boolean => kept?.files[path]?.sha256 === sha256;
  return Object.entries(wanted.files).reduce((sum, [path, file]) => sum + (same(path, file) ? 0 : file.bytes), 0);
}

const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === "object" && value !== null;

const isFile = (value: unknown): value is EditionFile =>
  isRecord(value) && typeof value["bytes"] === "number" && typeof value["sha256"] === "string" && /^[0-9a-f]{64}$/.test(value["sha256"]);

/** An edition from parsed JSON; undefined when it is anything else, such as a host's error page. */
export function readEdition(value: unknown): Edition | undefined {
  if (!isRecord(value)) return undefined;
  const { edition, bytes, files } = value;
  if (typeof edition !== "string" || !/^[0-9a-f]{16}$/.test(edition) || typeof bytes !== "number" || !isRecord(files)) return undefined;
  const entries = Object.entries(files);
  return entries.every((entry): entry is [string, EditionFile] => isFile(entry[1])) ? { edition, bytes, files: Object.fromEntries(entries) } : undefined;
}
