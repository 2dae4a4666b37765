/**
 * Editions on this device: one cache for each, and one for the record of which is current.
 * Caches belong to the whole origin, so their names begin with the guide's own path.
 */
import { EDITION_FILE, readEdition, type Edition } from "../../contract/edition.ts";

export interface Shelf {
  /** Path the guide is served from, a slash at each end. */
  readonly scope: string;
  /** The edition requests are answered from. */
  current(): Promise<Edition | undefined>;
  setCurrent(id: string): Promise<void>;
  /** The edition being fetched: what has come of it is spared until another is. */
  setComing(id: string): Promise<void>;
  open(id: string): Promise<Cache>;
  /** The list of an edition that is here whole; undefined for one not complete. */
  list(id: string): Promise<Edition | undefined>;
  /** Ends the filling of an edition's cache: from now on it counts as whole. */
  complete(edition: Edition): Promise<void>;
  /** Which edition a page or worker is of. */
  pin(client: string, id: string): Promise<void>;
  pinOf(client: string): Promise<string | undefined>;
  /**
   * Removes editions that are neither current, coming, spared, nor of any of these clients, and the pins of
   * other clients.
   */
  tidy(clients: ReadonlySet<string>, spared: ReadonlySet<string>): Promise<void>;
  remove(id: string): Promise<void>;
  clear(): Promise<void>;
}

/** The key of a file in an edition's cache. */
export const keyOf = (scope: string, address: string): string =>
  scope + address.split("/").map(encodeURIComponent).join("/");

export function shelf(scope: string, caches: CacheStorage): Shelf {
  const prefix = `marram ${scope} `;
  const recordName = `${prefix}record`;
  const cacheName = (id: string): string => `${prefix}edition ${id}`;
  const currentKey = `${scope}current`;
  const comingKey = `${scope}coming`;
  const pinPrefix = `${scope}pin/`;

  const read = async (key: string): Promise<string | undefined> => {
    if (!(await caches.has(recordName))) return undefined;
    return (await (await caches.open(recordName)).match(key))?.text();
  };
  const write = async (key: string, text: string): Promise<void> =>
    (await caches.open(recordName)).put(key, new Response(text));
  const list = async (id: string): Promise<Edition | undefined> => {
    if (!(await caches.has(cacheName(id)))) return undefined;
    const found = await (await caches.open(cacheName(id))).match(keyOf(scope, EDITION_FILE));
    return found && readEdition(await found.json());
  };

  return {
    scope,
    list,
    async current() {
      const id = await read(currentKey);
      return id === undefined ? undefined : await list(id);
    },
    setCurrent: (id) => write(currentKey, id),
    setComing: (id) => write(comingKey, id),
    open: (id) => caches.open(cacheName(id)),
    async complete(edition) {
      await (await caches.open(cacheName(edition.edition))).put(keyOf(scope, EDITION_FILE), Response.json(edition));
    },
    pin: (client, id) => write(pinPrefix + client, id),
    pinOf: (client) => read(pinPrefix + client),
    async tidy(clients, spared) {
      if (!(await caches.has(recordName))) return;
      const record = await caches.open(recordName);
      const needed = new Set(spared);
      for (const id of [await read(currentKey), await read(comingKey)]) if (id !== undefined) needed.add(id);
      for (const { url } of await record.keys()) {
        const { pathname } = new URL(url);
        if (!pathname.startsWith(pinPrefix)) continue;
        const pinned = clients.has(pathname.slice(pinPrefix.length)) ? await read(pathname) : undefined;
        if (pinned === undefined) await record.delete(url);
        else needed.add(pinned);
      }
      const wanted = new Set([...needed].map(cacheName));
      for (const name of await caches.keys()) {
        if (name.startsWith(cacheName("")) && !wanted.has(name)) await caches.delete(name);
      }
    },
    async remove(id) {
      await caches.delete(cacheName(id));
    },
    async clear() {
      for (const name of await caches.keys()) if (name.startsWith(prefix)) await caches.delete(name);
    },
  };
}
