/** What is kept of an edition on a device: exactly what the edition lists, whole or not at all. */
import { createHash } from "node:crypto";
import { afterEach, describe, expect, test, vi } from "vitest";
import {
  addressIn,
  isStamped,
  stampedWith,
  UNSTAMPED,
  type Edition,
  type EditionFile,
} from "../../src/contract/edition.ts";
import { edition as editionName, editionBytes } from "../../src/contract/attributes.ts";
import { fetchEdition, fetchFile, fetchWhole, KeepFailure } from "../../src/islands/keep/fetching.ts";
import { keyOf, shelf as openShelf } from "../../src/islands/keep/shelf.ts";
import { damaged, seeded } from "../faults/random.ts";
import { memoryCaches } from "../support/cache-storage.ts";

const SCOPE = "/guides/links/";
const sha256 = (bytes: Uint8Array | string): string => createHash("sha256").update(bytes).digest("hex");

/** A guide's files as a host has them, and the list of them. */
interface Published {
  readonly list: Edition;
  readonly files: ReadonlyMap<string, Uint8Array>;
}

const page = (text: string): string =>
  `<html ${editionName}="${UNSTAMPED.edition}" ${editionBytes}="${UNSTAMPED.bytes}"><main>${text}</main>`;

/** Publishes texts by path; pages carry the edition's name, as the build writes them. */
function publish(texts: Readonly<Record<string, string>>): Published {
  const id = sha256(JSON.stringify(texts)).slice(0, 16);
  const bytes = Object.values(texts).reduce((sum, text) => sum + Buffer.byteLength(text), 0);
  const files = new Map<string, Uint8Array>();
  const list: Record<string, EditionFile> = {};
  for (const [path, text] of Object.entries(texts)) {
    const named = isStamped(text) ? stampedWith(text, id, bytes) : text;
    files.set(path, Buffer.from(named));
    list[path] = {
      bytes: Buffer.byteLength(named),
      sha256: sha256(named),
      ...(isStamped(text) ? { unstamped: sha256(text) } : {}),
    };
  }
  return { list: { edition: id, bytes, files: list }, files };
}

/** The network: a published guide, what is wrong with it, and what was asked of it. */
function network(
  { list, files }: Published,
  spoil: (path: string, bytes: Uint8Array) => Response | Uint8Array | Error = (_, bytes) => bytes,
): string[] {
  const asked: string[] = [];
  vi.stubGlobal("fetch", (address: string) => {
    const path = addressIn(address, SCOPE) ?? "";
    asked.push(path);
    if (path === "edition.json") return Promise.resolve(Response.json(list));
    const file = path === "" || path.endsWith("/") ? `${path}index.html` : path;
    const bytes = files.get(file);
    if (bytes === undefined) return Promise.resolve(new Response("Not here", { status: 404 }));
    const answer = spoil(file, bytes);
    if (answer instanceof Error) return Promise.reject(answer);
    return Promise.resolve(
      answer instanceof Response
        ? answer
        : new Response(Buffer.from(answer), { headers: { "Content-Type": "text/plain" } }),
    );
  });
  return asked;
}
afterEach(() => vi.unstubAllGlobals());

const FIRST = publish({
  "index.html": page("cover"),
  "tarvay/1/index.html": page("one"),
  "tarvay/2/index.html": page("two"),
  "a/düne 1.jpg": "picture",
  "b.css": "style",
  "c.js": "script",
});
/** One page and one other file say something else. */
const SECOND = publish({
  "index.html": page("cover"),
  "tarvay/1/index.html": page("one"),
  "tarvay/2/index.html": page("two, changed"),
  "a/düne 1.jpg": "picture",
  "b.css": "another style",
  "c.js": "script",
});

const nothing = (): void => undefined;
const never = (): boolean => false;
const faultOf = (work: Promise<unknown>): Promise<string> =>
  work.then(
    () => "none",
    (error: unknown) => (error instanceof KeepFailure ? error.fault : String(error)),
  );

async function whatIsKept(shelf: ReturnType<typeof openShelf>, { list }: Published): Promise<Record<string, string>> {
  const cache = await shelf.open(list.edition);
  const kept: Record<string, string> = {};
  for (const path of Object.keys(list.files)) {
    const found = await cache.match(keyOf(SCOPE, path.replace(/(^|\/)index\.html$/, "$1")));
    if (found) kept[path] = sha256(new Uint8Array(await found.arrayBuffer()));
  }
  return kept;
}
const hashesOf = ({ list }: Published): Record<string, string> =>
  Object.fromEntries(Object.entries(list.files).map(([path, file]) => [path, file.sha256]));

describe("an edition fetched", () => {
  test("is kept whole, file by file as listed, and told of as it comes", async () => {
    const shelf = openShelf(SCOPE, memoryCaches());
    network(FIRST);
    const told: number[] = [];
    expect(await fetchEdition(SCOPE)).toEqual(FIRST.list);
    await fetchWhole(shelf, FIRST.list, (bytes) => void told.push(bytes), never);
    expect(await whatIsKept(shelf, FIRST)).toEqual(hashesOf(FIRST));
    expect(await shelf.list(FIRST.list.edition)).toEqual(FIRST.list);
    expect(told).toEqual([...told].sort((a, b) => a - b));
    expect(told.at(-1)).toBe(FIRST.list.bytes);
    // Fetching makes nothing current by itself.
    expect(await shelf.current()).toBeUndefined();
  });

  test("is refused for any file that is not what is listed, however it differs, and does not count as whole", async () => {
    const random = seeded(11);
    for (const path of FIRST.files.keys()) {
      for (let i = 0; i < 20; i++) {
        let other: Uint8Array = damaged(FIRST.files.get(path)!, random);
        // One in four keeps its length: only the hash tells.
        if (i % 4 === 0)
          other = FIRST.files.get(path)!.map((byte, at, all) => (at === i % all.length ? byte ^ 1 : byte));
        if (Buffer.from(other).equals(FIRST.files.get(path)!)) continue;
        const shelf = openShelf(SCOPE, memoryCaches());
        network(FIRST, (asked, bytes) => (asked === path ? other : bytes));
        expect(await faultOf(fetchWhole(shelf, FIRST.list, nothing, never)), path).toBe("changed");
        expect(await shelf.list(FIRST.list.edition)).toBeUndefined();
        expect(Object.keys(await whatIsKept(shelf, FIRST))).not.toContain(path);
        expect(
          await faultOf(fetchFile(SCOPE, path.replace(/(^|\/)index\.html$/, "$1"), FIRST.list.files[path]!)),
        ).toBe("changed");
      }
    }
  });

  test.each([
    [
      "a server's error, though its page has the right bytes",
      (bytes: Uint8Array) => new Response(Buffer.from(bytes), { status: 503 }),
    ],
    ["no network", () => new TypeError("no network")],
  ])("fails by the network for %s, and goes on from there", async (_, broken) => {
    const shelf = openShelf(SCOPE, memoryCaches());
    network(FIRST, (path, bytes) => (path === "b.css" ? broken(bytes) : bytes));
    expect(await faultOf(fetchWhole(shelf, FIRST.list, nothing, never))).toBe("network");
    expect(await shelf.list(FIRST.list.edition)).toBeUndefined();
    const came = Object.keys(await whatIsKept(shelf, FIRST));
    const asked = network(FIRST);
    await fetchWhole(shelf, FIRST.list, nothing, never);
    expect(asked).toHaveLength(FIRST.files.size - came.length);
    expect(await whatIsKept(shelf, FIRST)).toEqual(hashesOf(FIRST));
  });

  test("that is stopped is not whole", async () => {
    const shelf = openShelf(SCOPE, memoryCaches());
    network(FIRST);
    let left = 2;
    await fetchWhole(shelf, FIRST.list, nothing, () => left-- <= 0);
    expect(await shelf.list(FIRST.list.edition)).toBeUndefined();
    expect(Object.keys(await whatIsKept(shelf, FIRST)).length).toBeLessThan(FIRST.files.size);
  });

  test("with no room left for it leaves nothing of itself behind, and the other edition alone", async () => {
    let room = Infinity;
    const caches = memoryCaches(() => room-- > 0);
    const shelf = openShelf(SCOPE, caches);
    network(FIRST);
    await fetchWhole(shelf, FIRST.list, nothing, never);
    await shelf.setCurrent(FIRST.list.edition);
    const before = await caches.keys();
    room = 3;
    network(SECOND);
    expect(await faultOf(fetchWhole(shelf, SECOND.list, nothing, never))).toBe("full");
    expect(await caches.keys()).toEqual(before);
    expect(await shelf.current()).toEqual(FIRST.list);
    expect(await whatIsKept(shelf, FIRST)).toEqual(hashesOf(FIRST));
  });

  test.each([
    ["a host's error page", new Response("<p>Sorry")],
    [
      "a list with a hash that is none",
      Response.json({ ...FIRST.list, files: { "a.js": { bytes: 1, sha256: "f" } } }),
    ],
  ])("whose list is %s is refused", async (_, response) => {
    vi.stubGlobal("fetch", () => Promise.resolve(response.clone()));
    expect(await faultOf(fetchEdition(SCOPE))).toBe("changed");
  });
});

describe("an update", () => {
  async function withFirst(): Promise<ReturnType<typeof openShelf>> {
    const shelf = openShelf(SCOPE, memoryCaches());
    network(FIRST);
    await fetchWhole(shelf, FIRST.list, nothing, never);
    await shelf.setCurrent(FIRST.list.edition);
    return shelf;
  }

  test("asks for what differs only; pages that differ by the edition's name are put under the new one and come out as listed", async () => {
    const shelf = await withFirst();
    const asked = network(SECOND);
    await fetchWhole(shelf, SECOND.list, nothing, never);
    expect(asked.sort()).toEqual(["b.css", "tarvay/2/"]);
    expect(await whatIsKept(shelf, SECOND)).toEqual(hashesOf(SECOND));
    expect(await whatIsKept(shelf, FIRST)).toEqual(hashesOf(FIRST));
  });

  test("fetches a page that is not on the device as it was listed, instead of keeping it under the new name", async () => {
    const shelf = await withFirst();
    const spoilt = Buffer.from(FIRST.files.get("index.html")!).toString().replace("cover", "cuvor");
    await (await shelf.open(FIRST.list.edition)).put(keyOf(SCOPE, ""), new Response(spoilt));
    const asked = network(SECOND);
    await fetchWhole(shelf, SECOND.list, nothing, never);
    expect(asked).toContain("");
    expect(await whatIsKept(shelf, SECOND)).toEqual(hashesOf(SECOND));
  });
});

describe("the shelf", () => {
  test("clears its own guide's editions and record, and no other guide's on the same host", async () => {
    const caches = memoryCaches();
    const [own, other] = [openShelf(SCOPE, caches), openShelf("/guides/links/old/", caches)];
    await caches.open("somebody else's");
    for (const one of [own, other]) {
      await one.complete(FIRST.list);
      await one.setCurrent(FIRST.list.edition);
    }
    await own.clear();
    expect(await own.current()).toBeUndefined();
    expect(await other.current()).toEqual(FIRST.list);
    expect(await caches.has("somebody else's")).toBe(true);
    expect(await caches.keys()).toHaveLength(3);
  });

  test("tidied, keeps exactly the editions that are current, coming, spared, or of a page still open", async () => {
    const random = seeded(5);
    const ids = Array.from({ length: 6 }, (_, i) => `${i}`.repeat(16));
    for (let trial = 0; trial < 60; trial++) {
      const caches = memoryCaches();
      const shelf = openShelf(SCOPE, caches);
      const neighbour = openShelf("/elsewhere/", caches);
      await neighbour.complete({ ...FIRST.list, edition: ids[0]! });
      for (const id of ids) await shelf.complete({ ...FIRST.list, edition: id });
      const current = random.pick(ids);
      const coming = random.chance(0.5) ? random.pick(ids) : undefined;
      await shelf.setCurrent(current);
      if (coming !== undefined) await shelf.setComing(coming);
      const pins = Array.from({ length: random.below(4) }, (_, i) => ({
        client: `page-${i}`,
        id: random.pick(ids),
        open: random.chance(0.5),
      }));
      for (const { client, id } of pins) await shelf.pin(client, id);
      const spared = new Set(random.chance(0.4) ? [random.pick(ids)] : []);
      await shelf.tidy(new Set(pins.filter(({ open }) => open).map(({ client }) => client)), spared);

      const needed = new Set([
        current,
        ...(coming === undefined ? [] : [coming]),
        ...spared,
        ...pins.filter(({ open }) => open).map(({ id }) => id),
      ]);
      const left: string[] = [];
      for (const id of ids) if ((await shelf.list(id)) !== undefined) left.push(id);
      expect(left).toEqual(ids.filter((id) => needed.has(id)));
      for (const { client, id, open } of pins) expect(await shelf.pinOf(client)).toBe(open ? id : undefined);
      expect(await neighbour.list(ids[0]!)).toBeDefined();
    }
  });
});
