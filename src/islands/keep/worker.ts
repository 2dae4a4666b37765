/**
 * The service worker of a kept guide. It is registered when a golfer asks to keep the
 * guide and caches nothing before. Each page it serves is pinned to the edition it came
 * from, and all that page asks for later comes from the same edition, also after a newer
 * one has become current; so no page ever mixes two.
 *
 *   page --keep-->  fetch edition.json, fetch and check every file into a cache of its own
 *                   then one write makes it current; editions no page is of are removed
 */
import { addressIn, filesByAddress, type EditionFile } from "../../contract/edition.ts";
import { fetchEdition, fetchFile, fetchWhole, KeepFailure } from "./fetching.ts";
import type { Order, Report } from "./messages.ts";
import { keyOf, shelf as openShelf } from "./shelf.ts";

declare const self: ServiceWorkerGlobalScope;

const scope = new URL(self.registration.scope).pathname;
const shelf = openShelf(scope, self.caches);

interface Open {
  readonly id: string;
  readonly files: ReadonlyMap<string, EditionFile>;
  readonly cache: Cache;
}

/** Lists and pins read once in this worker's life; the caches have the last word at its start. */
const opened = new Map<string, Promise<Open | undefined>>();
const pins = new Map<string, string>();
let current: Promise<string | undefined> | undefined;

const currentId = (): Promise<string | undefined> => (current ??= shelf.current().then((edition) => edition?.edition));

function edition(id: string): Promise<Open | undefined> {
  const found =
    opened.get(id) ??
    shelf.list(id).then(async (list) => list && { id, files: filesByAddress(list), cache: await shelf.open(id) });
  opened.set(id, found);
  return found;
}

async function pin(client: string, id: string): Promise<void> {
  pins.set(client, id);
  await shelf.pin(client, id);
}

/** Removes editions nobody is on any more. */
async function tidy(): Promise<void> {
  if (keeping !== undefined) return;
  const clients = new Set([...(await self.clients.matchAll({ type: "all" })).map(({ id }) => id), ...pins.keys()]);
  await shelf.tidy(clients, new Set(pins.values()));
  opened.clear();
}

/** Once in a worker's life: pages may have been closed since the last. */
let tidied: Promise<void> | undefined;

self.addEventListener("install", () => void self.skipWaiting());

self.addEventListener("fetch", (event) => {
  const { method, url } = event.request;
  const { origin, pathname } = new URL(url);
  if (method !== "GET" || origin !== self.location.origin || !pathname.startsWith(scope)) return;
  event.respondWith(answer(event, addressIn(pathname, scope)));
});

async function answer(event: FetchEvent, address: string | undefined): Promise<Response> {
  const { request, clientId, resultingClientId } = event;
  const navigating = request.mode === "navigate";
  const id = navigating ? await currentId() : (pins.get(clientId) ?? (await shelf.pinOf(clientId)));
  // A page that came from the network goes on with the network.
  if (id === undefined)
    return navigating ? fetch(request) : fetch(request).catch((reason: unknown) => lastResort(address, reason));
  // A page, or a worker that a page starts, asks in its own name from now on.
  if (resultingClientId !== "") event.waitUntil(pin(resultingClientId, id).catch(() => undefined));
  tidied ??= tidy();
  event.waitUntil(tidied.catch(() => undefined));
  const open = await edition(id);
  if (open === undefined || address === undefined) return fetch(request);
  return fromEdition(open, address, request, navigating);
}

async function fromEdition(
  { cache, files }: Open,
  address: string,
  request: Request,
  navigating: boolean,
): Promise<Response> {
  const file = files.get(address);
  if (file !== undefined) {
    const kept = await cache.match(keyOf(scope, address));
    if (kept !== undefined) return kept;
    // The browser lost one file: only the same bytes may stand in for it.
    return fetchFile(scope, address, file).catch(() => Response.error());
  }
  if (navigating && files.has(`${address}/`)) return Response.redirect(keyOf(scope, `${address}/`), 301);
  // Nothing of the edition: what lies beside it on the server, or the guide's own word for nothing.
  return fetch(request).catch(async (reason: unknown) => {
    const lost = navigating ? await cache.match(keyOf(scope, "404.html")) : undefined;
    if (lost === undefined) throw reason;
    return new Response(lost.body, { status: 404, headers: lost.headers });
  });
}

/** Offline, and the browser does not say which page asks: it can only be one that is kept. */
async function lastResort(address: string | undefined, reason: unknown): Promise<Response> {
  const id = await currentId();
  const open = id === undefined ? undefined : await edition(id);
  const kept = address === undefined ? undefined : await open?.cache.match(keyOf(scope, address));
  if (kept === undefined) throw reason;
  return kept;
}

self.addEventListener("message", (event) => {
  const order = event.data as Order;
  const { source } = event;
  if (order.type === "keep") event.waitUntil((keeping ??= keep().finally(() => (keeping = undefined))));
  else if (order.type === "stop") stopped = true;
  else if (order.type === "forget") event.waitUntil(forget());
  else if (source !== null && "id" in source) event.waitUntil(adopt(source.id, order.edition));
});

let keeping: Promise<void> | undefined;
let stopped = false;

let reports: Promise<void> = Promise.resolve();

/** Reports arrive in the order they were made: nothing may follow the word that keeping has ended. */
function report(message: Report): Promise<void> {
  reports = reports.then(async () => {
    for (const client of await self.clients.matchAll({ includeUncontrolled: true, type: "window" }))
      client.postMessage(message);
  });
  return reports;
}

/** Milliseconds between words on progress. */
const PAUSE = 100;

async function keep(): Promise<void> {
  stopped = false;
  let ended = false;
  try {
    const wanted = await fetchEdition(scope);
    let told = 0;
    const tell = (doneBytes: number): void => {
      // Files that were under way when another failed still come in.
      if (ended || Date.now() - told < PAUSE) return;
      told = Date.now();
      void report({ type: "progress", edition: wanted.edition, doneBytes, bytes: wanted.bytes });
    };
    tell(0);
    await shelf.setComing(wanted.edition);
    if ((await shelf.list(wanted.edition)) === undefined) await fetchWhole(shelf, wanted, tell, () => stopped);
    if (stopped) return;
    await shelf.setCurrent(wanted.edition);
    current = undefined;
    opened.clear();
    keeping = undefined;
    await tidy();
    await report({ type: "kept", edition: wanted.edition });
  } catch (cause) {
    ended = true;
    if (!stopped) await report({ type: "failed", fault: cause instanceof KeepFailure ? cause.fault : "refused" });
  }
}

async function forget(): Promise<void> {
  stopped = true;
  await keeping?.catch(() => undefined);
  await shelf.clear();
  current = undefined;
  opened.clear();
  pins.clear();
  await report({ type: "forgotten" });
}

/** A page that was open before anything was kept, and is of the kept edition, need not be loaded again. */
async function adopt(client: string, id: string): Promise<void> {
  if ((await currentId()) !== id) return;
  await pin(client, id);
  await self.clients.claim();
}
