/** Fetching an edition whole into its own cache, every file held to its listed hash. */
import {
  EDITION_FILE,
  filesByAddress,
  readEdition,
  sameFile,
  stampedWith,
  type Edition,
  type EditionFile,
} from "../../contract/edition.ts";
import type { KeepFault } from "./messages.ts";
import { keyOf, type Shelf } from "./shelf.ts";

export class KeepFailure extends Error {
  override readonly name = "KeepFailure";
  readonly fault: KeepFault;

  constructor(fault: KeepFault, cause?: unknown) {
    super(fault, { cause });
    this.fault = fault;
  }
}

/** Files on their way at the same time. */
const AT_ONCE = 6;

/** Asked of the server, past what the browser may remember of an earlier edition. */
async function ask(address: string): Promise<Response> {
  const response = await fetch(address, { cache: "no-cache" }).catch((cause: unknown) => {
    throw new KeepFailure("network", cause);
  });
  if (!response.ok) throw new KeepFailure("network", response.status);
  return response;
}

/** @throws KeepFailure `network` offline, `changed` when what answers is not a list of files. */
export async function fetchEdition(scope: string): Promise<Edition> {
  const response = await ask(keyOf(scope, EDITION_FILE));
  const edition = readEdition(await response.json().catch(() => undefined));
  if (edition === undefined) throw new KeepFailure("changed");
  return edition;
}

async function sha256(bytes: ArrayBuffer): Promise<string> {
  const hash = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return [...hash].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}

/**
 * One file of an edition from the network.
 *
 * @throws KeepFailure `network`, or `changed` when its bytes are not the listed ones
 */
export async function fetchFile(scope: string, address: string, file: EditionFile): Promise<Response> {
  const response = await ask(keyOf(scope, address));
  const bytes = await response.arrayBuffer().catch((cause: unknown) => {
    throw new KeepFailure("network", cause);
  });
  if (bytes.byteLength !== file.bytes || (await sha256(bytes)) !== file.sha256)
    throw new KeepFailure("changed", address);
  return answer(bytes, response, file);
}

/**
 * A kept file as the new edition lists it: itself, or the same page under the edition's
 * name; undefined when it comes out as anything else.
 */
async function underName(
  kept: Response,
  { edition, bytes }: Edition,
  file: EditionFile,
): Promise<Response | undefined> {
  if (file.unstamped === undefined) return kept;
  const page = new TextEncoder().encode(stampedWith(await kept.text(), edition, bytes)).buffer;
  return (await sha256(page)) === file.sha256 ? answer(page, kept, file) : undefined;
}

/** Bytes as a server would answer them. */
const answer = (body: ArrayBuffer, like: Response, { bytes }: EditionFile): Response =>
  new Response(body, {
    headers: {
      "Content-Type": like.headers.get("Content-Type") ?? "application/octet-stream",
      "Content-Length": `${bytes}`,
    },
  });

/**
 * Brings the guide's present edition here whole; the caller makes it current. What an
 * interrupted fetching left is used, and so is what the current edition holds alike.
 *
 * @param stopped asked between files: true ends it
 * @throws KeepFailure; files that have come stay for the next try, unless room ran out
 */
export async function fetchWhole(
  shelf: Shelf,
  edition: Edition,
  progress: (doneBytes: number) => void,
  stopped: () => boolean,
): Promise<void> {
  const { scope } = shelf;
  const current = await shelf.current();
  const kept = current && { files: filesByAddress(current), cache: await shelf.open(current.edition) };
  const cache = await shelf.open(edition.edition);
  const waiting = [...filesByAddress(edition)];
  let done = 0;

  const bring = async (address: string, file: EditionFile): Promise<void> => {
    const key = keyOf(scope, address);
    if ((await cache.match(key)) === undefined) {
      const alike = sameFile(file, kept?.files.get(address)) ? await kept?.cache.match(key) : undefined;
      await cache.put(
        key,
        (alike && (await underName(alike, edition, file))) ?? (await fetchFile(scope, address, file)),
      );
    }
    done += file.bytes;
    progress(done);
  };
  const work = async (): Promise<void> => {
    for (let next = waiting.shift(); next !== undefined && !stopped(); next = waiting.shift()) await bring(...next);
  };
  try {
    await Promise.all(Array.from({ length: AT_ONCE }, work));
    if (!stopped()) await shelf.complete(edition);
  } catch (cause) {
    // The other hands stop at their next file.
    waiting.length = 0;
    if (cause instanceof KeepFailure) throw cause;
    const full = cause instanceof DOMException && cause.name === "QuotaExceededError";
    if (full) await shelf.remove(edition.edition);
    throw new KeepFailure(full ? "full" : "refused", cause);
  }
}
